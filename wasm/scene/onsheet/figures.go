// Package onsheet draws what stands on the build sheets: for each stage of the work the
// pictures that are wanted there, in black on white without a screen to be touched.
package onsheet

import (
	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/flat"
	"barkwright/wasm/scene/view"
)

// Wide is the room of both views on a sheet, CSS pixels: the sheet's breadth, and the
// twelve points of its lettering.
var Wide = draw.Size{Width: 718, Height: 330, Letter: 16}

// high is Wide with another height, of which there is a share.
func (l looker) high(pixels float64) draw.Size {
	return draw.Size{Width: Wide.Width, Height: l.share * pixels, Letter: Wide.Letter}
}

// slots are the figures of the stages, in the order in which they stand on the sheet.
var slots = map[stage.Key][]func(looker) sheet.Figure{
	stage.Choose:   {finished, bodyPlan},
	stage.Gather:   {bySheet},
	stage.Gunwales: {gunwaleMarks, gunwaleCut},
	stage.Bed:      {bedPlan},
	stage.Bark:     {flatBark, bySheet},
	stage.Lace:     {posts},
	stage.Ends:     {end},
	stage.Rib:      {sections, ribBlanks},
	stage.Pitch:    {afloat},
	stage.Keep:     {names},
}

// Figures returns the drawings of a stage's build sheet, with a share of their usual height and
// letters as large. The canoe has its bark laid flat. Repairs are those that the log holds: they stand where the boat
// is kept, and nothing is cut after a drawing with them.
func Figures(c core.Canoe, s units.System, repairs []answer.Mended, k stage.Key, share float64) []sheet.Figure {
	at := looker{c, scene.View{Zoom: 1, System: s, Load: scene.LoadOf(c)}, share}
	if c.Skin != nil {
		at.Flat = &c.Skin.Flat
	}
	if k == stage.Keep {
		at.Repairs = repairs
	}
	var out []sheet.Figure
	for _, draw := range slots[k] {
		out = append(out, draw(at))
	}
	if len(at.Repairs) > 0 {
		out = append(out, mended(at))
	}
	return out
}

// looker is a boat and how it is looked at.
type looker struct {
	core.Canoe
	scene.View
	share float64
}

func (l looker) drawn(caption string, size draw.Size) sheet.Figure {
	return sheet.Figure{Caption: caption, Drawing: view.Draw(l.Canoe, l.View, size)}
}

func finished(l looker) sheet.Figure {
	l.State = scene.Finished
	return l.drawn("Top and side view, finished.", l.high(Wide.Height))
}

func bodyPlan(l looker) sheet.Figure {
	l.State, l.Only = scene.Finished, scene.BodyPlan
	return l.drawn("Body plan: sections at ribs, numbered from the middle.", l.high(bodyHigh(l)))
}

// bodyHigh is how high a body plan is that takes the sheet's whole breadth, CSS pixels: the boat's
// own proportion and the rows round it, at most most of a page.
func bodyHigh(l looker) float64 {
	const rows, most = 90, 860
	return min(most, rows+Wide.Width*l.Hull.Sheer(l.Hull.GunwaleX)/(1.15*l.Design.Beam))
}

func bedPlan(l looker) sheet.Figure {
	l.State = scene.OnTheBed
	return l.drawn("Top and side view, on the bed.", l.high(Wide.Height))
}

func flatBark(l looker) sheet.Figure {
	l.State = scene.LaidFlat
	return l.drawn("The bark laid flat, as it lies on the bed.", l.high(290))
}

// mended is the flat bark without its measures: what is read off it is where the repairs lie.
func mended(l looker) sheet.Figure {
	l.State, l.Layer = scene.LaidFlat, scene.Names
	return l.drawn("The bark laid flat, with the repairs by number.", l.high(330))
}

func bySheet(l looker) sheet.Figure {
	const title, each, most = 40, 115, 380 // px
	l.State, l.Only = scene.LaidFlat, scene.BySheet
	return l.drawn("Sheet by sheet: what is cut from it and what is left.",
		l.high(min(most, title+each*float64(flat.SheetCount(l.Canoe)))))
}

func gunwaleCut(l looker) sheet.Figure {
	return sheet.Figure{Caption: "The gunwale cut across amidships.", Drawing: view.GunwaleCut(l.Canoe, l.View, l.high(270))}
}

func end(l looker) sheet.Figure {
	return sheet.Figure{Caption: "The end, its near side taken off: the stem-piece inside the bark's edge, and the headboard.",
		Drawing: view.End(l.Canoe, l.View, l.high(360))}
}

// ribBlanks has a line of lettering's height for each rib.
func ribBlanks(l looker) sheet.Figure {
	const rows, line, most = 75, 15, 880
	l.State, l.Only = scene.Finished, scene.RibBlanks
	return l.drawn("Every rib as a straight blank, with its marks.", l.high(min(most, rows+line*float64(len(l.Frame.Ribs)))))
}

func posts(l looker) sheet.Figure {
	l.State, l.Only = scene.OnTheBed, scene.SideOnly
	return l.drawn("Side view on the bed: the posts that hold the sheer.", l.high(190))
}

func sections(l looker) sheet.Figure {
	l.State, l.Only = scene.Finished, scene.SectionsOnly
	return l.drawn("Sections at ribs, with what they bend to.", l.high(230))
}

func afloat(l looker) sheet.Figure {
	l.State, l.Only = scene.Finished, scene.SideOnly
	return l.drawn("Side view, with the water line of the crew and cargo as set.", l.high(180))
}

func names(l looker) sheet.Figure {
	l.State, l.Layer = scene.Finished, scene.Names
	return l.drawn("The parts by name.", l.high(Wide.Height))
}
