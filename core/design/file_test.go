package design_test

import (
	"bytes"
	"encoding/json"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

func randomDesigns(n int, seed uint64) []design.Design {
	r := rand.New(rand.NewPCG(seed, seed))
	out := []design.Design{design.Default()}
	for len(out) < n {
		d := check.NearDesign(r, design.Default(), 0.3)
		if len(out)%3 == 0 {
			d = check.AnyDesign(r)
		}
		d.Name, d.Notes = `Rose & "Thorn" <b> é 独木舟 `+string(rune('a'+len(out)%26)), "one\ntwo\t\\ \u2028"
		out = append(out, d)
	}
	return out
}

func TestFileRoundTrip(t *testing.T) {
	f := design.File{Designs: randomDesigns(60, 1), Current: 7}
	data, err := f.Encode()
	require.NoError(t, err)
	back, err := design.DecodeFile(data)
	require.NoError(t, err)
	require.Equal(t, f, back)
	again, err := back.Encode()
	require.NoError(t, err)
	require.Equal(t, string(data), string(again))
}

func encoded(t testing.TB, d design.Design) string {
	t.Helper()
	data, err := design.File{Designs: []design.Design{d}}.Encode()
	require.NoError(t, err)
	return string(data)
}

func TestFileRefusals(t *testing.T) {
	good := encoded(t, design.Default())
	rows := []struct{ name, text, says string }{
		{"newer", strings.Replace(good, `"version": 1`, `"version": 2, "extra": {}`, 1), "of version 2 and this page reads up to 1"},
		{"cut short", good[:len(good)/2], "damaged"},
		{"no end", good[:len(good)-3], "damaged"},
		{"version zero", strings.Replace(good, `"version": 1`, `"version": 0`, 1), "damaged"},
		{"version a text", strings.Replace(good, `"version": 1`, `"version": "1"`, 1), "damaged"},
		{"text for a number", strings.Replace(good, `"beamFull":`, `"beamFull": "2.1", "x":`, 1), "damaged"},
		{"too large a number", strings.Replace(good, `"rocker":`, `"rocker": 1e999, "x":`, 1), "damaged"},
		{"current beyond", strings.Replace(good, `"current": 0`, `"current": 1`, 1), "damaged"},
		{"no design", `{"format": "barkwright designs", "version": 1, "current": 0, "designs": []}`, "damaged"},
		{"foreign JSON", `{"type": "FeatureCollection"}`, "not a file of Barkwright designs"},
		{"a list", `[1, 2]`, "not a file of Barkwright designs"},
		{"foreign text", "<svg/>", "not a file of Barkwright designs"},
		{"nothing", "", "not a file of Barkwright designs"},
		{"binary", "\x00\xff\xfe", "not a file of Barkwright designs"},
		{"huge", good + strings.Repeat(" ", design.MaxFile), "larger than 1 MB"},
		{"deep", strings.Repeat("[", 100000), "not a file of Barkwright designs"},
		{"unknown value", strings.Replace(good, `"rocker":`, `"keel": 1, "rocker":`, 1), `"keel"`},
		{"unknown field", strings.Replace(good, `"name":`, `"owner": 1, "name":`, 1), `"owner"`},
		{"unknown set", strings.Replace(good, `"set": []`, `"set": ["length"]`, 1), `"length" as set`},
	}
	for _, row := range rows {
		require.NotEqual(t, good, row.text, row.name)
		f, err := design.DecodeFile([]byte(row.text))
		require.ErrorContains(t, err, row.says, row.name)
		assert.NotContains(t, err.Error(), "\n")
		assert.Empty(t, f.Designs, row.name)
	}
}

func TestFileWholeNumbers(t *testing.T) {
	var m map[string]any
	require.NoError(t, json.Unmarshal([]byte(encoded(t, design.Default())), &m))
	values := m["designs"].([]any)[0].(map[string]any)["values"].(map[string]any)
	for _, bad := range []float64{43.5, 1e300, -1e12} {
		values["ribs"] = bad
		data, err := json.Marshal(m)
		require.NoError(t, err)
		_, err = design.DecodeFile(data)
		assert.ErrorContains(t, err, "Ribs: the file holds")
	}
}

// A value out of range is opened as it is, and Validate names it.
func TestFileOutOfRange(t *testing.T) {
	long := with(t, "length", 900*units.Inch)
	f, err := design.DecodeFile([]byte(encoded(t, long)))
	require.NoError(t, err)
	assert.Equal(t, long, f.Designs[0])
	assert.Contains(t, keys(design.Validate(f.Designs[0])), "length")
}

// A boat opens as it was saved even where its dependent values would now follow to
// others; what is missing stands at its default.
func TestFileKeepsTheBoat(t *testing.T) {
	text := encoded(t, design.Default())
	f, err := design.DecodeFile([]byte(strings.Replace(text, `"set": []`, `"set": ["endHeight"]`, 1)))
	require.NoError(t, err)
	end, _ := design.Lookup("endHeight")
	assert.True(t, end.Owned(f.Designs[0]))

	const bare = `{"format": "barkwright designs", "version": 1, "current": 0, "designs": [{"name": "", "notes": "", "values": {"frameWidth": 0.7, "beam": 0.9}}]}`
	f, err = design.DecodeFile([]byte(bare))
	require.NoError(t, err)
	want := with(t, "beam", 0.9, "frameWidth", 0.7)
	want.Name = ""
	assert.Equal(t, want, f.Designs[0])
}

func TestFileRefusesWhatIsNotFinite(t *testing.T) {
	_, err := design.File{Designs: []design.Design{with(t, "length", math.Inf(1))}}.Encode()
	assert.ErrorContains(t, err, "Length overall")
	_, err = design.Line(with(t, "length", math.NaN()))
	assert.ErrorContains(t, err, "Length overall")
}

func FuzzDecodeFile(f *testing.F) {
	good := []byte(encoded(f, design.Default()))
	f.Add(good)
	f.Add(good[:300])
	f.Add(bytes.Replace(good, []byte(`"set": []`), []byte(`"set": ["ribs"]`), 1))
	f.Fuzz(func(t *testing.T, data []byte) {
		file, err := design.DecodeFile(data)
		if err != nil {
			require.Empty(t, file.Designs)
			require.NotContains(t, err.Error(), "\n")
			return
		}
		for _, d := range file.Designs {
			design.Validate(d)
		}
		again, err := file.Encode()
		require.NoError(t, err)
		if len(again) > design.MaxFile {
			return
		}
		back, err := design.DecodeFile(again)
		require.NoError(t, err)
		require.Equal(t, file, back)
	})
}
