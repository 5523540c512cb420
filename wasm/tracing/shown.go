package tracing

import (
	"fmt"
	"math"
	"strings"

	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// Shown is what the window says of the picture.
type Shown struct {
	Views  []string
	Sorts  []string
	Tasks  []Group
	View   int
	Sort   int
	Half   bool
	Task   string
	Ask    string
	Scale  string
	Marks  []Mark
	Matrix string
	Loupe  Loupe
	Kept   string
	// Width and Height of the picture, pixels.
	Width, Height float64
}

// Group is some of what can be pressed, under a word.
type Group struct {
	Name  string
	Tasks []record.Press
}

// Mark is a mark in the list.
type Mark struct {
	ID         int
	Name, Says string
	Wrong      bool // it gives no row
	Points     []Point
}

// Point is one of its points.
type Point struct {
	ID   int
	Says string // by how much the fitted boat is other there
	Held bool
	// Outside tells that this is more than the row's tolerance.
	Outside bool
}

// Window is what the window says. While something is on the move it is only how the picture
// lies.
func (t *Tracing) Window(w *work.Work, moving bool) Shown {
	tr := t.of(w)
	s := Shown{View: int(t.View), Sort: int(tr.Sort), Half: tr.Half[t.View], Task: t.Task, Matrix: t.look(w).matrix(),
		Loupe: t.loupe(w), Width: tr.Width, Height: tr.Height}
	if moving {
		return s
	}
	s.Ask, s.Kept = t.ask(w), kept(tr.Picture)
	for v := range record.Views {
		s.Views = append(s.Views, v.String())
	}
	for sort := range record.Sorts {
		s.Sorts = append(s.Sorts, sort.String())
	}
	groups := []Group{{Name: "To read it by"}, {Name: "Curves"}, {Name: "Measurements"}}
	for _, p := range record.Presses(t.View, tr.Sort) {
		to := 2
		switch {
		case !p.Reads():
			to = 0
		case p.Curve:
			to = 1
		}
		groups[to].Tasks = append(groups[to].Tasks, p)
	}
	s.Tasks = groups
	r := tr.Read()
	s.Scale = t.scale(w, r)
	f, fitted := t.fits(w)
	for i, m := range tr.Marks {
		if m.View != t.View {
			continue
		}
		s.Marks = append(s.Marks, t.listed(w, r, i, f, fitted))
	}
	return s
}

// scale says how the view is scaled, or why it cannot be read.
func (t *Tracing) scale(w *work.Work, r *record.Traced) string {
	plane, err := r.Plane(t.View)
	if err != nil {
		return err.Error()
	}
	sc := plane.Scale()
	along, up := plane.ScaleSpread()
	said := ""
	if r.Sort == record.SetSquare {
		said = fmt.Sprintf("Set square by the rectangle: true in its plane only, there to %s along and %s up. "+
			"What stands nearer looks larger.", percent(2*along), percent(2*up))
	} else {
		pixel := func(v float64) string {
			if w.System == units.Metric {
				return units.Trimmed(v/units.Millimetre, 2) + " mm"
			}
			return units.Trimmed(v/units.Inch, 3) + " in"
		}
		said = fmt.Sprintf("A pixel is %s along, good to %s, and %s up, good to %s.", pixel(sc.Along), percent(2*along),
			pixel(sc.Up), percent(2*up))
		if share := math.Abs(sc.Up/sc.Along - 1); share > leastShare {
			said += " One axis is off the other by " + percent(share) + ": each has its own scale."
		}
		if r.Sort == record.SquareOn {
			said += " It is taken for square on, to 2 %: true where the sizes lie, and what stands nearer looks larger."
		}
	}
	if sc.Chi > 1 {
		said += fmt.Sprintf(" The sizes disagree %s times as much as they may: look at each.", units.Trimmed(sc.Chi, 1))
	}
	return said
}

// leastShare is the least that percent shows.
const leastShare = 0.0005

func percent(share float64) string { return units.Trimmed(100*share, 1) + " %" }

// listed is mark i in the list.
func (t *Tracing) listed(w *work.Work, r *record.Traced, i int, f fit, fitted bool) Mark {
	m := r.Marks[i]
	p, _ := record.LookupPress(m.What)
	shown := Mark{ID: m.ID, Name: p.Name}
	for _, q := range m.Points {
		point := Point{ID: q.ID, Held: q.ID == t.held}
		if row, ok := f.differs(w, q.ID); fitted && ok {
			point.Says, point.Outside = signed(row.Difference, w.System), row.State == refit.OutsideTolerance
		}
		shown.Points = append(shown.Points, point)
	}
	shown.Says, shown.Wrong = t.says(w, r, i)
	return shown
}

// says is what mark i comes to.
func (t *Tracing) says(w *work.Work, r *record.Traced, i int) (text string, wrong bool) {
	m := r.Marks[i]
	p, _ := record.LookupPress(m.What)
	switch {
	case !m.Whole(r.Tracing):
		return fmt.Sprintf("%d of %d points", len(m.Points), p.Points(r.Half[m.View])), false
	case m.What == record.LetteredSize && m.Length == 0:
		return "type what it measures", true
	case m.What == record.LetteredSize:
		text = units.Length.Format(m.Length, w.System)
		marks, misses := r.Sizes(m.View)
		for k, of := range marks {
			if of == i && k < len(misses) {
				text += comesOut(misses[k], w.System)
			}
		}
		return text, false
	case m.What == record.KnownRectangle && (m.Length == 0 || m.High == 0):
		return "type both its sizes", true
	case m.What == record.KnownRectangle:
		return units.Length.Format(m.Length, w.System) + " by " + units.Length.Format(m.High, w.System), false
	case !p.Reads():
		return "", false
	}
	data, err := r.Data(i)
	if err != nil {
		return err.Error(), true
	}
	var rows []string
	for _, d := range data {
		rows = append(rows, row(w, d))
	}
	return strings.Join(rows, "; "), false
}

// comesOut says by how much the scale makes a lettered size other than it is lettered.
func comesOut(miss float64, s units.System) string {
	if units.Offset.Shown(miss, s) == 0 {
		return ", and comes out so"
	}
	return ", comes out " + signed(miss, s)
}

// row is a row of the record as it was read.
func row(w *work.Work, d record.Datum) string {
	text := ""
	if where := d.Where(w.System); where != "" {
		text = where + ": "
	}
	if d.Kind == record.HalfGirth {
		text = "half girth " + text
	}
	text += d.Shown(w.System) + " ± " + units.SmallLength.Format(d.Tolerance, w.System)
	for _, in := range w.Notebook.Record.Data {
		if in.Mark == d.Mark && in.Kind == d.Kind {
			return text
		}
	}
	return text + ", not in the record"
}

// Describe says what is in hand, for those who listen.
func (t *Tracing) Describe(w *work.Work) string {
	tr := t.of(w)
	i, k, ok := t.inHand(&tr)
	if !ok {
		return ""
	}
	m := tr.Marks[i]
	p, _ := record.LookupPress(m.What)
	text := p.Name
	if len(m.Points) > 1 {
		text += fmt.Sprintf(", point %d of %d", k+1, len(m.Points))
	}
	data, err := tr.Read().Data(i)
	if err != nil {
		return text + ". " + err.Error()
	}
	for _, d := range data {
		if d.Mark == m.Points[k].ID || !p.Curve {
			text += ". " + row(w, d)
		}
	}
	if held := m.Points[k].Held; held > coarse {
		text += ". Held to " + units.Trimmed(held, 0) + " pixels of the picture: come nearer and move it, and it is read closer"
	}
	return text
}

// coarse is from where on the hand is said to be what a reading is off by most, pixels. A
// choice of this project.
const coarse = 3

// kept says how large a picture is that is kept with the boat.
func kept(picture string) string {
	if picture == "" {
		return ""
	}
	return fmt.Sprintf("The picture is kept with this boat and in its file: %d kB.", (len(picture)+1023)/1024)
}
