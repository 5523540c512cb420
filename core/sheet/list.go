package sheet

import (
	"slices"

	"barkwright/core/answer"
)

// arrangement puts a table in another order, by the table's key.
type arrangement map[string]func(answer.Table) answer.Table

// tables adds the tables that are on the sheet, each with the columns it has on paper.
func (s *stageSheet) tables(arrange arrangement) {
	for _, key := range answer.TableKeys() {
		t, _ := answer.MakeTable(s.Canoe, key)
		if !t.OnPaper || t.Home != s.Key {
			continue
		}
		t = t.Paper()
		if in := arrange[t.Key]; in != nil {
			t = in(t)
		}
		s.table(t)
	}
}

// first is a table with some of its columns, by key, before the others.
func first(t answer.Table, keys ...string) answer.Table {
	var order []int
	for _, key := range keys {
		order = append(order, slices.IndexFunc(t.Columns, func(c answer.Column) bool { return c.Key == key }))
	}
	for i := range t.Columns {
		if !slices.Contains(order, i) {
			order = append(order, i)
		}
	}
	return t.Pick(order)
}
