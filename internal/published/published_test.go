package published

import (
	"math"
	"strings"
	"testing"

	"example.org/zymase/units"
)

const sample = `# title: A table
# source: A. Writer, A Book, 1999, p. 1
# status: read
# checks: some_function
# tolerance: printed; half the last printed digit
# tolerance share: 0.2 % or 0.05; the stated accuracy
# rows: 2
# sum density: 1996.35
# labels: who
# fixed pressure: 1 bar
temperature (°C),who,density (kg/m³),share
10,Adams,999.7,12
25,"Bond, Carr",996.65,3e1
`

func parse(t *testing.T, text string) *Table {
	t.Helper()
	table, err := Parse("sample", strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return table
}

func TestParse(t *testing.T) {
	table := parse(t, sample)
	if table.Len() != 2 || table.Status != Read || table.Checks != "some_function" || !table.Guarded() {
		t.Errorf("%+v", table)
	}
	if len(table.Fixed) != 1 || table.Fixed[0] != (Fixed{"pressure", "1 bar"}) || !table.Columns[1].Label {
		t.Errorf("%+v", table)
	}
	lines := []int{}
	for row := range table.Rows() {
		lines = append(lines, row.Line)
		if _, err := row.Number("density"); err != nil {
			t.Error(err)
		}
		warm, err := Value(row, "temperature", units.Kelvin)
		if err != nil || warm.In(units.Celsius) < 10 {
			t.Errorf("%v %v", warm, err)
		}
		if _, err := Value(row, "density", units.Kelvin); err == nil {
			t.Error("kg/m³ taken for a temperature")
		}
		if _, err := row.Number("who"); err == nil {
			t.Error("a name taken for a number")
		}
		if row.Text("nothing") != "" {
			t.Error("a column that is not there")
		}
	}
	if len(lines) != 2 || lines[0] != 12 || lines[1] != 13 {
		t.Errorf("lines %v", lines)
	}
}

func TestRefused(t *testing.T) {
	for _, c := range []struct{ old, new, want string }{
		{"# title: A table\n", "", `no head line "# title: …"`},
		{"# source: A. Writer, A Book, 1999, p. 1\n", "", `no head line "# source: …"`},
		{"# status: read\n", "", `no head line "# status: …"`},
		{"# checks: some_function\n", "", `no head line "# checks: …"`},
		{"# status: read", "# status: sure", "sample:3: status"},
		{"# status: read", "# status:", "is not \"# key: value\""},
		{"# status: read", "# status: read\n# status: read", `sample:4: head "status" stands twice`},
		{"# status: read", "# state: read", "is not known"},
		{"# rows: 2", "# rows: 3", "the head says 3 rows, but there are 2"},
		{"1996.35", "1996.36", "adds up to 1996.35"},
		{"sum density", "sum mass", `"mass" is not a column`},
		{"sum density", "sum who", "not a decimal number"},
		{"sum density", "sum", "is not known"},
		{"tolerance share", "tolerance part", `"part" is not a column`},
		{"0.2 % or 0.05", "0.2 % or -1", "want a number above zero"},
		{"0.2 % or 0.05", "0.2 % or 0.05 %", "says one kind twice"},
		{"labels: who", "labels: whom", "is not a column"},
		{"fixed pressure", "fixed share", "is a column too"},
		{"temperature (°C),who,density (kg/m³),share", "temperature (°C);who;density (kg/m³);share", "save with commas"},
		{"(°C)", "(degree)", `unit "degree" is not known`},
		{"share\n", "Share\n", "lower case"},
		{"share\n", "density (kg/m³)\n", "stands twice"},
		{",12\n", "\n", "sample:12: 3 cells, but 4 columns"},
		{",12\n", ",12,\n", "sample:12: 5 cells, but 4 columns"},
		{"\"Bond, Carr\"", "\"Bond, Carr", "sample:13: "},
		{"# labels", "# rival: other\n# labels", "need each other"},
		{sample[strings.Index(sample, "temperature"):], "", "no line of column names"},
		{sample[strings.Index(sample, "10,Adams"):], "", "no rows"},
		{"10,Adams", "10,\x00", "not a text in UTF-8"},
		{"10,Adams", "10,\xff", "not a text in UTF-8"},
		{"25,\"Bond, Carr\",996.65,3e1", "10,Adams,999.7,12", "the same row as line 12"},
	} {
		_, err := Parse("sample", strings.NewReader(strings.Replace(sample, c.old, c.new, 1)))
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%q for %q: %v, want %q", c.new, c.old, err, c.want)
		}
	}
	text := strings.Replace(sample, "# tolerance: printed; half the last printed digit\n# tolerance share: 0.2 % or 0.05; the stated accuracy\n", "", 1)
	if _, err := Parse("sample", strings.NewReader(text)); err == nil || !strings.Contains(err.Error(), "tolerance") {
		t.Errorf("no tolerance: %v", err)
	}
}

func TestTolerance(t *testing.T) {
	for _, c := range []struct {
		text, cell string
		want       float64
	}{
		{"printed; x", "12.3", 0.05},
		{"printed; x", "12", 0.5},
		{"printed; x", "12.30", 0.005},
		{"printed; x", "4.891e-03", 5e-7},
		{"3 printed; x", "-1.5", 0.15},
		{"0.2 %; x", "-50", 0.1},
		{"0.2 % or 0.05; x", "10", 0.05},
		{"0.2 % or 0.05; x", "100", 0.2},
		{"0.25; x", "0", 0.25},
	} {
		tol, err := parseTolerance(c.text)
		if err != nil || math.Abs(tol.Allow(c.cell)-c.want) > 1e-15 {
			t.Errorf("%q of %q: %v, %v, want %v", c.text, c.cell, tol.Allow(c.cell), err, c.want)
		}
	}
	tol, err := parseTolerance("printed; x")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		computed float64
		cell     string
		want     bool
	}{{12.35, "12.3", true}, {12.25, "12.3", true}, {12.3501, "12.3", false}, {12.2499, "12.3", false}, {math.NaN(), "12.3", false}, {12.3, "x", false}} {
		if _, ok := tol.Within(c.computed, c.cell); ok != c.want {
			t.Errorf("%v against %s: %v", c.computed, c.cell, ok)
		}
	}
}

// TestEmbedded reads every table of this package with its guards.
func TestEmbedded(t *testing.T) {
	all, err := All()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) != len(Names()) {
		t.Errorf("%d tables of %d", len(all), len(Names()))
	}
	for _, table := range all {
		if table.Rival == table.Name {
			t.Errorf("%s is its own rival", table.Name)
		}
	}
	if _, err := Find("../table"); err == nil {
		t.Error("a table outside the directory")
	}
}

// FuzzParse: any text is a table that keeps its promises, or a FileError.
func FuzzParse(f *testing.F) {
	f.Add(sample)
	f.Add("\ufeff\"# title: a, b\",,\r\n# source: c\r\n# status: computed\r\n# checks: d\r\n# tolerance: 1; e\r\nf\r\n1\r\n")
	f.Fuzz(func(t *testing.T, text string) {
		table, err := Parse("fuzz", strings.NewReader(text))
		if err != nil {
			if _, ok := err.(*FileError); !ok {
				t.Fatalf("%T", err)
			}
			return
		}
		if table.Title == "" || table.Source == "" || table.Status == "" || table.Checks == "" || table.Len() == 0 {
			t.Fatalf("%+v", table)
		}
		for row := range table.Rows() {
			if len(row.Cells) != len(table.Columns) {
				t.Fatalf("%d cells", len(row.Cells))
			}
			for _, c := range table.Columns {
				v, err := row.Number(c.Name)
				if err != nil {
					continue
				}
				tol, _ := table.Tolerance(c.Name)
				if allowed := tol.Allow(row.Text(c.Name)); math.IsNaN(v+allowed) || math.IsInf(v+allowed, 0) || allowed < 0 {
					t.Fatalf("%v %v", v, allowed)
				}
			}
		}
	})
}
