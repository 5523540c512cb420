package file_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/internal/check"
)

func kept(b file.Boat) file.Kept {
	line, _ := design.Line(b.Design)
	return file.Kept{
		Head: file.Head{Name: b.Design.Name, Line: line, Revision: 7, Stamp: "s", Off: len(line)%2 == 0, From: "other"},
		Boat: b, Typed: map[string]string{"length": "17 banana", "record-text": "a,\nb]}\n"},
	}
}

// What is kept comes back whole, its head without the rest of it, and it opens as a
// file of one boat.
func TestKept(t *testing.T) {
	for i, b := range boats(check.SomeDesigns(20, 5)) {
		if i%2 == 0 {
			built := check.With(t, "beam", 0.8+0.01*float64(i))
			b.Built = &built
		}
		want := kept(b)
		text, err := want.Encode()
		require.NoError(t, err)
		back, err := file.DecodeKept(text)
		require.NoError(t, err)
		require.Equal(t, want, back)
		head, err := file.ReadHead(text)
		require.NoError(t, err)
		require.Equal(t, want.Head, head)
		f, err := file.Decode([]byte(text))
		require.NoError(t, err)
		require.Equal(t, []file.Boat{b}, f.Boats)
		require.True(t, file.Same(b, back.Boat))
		other := b
		other.Design.Notes += "."
		require.False(t, file.Same(b, other))
	}
}

// A text torn anywhere is damaged, not another boat.
func TestKeptTorn(t *testing.T) {
	text, err := kept(boats(check.SomeDesigns(8, 6))[7]).Encode()
	require.NoError(t, err)
	for n := len(`{"format":"barkwright designs"`); n < len(text); n++ {
		_, err := file.ReadHead(text[:n])
		require.ErrorIs(t, err, file.ErrDamaged, text[:n])
	}
}

func TestKeptRefusals(t *testing.T) {
	good, err := kept(file.Boat{Design: design.Default()}).Encode()
	require.NoError(t, err)
	rows := []struct{ name, text, says string }{
		{"newer", strings.Replace(good, `"version":3,`, `"version":9,`, 1), "of version 9 and this page reads up to"},
		{"newer, all else unknown", `{"format":"barkwright designs","version":9,"hull":{}}`, "of version 9"},
		{"foreign", `{"some":"thing"}`, "not a file of Barkwright designs"},
		{"no JSON", `Heron Cove`, "not a file of Barkwright designs"},
		{"nothing", ``, "not a file of Barkwright designs"},
		{"a file", encoded(t, design.Default()), "not a file of Barkwright designs"},
		// A page with one parameter more has another mark in the head.
		{"unknown value", strings.Replace(strings.Replace(good, `"table":"`, `"table":"x`, 1), `"rocker":`,
			`"keel":1,"rocker":`, 1), `"keel"`},
		{"unknown in the head", strings.Replace(strings.Replace(good, `"table":"`, `"table":"x`, 1), `"revision":`,
			`"owner":"","revision":`, 1), `"owner"`},
	}
	for _, row := range rows {
		require.NotEqual(t, good, row.text, row.name)
		head, err := file.ReadHead(row.text)
		require.ErrorContains(t, err, row.says, row.name)
		assert.Empty(t, head, row.name)
		_, err = file.DecodeKept(row.text)
		require.ErrorContains(t, err, row.says, row.name)
	}
	// A page with a parameter less: what is missing stands at its default.
	head, err := file.ReadHead(strings.Replace(good, `"table":"`, `"table":"x`, 1))
	require.NoError(t, err)
	assert.Equal(t, design.Default().Name, head.Name)
}

// Listing hundreds costs what their first lines cost.
func BenchmarkReadHead(b *testing.B) {
	text, err := kept(boats(check.SomeDesigns(8, 6))[7]).Encode()
	require.NoError(b, err)
	for b.Loop() {
		_, err = file.ReadHead(text)
	}
	require.NoError(b, err)
}
