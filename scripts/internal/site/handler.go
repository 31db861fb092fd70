package site

import (
	"cmp"
	"net/http"
	"os"
	"path"
	"path/filepath"
	"strconv"
	"strings"
)

// types are the content types by extension; the browser insists on some.
var types = map[string]string{
	".html":        "text/html; charset=utf-8",
	".css":         "text/css; charset=utf-8",
	".js":          "text/javascript; charset=utf-8",
	".wasm":        "application/wasm",
	".webmanifest": "application/manifest+json",
	".png":         "image/png",
	".svg":         "image/svg+xml",
}

// entry is one file as it is sent: plain or, where that is shorter, squeezed.
type entry struct {
	kind        string
	plain, gzip []byte
	tag         string
}

type handler struct {
	at    string
	files map[string]entry
}

// Handler serves a built folder under the path at ("/" or "/some/where/").
// Everything is kept in memory. Each answer asks to be revalidated and
// carries a tag, so an unchanged file costs a 304.
func Handler(dir, at string) (http.Handler, error) {
	entries, err := os.ReadDir(dir)
	if err != nil {
		return nil, err
	}
	h := &handler{at: At(at), files: map[string]entry{}}
	for _, e := range entries {
		if e.IsDir() {
			continue
		}
		data, err := os.ReadFile(filepath.Join(dir, e.Name()))
		if err != nil {
			return nil, err
		}
		f := entry{kind: cmp.Or(types[path.Ext(e.Name())], "application/octet-stream"), plain: data, tag: hash(data)}
		if z := squeeze(data); len(z) < len(data) {
			f.gzip = z
		}
		h.files[e.Name()] = f
	}
	return h, nil
}

// At gives a path one slash at each end.
func At(at string) string {
	at = strings.Trim(at, "/")
	if at == "" {
		return "/"
	}
	return "/" + at + "/"
}

func (h *handler) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	if r.Method != http.MethodGet && r.Method != http.MethodHead {
		w.Header().Set("Allow", "GET, HEAD")
		http.Error(w, "only GET and HEAD", http.StatusMethodNotAllowed)
		return
	}
	if r.URL.Path+"/" == h.at {
		http.Redirect(w, r, h.at, http.StatusFound)
		return
	}
	name, inside := strings.CutPrefix(r.URL.Path, h.at)
	f, found := h.files[cmp.Or(name, "index.html")]
	if !inside || !found {
		http.NotFound(w, r)
		return
	}
	body, tag := f.plain, `"`+f.tag+`"`
	head := w.Header()
	if f.gzip != nil {
		head.Set("Vary", "Accept-Encoding")
		if takesGzip(r.Header.Get("Accept-Encoding")) {
			head.Set("Content-Encoding", "gzip")
			body, tag = f.gzip, `"`+f.tag+`-gzip"`
		}
	}
	head.Set("Cache-Control", "no-cache")
	head.Set("ETag", tag)
	head.Set("X-Content-Type-Options", "nosniff")
	if hasTag(r.Header.Get("If-None-Match"), tag) {
		head.Del("Content-Encoding")
		w.WriteHeader(http.StatusNotModified)
		return
	}
	head.Set("Content-Type", f.kind)
	head.Set("Content-Length", strconv.Itoa(len(body)))
	if r.Method == http.MethodGet {
		w.Write(body)
	}
}

// takesGzip reads an Accept-Encoding list (RFC 9110, 12.5.3).
func takesGzip(list string) bool {
	for part := range strings.SplitSeq(list, ",") {
		coding, weight, _ := strings.Cut(part, ";")
		if strings.EqualFold(strings.TrimSpace(coding), "gzip") {
			q, err := strconv.ParseFloat(strings.TrimPrefix(strings.TrimSpace(weight), "q="), 64)
			return err != nil || q > 0
		}
	}
	return false
}

// hasTag reads an If-None-Match list (RFC 9110, 13.1.2), where W/ is ignored.
func hasTag(list, tag string) bool {
	for part := range strings.SplitSeq(list, ",") {
		part = strings.TrimSpace(part)
		if part == "*" || strings.TrimPrefix(part, "W/") == tag {
			return true
		}
	}
	return false
}
