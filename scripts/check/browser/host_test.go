package browser

import (
	"context"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"twistbench/scripts/internal/site"
)

// at is where every test serves the page, as a static host under a sub-path would.
const at = "/some/where/"

// A host is one static host. Its address stays the same while it is stopped.
type host struct {
	t      *testing.T
	addr   string
	server *http.Server
	sent   atomic.Int64 // bytes that left, headers too

	mu       sync.Mutex
	handler  http.Handler
	held     string        // the end of the paths that wait
	free     chan struct{} // until this is closed
	requests []string      // "GET /some/where/sw.js 304"

	first context.Context // the first tab: its browser context is the device
}

func newHost(t *testing.T) *host {
	t.Helper()
	h := &host{t: t, addr: "127.0.0.1:0"}
	h.publish(built)
	h.start()
	t.Cleanup(h.stop)
	return h
}

// publish puts another built folder on the host.
func (h *host) publish(dir string) {
	h.t.Helper()
	handler, err := site.Handler(dir, at)
	require.NoError(h.t, err)
	h.mu.Lock()
	h.handler = handler
	h.mu.Unlock()
}

func (h *host) start() {
	h.t.Helper()
	l, err := net.Listen("tcp", h.addr)
	require.NoError(h.t, err)
	h.addr = l.Addr().String()
	h.server = &http.Server{Handler: h}
	go h.server.Serve(&counted{l, &h.sent})
}

// stop takes the host off the network, open connections too.
func (h *host) stop() { h.server.Close() }

func (h *host) url() string { return "http://" + h.addr + at }

func (h *host) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	h.mu.Lock()
	handler, held, free := h.handler, h.held, h.free
	h.mu.Unlock()
	if held != "" && strings.HasSuffix(r.URL.Path, held) {
		<-free
	}
	s := &seen{ResponseWriter: w, status: http.StatusOK}
	handler.ServeHTTP(s, r)
	h.mu.Lock()
	defer h.mu.Unlock()
	h.requests = append(h.requests, strings.Join([]string{r.Method, r.URL.Path, strconv.Itoa(s.status)}, " "))
}

// hold lets no file through whose path ends so, until it is let go.
func (h *host) hold(end string) (letGo func()) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.held, h.free = end, make(chan struct{})
	letGo = sync.OnceFunc(func() {
		h.mu.Lock()
		defer h.mu.Unlock()
		h.held = ""
		close(h.free)
	})
	h.t.Cleanup(letGo)
	return letGo
}

// forget starts the counts anew.
func (h *host) forget() {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.requests = nil
	h.sent.Store(0)
}

func (h *host) asked() []string {
	h.mu.Lock()
	defer h.mu.Unlock()
	return append([]string(nil), h.requests...)
}

type seen struct {
	http.ResponseWriter
	status int
}

func (s *seen) WriteHeader(status int) {
	s.status = status
	s.ResponseWriter.WriteHeader(status)
}

// counted adds up what its connections write.
type counted struct {
	net.Listener
	sent *atomic.Int64
}

func (c *counted) Accept() (net.Conn, error) {
	conn, err := c.Listener.Accept()
	return &countedConn{conn, c.sent}, err
}

type countedConn struct {
	net.Conn
	sent *atomic.Int64
}

func (c *countedConn) Write(p []byte) (int, error) {
	n, err := c.Conn.Write(p)
	c.sent.Add(int64(n))
	return n, err
}

// tab gives a new tab on this host's device. What is kept on the device is
// shared by its tabs and by nothing else.
func (h *host) tab() context.Context {
	if h.first == nil {
		ctx, cancel := chromedp.NewContext(chrome, chromedp.WithNewBrowserContext())
		h.t.Cleanup(cancel)
		h.first = ctx
		return ctx
	}
	ctx, cancel := chromedp.NewContext(h.first)
	h.t.Cleanup(cancel)
	return ctx
}

// next is the built folder as a later version of it: the page says so in its
// title, and the worker has another version.
func next(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	require.NoError(t, os.CopyFS(dir, os.DirFS(built)))
	change := func(name, from, to string) {
		path := filepath.Join(dir, name)
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		require.Contains(t, string(data), from)
		require.NoError(t, os.WriteFile(path, []byte(strings.Replace(string(data), from, to, 1)), 0o644))
	}
	change("index.html", "</title>", " later</title>")
	change("sw.js", `const VERSION="`, `const VERSION="later`)
	return dir
}

// openAt opens an address in a new tab and waits until the core is up.
func (h *host) openAt(s screen, address string) *page {
	h.t.Helper()
	p := h.blank(s)
	p.visit(address)
	return p
}
