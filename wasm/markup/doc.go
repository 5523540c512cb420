// Package markup writes what the page shows of a boat as HTML: results, checks, tables,
// charts, lists to choose from. It is pure; the bridge sets what it returns.
package markup
