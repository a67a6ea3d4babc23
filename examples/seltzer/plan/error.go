package plan

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"

	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// RequestError says which field of a request cannot be, what stands there and
// what is allowed. Nothing is planned from such a request.
type RequestError struct {
	Field   string // its path: "kettle.capacity"
	Value   string // as given
	Allowed string // what may stand there, or why this may not
	Err     error  // the error under it, if any: a *units.RangeError, a *units.ParseError

	is func(text string) bool // whether a text is the value; nil where it is not that of the field alone
}

// errSmallKettle is a boil that the kettle does not hold, but a part of which it might.
var errSmallKettle = errors.New("the kettle is smaller than the boil")

// quantity is what [RequestError] says of a field whose value is q.
func quantity[D, E units.Dimension](q units.Quantity[D, E]) func(string) bool {
	return func(text string) bool {
		p, err := units.Parse[units.Quantity[D, E]](text)
		return err == nil && p == q
	}
}

// echoed gives an error the value as it was typed, where that is short and still the value
// of the field: a request can be changed after it is read.
func (said typed) echoed(err error) error {
	const longest = 20 // bytes
	e, ok := err.(*RequestError)
	if !ok || e.is == nil {
		return err
	}
	if text, ok := said[e.Field]; ok && len(text) <= longest && e.is(text) {
		e.Value = clip(strings.TrimSpace(text))
	}
	return err
}

// Error is one line: "kettle.capacity: 50 L: the boil starts at 66.2 L".
func (e *RequestError) Error() string {
	return fmt.Sprintf("%s: %s: %s", e.Field, e.Value, e.Allowed)
}

// Unwrap returns the error under it.
func (e *RequestError) Unwrap() error { return e.Err }

// reason is the part of an error that the field and value do not say already.
func reason(err error) string {
	if p, ok := errors.AsType[*units.ParseError](err); ok {
		return p.Reason
	}
	if n, ok := errors.AsType[*units.NameError](err); ok && len(n.Choices) > 0 {
		return "say one of: " + strings.Join(n.Choices, ", ")
	}
	if r, ok := errors.AsType[*units.RangeError](err); ok {
		if r.Value < 0 && r.Min == 0 {
			return r.Quantity + " is not below zero"
		}
		return fmt.Sprintf("%s from %s to %s %s", r.Quantity, brief(r.Min), brief(r.Max), r.Unit)
	}
	if errors.Is(err, numeric.ErrBracket) || errors.Is(err, numeric.ErrNoConvergence) {
		return "no figure fits"
	}
	return err.Error()
}

// told is what an error says where the field does not show the value: without the name of
// a function, which nobody wrote.
func told(err error) string {
	r, ok := errors.AsType[*units.RangeError](err)
	if !ok {
		return reason(err)
	}
	if r.Min < r.Max && !math.IsInf(r.Min, 0) && !math.IsInf(r.Max, 0) {
		return strings.TrimSpace(fmt.Sprintf("%s %s outside %s to %s %s", r.Quantity, number(r.Value, r.Min, r.Max), brief(r.Min), brief(r.Max), r.Unit))
	}
	text := strings.TrimPrefix(r.Error(), r.Func+": ")
	return strings.TrimSuffix(text, " ("+r.Source+")")
}

// placed gives an error of the library a field of the request: that of the ion it names,
// the water's for what its salts are, else that of the part of the plan it comes from.
func placed(part string, err error) error {
	if _, ok := errors.AsType[*RequestError](err); ok || err == nil {
		return err
	}
	value := "as given"
	if r, ok := errors.AsType[*units.RangeError](err); ok {
		switch {
		case r.Quantity == "strength":
			return &RequestError{Field: "strength", Value: "that of the base, for these packs", Allowed: "less: " + told(err), Err: err}
		case r.Quantity == "ionic strength", strings.HasSuffix(r.Quantity, "minerals"):
			return &RequestError{Field: "water", Value: "with its salts and the feed", Err: err,
				Allowed: told(err) + ": look whether a figure of the report or of the target is off by its point or its unit, g/L for mg/L"}
		case ions[r.Quantity] && !strings.HasPrefix(part, "water."):
			part, value = "water.report."+r.Quantity, "after salts and boil"
		case ions[r.Quantity]:
			part += "." + r.Quantity
		}
	}
	return &RequestError{Field: part, Value: value, Allowed: told(err), Err: err}
}

// refused gives an error of the library the field of a pack that it comes from.
func (p *packRecipe) refused(err error) error {
	r, ok := errors.AsType[*units.RangeError](err)
	if _, named := errors.AsType[*RequestError](err); named || !ok {
		return err
	}
	switch {
	case r.Quantity == "extract" && p.Sweeten != nil:
		return &RequestError{Field: p.field + ".sweeten.like_sugar", Value: p.Sweeten.Like.Text(units.GramPerLitre, 0), is: quantity(p.Sweeten.Like),
			Allowed: "less: " + told(err), Err: err}
	case r.Quantity == "volume of liquid":
		return p.full("as it is filled", err)
	case strings.HasSuffix(r.Quantity, "pressure"):
		return &RequestError{Field: p.field + ".co2", Value: p.Content.String(), Allowed: "less, or a colder drink: " + told(err), Err: err}
	}
	return err
}

// ions are the fields of a water.
var ions = map[string]bool{
	"calcium": true, "magnesium": true, "sodium": true, "potassium": true, "chloride": true, "sulfate": true, "alkalinity": true,
}

// brief is a number to five digits.
func brief(x float64) string {
	v, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 5, 64), 64) // no error: it was a number
	return plain(v)
}

// number writes a value outside a range with as many digits as show that it is.
func number(x, least, most float64) string {
	for digits := 4; digits < 17; digits++ {
		s := strconv.FormatFloat(x, 'g', digits, 64)
		v, err := strconv.ParseFloat(s, 64)
		if err == nil && !(v >= least && v <= most) {
			return plain(v)
		}
	}
	return plain(x)
}

// plain is a number without an exponent unless it is very small or large.
func plain(x float64) string {
	if a := math.Abs(x); cmp.Or(a, 1) < 1e-9 || a >= 1e15 {
		return strconv.FormatFloat(x, 'g', -1, 64)
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}
