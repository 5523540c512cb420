package main

import (
	"fmt"
	"html"
	"strings"

	"barkwright/core/stage"
	"barkwright/wasm/work"
)

// openingPlace is where the page opens on its first day.
var openingPlace = work.AtStage(stage.Choose)

// notches are the places of the page: the stages in their order, then the shed, where
// boats, files and paper are, and all of it on one page.
func notches() string {
	var b strings.Builder
	notch := func(key, number, name, title string) {
		here := ` tabindex="-1" aria-current="false"`
		if work.Place(key) == openingPlace {
			here = ` aria-current="true"`
		}
		fmt.Fprintf(&b, "<button type=\"button\" data-at=\"%s\"%s title=\"%s\">%s<span>%s</span>%s</button>\n", key, here,
			html.EscapeString(title), number, html.EscapeString(name), turns(key))
	}
	for i, s := range stage.All() {
		notch(string(s.Key), fmt.Sprintf("<b>%d</b>", i+1), s.Short, s.Name)
	}
	notch("season", "", "Season", "The crew, the days and the plan of the work")
	notch("compare", "", "Compare", "What a change costs, and boats side by side")
	notch("lessons", "", "Lessons", "Ten questions, answered on the boat")
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
	if work.AtStage(k) == openingPlace {
		return ""
	}
	return " hidden"
}

// cells are the numbers that matter at each stage and its check, as they are of the boat
// that the page opens with.
func cells() string {
	label := map[string]string{stage.WorstOfAll: "All checks"}
	for _, w := range opened().checks {
		label[w.Key] = w.Label
	}
	var b strings.Builder
	for _, s := range stage.All() {
		fmt.Fprintf(&b, "<div class=\"cells\" role=\"toolbar\" aria-label=\"The numbers that matter here\" "+
			"data-place=\"%s\"%s>\n", s.Key, unopened(s.Key))
		for _, key := range s.Large {
			n := opened().number[key]
			fmt.Fprintf(&b, "<button type=\"button\" class=\"cell\" data-why=\"%s\"><span>%s</span><output aria-live=\"off\" "+
				"data-result=\"%s\">%s</output><small data-change=\"%s\"></small></button>\n", key, html.EscapeString(n.Short), key,
				html.EscapeString(n.Text()), key)
		}
		if s.Verdict != "" {
			fmt.Fprintf(&b, "<button type=\"button\" class=\"cell\" data-check=\"%s\"><span>%s</span>%s</button>\n",
				s.Verdict, html.EscapeString(label[s.Verdict]), verdict(s.Verdict))
		} else {
			b.WriteString("<p class=\"cell\"><span>Check</span><b data-state=\"unchecked\">not checked by this page</b></p>\n")
		}
		b.WriteString("</div>\n")
	}
	return b.String()
}
