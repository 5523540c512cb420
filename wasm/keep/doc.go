// Package keep holds a page's boats in a store of texts, each under a key of its own,
// so that pages open side by side do not write over one another. What it cannot read it
// never writes over, moves or renames. It is pure Go over a small Store; the bridge
// hands it the browser's.
package keep
