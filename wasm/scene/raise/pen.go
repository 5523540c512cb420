package raise

import "barkwright/wasm/scene/solid"

// pen draws one picture of the boat being raised.
type pen struct{ solid.Solid }
