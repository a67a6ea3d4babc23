package main

import (
	"bytes"
	"fmt"
	"regexp"
	"strings"
	"syscall"
	"testing"
)

func runWith(args ...string) (code int, stdout, stderr string) {
	var out, errs bytes.Buffer
	code = run(args, &out, &errs)
	return code, out.String(), errs.String()
}

func TestList(t *testing.T) {
	code, out, errs := runWith()
	if code != 0 || errs != "" {
		t.Fatalf("code %d, %q", code, errs)
	}
	for n, p := range numbered(course()) {
		if !strings.Contains(out, fmt.Sprintf("%4d ", n)) || !strings.Contains(out, p.Title) {
			t.Errorf("problem %d %q is not in the list", n, p.Title)
		}
	}
}

func TestOneProblem(t *testing.T) {
	code, out, errs := runWith("1")
	if code != 0 || errs != "" {
		t.Fatalf("code %d, %q", code, errs)
	}
	for _, part := range []string{"Problem 1: ", "\nGiven\n", "\nWorking\n", "\nAnswer\n", "\nCheck (published, read)\n"} {
		if !strings.Contains(out, part) {
			t.Errorf("%q is missing", part)
		}
	}
	for n := range numbered(course()) {
		if code, out, _ := runWith(fmt.Sprint(n)); code != 0 || len(out) < 200 {
			t.Errorf("problem %d: code %d, %d bytes", n, code, len(out))
		}
	}
}

// A bad argument gives one line on standard error, nothing on standard output and exit
// code 2.
func TestBadArgument(t *testing.T) {
	for _, args := range [][]string{{"0"}, {"-1"}, {"9999"}, {"x"}, {""}, {"1", "2"}, {"-html"}, {"1.5"}, {"a\nb"}, {strings.Repeat("9", 1000)}} {
		code, out, errs := runWith(args...)
		if code != 2 || out != "" || strings.Count(errs, "\n") != 1 || len(errs) > 200 {
			t.Errorf("%.20q: code %d, out %q, err %q", args, code, out, errs)
		}
	}
}

func TestHelp(t *testing.T) {
	for _, flag := range []string{"-h", "-help", "--help"} {
		code, out, errs := runWith(flag)
		if code != 0 || errs != "" || !strings.HasPrefix(out, "usage: problems ") {
			t.Errorf("%s: code %d, out %q, err %q", flag, code, out, errs)
		}
	}
}

// Every line of the contents leads to a problem, and the document is the same each time.
func TestMarkdown(t *testing.T) {
	code, out, _ := runWith("-md")
	if code != 0 {
		t.Fatalf("code %d", code)
	}
	links := regexp.MustCompile(`\(#(problem-\d+)\)`).FindAllStringSubmatch(out, -1)
	if len(links) != count(course()) {
		t.Errorf("%d lines of contents for %d problems", len(links), count(course()))
	}
	for _, l := range links {
		if strings.Count(out, `<a id="`+l[1]+`"></a>`) != 1 {
			t.Errorf("no place for %s", l[1])
		}
	}
	if _, again, _ := runWith("-md"); again != out {
		t.Error("the document differs from run to run")
	}
	// A vertical bar inside a cell would break a table.
	for line := range strings.Lines(out) {
		if strings.HasPrefix(line, "|") && strings.Count(line, "|") != 5 {
			t.Errorf("table row with a stray bar: %s", line)
		}
	}
}

// full is a disk that takes some bytes and no more.
type full struct{ room int }

func (w *full) Write(b []byte) (int, error) {
	n := min(len(b), w.room)
	if w.room -= n; n < len(b) {
		return n, syscall.ENOSPC
	}
	return n, nil
}

// What cannot be written whole is an error, wherever it is cut.
func TestFullDisk(t *testing.T) {
	for _, args := range [][]string{nil, {"1"}, {"-md"}, {"-h"}} {
		_, out, _ := runWith(args...)
		for _, room := range []int{0, len(out) / 2, len(out) - 1} {
			var errs bytes.Buffer
			if code := run(args, &full{room}, &errs); code != 2 || !strings.Contains(errs.String(), syscall.ENOSPC.Error()) {
				t.Errorf("%v, room for %d bytes: code %d, %q", args, room, code, errs.String())
			}
		}
	}
}

func TestWrap(t *testing.T) {
	text := strings.Repeat("grüße ", 60)
	for line := range strings.Lines(wrap(text, "  ")) {
		if n := len([]rune(strings.TrimRight(line, "\n"))); n > columns {
			t.Errorf("a line of %d columns", n)
		}
	}
	if got := wrap("a  b\nc", "  "); got != "a b c" {
		t.Errorf("%q", got)
	}
}

// A failure of the library comes back as an error, not as a panic.
func TestFailure(t *testing.T) {
	p := Problem{Title: "broken", Work: func(*Working) { must(0, fmt.Errorf("no")) }}
	if _, err := p.Solve(); err == nil || err.Error() != "broken: no" {
		t.Errorf("got %v", err)
	}
	if err := writeProblem(&bytes.Buffer{}, 1, p); err == nil {
		t.Error("the error is lost in print")
	}
	if err := writeMarkdown(&bytes.Buffer{}, []Chapter{{Problems: []Problem{p}}}); err == nil {
		t.Error("the error is lost in the document")
	}
}
