package solid_test

import (
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/solid"
)

// raster is what each pixel of a picture shows, by its middle.
type raster struct {
	width, height int
	at            []draw.Role
}

func rastered(l draw.List) raster {
	r := raster{width: int(l.Width), height: int(l.Height)}
	r.at = make([]draw.Role, r.width*r.height)
	for _, op := range l.Ops {
		switch op := op.(type) {
		case draw.Fill:
			r.fill(op.Role, op.Points)
		case draw.Stroke:
			if op.Role != draw.Ink || len(op.Dash) > 0 {
				continue
			}
			points := op.Points
			if op.Closed {
				points = append(append([]draw.Point{}, points...), points[0])
			}
			for i := 1; i < len(points); i++ {
				r.stroke(op.Role, op.Width/2, points[i-1], points[i])
			}
		}
	}
	return r
}

func (r *raster) fill(role draw.Role, points []draw.Point) {
	b := draw.BoxOf(points)
	for y := max(0, int(b.Top)); y <= min(r.height-1, int(b.Bottom)); y++ {
		level := float64(y) + 0.5
		var cuts []float64
		for i, a := range points {
			q := points[(i+1)%len(points)]
			if (a.Y > level) != (q.Y > level) {
				cuts = append(cuts, a.X+(level-a.Y)/(q.Y-a.Y)*(q.X-a.X))
			}
		}
		for x := max(0, int(b.Left)); x <= min(r.width-1, int(b.Right)); x++ {
			in := false
			for _, c := range cuts {
				in = in != (c > float64(x)+0.5)
			}
			if in {
				r.at[y*r.width+x] = role
			}
		}
	}
}

func (r *raster) stroke(role draw.Role, half float64, a, b draw.Point) {
	box := draw.BoxOf([]draw.Point{a, b})
	for y := max(0, int(box.Top-half)); y <= min(r.height-1, int(box.Bottom+half)); y++ {
		for x := max(0, int(box.Left-half)); x <= min(r.width-1, int(box.Right+half)); x++ {
			px, py := float64(x)+0.5, float64(y)+0.5
			dx, dy := b.X-a.X, b.Y-a.Y
			t := 0.0
			if l := dx*dx + dy*dy; l > 0 {
				t = max(0, min(1, ((px-a.X)*dx+(py-a.Y)*dy)/l))
			}
			if math.Hypot(px-a.X-t*dx, py-a.Y-t*dy) <= half {
				r.at[y*r.width+x] = role
			}
		}
	}
}

// leaks counts the pixels beside the ground that are neither ground nor ink: where the outline is
// broken.
func (r *raster) leaks() (n int, first draw.Point) {
	outside := make([]bool, len(r.at))
	queue := []int{0}
	outside[0] = true
	for len(queue) > 0 {
		k := queue[len(queue)-1]
		queue = queue[:len(queue)-1]
		x, y := k%r.width, k/r.width
		for _, d := range [4][2]int{{1, 0}, {-1, 0}, {0, 1}, {0, -1}} {
			u, v := x+d[0], y+d[1]
			if u < 0 || v < 0 || u >= r.width || v >= r.height || outside[v*r.width+u] {
				continue
			}
			switch r.at[v*r.width+u] {
			case "", draw.Paper:
				outside[v*r.width+u] = true
				queue = append(queue, v*r.width+u)
			case draw.Ink:
			default:
				if n++; n == 1 {
					first = draw.Point{X: float64(u), Y: float64(v)}
				}
			}
		}
	}
	return n, first
}

// everyTurn has the test look at every boat from every side instead of a sample.
var everyTurn = os.Getenv("BARKWRIGHT_EVERY_TURN") != ""

// The outline of the boat is closed at 1 pixel: on the default and the starting boats, from the
// three places and turned round in 36 steps. A choice of this project, no published source.
func TestOutlineIsClosed(t *testing.T) {
	size := draw.Size{Width: 640, Height: 400, Letter: 16}
	closed := func(name string, c core.Canoe, v scene.View) {
		v.State, v.Zoom, v.Layer = scene.InTheRound, 1, scene.Plain
		r := rastered(solid.Draw(c, v, size))
		n, first := r.leaks()
		assert.Zero(t, n, "%s, %s, turned %.3f: first at %v", name, v.From, v.Turned, first)
		_, mine := seen(r)
		assert.Greater(t, mine, 4000, "%s: the boat is there", name)
	}
	for i, d := range append(design.Starting(), design.Default()) {
		c := core.Evaluate(d)
		for f := scene.BowQuarter; f <= scene.Above; f++ {
			closed(d.Name, c, scene.View{From: f})
		}
		for k := range 36 {
			if everyTurn || k == 5*i {
				closed(d.Name, c, scene.View{Turned: float64(k) / 36})
			}
		}
	}
}

// seen counts the pixels of the ground and of the boat.
func seen(r raster) (ground, boat int) {
	for _, role := range r.at {
		if role == "" || role == draw.Paper {
			ground++
		} else {
			boat++
		}
	}
	return ground, boat
}
