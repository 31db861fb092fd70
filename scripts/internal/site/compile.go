package site

import (
	"bytes"
	"compress/gzip"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// flags make the bytes depend on the source alone: no commit, no folder.
var flags = []string{"-buildvcs=false", "-trimpath", "-ldflags=-s -w"}

// reset are the variables of the person's own set-up that would change the
// bytes. A value wins over one kept with `go env -w`; an empty one would not.
var reset = []string{"GOOS=js", "GOARCH=wasm", "GOFLAGS=-buildvcs=false", "GOWASM=", "GOEXPERIMENT=", "GODEBUG=", "GOWORK=off"}

// Root is the folder of the module that holds the working directory.
func Root() (string, error) {
	mod, err := goEnv("GOMOD")
	if err != nil {
		return "", err
	}
	if mod == "" || mod == os.DevNull {
		return "", errors.New("run this inside the project's folder: no go.mod is near")
	}
	return filepath.Dir(mod), nil
}

func goEnv(name string) (string, error) {
	out, err := exec.Command("go", "env", name).Output()
	if err != nil {
		return "", fmt.Errorf("go env %s: %w", name, err)
	}
	return strings.TrimSpace(string(out)), nil
}

// compile builds the main package (a folder or a file) for the browser.
func compile(root, pkg string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "twistbench")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	out := filepath.Join(dir, "main.wasm")
	args := append([]string{"build"}, flags...)
	cmd := exec.Command("go", append(args, "-o", out, pkg)...)
	cmd.Dir = root
	cmd.Env = append(os.Environ(), reset...)
	if text, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("go build %s: %w\n%s", pkg, err, text)
	}
	return os.ReadFile(out)
}

// Empty is the smallest Go program for the browser.
func Empty() ([]byte, error) {
	root, err := Root()
	if err != nil {
		return nil, err
	}
	return compileEmpty(root)
}

// compileEmpty builds the smallest Go program with the same flags. It is the
// yardstick for sizes: it changes with the Go release, as ours does. It is not
// packed, so that it says what anyone's empty program weighs.
func compileEmpty(root string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "twistbench")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	file := filepath.Join(dir, "main.go")
	if err := os.WriteFile(file, []byte("package main\n\nfunc main() {}\n"), 0o644); err != nil {
		return nil, err
	}
	return compile(root, file)
}

// squeeze is gzip at level 9, with nothing in its header that could vary.
func squeeze(data []byte) []byte {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		panic(err) // the level is a constant of the package
	}
	w.Write(data) // a bytes.Buffer takes everything
	w.Close()
	return b.Bytes()
}
