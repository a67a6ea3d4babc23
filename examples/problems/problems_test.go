package main

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// show prints the working and answers of a problem, for the examples.
func show(p Problem) {
	w, err := p.Solve()
	if err != nil {
		fmt.Println("error:", err)
		return
	}
	for _, s := range w.Steps {
		fmt.Println(s)
	}
	for _, a := range w.Answers {
		fmt.Println("=>", a)
	}
}

// Every answer is within the stated tolerance of its check value, which is printed
// in the source named or worked by hand.
func TestAnswers(t *testing.T) {
	for n, p := range numbered(course()) {
		w, err := p.Solve()
		if err != nil {
			t.Errorf("problem %d: %v", n, err)
			continue
		}
		if len(w.Steps) < 2 || len(w.Answers) == 0 || p.Title == "" || p.Ask == "" || len(p.Given) == 0 || p.Source.Text == "" {
			t.Errorf("problem %d %q lacks a part", n, p.Title)
		}
		for _, a := range w.Answers {
			if !a.Holds() {
				t.Errorf("problem %d %q: %v is off by %.3g", n, p.Title, a, a.Got-a.Check)
			}
			// A tolerance wider than a fifth of the value would hold anything.
			if a.Within > 0.2*math.Abs(a.Check) && a.Check != 0 {
				t.Errorf("problem %d %q: tolerance too wide in %v", n, p.Title, a)
			}
		}
	}
}

// Every check value is a number that stands in the text of its source, so that no check
// comes from nowhere.
func TestChecksStandInTheSource(t *testing.T) {
	number := regexp.MustCompile(`-?\d+(\.\d+)?`)
	plain := strings.NewReplacer("−", "-", ",", "")
	for n, p := range numbered(course()) {
		have := map[float64]bool{}
		for _, text := range number.FindAllString(plain.Replace(p.Source.Text), -1) {
			x, err := strconv.ParseFloat(text, 64)
			if err != nil {
				t.Fatal(err)
			}
			have[x] = true
		}
		w, err := p.Solve()
		if err != nil {
			t.Fatal(err)
		}
		for _, a := range w.Answers {
			if !have[a.Check] {
				t.Errorf("problem %d %q: %s is not in the source: %s", n, p.Title, a.Printed(), p.Source.Text)
			}
		}
	}
}

// The set is as large as it promises.
func TestCounts(t *testing.T) {
	chapters := course()
	if n := count(chapters); n < 60 {
		t.Errorf("%d problems, want 60", n)
	}
	if n := published(chapters); n < 25 {
		t.Errorf("%d rest on a published example or table, want 25", n)
	}
	titles := map[string]bool{}
	for n, p := range numbered(chapters) {
		if titles[p.Title] {
			t.Errorf("problem %d: title %q is there twice", n, p.Title)
		}
		titles[p.Title] = true
	}
}

// Every problem is also an Example: a function of the same name stands in a test.
func TestEveryProblemIsAnExample(t *testing.T) {
	function := regexp.MustCompile(`(?m)^func (\w+)\(\) Problem `)
	example := regexp.MustCompile(`(?m)^func Example_(\w+)\(\) `)
	have := map[string]bool{}
	want := 0
	for _, m := range grep(t, "*_test.go", example) {
		have[m] = true
	}
	for _, m := range grep(t, "chapter_*.go", function) {
		want++
		if !have[m] {
			t.Errorf("%s is no example", m)
		}
	}
	if n := count(course()); n != want {
		t.Errorf("%d problems are written, %d are in the course", want, n)
	}
}

func grep(t *testing.T, pattern string, re *regexp.Regexp) []string {
	t.Helper()
	files, err := filepath.Glob(pattern)
	if err != nil || len(files) == 0 {
		t.Fatalf("no files %s: %v", pattern, err)
	}
	var found []string
	for _, f := range files {
		text, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range re.FindAllStringSubmatch(string(text), -1) {
			found = append(found, m[1])
		}
	}
	return found
}

func TestNoBadFormat(t *testing.T) {
	var b bytes.Buffer
	if err := writeMarkdown(&b, course()); err != nil {
		t.Fatal(err)
	}
	for _, bad := range []string{"%!", "NaN", "Inf", "<nil>"} {
		if strings.Contains(b.String(), bad) {
			t.Errorf("the document holds %q", bad)
		}
	}
}
