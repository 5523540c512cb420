//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/wasm/keep"
)

// browserStore is one of the browser's stores, by its name. It may be refused.
type browserStore string

func (s browserStore) Get(key string) (string, bool) {
	text := js.Global().Call("keptText", string(s), key)
	if text.Type() != js.TypeString {
		return "", false
	}
	return text.String(), true
}

func (s browserStore) Set(key, text string) bool {
	return js.Global().Call("keepText", string(s), key, text).Bool()
}

func (s browserStore) Remove(key string) { js.Global().Call("dropText", string(s), key) }

func (s browserStore) Keys() []string {
	list := js.Global().Call("keptKeys", string(s), keep.Prefix)
	keys := make([]string, list.Length())
	for i := range keys {
		keys[i] = list.Index(i).String()
	}
	return keys
}
