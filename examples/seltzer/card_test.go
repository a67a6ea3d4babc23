package main

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
)

// drinksToTry are the built-in batch and the drinks that a page starts from, by name.
func drinksToTry(t *testing.T) map[string]plan.Plan {
	t.Helper()
	texts := map[string][]byte{"sparkler": builtIn}
	files, err := filepath.Glob("drinks/*.json")
	if err != nil || len(files) != 5 {
		t.Fatalf("%v: %q", err, files)
	}
	for _, f := range files {
		text, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		texts[strings.TrimSuffix(filepath.Base(f), ".json")] = text
	}
	plans := map[string]plan.Plan{}
	for name, text := range texts {
		req, err := plan.ParseRequest(text)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if plans[name], err = plan.Make(req); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
	}
	for name, req := range requestsToTry(t) {
		p, err := plan.Make(req)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		plans[name] = p
	}
	return plans
}

// The card of the built-in batch keeps its form. This is a regression test of our own
// output, no evidence for the numbers.
func TestGoldenCard(t *testing.T) {
	const name = "testdata/card.golden.txt"
	code, out, complaint := seltzerRun(t, "", "-card")
	if code != 0 {
		t.Fatal(complaint)
	}
	if *update {
		if err := os.WriteFile(name, []byte(out), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	golden, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	want := strings.Split(string(golden), "\n")
	for i, line := range strings.Split(out, "\n") {
		if i >= len(want) || line != want[i] {
			t.Fatalf("line %d: %s", i+1, line)
		}
		if n := len([]rune(line)); n > pageWidth+2 {
			t.Errorf("line %d is %d wide", i+1, n)
		}
	}
}

// No figure is worked out a second time: each that is taken or read stands in the sheet.
func TestCardHoldsTheFiguresOfTheSheet(t *testing.T) {
	number := regexp.MustCompile(`\d+(?:\.\d+)?`)
	for name, p := range drinksToTry(t) {
		for _, s := range []style{{}, {us: true}} {
			var b bytes.Buffer
			printText(&b, sheet(p, s), false)
			have := number.FindAllString(b.String(), -1)
			figures := 0
			for _, st := range cardOf(p, s).steps {
				for _, r := range slices.Concat(st.weigh, st.read) {
					for _, n := range number.FindAllString(r.value, -1) {
						figures++
						if !slices.Contains(have, n) {
							t.Errorf("%s, %s: %s %s: no such figure in the sheet", name, st.title, r.label, r.value)
						}
					}
				}
			}
			if figures < 20 && p.Base == nil || figures < 14 {
				t.Errorf("%s: %d figures", name, figures)
			}
		}
	}
}

// No caution is lost, and none stands twice; those of no step stand before all.
func TestCardHoldsEveryCaution(t *testing.T) {
	for name, p := range drinksToTry(t) {
		c := cardOf(p, style{})
		var on []string
		on = append(on, c.before...)
		ids := map[string]bool{}
		for _, st := range c.steps {
			on = append(on, st.cautions...)
			if ids[st.id] {
				t.Errorf("%s: %s stands twice", name, st.id)
			}
			ids[st.id] = true
		}
		for _, text := range p.Cautions {
			if n := strings.Count("\n"+strings.Join(on, "\n")+"\n", "\n"+text+"\n"); n != 1 {
				t.Errorf("%s: %d times: %s", name, n, text)
			}
		}
		if len(c.before) > 0 {
			t.Errorf("%s: of no step: %q", name, c.before)
		}
	}
}

// A pack over its rating is told before anything is weighed, and what is held back is not primed.
func TestCardWarnsFirst(t *testing.T) {
	req, err := plan.ParseRequest(bytes.Replace(builtIn, []byte("8 bar gauge"), []byte("3 bar gauge"), 1))
	if err != nil {
		t.Fatal(err)
	}
	p, err := plan.Make(req)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	printCard(&b, cardOf(p, style{}))
	text := strings.Join(strings.Fields(b.String()), " ")
	if i, j := strings.Index(text, "do not fill"), strings.Index(text, "[ ] 1 "); i < 0 || i > j {
		t.Errorf("the warning stands at %d, the first step at %d", i, j)
	}
	if !strings.Contains(text, "Do not prime") {
		t.Errorf("it primes:\n%s", text)
	}
}
