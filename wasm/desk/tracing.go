package desk

import (
	"errors"
	"math"
	"strconv"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/markup"
	"barkwright/wasm/tracing"
)

var errNotSmaller = errors.New("The browser could not make the picture small enough to keep it.")

// Tracing is the picture that the record is read off, as it is looked at.
func (d *Desk) Tracing() *tracing.Tracing { return &d.tracing }

// traced runs what may change what was pressed, and tells whether it did.
func (d *Desk) traced(do func()) Reply {
	was := d.shown.Notebook
	do()
	return Reply{Changed: d.shown.Notebook != was}
}

// Trace answers a button of the picture's window; what follows a colon says which.
func (d *Desk) Trace(what string) Reply {
	w, t := d.shown, &d.tracing
	what, which, _ := strings.Cut(what, ":")
	n, _ := strconv.Atoi(which)
	return d.traced(func() {
		switch what {
		case "open":
			t.Open(w)
		case "close":
			t.Close()
		case "undo":
			t.Undo(w)
		case "nearer":
			t.Nearer(w, 1.5)
		case "farther":
			t.Nearer(w, 1/1.5)
		case "whole":
			t.Whole(w)
		case "turn":
			t.Turn(w, float64(n)*math.Pi/2)
		case "level":
			t.Level(w)
		case "mirror":
			t.Mirror(w)
		case "view":
			t.ChooseView(w, record.View(n))
		case "task":
			t.Choose(which)
		case "sort":
			t.SetSort(w, record.Sort(n))
		case "half":
			t.SetHalf(w, which == "true")
		case "over":
			t.Over = which == "true"
		case "fade":
			t.Fade = 1 - float64(n)/100
		case "hold":
			t.Hold(w, n)
		case "take-off":
			t.DropMark(w, n)
		case "drop":
			t.Drop(w)
		case "forget":
			t.Keep(w, "")
			t.Said = "The picture is kept with the boat no more."
		}
	})
}

// TypeTraced reads a field of the picture's window. What cannot be read is said at it and
// changes nothing.
func (d *Desk) TypeTraced(f tracing.Field, text string) Reply {
	var err error
	r := d.traced(func() { err = d.tracing.Type(d.shown, f, strings.TrimSpace(text)) })
	said := ""
	if err != nil {
		said = err.Error()
	}
	r = r.saying("tracing-fault", said)
	r.Invalid = map[string]bool{"tracing-" + string(f): err != nil}
	return r
}

// PictureKind looks at the bytes of a file that was chosen, dropped, pasted or taken: what
// kind of picture it is, or a reply that says why it is not shown.
func (d *Desk) PictureKind(data []byte) (kind string, r Reply, ok bool) {
	kind, err := tracing.Kind(data)
	if err != nil {
		return "", d.NoPicture(err), false
	}
	return kind, Reply{}, true
}

// NoPicture says why a file is not shown; the picture that is stays.
func (d *Desk) NoPicture(err error) Reply {
	d.tracing.Said = err.Error()
	return say("tracing-said", err.Error())
}

// Decoded takes a picture of a kind as the browser decoded it, and returns the size that it
// is read at.
func (d *Desk) Decoded(kind string, width, height float64) (w, h float64, err error) {
	w, h = tracing.Sized(kind, width, height)
	if err := tracing.Fits(w, h); err != nil {
		return 0, 0, err
	}
	d.tracing.Show(d.shown, w, h)
	return w, h, nil
}

// KeepPicture keeps a picture, made smaller, with the boat as a data URL.
func (d *Desk) KeepPicture(url string, width, height int) Reply {
	if url == "" || len(url) > record.MostPicture {
		return d.NoPicture(errNotSmaller)
	}
	return d.traced(func() {
		d.tracing.Keep(d.shown, url)
		d.tracing.Said = "Kept with the boat, made smaller: " + strconv.Itoa(width) + " by " + strconv.Itoa(height) +
			" pixels, without what the camera wrote beside them."
	})
}

// TracingShown is what the picture's window shows: HTML, values and what is hidden or ticked,
// by the ids of its places; how picture and loupe lie; and whether it is open.
type TracingShown struct {
	Open                  bool
	Slots, Values         map[string]string
	Hidden, Ticked        map[string]bool
	Matrix, LoupeMatrix   string
	Width, Height, Shines string
	LoupeLeft             bool
	// Focus is the id of the field that the focus goes to, empty for none.
	Focus string
}

// TracingWindow is what the window shows, in the colours of a palette. Where something is on
// the move, only what follows it is worked out.
func (d *Desk) TracingWindow(colours draw.Palette, moving bool) TracingShown {
	w, t := d.shown, &d.tracing
	s := t.Window(w, moving)
	var over strings.Builder
	// A strings.Builder refuses nothing.
	_ = draw.SVG{Palette: colours, ID: "tracing"}.Write(&over, t.Draw(w))
	shown := TracingShown{Open: t.IsOpen(), Matrix: s.Matrix, LoupeMatrix: s.Loupe.Matrix, LoupeLeft: s.Loupe.Left,
		Width: units.Trimmed(s.Width, 2) + "px", Height: units.Trimmed(s.Height, 2) + "px", Shines: units.Trimmed(t.Fade, 2),
		Slots:  map[string]string{"easel-over": over.String(), "tracing-held": draw.Escape(t.Describe(w))},
		Hidden: map[string]bool{"loupe": !s.Loupe.On, "easel-picture": !t.Shows()},
		Ticked: map[string]bool{}, Values: map[string]string{}}
	if moving {
		return shown
	}
	for id, html := range markup.Tracing(s) {
		shown.Slots[id] = html
	}
	shown.Slots["tracing-said"] = draw.Escape(t.Said)
	shown.Ticked = map[string]bool{"tracing-half": s.Half, "tracing-over": t.Over}
	shown.Hidden["tracing-keep"], shown.Hidden["tracing-forget"] = !t.Shows() || s.Kept != "", s.Kept == ""
	shown.Hidden["tracing-drop"], shown.Hidden["tracing-undo"] = t.Held() == 0, !w.CanUndo()
	shown.Values = map[string]string{"tracing-view": strconv.Itoa(s.View), "tracing-task": s.Task,
		"tracing-sort": strconv.Itoa(s.Sort)}
	if t.Untyped() {
		shown.Focus = "tracing-" + string(tracing.Length)
	}
	for _, f := range tracing.Fields() {
		id := "tracing-" + string(f)
		shown.Values[id], shown.Hidden[id+"-control"] = t.Text(w, f), !t.Wanted(w, f)
	}
	return shown
}
