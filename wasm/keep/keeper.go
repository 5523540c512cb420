package keep

import (
	"hash/fnv"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"time"

	"barkwright/core/file"
)

// Boat is one boat that is kept, known by its head.
type Boat struct {
	ID string
	file.Head
}

// Keeper keeps a page's boats. What belongs to this page alone, such as which boat is in
// hand, is also kept in a store of the page's own. That store survives a reload.
type Keeper struct {
	shared, own Store
	now         func() time.Time
	boats       []Boat
	unread      []Unread
	// stamps are those of the boats as this page last read or wrote them.
	stamps  map[string]string
	lastID  int64
	refuses bool
	opened  bool // by Done
}

// Open reads what the stores hold: the heads of the boats, and what cannot be read.
func Open(shared, own Store, now func() time.Time) *Keeper {
	k := &Keeper{shared: shared, own: own, now: now, stamps: map[string]string{}}
	k.refuses = !shared.Set(probe, "1")
	if !k.refuses {
		shared.Remove(probe)
	}
	k.noteStop()
	keys := shared.Keys()
	slices.Sort(keys)
	for _, key := range keys {
		switch {
		case strings.HasPrefix(key, boatPrefix):
			k.list(key)
		case strings.HasPrefix(key, tornPrefix):
			k.listTorn(key)
		}
	}
	return k
}

// list reads the head of a boat, or notes why it cannot be read.
func (k *Keeper) list(key string) {
	text, ok := k.shared.Get(key)
	if !ok {
		return
	}
	head, err := file.ReadHead(text)
	if err != nil {
		k.cannotRead(key, text, err)
		return
	}
	id := strings.TrimPrefix(key, boatPrefix)
	if stamp, stops := k.shared.Get(stopsPrefix + id); stops && stamp == head.Stamp {
		k.setAside(Unread{Key: key, ID: id, Name: head.Name, Stops: true, Why: stopsWhy})
		return
	}
	k.boats = append(k.boats, Boat{id, head})
}

// Boats are those that are kept, in the order they were made, with those taken off.
func (k *Keeper) Boats() []Boat { return k.boats }

// Refuses reports whether the store accepts nothing at all.
func (k *Keeper) Refuses() bool { return k.refuses }

// NewID returns an ID for a new boat. Later IDs sort after earlier ones.
func (k *Keeper) NewID() string {
	const digits, base = 9, 36
	k.lastID = max(k.lastID+1, k.now().UnixMilli())
	count := strconv.FormatInt(k.lastID, base)
	return strings.Repeat("0", max(0, digits-len(count))) + count + newStamp()
}

// newStamp returns a stamp that no other page makes.
func newStamp() string { return strconv.FormatUint(rand.Uint64(), 36) }

// Load reads a whole boat. One that cannot be read is noted. Before Done it is marked as
// being opened.
func (k *Keeper) Load(id string) (file.Kept, error) {
	text, ok := k.shared.Get(boatPrefix + id)
	if !ok {
		return file.Kept{}, ErrElsewhere
	}
	kept, err := file.DecodeKept(text)
	if err != nil {
		k.cannotRead(boatPrefix+id, text, err)
		return file.Kept{}, err
	}
	k.stamps[id] = kept.Stamp
	if !k.opened {
		k.mark("boat " + id)
	}
	return kept, nil
}

// Save keeps a boat under its ID. If the text there is not the one that this page last
// read or wrote, it writes nothing and returns ErrElsewhere.
func (k *Keeper) Save(id string, kept file.Kept) (Boat, error) {
	if text, ok := k.shared.Get(boatPrefix + id); ok {
		head, err := file.ReadHead(text)
		if err != nil || head.Stamp != k.stamps[id] {
			return Boat{}, ErrElsewhere
		}
		kept.Revision = head.Revision
	}
	kept.Revision++
	kept.Stamp = newStamp()
	text, err := kept.Encode()
	if err != nil {
		return Boat{}, err
	}
	if !k.shared.Set(boatPrefix+id, text) {
		return Boat{}, ErrRefused
	}
	k.stamps[id] = kept.Stamp
	head, err := file.ReadHead(text)
	return Boat{id, head}, err
}

// SaveAll keeps several new boats. If one is refused it keeps none of them.
func (k *Keeper) SaveAll(all []file.Kept) ([]Boat, error) {
	var saved []Boat
	for _, kept := range all {
		b, err := k.Save(k.NewID(), kept)
		if err != nil {
			for _, s := range saved {
				k.Clear(s.ID)
			}
			return nil, err
		}
		saved = append(saved, b)
	}
	return saved, nil
}

// Clear removes a boat from the store for good.
func (k *Keeper) Clear(id string) {
	k.shared.Remove(boatPrefix + id)
	delete(k.stamps, id)
}

// Heard returns the boat under a key that another page has written, as it is there now,
// and whether there is one that this page can read. ID is empty for a key that is not a
// boat's.
func (k *Keeper) Heard(key string) (b Boat, stands bool) {
	id, ours := strings.CutPrefix(key, boatPrefix)
	if !ours {
		return Boat{}, false
	}
	text, ok := k.shared.Get(key)
	if !ok {
		return Boat{ID: id}, false
	}
	head, err := file.ReadHead(text)
	if err != nil {
		k.cannotRead(key, text, err)
	}
	return Boat{id, head}, err == nil
}

// Knows reports whether a head is the one that this page last read or wrote.
func (k *Keeper) Knows(b Boat) bool { return k.stamps[b.ID] == b.Stamp }

// Old returns the boats under the one key that older pages used. It returns none once
// they have been taken over: call Taken then.
func (k *Keeper) Old() (f file.File, ok bool) {
	text, there := k.shared.Get(oldKey)
	taken, _ := k.shared.Get(oldTaken)
	if !there || text == "" || taken == markOf(text) {
		return file.File{}, false
	}
	f, err := file.Decode([]byte(text))
	if err != nil {
		k.cannotRead(oldKey, text, err)
		return file.File{}, false
	}
	return f, true
}

// Taken notes that what Old gave is kept.
func (k *Keeper) Taken() {
	text, _ := k.shared.Get(oldKey)
	k.shared.Set(oldTaken, markOf(text))
}

func markOf(text string) string {
	h := fnv.New64a()
	h.Write([]byte(text))
	return strconv.FormatUint(h.Sum64(), 36)
}
