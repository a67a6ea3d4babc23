package published_test

import (
	"fmt"
	"strings"

	"example.org/zymase/internal/published"
)

func ExampleFind() {
	table, err := published.Find("atmosphere_ashrae")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(table.Status, table.Checks)
	for row := range table.Rows() {
		printed, _ := row.Number("pressure")
		fmt.Println(row.Line, row.Text("altitude"), printed)
	}
	// Output:
	// read atmosphere_at_altitude
	// 10 -500 1074.78
	// 11 500 954.61
	// 12 1000 898.75
	// 13 4000 616.4
}

func ExampleParse() {
	table, err := published.Parse("handbook", strings.NewReader(`# title: Air at height
# source: A. Writer, A Handbook, 2020, table 3
# status: read
# checks: atmosphere_at_altitude
# tolerance: printed; half the last printed digit
altitude (ft),pressure (psi absolute)
5000,12.23
`))
	if err != nil {
		fmt.Println(err)
		return
	}
	tolerance, _ := table.Tolerance("pressure")
	difference, ok := tolerance.Within(12.2281, "12.23")
	fmt.Printf("%.4f %v\n", difference, ok)
	// Output: -0.0019 true
}

func ExampleParse_refused() {
	_, err := published.Parse("handbook", strings.NewReader("# title: Air at height\naltitude (furlong)\n1\n"))
	fmt.Println(err)
	// Output: handbook:2: column "altitude (furlong)": unit "furlong" is not known
}
