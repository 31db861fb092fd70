// Package words holds every sentence that a person reads, by key, a file or two per language.
//
// What can change after the page is loaded is in the language's live words and is linked into the page's program. What stands still,
// labels and hints, cautions and headings, is in its page words, which only the build reads.
//
// A sentence may name numbers in braces, {hang.add}: whoever shows it puts the number there, with its unit. {name} is the name of
// the number the sentence is about, {part} the text at fault, {limit} a limit, {other} another number's name or reading, {near} a
// suggestion.
package words

import (
	"slices"
	"strings"
)

// Language is one of the languages of the page.
type Language struct {
	Tag  string // BCP 47
	Mark byte   // decimal mark of numbers that are worked out; both are read
	live []entry
}

type entry struct{ key, text string }

// Languages lists them; the first is the one that a page without a language tag in its name is in.
var Languages = []*Language{&English}

// Say returns the words of a key, and the key itself where there are none, which a test never lets happen.
func (l *Language) Say(key string) string { return find(l.live, key) }

// Has reports whether there are live words for a key.
func (l *Language) Has(key string) bool { return search(l.live, key) >= 0 }

func find(list []entry, key string) string {
	if i := search(list, key); i >= 0 {
		return list[i].text
	}
	return key
}

func search(list []entry, key string) int {
	lo, hi := 0, len(list)
	for lo < hi {
		m := int(uint(lo+hi) >> 1)
		switch c := strings.Compare(list[m].key, key); {
		case c < 0:
			lo = m + 1
		case c > 0:
			hi = m
		default:
			return m
		}
	}
	return -1
}

// Expand appends a sentence with what is in braces put in by put, which appends the words for a name.
func Expand(b []byte, sentence string, put func(b []byte, name string) []byte) []byte {
	for {
		i := strings.IndexByte(sentence, '{')
		if i < 0 {
			return append(b, sentence...)
		}
		j := strings.IndexByte(sentence[i:], '}')
		if j < 0 {
			return append(b, sentence...)
		}
		b = append(b, sentence[:i]...)
		b = put(b, sentence[i+1:i+j])
		sentence = sentence[i+j+1:]
	}
}

// sorted returns the entries in the order of their keys, which is what search needs; the files keep them in the order of the page.
func sorted(list []entry) []entry {
	slices.SortFunc(list, func(a, b entry) int { return strings.Compare(a.key, b.key) })
	return list
}
