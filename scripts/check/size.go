package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"twistbench/scripts/internal/site"
)

// budget is what all files together may weigh, over the empty Go program, both
// at gzip level 9.
const budget = 1.30

// build makes the page once per run.
func (j *job) build() (*site.Report, error) {
	var err error
	if j.built == nil {
		j.built, err = site.Build(filepath.Join(j.temp, "first"), false)
	}
	return j.built, err
}

func sizes(j *job) (string, error) {
	r, err := j.build()
	if err != nil {
		return "", err
	}
	note := fmt.Sprintf("%.3f of %.2f times the empty program (%d of %d bytes)", r.Ratio(), budget, r.Gzip, r.Empty.Gzip)
	if r.Ratio() > budget {
		return "", fmt.Errorf("%s\n%s", note, r)
	}
	return note, nil
}

// sameBytes builds twice more: from the same folder by someone who keeps no Go
// settings, and from a copy elsewhere that is no checkout.
func sameBytes(j *job) (string, error) {
	first, err := j.build()
	if err != nil {
		return "", err
	}
	env := without(os.Environ(), "GOFLAGS", "GOTOOLCHAIN")
	plain := filepath.Join(j.temp, "plain")
	if _, err := j.command(env, "go", "run", "./scripts/build", "-o", plain); err != nil {
		return "", err
	}
	if err := sameFolders(first.Dir, plain); err != nil {
		return "", fmt.Errorf("with GOFLAGS and GOTOOLCHAIN unset: %w", err)
	}
	elsewhere := *j
	elsewhere.root = filepath.Join(j.temp, "elsewhere")
	for _, name := range []string{"calc", "wasm", "web", "scripts"} {
		if err := os.CopyFS(filepath.Join(elsewhere.root, name), os.DirFS(filepath.Join(j.root, name))); err != nil {
			return "", err
		}
	}
	for _, name := range []string{"go.mod", "go.sum"} {
		data, err := os.ReadFile(filepath.Join(j.root, name))
		if err != nil {
			return "", err
		}
		if err := os.WriteFile(filepath.Join(elsewhere.root, name), data, 0o644); err != nil {
			return "", err
		}
	}
	copied := filepath.Join(j.temp, "copied")
	if _, err := elsewhere.command(env, "go", "run", "./scripts/build", "-o", copied); err != nil {
		return "", err
	}
	if err := sameFolders(first.Dir, copied); err != nil {
		return "", fmt.Errorf("from a copy elsewhere: %w", err)
	}
	return "three builds, version " + first.Version, nil
}

// without drops variables from an environment.
func without(env []string, names ...string) []string {
	return slices.DeleteFunc(slices.Clone(env), func(pair string) bool {
		name, _, _ := strings.Cut(pair, "=")
		return slices.Contains(names, name)
	})
}

// sameFolders fails for the first files that differ in name or bytes.
func sameFolders(a, b string) error {
	one, err := contents(a)
	if err != nil {
		return err
	}
	two, err := contents(b)
	if err != nil {
		return err
	}
	var wrong []string
	for name, data := range one {
		other, found := two[name]
		switch {
		case !found:
			wrong = append(wrong, name+" is in the first build alone")
		case !bytes.Equal(data, other):
			wrong = append(wrong, name+" differs")
		}
	}
	for name := range two {
		if _, found := one[name]; !found {
			wrong = append(wrong, name+" is in the second build alone")
		}
	}
	slices.Sort(wrong)
	return broken(wrong)
}

func contents(dir string) (map[string][]byte, error) {
	entries, err := os.ReadDir(dir)
	if err != nil {
		return nil, err
	}
	all := map[string][]byte{}
	for _, e := range entries {
		if all[e.Name()], err = os.ReadFile(filepath.Join(dir, e.Name())); err != nil {
			return nil, err
		}
	}
	return all, nil
}
