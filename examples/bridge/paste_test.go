package main

import (
	"fmt"
	"html"
	"io"
	"math"
	"net/http"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/loopback"
	"example.org/zymase/internal/check"
)

// paster types what it reads into a new document: on each line cells of row 1,
// then the formula, and writes what the cell of the formula shows.
const paster = `
Sub Paste(source As String, target As String)
	Dim doc As Object, sheet As Object, cell As Object
	Dim hidden(0) As New com.sun.star.beans.PropertyValue
	hidden(0).Name = "Hidden"
	hidden(0).Value = True
	doc = StarDesktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, hidden())
	sheet = doc.Sheets.getByIndex(0)
	Dim text As String, parts, i As Integer
	Open source For Input As #1
	Open target For Output As #2
	Do While Not Eof(1)
		Line Input #1, text
		parts = Split(text, "|")
		For i = 0 To UBound(parts) - 1
			cell = sheet.getCellByPosition(i, 0)
			cell.FormulaLocal = parts(i)
		Next i
		cell = sheet.getCellByPosition(0, 1)
		cell.FormulaLocal = parts(UBound(parts))
		Print #2, cell.String & "|" & Str(cell.Value)
		cell.FormulaLocal = ""
	Loop
	Close #2
	Close #1
	doc.close(True)
	StarDesktop.terminate()
End Sub
`

var (
	entryOfPage   = regexp.MustCompile(`(?s)<h2 id="(\w+)">(.*?)(?:<h2|</body>)`)
	formulaOfPage = regexp.MustCompile(`<pre>(=[^<]*)</pre>`)
)

// Each formula that the index page offers for Calc, pasted into a new document
// with the inputs' examples in the cells it names, shows what the library says.
func TestPastedFormulas(t *testing.T) {
	check.Whole(t)
	o := findOffice(t)
	o.install(t, map[string]string{"Paster": paster})
	address, _ := serveCells(t)
	r, err := (&http.Client{Timeout: 5 * time.Second}).Get("http://" + address + "/")
	if err != nil {
		t.Fatal(err)
	}
	defer r.Body.Close()
	page, err := io.ReadAll(r.Body)
	if err != nil {
		t.Fatal(err)
	}
	offered := map[string][]string{} // by function
	for rest := string(page); ; {
		m := entryOfPage.FindStringSubmatchIndex(rest)
		if m == nil {
			break
		}
		name := rest[m[2]:m[3]]
		for _, f := range formulaOfPage.FindAllStringSubmatch(rest[m[4]:m[5]], -1) {
			offered[name] = append(offered[name], html.UnescapeString(f[1]))
		}
		rest = rest[m[5]:]
	}

	var lines, labels, texts []string
	var want []float64
	all := catalogue.All()
	for i := range all {
		f := &all[i]
		in, out, typed := exampleOf(f)
		if err := f.Call(in, out); err != nil {
			t.Fatalf("%s: %v", f.Name, err)
		}
		formulas := offered[f.Name]
		if len(formulas) < 2*len(f.Outputs) {
			t.Fatalf("%s: the page offers %d formulas for %d outputs", f.Name, len(formulas), len(f.Outputs))
		}
		for j, v := range out { // for each output one for Calc, one for Excel
			lines = append(lines, typed+formulas[2*j])
			labels, want, texts = append(labels, f.Name+" "+f.Outputs[j].Name), append(want, v), append(texts, "")
			if f.Outputs[j].IsText() {
				texts[len(texts)-1] = f.Outputs[j].Text(v)
			}
		}
		if len(formulas) > 2*len(f.Outputs) {
			lines = append(lines, typed+formulas[2*len(f.Outputs)])
			labels, want, texts = append(labels, f.Name+" as XML"), append(want, out[0]), append(texts, "")
		}
	}
	source, target := filepath.Join(o.docs, "lines.txt"), filepath.Join(o.docs, "shown.txt")
	o.write(t, source, strings.Join(lines, "\n")+"\n")
	begin := time.Now()
	o.run(t, runLimit, fmt.Sprintf(`macro:///Standard.Paster.Paste("%s","%s")`, source, target))
	t.Logf("%d formulas pasted in %v", len(lines), time.Since(begin))
	shown := strings.Split(strings.TrimSpace(string(o.read(t, target))), "\n")
	if len(shown) != len(lines) {
		t.Fatalf("%d cells, want %d", len(shown), len(lines))
	}
	for i, line := range shown {
		text, value, _ := strings.Cut(strings.TrimSpace(line), "|")
		if texts[i] != "" {
			if text != texts[i] {
				t.Errorf("%s: the cell shows %q, want %q\n%s", labels[i], text, texts[i], lines[i])
			}
			continue
		}
		got, err := strconv.ParseFloat(strings.TrimSpace(value), 64)
		if err != nil || text == "" || strings.HasPrefix(text, "ERROR") || strings.HasPrefix(text, "Err:") ||
			math.Abs(got-want[i]) > 1e-9*math.Abs(want[i])+1e-12 {
			t.Errorf("%s: the cell shows %q, want %v\n%s", labels[i], line, want[i], lines[i])
		}
	}
}

// exampleOf returns the numbers of a call by the examples for what the formula
// has cells for and the defaults for the rest, and what is typed into the cells.
func exampleOf(f *catalogue.Function) (in, out []float64, typed string) {
	cells := map[string]bool{}
	for _, ref := range loopback.Cells(f) {
		cells[ref.Input] = true
	}
	for i := range f.Inputs {
		p := &f.Inputs[i]
		if !cells[p.Name] {
			in = append(in, p.Default)
			continue
		}
		in = append(in, p.Example)
		typed += p.Text(p.Example) + "|"
	}
	return in, make([]float64, len(f.Outputs)), typed
}
