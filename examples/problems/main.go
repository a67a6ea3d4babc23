// Command problems answers: how is this worked out, and who says that it is right?
//
//	go run ./examples/problems        the list, in the order of a course
//	go run ./examples/problems 12     problem 12 with its working
//	go run ./examples/problems -md    the whole set as one Markdown document
//
// Every number in a working comes from the library when the program runs. Each
// answer stands beside a check value: one that is printed in the source named,
// or one worked by hand with the arithmetic shown. The tests hold every answer to its
// check.
//
// It exits with 2 if the argument is wrong, or what it prints cannot be written.
package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"os"
	"slices"
	"strconv"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// run is the program with its exit code.
func run(args []string, stdout, stderr io.Writer) int {
	out := bufio.NewWriter(stdout)
	err := dispatch(args, out)
	if err == nil {
		err = out.Flush()
	}
	if err != nil {
		fmt.Fprintln(stderr, "problems:", err)
		return 2
	}
	return 0
}

const usageLine = "usage: problems [NUMBER | -md]"

const usage = usageLine + `
  problems          the list, in the order of a course
  problems NUMBER   one problem with its working
  problems -md      the whole set as one Markdown document
`

func dispatch(args []string, out io.Writer) error {
	chapters := course()
	switch {
	case len(args) == 0:
		return writeList(out, chapters)
	case len(args) > 1:
		return errors.New(usageLine)
	case slices.Contains([]string{"-h", "-help", "--help"}, args[0]):
		_, err := io.WriteString(out, usage)
		return err
	case args[0] == "-md" || args[0] == "--md":
		return writeMarkdown(out, chapters)
	}
	last := count(chapters)
	n, err := strconv.Atoi(args[0])
	if err != nil || n < 1 || n > last {
		return fmt.Errorf("%.40q is no problem: give a number from 1 to %d, or -md", args[0], last)
	}
	for number, p := range numbered(chapters) {
		if number == n {
			return writeProblem(out, n, p)
		}
	}
	return nil
}
