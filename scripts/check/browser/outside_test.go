package browser

import (
	"bufio"
	"crypto/tls"
	"errors"
	"io"
	"net"
	"net/http"
	"slices"
	"strings"
	"sync"
	"time"
)

// outside stands for every other host: it remembers who was asked for, and
// answers nothing. It also sees what a service worker sends.
type outside struct {
	listener net.Listener
	mu       sync.Mutex
	asked    []string
}

func listenOutside() (*outside, error) {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return nil, err
	}
	o := &outside{listener: l}
	go func() {
		for {
			c, err := l.Accept()
			if err != nil {
				return
			}
			go o.take(c)
		}
	}()
	return o, nil
}

func (o *outside) addr() string { return o.listener.Addr().String() }

// theirs are where the browser itself calls home, whatever it is told. A page
// that asked there would be seen in its tab.
var theirs = []string{"google.com", "googleapis.com", "gvt1.com", "gstatic.com", "googleusercontent.com"}

// names are the hosts that were asked for, without the browser's own.
func (o *outside) names() []string {
	o.mu.Lock()
	defer o.mu.Unlock()
	return slices.DeleteFunc(slices.Clone(o.asked), func(name string) bool {
		return slices.ContainsFunc(theirs, func(t string) bool { return name == t || strings.HasSuffix(name, "."+t) })
	})
}

// forget takes a name off the list.
func (o *outside) forget(name string) {
	o.mu.Lock()
	defer o.mu.Unlock()
	o.asked = slices.DeleteFunc(o.asked, func(n string) bool { return n == name })
}

func (o *outside) take(c net.Conn) {
	defer c.Close()
	c.SetDeadline(time.Now().Add(5 * time.Second))
	r := bufio.NewReader(c)
	first, err := r.Peek(1)
	if err != nil {
		return // nothing was asked: the browser opens connections that it may come to need
	}
	name := "a host that made no sense"
	if first[0] == 0x16 { // a TLS handshake record (RFC 8446, 5.1)
		name = serverName(c, r)
	} else if q, err := http.ReadRequest(r); err == nil {
		name = q.Host
	}
	o.mu.Lock()
	o.asked = append(o.asked, name)
	o.mu.Unlock()
}

var errSeen = errors.New("seen")

// serverName reads the name in a TLS client's first message, and goes no further.
func serverName(c net.Conn, r io.Reader) string {
	name := ""
	tls.Server(&rest{c, r}, &tls.Config{
		GetConfigForClient: func(hello *tls.ClientHelloInfo) (*tls.Config, error) {
			name = hello.ServerName
			return nil, errSeen
		},
	}).Handshake()
	return name
}

// rest is a connection of which something was read already.
type rest struct {
	net.Conn
	from io.Reader
}

func (r *rest) Read(p []byte) (int, error) { return r.from.Read(p) }
