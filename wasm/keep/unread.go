package keep

import (
	"encoding/json"
	"errors"
	"slices"
	"strings"

	"barkwright/core/file"
)

// Unread is something kept that this page cannot open. It stays under its key.
type Unread struct {
	// Key is what it is kept under, ID the boat's, empty where it is none.
	Key, ID string
	// Name is a boat's that is found in it, or the key.
	Name string
	// Why is one sentence for the user.
	Why string
	// Stops says that the boat can be read but stopped the page.
	Stops bool
}

const stopsWhy = "It stopped this page when it was last opened."

// Unread is everything kept that cannot be opened.
func (k *Keeper) Unread() []Unread { return k.unread }

// Text returns what stands under a key, to be handed over as a file.
func (k *Keeper) Text(key string) string {
	text, _ := k.shared.Get(key)
	return text
}

func (k *Keeper) setAside(u Unread) {
	k.boats = slices.DeleteFunc(k.boats, func(b Boat) bool { return b.ID == u.ID })
	if !slices.ContainsFunc(k.unread, func(v Unread) bool { return v.Key == u.Key }) {
		k.unread = append(k.unread, u)
	}
}

// cannotRead notes a text that cannot be read. A torn one is also copied, since the page
// that tore it may overwrite it.
func (k *Keeper) cannotRead(key, text string, err error) {
	id, _ := strings.CutPrefix(key, boatPrefix)
	if id == key {
		id = ""
	}
	k.setAside(Unread{Key: key, ID: id, Name: nameIn(text, key), Why: strings.Replace(err.Error(), "The file", "What is kept", 1)})
	if errors.Is(err, file.ErrDamaged) {
		aside := tornPrefix + markOf(text) + "." + strings.TrimPrefix(key, Prefix)
		if _, there := k.shared.Get(aside); !there {
			k.shared.Set(aside, text)
		}
	}
}

// listTorn names a torn text that no longer stands where it was.
func (k *Keeper) listTorn(key string) {
	text, _ := k.shared.Get(key)
	_, was, _ := strings.Cut(strings.TrimPrefix(key, tornPrefix), ".")
	if still, ok := k.shared.Get(Prefix + was); ok && still == text {
		return
	}
	k.setAside(Unread{Key: key, Name: nameIn(text, key), Why: "What is kept is damaged: this is a copy of it."})
}

// nameIn returns the first name found in a text, or else the key.
func nameIn(text, key string) string {
	_, rest, _ := strings.Cut(text, `"name"`)
	_, rest, _ = strings.Cut(rest, ":")
	var name string
	if json.NewDecoder(strings.NewReader(rest)).Decode(&name) == nil && name != "" {
		return name
	}
	return key
}
