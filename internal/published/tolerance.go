package published

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// A Tolerance is how near a computed value must come to a printed one, and why.
type Tolerance struct {
	Text   string // as in the head: "0.2 % or 0.05"
	Reason string

	absolute float64 // in the unit of the column
	relative float64 // of the printed value
	printed  float64 // times half the last printed digit
}

// Allow returns the largest difference allowed from a printed cell, in the unit
// of its column.
func (t Tolerance) Allow(cell string) float64 {
	v, err := number(cell)
	if err != nil {
		return 0
	}
	return math.Max(math.Max(t.absolute, t.relative*math.Abs(v)), t.printed*HalfDigit(cell))
}

// Within reports whether a computed value is near enough to a printed cell, and
// the difference computed minus printed. The last bits of the arithmetic do not
// count: 1e-9 of the tolerance and 1e-13 of the value.
func (t Tolerance) Within(computed float64, cell string) (difference float64, ok bool) {
	printed, err := number(cell)
	if err != nil {
		return math.NaN(), false
	}
	difference = computed - printed
	slack := t.Allow(cell)*(1+1e-9) + 1e-13*math.Abs(printed)
	return difference, math.Abs(difference) <= slack
}

// HalfDigit returns half a unit of the last printed digit: 0.05 for "12.3",
// 0.5 for "12", 5e-7 for "4.891e-03".
func HalfDigit(cell string) float64 {
	mantissa, exponent, _ := strings.Cut(strings.ToLower(cell), "e")
	_, fraction, _ := strings.Cut(mantissa, ".")
	power := -len(fraction)
	if n, err := strconv.Atoi(exponent); err == nil {
		power += n
	}
	half, err := strconv.ParseFloat("5e"+strconv.Itoa(power-1), 64) // the nearest float64
	if err != nil {
		return 0
	}
	return half
}

const arithmetic = "1e-12" // of the value: what the arithmetic may round off

// parseTolerance reads "0.2 % or 0.05; the stated accuracy".
func parseTolerance(text string) (Tolerance, error) {
	amounts, reason, found := strings.Cut(text, ";")
	t := Tolerance{Text: strings.TrimSpace(amounts), Reason: strings.TrimSpace(reason)}
	if !found || t.Reason == "" {
		return t, fmt.Errorf("tolerance %.40q has no reason; write \"0.05; the stated accuracy\"", text)
	}
	for part := range strings.SplitSeq(t.Text, " or ") {
		part = strings.TrimSpace(part)
		into, scale := &t.absolute, 1.0
		switch {
		case part == "exact":
			part, t.absolute, into = arithmetic, 1e-12, &t.relative
		case part == "printed":
			part, into = "1", &t.printed
		case strings.HasSuffix(part, " printed"):
			part, into = strings.TrimSpace(strings.TrimSuffix(part, "printed")), &t.printed
		case strings.HasSuffix(part, "%"):
			part, into, scale = strings.TrimSpace(strings.TrimSuffix(part, "%")), &t.relative, 100
		}
		v, err := number(part)
		if err != nil || !(v > 0) {
			return t, fmt.Errorf("tolerance %.40q: want a number above zero, \"0.2 %%\", \"exact\", \"printed\" or \"3 printed\", joined by \"or\"", t.Text)
		}
		if *into != 0 {
			return t, fmt.Errorf("tolerance %.40q says one kind twice", t.Text)
		}
		*into = v / scale
	}
	return t, nil
}
