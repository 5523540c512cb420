// Package sheet writes text: tables for the page and paper, build sheets, patterns
// in millimetres and comma-separated values. It takes an io.Writer and returns the
// first error.
package sheet
