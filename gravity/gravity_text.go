package gravity

import (
	"strconv"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// ParseGravity reads a gravity as brewers write it: "1.048", "SG 1.048", "1048",
// "12 °P", "-1.5 °Bx", "48 points". A decimal comma is taken ("1,048"), since a
// gravity has no thousands. The text is at most 64 bytes.
//
// Errors: a [*units.ParseError] for other text, a bare number from 2 to 700
// among it (it could be points or °P); a [*units.RangeError] for a gravity that no
// liquid here has.
func ParseGravity(text string) (Gravity, error) {
	const longest = 64
	reject := func(reason string) (Gravity, error) {
		return Gravity{}, &units.ParseError{Input: strings.ToValidUTF8(text[:min(len(text), longest)], "?"), Want: "gravity", Reason: reason}
	}
	if len(text) > longest {
		return reject("longer than 64 bytes")
	}
	s := strings.TrimSpace(text)
	if rest, ok := cutFold(s, "SG"); ok {
		s = rest
	}
	number := strings.TrimRight(s, " °%abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ")
	unit := strings.TrimSpace(s[len(number):])
	number = strings.Replace(number, "−", "-", 1)
	if strings.Count(number, ",") == 1 && !strings.Contains(number, ".") {
		number = strings.Replace(number, ",", ".", 1)
	}
	if number == "" || strings.Trim(number, "0123456789.+-") != "" {
		return reject("write it as 1.048 or 12 °P")
	}
	x, err := strconv.ParseFloat(number, 64)
	if err != nil {
		return reject("write it as 1.048 or 12 °P")
	}
	switch unit {
	case "", "SG", "sg":
		switch {
		case x >= 700 && x <= 1500:
			return FromSG(x / 1000)
		case x > 2:
			return reject("a gravity is written 1.048; for an extract say °P, for points say points")
		}
		g, err := FromSG(x)
		return g, limit.Named("gravity.ParseGravity", err)
	case "points", "point", "pts":
		g, err := FromSG(1 + x/1000)
		return g, limit.Named("gravity.ParseGravity", err)
	}
	e, err := units.DegreePlato.Find(unit)
	if err != nil {
		return reject("write it as 1.048 or 12 °P")
	}
	q, err := e.Try(x)
	if err != nil {
		return Gravity{}, limit.Named("gravity.ParseGravity", err)
	}
	g, err := FromExtract(q)
	return g, limit.Named("gravity.ParseGravity", err)
}

func cutFold(s, prefix string) (string, bool) {
	if len(s) >= len(prefix) && strings.EqualFold(s[:len(prefix)], prefix) {
		return strings.TrimSpace(s[len(prefix):]), true
	}
	return s, false
}

// Text prints the gravity with a fixed number of decimal places: "1.048".
func (g Gravity) Text(places int) string {
	return strconv.FormatFloat(g.SG(), 'f', min(max(places, 0), 15), 64)
}

// String prints the shortest number that reads back as g: "1.048".
func (g Gravity) String() string {
	b, _ := g.AppendText(nil)
	return string(b)
}

// AppendText appends the text of [Gravity.String]; the error is always nil.
func (g Gravity) AppendText(b []byte) ([]byte, error) {
	return strconv.AppendFloat(b, g.SG(), 'g', -1, 64), nil
}

// MarshalText is the text of [Gravity.String]; the error is always nil. It serves
// JSON and the flag package.
func (g Gravity) MarshalText() ([]byte, error) { return g.AppendText(nil) }

// UnmarshalText reads g as [ParseGravity] does.
func (g *Gravity) UnmarshalText(text []byte) error {
	p, err := ParseGravity(string(text))
	if err == nil {
		*g = p
	}
	return limit.Named("gravity.Gravity.UnmarshalText", err)
}
