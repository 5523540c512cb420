package work_test

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// A slider set to what it shows leaves its parameter where it is, and in every unit it
// stands inside its range.
func TestSlidersRoundTrip(t *testing.T) {
	for _, s := range []units.System{units.Imperial16, units.Imperial8, units.Metric} {
		w := work.New(design.Default(), s)
		for i, p := range design.Params() {
			v, why := w.Stands(p)
			shown := w.Control(p, v)
			at, err := strconv.ParseFloat(shown.Slider, 64)
			assert.NoError(t, err, p.Key)
			if p.Options != nil {
				assert.Empty(t, shown.Text)
				continue
			}
			least, most, step := w.Range(p)
			low, _ := strconv.ParseFloat(least, 64)
			high, _ := strconv.ParseFloat(most, 64)
			one, _ := strconv.ParseFloat(step, 64)
			assert.True(t, low <= at && at <= high && 0 < one && one < high-low, p.Key)
			assert.Equal(t, p.Format(v, s), shown.Text)
			assert.NotEmpty(t, shown.Spoken)
			if why == "" && s == units.Metric && i%8 == 0 {
				w.SetSlider(p, at)
				// Attributes have six decimals.
				assert.InDelta(t, v, p.Get(&w.Entered), 1e-6*max(1, v), p.Key)
				w.Reset(p.Key)
			}
		}
	}
}

// A value that follows from others is shown with the reason, whatever was set.
func TestReadOutSaysWhy(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	p, _ := design.Lookup("frameWidth")
	v, why := w.Stands(p)
	assert.Empty(t, why)
	assert.Equal(t, p.Get(&w.Entered), v)
	w.Set("builtOn", float64(design.OnGunwales))
	v, why = w.Stands(p)
	assert.NotEmpty(t, why)
	assert.InDelta(t, w.Entered.OutsideBreadth()-2*w.Entered.BarkThickness, v, 1e-12)
}

// Sheets on hand are set side by side, each in one step of undo.
func TestSheets(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	assert.Equal(t, 0, w.AddSheet())
	assert.Equal(t, 1, w.AddSheet())
	assert.Equal(t, w.Entered.SheetWidth, w.Entered.OnHand.Sheets[1].Width)
	v, echo, err := w.ReadSheet(1, work.SheetLength, "5' 2")
	assert.NoError(t, err)
	assert.InDelta(t, 62, v/inch, 1e-9)
	assert.Equal(t, `Sheet 2, length: Read as 5 ft 2 in (1575 mm)`, echo)
	w.SetTyped(work.SheetKey(1, work.SheetLength), "5' 2")
	w.SetSheet(1, work.SheetLength, v)
	assert.Empty(t, w.Typed)
	assert.Equal(t, `5' 2"`, w.SheetText(1, work.SheetLength))
	assert.Equal(t, w.Entered.SheetWidth, w.Entered.OnHand.Sheets[1].Width, "its other side stays")
	_, echo, err = w.ReadSheet(1, work.SheetWidth, "wide")
	assert.Error(t, err)
	assert.Empty(t, echo)
	assert.True(t, w.Undo())
	assert.Equal(t, w.Entered.SheetLength, w.Entered.OnHand.Sheets[1].Length)
}
