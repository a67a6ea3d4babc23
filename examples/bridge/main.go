// Command bridge lets a spreadsheet use the library: over a column of a CSV
// file, or from a cell. It writes the library for other languages, too.
//
//	bridge functions [-json] [WORD]                list what can be computed
//	bridge call NAME input=value...                compute one
//	bridge fill NAME <in.csv >out.csv              compute a column
//	bridge serve                                   answer cells on this machine
//	bridge module                                  write plain function names for LibreOffice Calc
//	bridge sheet FILE.fods                         write a worked sheet of a batch
//	bridge js -o DIR                               write the library for JavaScript
//	bridge c -o DIR                                write it for C: a header and a shared library
//	bridge python -o DIR                           write it for Python: a package over the shared library
//
// A temperature or a pressure that is typed needs its unit, "4 °C"; a column has it in its
// head. "bridge call" prints the inputs as it understood them before the answer.
//
// "bridge COMMAND -h" tells the flags of each. Exit codes: 0 done; 1 some row or
// the one question has no answer; 2 wrong use, a file that cannot be read or
// written.
package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), signals()...)
	defer stop()
	os.Exit(run(ctx, os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// A command gets what follows its name.
type command struct {
	name, use string
	run       func(ctx context.Context, p *program) error
}

// program is what a command works with.
type program struct {
	args   []string
	stdin  io.Reader
	stdout io.Writer
	stderr io.Writer
	flags  *flag.FlagSet
}

var commands = []command{
	{"functions", "functions [-json] [WORD]", functions},
	{"call", "call NAME input=value... [output or \"output (unit)\"...]", call},
	{"fill", "fill NAME [input=value...] [output or \"output (unit)\"...] <in.csv >out.csv", fillFile},
	{"serve", "serve [-addr 127.0.0.1:PORT]", serve},
	{"module", "module [-addr 127.0.0.1:PORT] [-o FILE.bas]", writeModule},
	{"sheet", "sheet [-addr 127.0.0.1:PORT] FILE.fods", writeSheet},
	{"js", "js -o DIR", writeJavaScript},
	{"c", "c -o DIR", writeC},
	{"python", "python -o DIR", writePython},
}

// errNoAnswer is a question or a row without an answer: exit code 1.
var errNoAnswer = errors.New("no answer")

// errTold is a mistake that was told already: exit code 2.
var errTold = errors.New("told")

func run(ctx context.Context, args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	if len(args) == 0 {
		usage(stderr)
		return 2
	}
	for _, c := range commands {
		if c.name != args[0] {
			continue
		}
		p := &program{args: args[1:], stdin: stdin, stdout: stdout, stderr: stderr}
		p.flags = flag.NewFlagSet(c.name, flag.ContinueOnError)
		p.flags.SetOutput(stderr)
		p.flags.Usage = func() {
			fmt.Fprintln(stderr, "use: bridge "+c.use)
			p.flags.PrintDefaults()
		}
		switch err := c.run(ctx, p); {
		case err == nil, errors.Is(err, flag.ErrHelp):
			return 0
		case errors.Is(err, errNoAnswer):
			fmt.Fprintln(stderr, "bridge:", err)
			return 1
		case errors.Is(err, errTold):
			return 2
		default:
			fmt.Fprintln(stderr, "bridge:", err)
			return 2
		}
	}
	if args[0] == "-h" || args[0] == "-help" || args[0] == "--help" || args[0] == "help" {
		if err := usage(stdout); err != nil {
			fmt.Fprintln(stderr, "bridge:", err)
			return 2
		}
		return 0
	}
	fmt.Fprintf(stderr, "bridge: no command %.64q\n", args[0])
	usage(stderr)
	return 2
}

func usage(w io.Writer) error {
	text := "use:\n"
	for _, c := range commands {
		text += "  bridge " + c.use + "\n"
	}
	_, err := io.WriteString(w, text)
	return err
}
