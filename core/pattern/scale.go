package pattern

import (
	"math"
	"strconv"

	"barkwright/core/units"
)

// Scale is how a print came out, from what its scale bar measures.
type Scale struct {
	// Ratio is the size on paper over the size meant; 0 where Cause is NotTheBar.
	Ratio float64
	// Off is how much too long the longest part would come out, m; negative where
	// it would be short.
	Off   float64
	Cause ScaleCause
}

// ScaleCause is the likeliest reason for a scale.
type ScaleCause int

// The causes.
const (
	True ScaleCause = iota
	LetterOnA4
	A4OnLetter
	FitToPage
	Enlarged
	SomeScaling
	NotTheBar
)

// String says what to do about it.
func (c ScaleCause) String() string {
	return [...]string{
		True:        "true to size, as far as a tape can tell",
		LetterOnA4:  "likely a Letter page fitted to A4 paper: choose the paper that is in the printer, scale 100 %",
		A4OnLetter:  "likely an A4 page fitted to Letter paper: choose the paper that is in the printer, scale 100 %",
		FitToPage:   "likely fitted to the page: choose scale 100 %, actual size, and turn Fit and Shrink off",
		Enlarged:    "enlarged: choose scale 100 %, actual size, and turn Fit off",
		SomeScaling: "scaled by the printer or its driver: choose scale 100 %, actual size, and print again",
		NotTheBar:   "too far off to be this bar: measure the bar that is named here",
	}[c]
}

const (
	// readable is how near a bar can be read with a tape, m: half a millimetre.
	readable = 0.0005
	// letterOnA4 and a4OnLetter are the scales measured in browsers' print to file
	// where a page of one size was sent to the other; a bar read to half a
	// millimetre in 150 tells them apart within sameCause.
	letterOnA4 = 0.974
	a4OnLetter = 0.941
	sameCause  = 0.005
	// fitted is the largest scale that margins of a common printer's Fit make.
	fitted = 0.935
	// leastScale and mostScale bound what can be a print of the bar at all.
	leastScale, mostScale = 0.5, 2
)

// CheckScale judges a print by a bar that should be bar long and measures
// measured, and the longest part on the patterns; all in metres, the bar positive.
func CheckScale(bar, measured, longest float64) Scale {
	s := Scale{Ratio: measured / bar}
	if !(s.Ratio > leastScale && s.Ratio < mostScale) {
		return Scale{Cause: NotTheBar}
	}
	s.Off = (s.Ratio - 1) * longest
	switch {
	case math.Abs(measured-bar) <= readable*(1+rounding):
		s.Cause = True
	case math.Abs(s.Ratio-letterOnA4) <= sameCause:
		s.Cause = LetterOnA4
	case math.Abs(s.Ratio-a4OnLetter) <= sameCause:
		s.Cause = A4OnLetter
	case s.Ratio <= fitted:
		s.Cause = FitToPage
	case s.Ratio > 1:
		s.Cause = Enlarged
	default:
		s.Cause = SomeScaling
	}
	return s
}

// Text is the answer to whoever measured the bar, in the units they read; part
// names the longest part, of that length in metres.
func (s Scale) Text(part string, longest float64, system units.System) string {
	if s.Cause == NotTheBar {
		return s.Cause.String() + "."
	}
	text := "Printed at " + strconv.FormatFloat(100*s.Ratio, 'f', 1, 64) + " %"
	if s.Cause == True {
		return text + ": " + s.Cause.String() + ". Print the rest."
	}
	way := " short"
	if s.Off > 0 {
		way = " long"
	}
	return text + ": " + part + ", " + units.Length.Format(longest, system) + ", would come out " +
		units.Length.Format(math.Abs(s.Off), system) + way + ". It is " + s.Cause.String() + "."
}
