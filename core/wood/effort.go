package wood

// Effort is what is asked when a split piece is bent by hand: its width across
// the bend, its whole depth in the bend, the radius it is bent to and the number
// of loose laminations it is split into. Metres.
type Effort struct {
	Width, Depth, Radius float64
	Laminations          int
	Stock                Stock
}

// Moments are bending moments in newton metres.
type Moments struct {
	PerLamination float64
	Bundle        float64 // all laminations together, free to slide on one another
	Solid         float64 // the same piece not split: Bundle times the square of the number
}

const effortNotPositive = "wood: width, depth, radius or laminations not positive"

// MomentToBend is the elastic moment M = E b t^3/(12 R) (beam theory), E the
// table's MOE at the stock's moisture. It is the most that can be asked: past
// its elastic limit wood asks for less, and hot wood for much less (beech steamed
// through, about 70 % off its modulus: Domeny and others, BioResources 16(4),
// 2021; no figure for cedar was found). A straight piece (radius +Inf) asks zero.
func MomentToBend(e Effort) Moments {
	if !(e.Width > 0 && e.Depth > 0 && e.Radius > 0 && e.Laminations > 0) {
		panic(effortNotPositive)
	}
	n := float64(e.Laminations)
	t := e.Depth / n
	each := e.Stock.strength().MOE * e.Width * t * t * t / (12 * e.Radius)
	return Moments{PerLamination: each, Bundle: n * each, Solid: n * n * n * each}
}
