// Command verify answers: does the library give what the printed tables say?
//
//	go run ./examples/verify                     every table, the totals
//	go run ./examples/verify -table sucrose_crc  every row of one table
//	go run ./examples/verify -json               the same as data
//	go run ./examples/verify mytable.csv         your own table
//	go run ./examples/verify -forecast           how well measured ferments are foretold
//	go run ./examples/verify -acidity            how near the pH of juices and wines comes to the measured one
//	go run ./examples/verify -constants          every constant: source, status, what it moves
//
// For each table it prints the source and how it was obtained, the function
// that is held to it, the row that comes nearest to its tolerance or goes
// beyond, and the verdict. The form of a table is told by the package comment of
// internal/published; `go run ./examples/bridge functions` lists the functions
// that a table can name.
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
	"path/filepath"
	"strings"

	"example.org/zymase/internal/published"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// run is the program with its exit code: 0 all rows hold, 1 some do not, 2 a
// file or flag is wrong.
func run(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("verify", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.Usage = func() {
		fmt.Fprintln(stderr, "usage: verify [-json] [-table NAME] [-forecast] [-acidity] [-constants] [FILE.csv ...]")
		flags.PrintDefaults()
	}
	asJSON := flags.Bool("json", false, "write the result as JSON")
	forecast := flags.Bool("forecast", false, "score the forecast of a ferment over measured ones")
	acidity := flags.Bool("acidity", false, "score the pH of juices by their acidity, and of wines by their analysis, over measured ones")
	constants := flags.Bool("constants", false, "print every constant of the library with its source and what it moves")
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
	}
	if write != nil {
		if err := write(stdout); err != nil {
			fmt.Fprintln(stderr, "verify:", err)
			return 2
		}
		return 0
	}
	tables, err := load(flags.Args(), *one)
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

// load reads the files, or the table of that name, or every table.
func load(paths []string, one string) ([]*published.Table, error) {
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
		f, err := os.Open(path)
		if err != nil {
			return nil, err
		}
		t, err := published.Parse(strings.TrimSuffix(filepath.Base(path), ".csv"), f)
		f.Close()
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
