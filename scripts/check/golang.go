package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// forJS is what a command that looks at the browser's side needs.
var forJS = []string{"GOOS=js", "GOARCH=wasm"}

// coreJS are the packages that exist for the browser: ./... would also take
// the ones that drive a browser, which do not.
var coreJS = []string{"./calc/...", "./wasm/...", "./scripts/check/kernel"}

// command runs a program in the module's folder and gives what it printed on
// standard output; an error holds all it printed, standard error last.
func (j *job) command(env []string, name string, args ...string) (string, error) {
	cmd := exec.Command(name, args...)
	cmd.Dir, cmd.Env = j.root, env
	var out, aside bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &aside
	if err := cmd.Run(); err != nil {
		return "", fmt.Errorf("%s%s\n%s %s: %w", out.String(), strings.TrimSpace(aside.String()), name, strings.Join(args, " "), err)
	}
	return out.String(), nil
}

// golang runs the go command with more variables.
func (j *job) golang(more []string, args ...string) (string, error) {
	return j.command(append(os.Environ(), more...), "go", args...)
}

func (j *job) goroot() (string, error) {
	out, err := j.golang(nil, "env", "GOROOT")
	return strings.TrimSpace(out), err
}

func format(j *job) (string, error) {
	goroot, err := j.goroot()
	if err != nil {
		return "", err
	}
	out, err := j.command(nil, filepath.Join(goroot, "bin", "gofmt"), "-l", ".")
	if err == nil && out != "" {
		err = errors.New("run gofmt -w on:\n" + out)
	}
	return "", err
}

func vet(j *job) (string, error) {
	_, err := j.golang(nil, "vet", "./...")
	return "", err
}

func vetJS(j *job) (string, error) {
	_, err := j.golang(forJS, append([]string{"vet"}, coreJS...)...)
	return "", err
}

// tests are all tests that need no browser.
func tests(j *job) (string, error) {
	out, err := j.golang(nil, "list", "./calc/...", "./scripts/...")
	if err != nil {
		return "", err
	}
	var packages []string
	for name := range strings.FieldsSeq(out) {
		if !strings.HasSuffix(name, "/scripts/check/browser") {
			packages = append(packages, name)
		}
	}
	return j.test(nil, packages)
}

// testsJS runs the core's tests as WebAssembly under Node. The runner hands
// arguments and environment over in one small block, so the environment is kept
// to what Go and Node need.
func testsJS(j *job) (string, error) {
	goroot, err := j.goroot()
	if err != nil {
		return "", err
	}
	out, err := j.golang(nil, "env", "-json", "GOPATH", "GOCACHE", "GOMODCACHE", "GOPROXY", "GOSUMDB", "GONOSUMDB", "GOTOOLCHAIN")
	if err != nil {
		return "", err
	}
	var kept map[string]string
	if err := json.Unmarshal([]byte(out), &kept); err != nil {
		return "", err
	}
	path, err := shortPath("go", "node", "bash")
	if err != nil {
		return "", err
	}
	env := append([]string{"PATH=" + path, "HOME=" + os.Getenv("HOME"), "TMPDIR=" + os.TempDir(), "GOFLAGS=-buildvcs=false"}, forJS...)
	for k, v := range kept {
		env = append(env, k+"="+v)
	}
	cmd := []string{"test", "-exec=" + filepath.Join(goroot, "lib", "wasm", "go_js_wasm_exec")}
	return summary(j.command(env, "go", append(cmd, coreJS...)...))
}

// shortPath lists only the folders that hold the programs, and the system's.
func shortPath(programs ...string) (string, error) {
	var dirs []string
	for _, name := range programs {
		p, err := exec.LookPath(name)
		if err != nil {
			return "", err
		}
		dirs = append(dirs, filepath.Dir(p))
	}
	return strings.Join(append(dirs, "/usr/bin", "/bin"), string(os.PathListSeparator)), nil
}

func (j *job) test(env []string, args []string) (string, error) {
	return summary(j.golang(env, append([]string{"test"}, args...)...))
}

// summary counts the packages in the output of go test.
func summary(out string, err error) (string, error) {
	if err != nil {
		return "", err
	}
	ok := 0
	for line := range strings.Lines(out) {
		if strings.HasPrefix(line, "ok") {
			ok++
		}
	}
	if ok == 0 {
		return "", errors.New("no package has tests\n" + out)
	}
	return fmt.Sprintf("%d packages", ok), nil
}

// browser runs the tests in Chromium. They look at files that Go does not know
// of, so an earlier result is never reused.
func browser(j *job) (string, error) {
	return j.test(nil, []string{"-count=1", "-timeout=20m", "./scripts/check/browser"})
}
