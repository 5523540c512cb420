package markup

import (
	"strconv"
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
	for _, b := range c.Bands {
		out.Bands = append(out.Bands, chart.StripBand{Left: b.Left, Right: b.Right, Word: b.Word, Ground: grounds[b.State]})
	}
	for _, wall := range w.Walls() {
		out.Walls = append(out.Walls, wall.At)
	}
	for _, n := range s.Held {
		if n.Key == c.Number.Key && n.Word == "" && s.At >= w.Low && s.At <= w.High {
			out.Held = &geom.Vec2{X: s.At, Y: max(c.Low, min(c.High, n.Value))}
		}
	}
	out.Description = out.Title + " while " + answer.InSentence(p.Label) + " goes from " + out.LeftText +
		" to " + out.RightText + "; now " +
		c.Number.Text(w.System) + "."
	return out
}

// grounds are how bands are hatched by what a guide says.
var grounds = map[answer.State]chart.Ground{answer.Near: chart.Sparse, answer.Beyond: chart.Close}

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
		b.WriteString(s.slider(c.Number.Key, strip.Title) + SVG("strip-"+c.Number.Key, p, strip.Draw(width)) + "</div>")
		if said := s.notes(c, i == 0); said != "" {
			b.WriteString("<small>" + draw.Escape(said) + "</small>")
		}
		b.WriteString("</figure>")
	}
	return b.String()
}

// slider opens the element that a strip is set by, with the range of the control in SI.
func (s Strips) slider(key, title string) string {
	number := func(v float64) string { return strconv.FormatFloat(v, 'g', 9, 64) }
	w := s.Sweep
	return `<div data-strip="` + key + `" role="slider" tabindex="0" aria-label="` +
		draw.Escape(w.Param.Label+", by "+answer.InSentence(title)) + `" aria-valuemin="` + number(w.Low) +
		`" aria-valuemax="` + number(w.High) + `" aria-valuenow="` + number(w.Present()) +
		`" aria-valuetext="` + draw.Escape(s.ValueText(key, w.Present())) + `">`
}

// ValueText is what is spoken of a strip with the control at a value: the value, the result there
// and what its guide says, as far as that value was tried.
func (s Strips) ValueText(key string, v float64) string {
	w := s.Sweep
	text := param(w, v)
	for _, c := range w.Curves() {
		if c.Number.Key != key {
			continue
		}
		for _, q := range c.Points {
			if w.Same(q.At, v) {
				text += ": " + c.Number.Kind.Rough(q.Value, w.System)
			}
		}
		for _, b := range c.Bands {
			if b.Word != "" && v >= b.Left && v <= b.Right {
				return text + ", " + b.Word
			}
		}
	}
	return text
}

// notes say what a strip cannot show: that it hardly moves, where its guide's word turns, what a mark
// is, and where a wall stands.
func (s Strips) notes(c whatif.Curve, first bool) string {
	var said []string
	if c.Hardly {
		said = append(said, "hardly moves")
	}
	if len(c.Bands) > 1 {
		said = append(said, s.turns(c.Bands))
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

// turns say from where to where each word of a guide holds.
func (s Strips) turns(bands []whatif.Band) string {
	var said []string
	for i, b := range bands {
		switch {
		case i == 0:
			said = append(said, b.Word+" up to "+param(s.Sweep, b.Last))
		case i == len(bands)-1:
			said = append(said, b.Word+" from "+param(s.Sweep, b.First))
		case b.First == b.Last:
			said = append(said, b.Word+" at "+param(s.Sweep, b.First))
		default:
			said = append(said, b.Word+" from "+param(s.Sweep, b.First)+" to "+param(s.Sweep, b.Last))
		}
	}
	return strings.Join(said, ", ")
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

// farther is how many steps the keys of a page move by.
const farther = 10

// KeyTo is where a key pressed in a strip sets the control to, which stands at a value: arrows go by
// a step, up and right to more, the ends of what is drawn are reached at once. It reports false for a
// key that does nothing.
func (s Strips) KeyTo(key string, v float64) (float64, bool) {
	w := s.Sweep
	n := map[string]int{"ArrowRight": 1, "ArrowUp": 1, "ArrowLeft": -1, "ArrowDown": -1, "PageUp": farther,
		"PageDown": -farther}[key]
	switch {
	case key == "Home":
		return w.Low, true
	case key == "End":
		return w.High, true
	case n != 0:
		return w.Stepped(v, n), true
	}
	return v, false
}
