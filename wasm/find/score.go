package find

import (
	"slices"
	"strings"
	"unicode"

	"barkwright/core/stage"
)

// wish is one word of a question, with the words of the trade that an everyday one may
// stand for.
type wish struct {
	said string
	also []string
	// spare tells that what lacks it may answer all the same.
	spare bool
}

// filler are words of a question that name nothing.
var filler = set("a an the of is are do does i we my our what which where when how much many big for to in on " +
	"at it and or can need needed far with from me show go goes should does be you take takes get have")

// ours are words that any question may have: what lacks them may answer it all the same.
var ours = set("boat canoe number")

func set(words string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(words) {
		m[w] = true
	}
	return m
}

// asked are the words of a question that name something.
func asked(question string) []wish {
	var out []wish
	all := words(question)
	named := slices.ContainsFunc(all, func(w string) bool { return !filler[w] && !ours[single(w)] })
	for _, word := range all {
		if stem := single(word); !filler[word] {
			out = append(out, wish{stem, everyday[stem], named && ours[stem]})
		}
	}
	return out
}

// words are a text's in small letters.
func words(text string) []string {
	return strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}

func stems(text string) []string {
	all := words(text)
	for i, w := range all {
		all[i] = single(w)
	}
	return all
}

// single is a word without the plural's s.
func single(word string) string {
	if len(word) > 3 && strings.HasSuffix(word, "s") && !strings.HasSuffix(word, "ss") {
		return word[:len(word)-1]
	}
	return word
}

// What a word is worth by where it stands. A word of the trade that an everyday one
// stands for is worth somewhat less than one that was typed, and the first word of a name
// more than the rest.
const (
	whole, begun, mentioned = 10, 6, 2
	alsoWorth, spareWorth   = 5, 3
	translated              = 0.6
	first                   = 3
)

// kindWorth decides between things of the same name.
var kindWorth = map[Kind]float64{Control: 1.5, Number: 1.4, Place: 1.3, Check: 1.2, Table: 1, Bench: 0.95, Word: 0.9,
	Lesson: 0.8, Step: 0.5}

// score is how well the thing answers; zero where one of the words wanted is not in it.
func (e *indexed) score(wanted []wish, question string) float64 {
	total := 0.0
	for _, w := range wanted {
		best := e.worth(w.said)
		for _, stem := range w.also {
			best = max(best, translated*e.worth(stem))
		}
		switch {
		case w.spare:
			best = min(best, spareWorth)
		case best == 0:
			return 0
		}
		total += best
	}
	// Of names with the word in them the shortest is about it alone.
	total /= 1 + 0.02*float64(len(e.name))
	question = strings.ToLower(question)
	asks := func(words string) bool { return strings.Contains(question, words) }
	if e.Kind == Number && asks("how ") {
		total *= 1.3
		if e.Home == stage.Gather && (asks("how much") || asks("how many")) {
			total *= 1.5
		}
	}
	if e.Kind == Bench && asks("next") || e.Kind == Check && (asks("will") || asks("wrong")) {
		total *= 2
	}
	if e.large {
		total *= 1.4
	}
	if len(wanted) == len(e.name) &&
		slices.EqualFunc(wanted, e.name, func(w wish, name string) bool { return w.said == name }) {
		total *= 1.5
	}
	return total * kindWorth[e.Kind]
}

func (e *indexed) worth(stem string) float64 {
	best := 0.0
	for i, word := range e.name {
		at := 0.0
		switch {
		case word == stem:
			at = whole
		case strings.HasPrefix(word, stem):
			at = begun
		}
		if at > 0 && i == 0 {
			at += first
		}
		best = max(best, at)
	}
	for _, word := range e.asked {
		if word == stem {
			best = max(best, alsoWorth)
		}
	}
	for _, word := range e.more {
		if best < mentioned && (word == stem || len(stem) > 2 && strings.HasPrefix(word, stem)) {
			best = mentioned
		}
	}
	return best
}

// everyday are words of the kitchen and the street, and what the trade says for them.
var everyday = table(`
tippy tipsy wobbly unstable stable stability steady stiff roll: steadiness stiffness gm
capsize overturn flip: righting steadiness
tip: steadiness righting
wide width breadth broad: beam breadth width
tall high height: height depth sheer
deep: depth draught
glue tar resin sap gum: pitch
waterproof leak watertight tight: pitch leak
rope string thread cord twine lash: root lacing lashing
stitch sewing sew: seam stitch sewing
rim edge side wall: gunwale sheer
crossbar yoke crosspiece brace: thwart
bench seat: seat
floor plank lining board: sheathing headboard
bone: rib
long: longest length
front nose: bow stem
back rear: stern
bottom curve keel: rocker bottom
skin birch: bark
slit dart cut notch: gore
patch fix repair mend broken crack: keep mend patch
heavy weigh: weight
weight: load
people crew person kid passenger rider canoeist: paddler
load carry capacity: load cargo
dog pack gear: cargo gear
shape line: offset shape
hand kit tool: gear
log trunk timber lumber: tree bolt trunk
nail pin dowel screw: peg
fast speed quick: speed push
print printer: paper
paper sheet: print sheet paper
save export file: file
share send email: file text
inch feet mm cm metric imperial: unit
example sample: starting
glossary dictionary meaning: word
undo: reset
bend bending break snap: bend verdict
boil steam heat: boiling bend
float sink deep draft: freeboard draught load
slant angle tilt heel: lean trim
size dimension: length beam depth
pole stick: post stake
oar paddle: paddler
winter store storage: keep winter
mark marking: mark
`)

func table(lines string) map[string][]string {
	m := map[string][]string{}
	for _, line := range strings.Split(strings.TrimSpace(lines), "\n") {
		said, trade, _ := strings.Cut(line, ":")
		for _, word := range strings.Fields(said) {
			m[single(word)] = append(m[single(word)], strings.Fields(trade)...)
		}
	}
	return m
}
