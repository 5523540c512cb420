package pattern

import (
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/geom"
)

func mirrored(points []geom.Vec2) []geom.Vec2 {
	return each(points, aft)
}

func headboardPattern(m maker) []Pattern {
	b := m.Frame.Headboard
	p := Pattern{Key: "headboard", Name: "Headboard",
		Note: "Two alike, " + m.small(frame.HeadboardThickness) + " thick, drawn to the length they have when sprung. " +
			"The neck is the tenon between the inwales; the notch goes over the heel of the stem-piece. Try it straight " +
			"first: wood is taken off more easily than put on."}
	// The board is cut as long as it is along its curve when sprung.
	stretch := b.Sprung / b.Height
	outline := make([]geom.Vec2, len(b.Outline))
	for i, q := range b.Outline {
		outline[i] = geom.Vec2{X: q.X, Y: q.Y * stretch}
	}
	p.draw(Cut, outline...)
	p.draw(Cut, mirrored(outline)...)
	p.draw(Centre, outline[0], geom.Vec2{Y: b.Sprung})
	beside := func(line float64, text string) {
		p.label(geom.Vec2{X: b.Width/2 + 0.006, Y: b.Sprung/2 - 0.007*line}, text)
	}
	beside(0, "length "+m.small(b.Sprung)+", standing "+m.small(b.Height))
	beside(1, "widest "+m.small(b.Width))
	beside(2, "tenon "+m.small(b.Neck)+" by "+m.small(b.Tenon))
	if b.Notched {
		beside(3, "notch "+m.small(b.NotchWidth)+" by "+m.small(b.NotchDepth))
	} else {
		beside(3, "no notch: square over the heel")
	}
	return []Pattern{p.done()}
}

// centreLine is how long the centre line of a rib's section is drawn, m.
const centreLine = 0.12

// sectionPieces is how many straight pieces half a rib's section is drawn in.
const sectionPieces = 120

func sectionPatterns(m maker) []Pattern {
	var out []Pattern
	for _, r := range sectionRibs(m.Frame, m.Ribs) {
		name := "Rib " + nameOfRib(r.Number) + ", section"
		p := Pattern{Key: "section-" + nameOfRib(r.Number), Name: name,
			Note: "The port half of the rib's outer face, inside bark and sheathing, to its tip. Turn it over on the " +
				"centre line. The plane leans as the rib does."}
		shape := r.Shape(m.Hull, sectionPieces)
		p.draw(Cut, shape...)
		tip := shape[len(shape)-1]
		// Long enough to be set square, and on the page of the bottom.
		centre := shape[0].Y + min(tip.Y-shape[0].Y, centreLine)
		p.draw(Centre, shape[0], geom.Vec2{X: shape[0].X, Y: centre})
		p.draw(Mark, tip, geom.Vec2{X: tip.X - 0.02, Y: tip.Y})
		inner := geom.Offset(shape, r.Thickness)
		if r.Bend.Radius > r.Thickness {
			p.draw(Mark, inner...)
		}
		texts := []string{"rib " + nameOfRib(r.Number) + ", centre line", "finished " + m.length(r.Length) + ", tip to tip"}
		// Inside the rib where it is broad enough.
		inside := draw.Lettered(texts[1], twelvePoints, false)+10 < (tip.X-shape[0].X)*millimetres*0.8
		for i, text := range texts {
			l := Label{At: toPaper(geom.Vec2{X: shape[0].X + 0.004, Y: (shape[0].Y+centre)/2 - 0.007*float64(i)}), Text: text}
			if !inside {
				l.At.X -= 8
				l.End = true
			}
			p.Labels = append(p.Labels, l)
		}
		p.Labels = append(p.Labels, Label{At: toPaper(geom.Vec2{X: tip.X - 0.022, Y: tip.Y - 0.0015}),
			Text: "tip", End: true})
		out = append(out, p.done())
	}
	return out
}

// tipPattern is half the longest rib laid flat, from its middle to its tip, with
// the tip's bevel seen from the edge, in the taper that the weights take.
func tipPattern(m maker) []Pattern {
	d := m.Design
	r := m.Frame.Ribs[0]
	for _, q := range m.Frame.Ribs {
		if q.Length > r.Length {
			r = q
		}
	}
	taper := r.Taper(d)
	half, wide, shoulder, tip := r.Length/2, taper.Middle/2, taper.Shoulder/2, taper.Tip/2
	from := half - taper.Length
	p := Pattern{Key: "tip", Name: "Rib taper and bevel",
		Note: "Half of rib " + nameOfRib(r.Number) + ", the longest, from its middle to its tip, as finished: leave " +
			m.small(gather.RibTrim) + " at the tip until the rib has been tried. For another rib keep the tip and slide " +
			"the middle to its half length. Tips are cut at 45 degrees, the outer face long."}
	p.draw(Cut, geom.Vec2{X: -wide}, geom.Vec2{X: -shoulder, Y: from}, geom.Vec2{X: -tip, Y: half},
		geom.Vec2{X: tip, Y: half}, geom.Vec2{X: shoulder, Y: from}, geom.Vec2{X: wide})
	p.draw(Dotted, geom.Vec2{X: -shoulder, Y: from}, geom.Vec2{X: shoulder, Y: from})
	beside := func(y float64, text string) { p.label(geom.Vec2{X: wide + 0.004, Y: y}, text) }
	p.Labels = append(p.Labels, Label{At: toPaper(geom.Vec2{X: -wide - 0.003, Y: from}),
		Text: "taper begins, " + m.small(taper.Length) + " from the tip", End: true})
	p.draw(Centre, geom.Vec2{}, geom.Vec2{Y: half})
	p.draw(Centre, geom.Vec2{X: -wide}, geom.Vec2{X: wide})
	p.draw(Mark, geom.Vec2{X: -tip, Y: half - r.Thickness}, geom.Vec2{X: tip, Y: half - r.Thickness})
	edge := wide + 0.02
	inside := edge + r.Thickness
	p.draw(Cut, geom.Vec2{X: edge, Y: half - 0.12}, geom.Vec2{X: edge, Y: half},
		geom.Vec2{X: inside, Y: half - r.Thickness}, geom.Vec2{X: inside, Y: half - 0.12})
	p.label(geom.Vec2{X: edge, Y: half - 0.128}, "from the edge")
	p.label(geom.Vec2{X: tip + 0.012, Y: half - r.Thickness - 0.002}, "bevel")
	beside(0, "middle, "+m.small(r.Width)+" wide")
	beside(half/2, m.length(half)+" to the tip")
	return []Pattern{p.done()}
}
