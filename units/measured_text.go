package units

import (
	"strconv"
	"strings"
)

// How a measured quantity is written: "4.6 ± 0.3 % vol (k = 2)".
const plusMinus, coverageOpen = " ± ", " (k = "

// Bytes that a measured quantity's text may have: two numbers, a unit and a factor.
const longestMeasured = 128

// MarshalText writes the value and its uncertainty at k = 2 with all the digits that read
// back: "4.6 ± 0.3 % vol (k = 2)". A value that [Quantity.MarshalText] refuses is refused.
func (m Measured[D, E]) MarshalText() ([]byte, error) {
	if _, err := m.value.written("units.Measured.MarshalText", nil); err != nil {
		return nil, err
	}
	return m.append(nil, -1), nil
}

// UnmarshalText reads what [Measured.MarshalText] and [Measured.Text] write, in any unit
// of the quantity and with any coverage factor above 0 and to 10. Errors: a [*ParseError]
// for text of another form; a [*RangeError] for what the quantity or its uncertainty
// cannot be.
func (m *Measured[D, E]) UnmarshalText(text []byte) error {
	dim, s := describe[D](), strings.TrimSpace(string(text))
	if len(s) > longestMeasured {
		return reject(s, dim, "longer than a value with its uncertainty")
	}
	const form = "write the uncertainty too: 4.6 ± 0.3, the unit, (k = 2)"
	number, rest, found := strings.Cut(s, strings.TrimSpace(plusMinus))
	rest, factor, covered := strings.Cut(rest, "(k")
	factor, equals := strings.CutPrefix(strings.TrimSpace(factor), "=")
	factor, closed := strings.CutSuffix(factor, ")")
	if !found || !covered || !equals || !closed {
		return reject(s, dim, form)
	}
	u, unit, why := readNumber(strings.TrimSpace(rest))
	if why != "" {
		return reject(s, dim, why)
	}
	of, why := said(unit, dim, none)
	if of == none {
		return reject(s, dim, why)
	}
	value, err := parse[D, E]("units.Measured.UnmarshalText", number, of)
	if err != nil {
		return err
	}
	k, notNumber := strconv.ParseFloat(strings.TrimSpace(factor), 64)
	spread, tooLarge := strconv.ParseFloat(u, 64)
	if notNumber != nil || tooLarge != nil || !(k > 0) {
		return reject(s, dim, form)
	}
	if !(k <= 10) {
		return coverage("units.Measured.UnmarshalText", k)
	}
	read, err := measure("units.Measured.UnmarshalText", value, spread*dim.table[of].num/dim.table[of].den/k)
	if err == nil {
		*m = read
	}
	return err
}
