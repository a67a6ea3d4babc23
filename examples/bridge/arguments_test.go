package main

import (
	"flag"
	"io"
	"strings"
	"testing"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/number"
)

func TestWords(t *testing.T) {
	for _, c := range []struct {
		args, want string
		on         bool
	}{
		{"a -x b=1", "a b=1", true},
		{"-x a", "a", true},
		{"a -- -x", "a -x", false},
		{"a b=-5", "a b=-5", false},
		{"", "", false},
	} {
		p := &program{args: strings.Fields(c.args), flags: flag.NewFlagSet("", flag.ContinueOnError)}
		on := p.flags.Bool("x", false, "")
		words, err := p.words()
		if err != nil || strings.Join(words, " ") != c.want || *on != c.on {
			t.Errorf("%q: %q, %v, %v", c.args, words, *on, err)
		}
	}
}

// Whatever the words, a call has numbers for an answer, or an error with a
// reason.
func FuzzCall(f *testing.F) {
	for _, s := range []string{
		"pressure_gauge_from_absolute|pressure=2 bar|altitude=640", "atmosphere_at_altitude|altitude=-5,5 ft|pressure (psi)",
		"|", "a|=", "atmosphere_at_altitude|altitude=1e400", "atmosphere_at_altitude|-json|altitude=NaN",
	} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, line string) {
		p := &program{args: strings.Split(line, "|"), flags: flag.NewFlagSet("", flag.ContinueOnError)}
		p.flags.SetOutput(io.Discard)
		p.flags.Bool("json", false, "")
		words, err := p.words()
		if err != nil {
			return
		}
		r, err := parseRequest(words)
		if err != nil {
			return
		}
		function, err := catalogue.Find(r.name)
		if err != nil {
			return
		}
		_, results, out, err := answer(function, r)
		if err != nil {
			if err.Error() == "" {
				t.Fatalf("%q: an error without a reason", line)
			}
			return
		}
		for i := range results {
			if text := number.Append(nil, results[i].Of(out)); len(text) == 0 || strings.ContainsAny(string(text), "NI") {
				t.Fatalf("%q is answered %q", line, text)
			}
		}
	})
}
