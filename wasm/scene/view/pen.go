package view

import "barkwright/wasm/scene"

// pen draws one view of the boat.
type pen struct{ *scene.Pen }
