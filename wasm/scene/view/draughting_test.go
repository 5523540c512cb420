package view_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

var large = draw.Size{Width: 1366, Height: 700, Letter: 16}

// lettering is everything said in a picture or in its key, in one line.
func lettering(l draw.List) string {
	all := words(l)
	for _, k := range l.Key {
		all += "|" + k.Text
	}
	return strings.ReplaceAll(all, "|", " ")
}

// What published building plans letter is lettered: heights at the thwarts and the ends, the
// thwarts' lengths and how far apart they are, overhang and heel; on the bed posts, gores and
// joints. In no cell and for no boat is one of them left out.
func TestMeasuresAreLettered(t *testing.T) {
	for i, d := range lettered(t) {
		c := core.Evaluate(d)
		for j, size := range cells {
			if (i+j)%4 != 0 && !everyLabel {
				continue
			}
			name := fmt.Sprintf("%d %v", i, size)
			length := func(m float64) string { return units.Length.Format(m, units.Imperial16) }
			small := func(m float64) string { return units.SmallLength.Format(m, units.Imperial16) }
			v := scene.View{State: scene.Finished, Zoom: 1, Load: scene.LoadOf(c)}
			said := lettering(view.Draw(c, v, size))
			for k, thwart := range c.Frame.Thwarts {
				assert.Contains(t, said, length(c.Hull.Sheer(thwart.X)), name)
				if k > 0 {
					assert.Contains(t, said, length(thwart.Shoulder), name)
				}
			}
			assert.Contains(t, said, length(d.EndHeight), name)
			assert.Contains(t, said, length(d.Length), name)
			v.State = scene.OnTheBed
			said = lettering(view.Draw(c, v, size))
			for _, post := range c.Frame.Bed.Posts {
				assert.Contains(t, said, small(post.Length), name)
			}
			for _, joint := range c.Bark.Joints {
				assert.Contains(t, said, length(math.Abs(joint.Along)), name)
			}
		}
	}
}

// In a large picture the rows of measures are drawn too.
func TestRowsOfMeasures(t *testing.T) {
	c := core.Evaluate(design.Default())
	length := func(m float64) string { return units.Length.Format(m, units.Imperial16) }
	said := lettering(view.Draw(c, scene.View{State: scene.Finished, Zoom: 1}, large))
	assert.Contains(t, said, "overhang "+length(c.Design.Overhang))
	assert.Contains(t, said, "heel "+length(c.Design.HeelLength))
	assert.Contains(t, said, "base line")
	for i := 1; i < len(c.Frame.Thwarts); i++ {
		assert.Contains(t, said, length(c.Frame.Thwarts[i].Run-c.Frame.Thwarts[i-1].Run))
	}
	assert.Contains(t, said, "rib 1")
	bed := lettering(view.Draw(c, scene.View{State: scene.OnTheBed, Zoom: 1}, large))
	assert.Contains(t, bed, "the bark flat")
	assert.Contains(t, bed, "sides up")
	assert.Contains(t, bed, "drawn to the boat's length", "and why it is not as long as the bark laid flat")
	assert.Contains(t, bed, "half the frame "+length(c.Hull.FrameEnd()))
	assert.Contains(t, said, "along it "+length(c.Frame.Gunwales.Run))
}

// Nearer by, every rib is numbered, and nearer still lettered with its length.
func TestZoomLettersMore(t *testing.T) {
	c := core.Evaluate(design.Default())
	v := scene.View{State: scene.Finished, Zoom: 1, Only: scene.TopOnly}
	count := func() (n int) {
		said := " " + lettering(view.Draw(c, v, large)) + " "
		for _, r := range c.Frame.Ribs {
			if strings.Contains(said, fmt.Sprintf(" %d ", r.Number)) || strings.Contains(said, fmt.Sprintf(" %d: ", r.Number)) {
				n++
			}
		}
		return n
	}
	whole := count()
	v.Zoom = 2.5
	assert.Greater(t, count(), whole, "of half as many ribs in sight")
	v.Zoom = 5
	assert.Contains(t, strings.Split(words(view.Draw(c, v, large)), "|"), `1"`, "a scale bar, with the tape out of sight")
	assert.Contains(t, lettering(view.Draw(c, v, large)), fmt.Sprintf("3: %s",
		units.Length.Format(c.Frame.Ribs[2].Length, units.Imperial16)), "on the rib itself")
	v.Zoom, v.PanX, v.PanY = 4, 0, -600
	rib := c.Frame.Ribs[3]
	assert.Contains(t, lettering(view.Draw(c, v, large)), fmt.Sprintf("%d: %s", rib.Number,
		units.Length.Format(rib.Length, units.Imperial16)))
}

// Nearer still the groups of lacing are lettered with their places along the gunwale, and on the bed
// the gores with theirs and with how far in they are slashed.
func TestZoomLettersMarks(t *testing.T) {
	c := core.Evaluate(design.Default())
	length := func(m float64) string { return units.Length.Format(m, units.Imperial16) }
	v := scene.View{State: scene.Finished, Zoom: 5, Only: scene.TopOnly, PanY: 500}
	group := c.Frame.Lacing.Groups[1]
	assert.Contains(t, lettering(view.Draw(c, v, large)), "1: "+length(group.Run))
	v.State, v.Zoom, v.PanY = scene.OnTheBed, 4, 700
	gore := c.Bark.Gores[len(c.Bark.Gores)/2]
	assert.Contains(t, lettering(view.Draw(c, v, large)), "gore 0: "+length(gore.Run)+" along, "+length(gore.Depth)+" in")
}

// The first step nearer keeps the side view's middle where it is; later ones the picture's.
func TestNearerGoesToTheSideView(t *testing.T) {
	c := core.Evaluate(design.Default())
	v := scene.View{State: scene.Finished, Zoom: 1}
	near := view.Look(c, v, "in", large)
	assert.InDelta(t, v.Look("in", large).Zoom, near.Zoom, 1e-12)
	assert.Less(t, near.PanY, 0.0, "the side view is the lower one")
	assert.Equal(t, near.Look("in", large), view.Look(c, near, "in", large))
	assert.Equal(t, v, view.Look(c, v, "fit", large))
	v.Only = scene.TopOnly
	assert.Equal(t, v.Look("in", large), view.Look(c, v, "in", large))
}

// With names every view letters ten to fourteen parts and no measure; plain letters neither.
func TestLayers(t *testing.T) {
	c := core.Evaluate(design.Default())
	for state, parts := range map[scene.State][]string{
		scene.Finished: {"inwale", "outwale", "cap", "rib", "thwart", "headboard", "stem-piece", "sheathing", "lacing", "peg",
			"heel", "bottom", "stem head"},
		scene.OnTheBed: {"stake", "stone", "post", "crosspiece", "building frame", "block", "where the gunwale will stand",
			"gore", "side panel"},
	} {
		v := scene.View{State: state, Zoom: 1, Layer: scene.Names, Load: scene.LoadOf(c)}
		named := lettering(view.Draw(c, v, large))
		for _, part := range parts {
			assert.Contains(t, named, part)
		}
		assert.NotContains(t, named, "length overall")
		v.Layer = scene.Plain
		plain := lettering(view.Draw(c, v, large))
		assert.NotContains(t, plain, "headboard")
		assert.NotContains(t, plain, "length overall")
	}
}

// A boat has one scale and place on the bed, while it is raised and finished, in every drawing that
// the states share: what is known to stand at a place of the boat stands there in each picture. On the
// bed that is a crosspiece and a post; once made, a thwart and a group of lacing.
func TestOneScaleAndPlace(t *testing.T) {
	boats := []design.Design{design.Default()}
	for _, line := range extreme[:2] {
		d, _, err := design.ReadLine("barkwright1_" + line)
		require.NoError(t, err)
		boats = append(boats, d)
	}
	pictures := append([]draw.Size{{Width: 1440, Height: 330, Letter: 16}, {Width: 390, Height: 330, Letter: 16}}, cells...)
	for i, d := range boats {
		c, look := skinned(core.Evaluate(d), bark.Resolution{Columns: 16, Rows: 5}, scene.View{})
		crosspiece, post := c.Frame.Bed.Crosspieces[1], c.Frame.Bed.Posts[1]
		thwart, group := c.Frame.Thwarts[1], c.Frame.Lacing.Groups[1]
		from, _ := scene.GroupSpan(c, group)
		for _, size := range pictures {
			for _, only := range []scene.Only{scene.Both, scene.TopOnly, scene.SideOnly} {
				in := func(s scene.State) draw.List {
					v := look
					v.State, v.Only, v.Up = s, only, 0.95
					return view.Draw(c, v, size)
				}
				bed := in(scene.OnTheBed)
				for _, s := range []scene.State{scene.SidesUp, scene.Finished} {
					l, name := in(s), fmt.Sprintf("boat %d, %v, drawing %d, %s", i, size, only, s)
					if only != scene.SideOnly {
						at := plateBy(t, bed, "crosspiece.1", crosspiece.X, 0).At(thwart.X, 0)
						assert.True(t, slices.ContainsFunc(partsNamed(l, "thwart.1"), func(p draw.Part) bool {
							return apart(at, middle(p)) < 0.5
						}), "%s: a thwart at %v from above", name, at)
					}
					if only != scene.TopOnly {
						middle := frame.UnderInwale(c.Hull, post.X) - post.Length/2
						at := plateBy(t, bed, "post.1", post.X, middle).At(from, c.Hull.Sheer(from)-d.OutwaleDepth)
						assert.True(t, slices.ContainsFunc(partsNamed(l, "group.1"), func(p draw.Part) bool {
							return slices.ContainsFunc(p.Points, func(q draw.Point) bool { return apart(at, q) < 0.5 })
						}), "%s: the lower corner of a group of lacing at %v from the side", name, at)
					}
				}
			}
		}
	}
}

func apart(a, b draw.Point) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }

// plateBy is the plate of a picture's first drawing with a part that stands fore and aft at x, with its
// middle at a height.
func plateBy(t *testing.T, l draw.List, name string, x, height float64) scene.Plate {
	t.Helper()
	parts := partsNamed(l, name)
	require.GreaterOrEqual(t, len(parts), 2, name)
	fore, aft := middle(parts[0]), middle(parts[1])
	k := (fore.X - aft.X) / (2 * x)
	return scene.Plate{Scale: k, Origin: draw.Point{X: (fore.X + aft.X) / 2, Y: fore.Y + height*k}}
}

// A view by itself is drawn larger in a small cell, with only its own handles.
func TestOneViewByItself(t *testing.T) {
	c := core.Evaluate(design.Default())
	phone := cells[0]
	for _, only := range []scene.Only{scene.TopOnly, scene.SideOnly, scene.SectionsOnly, scene.BodyPlan} {
		v := scene.View{State: scene.Finished, Zoom: 1, Handles: true, Only: only}
		l := view.Draw(c, v, phone)
		assert.NotContains(t, l.Title, "Top view and side view")
		handles := view.Handles(c, v, phone)
		keys := map[string]bool{}
		for _, h := range handles {
			keys[h.Key] = true
		}
		assert.Equal(t, only == scene.TopOnly, keys["beam"])
		assert.Equal(t, only == scene.SideOnly, keys["depth"])
	}
	assert.Equal(t, "Names", scene.Measures.Next().String())
	assert.Equal(t, scene.Measures, scene.Plain.Next())
}

// In the body plan each section stands as broad as the boat is at its rib: the offsets of the
// hull, on both sides of the centre line, at one scale. Touching one touches the rib.
func TestBodyPlanHoldsTheSections(t *testing.T) {
	for _, line := range extreme {
		c := lineBoat(t, line)
		l := view.Draw(c, scene.View{State: scene.Finished, Only: scene.BodyPlan, Zoom: 1, Load: scene.LoadOf(c)}, large)
		seen := map[string]int{}
		scale := 0.0
		for _, r := range c.Frame.Ribs {
			for _, part := range partsNamed(l, fmt.Sprintf("rib.%d", r.Number)) {
				seen[part.Name]++
				section := r.Cut(c.Hull).Section
				top := part.Points[len(part.Points)-1]
				half := math.Abs(top.X - large.Width/2)
				if section.P.X < 0.02 {
					continue
				}
				if scale == 0 {
					scale = half / section.P.X
				}
				assert.InDelta(t, scale, half/section.P.X, 1e-9*scale, "%s %s", line, part.Name)
			}
		}
		require.GreaterOrEqual(t, len(seen), 4, line)
		for name, n := range seen {
			assert.Equal(t, 2, n, "%s: %s stands once on each side", line, name)
			assert.NotEmpty(t, view.Readout(c, name, units.Imperial16))
		}
	}
}
