package scene

import "barkwright/core/draw"

// nearer is one step of the zoom, and panShare how much of the picture a step moves.
const (
	nearer   = 1.4
	panShare = 0.15
)

// looks are the picture's keys while it has the focus, with the steps they make.
var looks = map[string]string{"+": "in", "=": "in", "-": "out", "0": "fit", "ArrowLeft": "stern", "ArrowRight": "bow", "ArrowUp": "up",
	"ArrowDown": "down"}

// LookOfKey is the step of Look that a key makes, and whether it makes one.
func LookOfKey(key string) (step string, ok bool) {
	step, ok = looks[key]
	return step, ok
}

// Look zooms or moves the picture by a named step: in, out, fit, bow, stern, up, down.
func (v View) Look(step string, size draw.Size) View {
	middle := draw.Point{X: size.Width / 2, Y: size.Height / 2}
	switch step {
	case "in":
		return v.ZoomAt(middle, nearer, size)
	case "out":
		return v.ZoomAt(middle, 1/nearer, size)
	case "fit":
		v.Zoom, v.PanX, v.PanY = 1, 0, 0
	case "bow":
		v.PanX -= panShare * size.Width
	case "stern":
		v.PanX += panShare * size.Width
	case "up":
		v.PanY += panShare * size.Height
	case "down":
		v.PanY -= panShare * size.Height
	}
	return v
}
