package fill

import (
	"io"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/delimited"
)

// Options say how the file is written, and what its columns do not tell.
type Options struct {
	Semicolon    bool // cells are parted by ; and not by a comma
	DecimalComma bool // 1,045 is a number a little over one, here and in the results

	Fixed   map[string]string // value of an input for every row, by name: "20 °C"
	Outputs []string          // which results, and in which unit: "pressure (psi gauge)"; none is all
}

func (o Options) delim() byte {
	if o.Semicolon {
		return ';'
	}
	return ','
}

func (o Options) mark() byte {
	if o.DecimalComma {
		return ','
	}
	return '.'
}

// Count tells how many rows were computed and how many of them failed. Lines
// without a single filled cell are no rows.
type Count struct{ Rows, Failed int }

// Run reads a table from in, and writes it to out with the results of f. A row
// that fails is counted, and is no error. Errors: a *HeadError if the head does
// not fit f or the options, a *delimited.FormError if the file is not CSV in
// UTF-8, and what in or out return; rows before the error have been written.
// After an error of out, a Read of in may still be under way: leave in alone.
func Run(out io.Writer, in io.Reader, f *catalogue.Function, o Options) (Count, error) {
	rows := delimited.NewReader(in, o.delim())
	p, head, err := open(rows, f, o)
	if err != nil {
		return Count{}, err
	}
	if _, err := out.Write(head); err != nil {
		return Count{}, err
	}
	return run(out, rows, p)
}
