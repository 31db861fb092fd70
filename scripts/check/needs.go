package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strconv"
	"strings"
)

// oldestNode is the lowest major version that runs the core's tests: 17.9.1
// and 18.0.0 do; 16.20.2 lacks crypto.getRandomValues and does not.
const oldestNode = 18

// A need is a program or library that the checks use and Go does not bring.
type need struct {
	name    string
	packet  string // its Debian package
	kind    needKind
	present func() bool
}

type needKind uint8

const (
	must      needKind = iota // nothing is checked without it
	reference                 // an outside figure to compare with
	nice                      // screenshots look better with it
)

var wanted = []need{
	{"Chromium", "chromium", must, func() bool { return chromium() != "" }},
	{"Node", "nodejs", must, func() bool { return has("node") }},
	{"GNU Units", "units", reference, gnuUnits},
	{"pint", "python3-pint", reference, func() bool { return pythonWith("pint") != "" }},
	{"uncertainties", "python3-uncertainties", reference, func() bool { return pythonWith("uncertainties") != "" }},
	{"a font", "fonts-dejavu-core", nice, func() bool {
		_, err := os.Stat("/usr/share/fonts/truetype/dejavu")
		return err == nil || runtime.GOOS != "linux"
	}},
}

func absent(all []need) []need {
	var out []need
	for _, n := range all {
		if !n.present() {
			out = append(out, n)
		}
	}
	return out
}

// aptLine is the command that brings the needs on Debian and its kin.
func aptLine(all []need) string {
	var packets []string
	for _, n := range all {
		packets = append(packets, n.packet)
	}
	return "apt-get update && apt-get install -y --no-install-recommends " + strings.Join(packets, " ")
}

// needs fetches what is missing, where it may, and says whether to go on.
func needs(j *job) bool {
	gone := absent(wanted)
	if len(gone) == 0 {
		return true
	}
	line := aptLine(gone)
	if os.Geteuid() == 0 && has("apt-get") {
		fmt.Fprintln(j.out, line)
		cmd := exec.Command("sh", "-c", line)
		cmd.Env = append(os.Environ(), "DEBIAN_FRONTEND=noninteractive")
		if text, err := cmd.CombinedOutput(); err != nil {
			fmt.Fprintf(j.out, "%s%v\n", text, err)
		}
		gone = absent(gone)
	}
	stop, missing := verdict(gone, j.ci)
	j.missing = missing
	if len(stop) > 0 {
		fmt.Fprintf(j.out, "missing: %s; on Debian or Ubuntu, as root:\n%s\n", strings.Join(stop, ", "), line)
		return false
	}
	return true
}

// verdict parts what is absent into what stops everything and the reference
// libraries that are only named.
func verdict(gone []need, ci bool) (stop, missing []string) {
	for _, n := range gone {
		switch {
		case n.kind == must, n.kind == reference && ci:
			stop = append(stop, n.name)
		case n.kind == reference:
			missing = append(missing, n.name)
		}
	}
	return stop, missing
}

// chromium is the browser's program, "" if there is none.
func chromium() string {
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	return ""
}

func has(program string) bool {
	_, err := exec.LookPath(program)
	return err == nil
}

// tools says which versions were found, and fails for a Node that is too old.
func tools(*job) (string, error) {
	node, err := exec.Command("node", "--version").Output()
	if err != nil {
		return "", err
	}
	version := strings.TrimSpace(string(node))
	major, err := nodeMajor(version)
	if err != nil {
		return "", err
	}
	if major < oldestNode {
		return "", fmt.Errorf("Node %s was found; %d or later works", version, oldestNode)
	}
	browser, err := exec.Command(chromium(), "--version").Output()
	if err != nil {
		return "", err
	}
	return fmt.Sprintf("%s; Node %s (%d or later works); %s", runtime.Version(), version, oldestNode, strings.TrimSpace(string(browser))), nil
}

var nodeVersion = regexp.MustCompile(`^v(\d+)\.`)

func nodeMajor(version string) (int, error) {
	m := nodeVersion.FindStringSubmatch(version)
	if m == nil {
		return 0, errors.New("node --version says " + version)
	}
	return strconv.Atoi(m[1])
}

// gnuUnits is false for the other program of that name, which BSD has.
func gnuUnits() bool {
	out, err := exec.Command("units", "--version").Output()
	return err == nil && strings.Contains(string(out), "GNU Units")
}

// pythonWith finds a Python that has the module. The one on the path may be
// the person's own, without the system's packages.
func pythonWith(module string) string {
	for _, python := range []string{"python3", filepath.FromSlash("/usr/bin/python3")} {
		if exec.Command(python, "-c", "import "+module).Run() == nil {
			return python
		}
	}
	return ""
}
