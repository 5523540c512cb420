// Package check is the tests' own kit: reading the published and the computed tables
// under testdata and comparing with the tolerance that stands in them.
package check

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Row is one row of a table, by column name.
type Row map[string]string

// Float reads the number in a column; an empty cell fails the test.
func (r Row) Float(t testing.TB, column string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(strings.TrimSpace(r[column]), 64)
	require.NoError(t, err, "column %q", column)
	return v
}

// Published reads testdata/published/<name>.csv: lines that start with # are its
// source and notes, the first other line names the columns.
func Published(t testing.TB, name string) []Row {
	t.Helper()
	return table(t, "published", name)
}

// Computed reads testdata/computed/<name>.csv in the same way: figures that were worked
// out for this project, by closed forms, by hand or by an independent program.
func Computed(t testing.TB, name string) []Row {
	t.Helper()
	return table(t, "computed", name)
}

func table(t testing.TB, folder, name string) []Row {
	t.Helper()
	f, err := os.Open(filepath.Join(root(), "testdata", folder, name+".csv"))
	require.NoError(t, err)
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	r.TrimLeadingSpace = true
	all, err := r.ReadAll()
	require.NoError(t, err)
	require.Greater(t, len(all), 1, "%s has no rows", name)
	rows := make([]Row, 0, len(all)-1)
	for _, line := range all[1:] {
		row := Row{}
		for i, column := range all[0] {
			row[column] = line[i]
		}
		rows = append(rows, row)
	}
	return rows
}

func root() string {
	_, file, _, _ := runtime.Caller(0)
	return filepath.Join(filepath.Dir(file), "..", "..", "..")
}

// Plain is text with its no-break spaces made plain ones.
func Plain(text string) string {
	return strings.NewReplacer("\u00a0", " ", "\u202f", " ").Replace(text)
}
