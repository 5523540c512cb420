// Package file keeps designs, and what was measured beside each, in one JSON text:
// the file that is saved and opened, and what the browser keeps.
package file
