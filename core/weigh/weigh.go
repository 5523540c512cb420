package weigh

import (
	"cmp"
	"math"
	"slices"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// Boat is one of the two that are compared, with its numbers and checks.
type Boat struct {
	Canoe   core.Canoe
	Numbers []answer.Number
	Checks  []answer.Warning
}

// Of is a boat with all that is worked out of it at once.
func Of(c core.Canoe) Boat { return Boat{c, answer.All(c), answer.Checks(c)} }

// Row is a number or a check that differs.
type Row struct {
	Key, Name string
	Home      stage.Key
	// Held and Now are what is shown of either boat, Change their difference in words, such
	// as 3 13/16" wider; empty where a word says it all.
	Held, Now, Change string
	// Finer is the difference before rounding, where that is coarse.
	Finer string
	// From are the shares of the change, in the order of the way, Smaller how many more there
	// are that come to nothing as shown.
	From    []Share
	Smaller int
	// Score is how many times the change that makes a builder act it is.
	Score float64
	// Twins name the numbers that say the same another way, with their changes.
	Twins []string
}

// Share is what one step of the way brought about of a change. Keys are empty for what
// followed.
type Share struct {
	Keys   []string
	Along  bool
	Change string
}

// What a verdict that turned scores, and the score below which a number is said to have
// hardly changed.
const (
	TurnedWorse  = 100
	TurnedBetter = 50
	Hardly       = 0.25
)

// MostShared is the largest number of controls moved for which shares are worked out without
// being asked for.
const MostShared = 4

// leastShare is the least change that is spoken of where it comes to nothing as shown, in
// steps of what is shown.
const leastShare = 0.1

// Compare lists what differs, by stage and in a stage the largest score first. Numbers still
// being worked out are left out. Without steps no shares are given.
func Compare(held, now Boat, steps []Step, s units.System) []Row {
	way := make([][]answer.Number, len(steps))
	for i, step := range steps {
		way[i] = append(answer.All(step.Canoe), step.More...)
	}
	var rows []Row
	checks := map[string]bool{}
	for _, was := range held.Checks {
		checks[was.Key] = true
		for _, is := range now.Checks {
			if is.Key == was.Key && is.Word != was.Word {
				rows = append(rows, turned(was, is))
			}
		}
	}
	at := placed(held.Numbers)
	for _, is := range now.Numbers {
		i, there := at[is.Key]
		if !there || checks[is.Key] {
			continue
		}
		if row, differs := compared(held.Numbers[i], is, s); differs {
			row.share(held.Numbers[i], is, way, steps, s)
			rows = append(rows, row)
		}
	}
	rows = withoutTwins(rows)
	slices.SortStableFunc(rows, func(a, b Row) int {
		return cmp.Or(cmp.Compare(stageAt(a.Home), stageAt(b.Home)), cmp.Compare(b.Score, a.Score))
	})
	return rows
}

func stageAt(k stage.Key) int {
	_, at, _ := stage.Lookup(k)
	return at
}

// placed are the places of numbers by their keys.
func placed(all []answer.Number) map[string]int {
	at := make(map[string]int, len(all))
	for i, n := range all {
		at[n.Key] = i
	}
	return at
}

// turned is a check whose word is another. A state that is not checked is neither better nor
// worse.
func turned(was, is answer.Warning) Row {
	r := Row{Key: is.Key, Name: is.Label, Home: is.Home, Held: was.Word, Now: is.Word, Score: 1}
	switch {
	case was.State == answer.NotChecked || is.State == answer.NotChecked:
	case is.State > was.State:
		r.Score = TurnedWorse
	case is.State < was.State:
		r.Score = TurnedBetter
	}
	return r
}

// compared is a number beside itself, and whether it differs.
func compared(was, is answer.Number, s units.System) (Row, bool) {
	if was.NotYet() || is.NotYet() {
		return Row{}, false
	}
	c := of(is)
	r := Row{Key: is.Key, Name: is.Label(s), Home: is.Home, Held: was.Text(s), Now: is.Text(s)}
	if was.Word != "" || is.Word != "" {
		r.Score = 1
		return r, r.Held != r.Now
	}
	exact := is.Value - was.Value
	if c.unit > 0 {
		r.Score = math.Abs(exact) / c.unit
	}
	r.Change = inWords(was, is, c, s)
	step := is.Step(s)
	if r.Change == "" {
		r.Change = "under " + is.Kind.Format(step, s)
		return r, math.Abs(exact) > leastShare*step && r.Score > 0
	}
	if finer := is.Kind.ShownStep(is.Value, s); finer < step {
		r.Finer = is.Kind.Format(math.Abs(exact), s)
	}
	return r, true
}

// inWords is a change as shown, such as 2" more; empty where both show alike.
func inWords(was, is answer.Number, c consequence, s units.System) string {
	change := func(from, to float64) string {
		return worded(is.Kind, was.Shown(from, s), is.Shown(to, s), c, s)
	}
	if was.Low == was.High && is.Low == is.High {
		return change(was.Value, is.Value)
	}
	low, high := change(was.Low, is.Low), change(was.High, is.High)
	switch {
	case low == high:
		return low
	case low == "":
		low = "as before"
	case high == "":
		high = "as before"
	}
	return low + " to " + high
}

// worded is the difference of two values as shown, in words; empty where they show alike.
func worded(k units.Kind, from, to float64, c consequence, s units.System) string {
	if k.Difference(from, to, s) == "" {
		return ""
	}
	word := c.more
	if to < from {
		word = c.less
	}
	return k.Amount(to-from, s) + " " + word
}

// share gives a row its shares by the way.
func (r *Row) share(was, is answer.Number, way [][]answer.Number, steps []Step, s units.System) {
	if len(steps) == 0 || was.Word != "" || is.Word != "" {
		return
	}
	c, step := of(is), min(is.Step(s), was.Step(s))
	shares := make([]float64, len(steps))
	last := was.Value
	for i, numbers := range way {
		n, there := find(numbers, is.Key)
		if !there || n.Word != "" {
			return
		}
		shares[i], last = (n.Value-last)/step, n.Value
	}
	total := int(math.Round((is.Shown(is.Value, s) - was.Shown(was.Value, s)) / step))
	for i, n := range Apportion(shares, total) {
		if n == 0 {
			if math.Abs(shares[i]) > leastShare {
				r.Smaller++
			}
			continue
		}
		by := float64(n) * step
		r.From = append(r.From, Share{steps[i].Keys, steps[i].Along, worded(is.Kind, 0, by, c, s)})
	}
}

func find(all []answer.Number, key string) (answer.Number, bool) {
	for _, n := range all {
		if n.Key == key {
			return n, true
		}
	}
	return answer.Number{}, false
}

// withoutTwins takes out the numbers that say again what another row says, and names them
// there.
func withoutTwins(rows []Row) []Row {
	at := map[string]int{}
	for i, r := range rows {
		at[r.Key] = i
	}
	out := make([]Row, 0, len(rows))
	for _, r := range rows {
		if i, there := at[Twin(r.Key)]; there {
			rows[i].Twins = append(rows[i].Twins, r.Name+": "+said(r))
		}
	}
	for _, r := range rows {
		if _, there := at[Twin(r.Key)]; !there {
			r.Twins = rows[at[r.Key]].Twins
			out = append(out, r)
		}
	}
	return out
}

// said is a row's change in a few words.
func said(r Row) string {
	if r.Change != "" {
		return r.Change
	}
	return r.Held + ", now " + r.Now
}

// Most are the places of the rows with the largest scores, n of them at most, the largest
// first; none that has hardly changed.
func Most(rows []Row, n int) []int {
	var at []int
	for i, r := range rows {
		if r.Score >= Hardly {
			at = append(at, i)
		}
	}
	slices.SortStableFunc(at, func(a, b int) int { return cmp.Compare(rows[b].Score, rows[a].Score) })
	return at[:min(n, len(at))]
}
