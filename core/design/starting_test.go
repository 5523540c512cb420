package design_test

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
)

// Starting boats are named by their geometry: size words, parts of the shape and
// what the boat is for, and no other.
func TestStartingNamesAreGeometry(t *testing.T) {
	allowed := map[string]bool{
		"small": true, "long": true, "low": true, "high": true, "much": true, "ends": true, "rocker": true,
		"solo": true, "two-person": true, "class": true, "freight": true, "canoe": true,
	}
	seen := map[string]bool{design.Default().Name: true}
	for _, d := range design.Starting() {
		assert.False(t, seen[d.Name], d.Name)
		seen[d.Name] = true
		assert.Empty(t, d.Notes)
		for _, word := range regexp.MustCompile("[A-Za-z-]+").FindAllString(d.Name, -1) {
			assert.True(t, allowed[strings.ToLower(word)], "%s in %s", word, d.Name)
		}
	}
	assert.Len(t, design.Starting(), 6)
}

func TestStartingBoatsAreValid(t *testing.T) {
	for _, d := range design.Starting() {
		assert.Empty(t, design.Validate(d), d.Name)
	}
}
