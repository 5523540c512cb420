package markup

import (
	"strconv"
	"strings"

	"barkwright/core/draw"
	"barkwright/wasm/tracing"
)

// Tracing is what the window of a picture says, as HTML by the ids of its places.
func Tracing(s tracing.Shown) map[string]string {
	return map[string]string{
		"tracing-view": Options(s.Views), "tracing-sort": Options(s.Sorts), "tracing-task": tasks(s.Tasks),
		"tracing-ask": draw.Escape(s.Ask), "tracing-scale": draw.Escape(s.Scale), "tracing-kept": draw.Escape(s.Kept),
		"tracing-marks": marks(s.Marks),
	}
}

// tasks are what can be pressed, in their groups.
func tasks(groups []tracing.Group) string {
	var b strings.Builder
	b.WriteString(Option("", "Move the picture"))
	for _, g := range groups {
		b.WriteString(`<optgroup label="` + draw.Escape(g.Name) + `">`)
		for _, p := range g.Tasks {
			b.WriteString(Option(p.ID, p.Name))
		}
		b.WriteString(`</optgroup>`)
	}
	return b.String()
}

// marks is the list of what was pressed, each with a button for every point of it.
func marks(list []tracing.Mark) string {
	var b strings.Builder
	for _, m := range list {
		name := draw.Escape(m.Name)
		b.WriteString(`<li><b>` + name + `</b> <span`)
		if m.Wrong {
			b.WriteString(` class="fault"`)
		}
		b.WriteString(`>` + draw.Escape(m.Says) + `</span><span class="row">`)
		for k, p := range m.Points {
			label := "Point"
			if len(m.Points) > 1 {
				label += " " + strconv.Itoa(k+1)
			}
			b.WriteString(`<button type="button" data-trace="hold:` + strconv.Itoa(p.ID) + `" aria-pressed="` +
				strconv.FormatBool(p.Held) + `">` + label)
			if p.Says != "" {
				class := ""
				if p.Outside {
					class = ` class="outside"`
				}
				b.WriteString(` <small` + class + `><span class="unseen">the fitted boat </span>` + draw.Escape(p.Says) + `</small>`)
			}
			b.WriteString(`</button>`)
		}
		b.WriteString(`<button type="button" data-trace="take-off:` + strconv.Itoa(m.ID) + `" aria-label="Take off ` + name +
			`">✕</button></span></li>`)
	}
	return b.String()
}
