package tally

// DamageKind is a kind of damage.
type DamageKind int

// The kinds. NoDamage is an entry of the log that is no repair.
const (
	NoDamage DamageKind = iota
	Crack
	Hole
	TornLacing
	BrokenRib
	DamageKinds // how many there are, NoDamage counted
)

// damageKinds are the kinds by the words that name them in files and on the page.
var damageKinds = [DamageKinds]struct{ key, name string }{
	NoDamage:   {"", "none"},
	Crack:      {"crack", "crack"},
	Hole:       {"hole", "hole"},
	TornLacing: {"lacing", "torn lacing"},
	BrokenRib:  {"rib", "broken rib"},
}

// String names the kind.
func (k DamageKind) String() string { return damageKinds[k].name }

// Key names the kind in files; it never changes.
func (k DamageKind) Key() string { return damageKinds[k].key }

// DamageOf is the kind that a file names by its key.
func DamageOf(key string) (DamageKind, bool) {
	for k := Crack; k < DamageKinds; k++ {
		if damageKinds[k].key == key {
			return k, true
		}
	}
	return NoDamage, false
}

// MostDamage bounds a place or a size of what is mended, m, and MostGroups the groups of lacing.
const (
	MostDamage = 20.0
	MostGroups = 1000
)

// Damage is what is broken of a boat, and where.
type Damage struct {
	Kind DamageKind
	// At is along the gunwale from the middle, m; forward is positive.
	At float64
	// Up is round the bark from the centre line to the middle of the damage, m; negative to starboard.
	Up float64
	// Along is how long it is along the boat, Round how far round it, m. A crack runs with the
	// grain, round the boat, and has no length along it.
	Along, Round float64
	// Groups of lacing are torn.
	Groups int
}

// Repair adds a repair to the log; no damage adds nothing.
func (l Log) Repair(step, when string, d Damage) Log {
	if d.Kind == NoDamage {
		return l
	}
	return l.add(Entry{When: when, Step: step, Damage: d})
}

// Repairs are the entries of repairs, the oldest first.
func (l Log) Repairs() []Entry {
	var out []Entry
	for _, e := range l {
		if e.Damage.Kind != NoDamage {
			out = append(out, e)
		}
	}
	return out
}

// Struck is the log without one of its repairs, counted from 0; as it is where there are fewer.
func (l Log) Struck(repair int) Log {
	for i, e := range l {
		if e.Damage.Kind == NoDamage {
			continue
		}
		if repair == 0 {
			return append(l[:i:i], l[i+1:]...)
		}
		repair--
	}
	return l
}
