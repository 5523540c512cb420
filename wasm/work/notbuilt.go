package work

import (
	"strconv"

	"barkwright/core/design"
)

// NotBuilt is the note beside the picture where the boat shown is not the one entered:
// the control at fault, why, and what is shown instead.
type NotBuilt struct{ Word, Key, Label, Message, More string }

// NotBuilt returns the note, and whether the boat entered is at fault.
func (w *Work) NotBuilt() (NotBuilt, bool) {
	if len(w.Faults) == 0 {
		return NotBuilt{}, false
	}
	f := w.Faults[0]
	more := ""
	if n := len(w.Faults) - 1; n > 0 {
		more = " And " + strconv.Itoa(n) + " more."
	}
	return NotBuilt{"Not built.", f.Key, LabelOf(f.Key), f.Message(w.System), more + " " + w.shownInstead()}, true
}

// shownInstead returns words for what is shown of a boat that cannot be built as
// entered.
func (w *Work) shownInstead() string {
	switch {
	case w.None:
		return "No boat is shown: this one could not be built so far."
	case w.OnlyTexts():
		return "The boat shown has it cut short."
	}
	return "The boat shown is the last one that could be."
}

// NotRead returns the note for an entry that could not be read.
func NotRead(key, why string) NotBuilt {
	return NotBuilt{Word: "Not read.", Key: key, Label: LabelOf(key), Message: why}
}

// FirstFault returns the label of the control at fault and the reason. There must be a
// fault.
func (w *Work) FirstFault() string {
	return LabelOf(w.Faults[0].Key) + ": " + w.Faults[0].Message(w.System)
}

// FaultText returns why a control's value cannot be built, or "".
func (w *Work) FaultText(key string) string {
	if f, ok := w.Fault(key); ok {
		return f.Message(w.System)
	}
	return ""
}

// LabelOf returns a parameter's label, or the key itself where it is not a parameter's.
func LabelOf(key string) string {
	if p, ok := design.Lookup(key); ok {
		return p.Label
	}
	if key == design.CorrectionsKey {
		return "Corrections from readings"
	}
	return key
}
