package markup

import (
	"strconv"
	"strings"

	"barkwright/core/draw"
	"barkwright/wasm/work"
)

// Option is one of a list to choose from.
func Option(value, label string) string {
	return `<option value="` + draw.Escape(value) + `">` + draw.Escape(label) + `</option>`
}

// Options are a list to choose from, each by its place.
func Options(labels []string) string {
	var b strings.Builder
	for i, label := range labels {
		b.WriteString(Option(strconv.Itoa(i), label))
	}
	return b.String()
}

// Named are a list of boats to choose from; of equal names each but the first has its
// number.
func Named(names []string) string {
	labels := make([]string, len(names))
	seen := map[string]int{}
	for i, name := range names {
		if name == "" {
			name = "without a name"
		}
		seen[name]++
		labels[i] = name
		if n := seen[name]; n > 1 {
			labels[i] += " · " + strconv.Itoa(n)
		}
	}
	return Options(labels)
}

// Choice is a box to tick.
func Choice(name, value, label string, ticked bool) string {
	more := ""
	if ticked {
		more = " checked"
	}
	return `<label class="choice"><input type="checkbox" name="` + name + `" value="` + draw.Escape(value) +
		`"` + more + `>` +
		draw.Escape(label) + `</label>`
}

// Notes are notes, each in a paragraph of its own.
func Notes(notes []string) string {
	var b strings.Builder
	for _, n := range notes {
		b.WriteString("<p>" + draw.Escape(n) + "</p>")
	}
	return b.String()
}

// Notice is something said at the top of the page, with its buttons.
func Notice(name, text string, buttons []string) string {
	var b strings.Builder
	b.WriteString(`<div data-notice="` + draw.Escape(name) + `"><p>` + draw.Escape(text) + `</p>`)
	for i, words := range buttons {
		b.WriteString(`<button type="button" data-action="` + strconv.Itoa(i) + `">` + draw.Escape(words) +
			`</button>`)
	}
	b.WriteString(`<button type="button" data-action="close">Close</button></div>`)
	return b.String()
}

// NotBuilt is why the boat entered is not shown, with a button that goes to its control.
func NotBuilt(n work.NotBuilt) string {
	return n.Word + ` <b>` + draw.Escape(n.Label) + `:</b> ` + draw.Escape(n.Message+n.More) +
		` <button type="button" data-go="` + draw.Escape(n.Key) + `">Go there</button>`
}
