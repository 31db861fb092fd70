package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

// atTop is what may stand in the project's folder, beside files whose name
// starts with a dot and the built page.
var atTop = []string{"wasm", "calc", "web", "scripts", "go.mod", "go.sum", "README.md", "DEVELOPERS.md", "LICENSE", "dist"}

// unfinished are marks of work that was put off: do it or file it. They are
// pieced together here, or this file would be one of its own findings.
var unfinished = regexp.MustCompile(`\b(TO` + `DO|FIX` + `ME|XX` + `X)\b`)

// inlineStyle is an attribute that the page's policy would refuse.
var inlineStyle = regexp.MustCompile(`\bstyle=(\\?["'])`)

func house(j *job) (string, error) {
	wrong, err := houseRules(os.DirFS(j.root))
	if err != nil {
		return "", err
	}
	return "", broken(wrong)
}

func houseRules(dir fs.FS) ([]string, error) {
	var wrong []string
	top, err := fs.ReadDir(dir, ".")
	if err != nil {
		return nil, err
	}
	for _, e := range top {
		if !strings.HasPrefix(e.Name(), ".") && !slices.Contains(atTop, e.Name()) {
			wrong = append(wrong, e.Name()+" does not belong at the top; only "+strings.Join(atTop, ", ")+" do")
		}
	}
	err = fs.WalkDir(dir, ".", func(path string, e fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if e.IsDir() {
			if path == ".git" || path == "dist" {
				return fs.SkipDir
			}
			return nil
		}
		if !e.Type().IsRegular() || path == "go.sum" {
			return nil
		}
		data, err := fs.ReadFile(dir, path)
		if err != nil {
			return err
		}
		page := strings.HasPrefix(path, "web/") || strings.HasPrefix(path, "calc/") || strings.HasPrefix(path, "wasm/")
		n := 0
		for line := range bytes.Lines(data) {
			n++
			if m := unfinished.Find(line); m != nil {
				wrong = append(wrong, fmt.Sprintf("%s:%d: %s", filepath.FromSlash(path), n, m))
			}
			if page && inlineStyle.Match(line) {
				wrong = append(wrong, fmt.Sprintf("%s:%d: a style attribute, which the page's policy refuses", filepath.FromSlash(path), n))
			}
		}
		return nil
	})
	return wrong, err
}
