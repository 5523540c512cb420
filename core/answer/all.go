package answer

import (
	"barkwright/core"
	"barkwright/core/units"
)

// All lists every result of a canoe, in the order of the work. One without a number
// is absent by name.
func All(c core.Canoe) []Number {
	var all []*Number
	for _, some := range []func(core.Canoe) []*Number{
		barkNumbers, sectionNumbers, skinNumbers, onHandNumbers, bedNumbers, gunwaleNumbers, endNumbers, ribNumbers,
		seamNumbers, materialNumbers, waterNumbers,
	} {
		all = append(all, some(c)...)
	}
	for _, n := range all {
		if !units.Shows(n.Value) || !units.Shows(n.Low) || !units.Shows(n.High) {
			n.absent(units.NotWorkedOut)
		}
	}
	return values(all)
}

// values are the numbers themselves. They are worked out behind pointers because copying
// one for every word that is said of it took a fifth of a megabyte of program.
func values(all []*Number) []Number {
	out := make([]Number, len(all))
	for i, n := range all {
		out[i] = *n
	}
	return out
}

// tables are the tables' makers by key, in the order of the work.
var tables = []struct {
	key  string
	make func(core.Canoe) Table
}{
	{"frame", frameTable}, {"girths", girthsTable}, {"gores", goresTable}, {"stretch", stretchTable},
	{"panels", panelsTable}, {"cutting", cuttingTable}, {"onhand", onHandTable}, {"trees", treesTable},
	{"posts", postsTable}, {"stationposts", stationPosts}, {"stakes", stakesTable}, {"offsets", offsetsTable},
	{"marks", marksTable}, {"holes", holesTable}, {"thwarts", thwartsTable}, {"joinery", joineryTable},
	{"bends", bendsTable},
	{"laminations", laminationsTable}, {"headboard", headboardTable}, {"closing", closingTable},
	{"ribs", ribsTable}, {"pairs", pairsTable}, {"sheathing", sheathingTable},
	{"seams", seamsTable}, {"strands", strandsTable}, {"roots", rootsTable}, {"lacingchoices", rootChoicesTable},
	{"logs", logsTable}, {"riving", rivingTable}, {"pieces", piecesTable}, {"gear", gearTable},
	{"figures", figuresTable},
}

// TableKeys lists the tables in the order of the work.
func TableKeys() []string {
	keys := make([]string, len(tables))
	for i, t := range tables {
		keys[i] = t.key
	}
	return keys
}

// MakeTable makes one table; it reports false for a key that no table has.
func MakeTable(c core.Canoe, key string) (Table, bool) {
	for _, t := range tables {
		if t.key == key {
			return t.make(c), true
		}
	}
	return Table{}, false
}

// Headline lists the keys of the numbers that are always in sight. Each has a Short name.
func Headline() []string {
	return []string{
		"ribs.count", "ribs.longest", "sheer.end", "afloat.freeboard", "root.total", "seams.total", "bark.width",
		"stem.minRadius",
	}
}

// Headlined picks the numbers of the headline, in its order.
func Headlined(all []Number) []Number {
	var out []Number
	for _, key := range Headline() {
		for _, n := range all {
			if n.Key == key {
				out = append(out, n)
			}
		}
	}
	return out
}
