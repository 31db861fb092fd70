// Command serve builds the page and serves it, on this machine alone unless
// asked otherwise.
package main

import (
	"flag"
	"fmt"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strconv"
	"time"

	"twistbench/scripts/internal/site"
)

func main() {
	port := flag.Int("port", 8017, "the port; a free one is taken when it is in use")
	phone := flag.Bool("phone", false, "let other machines on this network open the page too")
	at := flag.String("at", "/", "serve under this path, such as /bench/")
	traces := flag.Bool("traces", false, "name functions and lines where the core stops with a panic; the download is a quarter larger")
	flag.Parse()
	if err := serve(*port, *phone, *at, *traces); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func serve(port int, phone bool, at string, traces bool) error {
	root, err := site.Root()
	if err != nil {
		return err
	}
	dir := filepath.Join(root, "dist")
	if _, err := site.Build(dir, traces); err != nil {
		return err
	}
	h, err := site.Handler(dir, at)
	if err != nil {
		return err
	}
	host := "127.0.0.1"
	if phone {
		host = ""
	}
	l, err := listen(host, port)
	if err != nil {
		return err
	}
	port = l.Addr().(*net.TCPAddr).Port
	fmt.Println("Twistbench is at", address("127.0.0.1", port, at))
	if phone {
		ips, err := lan()
		if err != nil {
			return err
		}
		if len(ips) == 0 {
			fmt.Println("This machine is in no network, so no phone can reach it.")
		}
		for _, ip := range ips {
			fmt.Println("On a phone in the same network:", address(ip, port, at))
		}
		fmt.Println("A browser keeps a page for use with no network only from https or from its own machine, so the phone keeps it once it is hosted.")
	}
	fmt.Println("Stop with Ctrl-C.")
	s := http.Server{Handler: h, ReadHeaderTimeout: 10 * time.Second}
	return s.Serve(l)
}

// listen takes the port, or a free one when that cannot be had.
func listen(host string, port int) (net.Listener, error) {
	l, err := net.Listen("tcp", net.JoinHostPort(host, strconv.Itoa(port)))
	if err != nil {
		free, none := net.Listen("tcp", net.JoinHostPort(host, "0"))
		if none == nil {
			return free, nil
		}
	}
	return l, err
}

func address(host string, port int, at string) string {
	return "http://" + net.JoinHostPort(host, strconv.Itoa(port)) + site.At(at)
}

// lan lists this machine's addresses in its own networks.
func lan() ([]string, error) {
	all, err := net.InterfaceAddrs()
	if err != nil {
		return nil, err
	}
	var ips []string
	for _, a := range all {
		if n, ok := a.(*net.IPNet); ok && n.IP.To4() != nil && n.IP.IsGlobalUnicast() {
			ips = append(ips, n.IP.String())
		}
	}
	return ips, nil
}
