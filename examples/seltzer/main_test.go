package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
)

// seltzerRun runs the program as the shell would.
func seltzerRun(t *testing.T, stdin string, args ...string) (code int, out, complaint string) {
	t.Helper()
	var stdout, stderr bytes.Buffer
	code = run(args, strings.NewReader(stdin), &stdout, &stderr)
	return code, stdout.String(), stderr.String()
}

func TestPrintsThePlan(t *testing.T) {
	code, out, complaint := seltzerRun(t, "")
	if code != 0 || complaint != "" {
		t.Fatalf("exit %d: %s", code, complaint)
	}
	for _, want := range []string{
		"WEIGH AND BUY", "white sugar", "WATER", "VOLUMES", "dry floor", "NUTRIENT", "YEAST", "HOW SURE (k = 2)",
		"2 KEGS", "60 BOTTLES", "set the gauge to", "at sea level", "priming for all", "FLAVOUR", "LABEL (EU)", "MASS BALANCE", "CAUTIONS", "burst",
	} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q", want)
		}
	}
	for line := range strings.Lines(out) {
		if n := len([]rune(strings.TrimRight(line, "\n"))); n > pageWidth+2 {
			t.Errorf("%d wide: %s", n, line)
		}
	}
}

// What cannot be planned is offered as it can.
func TestOffersTheNearest(t *testing.T) {
	strong := strings.Replace(string(builtIn), `"4.6 % vol"`, `"30 % vol"`, 1)
	code, out, complaint := seltzerRun(t, strong, "-")
	if code != 2 || out != "" || !strings.HasSuffix(complaint, "\nnearest that can be planned (-nearest prints it): strength 15 % vol for 30\n") {
		t.Errorf("exit %d: %q, %q", code, out, complaint)
	}
	code, near, complaint := seltzerRun(t, strong, "-nearest", "-")
	if code != 0 || complaint != "" {
		t.Errorf("exit %d: %s", code, complaint)
	}
	if code, out, complaint = seltzerRun(t, near, "-"); code != 0 || !strings.Contains(out, "15.00 % vol") {
		t.Errorf("exit %d: %s", code, complaint)
	}
	if code, _, complaint = seltzerRun(t, `{}`, "-nearest", "-"); code != 2 || !strings.Contains(complaint, "missing") {
		t.Errorf("exit %d: %s", code, complaint)
	}
}

// Each figure has its relation and source.
func TestWhy(t *testing.T) {
	code, out, _ := seltzerRun(t, "", "-why")
	_, plain, _ := seltzerRun(t, "")
	if code != 0 {
		t.Fatal(code)
	}
	for _, want := range []string{"source: OIML R 22", "ICUMSA SPS-4", "ISO 2533:1975", "Kolbach", "Gay-Lussac", "Plummer & Busenberg", "1169/2011"} {
		if !strings.Contains(out, want) || strings.Contains(plain, "source: "+want) {
			t.Errorf("no %q", want)
		}
	}
	req, err := plan.ParseRequest(builtIn)
	if err != nil {
		t.Fatal(err)
	}
	p, err := plan.Make(req)
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range sheet(p, style{}) {
		for _, r := range s.rows {
			given := r.label == "rating given by the maker" || strings.HasPrefix(r.label, "left over") || r.value == "" || r.value == "a little of the drink"
			if !given && (r.relation == "" || r.source == "") {
				t.Errorf("%s, %s: no relation or source", s.title, r.label)
			}
		}
	}
}

func TestUSUnits(t *testing.T) {
	code, out, _ := seltzerRun(t, "", "-units", "us")
	if code != 0 {
		t.Fatal(code)
	}
	// 60 L are 15.85 US gal (NIST Handbook 44); 4 °C are 39 °F; 640 m: 13.61 psi.
	for _, want := range []string{"15.85 US gal", "psi gauge", "°F", " lb ", "13.61 psi absolute"} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q", want)
		}
	}
	for _, not := range []string{" bar gauge", " kPa", "at 20 °C"} {
		if strings.Contains(out, not) {
			t.Errorf("%q in US units", not)
		}
	}
}

// The drawn figures name what they come from, keep the caution of a pressure, and come as data too.
func TestDrawn(t *testing.T) {
	code, out, err := seltzerRun(t, "", "-drawn")
	if code != 0 {
		t.Fatal(err)
	}
	for _, want := range []string{"HOW SURE, DRAWN", "strength of the kegs", "% from ethanol lost", "pH at the end",
		"Hold against a rating the highest of the plan"} {
		if !strings.Contains(out, want) {
			t.Errorf("%q is missing", want)
		}
	}
	var figures []plan.Drawn
	if code, out, err = seltzerRun(t, "", "-drawn", "-json"); code != 0 || json.Unmarshal([]byte(out), &figures) != nil || len(figures) != 10 {
		t.Errorf("%d figures as data; %s", len(figures), err)
	}
	if code, _, err = seltzerRun(t, `{"volume": "60 L"}`, "-drawn", "-"); code != 2 {
		t.Errorf("a request that cannot be is drawn: %s", err)
	}
}

func TestJSON(t *testing.T) {
	code, out, _ := seltzerRun(t, "", "-json")
	if code != 0 {
		t.Fatal(code)
	}
	var p plan.Plan
	if err := json.Unmarshal([]byte(out), &p); err != nil {
		t.Fatal(err)
	}
	if p.Version != 1 || p.Gravity.Floor >= 1 || len(p.Packs) != 2 || len(p.Weigh) < 5 {
		t.Errorf("read back: %+v", p)
	}
}

// The built-in request can be written, changed and planned.
func TestRequestToStartFrom(t *testing.T) {
	_, text, _ := seltzerRun(t, "", "-request")
	mine := strings.Replace(text, `"4.6 % vol"`, `"6 % vol"`, 1)
	name := filepath.Join(t.TempDir(), "mine.json")
	if err := os.WriteFile(name, []byte(mine), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, args := range [][]string{{name}, {"-"}} {
		code, out, complaint := seltzerRun(t, mine, args...)
		if code != 0 || !strings.Contains(out, "6.00 % vol") {
			t.Errorf("%v: exit %d: %s", args, code, complaint)
		}
	}
}

// Nonsense: exit 2, one line, nothing printed.
func TestRefuses(t *testing.T) {
	dir := t.TempDir()
	empty := filepath.Join(dir, "empty.json")
	huge := filepath.Join(dir, "huge.json")
	if err := errors.Join(os.WriteFile(empty, nil, 0o600), os.WriteFile(huge, make([]byte, largestRequest+1), 0o600)); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name, stdin string
		args        []string
		want        string
	}{
		{"empty file", "", []string{empty}, "request: empty"},
		{"no such file", "", []string{filepath.Join(dir, "none.json")}, "no such file"},
		{"a folder", "", []string{dir}, "directory"},
		{"huge file", "", []string{huge}, "larger than 1 MiB"},
		{"two files", "", []string{empty, empty}, "at most one request"},
		{"unknown units", "", []string{"-units", "cubits"}, `-units: "cubits": metric or us`},
		{"bad field", strings.Replace(string(builtIn), "60 L", "5 gal", 1), []string{"-"}, "volume: 5 gal"},
	} {
		code, out, complaint := seltzerRun(t, c.stdin, c.args...)
		if code != 2 || out != "" || strings.Count(complaint, "\n") != 1 || !strings.Contains(complaint, c.want) {
			t.Errorf("%s: exit %d, printed %q, said %q", c.name, code, out, complaint)
		}
	}
	if code, _, complaint := seltzerRun(t, "", "-nonsense"); code != 2 || !strings.Contains(complaint, "usage") {
		t.Errorf("unknown flag: exit %d: %s", code, complaint)
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("disk full") }

// A plan that cannot be written is an error, not a success.
func TestFullDisk(t *testing.T) {
	for _, args := range [][]string{nil, {"-json"}, {"-request"}} {
		var stderr bytes.Buffer
		if code := run(args, nil, broken{}, &stderr); code != 1 || !strings.Contains(stderr.String(), "disk full") {
			t.Errorf("%v: exit %d: %s", args, code, stderr.String())
		}
	}
}

func TestStyle(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{number(-0.0001, 2), "0.00"},
		{number(-0.006, 2), "-0.01"},
		{pad("ab", 4), "ab  "},
	} {
		if c.got != c.want {
			t.Errorf("got %q, want %q", c.got, c.want)
		}
	}
}
