package raise

import "barkwright/wasm/scene"

// pen draws the bark on its way up.
type pen struct{ *scene.Pen }
