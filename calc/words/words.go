// Package words holds every sentence that a person reads, by key, a file or two per language.
//
// What can change after the page is loaded is in the language's live words and is linked into the page's program. What stands still,
// labels and hints, cautions and headings, is in its page words, which only the build reads.
//
// A sentence may name numbers in braces, {hang.add}: whoever shows it puts the number there, with its unit. {name} is the name of
// the number the sentence is about, {own} its value in the unit of its box, {part} the text at fault, {limit} a limit, {other} another
// number's name or reading, {near} a suggestion, {units} the units or words that are taken, {masses} the masses of a list. {start} and {end} are when
// the timetable starts and is over, {lasts} is how long it takes; of one that was started {missed} is what came due
// and was not seen to, {ends} is when hands are needed next, {next} what
// for, {on} what is on until then, {plan} whose it is.
package words

import "twistbench/calc/quantity"

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
func (l *Language) Say(key string) string { return l.SayOf("", key) }

// SayOf returns the words of the key that is kind and key together, like "name." and "hang.mass", and makes no string of it.
func (l *Language) SayOf(kind, key string) string {
	if i := search(l.live, kind, key); i >= 0 {
		return l.live[i].text
	}
	return kind + key
}

// Has reports whether there are live words for a key.
func (l *Language) Has(key string) bool { return search(l.live, "", key) >= 0 }

// search returns the place of the key that is kind and key together, or -1.
func search(list []entry, kind, key string) int {
	lo, hi := 0, len(list)
	for lo < hi {
		m := int(uint(lo+hi) >> 1)
		switch c := compare(list[m].key, kind, key); {
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

// compare compares s with kind and key together.
func compare(s, kind, key string) int {
	if n := len(kind); len(s) >= n {
		if c := order(s[:n], kind); c != 0 {
			return c
		}
		return order(s[n:], key)
	}
	return order(s, kind)
}

// order returns -1 where a stands before b, 1 where it stands behind, and 0 where they are the same.
func order(a, b string) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

// Next cuts a sentence at its first name in braces: it returns what stands before it, the name, and what stands behind it. A sentence that
// names nothing is all before.
func Next(sentence string) (before, name, behind string) {
	if i := quantity.Index(sentence, '{'); i >= 0 {
		if n := quantity.Index(sentence[i:], '}'); n >= 0 {
			return sentence[:i], sentence[i+1 : i+n], sentence[i+n+1:]
		}
	}
	return sentence, "", ""
}

// entries reads the words of a language: on each line a key, " = " and its words, and between them empty lines and lines that begin with #.
// One text is far smaller in the page's program than a table of as many strings. They come back in the order of their keys, which is what
// search needs; the files keep them in the order of the page.
func entries(text string) []entry {
	var list []entry
	for text != "" {
		line := text
		if i := quantity.Index(text, '\n'); i >= 0 {
			line, text = text[:i], text[i+1:]
		} else {
			text = ""
		}
		i := quantity.Index(line, '=')
		if i < 0 || line[0] == '#' {
			continue
		}
		e := entry{line[:i-1], line[i+2:]}
		list = append(list, e)
		for j := len(list) - 1; j > 0 && list[j-1].key > e.key; j-- {
			list[j-1], list[j] = e, list[j-1]
		}
	}
	return list
}
