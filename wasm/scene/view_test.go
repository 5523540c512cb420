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
	for s := scene.OnTheBed; s <= scene.SidesUp; s++ {
		assert.True(t, seen[s], "no button for the state %q", s)
	}
	assert.Panics(t, func() { scene.StateOf("") })
}
