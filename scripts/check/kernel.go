package main

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
)

// The core in WebAssembly may take so many times as long as the same in plain JavaScript: 1.3 is what we want, and what a busy machine adds to
// it passes; what is far beyond fails.
const (
	kernelGoal = 1.3
	kernelMost = 2.5
)

// kernel times the heat balance, the heaviest of what a keystroke asks for, in WebAssembly beside the same in plain JavaScript, in one run.
func kernel(j *job) (string, error) {
	program := filepath.Join(j.temp, "kernel.wasm")
	if _, err := j.golang(forJS, "build", "-trimpath", "-buildvcs=false", "-ldflags=-s -w", "-o", program, "./scripts/check/kernel"); err != nil {
		return "", err
	}
	goroot, err := j.goroot()
	if err != nil {
		return "", err
	}
	out, err := j.command(os.Environ(), "node", filepath.Join("scripts", "check", "kernel", "kernel.js"), filepath.Join(goroot, "lib", "wasm", "wasm_exec.js"), program)
	if err != nil {
		return "", err
	}
	return kernelNote(out)
}

// kernelNote reads what kernel.js printed: microseconds of both, and the sums of what both worked out.
func kernelNote(out string) (string, error) {
	var n [4]float64
	words := strings.Fields(out)
	if len(words) != len(n) {
		return "", fmt.Errorf("kernel.js printed %q", out)
	}
	for i, w := range words {
		var err error
		if n[i], err = strconv.ParseFloat(w, 64); err != nil {
			return "", err
		}
	}
	if !(math.Abs(n[2]-n[3]) <= 1e-6*math.Abs(n[3])) {
		return "", fmt.Errorf("WebAssembly works out %g, JavaScript %g", n[2], n[3])
	}
	ratio := n[0] / n[1]
	note := fmt.Sprintf("%.0f µs, in plain JavaScript %.0f µs: %.2f times (wanted: %g)", n[0], n[1], ratio, kernelGoal)
	if !(ratio <= kernelMost) {
		return "", fmt.Errorf("%s, and %g at most", note, kernelMost)
	}
	return note, nil
}
