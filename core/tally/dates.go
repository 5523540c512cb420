package tally

import "time"

// Dates writes days as the reader does: Long with the year, Brief without. Where one is nil,
// as in 14 June 2026 and 14 Jun.
type Dates struct{ Long, Brief func(time.Time) string }

// Of writes a day in full.
func (d Dates) Of(t time.Time) string {
	if d.Long != nil {
		return d.Long(t)
	}
	return t.Format("2 January 2006")
}

// Short writes a day without its year.
func (d Dates) Short(t time.Time) string {
	if d.Brief != nil {
		return d.Brief(t)
	}
	return t.Format("2 Jan")
}

// Written writes a day of a log in full. What is no day stays as it is.
func (d Dates) Written(day string) string {
	t, err := time.Parse(time.DateOnly, day)
	if err != nil {
		return day
	}
	return d.Of(t)
}
