package main

import (
	"fmt"
	"html"
	"strings"
	"sync"

	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/markup"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
	"barkwright/wasm/work"
)

// opening is the boat that the page opens with, worked out here so that its numbers and
// its picture stand before the page's program is awake.
type opening struct {
	*work.Work
	numbers []work.Shown
	number  map[string]work.Shown
	checks  []answer.Warning
}

var opened = sync.OnceValue(func() opening {
	o := opening{Work: work.New(design.Default(), units.Imperial16), number: map[string]work.Shown{}}
	for more := true; more; {
		_, _, more = o.Known().Next()
	}
	o.numbers, o.checks = new(work.Numbers).Update(o.Work), o.Checks()
	for _, n := range o.numbers {
		o.number[n.Key] = n
	}
	return o
})

// headline is what stands in the numbers that are always in sight.
func headline() string {
	o := opened()
	return markup.Headline(o.numbers, o.checks, o.System)
}

// held is the control in hand at the stage where the page opens.
func held() string {
	h, _ := opened().Held(openingPlace.First())
	return fmt.Sprintf(`<span id="held-name">%s</span> <b id="held-value">%s</b> <small id="held-was"></small>`,
		html.EscapeString(h.Name), html.EscapeString(h.Value))
}

// verdict is a check as a cell shows it.
func verdict(key string) string {
	state, text := work.Verdict(opened().checks, key, opened().System)
	return fmt.Sprintf(`<b data-verdict="%s" data-state="%s">%s</b>`, key, markup.StateName(state), html.EscapeString(text))
}

// views are the sizes that the first picture is laid for, as its labels fit one: the view
// in a window of 1440 by 900 and in one of 390 by 844, CSS pixels.
var views = []struct {
	name string
	size draw.Size
}{{"broad", draw.Size{Width: 804, Height: 321, Letter: 16}}, {"slim", draw.Size{Width: 390, Height: 145, Letter: 16}}}

// pictures are the boat as the program draws it first, once for each of the views, and
// the keys of the pictures.
func pictures() (drawn, keys string) {
	o := opened()
	v := scene.View{Zoom: 1, Handles: true, State: scene.Finished, System: o.System, Load: scene.LoadOf(o.Canoe())}
	var b strings.Builder
	for _, at := range views {
		list := view.Draw(o.Canoe(), v, at.size)
		b.WriteString(`<div class="` + at.name + `">`)
		if err := (draw.SVG{Palette: draw.Screen(), ID: "first-" + at.name, Hasty: true}).Write(&b, list); err != nil {
			panic("pack: a strings.Builder does not fail")
		}
		b.WriteString("</div>")
		if words := list.KeyWords(); words != "" {
			keys += `<span class="` + at.name + `">Key: ` + html.EscapeString(words) + "</span>"
		}
	}
	return b.String(), keys
}
