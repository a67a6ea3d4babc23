// Package sheet writes a worked sheet in the open document format, as one plain
// XML file, whose cells ask the bridge.
//
//	text, err := sheet.Write("127.0.0.1:8460")
//
// It is the plan of one batch: what is wanted in the coloured cells, and under
// them what follows, each figure one question to the bridge. Change a coloured
// cell, and the others ask again. Beside each answer stands the figure as it was
// when the sheet was written, since a spreadsheet shows Err:540 until the user
// lets the document follow its links.
package sheet

import (
	"fmt"

	"example.org/zymase/examples/bridge/ask"
	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/loopback"
	"example.org/zymase/examples/bridge/number"
)

// Write returns the sheet for a bridge at address. The error says which line of
// the sheet has no answer.
func Write(address string) ([]byte, error) { return write(address, batch()) }

// A line is one row: a label, a figure, its unit, a remark.
type line struct {
	label, unit, remark string
	name                string // of the cell, for other lines
	places              int    // shown after the point

	value *float64 // what the user may change
	text  string   // the same, if it is not a number

	function, output, in string // a question, its output, the unit wanted
	inputs               []input
	formula              string // plain arithmetic, as a person types it
	compute              func(get func(name string) float64) float64
}

// input is an input of a function and the name of the cell that holds it.
type input struct{ name, cell string }

// cell is a line as it is written.
type cell struct {
	line
	row     int
	formula string
	shown   string // what the cell shows, and holds
	words   bool   // that is a text which the bridge gives
	long    bool   // and one of several sentences
	titles  bool
}

// results heads the first figures that follow from what is wanted.
const results = "What follows"

// heading and note are lines without a figure.
func heading(text string) line { return line{label: text} }
func note(text string) line    { return line{remark: text} }

// solve computes every line as the spreadsheet will.
func solve(address string, lines []line) ([]cell, error) {
	values := map[string]float64{}
	texts := map[string]string{}
	get := func(name string) float64 { return values[name] }
	var cells []cell
	for i, l := range lines {
		c := cell{line: l, row: i + 1, titles: l.label == results}
		switch {
		case l.value != nil:
			values[l.name] = *l.value
		case l.text != "":
			texts[l.name] = l.text
			c.shown = l.text
		case l.function != "":
			r, out, err := l.answer(values, texts)
			if err != nil {
				return nil, fmt.Errorf("line %d, %s: %w", c.row, l.label, err)
			}
			if c.words = r.IsText(); c.words {
				c.shown, c.long = r.Text(out), l.output == "caution"
				c.formula = loopback.OpenDocument.Text(l.question())
				break
			}
			values[l.name] = r.Of(out)
			c.formula = loopback.OpenDocument.Number(l.question())
		case l.formula != "":
			values[l.name] = l.compute(get)
			c.formula = l.formula
		}
		if v, ok := values[l.name]; ok && l.name != "" {
			c.shown = string(number.Append(nil, v))
		}
		cells = append(cells, c)
	}
	return cells, nil
}

func (l *line) question() loopback.Question {
	q := loopback.Question{Base: addressName, Function: l.function, Output: l.output, Unit: l.in}
	for _, in := range l.inputs {
		q.Inputs = append(q.Inputs, loopback.Reference{Input: in.name, Cell: in.cell})
	}
	return q
}

// answer asks as the server would.
func (l *line) answer(values map[string]float64, texts map[string]string) (r ask.Result, out []float64, err error) {
	f, err := catalogue.Find(l.function)
	if err != nil {
		return r, nil, err
	}
	q := ask.New(f)
	for _, in := range l.inputs {
		text, ok := texts[in.cell]
		if !ok {
			v, ok := values[in.cell]
			if !ok {
				return r, nil, fmt.Errorf("no cell is named %s", in.cell)
			}
			text = string(number.Append(nil, v))
		}
		if err := q.Give(in.name, text, (*catalogue.Input).ParseCell); err != nil {
			return r, nil, err
		}
	}
	name := l.output
	if only, is := f.OnlyNumber(); name == "" && is {
		name = f.Outputs[only].Name
	}
	if r, err = ask.Wish(f, name, l.in); err != nil {
		return r, nil, err
	}
	if r.Unit != l.unit {
		return r, nil, fmt.Errorf("the answer is in %s, the line in %s", r.Unit, l.unit)
	}
	out, err = q.Answer()
	return r, out, err
}

// addressName is the cell that holds the address of the bridge.
const addressName = "bridge"
