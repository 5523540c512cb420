package markup

import (
	"math"
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/chart"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/lesson"
	"barkwright/core/units"
)

// Paper is what a lesson's paper says beside the lesson.
type Paper struct {
	// Outline is the boat drawn, as HTML, and Sizes its numbers.
	Outline string
	Sizes   []Watched
	// Made says of which boat it is and when it was made.
	Made string
}

// LessonPaper is a lesson worked out as one page for a class and a second with what was found, to be
// folded back.
func LessonPaper(run *lesson.Run, p Paper, s units.System) string {
	l := run.Lesson
	var b strings.Builder
	head := func(title string) {
		b.WriteString(`<div class="sheet lesson-sheet"><h1>` + draw.Escape(title) + "</h1><p>" + draw.Escape(p.Made) +
			". Barkwright: a teaching estimate, worked out for this boat.</p>")
	}
	head(lesson.Words(l.Question, s))
	b.WriteString(p.Outline + "<p>")
	for i, w := range p.Sizes {
		if i > 0 {
			b.WriteString(" · ")
		}
		b.WriteString(draw.Escape(w.Name) + " <b>" + draw.Escape(w.Now) + "</b>")
	}
	b.WriteString(`</p><h2>Guess first, then set and read</h2><table><thead><tr><th>Watch</th><th>As it stands</th><th>My guess</th>`)
	for i := range l.Steps {
		b.WriteString("<th>" + strconv.Itoa(i+1) + "</th>")
	}
	b.WriteString("</tr></thead><tbody>")
	for _, key := range l.Watch {
		b.WriteString("<tr><th>" + draw.Escape(run.Name(key, s)) + "</th><td>" + draw.Escape(run.Shown(key, 0, s)) +
			"</td><td></td>" +
			strings.Repeat("<td></td>", len(l.Steps)) + "</tr>")
	}
	b.WriteString("</tbody></table><ol>")
	for i, step := range l.Steps {
		text := lesson.Words(step.Does, s)
		if run.Faults[i+1] != nil {
			text += " (" + cannot(run, i+1, s) + ")"
		}
		b.WriteString("<li>" + draw.Escape(text) + "</li>")
	}
	b.WriteString("</ol>")
	drawIn := strips(run, "empty", false, s)
	if drawIn != "" {
		b.WriteString("<h2>Mark what you read, and join the marks</h2>" + drawIn)
	}
	b.WriteString("</div>")
	head("What we found: " + lesson.Words(l.Title, s))
	b.WriteString(found(l, run, s) + strips(run, "found", true, s) + "<h2>Why</h2><p>" + draw.Escape(lesson.Words(l.Why, s)) +
		"</p><h2>Next</h2><p>" + draw.Escape(lesson.Words(l.Next, s)) + "</p><h2>What may mislead</h2><p>" +
		draw.Escape(lesson.Words(l.Mistake, s)) + "</p><p>" +
		draw.Escape(string(l.Source.Basis)+": "+l.Source.Cited) + ".</p></div>")
	return b.String()
}

// The strips on a lesson's paper: how many at most, and how wide each is, CSS pixels.
const (
	paperStrips = 2
	stripWide   = 340
)

// strips are the first results watched that change, over what is set: axes to be drawn in, or with
// what was read. What was not worked out, or never changes, has none.
func strips(run *lesson.Run, key string, points bool, s units.System) string {
	var b strings.Builder
	drawn := 0
	for _, watched := range run.Lesson.Watch {
		c, ok := strip(run, watched, points, s)
		if !ok || drawn == paperStrips {
			continue
		}
		drawn++
		b.WriteString("<figure><figcaption>" + draw.Escape(c.Title) + "</figcaption>" +
			SVG("lesson-"+key+"-"+watched, draw.Print(), c.Draw(stripWide)) + "</figure>")
	}
	if drawn == 0 {
		return ""
	}
	return `<div class="strips">` + b.String() + "</div>"
}

// strip is one of them, and whether there is anything to draw.
func strip(run *lesson.Run, key string, points bool, s units.System) (chart.Chart, bool) {
	l := run.Lesson
	kind, ok := run.Kind(key)
	if !ok {
		return chart.Chart{}, false
	}
	across, byControl := l.Control()
	c := chart.Chart{Key: "lesson-" + key, Title: run.Name(key, s), X: chart.Axis{Label: "Step", Kind: units.Count, System: s}}
	if byControl {
		c.X = chart.Axis{Label: across.Label, Kind: across.Kind, System: s}
	}
	c.Y = chart.Axis{Kind: kind, System: s}
	var low, high geom.Vec2
	var line []geom.Vec2
	for step := range run.Canoes {
		q := geom.Vec2{X: float64(step), Y: run.Value(key, step)}
		if byControl && run.Faults[step] == nil {
			q.X = across.Get(&run.Canoes[step].Design)
		}
		if math.IsNaN(q.Y) {
			continue
		}
		if len(line) == 0 {
			low, high = q, q
		}
		low = geom.Vec2{X: min(low.X, q.X), Y: min(low.Y, q.Y)}
		high = geom.Vec2{X: max(high.X, q.X), Y: max(high.Y, q.Y)}
		line = append(line, q)
		if points {
			c.Marks = append(c.Marks, chart.Mark{At: q, Shape: chart.Ring, Label: strconv.Itoa(step)})
		}
	}
	if len(line) < 2 || high.X == low.X || run.Shown(key, 0, s) == "" || high.Y-low.Y < 1e-9 {
		return chart.Chart{}, false
	}
	c.X.Low, c.X.High = low.X, high.X
	const room = 0.15 // over and under, as a share of the height
	c.Y.Low, c.Y.High = low.Y-room*(high.Y-low.Y), high.Y+room*(high.Y-low.Y)
	if low.Y >= 0 {
		c.Y.Low = max(0, c.Y.Low)
	}
	c.Description = c.Title + " over " + answer.InSentence(c.X.Label) + ", to be drawn in."
	if points {
		c.Description = c.Title + " over " + answer.InSentence(c.X.Label) + ", each step with its number; 0 as the boat stands."
	}
	return c, true
}
