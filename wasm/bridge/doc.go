// Package bridge joins the page to the core: it reads the form's events, writes
// results beside their keys and hands the picture to whoever paints it. With
// paint it is the only place where syscall/js is met; what is decided is decided
// in package work.
package bridge
