package site

import (
	"bytes"
	"regexp"
)

// lean drops what only a reader of the source needs: the white space that
// lines begin with, empty lines, and lines that are nothing but a comment,
// save a copyright notice. A text that a line leaves open (an odd backtick)
// would change, and stays as it is.
func lean(source []byte) []byte {
	var out []byte
	notice := false // in a copyright notice
	for whole := range bytes.Lines(source) {
		line := bytes.TrimSpace(whole)
		if bytes.Count(line, []byte("`"))%2 != 0 {
			return source
		}
		comment := bytes.HasPrefix(line, []byte("//")) || bytes.HasPrefix(line, []byte("/*")) && bytes.HasSuffix(line, []byte("*/"))
		notice = comment && (notice || bytes.Contains(line, []byte("Copyright")))
		if len(line) == 0 || comment && !notice {
			continue
		}
		out = append(out, bytes.TrimLeft(whole, " \t")...)
	}
	return out
}

// quoted is an attribute whose value needs no quotes.
var quoted = regexp.MustCompile(` ([a-z-]+)="([\w.:-]+)"`)

// named is a number's box or row, or a part of one that is named after a number.
var named = regexp.MustCompile(` id=([\w.-]+):(?:box|row)\b| class=(mark|doubt|other|why|working) id=([\w.-]+):(\w+)`)

// unnamed drops the ids of parts that are named after the box or row they are
// in. They are a tenth of the page, and boot.js gives them back.
func unnamed(page []byte) []byte {
	var row []byte
	return named.ReplaceAllFunc(page, func(found []byte) []byte {
		m := named.FindSubmatch(found)
		if m[1] != nil {
			row = m[1]
		} else if bytes.Equal(m[3], row) && bytes.Equal(m[4], m[2]) {
			return append([]byte(" class="), m[2]...)
		}
		return found
	})
}

// leanPage drops from a page what HTML does without: quotes round a plain
// value, the ends of options, and ids that follow from others. No element of it may
// end in "/>", or the slash would belong to the value.
func leanPage(page []byte) []byte {
	page = quoted.ReplaceAll(lean(page), []byte(" $1=$2"))
	return bytes.ReplaceAll(unnamed(page), []byte("</option>"), nil)
}
