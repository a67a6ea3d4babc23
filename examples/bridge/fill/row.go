package fill

import (
	"bytes"
	"fmt"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/delimited"
	"example.org/zymase/examples/bridge/number"
)

// filler computes rows one after another; each worker has its own.
type filler struct {
	*plan
	row     delimited.Row
	in, out []float64
	digits  []byte
}

func newFiller(p *plan) *filler {
	w := &filler{plan: p, in: make([]float64, len(p.sources)), out: make([]float64, len(p.function.Outputs))}
	for i, s := range p.sources {
		w.in[i] = s.fixed
	}
	return w
}

// What became of a row.
const (
	computed = iota
	failed
	blank
)

// add appends to b the row raw with its results.
func (w *filler) add(b, raw []byte) ([]byte, int) {
	w.row.Split(raw, w.options.delim())
	body := w.row.Body()
	if len(body) == 0 {
		return append(b, raw...), blank
	}
	b = append(b, body...)
	for range w.width - w.row.Len() {
		b = append(b, w.options.delim())
	}
	state := computed
	if err := w.compute(); err != nil {
		state = failed
		message := err.Error()
		if err == errBlank {
			state, message = blank, ""
		}
		for range w.results {
			b = append(b, w.options.delim())
		}
		b = delimited.AppendText(append(b, w.options.delim()), message, w.options.delim())
	} else {
		b = w.appendResults(b)
	}
	return append(b, w.row.End()...), state
}

func (w *filler) appendResults(b []byte) []byte {
	delim := w.options.delim()
	for i := range w.results {
		if w.results[i].IsText() {
			b = delimited.AppendText(append(b, delim), w.results[i].Text(w.out), delim)
			continue
		}
		w.digits = number.Append(w.digits[:0], w.results[i].Of(w.out))
		b = delimited.AppendNumber(append(b, delim), w.digits, delim, w.options.DecimalComma)
	}
	return append(b, delim)
}

var errBlank = fmt.Errorf("the row is blank")

// compute sets out from the cells of the row.
func (w *filler) compute() error {
	if flaw := w.row.Flaw(); flaw != "" {
		return fmt.Errorf("the row has %s", flaw)
	}
	if w.row.Len() > w.width {
		return fmt.Errorf("the row has %d cells, the head %d", w.row.Len(), w.width)
	}
	mark := w.options.mark()
	for i := range w.sources {
		s := &w.sources[i]
		if s.column < 0 {
			continue
		}
		var text []byte
		if s.column < w.row.Len() {
			text = w.row.Text(s.column)
		}
		v, ok := number.Parse(text, mark)
		if !ok { // look closer: most cells are bare numbers
			text = bytes.TrimSpace(text)
			v, ok = number.Parse(text, mark)
		}
		if !ok {
			var err error
			if w.in[i], err = w.read(&w.function.Inputs[i], text); err != nil {
				return err
			}
			continue
		}
		w.in[i] = s.convert(v)
	}
	return w.function.Call(w.in, w.out)
}

// read reads a cell that is not a bare number: empty, a number with its own
// unit, a word of a choice, or a mistake.
func (w *filler) read(in *catalogue.Input, text []byte) (float64, error) {
	if len(text) == 0 {
		if w.row.Empty() {
			return 0, errBlank
		}
		return 0, fmt.Errorf("%s is empty", in.Name)
	}
	other, hint := byte(','), "it has a comma; write a point, or use -decimal-comma"
	if w.options.DecimalComma {
		other, hint = '.', "it has a point, and the file is said to have decimal commas"
	}
	if _, ok := number.Parse(text, other); ok {
		return 0, fmt.Errorf("%s: %q is not read: %s", in.Name, text, hint)
	}
	if len(text) > 256 {
		return 0, fmt.Errorf("%s: a text of %d bytes is not a number", in.Name, len(text))
	}
	return in.Parse(string(text))
}
