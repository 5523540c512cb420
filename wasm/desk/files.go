package desk

import (
	"errors"
	"strconv"
	"strings"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/wasm/keep"
)

// filesSay is where what was done with files is said.
const filesSay = "file-says"

// Keep answers the buttons of the shelf and the files: off is the place of the boat
// chosen among those taken off, line what stands in the field of a boat as a line.
func (d *Desk) Keep(what string, off int, line string) Reply {
	clearing := d.clearing
	d.clearing = false
	switch what {
	case "copy":
		d.Shelf.Copy()
		return Reply{TookUp: true}
	case "remove":
		return d.take("", d.Shelf.Remove)
	case "bring-back":
		return d.take("", func() error { return d.Shelf.BringBack(off) })
	case "clear-off":
		return d.clearTakenOff(clearing)
	case "save-file":
		return boats(d.Shelf.Whole(), jsonName(d.Shelf.InHand().Entered.Name),
			"Saved as a file: this boat, with what was measured of it.")
	case "save-bare":
		f := d.Shelf.Whole()
		for i := range f.Boats {
			n := &f.Boats[i].Notebook
			n.Log = nil
			if n.Tracing != nil {
				bare := *n.Tracing
				bare.Picture = ""
				n.Tracing = &bare
			}
		}
		return boats(f, jsonName(d.Shelf.InHand().Entered.Name),
			"Saved as a file: this boat, without what was ticked and noted and without a picture.")
	case "save-all":
		return d.saveAll()
	case "show-line":
		return d.showLine()
	case "open-line":
		return d.OpenLine(line)
	}
	return Reply{}
}

// clearTakenOff forgets what was taken off, once it has been asked for twice.
func (d *Desk) clearTakenOff(sure bool) Reply {
	if !sure {
		d.clearing = true
		return say(filesSay,
			"Removed: "+strconv.Itoa(len(d.Shelf.TakenOff()))+". Press once more to forget them for good.")
	}
	d.Shelf.ClearTakenOff()
	return Reply{Shelf: true, Says: []Said{{filesSay, "What was taken off is forgotten."}}}
}

func (d *Desk) saveAll() Reply {
	f, err := d.Shelf.All()
	if err != nil {
		return d.unread().saying(filesSay,
			err.Error()+" Nothing is saved: open the boats that can be opened and save each.")
	}
	n := strconv.Itoa(len(f.Boats))
	return boats(f, n+"-canoes.json", "Saved as a file: all "+n+" boats on this page.")
}

const unchanged = " Nothing is changed."

// TooLarge and Unreadable are said of a file that is not read at all.
func TooLarge() Reply   { return say(filesSay, file.ErrTooLarge.Error()) }
func Unreadable() Reply { return say(filesSay, "The browser could not read the file."+unchanged) }

// OpenFile puts the boats of a file's text beside the others that are not here.
func (d *Desk) OpenFile(text string) Reply {
	f, err := file.Decode([]byte(text))
	switch {
	case err != nil:
		return say(filesSay, err.Error()+unchanged)
	case len(f.Boats) == 0:
		return say(filesSay, "The file holds no design."+unchanged)
	}
	r := d.Kept()
	put, err := d.Shelf.Put(f)
	if errors.Is(err, keep.ErrRefused) {
		return r.saying(filesSay,
			"The file holds "+strconv.Itoa(len(f.Boats))+" boats, and the browser has no room to keep them "+
				"beside those that are here. Nothing is changed: save what is here as a file and take it off, then open this one.")
	}
	if err != nil {
		r = r.and(d.unread())
	}
	says := "Opened " + strconv.Itoa(put.Added) + " from the file, beside those that were here."
	if put.Here > 0 {
		says += " Here already, and not added again: " + strconv.Itoa(put.Here) + "."
	}
	if put.Back > 0 {
		says += " Brought back from what was taken off: " + strconv.Itoa(put.Back) + "."
	}
	r.TookUp = true
	return r.saying(filesSay, says)
}

// showLine writes the boat as one line of text, ready to be copied.
func (d *Desk) showLine() Reply {
	line, err := design.Line(d.Shelf.InHand().Entered)
	if err != nil {
		return say(filesSay, err.Error())
	}
	return Reply{Fields: map[string]string{"line": line}, Focus: "line", Copy: line, Says: []Said{{filesSay,
		"The boat as one line, selected to be copied. Its notes and the crew's sheets of bark stay in the file."}}}
}

// OpenLine puts the boat of a line beside the others.
func (d *Desk) OpenLine(line string) Reply {
	boat, moved, err := design.ReadLine(strings.TrimSpace(line))
	if err != nil {
		return say(filesSay, err.Error()+unchanged)
	}
	d.Shelf.Add(boat)
	d.Shelf.InHand().Moved = moved
	return Reply{TookUp: true, Says: []Said{{filesSay, "Opened from the line, beside those that were here."}}}
}
