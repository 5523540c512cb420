package stage

import (
	"slices"
	"strings"
	"unicode"

	"barkwright/core/units"
)

// Word is one of the words of the trade: what it means on this page, in one sense.
type Word struct {
	Term string
	// sense has a # for each of sizes, in metres.
	sense string
	sizes []float64
	// forms are the ways in which it is written in this sense, in small letters and parted
	// by semicolons; none stand for the term and its plural.
	forms string
}

// Sense says what the word means, in the reader's units.
func (w Word) Sense(in units.System) string {
	text := w.sense
	for _, v := range w.sizes {
		text = strings.Replace(text, "#", units.Length.Format(v, in), 1)
	}
	return text
}

// Sized tells whether there is a size in the sense.
func (w Word) Sized() bool { return len(w.sizes) > 0 }

func (w Word) inLower(text string) bool {
	return slices.ContainsFunc(w.written(), func(form string) bool { return stands(form, text) })
}

func (w Word) written() []string {
	if w.forms != "" {
		return strings.Split(w.forms, "; ")
	}
	term := strings.ToLower(w.Term)
	return []string{term, term + "s"}
}

// stands tells whether form stands in text with no letter before or after it.
func stands(form, text string) bool {
	for from := 0; ; {
		at := strings.Index(text[from:], form)
		if at < 0 {
			return false
		}
		at += from
		before, after := text[:at], text[at+len(form):]
		if !letterAt(before, len(before)-1) && !letterAt(after, 0) {
			return true
		}
		from = at + len(form)
	}
}

func letterAt(text string, at int) bool {
	return at >= 0 && at < len(text) && unicode.IsLetter(rune(text[at]))
}

// Met are the words of the trade that stand in any of the texts.
func Met(texts ...string) (met []Word) {
	// No form of a word runs over the end of a line.
	text := strings.ToLower(strings.Join(texts, "\n"))
	for _, w := range Words() {
		if w.inLower(text) {
			met = append(met, w)
		}
	}
	return met
}

// Words are the words of the trade that the page uses, by the alphabet.
func Words() []Word { return words[:] }

var words = [...]Word{
	{Term: "Aft", sense: "toward the stern."},
	{Term: "Amidships", sense: "the middle of the boat's length."},
	{Term: "As built", sense: "the design brought to what was read off the boat being made."},
	{Term: "Awl", sense: "a pointed tool that makes holes for the root."},
	{Term: "Batten", sense: "a long thin strip of wood, as of the building frame."},
	{Term: "Beam", sense: "the breadth between the inwales amidships."},
	{Term: "Bed", sense: "the raised and levelled ground the boat is built on."},
	{Term: "Bevel", sense: "a face or an end cut at a slant."},
	{Term: "Bilge", sense: "where the bottom turns up into the side."},
	{Term: "Billet", sense: "a split piece that ribs are split from."},
	{Term: "Bite", sense: "how far it is from hole to hole across a seam.", forms: "hole to hole across; bite"},
	{Term: "Blank", sense: "a piece split out with something over, before it is brought to size."},
	{Term: "Blocks", sense: "what lifts the bark's ends off the bed, under the heels.", forms: "blocks; blocked"},
	{Term: "Bolt", sense: "a length of log, to be split."},
	{Term: "Bow", sense: "the end that goes first; a canoe that is alike at both ends has it where you say."},
	{Term: "Breast height", sense: "# up the trunk, where a standing tree is taped.",
		sizes: []float64{4.5 * units.Foot}},
	{Term: "Broken rib",
		sense: "a rib near the end, cracked on purpose across its middle so that it folds narrow.",
		forms: "ribs broken; broken at the centre"},
	{Term: "Building frame", sense: "the frame that is weighed down on the bark while its sides are turned up."},
	{Term: "Butt", sense: "where two strips meet end to end."},
	{Term: "Cap", sense: "the flat strip pegged on top of inwale and outwale."},
	{Term: "Clear length", sense: "of a thwart: from shoulder to shoulder, between the inwales."},
	{Term: "Crooked knife", sense: "a knife with a bent blade, drawn toward the hand that shaves."},
	{Term: "Crosspiece", sense: "a bar across the building frame."},
	{Term: "Crown", sense: "how much higher the bed is amidships than at its ends."},
	{Term: "Depth", sense: "amidships, from the outside of the bottom to the top of the inwale.",
		forms: "depth amidships; depth and beam; beam and depth"},
	{Term: "Draught", sense: "how deep the boat lies in the water."},
	{Term: "Fair", sense: "without hump or hollow; to fair is to make it so."},
	{Term: "Foot", sense: "the lowest part of a thing: of a rib its middle, of a gore the end of its slash.",
		forms: "its foot; foot from; 's foot; foot outward; feet outward; their feet; foot toward"},
	{Term: "Freeboard", sense: "from the water up to the top of the inwale, where that is least."},
	{Term: "Froe", sense: "a blade with its handle upright, to split wood with."},
	{Term: "Girth", sense: "of a tree: round it, by tape.", forms: "girth by tape; a tape round"},
	{Term: "GM", sense: "how stiffly the boat stands upright, as a length; near zero it is tippy."},
	{Term: "Gore",
		sense: "a slit from the edge of the bark toward the bottom, whose edges are closed and sewn once the side is up."},
	{Term: "Grain", sense: "the way the fibres of the wood run."},
	{Term: "Group", sense: "the holes laced together between two ribs.",
		forms: "of lacing; group by group; in a group; so many groups; one group; cut groups; groups and seams"},
	{Term: "Gum", sense: "the raw resin that pitch is made of."},
	{Term: "Gunwale", sense: "the whole edge of the boat: inwale, outwale and cap."},
	{Term: "Half girth", sense: "along the bark from the bottom's middle up to the gunwale."},
	{Term: "Headboard", sense: "the upright board inside each end."},
	{Term: "Heart", sense: "the innermost wood of a trunk.", forms: "heart; heart to discard"},
	{Term: "Heel",
		sense: "where the straight of the bottom ends and the end's curve begins; the foot of the stem-piece stands there."},
	{Term: "Hull", sense: "the boat's body: bark, sheathing and ribs."},
	{Term: "Inboard", sense: "toward the middle of the boat."},
	{Term: "Inwale", sense: "the inner rail, which takes the thwarts and the tips of the ribs."},
	{Term: "Joint", sense: "where two sheets of bark meet end to end."},
	{Term: "Lacing", sense: "root round the gunwale that holds the bark between its rails."},
	{Term: "Lamination", sense: "one of the thin layers that a stem-piece is split into so that it bends."},
	{Term: "Lap", sense: "how far two edges lie over each other."},
	{Term: "Lashing", sense: "turns of root that bind two pieces of wood.",
		forms: "lashing; lashings; lashed; lash"},
	{Term: "Lean", sense: "how far the boat tips sideways.", forms: "lean; leans"},
	{Term: "Length overall", sense: "from the foremost point at one end to that at the other."},
	{Term: "Mortise", sense: "the slot in the inwale that a tenon goes into."},
	{Term: "Offsets", sense: "breadths and heights at places along the boat, from which its shape is drawn.",
		forms: "offsets"},
	{Term: "Out to out", sense: "over the outer faces of both sides.", forms: "out to out"},
	{Term: "Outboard", sense: "away from the middle of the boat."},
	{Term: "Outwale", sense: "the outer rail, which holds the bark against the inwale."},
	{Term: "Peg", sense: "a wooden pin through the rails."},
	{Term: "Pitch", sense: "gum tempered with fat and charcoal, which makes the seams tight."},
	{Term: "Plumb", sense: "straight up and down."},
	{Term: "Port", sense: "the left side, looking forward.", forms: "port"},
	{Term: "Post", sense: "a stick that stands on the bark and holds the gunwale at its height."},
	{Term: "Rail", sense: "one long strip of the gunwale."},
	{Term: "Rib", sense: "a bent strip across the boat from gunwale to gunwale, inside the sheathing."},
	{Term: "Righting arm", sense: "the lever that brings the boat back upright when it leans."},
	{Term: "Rocker", sense: "how much higher the bottom is at the heels than amidships."},
	{Term: "Root", sense: "split root of spruce or the like: the thread of the boat."},
	{Term: "Sapwood", sense: "the outer, lighter wood of a trunk."},
	{Term: "Sector", sense: "a piece split from a bolt like a slice of a round cake."},
	{Term: "Sheathing", sense: "thin strips of wood between bark and ribs."},
	{Term: "Sheer", sense: "the line of the inwale's top seen from the side; at one place, its height there."},
	{Term: "Sheet", sense: "a piece of bark as it comes off the tree."},
	{Term: "Shoulder", sense: "where a thwart ends against the inwale and its tenon goes on."},
	{Term: "Side panel", sense: "bark sewn on along the side where the sheet is too narrow."},
	{Term: "Slash", sense: "the straight first cut of a gore."},
	{Term: "Solid heel", sense: "the foot of the stem-piece, which is left unsplit."},
	{Term: "Springback", sense: "how far a bent piece opens when it is let go."},
	{Term: "Stake", sense: "a stick driven into the bed, which holds the bark's side up."},
	{Term: "Starboard", sense: "the right side, looking forward.", forms: "starboard"},
	{Term: "Station", sense: "a place along the boat, by its distance from amidships."},
	{Term: "Stem head", sense: "the top of the stem-piece."},
	{Term: "Stem-piece", sense: "the bent wood inside each end.", forms: "stem-piece; stem; stems"},
	{Term: "Stern", sense: "the end that goes last."},
	{Term: "Stitch", sense: "from hole to hole along a seam.", forms: "stitch; stitches"},
	{Term: "Story stick", sense: "a stick with every mark on it."},
	{Term: "Strand", sense: "one half of a split root."},
	{Term: "Stretch", sense: "by what share of its length the bark is drawn out or gathered.", forms: "stretch"},
	{Term: "Tail", sense: "the end of a root that is left over, to tuck in."},
	{Term: "Taper", sense: "to get thinner or narrower toward an end.", forms: "taper; tapers; tapered"},
	{Term: "Tenon", sense: "the tongue of wood that goes into a mortise."},
	{Term: "Thwart", sense: "a bar across the boat that holds the gunwales apart."},
	{Term: "Tolerance", sense: "how far off a measurement may be."},
	{Term: "Trim", sense: "of the boat in the water: how far one end lies lower than the other.",
		forms: "trim, bow down; trims"},
	{Term: "Tuck", sense: "how far a rib's tip stays below the top of the inwale.",
		forms: "of tuck; tip below the top of the inwale"},
	{Term: "Turn", sense: "of lacing: once round with the root.",
		forms: "turns through each hole; one turn; fewer turns"},
	{Term: "Turn line", sense: "the line along which ribs turn the bark from bottom to side."},
}
