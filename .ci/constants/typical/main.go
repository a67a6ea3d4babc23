// Command typical computes every function of the catalogue where it is typical: at its example,
// with every word of every choice, and at the first and the middle row of each published table.
// A line is the function, an output and its value to the last bit.
package main

import (
	"bufio"
	"fmt"
	"os"
	"slices"
	"strconv"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/internal/published"
)

func main() {
	w := bufio.NewWriter(os.Stdout)
	defer w.Flush()
	all := catalogue.All()
	byName := map[string]*catalogue.Function{}
	for i := range all {
		f := &all[i]
		byName[f.Name] = f
		base := make([]float64, len(f.Inputs))
		for i, in := range f.Inputs {
			base[i] = in.Example
		}
		write(w, f, base)
		for i, in := range f.Inputs {
			for word := range in.Options {
				if float64(word) != base[i] {
					x := slices.Clone(base)
					x[i] = float64(word)
					write(w, f, x)
				}
			}
		}
	}
	tables, err := published.All()
	if err != nil {
		fmt.Fprintln(os.Stderr, "typical:", err)
		os.Exit(1)
	}
	for _, t := range tables {
		at := 0
		for row := range t.Rows() {
			if at == 0 || at == t.Len()/2 {
				if x, ok := inputs(byName[t.Checks], t, row); ok {
					write(w, byName[t.Checks], x)
				}
			}
			at++
		}
	}
}

// inputs reads a row of a table as the inputs of its function; false if it does not fit.
func inputs(f *catalogue.Function, t *published.Table, row published.Row) ([]float64, bool) {
	var err error
	x := make([]float64, len(f.Inputs))
	for i, p := range f.Inputs {
		x[i] = p.Default
		for _, fixed := range t.Fixed {
			if fixed.Name == p.Name {
				x[i], err = p.Parse(fixed.Text)
			}
		}
		if c := t.Column(p.Name); c >= 0 && p.Options != nil {
			x[i], err = p.Parse(row.Cells[c])
		} else if c >= 0 {
			var v float64
			var convert catalogue.Conversion
			if convert, err = p.Conversion(t.Columns[c].Unit); err == nil {
				v, err = row.Number(p.Name)
				x[i] = convert(v)
			}
		}
		if err != nil {
			return nil, false
		}
	}
	return x, true
}

func write(w *bufio.Writer, f *catalogue.Function, x []float64) {
	out := make([]float64, len(f.Outputs))
	err := f.Call(x, out)
	for i, o := range f.Outputs {
		if o.Words != nil {
			continue
		}
		fmt.Fprint(w, f.Name, " ", o.Name, " ")
		if err != nil {
			fmt.Fprintln(w, "refused")
			continue
		}
		fmt.Fprintln(w, strconv.FormatFloat(out[i], 'g', -1, 64))
	}
}
