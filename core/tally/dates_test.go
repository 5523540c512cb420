package tally_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"barkwright/core/tally"
)

// A day of a log is written as the reader writes days, in words where nothing is known of the
// reader, and what is no day stays as it was written.
func TestDatesAreWrittenAsTheReaderDoes(t *testing.T) {
	day := time.Date(2026, 6, 14, 0, 0, 0, 0, time.UTC)
	assert.Equal(t, "14 June 2026", tally.Dates{}.Written("2026-06-14"))
	assert.Equal(t, "14 Jun", tally.Dates{}.Short(day))
	numbers := tally.Dates{Long: func(t time.Time) string { return t.Format("1/2/2006") },
		Brief: func(t time.Time) string { return t.Format("1/2") }}
	assert.Equal(t, "6/14/2026", numbers.Written("2026-06-14"))
	assert.Equal(t, "6/14", numbers.Short(day))
	for _, no := range []string{"", "2026-02-30", "a day in June"} {
		assert.Equal(t, no, numbers.Written(no))
	}
}
