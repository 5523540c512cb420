package plan

import (
	"math"
	"time"
)

// Field is one of the numbers that the user sets for a plan.
type Field int

// The numbers, in the order of the form.
const (
	Practised Field = iota
	Learners
	DaysAWeek
	Hours
	Travel
	Factor
	From
	SeamsLast
	StemsDry
	RibsDry
	Settle
	Boats
	Teams
	Beds
	Fields // how many there are
)

// Shape is what a number may be.
type Shape int

// The shapes: a whole number, one with tenths, one of several named choices.
const (
	Whole Shape = iota
	Decimal
	Choice
)

// Row is what the form, the file and the limits know of a number.
type Row struct {
	Field              Field
	Key                string // names it in files; it never changes
	Label, Unit, Help  string
	Shape              Shape
	Names              []string // of a choice: 0, 1 and so on
	Default, Low, High float64
	Step               float64
}

var rows = [Fields]Row{
	{Practised, "practised", "Practised hands", "people", "Those who have built a boat. The times are theirs.",
		Whole, nil, 2, 0, 12, 1},
	{Learners, "learners", "Learners", "people", "Those who have not.", Whole, nil, 0, 0, 30, 1},
	{DaysAWeek, "daysAWeek", "Days a week", "days", "Worked in each seven, counted from the first day.",
		Whole, nil, 6, 1, 7, 1},
	{Hours, "hours", "Hours a day", "hours", "At work, pauses not counted.", Whole, nil, 8, 1, 14, 1},
	{Travel, "travel", "Way to the woods and back", "hours", "Of each day worked there. An estimate; camping there, 0.",
		Decimal, nil, 3, 0, 6, 0.5},
	{Factor, "factor", "A learner takes", "times as long",
		"Published accounts say double and more; 2.5 agrees with one class of seven.", Decimal, nil, 2.5, 2, 4, 0.1},
	{From, "from", "The plan begins", "", "With all stock made, nothing is left to make before the bark is laid.",
		Choice, []string{"in the woods", "with all gathered", "with all stock made"}, 0, 0, 2, 1},
	{SeamsLast, "seamsLast", "Gores are sewn", "", "Sources differ; both are done.",
		Choice, []string{"before the gunwales are lashed", "after they are lashed"}, 0, 0, 1, 1},
	{StemsDry, "stemsDry", "Stems stay bound", "days", "No figure is published: 3 is an estimate.",
		Decimal, nil, 3, 0.5, 8, 0.5},
	{RibsDry, "ribsDry", "Ribs stay bound", "days", "Published: two to four days; one night, 0.5, at the least.",
		Decimal, nil, 3, 0.5, 8, 0.5},
	{Settle, "settle", "Settling before the ribs are driven again", "days",
		"Published: a few days; a class of 15 days left it out. 3 is an estimate.", Decimal, nil, 3, 0, 8, 0.5},
	{Boats, "boats", "Boats", "boats", "Alike, gathered for together.", Whole, nil, 1, 1, 12, 1},
	{Teams, "teams", "Teams", "teams", "With one, all build every boat. Several gather together and each builds its share " +
		"of the boats; practised hands are shared out, and those over go from team to team. A team too " +
		"few for a task is lent hands.", Whole, nil, 1, 1, 12, 1},
	{Beds, "beds", "Building beds", "beds", "A bed is free again when the frame comes out.", Whole, nil, 1, 1, 12, 1},
}

// Rows lists the numbers in the order of the form.
func Rows() []Row { return rows[:] }

// Date is one of the days that the user sets.
type Date int

// The dates. Begin and End are whole dates; the others come back every year.
const (
	Begin Date = iota
	End
	Thaw
	PeelFrom
	PeelTo
	WarmFrom
	WarmTo
	Freeze
	Dates // how many there are
)

// DateRow is what the form and the file know of a date.
type DateRow struct {
	Date        Date
	Key         string
	Label, Help string
	Default     string // a day as 06-15, or nothing
}

var dateRows = [Dates]DateRow{
	{Begin, "begin", "First day", "Empty: days count from the first, and no season is held to.", ""},
	{End, "end", "To be done by", "Empty: as soon as it can be.", ""},
	{Thaw, "thaw", "Ground thaws", "Month and day, as all that follow. Roots can be dug from then on.", "04-20"},
	{PeelFrom, "peelFrom", "Bark peels from", "Published: May to early June for brown-rind bark, late June and July " +
		"for summer bark, three weeks in one place. Set it for yours.", "06-15"},
	{PeelTo, "peelTo", "Bark peels until", "The last day it comes off.", "07-10"},
	{WarmFrom, "warmFrom", "Gum runs from", "Published: best near the end of July.", "05-15"},
	{WarmTo, "warmTo", "Gum runs until", "An estimate.", "09-15"},
	{Freeze, "freeze", "Ground freezes", "No roots after it. An estimate.", "11-15"},
}

// DateRows lists the dates in the order of the form.
func DateRows() []DateRow { return dateRows[:] }

// Season is what the user sets for a plan: the crew, the dates, the times of each task and
// what is there already. It is kept beside a boat and compares by value.
type Season struct {
	Numbers [Fields]float64
	Days    [Dates]string
	// Likely is the likely time of one unit of each task, minutes; 0 where the table's
	// stands. Low and high go with it.
	Likely [Tasks]float64
	// Have is how many units of each task are made or at hand.
	Have [Tasks]float64
}

// NewSeason is a season with nothing set.
func NewSeason() Season {
	var s Season
	for i, r := range rows {
		s.Numbers[i] = r.Default
	}
	for i, r := range dateRows {
		s.Days[i] = r.Default
	}
	return s
}

// Number is one of the numbers; Int is it as a whole one.
func (s *Season) Number(f Field) float64 { return s.Numbers[f] }
func (s *Season) Int(f Field) int        { return int(math.Round(s.Numbers[f])) }

// Minutes are the times of one unit of a task, as the user has set them.
func (s *Season) Minutes(id ID) Triangle {
	t := table[id].Minutes
	if v := s.Likely[id]; v > 0 {
		return t.times(v / t.Likely)
	}
	return t
}

// day reads a whole date.
func day(text string) (time.Time, bool) {
	t, err := time.Parse(time.DateOnly, text)
	return t, err == nil
}

// yearDay reads a day that comes back every year; the 29th of February is none.
func yearDay(text string) (month time.Month, d int, ok bool) {
	t, err := time.Parse("01-02", text)
	if err != nil {
		return 0, 0, false
	}
	return t.Month(), t.Day(), true
}

// daysBetween counts days from a to b.
func daysBetween(a, b time.Time) int { return int(math.Round(b.Sub(a).Hours() / 24)) }
