package loopback

import (
	"net/url"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"
)

func TestDecode(t *testing.T) {
	for text, want := range map[string]string{
		"55+%C2%B0F": "55 °F", "1E+021": "1E+021", "1.e+2": "1.e+2", "+5": "+5", "3+lb+4+oz": "3 lb 4 oz",
		"one+2": "one 2", "e+2": "e 2", "%2B5": "+5", "a%20b": "a b", " a ": "a", "": "", "1,5e+2": "1,5e+2",
		"%c2%b5%2fL": "µ/L", "9e+5": "9e+5", "1E+5": "1E+5", "a\x7e": "a~", "%41%5A%4f": "AZO", "0:+1": "0: 1",
	} {
		if got, err := decode(text); got != want || err != nil {
			t.Errorf("decode(%q) = %q, %v; want %q", text, got, err, want)
		}
	}
}

func TestDecodeRefused(t *testing.T) {
	for _, text := range []string{"%", "%4", "%4g", "%g4", "%/0", "%:0", "%@1", "%G1", "%`1", "%7F", "\x7f", "%1F", "%00", "%FF", "a%"} {
		if got, err := decode(text); err == nil {
			t.Errorf("decode(%q) = %q", text, got)
		}
	}
}

// What ENCODEURL writes comes back: %20 for a space, %2B for a plus sign.
func TestDecodeEscaped(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := strings.TrimSpace(rapid.StringMatching(`[a-zµ°0-9%&=. +/]{0,20}`).Draw(t, "text"))
		escaped := strings.ReplaceAll(url.PathEscape(text), "+", "%2B")
		if got, err := decode(escaped); got != text || err != nil {
			t.Fatalf("%q comes back as %q, %v", text, got, err)
		}
	})
}

// Whatever the query, the answer is a number or a reason, in UTF-8, on one line.
func FuzzQuery(f *testing.F) {
	for _, s := range []string{
		"pressure=201.325&altitude=0", "pressure=1,5%20bar&as=xml", "pressure=1&output=gauge_pressure&unit=psi+gauge",
		"pressure=%zz", "pressure=1&pressure=2", "=&=&&", "pressure=1E+021", "as=xml&pressure=%3C",
	} {
		f.Add(s)
	}
	h := handler(f)
	f.Fuzz(func(t *testing.T, raw string) {
		q, err := parse(raw)
		answer := string(h.compute(nil, "pressure_gauge_from_absolute", q, err))
		if !utf8.ValidString(answer) || strings.ContainsAny(answer, "\x00\n\r") || answer == "" {
			t.Fatalf("%q is answered %q", raw, answer)
		}
		if err == nil && q.xml {
			if !strings.HasPrefix(answer, "<r>") || !strings.HasSuffix(answer, "</r>") {
				t.Fatalf("%q is answered %q", raw, answer)
			}
			return
		}
		c := answer[0]
		if !strings.HasPrefix(answer, ErrorMark) && c-'0' > 9 && c != '-' {
			t.Fatalf("%q is answered %q", raw, answer)
		}
	})
}
