// Package browser tries the built page in Chromium, as a person would use it:
// keys, taps, a small screen, the network switched off. Every test has a
// server of its own, on its own port and under a sub-path, so nothing that is
// kept on the device passes from one to another.
//
// With TWISTBENCH_SHOTS set to a folder, the pictures are written there.
package browser

import (
	"context"
	"fmt"
	"os"
	"testing"

	"github.com/chromedp/chromedp"

	"twistbench/scripts/internal/site"
)

// Set by TestMain: the built folder, the browser, and what would receive a
// request to any other host.
var (
	built     string
	chrome    context.Context
	elsewhere *outside
)

func TestMain(m *testing.M) { os.Exit(run(m)) }

func run(m *testing.M) int {
	fail := func(err error) int {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	dir, err := os.MkdirTemp("", "twistbench")
	if err != nil {
		return fail(err)
	}
	defer os.RemoveAll(dir)
	report, err := site.Build(dir, false)
	if err != nil {
		return fail(err)
	}
	built = report.Dir
	if elsewhere, err = listenOutside(); err != nil {
		return fail(err)
	}
	options := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.NoSandbox, // it may run as root in a container, and opens only our own page
		chromedp.DisableGPU,
		chromedp.Flag("disable-quic", true),
		chromedp.Flag("disable-component-update", true),
		chromedp.Flag("hide-scrollbars", false),
		// Any name but this machine's leads to a listener that remembers it.
		chromedp.Flag("host-resolver-rules", "MAP * "+elsewhere.addr()+", EXCLUDE 127.0.0.1"),
	)
	allocator, stop := chromedp.NewExecAllocator(context.Background(), options...)
	defer stop()
	var end context.CancelFunc
	chrome, end = chromedp.NewContext(allocator)
	defer end()
	if err := chromedp.Do(chrome); err != nil {
		return fail(fmt.Errorf("starting Chromium: %w", err))
	}
	code := m.Run()
	if left := elsewhere.names(); len(left) > 0 {
		fmt.Fprintln(os.Stderr, "requests left for other hosts:", left)
		return 1
	}
	return code
}
