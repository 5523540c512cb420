package pipeline

// The pace of what is worked out, ms: how long a control must be still before what
// takes longer is, and how long it is worked at before the browser has its turn: a step
// that comes meanwhile waits for no more.
const (
	RestDelay  = 40
	turnLength = 5
)

// Turn is what came of working for a moment.
type Turn struct {
	Became []Piece // what has become known, in order
	// Follow tells, once after each step, that the boat on the water is known: what
	// stands further down the page follows.
	Follow bool
	// Done tells that all is known. If not, the next turn is in Wait ms.
	Done bool
	Wait int
}

// Stepped notes a step, and returns in how many ms the next turn is: the bark laid flat
// that the picture waits for is not put off.
func (b *Boat) Stepped() int {
	b.followed = false
	if next, waits := b.Waiting(); waits && next == Drawing {
		return 0
	}
	return RestDelay
}

// Turn works at what is not known yet for a moment, by a clock in ms.
func (b *Boat) Turn(now func() float64) (t Turn) {
	for until := now() + turnLength; ; {
		next, waits := b.Waiting()
		if !b.followed && (!waits || next > Water) {
			b.followed, t.Follow = true, true
			return t
		}
		// The picture under a slider in hand is not cut off: it would never come.
		if now() >= until && next != Drawing {
			return t
		}
		piece, finished, worked := b.Next()
		if !worked {
			t.Done = true
			return t
		}
		if finished {
			t.Became = append(t.Became, piece)
			if piece == Drawing {
				t.Wait = RestDelay
				return t
			}
		}
	}
}
