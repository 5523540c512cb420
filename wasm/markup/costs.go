package markup

import (
	"strings"

	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/core/weigh"
	"barkwright/wasm/work"
)

// NothingHeld stands in place of what it costs where no boat is held.
const NothingHeld = `<p class="help">No boat is held. Hold this one, change it, and what differs is listed here.</p>`

// Costs is what differs between the boat held and the one in hand: the largest first, then
// by stage, and folded away what hardly changed and the pieces.
func Costs(c work.Costs) string {
	var b strings.Builder
	if c.Before {
		b.WriteString(`<p class="fault">Before the fault: the boat as it last could be built.</p>`)
	}
	if len(c.Rows)+len(c.Controls) == 0 {
		b.WriteString("<p>Nothing differs from " + draw.Escape(c.Against) + ".</p>")
		return b.String()
	}
	if len(c.Most) > 0 {
		b.WriteString("<h3>Most of all</h3>" + costHead())
		for _, i := range c.Most {
			costRow(&b, c.Rows[i])
		}
		b.WriteString("</tbody></table></div>")
	}
	b.WriteString(controlsMoved(c))
	if !c.Shared {
		b.WriteString(`<p class="row"><button type="button" data-costs="steps">Show step by step what came from what</button></p>`)
	}
	hardly := costsByStage(&b, c)
	if hardly != "" {
		b.WriteString(`<details class="sheet"><summary>Hardly changed</summary>` + costHead() + hardly +
			"</tbody></table></div></details>")
	}
	b.WriteString(pieceByPiece(c.Pieces))
	if c.Shared {
		b.WriteString(`<p class="help">What came from what: each control set in the order in which it was taken up, nothing else ` +
			`moving, then what follows let go. In another order the shares would be others.</p>`)
	}
	return b.String()
}

// costsByStage writes the rows stage by stage, and returns those that hardly changed.
func costsByStage(b *strings.Builder, c work.Costs) string {
	var hardly strings.Builder
	for _, st := range stage.All() {
		open := false
		for _, r := range c.Rows {
			switch {
			case r.Home != st.Key:
			case r.Score < weigh.Hardly:
				costRow(&hardly, r)
			default:
				if !open {
					b.WriteString("<h3>" + draw.Escape(st.Name) + "</h3>" + costHead())
					open = true
				}
				costRow(b, r)
			}
		}
		if open {
			b.WriteString("</tbody></table></div>")
		}
	}
	return hardly.String()
}

func costHead() string {
	return `<div class="scroll"><table class="costs"><thead><tr><th scope="col">What</th><th scope="col">Held</th>` +
		`<th scope="col">Now</th><th scope="col">Differs by</th><th scope="col">From what</th></tr></thead><tbody>`
}

func costRow(b *strings.Builder, r weigh.Row) {
	b.WriteString(`<tr data-cost="` + r.Key + `"><th scope="row">` + draw.Escape(r.Name) + "</th><td>" + draw.Escape(r.Held) +
		"</td><td>" + draw.Escape(r.Now) + "</td><td>" + draw.Escape(r.Change))
	if r.Finer != "" {
		b.WriteString("<br><small>before rounding, " + draw.Escape(r.Finer) + "</small>")
	}
	for _, twin := range r.Twins {
		b.WriteString("<br><small>" + draw.Escape(twin) + "</small>")
	}
	b.WriteString("</td><td>" + draw.Escape(FromWhat(r)) + "</td></tr>")
}

// FromWhat says what each step of the way brought about of a row's change.
func FromWhat(r weigh.Row) string {
	if len(r.From) == 1 && r.Smaller == 0 {
		return "all from " + fromOne(r.From[0])
	}
	var said []string
	for _, share := range r.From {
		said = append(said, share.Change+" from "+fromOne(share))
	}
	if len(said) > 0 && strings.Contains(r.Held+r.Now, " to ") {
		said[0] = "of the middle of the range " + said[0]
	}
	if r.Smaller > 0 && len(said) > 0 {
		said = append(said, "and smaller")
	}
	return strings.Join(said, "; ")
}

func fromOne(s weigh.Share) string {
	if len(s.Keys) == 0 {
		return "what followed"
	}
	var names []string
	for _, key := range s.Keys {
		short, _, _ := strings.Cut(weigh.NameOf(key), ":")
		names = append(names, answer.InSentence(short))
	}
	text := strings.Join(names, " and ")
	if s.Along {
		text += " together with what follows"
	}
	return text
}

// controlsMoved lists what was set otherwise, and what followed.
func controlsMoved(c work.Costs) string {
	var b strings.Builder
	b.WriteString(`<h3>What was set otherwise</h3><div class="scroll"><table class="costs"><thead><tr><th scope="col">Control</th>` +
		`<th scope="col">Held</th><th scope="col">Now</th><th scope="col">Differs by</th>` +
		`<th scope="col">Moved by</th></tr></thead><tbody>`)
	for _, m := range c.Controls {
		who := "you"
		if m.Follows {
			who = "it followed"
		}
		b.WriteString(`<tr><th scope="row">` + draw.Escape(m.Label) + "</th><td>" + draw.Escape(m.Held) + "</td><td>" +
			draw.Escape(m.Now) + "</td><td>" + draw.Escape(m.Change) + "</td><td>" + who + "</td></tr>")
	}
	b.WriteString("</tbody></table></div>")
	return b.String()
}

// pieceByPiece folds away the pieces that differ, table by table.
func pieceByPiece(all []weigh.Pieces) string {
	var b strings.Builder
	for _, p := range all {
		b.WriteString(`<details class="sheet"><summary>` + draw.Escape(p.Title) + `, piece by piece</summary><div class="scroll">` +
			`<table class="costs"><thead><tr><th scope="col">Piece</th><th scope="col">Held</th><th scope="col">Now</th>` +
			`<th scope="col">Differs by</th></tr></thead><tbody>`)
		for _, r := range p.Rows {
			held, now := r.Held, r.Now
			if held == "" {
				held = "only now"
			}
			if now == "" {
				now = "only held"
			}
			b.WriteString(`<tr><th scope="row">` + draw.Escape(r.Name) + "</th><td>" + draw.Escape(held) + "</td><td>" +
				draw.Escape(now) + "</td><td>" + draw.Escape(r.Change) + "</td></tr>")
		}
		b.WriteString("</tbody></table></div></details>")
	}
	return b.String()
}
