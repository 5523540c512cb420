package answer

import (
	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/units"
)

// joineryTable is how gunwales and thwarts are worked where they meet.
func joineryTable(c core.Canoe) Table {
	t := Table{
		Key: "joinery", Title: "Joints of gunwales and thwarts", Group: Gunwales,
		Note:    "After one building example printed in " + fromAdney + ": its own size where a joint has one, in proportion to your timber where it has not. Other builders work otherwise: the person teaching you comes first. Finished sizes.",
		Columns: []Column{{"joint", "Joint", units.Count}, {"size", "Size", units.SmallLength}, {"by", "by", units.SmallLength}, {"count", "How many", units.Count}, {"how", "How", units.Count}, {"page", "Page", units.Count}},
	}
	d, j := c.Design, frame.NewJoinery(c.Design)
	add := func(name string, size, by, n Cell, how, page string) {
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(name), size, by, n, words(how), words(page)}})
	}
	none := words("–")
	add("inwale, bevel for the ribs' tips", num(j.Bevel), num(j.Bevel), whole(2), "off the lower outer corner, at 45 degrees", "38")
	add("inwale amidships", num(d.InwaleThickness), num(d.InwaleDepth), whole(2), "tapered evenly from here to its ends", "38")
	add("inwale near its ends", num(j.EndThickness), num(j.EndDepth), whole(4), "where the half arrowhead begins", "38")
	add("half arrowhead at each inwale end", num(j.ArrowLength), none, whole(4), "its length; two together make the point that is lashed", "38")
	add("cap at its ends", num(j.CapEnd), num(d.CapThickness), whole(4), "its width and thickness; from the full width amidships", "52")
	add("mortise in the inwale", num(j.TenonThick), num(j.TenonWide), whole(2*d.Thwarts), "its height and length, right through", "38-40")
	add("tenon of a thwart", num(j.TenonThick), num(j.TenonWide), whole(2*d.Thwarts), "its thickness and width, pegged from above", "38-40")
	add("thwart at its shoulders", num(j.ShoulderThick), num(frame.ThwartWidth), whole(2*d.Thwarts), "its thickness and width", "38-40")
	add("lashing holes, middle thwart", num(j.HoleInboard), none, whole(2*j.HolesMiddle), "inboard of the shoulder, half of them at each end", "40")
	add("lashing holes, other thwarts", num(j.HoleInboard), none, whole(2*j.HolesOther*(d.Thwarts-1)), "inboard of the shoulder, one at each end", "40")
	add("outwale pegs", num(j.PegStock), none, whole(c.Gather.Pegs.Outwales), "square stock 6 to 9 in (15 to 23 cm) long makes two; none past the end thwarts in the example", "48")
	add("cap pegs", num(j.PegStock), none, whole(c.Gather.Pegs.Caps), "about a foot (30 cm) apart, clear of the lashings; two or three lashings at each end", "53, 117")
	add("stem head over the outwale", num(j.HeadOver[0]), num(j.HeadOver[1]), whole(2), "from the one to the other", "49")
	add("outwale past the stem", num(j.OutwalePast[0]), num(j.OutwalePast[1]), whole(4), "from the one to the other", "49")
	return t
}
