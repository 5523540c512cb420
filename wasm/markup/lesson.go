package markup

import (
	"slices"
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/lesson"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// LessonList lists the lessons, with a mark on those that were opened and on the one that was in hand
// last, under what is said of the last one. kept tells that the browser keeps the marks.
func LessonList(seen []string, last, says string, kept bool, s units.System) string {
	var b strings.Builder
	b.WriteString(`<p class="help">Each takes a quarter of an hour, on a copy of the boat in hand: yours stays as it is. For one ` +
		`afternoon: ` + afternoon() + `. Guess before you look.</p>`)
	if !kept && len(seen) > 0 {
		b.WriteString(`<p class="help">This browser keeps nothing for this page: the marks go when it is closed.</p>`)
	}
	if says != "" {
		b.WriteString("<p>" + draw.Escape(says) + "</p>")
	}
	b.WriteString(`<ol class="lessons">`)
	for _, l := range lesson.All() {
		home, _, _ := stage.Lookup(l.Home)
		mark := ""
		if slices.Contains(seen, l.Key) {
			mark = " · seen"
		}
		if l.Key == last {
			mark += " · in hand last"
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

// LessonShown is a lesson opened.
type LessonShown struct {
	lesson.Lesson
	// Run is the lesson worked out, nil while it is not.
	Run     *lesson.Run
	Watched []Watched
	// Part is how much of it is shown, Did the step that the boat in hand stands at.
	Part, Did int
	// ByHand tells that it was changed by hand since.
	ByHand bool
	// On is the name of the boat that it is on. Mine is that of the user's boat where that is another,
	// Own that of the lesson's own boat and Also that of one that it speaks of, each empty where it is
	// that one already.
	On, Mine, Own, Also string
}

// Lesson is a lesson as far as its part.
func Lesson(l LessonShown, s units.System) string {
	var b strings.Builder
	_, place, _ := lesson.Lookup(l.Key)
	b.WriteString(`<p class="row">` + lessonButton("close", "All lessons") + lessonButton("turn:-1", "‹ Before") +
		lessonButton("turn:1", "Next ›") + wallButton + lessonButton("print", "Print for a class") +
		`</p><h3 id="lesson-title" tabindex="-1">` + strconv.Itoa(place) + " " +
		draw.Escape(lesson.Words(l.Question, s)) + "</h3>" +
		l.boat() + `<div aria-live="polite">`)
	for i, part := range []string{l.question(), l.steps(s), l.answer(s), l.why(s)} {
		if i <= l.Part {
			// On a projector the one asked for last alone is shown; what is watched stands by what is set.
			b.WriteString(`<section class="told"` +
				marked("data-now", i == l.Part || i == PartQuestion && l.Part == PartSteps) +
				">" + part + "</section>")
		}
	}
	b.WriteString("</div>")
	if l.Part+1 < LessonParts {
		b.WriteString(`<p class="row">` + lessonButton("next",
			[...]string{"What to set", "What is found", "Why"}[l.Part]) + "</p>")
	}
	return b.String()
}

// wallButton lets the lesson fill the window, or ends that: the style sheet shows what it would do.
const wallButton = `<button type="button" data-lesson="big"><span class="wall">For the projector</span>` +
	`<span class="back">Back to the page</span></button> `

// marked is an attribute where it holds.
func marked(attribute string, holds bool) string {
	if holds {
		return " " + attribute
	}
	return ""
}

func lessonButton(what, text string) string {
	return `<button type="button" data-lesson="` + what + `">` + draw.Escape(text) + "</button> "
}

// boat says which boat the lesson is on, and offers the others.
func (l LessonShown) boat() string {
	text := "On a copy of " + l.On + ": the boat itself stays as it is."
	offer := ""
	if l.Mine != "" {
		text = "On " + l.On + ", which comes with the page. " + l.Mine + " stays as it is."
		offer = lessonButton("mine", "Use my boat, "+l.Mine)
	}
	if l.Own != "" {
		offer += lessonButton("own", "Use the lesson's boat, "+l.Own)
	}
	return `<p class="help on">` + draw.Escape(text) + " " + offer + "</p>"
}

// question is the table of what to watch.
func (l LessonShown) question() string {
	var b strings.Builder
	if l.Part < PartSteps {
		b.WriteString("<p>Guess first: what will change, and by how much? Write it down.</p>")
	}
	b.WriteString(`<table class="costs watch"><thead><tr><th scope="col">Watch</th><th scope="col">Now</th>` +
		`<th scope="col">Since it began</th></tr></thead><tbody>`)
	for _, w := range l.Watched {
		b.WriteString(`<tr data-watch="` + w.Key + `"><th scope="row">` + draw.Escape(w.Name) + "</th><td>" +
			draw.Escape(w.Now) + "</td><td>" + draw.Escape(w.Change) + "</td></tr>")
	}
	b.WriteString("</tbody></table>")
	return b.String()
}

// steps are what to set, each with its button.
func (l LessonShown) steps(s units.System) string {
	var b strings.Builder
	b.WriteString("<h4>What to set</h4><ol>")
	for i, step := range l.Steps {
		text := "Set it"
		if l.Did == i+1 && !l.ByHand {
			text = "Set"
		}
		// On a projector the step that is set and the one after it alone are shown.
		b.WriteString(`<li value="` + strconv.Itoa(i+1) + `"` +
			marked("data-near", i+1 == l.Did || i == min(l.Did, len(l.Steps)-1)) + ">" +
			draw.Escape(lesson.Words(step.Does, s)) + " " + lessonButton("do:"+strconv.Itoa(i+1), text))
		if l.Run != nil && l.Run.Faults[i+1] != nil {
			b.WriteString(`<small>` + draw.Escape(cannot(l.Run, i+1, s)) + "</small>")
		}
		b.WriteString("</li>")
	}
	b.WriteString(`</ol><p class="row">` + lessonButton("do:0", "Put the boat back") + "</p>")
	return b.String()
}

// cannot says why a step's boat cannot be built.
func cannot(r *lesson.Run, step int, s units.System) string {
	return "this boat cannot: " + r.Faults[step].Message(s)
}

// answer is what is found, with the lesson's own boat where it is not so on this one.
func (l LessonShown) answer(s units.System) string {
	text := "<h4>What is found</h4>" + found(l.Lesson, l.Run, s)
	if l.Own == "" || l.Run == nil {
		return text
	}
	for _, c := range l.Claims {
		if l.Run.Judge(c) != lesson.Holds {
			return text + `<p class="row">` + lessonButton("own", "See all of it on the lesson's boat, "+l.Own) + "</p>"
		}
	}
	return text
}

// why is the reason, what to try next and what may mislead.
func (l LessonShown) why(s units.System) string {
	also := ""
	if l.Also != "" {
		also = " " + lessonButton("also", "Take "+l.Also)
	}
	return "<h4>Why</h4><p>" + draw.Escape(lesson.Words(l.Why, s)) + "</p><p><b>Next:</b> " +
		draw.Escape(lesson.Words(l.Next, s)) + also + "</p><p><b>What may mislead:</b> " +
		draw.Escape(lesson.Words(l.Mistake, s)) + `</p><p class="basis">` +
		draw.Escape(string(l.Source.Basis)+": "+l.Source.Cited) + ".</p>"
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
			text += "<li>" + draw.Escape(answer.AtStart(what)) + "</li>"
		}
		said[what] = true
	}
	return text + "</ul>"
}
