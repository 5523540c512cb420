package soak

import (
	"io"
	"strings"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/chart"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/file"
	"barkwright/core/geom"
	"barkwright/core/pattern"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

var systems = []units.System{units.Imperial16, units.Imperial8, units.Metric}

// try looks at what a step of a slider works out and shows. It reports whether the
// design can be built.
func try(d design.Design, f *finds) (c core.Canoe, built bool) {
	f.caught("try", func() {
		var faults []design.Fault
		c, faults = core.Try(d)
		built = len(faults) == 0
		for _, fault := range faults {
			message := fault.Message(units.Imperial16)
			f.text("fault at "+fault.Key, message)
			if fault.Key == "" || !strings.HasSuffix(message, ".") {
				f.add("fault at %q is no sentence: %q", fault.Key, message)
			}
		}
		if !built {
			return
		}
		for _, n := range answer.All(c) {
			if n.Word == units.NotWorkedOut {
				f.add("%s is %s", n.Key, n.Word)
			}
		}
	})
	return c, built
}

// walk looks at everything of a boat.
func walk(c core.Canoe, f *finds) {
	f.caught("line and file", func() { kept(c.Design, f) })
	f.caught("answers", func() { answers(c, f) })
	for _, res := range []bark.Resolution{bark.ForPicture, bark.ForFigures} {
		f.caught("laid flat", func() {
			flat := core.LayFlat(c, res, nil, nil)
			if flat.State == geom.Converged {
				f.number("flat length", flat.Length)
				f.number("flat stretch", flat.P95)
			}
			f.caught("pictures of bark", func() { bareBark(c, &flat, f) })
			c = c.WithFlat(flat)
		})
	}
	f.caught("curve and sheets on hand", func() {
		c = c.WithCurve([]bark.CurvePoint{bark.StretchAt(c.Hull, c.Bark, 3, bark.ForPicture, nil)}).WithMakes(nil)
	})
	f.caught("answers with the skin", func() { answers(c, f) })
	f.caught("on the water", func() { onWater(c, f) })
	f.caught("pictures", func() { pictures(c, f) })
	f.caught("paper", func() { paper(c, f) })
	f.caught("measured", func() { measured(c, f) })
}

// kept writes a boat as it is kept and reads it back.
func kept(d design.Design, f *finds) {
	line, err := design.Line(d)
	if err != nil {
		f.add("line: %v", err)
		return
	}
	back, _, err := design.ReadLine(line)
	if err != nil {
		f.add("line read back: %v", err)
	} else if faults := core.Validate(back); len(faults) > 0 {
		f.add("line read back: %s", faults[0].Message(units.Metric))
	}
	text, err := file.File{Boats: []file.Boat{{Design: d}}}.Encode()
	if err != nil {
		f.add("file: %v", err)
		return
	}
	again, err := file.Decode(text)
	if err != nil || len(again.Boats) != 1 {
		f.add("file read back: %v", err)
	} else if again.Boats[0].Design != design.Seated(d) {
		f.add("file gives another boat back")
	}
}

func answers(c core.Canoe, f *finds) {
	for _, s := range systems {
		for _, n := range answer.All(c) {
			f.number(n.Key, n.Value)
			f.number(n.Key, n.Low)
			f.number(n.Key, n.High)
			f.text(n.Key, n.Text(s)+" "+n.Label(s)+" "+n.Working(s))
		}
		for _, w := range answer.Checks(c) {
			f.text(w.Key, w.Word+" "+w.Text(s))
		}
		for _, key := range answer.TableKeys() {
			t, _ := answer.MakeTable(c, key)
			table(t, s, f)
		}
	}
}

func table(t answer.Table, s units.System, f *finds) {
	for _, r := range t.Rows {
		for i, cell := range r.Cells {
			f.number(t.Key+" "+t.Columns[i].Key, cell.Value)
		}
	}
	written(t.Key+".csv", f, func(w io.Writer) error { return sheet.CSV(w, "a boat", t, s) })
	written(t.Key+".html", f, func(w io.Writer) error { return sheet.HTMLTable(w, t, s) })
}

// written looks at what is written.
func written(what string, f *finds, write func(io.Writer) error) {
	var b strings.Builder
	if err := write(&b); err != nil {
		f.add("%s: %v", what, err)
	}
	f.text(what, b.String())
}

func onWater(c core.Canoe, f *finds) {
	w := core.OnWater(c)
	for _, s := range systems {
		for _, n := range answer.Water(c, w) {
			f.number(n.Key, n.Value)
			f.text(n.Key, n.Text(s)+" "+n.Label(s)+" "+n.Working(s))
		}
		for _, t := range answer.CurveTables(w) {
			table(t, s, f)
		}
		for _, ch := range chart.Water(c, w, s) {
			picture(ch.Key, ch.Draw(400), f)
		}
	}
	for _, heel := range []float64{0, 10, 60} {
		picture("heeled", view.Heeled(c, heel*units.Degree, scene.View{Zoom: 1},
			draw.Size{Width: 400, Height: 300, Letter: 16}), f)
	}
}

// sizes are the rooms a picture is drawn in: a desk's, a phone's and next to none.
var sizes = []draw.Size{{Width: 1000, Height: 400, Letter: 16}, {Width: 390, Height: 300, Letter: 20},
	{Width: 1, Height: 1, Letter: 16}}

func pictures(c core.Canoe, f *finds) {
	load := &scene.Load{}
	if up := c.Afloat.Floated.Upright; c.Afloat.Floated.State == afloat.Floats {
		load.Height, load.Slope = up.Waterplane.Height, up.Waterplane.Slope
	}
	for i, size := range sizes {
		for _, state := range []scene.State{scene.OnTheBed, scene.Finished} {
			v := scene.View{State: state, Zoom: 1, Handles: true, Load: load, System: systems[i]}
			if i == 1 {
				v = v.ZoomAt(draw.Point{X: 300, Y: 20}, 5, size)
				v.Ghost = &c
			}
			l := view.Draw(c, v, size)
			picture(state.String(), l, f)
			for _, p := range l.Parts {
				f.text(p.Name, view.Readout(c, p.Name, systems[i]))
			}
		}
	}
}

func bareBark(c core.Canoe, flat *bark.Flat, f *finds) {
	for _, size := range sizes {
		picture("laid flat", view.Draw(c, scene.View{State: scene.LaidFlat, Zoom: 1, Flat: flat}, size), f)
		for _, up := range []float64{0, 0.4, 1} {
			picture("sides up", view.Draw(c, scene.View{State: scene.SidesUp, Zoom: 1, Flat: flat, Up: up}, size), f)
		}
	}
}

func picture(what string, l draw.List, f *finds) {
	f.numbers("picture "+what, l.Ops)
	f.numbers("parts of "+what, l.Parts)
	written(what+".svg", f, func(w io.Writer) error { return draw.SVG{Palette: draw.Screen(), ID: "p"}.Write(w, l) })
}

func paper(c core.Canoe, f *finds) {
	head := pattern.Head{Boat: c.Design.Name, Date: "a day"}
	var patterns []string
	for _, k := range pattern.Kinds() {
		patterns = append(patterns, k.Key)
	}
	for _, s := range systems[1:] {
		written("sheets", f, func(w io.Writer) error {
			pages, _ := sheet.Pages(sheet.Job{Canoe: c, System: s, Head: head, Sheets: stage.Keys(),
				Cards:    stage.Keys(),
				Patterns: patterns})
			return sheet.Print(w, pages)
		})
		for _, key := range patterns {
			p := pattern.Stack(pattern.Make(c, key, pattern.Options{System: s}))
			if len(p.Lines) == 0 {
				continue
			}
			f.numbers("pattern "+key, p)
			written("pattern "+key, f, func(w io.Writer) error { return p.SVG(w, head) })
			written("roll "+key, f, func(w io.Writer) error { return sheet.PrintRoll(w, p, head) })
		}
	}
}

// measured reads a boat as a record would state it, and finds it again.
func measured(c core.Canoe, f *finds) {
	d := c.Design
	data := []record.Datum{
		{Kind: record.LengthOverall, Value: d.Length}, {Kind: record.BeamInside, Value: d.Beam + units.Inch},
		{Kind: record.DepthInwale, Value: d.Depth}, {Kind: record.EndHeight, Value: d.EndHeight},
	}
	found := refit.Fit(record.Record{Name: d.Name, Data: data})
	for _, r := range found.Rows {
		f.number("measured "+r.Named(units.Metric), r.Difference)
	}
	for _, s := range systems {
		table(answer.MeasuredTable(found.Rows, s), s, f)
		table(answer.HeldTable(found.Held, s), s, f)
	}
	built := refit.AsBuilt(d, data, units.Metric)
	table(answer.MovedTable(built, units.Metric), units.Metric, f)
	try(built.Design, f)
}
