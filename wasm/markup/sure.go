package markup

import (
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/core/sure"
	"barkwright/core/units"
)

// figuresAt are the stages at which figures are cut, by what they are of.
var figuresAt = map[sure.Of]stage.Key{sure.Sheet: stage.Gather, sure.Thwart: stage.Gunwales, sure.Slash: stage.Bark,
	sure.Post: stage.Lace, sure.Stem: stage.Ends, sure.Rib: stage.Rib, sure.Stiffness: stage.Pitch,
	sure.Weight: stage.Pitch, sure.Gore: stage.Bark}

// Sure is how far the figures that are cut at a stage may be off, what to leave on, and which size to
// watch; those of all stages for an empty key.
func Sure(c core.Canoe, spreads *sure.Spreads, at stage.Key, s units.System) string {
	if spreads == nil {
		return "<p>…</p>"
	}
	var b strings.Builder
	b.WriteString(`<table class="costs"><thead><tr><th scope="col">Piece</th><th scope="col">As worked out</th>` +
		`<th scope="col">May be off, either way</th><th scope="col">Leave on</th>` +
		`<th scope="col">The size to watch</th></tr></thead><tbody>`)
	for _, f := range spreads.Figures {
		if at != "" && figuresAt[f.Of] != at {
			continue
		}
		kind, leave := units.Length, units.SmallLength.Format(f.Leave(), s)
		switch f.Of {
		case sure.Weight:
			kind, leave = units.Mass, answer.Dash
		case sure.Stiffness:
			leave = answer.Dash
		case sure.Gore:
			kind, leave = units.SmallLength, "trimmed once the sides are up"
			if f.Value-f.Spread < bark.LeastGore {
				leave = "may stay a slit"
			}
		}
		watch := answer.Dash
		if f.Share > 0 {
			watch = f.Watch.Name + ", " + units.Percent.Format(f.Share, s) + " of it"
		}
		if f.OneSided {
			watch += "; one-sided"
		}
		b.WriteString(`<tr data-sure="` + strconv.Itoa(int(f.Of)) + "." + strconv.Itoa(f.N) + `"><th scope="row">` +
			draw.Escape(figureName(c, f)) + "</th><td>" + kind.Format(f.Value, s) + "</td><td>" +
			kind.Rough(f.Spread, s) + "</td><td>" + leave + "</td><td>" +
			draw.Escape(watch) + "</td></tr>")
	}
	b.WriteString("</tbody></table>")
	return b.String()
}

// figureName is what a figure is called.
func figureName(c core.Canoe, f sure.Figure) string {
	n := strconv.Itoa(f.N)
	switch f.Of {
	case sure.Sheet:
		return "one sheet with no side panels, width"
	case sure.Thwart:
		if f.N == 0 {
			return "middle thwart, end to end"
		}
		return "thwart " + n + ", end to end"
	case sure.Post:
		return "post under the " + c.Frame.Bed.Posts[f.N].Under
	case sure.Slash:
		return "gore " + n + ", slash"
	case sure.Gore:
		return "gore " + n + ", rides over"
	case sure.Stem:
		return "stem blank"
	case sure.Rib:
		if f.N == 0 {
			return "rib under the middle thwart"
		}
		return "rib " + n
	case sure.Weight:
		return "weight"
	}
	return "stiffness, GM"
}
