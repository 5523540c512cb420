package markup

import (
	"strings"

	"barkwright/core/answer"
	"barkwright/core/chart"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/core/whatif"
)

// Strips are the results over the range of a control, near the boat that was asked about; held
// are the numbers of the boat held, with its control's value, nil for none.
type Strips struct {
	Sweep *whatif.Sweep
	Held  []answer.Number
	At    float64
}

// Strip is one of them to be drawn.
func (s Strips) Strip(c whatif.Curve) chart.Strip {
	w := s.Sweep
	p, k := w.Param, c.Number.Kind
	out := chart.Strip{Title: c.Number.Label(w.System), Left: w.Low, Right: w.High, Low: c.Low, High: c.High, Whole: c.Whole,
		Zero: c.Number.Key == "afloat.gm" || c.Number.Key == "afloat.trim" || c.Number.Key == "afloat.freeboard",
		Here: geom.Vec2{X: w.Present(), Y: c.Number.Value}, LowText: k.Rough(c.Low, w.System), HighText: k.Rough(c.High, w.System),
		LeftText: param(w, w.Low), RightText: param(w, w.High)}
	for _, q := range c.Points {
		out.Points = append(out.Points, chart.StripPoint{At: geom.Vec2{X: q.At, Y: q.Value}, Gap: q.Gap})
	}
	for _, t := range c.Turns {
		out.Turns = append(out.Turns, chart.StripTurn(t))
	}
	for _, wall := range w.Walls() {
		out.Walls = append(out.Walls, wall.At)
	}
	for _, n := range s.Held {
		if n.Key == c.Number.Key && n.Word == "" && s.At >= w.Low && s.At <= w.High {
			out.Held = &geom.Vec2{X: s.At, Y: max(c.Low, min(c.High, n.Value))}
		}
	}
	out.Description = out.Title + " while " + lowered(p.Label) + " goes from " + out.LeftText + " to " + out.RightText + "; now " +
		c.Number.Text(w.System) + "."
	return out
}

// param is a value of the control as its form shows it.
func param(w *whatif.Sweep, v float64) string {
	if w.Param.Options != nil {
		return w.Param.Options[int(v)]
	}
	return w.Param.Format(v, w.System)
}

// Figures are all of the strips, each so many CSS pixels wide.
func (s Strips) Figures(width float64, p draw.Palette) string {
	if s.Sweep == nil {
		return ""
	}
	var b strings.Builder
	for i, c := range s.Sweep.Curves() {
		b.WriteString(`<figure class="strip"><figcaption>` + draw.Escape(c.Number.Label(s.Sweep.System)) + " <b>" +
			draw.Escape(c.Number.Text(s.Sweep.System)) + "</b></figcaption>")
		if c.Says != "" {
			b.WriteString("<p>" + draw.Escape(c.Says) + "</p></figure>")
			continue
		}
		strip := s.Strip(c)
		b.WriteString(`<div data-strip="` + c.Number.Key + `">` + SVG("strip-"+c.Number.Key, p, strip.Draw(width)) + "</div>")
		if said := notes(c, i == 0, s); said != "" {
			b.WriteString("<small>" + draw.Escape(said) + "</small>")
		}
		b.WriteString("</figure>")
	}
	return b.String()
}

// notes say what a strip cannot show: that it hardly moves, what a mark is, and where a wall stands.
func notes(c whatif.Curve, first bool, s Strips) string {
	var said []string
	if c.Hardly {
		said = append(said, "hardly moves")
	}
	if first && s.Held != nil {
		said = append(said, "filled: now; ring: held")
	}
	if first {
		for _, wall := range s.Sweep.Walls() {
			said = append(said, "not past "+param(s.Sweep, wall.At)+": "+wall.Fault.Message(s.Sweep.System))
		}
	}
	return strings.Join(said, "; ")
}

// Table is every value tried, with the results.
func (s Strips) Table() string {
	w := s.Sweep
	if w == nil {
		return ""
	}
	curves := w.Curves()
	var b strings.Builder
	b.WriteString(`<table><thead><tr><th scope="col">` + draw.Escape(w.Param.Label) + "</th>")
	for _, c := range curves {
		b.WriteString(`<th scope="col">` + draw.Escape(c.Number.Label(w.System)) + "</th>")
	}
	b.WriteString("</tr></thead><tbody>")
	for _, sample := range w.Samples {
		b.WriteString(`<tr><th scope="row">` + draw.Escape(param(w, sample.At)) + "</th>")
		if sample.Fault != nil {
			b.WriteString(`<td colspan="` + units.Count.Format(float64(len(curves)), w.System) + `">` +
				draw.Escape(sample.Fault.Message(w.System)) + "</td></tr>")
			continue
		}
		for i := range curves {
			b.WriteString("<td>" + draw.Escape(sample.Numbers[i].Text(w.System)) + "</td>")
		}
		b.WriteString("</tr>")
	}
	b.WriteString("</tbody></table>")
	return b.String()
}

// ValueAt is the value of the control that a place in a strip stands for: x of its breadth, both CSS
// pixels.
func (s Strips) ValueAt(x, width float64) float64 {
	return s.Sweep.Nearest(chart.Strip{Left: s.Sweep.Low, Right: s.Sweep.High}.ValueAt(x, width))
}
