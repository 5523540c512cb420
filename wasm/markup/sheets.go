package markup

import (
	"fmt"
	"strings"

	"barkwright/core/design"
	"barkwright/wasm/work"
)

const sheetRow = `<tbody data-sheet="%[1]d" hidden><tr><th scope="row">%[2]d</th>
<td><input type="text" id="%[3]s" aria-label="%[5]s" aria-describedby="%[3]s-fault sheet%[2]d-echo onhand-help"></td>
<td><input type="text" id="%[4]s" aria-label="%[6]s" aria-describedby="%[4]s-fault sheet%[2]d-echo onhand-help"></td>
<td><button type="button" aria-label="Take sheet %[2]d off the list">✕</button></td></tr>
<tr><td colspan="4"><output aria-live="off" class="echo" id="sheet%[2]d-echo"></output>` +
	`<p class="fault" id="%[3]s-fault"></p><p class="fault" id="%[4]s-fault"></p></td></tr></tbody>`

// SheetRows are the rows of the list of sheets on hand, hidden until they are needed.
func SheetRows() string {
	var b strings.Builder
	for i := range design.MostSheets {
		fmt.Fprintf(&b, sheetRow, i, i+1, work.SheetKey(i, work.SheetWidth), work.SheetKey(i, work.SheetLength),
			work.SheetLabel(i, work.SheetWidth), work.SheetLabel(i, work.SheetLength))
	}
	return b.String()
}

// Paddlers are the folds of the other paddlers, made from the first one's: the page's
// file is smaller by them.
func Paddlers(first string) string {
	var b strings.Builder
	for n := 2; n <= design.MostPaddlers; n++ {
		as := fmt.Sprint(n)
		b.WriteString(strings.NewReplacer("paddler1", "paddler"+as, "Paddler 1", "Paddler "+as,
			`data-paddler="1"`, `data-paddler="`+as+`"`).Replace(first))
	}
	return b.String()
}
