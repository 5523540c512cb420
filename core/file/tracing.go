package file

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"barkwright/core/geom"
	"barkwright/core/record"
)

// tracingJSON is what was pressed on a picture, as written; places in its pixels, lengths in
// metres.
type tracingJSON struct {
	Width  float64 `json:"width"`
	Height float64 `json:"height"`
	// Sort is "drawn", "square on" or "set square".
	Sort     string     `json:"sort"`
	Line     float64    `json:"line"`
	Half     []string   `json:"half,omitempty"`
	Turn     float64    `json:"turn,omitempty"`
	Mirrored bool       `json:"mirrored,omitempty"`
	Last     int        `json:"last"`
	Marks    []markJSON `json:"marks"`
	Picture  string     `json:"picture,omitempty"`
}

type markJSON struct {
	Number  int           `json:"number"`
	View    string        `json:"view"`
	What    string        `json:"what"`
	Points  []pressedJSON `json:"points"`
	Length  float64       `json:"length,omitempty"`
	High    float64       `json:"high,omitempty"`
	Thwart  int           `json:"thwart,omitempty"`
	Station float64       `json:"station,omitempty"`
	From    string        `json:"from,omitempty"`
	Side    string        `json:"side,omitempty"`
	Entered bool          `json:"entered,omitempty"`
}

type pressedJSON struct {
	Number  int     `json:"number"`
	X       float64 `json:"x"`
	Y       float64 `json:"y"`
	Held    float64 `json:"held"`
	Entered bool    `json:"entered,omitempty"`
}

// The words for sorts and views, in the order of the record's own.
var (
	sorts = []string{"drawn", "square on", "set square"}
	views = []string{"side", "above", "section"}
)

// picturePrefixes open a picture as it is kept: written anew by the page, so that nothing but
// the picture is in it.
var picturePrefixes = []string{"data:image/jpeg;base64,", "data:image/png;base64,"}

func writeTracing(t *record.Tracing) *tracingJSON {
	if t == nil {
		return nil
	}
	j := tracingJSON{Width: t.Width, Height: t.Height, Sort: sorts[t.Sort], Line: t.Line, Turn: t.Turn,
		Mirrored: t.Mirrored, Last: t.Last, Marks: []markJSON{}, Picture: t.Picture}
	for v, half := range t.Half {
		if half {
			j.Half = append(j.Half, views[v])
		}
	}
	for _, m := range t.Marks {
		mark := markJSON{Number: m.ID, View: views[m.View], What: m.What, Length: m.Length, High: m.High, Thwart: m.Number,
			Station: m.At.Distance, From: origins[m.At.From], Side: sides[m.At.Side], Entered: m.Entered,
			Points: []pressedJSON{}}
		for _, p := range m.Points {
			mark.Points = append(mark.Points, pressedJSON{p.ID, p.At.X, p.At.Y, p.Held, p.Entered})
		}
		j.Marks = append(j.Marks, mark)
	}
	return &j
}

var errTracing = errors.New("The file holds points pressed on a picture that no page pressed.")

func readTracing(j *tracingJSON) (*record.Tracing, error) {
	if j == nil {
		return nil, nil
	}
	sort := find(sorts, j.Sort)
	inside := func(v, least, most float64) bool { return v >= least && v <= most }
	switch {
	case sort < 0 || len(j.Marks) > record.MostMarks || !inside(j.Width, 1, record.MostPixels) ||
		!inside(j.Height, 1, record.MostPixels) || !inside(j.Line, 0, record.MostPixels) || !inside(j.Turn, -7, 7) ||
		j.Last < 0 || j.Last > math.MaxInt32:
		return nil, errTracing
	case !picture(j.Picture):
		return nil, errors.New("The file holds a picture that no page put there.")
	}
	t := &record.Tracing{Width: j.Width, Height: j.Height, Sort: record.Sort(sort), Line: j.Line, Turn: j.Turn,
		Mirrored: j.Mirrored, Last: j.Last, Picture: j.Picture}
	for _, word := range j.Half {
		v := find(views, word)
		if v < 0 {
			return nil, errTracing
		}
		t.Half[v] = true
	}
	pressed := 0
	for _, m := range j.Marks {
		view, from, side := find(views, m.View), find(origins, m.From), find(sides, m.Side)
		p, known := record.LookupPress(m.What)
		pressed += len(m.Points)
		switch {
		case !known:
			return nil, fmt.Errorf("The file holds %.40q, which is not read off a picture.", m.What)
		case view < 0 || from < 0 || side < 0 || pressed > record.MostPressed ||
			!p.Curve && len(m.Points) > p.Points(false) ||
			!inside(m.Length, 0, mostPlaced) || !inside(m.High, 0, mostPlaced) || !inside(m.Station, 0, mostPlaced) ||
			m.Thwart < 0 || m.Thwart > math.MaxInt16 || m.Number < 1 || m.Number > j.Last:
			return nil, errTracing
		}
		mark := record.Mark{ID: m.Number, View: record.View(view), What: m.What, Length: m.Length, High: m.High,
			Number: m.Thwart, At: record.Place{From: record.Origin(from), Distance: m.Station, Side: record.Side(side)},
			Entered: m.Entered}
		for _, q := range m.Points {
			if !inside(q.X, -record.MostPixels, 2*record.MostPixels) || !inside(q.Y, -record.MostPixels, 2*record.MostPixels) ||
				!inside(q.Held, 0, record.MostPixels) || q.Number < 1 || q.Number > j.Last {
				return nil, errTracing
			}
			mark.Points = append(mark.Points, record.Pressed{ID: q.Number, At: geom.Vec2{X: q.X, Y: q.Y}, Held: q.Held,
				Entered: q.Entered})
		}
		t.Marks = append(t.Marks, mark)
	}
	return t, nil
}

// picture tells whether a text is a picture as the page keeps one, or none.
func picture(text string) bool {
	if text == "" {
		return true
	}
	for _, prefix := range picturePrefixes {
		if data, ok := strings.CutPrefix(text, prefix); ok && len(text) <= record.MostPicture {
			return !strings.ContainsFunc(data, notBase64)
		}
	}
	return false
}

func notBase64(r rune) bool {
	return (r < 'A' || r > 'Z') && (r < 'a' || r > 'z') && (r < '0' || r > '9') && !strings.ContainsRune("+/=", r)
}
