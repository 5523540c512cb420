package refit

import (
	"fmt"

	"barkwright/core/design"
	"barkwright/core/units"
)

// Held is a parameter that the record does not tell, and the rule that gave it.
type Held struct {
	Key string
	// Value in the parameter's SI unit.
	Value float64
	// Cited is where the rule is written, or that it is not.
	Cited string
}

// Rule is the rule in words, with its numbers in the reader's units.
func (h Held) Rule(s units.System) string {
	r, ok := rules[h.Key]
	if !ok {
		return "the starting value"
	}
	numbers := make([]any, len(r.shown))
	for i, n := range r.shown {
		numbers[i] = n.Kind.Format(n.Value, s)
	}
	return fmt.Sprintf(r.words, numbers...)
}

// The proportions are medians of the seven measured canoes that the survey's
// drawings letter. They fill gaps only: no measured figure is pulled toward them.
const (
	overhangShare = 0.043 // of the length overall: 13, 12.5, 7, 7, 5, 9, 1 in of 200, 175, 182, 212.5, 116, 176, 186
	beamShare     = 0.181 // of the length overall: 27.5, 27, 33, 33, 25, 32, 34 in
	depthShare    = 0.437 // of the beam inside: 10.625, 13.5, 13.5, 14.75, 12, 14, 12.5 in
)

const (
	survey   = "Adney and Chapelle, US National Museum Bulletin 230, 1964, figures 31, 51, 81, 90, 102, 103, 106 (derived)"
	noSource = "a choice of this project, no published source"
)

// rule is how a parameter is held that is not recorded. at is nil where the design's
// own rule, or its starting value, stands. words has a %s for each number shown.
type rule struct {
	at           func(design.Design) float64
	words, cited string
	shown        []design.Shown
}

// of makes a rule that is a share of another number, inches one that is a length from it.
func of(at func(design.Design) float64, share float64, words, cited string) rule {
	return rule{at, words, cited, []design.Shown{{Kind: units.Ratio, Value: share}}}
}

func inches(length float64, words, cited string) rule {
	return rule{words: words, cited: cited, shown: []design.Shown{{Kind: units.SmallLength, Value: length}}}
}

var rules = map[string]rule{
	"length": {words: "the starting boat's", cited: noSource},
	"overhang": of(func(d design.Design) float64 { return overhangShare * d.Length }, overhangShare,
		"%s of the length overall", survey),
	"beam": of(func(d design.Design) float64 { return beamShare * d.Length }, beamShare, "%s of the length overall",
		survey),
	"depth": of(func(d design.Design) float64 { return depthShare * d.Beam }, depthShare,
		"%s of the beam inside the gunwales", survey),
	"heelLength": inches(design.HeelInboard, "from the foremost point to the headboard and %s more",
		"scaled off the drawings of "+survey),
	"frameWidth": of(nil, design.FrameShare, "%s of the beam inside the gunwales",
		"Adney and Chapelle 1964: six lettered frames are 0.77 to 0.90 of it"),
	"frameLength": inches(design.FrameShorter, "%s less than the gunwales",
		"Adney and Chapelle 1964, figure 106: 170 of 184 in (4318 of 4674 mm)"),
	"ribs": inches(design.RibEvery, "one for every %s of the gunwales, an even number",
		"Adney and Chapelle 1964, figure 109: 3.8 in (97 mm) between centres"),
	"endHeight":   inches(design.HeadRise, "%s over the end of the gunwale", noSource),
	"headSetback": inches(design.HeadBack, "%s, or less where the ends overhang little", noSource),
	"thwart1":     {words: "spread as by the usual number of thwarts", cited: "near the mean of " + survey},
	"thwart2":     {words: "spread as by the usual number of thwarts", cited: "near the mean of " + survey},
	"turnWidth": {words: "as the bark folded on the bed goes round, less its usual ease",
		cited: "nine midsections of Adney and Chapelle 1964 (derived)"},
	"bilge": {words: "the mean of thirteen midsections as drawn",
		cited: "drawings of Adney and Chapelle 1964 (derived)"},
	"gunwaleEndHeight": inches(design.GunwaleEndRise, "%s over the depth", noSource),
}

// spoken are the parameters that a record can tell. Where it does not, their rules are
// listed.
var spoken = []string{
	"length", "overhang", "beam", "greatestBeam", "beamFull", "beamFine", "depth",
	"gunwaleEndHeight", "sheerSweep", "rocker", "rockerSpread",
	"frameWidth", "frameLength", "turnWidth", "bilge", "endHeight", "headSetback", "heelLength", "endFull",
	"stemDepth", "stemLaminations", "headboard", "inwaleThickness", "capThickness",
	"thwarts", "thwart1", "thwart2", "thwart3", "thwart4", "ribs", "ribWidthMid", "ribWidthEnd",
}

// hold sets a parameter by its rule, inside its range. A parameter that follows others
// goes on following.
func hold(d design.Design, key string) design.Design {
	at := rules[key].at
	if at == nil {
		return d
	}
	p := parameter(key)
	return p.Set(d, max(p.Min, min(p.Max, at(d))))
}

// held lists the parameters that the record did not settle.
func held(d design.Design, settled map[string]bool) []Held {
	var list []Held
	for _, key := range spoken {
		if settled[key] || unusedThwart(d, key) {
			continue
		}
		h := Held{Key: key, Value: parameter(key).Get(&d), Cited: noSource}
		if r, ok := rules[key]; ok {
			h.Cited = r.cited
		}
		list = append(list, h)
	}
	return list
}

func unusedThwart(d design.Design, key string) bool {
	for n := d.OuterThwarts(); n < furthest; n++ {
		if key == thwartKey(n+1) {
			return true
		}
	}
	return false
}

// thwartKey is the parameter that places thwart n from the middle.
func thwartKey(n int) string { return "thwart" + string(rune('0'+n)) }
