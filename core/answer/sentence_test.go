package answer_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/answer"
)

// The first letter changes, in any script and where it is more than a byte, and nothing else does.
func TestFirstLetterOfASentence(t *testing.T) {
	for lower, upper := range map[string]string{"ribs in CEDAR": "Ribs in CEDAR", "écorce": "Écorce",
		"ŵ": "Ŵ", "3 ribs": "3 ribs", "": ""} {
		assert.Equal(t, upper, answer.AtStart(lower))
		assert.Equal(t, lower, answer.InSentence(upper))
	}
}
