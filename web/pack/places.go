package main

import (
	"fmt"
	"html"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/stage"
)

// notches are the places of the page: the stages in their order, then the shed, where
// boats, files and paper are, and all of it on one page.
func notches() string {
	var b strings.Builder
	notch := func(key, number, name, title string) {
		here := ` tabindex="-1" aria-current="false"`
		if key == string(stage.Choose) {
			here = ` aria-current="true"`
		}
		fmt.Fprintf(&b, "<button type=\"button\" data-at=\"%s\"%s title=\"%s\">%s<span>%s</span>%s</button>\n", key, here,
			html.EscapeString(title), number, html.EscapeString(name), turns(key))
	}
	for i, s := range stage.All() {
		notch(string(s.Key), fmt.Sprintf("<b>%d</b>", i+1), s.Short, s.Name)
	}
	notch("shed", "", "Shed", "Boats, files, records and paper")
	notch("all", "", "All", "All of it on one page")
	return b.String()
}

// turns is where a stage's notch shows how much of it is done: four turns of root.
func turns(key string) string {
	if _, _, ok := stage.Lookup(stage.Key(key)); !ok {
		return ""
	}
	return `<small class="turns" data-progress="` + key + `"></small>`
}

// unopened hides what is at home at another stage than the one the page opens at.
func unopened(k stage.Key) string {
	if k == stage.Choose {
		return ""
	}
	return " hidden"
}

// cells are the numbers that matter at each stage and its check, to be filled in.
func cells() string {
	short := map[string]answer.Number{}
	c := core.Evaluate(design.Default())
	for _, n := range answer.All(c) {
		short[n.Key] = n
	}
	label := map[string]string{stage.WorstOfAll: "All checks"}
	for _, w := range answer.Checks(c) {
		label[w.Key] = w.Label
	}
	var b strings.Builder
	for _, s := range stage.All() {
		fmt.Fprintf(&b, "<div class=\"cells\" role=\"toolbar\" aria-label=\"The numbers that matter here\" "+
			"data-place=\"%s\"%s>\n", s.Key, unopened(s.Key))
		for _, key := range s.Large {
			fmt.Fprintf(&b, "<button type=\"button\" class=\"cell\" data-why=\"%s\"><span>%s</span><output aria-live=\"off\" "+
				"data-result=\"%s\"></output><small data-change=\"%s\"></small></button>\n", key, html.EscapeString(short[key].Short), key, key)
		}
		if s.Verdict != "" {
			fmt.Fprintf(&b, "<button type=\"button\" class=\"cell\" data-check=\"%s\"><span>%s</span><b data-verdict=\"%s\"></b></button>\n",
				s.Verdict, html.EscapeString(label[s.Verdict]), s.Verdict)
		} else {
			b.WriteString("<p class=\"cell\"><span>Check</span><b data-state=\"unchecked\">not checked by this page</b></p>\n")
		}
		b.WriteString("</div>\n")
	}
	return b.String()
}
