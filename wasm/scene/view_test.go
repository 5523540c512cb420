package scene_test

import (
	"os"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/wasm/scene"
)

// The page has one button for each state, named by its id.
func TestEachStateHasItsButton(t *testing.T) {
	page, err := os.ReadFile("../../web/index.html")
	require.NoError(t, err)
	seen := map[scene.State]bool{}
	for _, button := range regexp.MustCompile(`data-view="([^"]+)"`).FindAllSubmatch(page, -1) {
		seen[scene.StateOf(string(button[1]))] = true
	}
	for s := scene.OnTheBed; s <= scene.InTheRound; s++ {
		assert.True(t, seen[s], "no button for the state %q", s)
		assert.NotEmpty(t, scene.View{}.In(s).OnlyName(), "no drawing of the state %q", s)
	}
	assert.Panics(t, func() { scene.StateOf("") })
}

// The button goes through all drawings of a state and back to the first; another state shows the
// same drawing where it has it, else its first.
func TestDrawingsOfAState(t *testing.T) {
	for s := scene.OnTheBed; s <= scene.InTheRound; s++ {
		v := scene.View{State: s}
		seen := map[string]bool{}
		for !seen[v.OnlyName()] {
			seen[v.OnlyName()] = true
			v = v.NextOnly()
		}
		assert.Equal(t, scene.Both, v.Only)
		assert.Equal(t, v.Choice(), len(seen) > 1, s)
	}
	bed := scene.View{State: scene.OnTheBed, Only: scene.BodyPlan}
	assert.Equal(t, scene.BodyPlan, bed.In(scene.Finished).Only)
	assert.Equal(t, scene.Both, bed.In(scene.LaidFlat).Only)
	assert.Equal(t, scene.BySheet, scene.View{State: scene.LaidFlat}.NextOnly().Only)
}
