package site

import (
	"compress/gzip"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var long = strings.Repeat("turn after turn ", 100)

// served has one file of each type, all compressible but the page.
func served(t *testing.T, at string) http.Handler {
	t.Helper()
	dir := t.TempDir()
	for _, name := range []string{"style.css", "boot.js", "core.wasm", "manifest.webmanifest", "icon.png", "notes"} {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(name+long), 0o644))
	}
	require.NoError(t, os.WriteFile(filepath.Join(dir, "index.html"), []byte("page"), 0o644))
	h, err := Handler(dir, at)
	require.NoError(t, err)
	return h
}

func ask(h http.Handler, method, path string, head map[string]string) *http.Response {
	r := httptest.NewRequest(method, path, nil)
	for k, v := range head {
		r.Header.Set(k, v)
	}
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w.Result()
}

func TestHandlerTypes(t *testing.T) {
	h := served(t, "/")
	for path, want := range map[string]string{
		"/":                     "text/html; charset=utf-8",
		"/?plan=1":              "text/html; charset=utf-8",
		"/index.html":           "text/html; charset=utf-8",
		"/style.css":            "text/css; charset=utf-8",
		"/boot.js":              "text/javascript; charset=utf-8",
		"/core.wasm":            "application/wasm",
		"/manifest.webmanifest": "application/manifest+json",
		"/icon.png":             "image/png",
		"/notes":                "application/octet-stream",
	} {
		got := ask(h, "GET", path, nil)
		assert.Equal(t, 200, got.StatusCode, path)
		assert.Equal(t, want, got.Header.Get("Content-Type"), path)
		assert.Equal(t, "no-cache", got.Header.Get("Cache-Control"), path)
		assert.NotEmpty(t, got.Header.Get("ETag"), path)
	}
}

func TestHandlerGzip(t *testing.T) {
	h := served(t, "/")
	for _, c := range []struct {
		path, accept string
		gzip         bool
	}{
		{"/core.wasm", "gzip, deflate, br", true},
		{"/core.wasm", "br;q=1.0, GZIP;q=0.5", true},
		{"/core.wasm", "", false},
		{"/core.wasm", "br", false},
		{"/core.wasm", "gzip;q=0", false},
		{"/", "gzip", false}, // four bytes only grow
	} {
		got := ask(h, "GET", c.path, map[string]string{"Accept-Encoding": c.accept})
		body, err := io.ReadAll(got.Body)
		require.NoError(t, err)
		assert.Equal(t, int64(len(body)), got.ContentLength, "%+v", c)
		assert.Equal(t, c.gzip, got.Header.Get("Content-Encoding") == "gzip", "%+v", c)
		if c.path == "/" {
			assert.Equal(t, "page", string(body))
			continue
		}
		assert.Equal(t, "Accept-Encoding", got.Header.Get("Vary"), "%+v", c)
		if c.gzip {
			r, err := gzip.NewReader(strings.NewReader(string(body)))
			require.NoError(t, err)
			body, err = io.ReadAll(r)
			require.NoError(t, err)
		}
		assert.Equal(t, "core.wasm"+long, string(body), "%+v", c)
	}
}

func TestHandlerRevalidates(t *testing.T) {
	h := served(t, "/")
	for _, accept := range []string{"", "gzip"} {
		head := map[string]string{"Accept-Encoding": accept}
		tag := ask(h, "GET", "/core.wasm", head).Header.Get("ETag")
		for match, want := range map[string]int{
			tag:                                      304,
			"W/" + tag:                               304,
			`"a", ` + tag:                            304,
			"*":                                      304,
			`"a"`:                                    200,
			strings.ToUpper(tag[:len(tag)-1]) + `x"`: 200,
		} {
			head["If-None-Match"] = match
			got := ask(h, "GET", "/core.wasm", head)
			body, err := io.ReadAll(got.Body)
			require.NoError(t, err)
			assert.Equal(t, want, got.StatusCode, match)
			assert.Equal(t, tag, got.Header.Get("ETag"), match)
			assert.Equal(t, want == 304, len(body) == 0, match)
		}
	}
	plain := ask(h, "GET", "/core.wasm", nil).Header.Get("ETag")
	squeezed := ask(h, "GET", "/core.wasm", map[string]string{"Accept-Encoding": "gzip"}).Header.Get("ETag")
	assert.NotEqual(t, plain, squeezed, "two sets of bytes, two tags")
}

func TestHandlerPlaces(t *testing.T) {
	for _, at := range []string{"/some/where/", "some/where", "/some/where"} {
		h := served(t, at)
		for path, want := range map[string]int{
			"/some/where/":            200,
			"/some/where/core.wasm":   200,
			"/some/where":             302,
			"/":                       404,
			"/core.wasm":              404,
			"/some/where/nothing":     404,
			"/some/where/a/core.wasm": 404,
			"/some/where/../../x":     404,
		} {
			got := ask(h, "GET", path, nil)
			assert.Equal(t, want, got.StatusCode, path)
			if want == 302 {
				assert.Equal(t, "/some/where/", got.Header.Get("Location"))
			}
		}
	}
}

func TestHandlerMethods(t *testing.T) {
	h := served(t, "/")
	head := ask(h, "HEAD", "/core.wasm", nil)
	body, err := io.ReadAll(head.Body)
	require.NoError(t, err)
	assert.Equal(t, 200, head.StatusCode)
	assert.Empty(t, body)
	assert.NotEqual(t, "", head.Header.Get("Content-Length"))
	assert.Equal(t, 405, ask(h, "POST", "/core.wasm", nil).StatusCode)
	_, err = Handler(filepath.Join(t.TempDir(), "missing"), "/")
	assert.Error(t, err)
}
