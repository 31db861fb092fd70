package quantity

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// What package strings says of the same texts.
func TestText(t *testing.T) {
	texts := []string{"", "=", "a", "a=", "=b", "a=b=c", "²", "x²", "clamp.first:unit", ":unit", "unit"}
	for _, text := range texts {
		assert.Equal(t, strings.IndexByte(text, '='), Index(text, '='), text)
		before, behind, _ := strings.Cut(text, "=")
		gotBefore, gotBehind := Split(text, '=')
		assert.Equal(t, [2]string{before, behind}, [2]string{gotBefore, gotBehind}, text)
		for _, part := range texts {
			want, found := strings.CutPrefix(text, part)
			got, ok := CutPrefix(text, part)
			assert.Equal(t, want, got, "%s without %s", text, part)
			assert.Equal(t, found, ok, "%s begins with %s", text, part)
			want, found = strings.CutSuffix(text, part)
			got, ok = CutSuffix(text, part)
			assert.Equal(t, want, got, "%s without %s", text, part)
			assert.Equal(t, found, ok, "%s ends in %s", text, part)
		}
	}
}
