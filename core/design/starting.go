package design

import "barkwright/core/units"

// Starting returns the boats to begin from, each invented and named by its
// geometry; the default is another. All can be built as they stand.
func Starting() []Design {
	return []Design{
		start("Small solo", map[string]float64{
			"length": 144, "overhang": 6, "beam": 30, "depth": 11,
			"gunwaleEndHeight": 16, "endHeight": 20, "rocker": 1,
			"sheetWidth": 38, "sheetLength": 96, "ribThickness": 0.3125, "capThickness": 0.25,
		}, map[string]float64{"thwarts": 3, "paddlers": 1, "cargo": 40 * units.Pound, "gunwaleEndSplits": 8}),
		start("Two-person class canoe", map[string]float64{
			"length": 168, "overhang": 8, "beam": 34, "depth": 12,
			"gunwaleEndHeight": 18, "endHeight": 22.5, "rocker": 1,
		}, map[string]float64{"beamFull": 2.3, "cargo": 60 * units.Pound}),
		start("Long freight canoe", map[string]float64{
			"length": 288, "overhang": 12, "beam": 50, "depth": 21,
			"gunwaleEndHeight": 32, "endHeight": 40, "rocker": 2,
			"sheetWidth": 56, "ribWidthMid": 3, "ribWidthEnd": 2.25, "ribThickness": 0.4375,
			"inwaleThickness": 1.25, "inwaleDepth": 1.375, "stemWidth": 1, "stemDepth": 1.5, "cargoHeight": 9,
		}, map[string]float64{"thwarts": 7, "beamFull": 2.5, "paddlers": 6, "cargo": 1500 * units.Pound}),
		start("Low ends", map[string]float64{
			"length": 180, "overhang": 6, "beam": 33, "depth": 12,
			"gunwaleEndHeight": 15.5, "endHeight": 17.5, "headSetback": 0, "rocker": 0.75,
		}, map[string]float64{"sheerSweep": 3, "endFull": 0.5}),
		start("High ends", map[string]float64{
			"length": 192, "overhang": 14, "beam": 33, "depth": 12.5,
			"gunwaleEndHeight": 22, "endHeight": 34, "headSetback": 6, "rocker": 1.5, "ribThicknessEnd": 0.1875,
			"capThickness": 0.25,
		}, map[string]float64{"endFull": 0.8, "sheerSweep": 6}),
		start("Much rocker", map[string]float64{
			"length": 180, "overhang": 8, "beam": 35, "depth": 13,
			"gunwaleEndHeight": 20, "endHeight": 25, "rocker": 4.5, "endBlocking": 4.5,
		}, map[string]float64{"rockerSpread": 3}),
	}
}

// start sets inches and then other numbers in SI on the default, in the order of
// the table.
func start(name string, inches, plain map[string]float64) Design {
	d := Default()
	d.Name = name
	for _, p := range table {
		if v, ok := inches[p.Key]; ok {
			d = p.Set(d, v*units.Inch)
		}
		if v, ok := plain[p.Key]; ok {
			d = p.Set(d, v)
		}
	}
	return d
}
