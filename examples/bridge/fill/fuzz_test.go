package fill

import (
	"bytes"
	"testing"

	"example.org/zymase/examples/bridge/delimited"
)

// Whatever the file, nothing breaks, each row of the file starts its row of the
// result, and no result is without a number or a reason.
func FuzzFill(f *testing.F) {
	for _, s := range []string{
		"pressure (bar),altitude (m)\n2,0\n", "sep=;\r\npressure (bar);altitude (m)\r\n2,5;0",
		"\xEF\xBB\xBF\"pressure (bar)\"\n\"2\"\n\n,\n=1,2,3\n",
	} {
		f.Add([]byte(s), false, false)
		f.Add([]byte(s), true, true)
	}
	function := function(f, "pressure_gauge_from_absolute")
	f.Fuzz(func(t *testing.T, text []byte, semicolon, comma bool) {
		o := Options{Semicolon: semicolon, DecimalComma: comma}
		var out bytes.Buffer
		count, err := Run(&out, bytes.NewReader(text), function, o)
		if err != nil {
			return
		}
		in := delimited.NewReader(bytes.NewReader(text), o.delim())
		got := delimited.NewReader(&out, o.delim())
		var before, after delimited.Row
		rows, failed := -1, 0 // the head is none
		for {
			a, errA := in.Next()
			b, errB := got.Next()
			if errA != nil {
				if errB == nil {
					t.Fatalf("%q: a row more: %q", text, b)
				}
				break
			}
			if errB != nil {
				t.Fatalf("%q: %v", text, errB)
			}
			before.Split(a, o.delim())
			if !bytes.HasPrefix(b, before.Body()) {
				t.Fatalf("%q became %q", a, b)
			}
			after.Split(b, o.delim())
			if isSeparatorLine(a) && rows < 0 || len(before.Body()) == 0 {
				continue
			}
			if after.Flaw() == "" && len(after.Text(after.Len()-1)) > 0 {
				failed++
			}
			rows++
		}
		if count.Rows > rows || failed-1 > count.Failed { // the head says "error"
			t.Fatalf("%q: %+v, seen %d rows, %d failed", text, count, rows, failed)
		}
	})
}
