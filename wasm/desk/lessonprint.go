package desk

import (
	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/lesson"
	"barkwright/core/pattern"
	"barkwright/wasm/markup"
	"barkwright/wasm/scene/view"
)

// paperOutline is the width of the boat's outline on a lesson's paper, CSS pixels.
const paperOutline = 640

// paperSizes are the numbers of the boat that stand on it, where there are such.
var paperSizes = [...]string{"length", "beam", "depth", "weight.total", "afloat.freeboard", "afloat.gm"}

// printLesson is the lesson on two pages, worked out before they are made.
func (d *Desk) printLesson(l lesson.Lesson, date string) Reply {
	s, base := d.shown.System, d.taught.base
	run := d.shown.Known().Taught()
	if run == nil || run.Lesson.Key != l.Key {
		run = lesson.NewRun(l, core.Evaluate(base), nil)
		for run.Next() {
		}
	}
	paper := markup.Paper{Made: base.Name + ". " + date}
	// A design that has been worked out has only finite numbers: its line is there.
	line, _ := design.Line(base)
	paper.Made += ". " + pattern.Head{Code: line}.Mark() + ", " + pattern.VersionLine
	for _, picture := range view.Outlines([]core.Canoe{run.Canoes[0]}, paperOutline, s) {
		paper.Outline = markup.SVG("lesson-boat", draw.Print(), picture)
	}
	for _, key := range paperSizes {
		if name := run.Name(key, s); name != "" {
			paper.Sizes = append(paper.Sizes, markup.Watched{Key: key, Name: name, Now: run.Shown(key, 0, s)})
		}
	}
	return Reply{Print: markup.LessonPaper(run, paper, s)}
}
