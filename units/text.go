package units

import "strconv"

// Text prints q in the unit u with a fixed number of decimal places, as
// "4.20 kg". Rounding is to the nearest, as strconv does it.
func (q Quantity[D, E]) Text(u Unit[D, E], places int) string {
	places = min(max(places, 0), 15)
	b := strconv.AppendFloat(nil, positiveZero(q.In(u), places), 'f', places, 64)
	return string(appendSymbol(b, u.Symbol()))
}

// String prints q in its base unit with the shortest number that reads back as
// q: "4.2 kg".
func (q Quantity[D, E]) String() string {
	b, _ := q.AppendText(nil)
	return string(b)
}

// AppendText appends the text of [Quantity.String]; the error is always nil.
func (q Quantity[D, E]) AppendText(b []byte) ([]byte, error) {
	b = strconv.AppendFloat(b, q.v, 'g', -1, 64)
	return appendSymbol(b, Unit[D, E]{}.Symbol()), nil
}

// MarshalText is the text of [Quantity.String]; the error is always nil. It
// serves JSON and the flag package.
func (q Quantity[D, E]) MarshalText() ([]byte, error) { return q.AppendText(nil) }

func appendSymbol(b []byte, symbol string) []byte {
	if symbol == "" {
		return b
	}
	b = append(b, ' ')
	return append(b, symbol...)
}

// positiveZero keeps "-0.0" out of print.
func positiveZero(x float64, places int) float64 {
	half := 0.5
	for range places {
		half /= 10
	}
	if x < 0 && x > -half {
		return 0
	}
	return x
}
