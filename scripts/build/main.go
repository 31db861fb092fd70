// Command build makes the folder that is uploaded to any static host.
package main

import (
	"flag"
	"fmt"
	"os"

	"twistbench/scripts/internal/site"
)

func main() {
	out := flag.String("o", "dist", "the folder to write")
	flag.Parse()
	if flag.NArg() > 0 {
		fmt.Fprintln(os.Stderr, "build takes no words: name the folder with -o")
		os.Exit(2)
	}
	r, err := site.Build(*out, false)
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
	fmt.Print(r)
}
