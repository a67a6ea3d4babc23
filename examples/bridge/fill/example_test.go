package fill_test

import (
	"fmt"
	"os"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/fill"
)

// Gauge readings of a keg in bar, at the hall's altitude.
func ExampleRun() {
	f, err := catalogue.Find("pressure_absolute_from_gauge")
	if err != nil {
		fmt.Println(err)
		return
	}
	in := strings.NewReader("day,gauge pressure (bar)\nMon,1.2\nTue,\n")
	count, err := fill.Run(os.Stdout, in, f, fill.Options{
		Fixed:   map[string]string{"altitude": "0 m"},
		Outputs: []string{"pressure (kPa)"},
	})
	fmt.Println(count.Failed, "of", count.Rows, "rows failed", err)
	// Output:
	// day,gauge pressure (bar),pressure (kPa),error
	// Mon,1.2,221.325,
	// Tue,,,gauge_pressure is empty
	// 1 of 2 rows failed <nil>
}
