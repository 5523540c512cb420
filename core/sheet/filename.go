package sheet

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// mostFileName is how long the boat's part of a file's name may be, bytes: with the
// rest of the name it stays clear of the 255 that file systems take.
const mostFileName = 150

// reserved tells of a name that Windows keeps for a device, whatever ending it has:
// Microsoft, Naming Files, Paths, and Namespaces.
func reserved(name string) bool {
	name = strings.ToLower(name)
	switch name {
	case "con", "prn", "aux", "nul":
		return true
	}
	return len(name) == len("com1") && (name[:3] == "com" || name[:3] == "lpt") && '0' <= name[3] && name[3] <= '9'
}

// FileName names a file that is handed over: the boat's name, what of it the file
// holds if not all, and the ending. Letters and digits of every script stay, with
// the marks that belong to them; the rest becomes hyphens, so that no file system
// and no shell reads anything into it.
func FileName(boat, part, ending string) string {
	var b strings.Builder
	gap := false
	for _, r := range boat {
		if r == utf8.RuneError || !unicode.In(r, unicode.Letter,
			unicode.Digit) && !(b.Len() > 0 && !gap && unicode.Is(unicode.Mark, r)) {
			gap = true
			continue
		}
		if b.Len()+len("-")+utf8.RuneLen(r) > mostFileName {
			break
		}
		if gap && b.Len() > 0 {
			b.WriteByte('-')
		}
		gap = false
		b.WriteRune(r)
	}
	if b.Len() == 0 {
		b.WriteString("canoe")
	}
	name := b.String()
	if part != "" {
		name += "-" + part
	}
	if reserved(name) {
		name = "canoe-" + name
	}
	return name + "." + ending
}
