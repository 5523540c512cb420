package lesson

import (
	"barkwright/core/known"
	"barkwright/core/stage"
	"barkwright/core/units"
)

const inch = units.Inch

var computed = known.Source{Basis: known.Computed, Cited: "worked out from the shape"}

func published(pages string) known.Source {
	return known.Source{Basis: known.Published, Cited: known.BarkCanoes + ", " + pages}
}

func depth() Lesson {
	return Lesson{
		Key: "depth", Title: "Depth", Question: "What does {2in} more depth cost?", Home: stage.Choose, Minutes: 12,
		Steps: []Step{
			{Does: "Hold the boat. Add {2in} to the depth.", Sets: []Setting{{Key: "depth", By: 2 * inch}}},
			{Does: "Do it again with the followers held still, so that the ends stay where they are.",
				Sets: []Setting{{Key: "depth", By: 2 * inch}}, Still: true},
		},
		Watch: []string{"afloat.freeboard", "ribs.longest", "bark.width", "weight.total", "post.end"},
		Claims: all(
			one(claim("nearly all of it is freeboard", 0.85*2*inch, at("afloat.freeboard", 1), less("afloat.freeboard", 0)),
				claim("but not more than all of it", -2*inch, at("afloat.freeboard", 0), less("afloat.freeboard", 1)),
				claim("a rib grows by much more than that", 1.4*2*inch, at("ribs.longest", 1), less("ribs.longest", 0)),
				claim("and so does the sheet", 1.4*2*inch, at("bark.width", 1), less("bark.width", 0)).
					where("where the sheet is widest amidships", widestAmidships)),
			rises("it is heavier", "weight.total", 0, 1),
			// Half a sixteenth: what shows as the same post.
			same("with followers held the end post stays", inch/32, at("post.end", 2), at("post.end", 0)),
			one(claim("it is not stiffer", 0, at("afloat.gm", 0), less("afloat.gm", 1)))),
		Found: "Freeboard {afloat.freeboard@1-0} more. In return the longest rib is {ribs.longest@1-0} longer, the " +
			"sheet {bark.width@1-0} wider, the boat {weight.total@1-0} heavier, the end post {post.end@1-0} longer. " +
			"With the followers held the end post is the same.",
		Why: "The side is paid twice, port and starboard; the boat sinks a little deeper under its own new weight. " +
			"Lifted ends are a second decision.",
		Next:    "Hold the followers and do it again: what do the ends cost by themselves?",
		Mistake: "Deeper is not steadier: the stiffness falls or stays.",
		Source:  computed,
	}
}

func frame() Lesson {
	return Lesson{
		Key: "frame", Title: "Frame and steadiness", Home: stage.Bed, Minutes: 20,
		Question: "Why is the frame narrower than the gunwales, and what makes a boat tippy?",
		Steps: []Step{
			{Does: "Set the frame to 72 % of the beam.", Sets: []Setting{{Key: "frameWidth", Times: 0.72, Of: "beam"}}},
			{Does: "Set it to 76 %.", Sets: []Setting{{Key: "frameWidth", Times: 0.76, Of: "beam"}}},
			{Does: "Set it to 80 %.", Sets: []Setting{{Key: "frameWidth", Times: 0.80, Of: "beam"}}},
			{Does: "Put the frame back. Let the paddlers kneel.", Sets: []Setting{{Key: "posture", To: 0}}},
			{Does: "Let them sit on the bottom.", Sets: []Setting{{Key: "posture", To: 1}}},
			{Does: "Let them sit on seats {9in} high.",
				Sets: []Setting{{Key: "posture", To: 2}, {Key: "seatHeight", To: 9 * inch}}},
			{Does: "Let them kneel again, in a boat {2in} broader.",
				Sets: []Setting{{Key: "posture", To: 0}, {Key: "beam", By: 2 * inch}}},
		},
		Watch: []string{"afloat.gm", "rib.middleRadius", "bark.width"},
		Claims: all(
			rises("a broader frame is stiffer", "afloat.gm", 1, 2, 3),
			falls("and bends the middle rib harder", "rib.middleRadius", 1, 2, 3),
			one(claim("and never asks less bark", 0, at("bark.width", 2), less("bark.width", 1)),
				claim("and never asks less bark", 0, at("bark.width", 3), less("bark.width", 2))),
			rises("the lower the weight, the stiffer", "afloat.gm", 6, 4, 5),
			one(claim("kneeling is worth more than {2in} of beam", 0, at("afloat.gm", 4), less("afloat.gm", 6), less("afloat.gm", 7),
				at("afloat.gm", 4)))),
		Found: "With the frame at 72, 76 and 80 % the stiffness is {afloat.gm@1}, {afloat.gm@2}, {afloat.gm@3} and " +
			"the middle rib bends to {rib.middleRadius@1}, {rib.middleRadius@2}, {rib.middleRadius@3}. Kneeling it " +
			"is {afloat.gm@4}, on the bottom {afloat.gm@5}, on seats {afloat.gm@6}, broader {afloat.gm@7}.",
		Why: "A wide bottom is steady, but bends ribs sharper and asks for more bark; flaring sides keep spray out " +
			"and let ribs bend. Weight low counts for more than {2in} of wood.",
		Next:    "Put one paddler aboard, alone.",
		Mistake: "Low cargo does not always steady a boat: the page makes no claim of it.",
		Source:  computed,
	}
}

func rocker() Lesson {
	return Lesson{
		Key: "rocker", Title: "Rocker", Question: "What does rocker cost?", Home: stage.Choose, Minutes: 12,
		Steps: []Step{
			{Does: "Set the rocker to none.", Sets: []Setting{{Key: "rocker", To: 0}}},
			{Does: "Set it to {1.5in}.", Sets: []Setting{{Key: "rocker", To: 1.5 * inch}}},
			{Does: "Set it to {3in}.", Sets: []Setting{{Key: "rocker", To: 3 * inch}}},
		},
		Watch: []string{"afloat.loadAtSixInches", "afloat.freeboard", "post.end", "post.middle"},
		Claims: all(
			falls("it carries less", "afloat.loadAtSixInches", 1, 2, 3),
			falls("it floats lower", "afloat.freeboard", 1, 2, 3),
			falls("the end posts are shorter", "post.end", 1, 2, 3),
			limited("where the blocks follow the rocker", blocksFollow,
				same("the middle post stays", 0.01*inch, at("post.middle", 3), at("post.middle", 1)))),
		Found: "With none, {1.5in} and {3in} it carries {afloat.loadAtSixInches@1}, {afloat.loadAtSixInches@2}, " +
			"{afloat.loadAtSixInches@3} at {6in} of freeboard, and floats {afloat.freeboard@1-3} lower with the " +
			"most; the end posts are {post.end@1}, {post.end@2}, {post.end@3}.",
		Why: "The ends lifted out carry nothing, and there is less height under the gunwale's ends. The blocks lift " +
			"bark and gunwale together, so the middle post stays.",
		Next: "Set the blocks under the heels to nothing.",
		Mistake: "A post stands on the bark, not on the ground. This page does not work out how a boat turns, and " +
			"says nothing of it.",
		Source: published("ends blocked up, pp. 63, 91; the rest worked out"),
	}
}

func leave() Lesson {
	return Lesson{
		Key: "leave", Title: "Leave it long", Question: "Why leave a rib long, and by how much?", Home: stage.Rib, Minutes: 15,
		Steps: []Step{
			{Does: "Add {0.5in} to the depth.", Sets: []Setting{{Key: "depth", By: 0.5 * inch}}},
			{Does: "Take {0.5in} off it.", Sets: []Setting{{Key: "depth", By: -0.5 * inch}}},
			{Does: "Put it back. Say that depth comes out within {0.25in}.", Sets: []Setting{{Key: "tolDepth", To: 0.25 * inch}}},
			{Does: "Within {0.5in}.", Sets: []Setting{{Key: "tolDepth", To: 0.5 * inch}}},
			{Does: "Within {1in}.", Sets: []Setting{{Key: "tolDepth", To: 1 * inch}}},
			{Does: "Within {0.5in} again, and say that the half girth was read by a tape.",
				Sets: []Setting{{Key: "tolDepth", To: 0.5 * inch}, {Key: "girthKnown", To: 1}}},
			{Does: "Put the tape away again.",
				Sets: []Setting{{Key: "tolDepth", To: 0.5 * inch}, {Key: "girthKnown", To: 0}}},
		},
		Watch: []string{"ribs.longest", "rib.spread"},
		Claims: all(
			one(claim("a rib grows by nearly twice the depth", 1.4*inch, at("ribs.longest", 1), less("ribs.longest", 2)),
				claim("but never by more than twice", -2.05*inch, at("ribs.longest", 2), less("ribs.longest", 1))),
			rises("the looser the depth, the more is left on", "rib.spread", 3, 4, 5),
			falls("a half girth that was read leaves less to doubt", "rib.spread", 7, 6)),
		Found: "{0.5in} of depth either way is {ribs.longest@1-2} of rib. With depth within {0.25in}, {0.5in} and " +
			"{1in} a middle rib may be off by {rib.spread@3}, {rib.spread@4}, {rib.spread@5}; with the half girth " +
			"read by {rib.spread@6}.",
		Why: "Errors of separate sizes seldom agree, so their squares are added. A rib can be cut again, and not " +
			"grown.",
		Next:    "Say that the half girth was read: then which size is the one to watch?",
		Mistake: "Leaving long everywhere wastes bark and lifts the sheer: posts cut long do.",
		Source:  published("ribs shortened in fitting, p. 52; the rest worked out"),
	}
}
