// Package site makes the folder that is uploaded: it compiles the core to
// WebAssembly, draws the icons, renders the page and names every file after
// its bytes. The same source always gives the same bytes.
package site

import (
	"bytes"
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Names are the addresses the page loads, each relative to the page itself.
type Names struct {
	Wasm     string // the core
	Exec     string // Go's own glue, from the Go installation
	Boot     string // ours
	Style    string
	Manifest string
	Icon     string // 192 px
	Touch    string // 180 px, for home screens that ask for one
}

// A File is one file of the finished folder.
type File struct {
	Name string
	Data []byte
}

// A Size is what one file costs.
type Size struct {
	Name string
	Raw  int // bytes
	Gzip int // bytes at gzip level 9
}

// A Report says what was built.
type Report struct {
	Dir     string
	Version string // hash of everything the service worker keeps
	Files   []Size // by name
	Raw     int    // bytes, all files together
	Gzip    int
	Empty   Size // the empty Go program, as Go builds it with the same flags
}

// Ratio is the whole folder over the empty Go program, both at gzip level 9.
func (r *Report) Ratio() float64 { return float64(r.Gzip) / float64(r.Empty.Gzip) }

// parts are the inputs of a folder, before names are given.
type parts struct {
	wasm, exec, boot, style, manifest, worker []byte
	icons                                     []File
	page                                      func(Names) ([]byte, error)
}

// Build compiles and renders everything and writes it to dir, whose earlier
// contents are replaced. A folder that holds something else is left alone
// and is an error. With traces, a panic of the core names functions and lines.
func Build(dir string, traces bool) (*Report, error) {
	root, err := Root()
	if err != nil {
		return nil, err
	}
	p, err := read(root, traces)
	if err != nil {
		return nil, err
	}
	empty, err := compileEmpty(root)
	if err != nil {
		return nil, err
	}
	files, version, err := assemble(p)
	if err != nil {
		return nil, err
	}
	if err := write(dir, files); err != nil {
		return nil, err
	}
	return report(dir, version, files, empty), nil
}

// read gathers the inputs of the module at root.
func read(root string, traces bool) (parts, error) {
	p := parts{page: Page}
	var err error
	if p.wasm, err = compile(root, "./wasm"); err != nil {
		return p, err
	}
	release, err := goEnv("GOVERSION")
	if err != nil {
		return p, err
	}
	if p.wasm, err = pack(p.wasm, release, traces); err != nil {
		return p, err
	}
	goroot, err := goEnv("GOROOT")
	if err != nil {
		return p, err
	}
	for _, f := range []struct {
		path string
		to   *[]byte
	}{
		{filepath.Join(goroot, "lib", "wasm", "wasm_exec.js"), &p.exec},
		{filepath.Join(root, "web", "boot.js"), &p.boot},
		{filepath.Join(root, "web", "style.css"), &p.style},
		{filepath.Join(root, "web", "manifest.webmanifest"), &p.manifest},
		{filepath.Join(root, "web", "sw.js"), &p.worker},
	} {
		source, err := os.ReadFile(f.path)
		if err != nil {
			return p, err
		}
		*f.to = lean(source)
	}
	p.icons, err = drawIcons()
	return p, err
}

// assemble names the parts, renders the page and writes the service worker's
// list. The files come back sorted by name, with the worker's version.
func assemble(p parts) (files []File, version string, err error) {
	add := func(name string, data []byte) string {
		files = append(files, File{name, data})
		return name
	}
	n := Names{
		Wasm:     add(hashed("twistbench", ".wasm", p.wasm), p.wasm),
		Exec:     add(hashed("wasm_exec", ".js", p.exec), p.exec),
		Boot:     add(hashed("boot", ".js", p.boot), p.boot),
		Style:    add(hashed("style", ".css", p.style), p.style),
		Manifest: add("manifest.webmanifest", p.manifest),
		Icon:     iconName,
		Touch:    touchName,
	}
	files = append(files, p.icons...)
	page, err := p.page(n)
	if err != nil {
		return nil, "", fmt.Errorf("page: %w", err)
	}
	add("index.html", leanPage(page))
	if err := checkManifest(p.manifest, files); err != nil {
		return nil, "", err
	}
	byName(files)
	version = versionOf(append(slices.Clone(files), File{"sw.js", p.worker}))
	worker, err := workerScript(files, version, p.worker)
	if err != nil {
		return nil, "", err
	}
	add("sw.js", worker)
	byName(files)
	return files, version, nil
}

func byName(files []File) {
	slices.SortFunc(files, func(a, b File) int { return cmp.Compare(a.Name, b.Name) })
}

// hashed puts the content's hash between the stem and the extension of a name.
func hashed(stem, ext string, data []byte) string { return stem + "." + hash(data) + ext }

func hash(data []byte) string {
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:6])
}

// versionOf is one hash over the names and bytes of all files.
func versionOf(files []File) string {
	h := sha256.New()
	for _, f := range files {
		fmt.Fprintf(h, "%s\x00%d\x00", f.Name, len(f.Data))
		h.Write(f.Data)
	}
	return hex.EncodeToString(h.Sum(nil)[:8])
}

// workerScript puts the list of files and the version above the worker. The
// page itself is listed by its folder, the address people open.
func workerScript(files []File, version string, worker []byte) ([]byte, error) {
	list := []string{"./"}
	for _, f := range files {
		if f.Name != "index.html" {
			list = append(list, f.Name)
		}
	}
	names, err := json.Marshal(list)
	if err != nil {
		return nil, err
	}
	return fmt.Appendf(nil, "const FILES=%s;\nconst VERSION=%q;\n%s", names, version, worker), nil
}

// checkManifest fails when the manifest names an icon that is not built.
func checkManifest(manifest []byte, files []File) error {
	var m struct {
		Icons []struct{ Src string }
	}
	if err := json.Unmarshal(manifest, &m); err != nil {
		return fmt.Errorf("manifest: %w", err)
	}
	if len(m.Icons) == 0 {
		return errors.New("manifest: no icons")
	}
	for _, icon := range m.Icons {
		if !slices.ContainsFunc(files, func(f File) bool { return f.Name == icon.Src }) {
			return fmt.Errorf("manifest: no icon %s is built", icon.Src)
		}
	}
	return nil
}

// write replaces the folder dir by one that holds exactly the files.
func write(dir string, files []File) error {
	dir, err := filepath.Abs(dir)
	if err != nil {
		return err
	}
	if err := mayReplace(dir); err != nil {
		return err
	}
	if err := os.RemoveAll(dir); err != nil {
		return err
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	for _, f := range files {
		if err := os.WriteFile(filepath.Join(dir, f.Name), f.Data, 0o644); err != nil {
			return err
		}
	}
	return nil
}

// mayReplace is nil for a folder that is missing, empty, or an earlier build.
func mayReplace(dir string) error {
	entries, err := os.ReadDir(dir)
	if errors.Is(err, os.ErrNotExist) || (err == nil && len(entries) == 0) {
		return nil
	}
	if err != nil {
		return err
	}
	worker, err := os.ReadFile(filepath.Join(dir, "sw.js"))
	if err != nil || !bytes.HasPrefix(worker, []byte("const FILES=")) {
		return fmt.Errorf("%s is not empty and not an earlier build: name another folder", dir)
	}
	for _, e := range entries {
		if e.IsDir() || strings.HasPrefix(e.Name(), ".") {
			return fmt.Errorf("%s also holds %s: name another folder", dir, e.Name())
		}
	}
	return nil
}

func report(dir, version string, files []File, empty []byte) *Report {
	r := &Report{Dir: dir, Version: version, Empty: size("empty program", empty)}
	for _, f := range files {
		s := size(f.Name, f.Data)
		r.Files = append(r.Files, s)
		r.Raw += s.Raw
		r.Gzip += s.Gzip
	}
	return r
}

func size(name string, data []byte) Size {
	return Size{Name: name, Raw: len(data), Gzip: len(squeeze(data))}
}

// String is a table of the files for people.
func (r *Report) String() string {
	var b strings.Builder
	row := func(name string, raw, gzip int) { fmt.Fprintf(&b, "%-34s %10d %10d\n", name, raw, gzip) }
	fmt.Fprintf(&b, "%-34s %10s %10s\n", "file", "bytes", "gzip -9")
	for _, f := range r.Files {
		row(f.Name, f.Raw, f.Gzip)
	}
	row("all", r.Raw, r.Gzip)
	row(r.Empty.Name, r.Empty.Raw, r.Empty.Gzip)
	fmt.Fprintf(&b, "%.3f times the empty program; version %s in %s\n", r.Ratio(), r.Version, r.Dir)
	return b.String()
}
