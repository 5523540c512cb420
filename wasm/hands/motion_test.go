package hands_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/wasm/hands"
)

func TestMotionGoesOnceThroughAndStops(t *testing.T) {
	m := hands.Motion{Seconds: 20}
	m.Press(1000, 0.25)
	assert.True(t, m.Running())
	assert.InDelta(t, 0.25, m.At(1000), 1e-12)
	assert.InDelta(t, 0.5, m.At(6000), 1e-12, "a quarter of 20 s on")
	m.Press(7000, 0.55)
	assert.False(t, m.Running(), "a second press holds it")
	m.Press(9000, 0.55)
	assert.InDelta(t, 0.6, m.At(10000), 1e-12)
	assert.InDelta(t, 1, m.At(60000), 0)
	assert.False(t, m.Running(), "it stops at its end")
	m.Press(61000, 1)
	assert.InDelta(t, 0.05, m.At(62000), 1e-12, "from the end it begins anew")
	m.Stop()
	assert.False(t, m.Running())
}
