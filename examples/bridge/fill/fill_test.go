package fill

import (
	"bytes"
	"encoding/csv"
	"errors"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/delimited"
)

func function(t testing.TB, name string) *catalogue.Function {
	t.Helper()
	f, err := catalogue.Find(name)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// othersWords is a reason in the words of package units, which are not ours to
// test: a quoted cell that starts with the name of the input.
var othersWords = regexp.MustCompile(`"pressure: ""[^"]*"" is not an?( absolute)? [^\n]*"`)

// What the rows below hold: by definition 1 bar is 100 kPa, and at sea level
// the standard atmosphere is 101.325 kPa (ISO 2533:1975).
func TestRun(t *testing.T) {
	for _, c := range []struct {
		name, in string
		o        Options
		want     string
		count    Count
	}{
		{
			"columns in any order, others kept",
			"batch,altitude (m),note,pressure (bar)\n" +
				"7,0,\"dry, \"\"first\"\"\",2\n" +
				"8,0, ok ,1.01325\n",
			Options{},
			"batch,altitude (m),note,pressure (bar),gauge_pressure (kPa gauge),error\n" +
				"7,0,\"dry, \"\"first\"\"\",2,98.675,\n" +
				"8,0, ok ,1.01325,0,\n",
			Count{2, 0},
		},
		{
			"semicolons, decimal commas, CR LF, a mark, no last line end",
			"\xEF\xBB\xBFpressure (bar);altitude (m)\r\n2,5;0\r\n\"3,5\";0",
			Options{Semicolon: true, DecimalComma: true},
			"\xEF\xBB\xBFpressure (bar);altitude (m);gauge_pressure (kPa gauge);error\r\n" +
				"2,5;0;148,675;\r\n\"3,5\";0;248,675;",
			Count{2, 0},
		},
		{
			"commas and decimal commas",
			"pressure (bar),altitude (m)\n\"2,5\",0\n",
			Options{DecimalComma: true},
			"pressure (bar),altitude (m),gauge_pressure (kPa gauge),error\n\"2,5\",0,\"148,675\",\n",
			Count{1, 0},
		},
		{
			"a head with a line end and capital letters",
			"\"Remark\nof the day\",\"Pressure (bar)\"\nx,2\n",
			Options{},
			"\"Remark\nof the day\",\"Pressure (bar)\",gauge_pressure (kPa gauge),error\nx,2,98.675,\n",
			Count{1, 0},
		},
		{
			"a fixed value and a unit for the result",
			"pressure (kPa)\n201.325\n",
			Options{Fixed: map[string]string{"altitude": "0 ft"}, Outputs: []string{"gauge pressure (bar)"}},
			"pressure (kPa),gauge_pressure (bar),error\n201.325,1,\n",
			Count{1, 0},
		},
		{
			"bad cells fail their own row",
			"pressure (bar),altitude (m)\n" +
				"2,0\n" +
				strings.Repeat("x", 257) + ",0\n" +
				"two,0\n" +
				",0\n" +
				"\"1,5\",0\n" +
				"2,99999\n" +
				"2\n" +
				"2,0,9\n" +
				"\"2\"x,0\n" +
				"NaN,0\n" +
				"2,0\n",
			Options{},
			"pressure (bar),altitude (m),gauge_pressure (kPa gauge),error\n" +
				"2,0,98.675,\n" +
				strings.Repeat("x", 257) + ",0,,pressure: a text of 257 bytes is not a number\n" +
				"two,0,,pressure: ~\n" +
				",0,,pressure is empty\n" +
				"\"1,5\",0,,\"pressure: \"\"1,5\"\" is not read: it has a comma; write a point, or use -decimal-comma\"\n" +
				"2,99999,,\"pressure_gauge_from_absolute: altitude 99999 m outside -500 m to 11000 m (ISO 2533:1975, Standard atmosphere)\"\n" +
				"2,,,altitude is empty\n" +
				"2,0,9,,\"the row has 3 cells, the head 2\"\n" +
				"\"2\"x,0,,the row has text after a closing quotation mark\n" +
				"NaN,0,,pressure: ~\n" +
				"2,0,98.675,\n",
			Count{11, 9},
		},
		{
			"a cell with its own unit",
			"pressure (bar),altitude (m)\n200 kPa absolute,0\n\"201,325 kPa\",0\n",
			Options{},
			"pressure (bar),altitude (m),gauge_pressure (kPa gauge),error\n" +
				"200 kPa absolute,0,98.675,\n" +
				"\"201,325 kPa\",0,,pressure: ~\n",
			Count{2, 1},
		},
		{
			"empty lines and blank rows",
			"pressure (bar),altitude (m)\n\n2,0\n,\n\" \", \n",
			Options{},
			"pressure (bar),altitude (m),gauge_pressure (kPa gauge),error\n\n2,0,98.675,\n,,,\n\" \", ,,\n",
			Count{1, 0},
		},
		{
			"a line that names the delimiter",
			"sep=;\r\npressure (bar);altitude (m)\r\n2;0\r\n",
			Options{Semicolon: true},
			"sep=;\r\npressure (bar);altitude (m);gauge_pressure (kPa gauge);error\r\n2;0;98.675;\r\n",
			Count{1, 0},
		},
		{
			"a head alone",
			"pressure (bar)",
			Options{},
			"pressure (bar),gauge_pressure (kPa gauge),error\n",
			Count{},
		},
		{
			"cells of the user that look like formulas are theirs",
			"=A1,pressure (bar)\n=1+1,2\n-2,2\n",
			Options{},
			"=A1,pressure (bar),gauge_pressure (kPa gauge),error\n=1+1,2,98.675,\n-2,2,98.675,\n",
			Count{2, 0},
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			var out strings.Builder
			count, err := Run(&out, strings.NewReader(c.in), function(t, "pressure_gauge_from_absolute"), c.o)
			if err != nil {
				t.Fatal(err)
			}
			got := out.String()
			if strings.Contains(c.want, "~") {
				got = othersWords.ReplaceAllString(got, "pressure: ~")
			}
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Error(diff)
			}
			if count != c.count {
				t.Errorf("count %+v, want %+v", count, c.count)
			}
		})
	}
}

func TestHeadRefused(t *testing.T) {
	for _, c := range []struct {
		name, in string
		o        Options
		say      string
	}{
		{"empty file", "", Options{}, "the file is empty"},
		{"no column", "a,b\n", Options{}, `no column "pressure (kPa absolute)"`},
		{"no unit", "pressure,altitude (m)\n", Options{}, `column "pressure" has no unit; head it "pressure (kPa absolute)"`},
		{"unknown unit", "pressure (stone),altitude (m)\n", Options{}, `column "pressure (stone)"`},
		{"gauge is not absolute", "pressure (barg),altitude (m)\n", Options{}, "barg"},
		{"two columns", "pressure (bar),pressure (kPa)\n", Options{}, "both give pressure"},
		{"column and fixed", "pressure (bar)\n", Options{Fixed: map[string]string{"pressure": "1"}}, "given twice"},
		{"no such input", "pressure (bar)\n", Options{Fixed: map[string]string{"height": "1"}}, `no input "height"`},
		{"bad fixed value", "pressure (bar)\n", Options{Fixed: map[string]string{"altitude": "high"}}, "altitude"},
		{"no such output", "pressure (bar)\n", Options{Outputs: []string{"mood"}}, `no output "mood"`},
		{"no such unit of output", "pressure (bar)\n", Options{Outputs: []string{"gauge_pressure (m)"}}, "gauge_pressure"},
		{"result column there already", "pressure (bar),gauge_pressure (kPa gauge)\n", Options{}, "there is a column"},
		{"error column there already", "pressure (bar),Error\n", Options{}, `"error"`},
		{"output twice", "pressure (bar)\n", Options{Outputs: []string{"gauge_pressure", "gauge pressure"}}, "there is a column"},
		{"semicolons not told", "pressure (bar);altitude (m)\n", Options{}, "use -semicolon"},
		{"semicolons told and not there", "pressure (bar),altitude (m)\n", Options{Semicolon: true}, "leave out -semicolon"},
		{"sep= against the flag", "sep=;\npressure (bar)\n", Options{}, "use -semicolon"},
		{"sep= of another kind", "sep=|\npressure (bar)\n", Options{}, "commas or semicolons"},
		{"lone CR", "pressure (bar)\r2\r", Options{}, "lone CR"},
		{"sep= of half a line", "sep=\npressure (bar)\n", Options{}, "no column"},
		{"flaw in the head", "\"a\"b,pressure (bar)\n", Options{}, "first line"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var out strings.Builder
			_, err := Run(&out, strings.NewReader(c.in), function(t, "pressure_gauge_from_absolute"), c.o)
			if _, ok := errors.AsType[*HeadError](err); !ok || !strings.Contains(err.Error(), c.say) {
				t.Errorf("error %v, want %q", err, c.say)
			}
			if out.Len() > 0 {
				t.Errorf("%q was written", out.String())
			}
		})
	}
}

func TestFileRefusedHalfWay(t *testing.T) {
	in := "pressure (bar)\n" + strings.Repeat("2\n", 1000) + "\xFF\n2\n"
	var out strings.Builder
	count, err := Run(&out, strings.NewReader(in), function(t, "pressure_gauge_from_absolute"), Options{})
	form, ok := errors.AsType[*delimited.FormError](err)
	if !ok || form.Line != 1002 || count.Rows != 1000 || strings.Count(out.String(), "\n") != 1001 {
		t.Errorf("%+v, %v", count, err)
	}
}

// Whatever the user's other columns hold, they come back as they were, and the
// results are those of the function, row by row and in order.
func TestColumnsComeBack(t *testing.T) {
	f := function(t, "pressure_gauge_from_absolute")
	rapid.Check(t, func(t *rapid.T) {
		semicolon := rapid.Bool().Draw(t, "semicolon")
		o := Options{Semicolon: semicolon, DecimalComma: rapid.Bool().Draw(t, "comma")}
		other := rapid.StringMatching("[a-z°\"',;= \n-]{0,8}")
		write := func(v float64) string {
			text := strconv.FormatFloat(v, 'g', -1, 64)
			if o.DecimalComma {
				text = strings.Replace(text, ".", ",", 1)
			}
			return text
		}
		table := [][]string{{"a", "pressure (bar)", "b\n\"c\"", "altitude (m)"}}
		for range rapid.IntRange(0, 20).Draw(t, "rows") {
			table = append(table, []string{
				other.Draw(t, "a"), write(rapid.Float64Range(0, 20).Draw(t, "pressure")),
				other.Draw(t, "b"), write(rapid.Float64Range(-500, 11000).Draw(t, "altitude")),
			})
		}
		var in, out bytes.Buffer
		w := csv.NewWriter(&in)
		w.Comma = rune(o.delim())
		w.WriteAll(table)
		before := strings.SplitAfter(in.String(), "\n")
		count, err := Run(&out, bytes.NewReader(in.Bytes()), f, o)
		if err != nil || count.Failed > 0 || count.Rows != len(table)-1 {
			t.Fatalf("%+v, %v", count, err)
		}
		for i, line := range strings.SplitAfter(out.String(), "\n") {
			if !strings.HasPrefix(line, strings.TrimSuffix(before[i], "\n")) {
				t.Fatalf("line %d: %q became %q", i, before[i], line)
			}
		}
		r := csv.NewReader(&out)
		r.Comma = rune(o.delim())
		back, err := r.ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		read := func(text string) float64 {
			v, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
			if err != nil {
				t.Fatal(err)
			}
			return v
		}
		for i, row := range back[1:] {
			if diff := cmp.Diff(table[i+1], row[:4]); diff != "" {
				t.Fatal(diff)
			}
			var want [1]float64
			if err := f.Call([]float64{read(row[1]) * 100, read(row[3])}, want[:]); err != nil {
				t.Fatal(err)
			}
			if got := read(row[4]); math.Abs(got-want[0]) > 1e-9*math.Abs(want[0])+1e-12 {
				t.Fatalf("row %d: %v, want %v", i, got, want[0])
			}
		}
	})
}

func TestRowsAllocateNothing(t *testing.T) {
	p := &plan{function: function(t, "pressure_gauge_from_absolute"), width: 3}
	if err := p.chooseResults(nil); err != nil {
		t.Fatal(err)
	}
	if err := p.findInputs([]string{"pressure (bar)", "altitude (m)", "note"}); err != nil {
		t.Fatal(err)
	}
	w := newFiller(p)
	b := make([]byte, 0, 1000)
	raw := []byte("1.52,640,\"a \"\"note\"\"\"\r\n")
	w.add(b, raw)
	if n := testing.AllocsPerRun(100, func() { w.add(b, raw) }); n != 0 {
		t.Errorf("%v allocations a row", n)
	}
}
