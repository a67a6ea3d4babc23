package main

import (
	"bytes"
	"context"
	"encoding/csv"
	"fmt"
	"io"
	"log"
	"math"
	"net/http"
	"strconv"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"example.org/zymase/examples/bridge/basic"
	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/fill"
	"example.org/zymase/examples/bridge/loopback"
	"example.org/zymase/internal/check"
)

// counter counts requests by method.
type counter struct {
	http.Handler
	get, head, options, other atomic.Int64
}

func (c *counter) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	switch r.Method {
	case "GET":
		c.get.Add(1)
	case "HEAD":
		c.head.Add(1)
	case "OPTIONS":
		c.options.Add(1)
	default:
		c.other.Add(1)
	}
	c.Handler.ServeHTTP(w, r)
}

// serveCells serves on a free port until the test ends.
func serveCells(t *testing.T) (address string, requests *counter) {
	t.Helper()
	l, at, err := loopback.Listen("127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	h, err := loopback.New(at)
	if err != nil {
		t.Fatal(err)
	}
	requests = &counter{Handler: h}
	ctx, stop := context.WithCancel(context.Background())
	done := make(chan error)
	go func() { done <- loopback.Serve(ctx, l, loopback.Server(requests, log.New(io.Discard, "", 0))) }()
	t.Cleanup(func() {
		stop()
		if err := <-done; err != nil {
			t.Error(err)
		}
	})
	return at.String(), requests
}

func cells(t *testing.T, file []byte) [][]string {
	t.Helper()
	r := csv.NewReader(bytes.NewReader(file))
	r.FieldsPerRecord = -1
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// gaugeAt is what the library says the cells are to hold.
func gaugeAt(t *testing.T, pressure, altitude float64) float64 {
	t.Helper()
	f, err := catalogue.Find("pressure_gauge_from_absolute")
	if err != nil {
		t.Fatal(err)
	}
	var out [1]float64
	if err := f.Call([]float64{pressure, altitude}, out[:]); err != nil {
		t.Fatal(err)
	}
	return out[0]
}

const manyCells = 1000

// checkColumn holds the numbers of a column to those of the library. A cell
// shows 15 digits at most.
func checkColumn(t *testing.T, rows [][]string, column int) {
	t.Helper()
	if len(rows) < manyCells {
		t.Fatalf("%d rows, want %d", len(rows), manyCells)
	}
	bad := 0
	for i, row := range rows[:manyCells] {
		want := gaugeAt(t, 150+float64(i)/8, float64(i))
		got, err := strconv.ParseFloat(row[column], 64)
		if err != nil || math.Abs(got-want) > 1e-6 {
			if bad++; bad <= 5 {
				t.Errorf("row %d: %q, want %v", i+1, row[column], want)
			}
		}
	}
	if bad > 5 {
		t.Errorf("%d bad cells", bad)
	}
}

// cellRows are rows of a pressure, an altitude, and the formula.
func cellRows(formula func(row int) string) [][]string {
	var rows [][]string
	for i := range manyCells {
		rows = append(rows, []string{fmt.Sprint(150 + float64(i)/8), fmt.Sprint(i), formula(i + 1)})
	}
	return rows
}

// A sheet of 1,000 cells that ask the server themselves.
func TestCellsAskTheServer(t *testing.T) {
	o := findOffice(t)
	o.install(t, map[string]string{"Exporter": exporter})
	address, requests := serveCells(t)
	base := strconv.Quote("http://" + address)
	doc := o.document(t, "cells.fods", cellRows(func(row int) string {
		return "=" + loopback.OpenDocument.Number(loopback.Question{
			Base: base, Function: "pressure_gauge_from_absolute",
			Inputs: []loopback.Reference{
				{Input: "pressure", Cell: fmt.Sprintf("[.A%d]", row)},
				{Input: "altitude", Cell: fmt.Sprintf("[.B%d]", row)},
			},
		})
	}))
	begin := time.Now()
	file := o.export(t, doc)
	t.Logf("%d cells by the server in %v, program start included; %d GET, %d HEAD, %d OPTIONS requests",
		manyCells, time.Since(begin), requests.get.Load(), requests.head.Load(), requests.options.Load())
	checkColumn(t, cells(t, file), 2)
	// Loading asks for each cell once; following the links asks once more.
	if got := requests.get.Load(); got < manyCells || got > 2*manyCells {
		t.Errorf("%d GET requests for %d cells", got, manyCells)
	}
	if h, p, x := requests.head.Load(), requests.options.Load(), requests.other.Load(); h > 2*manyCells || p > 2*manyCells || x > 0 {
		t.Errorf("%d HEAD, %d OPTIONS, %d other requests", h, p, x)
	}
}

// The same 1,000 cells with plain function names, by the Basic module and the
// ordinary command line, no setting changed.
func TestCellsAskTheModule(t *testing.T) {
	check.Whole(t)
	o := findOffice(t)
	address, requests := serveCells(t)
	o.install(t, map[string]string{"Zymase": module(t, address)})
	doc := o.document(t, "module.fods", cellRows(func(row int) string {
		return fmt.Sprintf("=PRESSURE_GAUGE_FROM_ABSOLUTE([.A%d];[.B%d])", row, row)
	}))
	begin := time.Now()
	file := o.convert(t, doc)
	t.Logf("%d cells by the module in %v, program start included; %d GET, %d HEAD, %d OPTIONS requests",
		manyCells, time.Since(begin), requests.get.Load(), requests.head.Load(), requests.options.Load())
	checkColumn(t, cells(t, file), 2)
	if got := requests.get.Load(); got < manyCells || got > 2*manyCells {
		t.Errorf("%d GET requests for %d cells", got, manyCells)
	}
}

func module(t *testing.T, address string) string {
	t.Helper()
	text, err := basic.Module(address, catalogue.All())
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// What the module does with all that a cell may hold.
func TestModuleInputs(t *testing.T) {
	check.Whole(t)
	o := findOffice(t)
	address, _ := serveCells(t)
	o.install(t, map[string]string{"Zymase": module(t, address)})
	formulas := []struct{ formula, want string }{
		{"=PRESSURE_GAUGE_FROM_ABSOLUTE(201.325)", "100"},
		{"=PRESSURE_GAUGE_FROM_ABSOLUTE(201.325;0)", "100"},
		{`=PRESSURE_GAUGE_FROM_ABSOLUTE("2.01325 bar absolute";"0 m")`, "100"},
		{`=ROUND(PRESSURE_GAUGE_FROM_ABSOLUTE(0.5*402.65);6)+1`, "101"},
		{`=ATMOSPHERE_AT_ALTITUDE("2100 ft")>93`, "TRUE"},
		{`=PRESSURE_GAUGE_FROM_ABSOLUTE(1E21)`, "ERROR: "},
		{`=PRESSURE_GAUGE_FROM_ABSOLUTE(1E-21)`, "-101.325"},
		{`=PRESSURE_GAUGE_FROM_ABSOLUTE("two")`, "ERROR: pressure: "},
		{`=PRESSURE_GAUGE_FROM_ABSOLUTE([.Z1])`, "ERROR: pressure is empty"},
		{`=PRESSURE_GAUGE_FROM_ABSOLUTE(201.325;[.Z1])`, "ERROR: altitude is empty"},
		{`=PRESSURE_GAUGE_FROM_ABSOLUTE("")`, "ERROR: pressure is empty"},
		{`=PRESSURE_GAUGE_FROM_ABSOLUTE()`, "ERROR: pressure is missing"},
		{`=PRESSURE_GAUGE_FROM_ABSOLUTE([.Z1:.Z2])`, "ERROR: pressure: "},
		{`=PRESSURE_GAUGE_FROM_ABSOLUTE("1&altitude=5")`, "ERROR: pressure: "},
	}
	var rows [][]string
	for _, f := range formulas {
		rows = append(rows, []string{f.formula})
	}
	got := cells(t, o.convert(t, o.document(t, "inputs.fods", rows)))
	for i, f := range formulas {
		if i >= len(got) || !strings.HasPrefix(got[i][0], f.want) {
			t.Errorf("%s is %q, want %s", f.formula, got[i], f.want)
		}
	}
}

// With no bridge running the cells say so.
func TestModuleWithoutBridge(t *testing.T) {
	check.Whole(t)
	o := findOffice(t)
	o.install(t, map[string]string{"Zymase": module(t, "127.0.0.1:9")})
	got := cells(t, o.convert(t, o.document(t, "alone.fods", [][]string{{"=ATMOSPHERE_AT_ALTITUDE(0)"}})))
	if !strings.HasPrefix(got[0][0], "ERROR: no answer from http://127.0.0.1:9/") {
		t.Errorf("the cell shows %q", got[0][0])
	}
}

// Where the decimal mark is a comma, a cell joined to an address has a comma,
// and a column comes as CSV with commas: all three ways give the same number.
func TestCommaLocale(t *testing.T) {
	check.Whole(t)
	o := findOfficeIn(t, "de-DE")
	address, _ := serveCells(t)
	o.install(t, map[string]string{"Exporter": exporter, "Zymase": module(t, address)})
	q := loopback.Question{
		Base: strconv.Quote("http://" + address), Function: "pressure_gauge_from_absolute",
		Inputs: []loopback.Reference{{Input: "pressure", Cell: "[.A1]"}},
	}
	doc := o.document(t, "comma.fods", [][]string{{
		"201.825", "=1+" + loopback.OpenDocument.Number(q), "=1+PRESSURE_GAUGE_FROM_ABSOLUTE([.A1])",
		"=1+" + loopback.OpenDocument.XML(q, "1"),
		`=1+NUMBERVALUE(COM.MICROSOFT.WEBSERVICE("http://` + address + `/v1/pressure_gauge_from_absolute?pressure="&[.A1]);".")`,
	}})
	row := cells(t, o.export(t, doc))[0]
	for i, got := range row {
		want := "101,5"
		if i == 0 {
			want = "201,825"
		}
		if got != want {
			t.Errorf("cell %d is %q, want %s", i+1, got, want)
		}
	}
	head := o.document(t, "column.fods", [][]string{{"reading (°F)"}, {"64.5"}, {"-3.25"}})
	column := strings.ReplaceAll(string(o.convert(t, head)), "reading", "temperature")
	var out strings.Builder
	f, err := catalogue.Find("convert_temperature")
	if err != nil {
		t.Fatal(err)
	}
	if _, err := fill.Run(&out, strings.NewReader(column), f, fill.Options{DecimalComma: true, Outputs: []string{"celsius"}}); err != nil {
		t.Fatalf("%q: %v", column, err)
	}
	const want = "\"temperature (°F)\",celsius (°C),error\n\"64,5\",\"18,0555555556\",\n\"-3,25\",\"-19,5833333333\",\n"
	if got := strings.ReplaceAll(out.String(), "\r\n", "\n"); got != want {
		t.Errorf("filled %q, want %q", got, want)
	}
}
