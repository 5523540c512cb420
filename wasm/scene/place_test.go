package scene_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/draw"
	"barkwright/wasm/scene"
)

// However crowded a picture is, every label stands in it or in its key, once, and each
// number of the key stands in the picture. Numbers count up from 1.
func TestNoLabelIsDropped(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	keyed := 0
	for range 60 {
		size := draw.Size{Width: 200 + 300*r.Float64(), Height: 80 + 200*r.Float64(), Letter: 16}
		p := scene.NewPen(scene.View{Zoom: 1}, size)
		for range r.IntN(30) {
			x := size.Width * r.Float64()
			p.Line(draw.Water, scene.StrongWidth, draw.Point{X: x}, draw.Point{X: x + 20, Y: size.Height})
		}
		asked := map[string]bool{}
		for i := range 1 + r.IntN(25) {
			text := fmt.Sprintf("label-%d", i)
			asked[text] = true
			p.Say(r.IntN(scene.RankExtra+1), text, draw.Ink, draw.Paper,
				scene.SpotAt(size.Width*r.Float64(), size.Height*r.Float64(), draw.Middle))
		}
		l := p.Done()
		said := map[string]int{}
		for _, op := range l.Ops {
			if text, ok := op.(draw.Text); ok {
				said[text.Text]++
			}
		}
		number := 0
		for _, k := range l.Key {
			said[k.Text]++
			keyed++
			if k.Number > 0 {
				number++
				assert.Equal(t, number, k.Number)
				assert.Equal(t, 1, said[k.Mark()], "its number stands in the picture")
				assert.Contains(t, l.Words(), k.String())
			}
		}
		for text := range asked {
			assert.Equal(t, 1, said[text], text)
		}
	}
	assert.Greater(t, keyed, 20, "the pictures are crowded")
}

// A label that is broken in two is broken between words, not before a fraction, and its
// ground hides nothing that can be misread.
func TestLongLabelFolds(t *testing.T) {
	p := scene.NewPen(scene.View{Zoom: 1}, draw.Size{Width: 120, Height: 120, Letter: 16})
	p.Say(scene.RankMain, `length overall 16' 0 1/2"`, draw.Ink, draw.Paper, scene.SpotAt(60, 60, draw.Middle))
	var rows []string
	for _, op := range p.Done().Ops {
		if text, ok := op.(draw.Text); ok {
			rows = append(rows, text.Text)
		}
	}
	assert.Equal(t, []string{"length overall", `16' 0 1/2"`}, rows)
}
