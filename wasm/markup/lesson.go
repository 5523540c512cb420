package markup

import (
	"strconv"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/lesson"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// LessonList lists the lessons, with a mark on those that were opened.
func LessonList(seen map[string]bool, s units.System) string {
	var b strings.Builder
	b.WriteString(`<p class="help">Each takes a quarter of an hour. For one afternoon: ` + afternoon() +
		`. Guess before you look.</p><ol class="lessons">`)
	for _, l := range lesson.All() {
		home, _, _ := stage.Lookup(l.Home)
		mark := ""
		if seen[l.Key] {
			mark = " · seen"
		}
		b.WriteString(`<li><button type="button" data-lesson="open:` + l.Key + `">` + draw.Escape(lesson.Words(l.Question, s)) +
			`</button> <small>` + strconv.Itoa(l.Minutes) + " minutes · " + draw.Escape(home.Short) + mark + "</small></li>")
	}
	b.WriteString("</ol>")
	return b.String()
}

// afternoon names the lessons of one afternoon by their places.
func afternoon() string {
	var said []string
	for _, key := range lesson.Afternoon() {
		if _, at, ok := lesson.Lookup(key); ok {
			said = append(said, strconv.Itoa(at))
		}
	}
	return strings.Join(said, ", ")
}

// The parts of a lesson, shown one after another.
const (
	PartQuestion = iota
	PartSteps
	PartFound
	PartWhy
	LessonParts
)

// Watched is a result that a lesson watches: its name, and what it is now and by how much it
// differs from the boat as the lesson began.
type Watched struct{ Key, Name, Now, Change string }

// Lesson is a lesson opened, as far as a part; run is nil while it is being worked out, and did is
// the step that the boat in hand stands at, or less than zero.
func Lesson(l lesson.Lesson, run *lesson.Run, watched []Watched, part, did int, s units.System) string {
	var b strings.Builder
	button := func(what, text string) {
		b.WriteString(`<button type="button" data-lesson="` + what + `">` + draw.Escape(text) + "</button> ")
	}
	_, place, _ := lesson.Lookup(l.Key)
	b.WriteString(`<p class="row">`)
	button("close", "All lessons")
	button("turn:-1", "‹ Before")
	button("turn:1", "Next ›")
	button("big", "For the projector")
	button("print", "Print for a class")
	b.WriteString(`</p><h3 id="lesson-title" tabindex="-1">` + strconv.Itoa(place) + " " +
		draw.Escape(lesson.Words(l.Question, s)) + "</h3>")
	b.WriteString(`<div aria-live="polite">`)
	if part < PartSteps {
		b.WriteString("<p>Guess first: what will change, and by how much? Write it down.</p>")
	}
	b.WriteString(`<table class="costs watch"><thead><tr><th scope="col">Watch</th><th scope="col">Now</th>` +
		`<th scope="col">Since it began</th></tr></thead><tbody>`)
	for _, w := range watched {
		b.WriteString(`<tr data-watch="` + w.Key + `"><th scope="row">` + draw.Escape(w.Name) + "</th><td>" +
			draw.Escape(w.Now) + "</td><td>" + draw.Escape(w.Change) + "</td></tr>")
	}
	b.WriteString("</tbody></table>")
	if part >= PartSteps {
		b.WriteString("<h4>What to set</h4><ol>")
		for i, step := range l.Steps {
			b.WriteString("<li>" + draw.Escape(lesson.Words(step.Does, s)) + " ")
			text := "Set it"
			if did == i+1 {
				text = "Set"
			}
			button("do:"+strconv.Itoa(i+1), text)
			if run != nil && run.Faults[i+1] != nil {
				b.WriteString(`<small>this boat cannot: ` + draw.Escape(run.Faults[i+1].Message(s)) + "</small>")
			}
			b.WriteString("</li>")
		}
		b.WriteString(`</ol><p class="row">`)
		button("do:0", "Put the boat back")
		b.WriteString("</p>")
	}
	if part >= PartFound {
		b.WriteString("<h4>What is found</h4>" + found(l, run, s))
	}
	if part >= PartWhy {
		b.WriteString("<h4>Why</h4><p>" + draw.Escape(lesson.Words(l.Why, s)) + "</p><p><b>Next:</b> " +
			draw.Escape(lesson.Words(l.Next, s)) + "</p><p><b>What may mislead:</b> " +
			draw.Escape(lesson.Words(l.Mistake, s)) + `</p><p class="basis">` +
			draw.Escape(string(l.Source.Basis)+": "+l.Source.Cited) + ".</p>")
	}
	b.WriteString("</div>")
	if part+1 < LessonParts {
		b.WriteString(`<p class="row">`)
		button("next", [...]string{"What to set", "What is found", "Why"}[part])
		b.WriteString("</p>")
	}
	return b.String()
}

// found is the answer on the boat in hand, with the claims that are not so on it.
func found(l lesson.Lesson, run *lesson.Run, s units.System) string {
	if run == nil {
		return "<p>…</p>"
	}
	text := "<p>" + draw.Escape(run.Fill(l.Found, s)) + "</p><ul class=\"claims\">"
	said := map[string]bool{}
	for _, c := range l.Claims {
		what := run.Fill(c.Says, s)
		switch run.Judge(c) {
		case lesson.Fails:
			what = "On this boat it is not so: " + what
		case lesson.NotMade:
			what = "Not said of this boat: " + what
			if c.Limit != "" {
				what += " (only " + run.Fill(c.Limit, s) + ")"
			}
		}
		if !said[what] {
			text += "<li>" + draw.Escape(strings.ToUpper(what[:1])+what[1:]) + "</li>"
		}
		said[what] = true
	}
	return text + "</ul>"
}

// LessonPaper is a lesson as one page for a class and a second with what was found, to be folded
// back.
func LessonPaper(l lesson.Lesson, run *lesson.Run, watched []Watched, outline, boat, date string, s units.System) string {
	var b strings.Builder
	head := func(title string) {
		b.WriteString(`<div class="sheet lesson-sheet"><h1>` + draw.Escape(title) + "</h1><p>" + draw.Escape(boat) + ". " +
			draw.Escape(date) + ". Barkwright: a teaching estimate, worked out for this boat.</p>")
	}
	head(lesson.Words(l.Question, s))
	b.WriteString(outline + `<h2>Guess first</h2><table><thead><tr><th>Watch</th><th>As it stands</th><th>My guess</th>`)
	for i := range l.Steps {
		b.WriteString("<th>" + strconv.Itoa(i+1) + "</th>")
	}
	b.WriteString("</tr></thead><tbody>")
	for _, w := range watched {
		b.WriteString("<tr><th>" + draw.Escape(w.Name) + "</th><td>" + draw.Escape(run.Shown(w.Key, 0, s)) + "</td><td></td>" +
			strings.Repeat("<td></td>", len(l.Steps)) + "</tr>")
	}
	b.WriteString("</tbody></table><h2>What to set</h2><ol>")
	for _, step := range l.Steps {
		b.WriteString("<li>" + draw.Escape(lesson.Words(step.Does, s)) + "</li>")
	}
	b.WriteString(`</ol></div>`)
	head("What we found: " + lesson.Words(l.Title, s))
	b.WriteString(found(l, run, s) + "<h2>Why</h2><p>" + draw.Escape(lesson.Words(l.Why, s)) + "</p><h2>Next</h2><p>" +
		draw.Escape(lesson.Words(l.Next, s)) + "</p><h2>What may mislead</h2><p>" + draw.Escape(lesson.Words(l.Mistake, s)) + "</p><p>" +
		draw.Escape(string(l.Source.Basis)+": "+l.Source.Cited) + ".</p></div>")
	return b.String()
}
