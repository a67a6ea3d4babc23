package border

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
)

// functions are those of the catalogue, in its order.
var functions = catalogue.All()

// Most inputs and outputs of a function; those who keep room for a call need no more.
const MostInputs, MostOutputs = 24, 16

// Function returns the function at a place of the catalogue.
func Function(place int) (*catalogue.Function, error) {
	if place < 0 || place >= len(functions) {
		return nil, fmt.Errorf("no function at place %d: the catalogue has %d", place, len(functions))
	}
	return &functions[place], nil
}

// input returns an input of a function, both by place.
func input(function, place int) (*catalogue.Function, *catalogue.Input, error) {
	f, err := Function(function)
	if err != nil {
		return nil, nil, err
	}
	if place < 0 || place >= len(f.Inputs) {
		return nil, nil, fmt.Errorf("%s: no input at place %d", f.Name, place)
	}
	return f, &f.Inputs[place], nil
}

// Number reads what is written for an input: "68 °F", a word of a choice, a pure number. The
// result is in the stated unit. A number alone is refused where the input has a unit.
func Number(function, place int, text string) (v float64, err error) {
	defer guard(&err)
	f, in, err := input(function, place)
	if err != nil {
		return 0, err
	}
	if in.Unit != "" && !strings.ContainsFunc(text, letter) {
		return 0, refusedText(f, in, text, fmt.Errorf("%s: %.64q has no unit: write %q", in.Name, text, in.Text(in.Example)+" "+in.Unit))
	}
	if v, err = in.Parse(text); err != nil {
		return 0, refusedText(f, in, text, err)
	}
	return v, nil
}

// letter tells what can be of a unit, not of a number.
func letter(r rune) bool {
	return r != 'e' && r != 'E' && (r == '°' || r == '%' || r == 'µ' || r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z')
}

// Convert takes numbers of an input from another unit to the stated one, in place.
func Convert(function, place int, unit string, values []float64) (err error) {
	defer guard(&err)
	f, in, err := input(function, place)
	if err != nil {
		return err
	}
	convert, err := in.Conversion(unit)
	if err != nil {
		return refusedText(f, in, unit, err)
	}
	for i, v := range values {
		if v == v {
			values[i] = convert(v)
		}
	}
	return nil
}

// Call computes one row: as [catalogue.Function.Call], by the place of the function.
func Call(function int, in, out []float64) (err error) {
	defer guard(&err)
	f, err := Function(function)
	if err != nil {
		return err
	}
	if err := f.Call(in, out); err != nil {
		return refused(f, err)
	}
	return nil
}

// A Values is an input of many rows: row i is at i·Step. With a Step of 0 one number stands
// for all.
type Values struct {
	At   []float64
	Step int
}

// Column computes many rows. A row that is refused, or that has a NaN among its inputs, has NaN
// in all outputs and 1 in failed, which is 0 elsewhere; it returns how many such rows there are,
// and the refusal of the first that has no NaN in it. Inputs and outputs may not overlap.
func Column(function, rows int, in []Values, out [][]float64, failed []byte) (failures int, first error, err error) {
	defer guard(&err)
	f, err := Function(function)
	if err != nil {
		return 0, nil, err
	}
	if len(in) != len(f.Inputs) || len(out) != len(f.Outputs) || len(failed) < rows {
		return 0, nil, fmt.Errorf("%s: %d inputs, %d outputs and a mask of %d rows, not %d, %d and %d",
			f.Name, len(f.Inputs), len(f.Outputs), rows, len(in), len(out), len(failed))
	}
	var roomIn [MostInputs]float64
	var roomOut [MostOutputs]float64
	row, result := roomIn[:len(in)], roomOut[:len(out)]
	for i := range rows {
		nothing := false
		for j := range in {
			v := in[j].At[i*in[j].Step]
			row[j] = v
			nothing = nothing || v != v
		}
		var no error
		if !nothing {
			no = f.Call(row, result)
		}
		if nothing || no != nil {
			if first == nil && no != nil {
				first = refused(f, no)
			}
			failures++
			failed[i] = 1
			for j := range out {
				out[j][i] = nan
			}
			continue
		}
		failed[i] = 0
		for j := range out {
			out[j][i] = result[j]
		}
	}
	return failures, first, nil
}
