package fill

import (
	"encoding/csv"
	"strings"
	"testing"

	"example.org/zymase/examples/bridge/catalogue"
)

// A verdict and a caution are columns like any other: words, quoted where they hold a
// delimiter, or left out by naming the results that are wanted.
func TestTextColumns(t *testing.T) {
	f, err := catalogue.Find("co2_pressure")
	if err != nil {
		t.Fatal(err)
	}
	run := func(o Options) [][]string {
		var out strings.Builder
		count, err := Run(&out, strings.NewReader("temperature (°C),volumes (vol CO2),rating (bar gauge)\n4,2.9,4\n4,2.9,1\n4,1,0\n99,2.9,4\n"), f, o)
		if err != nil || count != (Count{4, 1}) {
			t.Fatalf("%+v, %v", count, err)
		}
		r := csv.NewReader(strings.NewReader(out.String()))
		if o.Semicolon {
			r.Comma = ';'
		}
		rows, err := r.ReadAll() // refuses rows of unlike length
		if err != nil {
			t.Fatal(err)
		}
		return rows
	}
	rows := run(Options{})
	if got := strings.Join(rows[0][5:], "|"); got != "verdict|caution|error" {
		t.Errorf("heads %s", got)
	}
	for i, want := range [][2]string{
		{"within the rating given", "Vessels under pressure can burst."},
		{"over the rating given", "Above the rating given: do not fill, warm or move it so."},
		{"unrated", "no regulator can set it"},
		{"", ""},
	} {
		row := rows[1+i]
		if row[5] != want[0] || !strings.Contains(row[6], want[1]) || (row[6] == "") != (row[7] != "") {
			t.Errorf("row %d: %q", 1+i, row[5:])
		}
	}
	if rows := run(Options{Outputs: []string{"verdict", "gauge_pressure (bar gauge)"}}); strings.Join(rows[0][3:],
		"|") != "verdict|gauge_pressure (bar gauge)|error" || rows[2][3] != "over the rating given" {
		t.Errorf("%q", rows)
	}
}
