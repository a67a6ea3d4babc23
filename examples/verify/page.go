package main

import (
	_ "embed"
	"fmt"
	"html/template"
	"math"
	"os"
	"os/exec"
	"runtime/debug"
	"strings"
	"time"
)

//go:embed page.html
var pageText string

var pageForm = template.Must(template.New("page").Parse(pageText))

// A Page is a report that can be filed: what was checked, with what, and how near it came.
type Page struct {
	Version, Commit, Go, When string
	Verdict                   string
	Rows, Failed              int
	Tables                    []PageTable
}

// A PageTable is a table with its plot of residuals.
type PageTable struct {
	Result
	Verdict  string
	With     string // the inputs that are fixed
	WorstRow []string
	Bad      [][]string // the rows that are out
	Plots    []Plot
}

// writePage writes the report as one file that needs nothing else. It does not write over another.
func writePage(path string, r *Report) error {
	p := Page{Failed: r.Failed, When: time.Now().Format("2006-01-02 15:04 MST")}
	p.Version, p.Commit, p.Go = built()
	for i := range r.Tables {
		t := &r.Tables[i]
		p.Rows += t.Count
		one := PageTable{Result: *t, Verdict: verdict(t.Failed, t.Count), With: cells(t.Fixed), Plots: plots(t)}
		one.WorstRow = said(&t.Rows[t.Worst])
		for k := range t.Rows {
			if !t.Rows[k].OK {
				one.Bad = append(one.Bad, said(&t.Rows[k]))
			}
		}
		p.Tables = append(p.Tables, one)
	}
	p.Verdict = verdict(p.Failed, p.Rows)
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	if err := pageForm.Execute(f, p); err != nil {
		f.Close()
		return err
	}
	return f.Close()
}

func verdict(failed, rows int) string {
	if failed == 0 {
		return fmt.Sprintf("Pass: %s within tolerance", plural(rows, "row"))
	}
	return fmt.Sprintf("Fail: %d of %s out of tolerance", failed, plural(rows, "row"))
}

// said is a row in words, a line each.
func said(r *Row) []string {
	lines := []string{cells(r.Labels, r.Inputs)}
	r.values(func(text string) { lines = append(lines, text) })
	return lines
}

// built is the version, the commit and the Go that the program was built from.
func built() (version, commit, toolchain string) {
	version, commit = "not released", "not known"
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return version, commit, ""
	}
	if v := info.Main.Version; v != "" && v != "(devel)" {
		version = v
	}
	changed := ""
	for _, s := range info.Settings {
		switch {
		case s.Key == "vcs.revision":
			commit = s.Value
		case s.Key == "vcs.modified" && s.Value == "true":
			changed = ", changed since"
		}
	}
	if commit == "not known" { // go run does not say
		if out, err := exec.Command("git", "describe", "--always", "--dirty=, changed since", "--abbrev=40", "--exclude=*").Output(); err == nil {
			commit = strings.TrimSpace(string(out))
		}
	}
	return version, commit + changed, info.GoVersion
}

// A Plot is what each row of a column is off, in parts of its tolerance, against the first input
// that is a number, or by the order of the rows.
type Plot struct {
	Title, Axis string
	Low, High   string // ends of the axis
	Most        string // the upper end of the other one, in tolerances
	Band        Span   // where a row is within its tolerance
	Points      []Point
}

// A Span is a height of the picture, from the top.
type Span struct{ Top, Height float64 }

// A Point is a row in the picture.
type Point struct {
	X, Y  float64
	Out   bool
	Title string
}

const plotWide, plotHigh = 560.0, 180.0

func plots(t *Result) []Plot {
	var all []Plot
	for k, a := range t.Tolerances {
		p := Plot{Title: a.Column, Axis: "row of the table"}
		var xs, ys []float64
		var rows []*Row
		by := -1
		for i := range t.Rows {
			r := &t.Rows[i]
			if r.Error != "" || len(r.Values) <= k || !(r.Values[k].Tolerance > 0) {
				continue
			}
			rows = append(rows, r)
			ys = append(ys, r.Values[k].Difference/r.Values[k].Tolerance)
		}
		if len(rows) == 0 {
			continue
		}
		for c := range rows[0].Inputs {
			if x, ok := axis(rows, c); ok {
				by, xs = c, x
				break
			}
		}
		if by < 0 {
			for i := range rows {
				xs = append(xs, float64(i+1))
			}
		} else {
			p.Axis = strings.ReplaceAll(rows[0].Inputs[by].Name, "_", " ")
			if u := rows[0].Inputs[by].Unit; u != "" {
				p.Axis += ", " + u
			}
		}
		low, high, most := xs[0], xs[0], 1.25
		for i := range xs {
			low, high, most = min(low, xs[i]), max(high, xs[i]), max(most, 1.1*math.Abs(ys[i]))
		}
		p.Low, p.High, p.Most = short(low), short(high), short(most)
		p.Band = Span{Top: plotHigh * (1 - 1/most) / 2, Height: plotHigh / most}
		for i, r := range rows {
			x := plotWide / 2
			if high > low {
				x = plotWide * (xs[i] - low) / (high - low)
			}
			p.Points = append(p.Points, Point{
				X: round1(x), Y: round1(plotHigh * (1 - ys[i]/most) / 2), Out: !r.Values[k].OK,
				Title: fmt.Sprintf("%s: %s off by %s, of %s allowed", cells(r.Labels, r.Inputs), a.Column, signed(r.Values[k].Difference), short(r.Values[k].Tolerance)),
			})
		}
		all = append(all, p)
	}
	return all
}

// axis reads an input of every row as a number; false if one is a word, or all are the same.
func axis(rows []*Row, c int) (xs []float64, ok bool) {
	for _, r := range rows {
		var x float64
		if _, err := fmt.Sscan(r.Inputs[c].Text, &x); err != nil {
			return nil, false
		}
		xs = append(xs, x)
		ok = ok || x != xs[0]
	}
	return xs, ok
}

func short(x float64) string { return fmt.Sprintf("%.3g", x) }

func round1(x float64) float64 { return math.Round(10*x) / 10 }
