package answer

import (
	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// joineryTable is how gunwales, thwarts and ends are worked where they meet.
func joineryTable(c core.Canoe) Table {
	t := Table{
		Key: "joinery", Title: "Joinery of gunwales, thwarts and ends", Home: stage.Gunwales, OnPaper: true,
		Note: "After one building example printed in " + fromAdney + ": its own size where a joint has one, in " +
			"proportion to your timber where it has not. Other builders work otherwise: the person teaching you " +
			"comes first. Finished sizes.",
	}
	d, j := c.Design, frame.NewJoinery(c.Design)
	b, k := c.Frame.Headboard, c.Frame.Closing
	notches := 2
	if !b.Notched {
		notches = 0
	}
	type joint struct {
		name      string
		size, by  Cell
		count     int
		how, page string
	}
	joints := []joint{
		{"inwale, bevel for the ribs' tips", num(j.Bevel), num(j.Bevel), 2, "off the lower outer corner, at 45 " +
			"degrees", "38"},
		{"inwale amidships", num(d.InwaleThickness), num(d.InwaleDepth), 2, "whole as far as the end thwarts, " +
			"then tapered evenly", "38-40"},
		{"inwale near its ends", num(j.EndThickness), num(j.EndDepth), 4, "where the half arrowhead begins", "38"},
		{"half arrowhead at each inwale end", num(j.ArrowLength), dash, 4, "its length; two together make the " +
			"point that is lashed", "38"},
		{"cap at its ends", num(j.CapEnd), num(d.CapThickness), 4, "its width and thickness; from the full width " +
			"amidships", "52"},
		{"mortise in the inwale", num(j.TenonThick), num(j.TenonWide), 2 * d.Thwarts,
			"its height and length, right through", "38-40"},
		{"tenon of a thwart", num(j.TenonThick), num(j.TenonWide), 2 * d.Thwarts,
			"its thickness and width, pegged from above", "38-40"},
		{"thwart pegs", num(j.PegStock), dash, c.Gather.Pegs.Thwarts, "one down through each tenon", "38-40"},
		{"thwart at its shoulders", num(j.ShoulderThick), num(frame.ThwartWidth), 2 * d.Thwarts,
			"its thickness and width", "38-40"},
		{"lashing holes, middle thwart", num(j.HoleInboard), dash, 2 * j.HolesMiddle,
			"inboard of the shoulder, half of them at each end", "40"},
		{"lashing holes, other thwarts", num(j.HoleInboard), dash, 2 * j.HolesOther * (d.Thwarts - 1),
			"inboard of the shoulder, one at each end", "40"},
		{"outwale pegs", num(j.PegStock), dash, c.Gather.Pegs.Outwales, "square stock 6 to 9 in (15 to 23 cm) long " +
			"makes two; none past the end thwarts in the example", "48"},
		{"cap pegs", num(j.PegStock), dash, c.Gather.Pegs.Caps, "about " + units.SmallLength.Both(gather.CapPegs) +
			" apart, clear of the lashings; two or three lashings at each end", "53, 117"},
		{"headboard, notch over the heel", num(b.NotchWidth).saying(wordIf(!b.Notched, noNotch)),
			when(b.Notched, num(b.NotchDepth)), notches,
			"its breadth and depth, just clear of the laminations", "49, 52"},
		{"headboard, tenon between the inwales", num(b.Neck), num(b.Tenon), 2, "its breadth and height", "52"},
		{"stitches through the stem-pieces", num(k.Spacing), dash, 2 * k.ThroughStem(),
			"so far apart along the ends; by group under Closing an end", "43, 49"},
		{"outwale lashings", about(k.Lashings[len(k.Lashings)-1].Along), dash, 2 * len(k.Lashings),
			"the innermost so far from the stem head, the others inboard of the stem and at mid flap", "49-50"},
		{"stem head over the outwale", num(j.HeadOver[0]), num(j.HeadOver[1]), 2, "from the one to the other", "49"},
		{"outwale past the stem", num(j.OutwalePast[0]), num(j.OutwalePast[1]), 4, "from the one to the other", "49"},
	}
	return fill(t, refs(joints),
		text("joint", "Joint", func(j *joint) string { return j.name }),
		col("size", "Size", units.SmallLength, func(j *joint) Cell { return j.size }),
		col("by", "by", units.SmallLength, func(j *joint) Cell { return j.by }),
		col("count", "How many", units.Count, func(j *joint) Cell { return whole(j.count) }),
		text("how", "How", func(j *joint) string { return j.how }),
		text("page", "Page", func(j *joint) string { return j.page }),
	)
}
