package flat

import "barkwright/wasm/scene"

// pen draws the bark laid flat.
type pen struct {
	*scene.Pen
	repairs []laidRepair
}
