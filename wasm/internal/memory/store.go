// Package memory is a store of texts for tests. It can be full, and can be told to
// refuse.
package memory

import (
	"maps"
	"slices"
)

// Store holds texts in memory.
type Store struct {
	Texts map[string]string
	// Most is how many bytes it takes in all, keys and texts; 0 for no bound.
	Most int
	// Refuses makes it take nothing.
	Refuses bool
	// Writes are the keys written, in order.
	Writes []string
}

// Get is the text under a key.
func (s *Store) Get(key string) (string, bool) {
	text, ok := s.Texts[key]
	return text, ok
}

// Set puts a text under a key, if there is room.
func (s *Store) Set(key, text string) bool {
	size := len(key) + len(text)
	for k, t := range s.Texts {
		if k != key {
			size += len(k) + len(t)
		}
	}
	if s.Refuses || s.Most > 0 && size > s.Most {
		return false
	}
	if s.Texts == nil {
		s.Texts = map[string]string{}
	}
	s.Texts[key] = text
	s.Writes = append(s.Writes, key)
	return true
}

// Remove takes a key out.
func (s *Store) Remove(key string) { delete(s.Texts, key) }

// Keys are all keys in order.
func (s *Store) Keys() []string { return slices.Sorted(maps.Keys(s.Texts)) }
