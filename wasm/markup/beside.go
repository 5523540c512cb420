package markup

import (
	"slices"
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/core/weigh"
	"barkwright/wasm/scene/view"
)

// Column is a boat that stands beside others, with its name.
type Column struct {
	Name  string
	Canoe core.Canoe
}

// OneBoat stands where there is no other boat to compare with.
const OneBoat = `<p class="help">There is one boat here. Copy it, or start from another, in the shed.</p>`

// BesideChoice is the box that chooses a boat of the shelf.
func BesideChoice(i int, name string, on bool) string {
	checked := ""
	if on {
		checked = " checked"
	}
	return `<label class="choice"><input type="checkbox" data-beside="` + strconv.Itoa(i) + `" aria-describedby="beside-help"` +
		checked + `> ` + draw.Escape(name) + "</label> "
}

// MostBeside is how many boats stand side by side at most.
const MostBeside = 4

// outlineWidth is that of a boat's outline in its column, CSS pixels.
const outlineWidth = 260

// Beside are boats in columns, the first the one that differences are told from.
func Beside(boats []Column, s units.System, p draw.Palette) string {
	if len(boats) < 2 {
		return `<p class="help">Choose two boats or more.</p>`
	}
	canoes := make([]core.Canoe, len(boats))
	numbers := make([][]answer.Number, len(boats))
	for i, b := range boats {
		canoes[i], numbers[i] = b.Canoe, answer.All(b.Canoe)
	}
	var b strings.Builder
	b.WriteString(`<div class="beside">`)
	for i, l := range view.Outlines(canoes, outlineWidth, s) {
		b.WriteString("<figure><figcaption>" + draw.Escape(boats[i].Name) + "</figcaption>" +
			SVG("beside-"+strconv.Itoa(i), p, l) + "</figure>")
	}
	b.WriteString("</div>")
	var differ, agree strings.Builder
	for k, first := range numbers[0] {
		if weigh.Twin(first.Key) != "" || first.NotYet() {
			continue
		}
		row := make([]answer.Number, len(boats))
		for i := range boats {
			row[i] = numbers[i][k]
		}
		same := !slices.ContainsFunc(row, func(n answer.Number) bool { return n.Text(s) != first.Text(s) })
		to := &differ
		if same {
			to = &agree
		}
		besideRow(to, row, s)
	}
	checksBeside(&differ, &agree, canoes)
	b.WriteString(besideHead(boats) + differ.String() + "</tbody></table></div>")
	if agree.Len() > 0 {
		b.WriteString(`<details class="sheet"><summary>Where all agree</summary>` + besideHead(boats) + agree.String() +
			"</tbody></table></div></details>")
	}
	return b.String()
}

func besideHead(boats []Column) string {
	text := `<div class="scroll" tabindex="0" role="region" aria-label="Boats side by side"><table class="costs"><thead><tr>` +
		`<th scope="col">What</th>`
	for _, b := range boats {
		text += `<th scope="col">` + draw.Escape(b.Name) + "</th>"
	}
	return text + "</tr></thead><tbody>"
}

func besideRow(b *strings.Builder, row []answer.Number, s units.System) {
	b.WriteString(`<tr data-beside="` + row[0].Key + `"><th scope="row">` + draw.Escape(row[0].Label(s)) + "</th>")
	for i, n := range row {
		b.WriteString("<td><span>" + draw.Escape(n.Text(s)) + "</span>")
		if change := answer.Change(row[0], n, s); i > 0 && change != "" && n.Word == "" {
			b.WriteString(" <small>" + draw.Escape(change) + "</small>")
		}
		b.WriteString("</td>")
	}
	b.WriteString("</tr>")
}

// checksBeside are the checks of each boat.
func checksBeside(differ, agree *strings.Builder, boats []core.Canoe) {
	all := make([][]answer.Warning, len(boats))
	for i, c := range boats {
		all[i] = answer.Checks(c)
	}
	for k, first := range all[0] {
		to := agree
		cells := ""
		for i := range boats {
			if all[i][k].Word != first.Word {
				to = differ
			}
			cells += `<td data-state="` + states[all[i][k].State] + `">` + draw.Escape(all[i][k].Word) + "</td>"
		}
		to.WriteString(`<tr><th scope="row">` + draw.Escape(first.Label) + "</th>" + cells + "</tr>")
	}
}
