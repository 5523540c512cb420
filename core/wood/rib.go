package wood

// RibBand is where a rib's bend falls among the ribs of published canoes, a larger one
// the tighter.
type RibBand int

const (
	// EasyRib bends less than published ribs do.
	EasyRib RibBand = iota
	// PublishedRib bends as published ribs bend.
	PublishedRib
	// ColdRib is between the guide's thresholds bent cold: no published rib was.
	ColdRib
	// TighterThanMost bends tighter than most published ribs.
	TighterThanMost
	// TighterThanAny bends tighter than any.
	TighterThanAny
)

// Radius over thickness of published ribs of northern white-cedar, bent hot. The first
// two are measured off drawings by this project (Adney and Chapelle 1964, figs. 31, 52,
// 104), each good to a fifth or a quarter; the drawn midsections of eight boats with a
// rib of 3/8 in give 8 to 16, three of them 8.2 to 8.7.
const (
	PublishedRibsTightest = 10
	PublishedRibsEasiest  = 23
	DrawnRibsTightest     = 8
	DrawnRibsEasiest      = 16
)

func (r RibBand) String() string {
	return [...]string{"easy", "as published ribs bend", "near the limit", "tighter than most published",
		"tighter than any published"}[r]
}

// Rib is where the bend falls for a rib of the stock. Another wood or grain moves the
// bounds as it moves the guide's; bent cold the guide's own hold, and the last bound
// stands as far under its limit as hot.
func (b Bend) Rib(s Stock) RibBand {
	const drawn = DrawnRibsTightest / float64(PublishedRibsTightest)
	easy := b.Safe
	if s.Condition.hot() {
		easy = min(easy, s.Multiplier()*PublishedRibsEasiest)
	}
	switch {
	case !b.WillNotFit && reaches(b.Ratio, easy):
		return EasyRib
	case !b.WillNotFit && reaches(b.Ratio, b.Limit) && s.Condition.hot():
		return PublishedRib
	case !b.WillNotFit && reaches(b.Ratio, b.Limit):
		return ColdRib
	case !b.WillNotFit && reaches(b.Ratio, drawn*b.Limit):
		return TighterThanMost
	}
	return TighterThanAny
}
