// Package sheet writes text: tables for the page and paper, comma-separated values, build
// sheets and what is printed with them. It takes an io.Writer and returns the first error.
package sheet
