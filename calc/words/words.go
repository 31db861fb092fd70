// Package words holds every sentence that a person reads, by key, a file or two per language.
//
// What can change after the page is loaded is in the language's live words and is linked into the page's program. What stands still,
// labels and hints, cautions and headings, is in its page words, which only the build reads.
//
// A sentence may name numbers in braces, {hang.add}: whoever shows it puts the number there, with its unit. {name} is the name of
// the number the sentence is about, {own} its value in the unit of its box, {part} the text at fault, {limit} a limit, {other} another
// number's name or reading, {near} a suggestion, {units} the units or words that are taken, {masses} the masses of a list. {start} and {end} are when
// the timetable starts and is over, {lasts} is how long it takes; of one that was started {missed} is what came due and was not seen to, {ends}
// is when hands are needed next, or since when something is due, {next} what for, {on} what is on until then, {count} how many minutes or steps
// it is, {plan} whose it is.
package words

import "twistbench/calc/quantity"

// Language is one of the languages of the page.
type Language struct {
	Tag  string // BCP 47
	Mark byte   // decimal mark of numbers that are worked out; both are read
	live list
}

// Languages lists them; the first is the one that a page without a language tag in its name is in.
var Languages = []*Language{&English}

// Say returns the words of a key, and the key itself where there are none, which a test never lets happen.
func (l *Language) Say(key string) string { return l.SayOf("", key) }

// SayOf returns the words of the key that is kind and key together, like "name." and "hang.mass", and makes no string of it.
func (l *Language) SayOf(kind, key string) string {
	if text, ok := l.live.find(kind, key); ok {
		return text
	}
	return kind + key
}

// Has reports whether there are live words for a key.
func (l *Language) Has(key string) bool {
	_, ok := l.live.find("", key)
	return ok
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

// list is words by key.
type list struct {
	keys  quantity.Names
	texts []string
}

// find returns the words of the key that is kind and key together.
func (l *list) find(kind, key string) (text string, ok bool) {
	if i := l.keys.Find(kind, key); i >= 0 {
		return l.texts[i], true
	}
	return "", false
}

// read reads the words of a language: on each line a key, " = " and its words, and between them empty lines and lines that begin with #.
// One text is far smaller in the page's program than a table of as many strings.
func read(text string) (l list) {
	for text != "" {
		var line string
		line, text = quantity.Split(text, '\n')
		if i := quantity.Index(line, '='); i >= 0 && line[0] != '#' {
			l.keys.Add(line[:i-1])
			l.texts = append(l.texts, line[i+2:])
		}
	}
	return l
}
