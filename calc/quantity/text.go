package quantity

// Texts are cut here, for packages strings and bytes would bring package unicode to the page, and nothing on it needs that.

// Index returns where the byte c first stands in a text, -1 where it does not.
//
//go:noinline
func Index(text string, c byte) int {
	for i := range len(text) {
		if text[i] == c {
			return i
		}
	}
	return -1
}

// Place returns where a text stands in a list, -1 where it does not.
//
//go:noinline
func Place(list []string, text string) int {
	for i := range list {
		if list[i] == text {
			return i
		}
	}
	return -1
}

// Split returns what stands before the first mark in a text and what stands behind it: nothing where there is none.
//
//go:noinline
func Split(text string, mark byte) (before, behind string) {
	if i := Index(text, mark); i >= 0 {
		return text[:i], text[i+1:]
	}
	return text, ""
}

// CutPrefix returns a text without what it begins with, and whether it did.
func CutPrefix(text, prefix string) (rest string, ok bool) {
	if n := len(prefix); len(text) >= n && text[:n] == prefix {
		return text[n:], true
	}
	return text, false
}

// CutSuffix returns a text without what it ends with, and whether it did.
func CutSuffix(text, suffix string) (rest string, ok bool) {
	if n := len(text) - len(suffix); n >= 0 && text[n:] == suffix {
		return text[:n], true
	}
	return text, false
}
