package answer

import (
	"unicode"
	"unicode/utf8"
)

// InSentence is a label as it stands inside a sentence, AtStart words as they begin one.
func InSentence(label string) string { return withFirst(label, unicode.ToLower) }
func AtStart(words string) string    { return withFirst(words, unicode.ToUpper) }

func withFirst(text string, as func(rune) rune) string {
	if text == "" {
		return ""
	}
	first, n := utf8.DecodeRuneInString(text)
	return string(as(first)) + text[n:]
}
