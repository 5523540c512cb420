// Package tracing is a picture that a record is read off, as it is looked at: what pointers
// and keys do on it, what is in hand, what is drawn over it and said of it. What was pressed
// stands in the work's notebook; the picture itself stays with the page.
package tracing
