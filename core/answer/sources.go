package answer

// Sources shown beside results, each written once.
const (
	fromShape     = "the boat's shape as designed: plan, sheer, rocker and sections of this calculator"
	fromBending   = "bend guide of this calculator, after the USDA Wood Handbook (2021) tables 5-3b and published canoes; a trial piece decides"
	fromAdney     = "E. T. Adney and H. I. Chapelle, The Bark Canoes and Skin Boats of North America, Smithsonian Institution, 1964"
	fromBuilders  = "common practice, no published source"
	fromGeometry  = "plane geometry"
	fromOwnChoice = "estimate of this calculator, no published source"
)
