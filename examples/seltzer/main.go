//go:build !kettle

// Command seltzer plans a batch of a fermented drink from a request and prints
// what to weigh, what every vessel holds, what the hydrometer will say, what to
// set the gauge to and what to look out for.
//
//	go run ./examples/seltzer                     the built-in request: 60 L at 4.6 % vol
//	go run ./examples/seltzer -why                with the relation and source of each figure
//	go run ./examples/seltzer -units us my.json   your own request, in US customary units
//	go run ./examples/seltzer -html plan.html     a page to print or to read at the kettle
//	go run ./examples/seltzer -card my.json       the work step by step, with boxes and blanks
//	go run ./examples/seltzer -page mine.html     a page that plans by itself, on a phone, offline
//	go run ./examples/seltzer -serve 127.0.0.1:8470   the same page, for a browser on this machine
//	go run ./examples/seltzer -seen flat my.json  what can explain it, by the figures of this batch
//	go run ./examples/seltzer -drawn my.json      how sure the figures are, and what that comes from
//	go run ./examples/seltzer -json my.json       the plan as data
//	go run ./examples/seltzer -request            the built-in request, to start yours from
//
// A request that cannot be is refused with exit code 2 and one line that names
// the field, the value and what is allowed.
package main

import (
	"bufio"
	_ "embed"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/zymase/examples/bridge/newfile"
	"example.org/zymase/examples/seltzer/plan"
)

//go:embed request.json
var builtIn []byte

func main() {
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// largestRequest is far above any request written by hand.
const largestRequest = 1 << 20

// errUsage marks a mistake on the command line that flag has already told of.
var errUsage = errors.New("usage")

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	err := seltzer(args, stdin, stdout, stderr)
	switch {
	case err == nil:
		return 0
	case errors.Is(err, flag.ErrHelp):
		return 0
	case errors.Is(err, errUsage):
		return 2
	}
	fmt.Fprintln(stderr, "seltzer:", err)
	if _, ok := errors.AsType[*outputError](err); ok {
		return 1
	}
	return 2
}

// An outputError is a plan that could not be written.
type outputError struct{ err error }

func (e *outputError) Error() string { return "cannot write: " + e.err.Error() }

func seltzer(args []string, stdin io.Reader, stdout, stderr io.Writer) error {
	flags := flag.NewFlagSet("seltzer", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.Usage = func() {
		fmt.Fprintln(stderr, "usage: seltzer [flags] [request.json | -]")
		flags.PrintDefaults()
	}
	asJSON := flags.Bool("json", false, "write the plan as JSON")
	why := flags.Bool("why", false, "print the relation and the source behind each figure")
	steps := flags.Bool("card", false, "print a brew-day card: the work step by step, with boxes and blanks")
	drawn := flags.Bool("drawn", false, "print how sure the figures are, from a thousand worlds, and what that comes from")
	seen := flags.String("seen", "", "print what can explain something `SEEN` in this batch: "+strings.Join(plan.Signs(), ", "))
	serve := flags.String("serve", "", "serve the page of -page on this machine alone, at `ADDRESS` such as 127.0.0.1:8470")
	system := flags.String("units", "metric", "units to print: metric or us")
	htmlFile := flags.String("html", "", "write the plan as a page to print to `FILE`")
	pageFile := flags.String("page", "", "write a page that plans by itself, the library in it, to `FILE`; it takes a Go toolchain")
	force := flags.Bool("force", false, "let -html and -page overwrite a file")
	request := flags.Bool("request", false, "print the built-in request and stop")
	nearest := flags.Bool("nearest", false, "print the nearest request that can be planned and stop")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return err
		}
		return errUsage
	}
	if *system != "metric" && *system != "us" {
		return fmt.Errorf("-units: %q: metric or us", *system)
	}
	if flags.NArg() > 1 {
		return fmt.Errorf("%d arguments: at most one request", flags.NArg())
	}
	out := bufio.NewWriter(stdout)
	if *request {
		out.Write(builtIn)
		return flush(out)
	}

	text, err := read(flags.Arg(0), stdin)
	if err != nil {
		return err
	}
	req, err := plan.ReadRequest(text)
	if err != nil {
		return err
	}
	if *nearest {
		if req, _, err = plan.Nearest(req); err != nil {
			return err
		}
		return writeJSON(out, req)
	}
	if *seen != "" {
		g, err := plan.Wrong(req, *seen)
		if err != nil {
			return offered(err, req)
		}
		if *asJSON {
			return writeJSON(out, g)
		}
		printText(out, []section{guideSection(g, style{us: *system == "us"})}, false)
		return flush(out)
	}
	if *serve != "" {
		return serveKettle(*serve, flags.Arg(0) != "", req, stderr)
	}
	if *pageFile != "" {
		return writeKettle(*pageFile, *force, flags.Arg(0) != "", req)
	}
	if *drawn {
		figures, err := plan.Draw(req, worlds)
		if err != nil {
			return offered(err, req)
		}
		if *asJSON {
			return writeJSON(out, figures)
		}
		printText(out, []section{drawnSection(figures)}, false)
		return flush(out)
	}
	if *htmlFile != "" {
		return writePage(*htmlFile, *force, req, style{us: *system == "us"})
	}
	p, err := plan.Make(req)
	if err != nil {
		return offered(err, req)
	}
	if *asJSON {
		return writeJSON(out, p)
	}
	if *steps {
		printCard(out, cardOf(p, style{us: *system == "us"}))
		return flush(out)
	}
	printText(out, sheet(p, style{us: *system == "us"}), *why)
	return flush(out)
}

// offered is an error with the nearest request that can be planned, if there is one.
func offered(err error, req plan.Request) error {
	if _, changes, no := plan.Nearest(req); no == nil && len(changes) > 0 {
		return fmt.Errorf("%w\nnearest that can be planned (-nearest prints it): %s", err, strings.Join(changes, "; "))
	}
	return err
}

func writeJSON(out *bufio.Writer, v any) error {
	e := json.NewEncoder(out)
	e.SetIndent("", "  ")
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		return &outputError{err}
	}
	return flush(out)
}

func flush(w *bufio.Writer) error {
	if err := w.Flush(); err != nil {
		return &outputError{err}
	}
	return nil
}

// read returns the request: the file named, standard input for "-", or the one
// built in.
func read(name string, stdin io.Reader) ([]byte, error) {
	switch name {
	case "":
		return builtIn, nil
	case "-":
		return limited(stdin, "standard input")
	}
	f, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return limited(f, name)
}

func limited(r io.Reader, name string) ([]byte, error) {
	text, err := io.ReadAll(io.LimitReader(r, largestRequest+1))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	if len(text) > largestRequest {
		return nil, fmt.Errorf("%s: larger than 1 MiB: a request is a page of text", name)
	}
	return text, nil
}

// writePage writes the page whole or not at all, and overwrites nothing unasked.
func writePage(name string, force bool, req plan.Request, s style) error {
	p, curves, err := plan.MakeWithCurves(req)
	if err != nil {
		return offered(err, req)
	}
	f, err := newfile.Create(name, force)
	if err != nil {
		return &outputError{err}
	}
	defer f.Abort() // nothing once it is committed
	if err := printHTML(f, p, curves, s); err != nil {
		return &outputError{err}
	}
	if err := f.Commit(); err != nil {
		return &outputError{err}
	}
	return nil
}
