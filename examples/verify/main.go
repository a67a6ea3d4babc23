// Command verify answers: does the library give what the printed tables say?
//
//	go run ./examples/verify                     every table, the totals
//	go run ./examples/verify -table sucrose_crc  every row of one table
//	go run ./examples/verify -json               the same as data
//	go run ./examples/verify mytable.csv         your own table
//	go run ./examples/verify -report out.html mytable.csv   a page for a quality system
//	go run ./examples/verify -forecast           how well measured ferments are foretold
//	go run ./examples/verify -acidity            how near the pH of juices and wines comes to the measured one
//	go run ./examples/verify -constants          every constant: source, status, what it moves
//	go run ./examples/verify -laws               the law that figures are from, by article
//
// For each table it prints the source and how it was obtained, the function
// that is held to it, the row that comes nearest to its tolerance or goes
// beyond, and the verdict. The form of a table is told by the package comment of
// internal/published; `go run ./examples/bridge functions` lists the functions
// that a table can name.
//
// A table of your own may be as a spreadsheet exports it: heads with units, a decimal comma, merged
// heads, notes. A head that is not understood is asked for at the terminal; elsewhere the message
// says what it may be and which flag says so (-checks, -map, -fix).
//
// It exits with 1 if a row is out of its tolerance, and with 2 if a file or a
// flag is wrong, or the report cannot be written.
package main

import (
	"bufio"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/zymase/internal/published"
)

func main() {
	var answers io.Reader
	in, err := os.Stdin.Stat()
	nobody, _ := os.Stat(os.DevNull)
	if err == nil && in.Mode()&os.ModeCharDevice != 0 && !os.SameFile(in, nobody) {
		answers = os.Stdin // somebody sits there
	}
	os.Exit(talk(os.Args[1:], answers, os.Stdout, os.Stderr))
}

// run is the program where nobody answers.
func run(args []string, stdout, stderr io.Writer) int { return talk(args, nil, stdout, stderr) }

// talk is the program with its exit code: 0 all rows hold, 1 some do not, 2 a
// file or flag is wrong. Questions go to stderr.
func talk(args []string, answers io.Reader, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("verify", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.Usage = func() {
		fmt.Fprintln(stderr, "usage: verify [-json] [-table NAME] [-forecast] [-acidity] [-constants] [-laws] [FILE.csv ...]")
		fmt.Fprintln(stderr, "       verify [-report PAGE.html] [-checks FUNCTION] [-map HEAD=NAME] [-fix NAME=VALUE] [-tolerance T] [-source S] FILE.csv")
		flags.PrintDefaults()
	}
	asJSON := flags.Bool("json", false, "write the result as JSON")
	forecast := flags.Bool("forecast", false, "score the forecast of a ferment over measured ones")
	acidity := flags.Bool("acidity", false, "score the pH of juices by their acidity, and of wines by their analysis, over measured ones")
	constants := flags.Bool("constants", false, "print every constant of the library with its source and what it moves")
	byLaw := flags.Bool("laws", false, "print the law that figures are from, by article with its date, what changes often first")
	page := flags.String("report", "", "write a page with plots of the residuals to a new `file`")
	ask := &asker{to: stderr, columns: map[string]string{}, fixed: map[string]string{}}
	if answers != nil {
		ask.from = bufio.NewReader(answers)
	}
	flags.StringVar(&ask.checks, "checks", "", "the `function` that computes what an export without heads of its own holds")
	flags.Func("map", "what a column of an export is: `HEAD=NAME`, HEAD=label for one that is only shown", pairs(ask.columns, "label"))
	flags.Func("fix", "an input that is the same in every row of an export: `NAME=VALUE`", pairs(ask.fixed, ""))
	flags.StringVar(&ask.tolerance, "tolerance", "", "how near an export must come and why: \"0.5 %; the error of the method\"")
	flags.StringVar(&ask.source, "source", "", "where the figures of an export are from")
	one := flags.String("table", "", "print every row of the table of that `name`")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return 0
		}
		return 2
	}
	var write func(io.Writer) error
	switch {
	case *forecast:
		write = writeForecasts
	case *acidity:
		write = writeAcidity
	case *constants:
		write = writeConstants
	case *byLaw:
		write = writeLaws
	}
	if write != nil {
		if err := write(stdout); err != nil {
			fmt.Fprintln(stderr, "verify:", err)
			return 2
		}
		return 0
	}
	tables, err := load(flags.Args(), *one, ask)
	if err != nil {
		fmt.Fprintln(stderr, "verify:", err)
		return 2
	}
	var report Report
	for _, t := range tables {
		result, err := check(t)
		if err != nil {
			fmt.Fprintln(stderr, "verify:", err)
			return 2
		}
		report.Tables = append(report.Tables, *result)
	}
	own := flags.NArg() > 0
	whole := !own && *one == ""
	report.total(whole)

	if *page != "" {
		if err := writePage(*page, &report); err != nil {
			fmt.Fprintln(stderr, "verify:", err)
			return 2
		}
	}
	out := bufio.NewWriter(stdout)
	if *asJSON {
		err = report.writeJSON(out)
	} else {
		report.writeText(out, *one != "", own)
	}
	if err == nil {
		err = out.Flush()
	}
	if err != nil {
		fmt.Fprintln(stderr, "verify:", err)
		return 2
	}
	if report.Failed > 0 {
		return 1
	}
	return 0
}

// pairs reads "NAME=VALUE" into a map, the names without their case; empty stands for what is none.
func pairs(into map[string]string, empty string) func(string) error {
	return func(text string) error {
		name, value, ok := strings.Cut(text, "=")
		if !ok || name == "" || value == "" {
			return fmt.Errorf("%q is not NAME=VALUE", text)
		}
		if value == empty {
			value = ""
		}
		into[strings.ToLower(name)] = value
		return nil
	}
}

// load reads the files, or the table of that name, or every table.
func load(paths []string, one string, ask *asker) ([]*published.Table, error) {
	switch {
	case len(paths) > 0 && one != "":
		return nil, fmt.Errorf("-table prints a table of the library; leave it out with a file of your own")
	case one != "":
		t, err := published.Find(one)
		if err != nil {
			return nil, fmt.Errorf("%w%s", err, alike(one))
		}
		return []*published.Table{t}, nil
	case len(paths) == 0:
		return published.All()
	}
	var tables []*published.Table
	for _, path := range paths {
		t, err := readOwn(path, ask)
		if err != nil {
			return nil, err
		}
		tables = append(tables, t)
	}
	return tables, nil
}

// alike lists tables with a part of the name.
func alike(name string) string {
	var like []string
	for _, n := range published.Names() {
		for part := range strings.SplitSeq(name, "_") {
			if len(part) > 2 && strings.Contains(n, part) {
				like = append(like, n)
				break
			}
		}
	}
	if len(like) == 0 {
		like = published.Names()
	}
	return "; there are " + strings.Join(like, ", ")
}
