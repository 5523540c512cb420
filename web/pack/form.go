package main

import (
	"fmt"
	"html"
	"strings"
)

// group is a fold of the form.
type group struct {
	title  string
	open   bool
	fields []field
}

// field is one number a user sets: a slider, its two steps, a typed entry and a
// reset. Numbers are in the unit the form holds.
type field struct {
	key, label string
	low, high  float64
	step       float64
	value      float64
}

// form is the form's HTML.
func form() string {
	return write([]group{{title: "Boat", open: true, fields: []field{
		{key: "length", label: "Length overall", low: 96, high: 444, step: 0.25, value: 192},
		{key: "beam", label: "Beam inside the gunwales", low: 18, high: 72, step: 0.25, value: 33},
	}}})
}

func write(groups []group) string {
	var b strings.Builder
	for _, g := range groups {
		open := ""
		if g.open {
			open = " open"
		}
		fmt.Fprintf(&b, "<details class=\"group\"%s><summary>%s</summary>\n", open, html.EscapeString(g.title))
		for _, f := range g.fields {
			f.write(&b)
		}
		b.WriteString("</details>\n")
	}
	return b.String()
}

func (f field) write(b *strings.Builder) {
	key, label := html.EscapeString(f.key), html.EscapeString(f.label)
	fmt.Fprintf(b, `<div class="control" data-control="%[1]s">
<label for="%[1]s">%[2]s</label>
<input type="text" class="typed" data-typed="%[1]s" aria-label="%[2]s, typed" aria-describedby="%[1]s-echo %[1]s-fault">
<button type="button" data-reset="%[1]s" aria-label="%[2]s, back to its default">↺</button>
<button type="button" data-step="-1" aria-label="%[2]s, one step less">−</button>
<input type="range" class="slide" id="%[1]s" name="%[1]s" min="%[3]g" max="%[4]g" step="%[5]g" value="%[6]g" data-default="%[6]g">
<button type="button" data-step="1" aria-label="%[2]s, one step more">+</button>
<output class="echo" id="%[1]s-echo" for="%[1]s"></output><p class="fault" id="%[1]s-fault"></p>
</div>
`, key, label, f.low, f.high, f.step, f.value)
}
