package loopback

import (
	"bytes"
	_ "embed"
	"html/template"
	"strconv"

	"example.org/zymase/examples/bridge/catalogue"
)

//go:embed index.html
var indexText string

var indexPage = template.Must(template.New("index").Parse(indexText))

type indexEntry struct {
	catalogue.Function
	Inputs   []indexInput
	Formulas []indexFormula
	XML      string
}

type indexInput struct {
	catalogue.Input
	Cell, Least, Most, Default, Example string
}

type indexFormula struct{ Output, Calc, Excel string }

// index writes the page that lists the functions.
func index(address string, all []catalogue.Function) ([]byte, error) {
	page := struct {
		Address string
		Entries []indexEntry
	}{Address: address}
	for i := range all {
		page.Entries = append(page.Entries, entry(address, &all[i]))
	}
	var b bytes.Buffer
	err := indexPage.Execute(&b, page)
	return b.Bytes(), err
}

func entry(address string, f *catalogue.Function) indexEntry {
	e := indexEntry{Function: *f}
	refs := Cells(f)
	cells := map[string]string{}
	for _, r := range refs {
		cells[r.Input] = r.Cell
	}
	for i := range f.Inputs {
		in := indexInput{Input: f.Inputs[i], Cell: cells[f.Inputs[i].Name]}
		in.Least, in.Most, in.Example = in.Text(in.Min), in.Text(in.Max), in.Text(in.Input.Example)
		if in.HasDefault {
			in.Default = in.Text(in.Input.Default)
		}
		e.Inputs = append(e.Inputs, in)
	}
	q := Question{Base: strconv.Quote(address), Function: f.Name, Inputs: refs}
	only, one := f.OnlyNumber()
	for i := range f.Outputs {
		if q.Output = f.Outputs[i].Name; one && i == only {
			q.Output = ""
		}
		formula := indexFormula{
			Output: catalogue.Head(f.Outputs[i].Name, f.Outputs[i].Unit),
			Calc:   "=" + Calc.Number(q), Excel: "=" + Excel.Number(q),
		}
		if f.Outputs[i].IsText() {
			formula.Calc, formula.Excel = "="+Calc.Text(q), "="+Excel.Text(q)
		}
		e.Formulas = append(e.Formulas, formula)
	}
	if len(f.Outputs) > 1 {
		q.Output = ""
		e.XML = "=" + Calc.XML(q, "1")
	}
	return e
}
