package file_test

import (
	"bytes"
	"encoding/json"
	"math"
	"math/rand/v2"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/geom"
	"barkwright/core/internal/check"
	"barkwright/core/plan"
	"barkwright/core/record"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// boats puts beside each design a notebook with every kind of measurement.
func boats(designs []design.Design) []file.Boat {
	out := make([]file.Boat, len(designs))
	for i, d := range designs {
		out[i].Design = d
		n := &out[i].Notebook
		for k, kind := range record.Kinds()[:i%(len(record.Kinds())+1)] {
			m := record.Datum{Kind: kind, Value: float64(1 + k), Tolerance: 0.01 * float64(i%3), Locked: i%2 == 0}
			if kind.AtHeight() {
				m.At.Height = 0.1
			}
			if kind.Sided() {
				m.Number, m.Note = k%3, "lettered <é>"
				m.At = record.Place{From: record.Origin((i + k) % 3), Distance: 0.37 * float64(k%4),
					Side: record.Side(k % 3)}
			}
			n.Record.Data = append(n.Record.Data, m)
			if kind.AsBuilt() {
				n.Readings = append([]record.Datum{m}, n.Readings...)
			}
		}
		n.Found = i%4 == 1
		if i%5 == 2 {
			n.Tracing = traced(i)
		}
		if i > 0 {
			n.Record.Name = d.Name
		}
	}
	return out
}

// traced is a tracing with a mark of everything that can be pressed.
func traced(i int) *record.Tracing {
	t := record.NewTracing(1600, 900.5, i)
	t.Sort, t.Turn, t.Mirrored = record.Sort(i%3), 0.1*float64(i%7), i%2 == 0
	t.Half[i%3] = true
	for v := range record.Views {
		for k, p := range record.Presses(v, record.SetSquare) {
			t = t.Put(record.Mark{View: v, What: p.ID, Length: 0.5 * float64(k%3), High: 0.2, Number: k % 3,
				At: record.Place{From: record.Origin(k % 3), Distance: 0.37 * float64(k%4),
					Side: record.Side(k % 3)}, Entered: k%2 == 1})
			for n := range max(1, p.Points(false)) {
				t = t.Press(len(t.Marks)-1, n, geom.Vec2{X: float64(100 * n), Y: 7.25 * float64(k)}, 0.5)
			}
		}
	}
	t.Picture = "data:image/png;base64,iVBORw0KGgo="
	return &t
}

// What no page pressed is refused, and so is a picture that is none or that something else
// hides in.
func TestTracingRefused(t *testing.T) {
	f := file.File{Boats: []file.Boat{{Design: design.Default(), Notebook: record.Notebook{Tracing: traced(2)}}}}
	data, err := f.Encode()
	require.NoError(t, err)
	for _, change := range [][2]string{
		{`"sort": "set square"`, `"sort": "guessed"`},
		{`"view": "above"`, `"view": "below"`},
		{`"what": "size"`, `"what": "weight"`},
		{`"width": 1600`, `"width": 1e9`},
		{`"y": 14.5`, `"y": 1e300`},
		{`"held": 0.5`, `"held": -1`},
		{`"data:image/png;base64,iVBORw0KGgo="`, `"https://example.com/boat.png"`},
		{`"data:image/png;base64,iVBORw0KGgo="`, `"data:image/svg+xml;base64,PHN2Zz4="`},
		{`"data:image/png;base64,iVBORw0KGgo="`, `"data:image/png;base64,\"><script>"`},
	} {
		changed := strings.Replace(string(data), change[0], change[1], 1)
		require.NotEqual(t, string(data), changed, change[0])
		_, err := file.Decode([]byte(changed))
		assert.Error(t, err, change[1])
	}
	f.Boats[0].Notebook.Tracing.Picture = "data:image/jpeg;base64," + strings.Repeat("A", record.MostPicture)
	data, err = f.Encode()
	require.NoError(t, err)
	_, err = file.Decode(data)
	assert.Error(t, err, "larger than is kept")
}

func TestRoundTrip(t *testing.T) {
	f := file.File{Boats: boats(check.SomeDesigns(60, 1)), Current: 7}
	data, err := f.Encode()
	require.NoError(t, err)
	back, err := file.Decode(data)
	require.NoError(t, err)
	require.Equal(t, f, back)
	again, err := back.Encode()
	require.NoError(t, err)
	require.Equal(t, string(data), string(again))
}

// Every list of bark on hand comes back as it was written.
func TestSheetsOnHand(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 3))
	for n := range design.MostSheets + 1 {
		d := design.Default()
		for i := range n {
			d.OnHand = d.OnHand.Put(i, design.Sheet{Width: 0.2 + r.Float64(), Length: 1 + 3*r.Float64()})
		}
		back, err := file.Decode([]byte(encoded(t, d)))
		require.NoError(t, err)
		assert.Equal(t, d, back.Boats[0].Design)
	}
}

func encoded(t testing.TB, d design.Design) string {
	t.Helper()
	data, err := file.File{Boats: []file.Boat{{Design: d}}}.Encode()
	require.NoError(t, err)
	return string(data)
}

func TestFileRefusals(t *testing.T) {
	good := encoded(t, design.Default())
	with := func(name string) string { return strings.Replace(good, `"name":`, name, 1) }
	rows := []struct{ name, text, says string }{
		{"newer", strings.Replace(good, `"version": 3`, `"version": 4, "extra": {}`, 1),
			"of version 4 and this page reads up to 3"},
		{"cut short", good[:len(good)/2], "damaged"},
		{"no end", good[:len(good)-3], "damaged"},
		{"version zero", strings.Replace(good, `"version": 3`, `"version": 0`, 1), "damaged"},
		{"version a text", strings.Replace(good, `"version": 3`, `"version": "1"`, 1), "damaged"},
		{"text for a number", strings.Replace(good, `"beamFull":`, `"beamFull": "2.1", "x":`, 1),
			`Fullness of the gunwales in the middle: the file holds "2.1", which is not a number`},
		{"too large a number", strings.Replace(good, `"rocker":`, `"rocker": 1e999, "x":`, 1),
			"1e999, which is not a number"},
		{"no number", strings.Replace(good, `"depth":`, `"depth": null, "x":`, 1),
			"Depth amidships: the file holds null"},
		{"given twice", strings.Replace(good, `"depth":`, `"depth": 0.3, "depth":`, 1), `"depth" twice`},
		{"current beyond", strings.Replace(good, `"current": 0`, `"current": 1`, 1), "damaged"},
		{"no design", `{"format": "barkwright designs", "version": 1, "current": 0, "designs": []}`, "damaged"},
		{"foreign JSON", `{"type": "FeatureCollection"}`, "not a file of Barkwright designs"},
		{"a list", `[1, 2]`, "not a file of Barkwright designs"},
		{"foreign text", "<svg/>", "not a file of Barkwright designs"},
		{"nothing", "", "not a file of Barkwright designs"},
		{"binary", "\x00\xff\xfe", "not a file of Barkwright designs"},
		{"huge", good + strings.Repeat(" ", file.MaxSize), "larger than 16 MB"},
		{"deep", strings.Repeat("[", 100000), "not a file of Barkwright designs"},
		{"unknown value", strings.Replace(good, `"rocker":`, `"keel": 1, "rocker":`, 1), `"keel"`},
		{"unknown field", strings.Replace(good, `"name":`, `"owner": 1, "name":`, 1), `"owner"`},
		{"unknown measurement", with(`"readings": [{"what": "keel", "value": 1}], "name":`), `"keel"`},
		{"unknown origin", with(`"readings": [{"what": "railHeight", "from": "keel", "value": 1}], "name":`), `"keel"`},
		{"unknown side", with(`"readings": [{"what": "railHeight", "side": "up", "value": 1}], "name":`), `"up"`},
		{"reading of ribs", with(`"readings": [{"what": "ribCount", "value": 44}], "name":`), "no tape reads"},
		{"thwart", with(`"readings": [{"what": "railHeight", "thwart": 40000, "value": 1}], "name":`),
			"thwart 40000"},
		{"less than nothing", with(`"readings": [{"what": "railHeight", "station": -1, "value": 1}], "name":`),
			"less than nothing"},
		{"out of this world", with(`"readings": [{"what": "railHeight", "station": 1e308, "value": 1}], "name":`),
			"any boat"},
		{"as good as unknown", with(`"readings": [{"what": "railHeight", "tolerance": 1e308, "value": 1}], "name":`),
			"any boat"},
		{"half a rib", with(`"record": {"measurements": [{"what": "ribCount", "value": 43.5}]}, "name":`),
			"whole number"},
		{"endless record", with(`"readings": [` +
			strings.Repeat(`{"what": "beamInside", "value": 1},`, record.MostData) +
			`{"what": "beamInside", "value": 1}], "name":`), "401 measurements"},
		{"unknown set", strings.Replace(good, `"set": []`, `"set": ["length"]`, 1), `"length" as set`},
	}
	for _, row := range rows {
		require.NotEqual(t, good, row.text, row.name)
		f, err := file.Decode([]byte(row.text))
		require.ErrorContains(t, err, row.says, row.name)
		assert.NotContains(t, err.Error(), "\n")
		assert.Empty(t, f.Boats, row.name)
	}
}

// A file edited by hand opens in any order of its values, and with the mark that some editors put
// before UTF-8 (RFC 8259, section 8.1: a reader may pass over it).
func TestFileEditedByHand(t *testing.T) {
	d := design.Starting()[2]
	text := encoded(t, d)
	f, err := file.Decode([]byte("\ufeff" + strings.ReplaceAll(text, "\n", "\r\n")))
	require.NoError(t, err)
	assert.Equal(t, d, f.Boats[0].Design)
	first := regexp.MustCompile(`"length": [0-9.]+,`)
	length := first.FindString(text)
	require.NotEmpty(t, length)
	last := strings.Replace(first.ReplaceAllString(text, ""), `"girthKnown":`, length+` "girthKnown":`, 1)
	require.NotEqual(t, text, last)
	f, err = file.Decode([]byte(last))
	require.NoError(t, err)
	assert.Equal(t, d, f.Boats[0].Design)
}

func TestFileWholeNumbers(t *testing.T) {
	var m map[string]any
	require.NoError(t, json.Unmarshal([]byte(encoded(t, design.Default())), &m))
	values := m["designs"].([]any)[0].(map[string]any)["values"].(map[string]any)
	for _, bad := range []float64{43.5, 1e300, -1e12} {
		values["ribs"] = bad
		data, err := json.Marshal(m)
		require.NoError(t, err)
		_, err = file.Decode(data)
		assert.ErrorContains(t, err, "Ribs: the file holds")
	}
}

// A value out of range is opened as it is, and Validate names it.
func TestFileOutOfRange(t *testing.T) {
	long := check.With(t, "length", 900*units.Inch)
	f, err := file.Decode([]byte(encoded(t, long)))
	require.NoError(t, err)
	assert.Equal(t, long, f.Boats[0].Design)
	require.NotEmpty(t, design.Validate(f.Boats[0].Design))
	assert.Equal(t, "length", design.Validate(f.Boats[0].Design)[0].Key)
}

// A boat opens as it was saved even where its dependent values would now follow to
// others; what is missing stands at its default.
func TestFileKeepsTheBoat(t *testing.T) {
	text := encoded(t, design.Default())
	f, err := file.Decode([]byte(strings.Replace(text, `"set": []`, `"set": ["endHeight"]`, 1)))
	require.NoError(t, err)
	end, _ := design.Lookup("endHeight")
	assert.True(t, end.Owned(f.Boats[0].Design))

	const bare = `{"format": "barkwright designs", "version": 3, "current": 0,
		"designs": [{"name": "", "notes": "", "values": {"frameWidth": 0.7, "beam": 0.9}}]}`
	f, err = file.Decode([]byte(bare))
	require.NoError(t, err)
	want := check.With(t, "beam", 0.9, "frameWidth", 0.7)
	want.Name = ""
	assert.Equal(t, want, f.Boats[0].Design)
}

// A file of version 1 opens as it was meant: its followers, written as they stood, follow
// today's rules, one that did not stand where the old rule had it counts as set, what was
// set stays, and what moved is listed, once.
func TestFileOfVersion1(t *testing.T) {
	const old = `{"format": "barkwright designs", "version": 1, "current": 0, "designs": [
		{"name": "Old", "notes": "", "set": ["gores"], "values": {"beam": 0.8382, "frameWidth": 0.635, "turnWidth": 0.635,
			"bilge": 0.8, "heelLength": 0.508, "stemSolid": 0.1524, "gores": 5}},
		{"name": "Edited", "notes": "", "set": [], "values": {"frameWidth": 0.66, "turnWidth": 0.635}}]}`
	f, err := file.Decode([]byte(old))
	require.NoError(t, err)
	d := f.Boats[0].Design
	assert.InDelta(t, 27*units.Inch, d.FrameWidth, 1e-9)
	assert.InDelta(t, 0.8, d.Bilge, 1e-12)
	assert.InDelta(t, 20*units.Inch, d.HeelLength, 1e-9)
	assert.InDelta(t, 6*units.Inch, d.StemSolid, 1e-9)
	assert.Equal(t, 5, d.Gores)
	assert.False(t, d.TurnSet())
	var keys []string
	for _, m := range f.Boats[0].Moved {
		keys = append(keys, m.Key)
	}
	assert.Equal(t, []string{"frameWidth", "turnWidth"}, keys)
	edited := f.Boats[1].Design
	assert.InDelta(t, 0.66, edited.FrameWidth, 1e-9)
	assert.True(t, edited.TurnSet(), "it did not stand where the old rule had it")

	data, err := f.Encode()
	require.NoError(t, err)
	back, err := file.Decode(data)
	require.NoError(t, err)
	assert.Equal(t, d, back.Boats[0].Design)
	assert.Empty(t, back.Boats[0].Moved)
}

func TestFileRefusesWhatIsNotFinite(t *testing.T) {
	_, err := file.File{Boats: []file.Boat{{Design: check.With(t, "length", math.Inf(1))}}}.Encode()
	assert.ErrorContains(t, err, "Length overall")
}

func FuzzDecode(f *testing.F) {
	good := []byte(encoded(f, design.Default()))
	f.Add(good)
	full, err := file.File{Boats: boats(check.SomeDesigns(3, 4))}.Encode()
	require.NoError(f, err)
	f.Add(full)
	f.Add(good[:300])
	f.Add(bytes.Replace(good, []byte(`"set": []`), []byte(`"set": ["ribs"]`), 1))
	f.Fuzz(func(t *testing.T, data []byte) {
		read, err := file.Decode(data)
		if err != nil {
			require.Empty(t, read.Boats)
			require.NotContains(t, err.Error(), "\n")
			return
		}
		for _, b := range read.Boats {
			design.Validate(b.Design)
		}
		again, err := read.Encode()
		require.NoError(t, err)
		if len(again) > file.MaxSize {
			return
		}
		back, err := file.Decode(again)
		require.NoError(t, err)
		require.Equal(t, read, back)
	})
}

// The log of the work goes through a file as it stands, steps of a newer page too; what is
// no log is refused.
func TestTallyInAFile(t *testing.T) {
	b := file.Boat{Design: design.Default()}
	b.Notebook.Log = tally.Log{}.Tick("rib.drive", "rib.18", "2026-06-14", true).
		Tick("rib.drive", "rib.18", "2026-06-15", false).
		Note("gather", "2026-06-15", "two good birches by the creek").Tick("newer.step", "", "2026-06-16", true)
	text, err := file.File{Boats: []file.Boat{b}}.Encode()
	require.NoError(t, err)
	f, err := file.Decode(text)
	require.NoError(t, err)
	assert.Equal(t, b.Notebook.Log, f.Boats[0].Notebook.Log)
	for _, bad := range []string{`"2026-06-14"`, `"newer.step"`} {
		_, err := file.Decode([]byte(strings.Replace(string(text), bad, `""`, 1)))
		assert.Error(t, err, bad)
	}
}

// What is set for a plan goes through a file as it stands; what no plan has is refused.
func TestSeasonInAFile(t *testing.T) {
	s := plan.NewSeason()
	s.Numbers[plan.Learners], s.Days[plan.Begin] = 12, "2027-06-14"
	s.Likely[plan.DigRoots], s.Have[plan.TakeBark] = 1.5, 2
	b := file.Boat{Design: design.Default()}
	b.Notebook.Season = &s
	b.Notebook.Log = tally.Log{}.Work("lacing.lace", "2027-06-20", 24, 0, 20)
	text, err := file.File{Boats: []file.Boat{b}}.Encode()
	require.NoError(t, err)
	f, err := file.Decode(text)
	require.NoError(t, err)
	assert.Equal(t, s, f.Boats[0].Notebook.Planned())
	assert.Equal(t, b.Notebook.Log, f.Boats[0].Notebook.Log)
	for was, is := range map[string]string{`"learners": 12`: `"learners": 99`, `"roots.dig": 1.5`: `"roots.fry": 1`,
		`"2027-06-14"`: `"14 June"`, `"bark.take": 2`: `"bark.take": -2`, `"learners": 20`: `"learners": -20`} {
		require.Contains(t, string(text), was)
		_, err := file.Decode([]byte(strings.Replace(string(text), was, is, 1)))
		assert.Error(t, err, is)
	}
	plain, err := file.File{Boats: []file.Boat{{Design: design.Default()}}}.Encode()
	require.NoError(t, err)
	assert.NotContains(t, string(plain), "season")
}
