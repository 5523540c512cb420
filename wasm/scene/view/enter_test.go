package view_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

// A stage is come to near its parts: at the ends the bow's stem stands whole in the picture and large,
// and at the gunwales the half from the middle to the bow. Every stage has a drawing that its state has.
func TestStageIsEnteredNearItsParts(t *testing.T) {
	for _, b := range boats {
		c, v := skinned(b.Canoe, bark.ForPicture, barkViews[0])
		for _, size := range []draw.Size{{Width: 370, Height: 150, Letter: 16}, {Width: 805, Height: 320, Letter: 16},
			{Width: 1900, Height: 900, Letter: 24}} {
			for _, st := range stage.All() {
				in := view.Enter(c, v, st.Look, size)
				assert.Equal(t, in, in.In(in.State).Clamp(size), "%s: a drawing that the state has", st.Key)
				if len(st.Look.Near) == 0 {
					assert.Equal(t, 1.0, in.Zoom, st.Key)
					continue
				}
				assert.Greater(t, in.Zoom, 1.3, "%s, %s, %v", b.name, st.Key, size)
				found := 0
				for _, part := range view.Draw(c, in, size).Parts {
					name, _, _ := strings.Cut(part.Name, ".")
					at := draw.BoxOf(part.Points)
					if name != "stem" || at.Left < 0 {
						continue
					}
					found++
					assert.True(t, at.Within(draw.Box{Right: size.Width, Bottom: size.Height}), "%s, %s: %v in %v",
						b.name, st.Key, at, size)
					if st.Key == stage.Ends {
						assert.Greater(t, at.Bottom-at.Top, 0.4*size.Height, "%s: a stem to be seen", b.name)
					}
				}
				require.Equal(t, 1, found, "%s, %s: one stem", b.name, st.Key)
			}
		}
	}
	c := boats[0].Canoe
	in := view.Enter(c, scene.View{}, stage.Look{State: stage.Finished}, draw.Size{})
	assert.Equal(t, scene.Both, in.Only, "a picture with no size yet")
}
