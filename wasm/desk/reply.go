package desk

import (
	"barkwright/core/file"
	"barkwright/core/sheet"
)

// Reply is what the page does after something was pressed, opened or heard, in this
// order.
type Reply struct {
	Unsay   []string // notices to take away, by their names
	Notices []Notice
	// TookUp tells that another boat is in hand, Changed that this one is another or its
	// record. KeepNothing tells that what came in hand is as it is kept.
	TookUp, Changed, KeepNothing bool
	// Ticked tells that what is done of the work is another, or what is noted of it.
	Ticked bool
	// Bench tells that the bench shows something else, or is open or closed now.
	Bench bool
	// Shelf tells that the lists of boats are others.
	Shelf bool
	Says  []Said
	// Hidden are elements to be hidden or shown, Invalid fields to be marked as wrong or
	// not, by their ids.
	Hidden, Invalid map[string]bool
	// Fields are values for fields, Markup HTML for elements, by their ids.
	Fields, Markup map[string]string
	// Focus is the id of the field that the focus goes to, empty for none.
	Focus string
	Save  *File  // a file to hand over, nil for none
	Print string // HTML for the printer, empty for none
	Copy  string // a text for the clipboard, empty for none
}

// Said is a text at an element of the page, by its id.
type Said struct{ At, Text string }

// File is a file handed to the user.
type File struct{ Name, Kind, Text string }

// Notice is something said at the top of the page under a name, with its buttons.
type Notice struct {
	Name, Text string
	Buttons    []Button
}

// Button is a button of a notice: its words and what it does.
type Button struct {
	Words string
	Press func() Reply
}

// say is a reply that says one thing.
func say(at, text string) Reply { return Reply{Says: []Said{{at, text}}} }

func (r Reply) saying(at, text string) Reply {
	r.Says = append(r.Says, Said{at, text})
	return r
}

// and adds another reply that only says something or fills elements, with notices.
func (r Reply) and(s Reply) Reply {
	for id, html := range s.Markup {
		if r.Markup == nil {
			r.Markup = map[string]string{}
		}
		r.Markup[id] = html
	}
	r.Unsay, r.Notices, r.Says = append(r.Unsay, s.Unsay...), append(r.Notices, s.Notices...), append(r.Says,
		s.Says...)
	return r
}

const json = "application/json"

// boats is a file of boats under a name, or why there is none.
func boats(f file.File, name, done string) Reply {
	b, err := f.Encode()
	if err != nil {
		return say(filesSay, err.Error())
	}
	r := Reply{Save: &File{name, json, string(b)}}
	if done != "" {
		r = r.saying(filesSay, done)
	}
	return r
}

// jsonName names a file of one boat.
func jsonName(boat string) string { return sheet.FileName(boat, "", "json") }
