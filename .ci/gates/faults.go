package main

import "strings"

// A fault is a change of one file that must not get through, and what stops it.
type fault struct {
	kind     string
	file     string
	old, new string    // old stands once in the file
	also     [2]string // a second change of the same file
	gate     []string  // the narrowest command
	says     string    // what the gate says of this fault
}

func sh(command string) []string { return strings.Fields(command) }

var faults = []fault{
	{
		kind: "constant", file: "gravity/density_water.go", old: "16.952577", new: "16.962577",
		gate: sh("go test -short -run ^TestWaterDensity ./gravity"), says: "--- FAIL: TestWaterDensity",
	},
	{
		kind: "literal without a test", file: "nutrient/law/limit.go", old: "*(1+1e-12)", new: "*(1+1e-12+1e-30)",
		gate: sh("go run ./.ci/constants -quick -most 3 ./nutrient/law"), says: "Limit.Allows: 1e-30",
	},
	{
		kind: "reason for no literal", file: ".ci/constants/left/nutrient-law.tsv", old: "Limit.Allows\t1e-12", new: "Limit.Allows\t1e-11",
		gate: sh("go run ./.ci/constants -check ./nutrient/law"), says: "no 1e-11 in Limit.Allows of limit.go",
	},
	{
		kind: "ledger entry missing", file: "gravity/hydrometer.go", old: "const glassExpansion = 25e-6", new: "const glassExpansion, borosilicate = 25e-6, 10.5e-6",
		gate: sh("go test -short -run ^TestLedger ./examples/verify"), says: "borosilicate holds 10.5e-6 and has no entry",
	},
	{
		kind: "ledger entry changed", file: "internal/published/ledger/constants.tsv", old: "gravity/hydrometer.go\tglassExpansion\t25e-6\t",
		new:  "gravity/hydrometer.go\tglassExpansion\t26e-6\t",
		gate: sh("go test -short -run ^TestLedger ./examples/verify"), says: "the ledger has 26e-6, the source 25e-6",
	},
	{
		kind: "table cell", file: "internal/published/tables/sucrose_crc.csv", old: "\n5,1017.8\n", new: "\n5,1018.8\n",
		gate: sh("go test -short -run ^TestEmbedded$ ./internal/published"), says: "adds up to",
	},
	{
		kind: "table cell with its sum", file: "internal/published/tables/freezing_point_sucrose_ramsay.csv", old: "\n3.42,-0.185", new: "\n3.42,-0.285",
		also: [2]string{"temperature: -0.277", "temperature: -0.377"},
		gate: sh("go test -short -run ^TestTables$/^freezing ./examples/verify"), says: "OUT",
	},
	{
		kind: "missing row", file: "internal/published/tables/sucrose_crc.csv", old: "\n5,1017.8\n", new: "\n",
		gate: sh("go test -short -run ^TestEmbedded$ ./internal/published"), says: "the head says 61 rows, but there are 60",
	},
	{
		kind: "tolerance", file: "internal/published/tables/sucrose_crc.csv", old: "tolerance: 0.037 %", new: "tolerance: 3.7 %",
		gate: sh("go test -short -run ^TestTolerancesAreUsed$ ./examples/verify"), says: "sucrose_crc, density: 3.7 %",
	},
	{
		kind: "law's date", file: "nutrient/law/table.go", old: `cfr246       = "27 CFR 24.246 (2015 edition)"`, new: `cfr246       = "27 CFR 24.246 (2016 edition)"`,
		gate: sh("go test -short ./nutrient/law"), says: "2015 edition",
	},
	{
		kind: "law's figure", file: "nutrient/law/table.go", old: `us("8", poundPerThousandGallons, "0.96 g/L"`, new: `us("9", poundPerThousandGallons, "0.96 g/L"`,
		gate: sh("go test -short ./nutrient/law"), says: "--- FAIL",
	},
	{
		kind: "HTML", file: "examples/seltzer/page.html", old: "<style>\n", new: `<link rel="stylesheet" href="//host/x.css"><style>` + "\n",
		gate: sh("go test -short -run ^TestPage$ ./examples/seltzer"), says: "it asks for something outside",
	},
	{
		kind: "race", file: "units/mass.go", old: "package units\n",
		new:  "package units\n\nfunc init() {\n\tn, done := 0, make(chan int)\n\tgo func() { n++; done <- 1 }()\n\tn++\n\t<-done\n}\n",
		gate: sh("go test -race -short -run ^TestRounding ./units"), says: "DATA RACE",
	},
	{
		kind: "slow", file: "gravity/density_ethanol.go", old: "\tvar m mixture\n\tm.at(c)\n\treturn kgPerM3(m.density(p / 100)), nil",
		new:  "\tvar m mixture\n\tfor range 8 {\n\t\tm.at(c)\n\t}\n\treturn kgPerM3(m.density(p / 100)), nil",
		gate: sh("go run .ci/ratios.go -margin 2 -count 3 -only gravity.EthanolDensity"), says: "OVER",
	},
	{
		kind: "allocation", file: "gravity/density_ethanol.go", old: "\tvar m mixture\n\tm.at(c)\n\treturn kgPerM3(m.density(p / 100)), nil",
		new: "\tm := new(mixture)\n\tm.at(c)\n\tkept <- m\n\treturn kgPerM3((<-kept).density(p / 100)), nil\n}\n\nvar kept = make(chan " +
			"*mixture, 1)\n\nfunc init() {",
		gate: sh("go test -short -run ^TestNoAllocations$ ./gravity"), says: "alloc",
	},
	{
		kind: "name in the public face", file: "internal/documents/testdata/api.txt", old: "gravity: func WaterDensity(", new: "gravity: func DensityOfWater(",
		gate: sh("go test -short -run ^TestAPI$ ./internal/documents"), says: "DensityOfWater",
	},
	{
		kind: "name in the README", file: "README.md", old: "| `material.Find`, `material.ByLabel` |", new: "| `material.Find`, `material.ByLable` |",
		gate: sh("go test -short -run ^TestREADMENamesExist$ ./internal/documents"), says: "ByLable",
	},
	{
		kind: "import upwards", file: "units/mass.go", old: "package units\n", new: "package units\n\nimport _ \"example.org/zymase/internal/numeric\"\n",
		gate: sh("go test -short -run ^TestImportsGoDown$ ./internal"), says: "internal/numeric",
	},
	{
		kind: "form of the source", file: "gravity/hydrometer.go", old: "const glassExpansion = 25e-6", new: "const glassExpansion  = 25e-6",
		gate: []string{"bash", "-c", `unformatted=$(gofmt -l .); [ -z "$unformatted" ] || { echo "not gofmt-formatted: $unformatted"; exit 1; }`},
		says: "gravity/hydrometer.go",
	},
	{
		kind: "a module too many", file: "go.sum", old: "github.com/shopspring/decimal v1.6.0/go.mod",
		new:  "golang.org/x/text v0.20.0/go.mod h1:D4IsuqiFMhST5bX19pQ9ikHC2GsaKyk/oF+pn3ducp4=\ngithub.com/shopspring/decimal v1.6.0/go.mod",
		gate: sh("go mod tidy -diff"), says: "-golang.org/x/text",
	},
}
