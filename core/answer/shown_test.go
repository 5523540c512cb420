package answer_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/answer"
	"barkwright/core/known"
	"barkwright/core/units"
)

func TestChange(t *testing.T) {
	at := func(v float64) answer.Number { return answer.Number{Kind: units.Length, Value: v, Low: v, High: v} }
	assert.Equal(t, `+1/2"`, answer.Change(at(10*units.Inch), at(10.5*units.Inch), units.Imperial16))
	assert.Equal(t, `−2' 1"`, answer.Change(at(35*units.Inch), at(10*units.Inch), units.Imperial16))
	assert.Empty(t, answer.Change(at(10*units.Inch), at(10.001*units.Inch), units.Imperial16))
	assert.Equal(t, `+1/16"`, answer.Change(at(10.03*units.Inch), at(10.04*units.Inch), units.Imperial16), `10" and 10 1/16" show`)
	estimate := func(low, high float64) answer.Number {
		return answer.Number{Kind: units.Length, Value: low, Low: low, High: high,
			Source: known.Source{Basis: known.Estimate}}
	}
	assert.Equal(t, `+2"`, answer.Change(estimate(6.6*units.Inch, 6.6*units.Inch), estimate(8.41*units.Inch, 8.41*units.Inch),
		units.Imperial16),
		`6 1/2" and 8 1/2" show`)
	assert.Equal(t, `+1"`, answer.Change(estimate(6*units.Inch, 8*units.Inch), estimate(7*units.Inch, 9*units.Inch),
		units.Imperial16))
	assert.Equal(t, `0 to −1/2"`, answer.Change(estimate(6*units.Inch, 8*units.Inch), estimate(6.1*units.Inch, 7.5*units.Inch),
		units.Imperial16))
	assert.Equal(t, "was near the limit", answer.Change(answer.Number{Word: "near the limit"},
		answer.Number{Word: "too tight"}, units.Imperial16))
	// What is rounded upward is subtracted as shown: 9 1/2 and 11, of 9.1 and 10.6.
	upward := func(v float64) answer.Number {
		n := estimate(v, v)
		n.Up = true
		return n
	}
	assert.Equal(t, `+1 1/2"`, answer.Change(upward(9.1*units.Inch), upward(10.6*units.Inch), units.Imperial16))
	assert.Equal(t, `+1/2"`, answer.Change(upward(9.4*units.Inch), upward(9.6*units.Inch), units.Imperial16))
}
