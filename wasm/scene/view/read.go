package view

import (
	"fmt"
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/frame"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// ribName is what builders call a rib.
func ribName(r frame.Rib) string {
	if r.Alone() {
		return "rib under the middle thwart"
	}
	return "rib " + strconv.Itoa(r.Number)
}

// Readout returns one sentence about a part, by its name in the picture. It is empty for
// a name that this boat does not have.
func Readout(c core.Canoe, part string, s units.System) string {
	r := reader{c, s}
	if text := r.whole(part); text != "" {
		return text
	}
	kind, number, numbered := strings.Cut(part, ".")
	i, err := strconv.Atoi(number)
	if numbered && (err != nil || i < 0) {
		return ""
	}
	switch kind {
	case "rib":
		return r.rib(i)
	case "thwart":
		return at(c.Frame.Thwarts, i, r.thwart)
	case "group":
		return at(c.Frame.Lacing.Groups, i, r.group)
	case "gore":
		return r.gore(i)
	case "panel":
		return at(c.Bark.Panels, i, r.panel)
	case "post":
		return at(c.Frame.Bed.Posts, i, r.post)
	case "stake":
		return at(c.Frame.Bed.Stakes, i, r.stake)
	case "crosspiece":
		return at(c.Frame.Bed.Crosspieces, i, r.crosspiece)
	case "joint":
		return at(c.Bark.Joints, i, r.joint)
	case "seam":
		return at(c.Bark.Beside, i, r.seam)
	case answer.HeadboardPart:
		b := c.Frame.Headboard
		return fmt.Sprintf("Headboard: %s along the gunwale from the middle, %s high and %s wide.", r.length(b.Run),
			r.length(b.Height), r.small(b.Width))
	case answer.StemPart:
		b := c.Frame.Stem
		return fmt.Sprintf("Stem-piece: blank %s, %d laminations of %s, %s.", r.length(b.Blank), len(b.Laminations),
			units.Thickness.Format(b.Lamination, s), verdict(b))
	}
	return ""
}

func verdict(b frame.Stem) string {
	if b.Innermost().WillNotFit {
		return "will not fit"
	}
	return b.Innermost().Verdict.String()
}

// at returns element i, or the zero value where there is none.
func at[T any](all []T, i int, say func(int, T) string) string {
	if i >= len(all) {
		return ""
	}
	return say(i, all[i])
}

type reader struct {
	core.Canoe
	system units.System
}

func (r reader) length(v float64) string { return units.Length.Format(v, r.system) }
func (r reader) small(v float64) string  { return units.SmallLength.Format(v, r.system) }

func (r reader) rib(number int) string {
	for _, b := range r.Frame.Ribs {
		if b.Number != number {
			continue
		}
		which := "Rib " + strconv.Itoa(b.Number) + " from the middle"
		if b.Alone() {
			which = "Rib under the middle thwart"
		}
		return fmt.Sprintf("%s: %s along the gunwale, %s long when finished, %s wide, %s.", which, r.length(b.Run),
			r.length(b.Length), r.small(b.Width), answer.RibWord(r.Canoe, b))
	}
	return ""
}

func (r reader) thwart(i int, t frame.Thwart) string {
	name := frame.ThwartName(i, len(r.Frame.Thwarts))
	return fmt.Sprintf("%s: %s along the gunwale from the middle, %s between the shoulders, %s end to end.",
		answer.AtStart(name), r.length(t.Run), r.length(t.Shoulder), r.length(t.EndToEnd))
}

func (r reader) group(i int, g frame.Group) string {
	pegged := "not pegged"
	if g.Pegged {
		pegged = "pegged"
	}
	return fmt.Sprintf("Lacing group %d: %s along the gunwale from the middle, %d holes, %s.", i, r.length(g.Run),
		len(g.Holes), pegged)
}

func (r reader) gore(number int) string {
	n := len(r.Bark.Gores)
	for i := n - 1; i >= 0; i-- {
		g := r.Bark.Gores[i]
		if scene.GoreName(i, n) != answer.GorePart(number) {
			continue
		}
		if g.State != bark.GoreCut {
			return fmt.Sprintf("Gore %d: %s.", number, g.State)
		}
		if r.Skin != nil && r.Skin.Flat.Gores[i].State == bark.GoreCut {
			return fmt.Sprintf("Gore %d: %s along the gunwale from the middle, slash %s in from the edge; "+
				"about %s rides over there.", number, r.length(g.Run), r.length(g.Depth), r.small(r.Skin.Flat.Gores[i].Width))
		}
		return fmt.Sprintf("Gore %d: %s along the gunwale from the middle, slash %s in from the edge.", number,
			r.length(g.Run), r.length(g.Depth))
	}
	return ""
}

// panel names the strips of a panel, which both sides and both ends share.
func (r reader) panel(i int, p bark.Panel) string {
	text := fmt.Sprintf("Side panel %d, %s at its widest with the lap it is fitted with and the bark to trim", i+1,
		r.length(p.Width))
	for _, s := range r.Bark.Port {
		if answer.StripPart(r.Canoe, s) == answer.PanelPart(i) {
			text += fmt.Sprintf("; %s, %s long from %s", s.Name, r.length(s.Length()), scene.SheetWords(s, r.system))
		}
	}
	return text + "."
}

func (r reader) post(_ int, p frame.Post) string {
	return fmt.Sprintf("Post under the %s: %s long, %s from amidships.", p.Under, r.small(p.Length), r.length(p.X))
}

func (r reader) stake(i int, s frame.Stake) string {
	return fmt.Sprintf("Stakes, pair %d: %s from amidships, %s from the centre line.", i+1, r.length(s.X), r.length(s.Y))
}

func (r reader) crosspiece(i int, x frame.Crosspiece) string {
	return fmt.Sprintf("Crosspiece %d of the building frame: %s from amidships, %s out to out.", i, r.length(x.X),
		r.length(x.OutToOut))
}
