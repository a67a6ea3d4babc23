package units

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"
)

var times = []struct {
	names []string
	d     time.Duration
}{
	{[]string{"wk", "week", "weeks", "w"}, 7 * 24 * time.Hour},
	{[]string{"d", "day", "days"}, 24 * time.Hour},
	{[]string{"h", "hr", "hrs", "hour", "hours"}, time.Hour},
	{[]string{"min", "mins", "minute", "minutes"}, time.Minute},
	{[]string{"s", "sec", "second", "seconds"}, time.Second},
}

// ParseDuration reads a duration as brewers write it: "7 d", "1 h 30 min",
// "2 weeks". A day is 24 hours. Units become smaller from left to right; "m" is
// refused, as it is minutes to one reader and months to another. Errors are a
// [*ParseError]; a negative duration, or one above 100 years, is refused.
func ParseDuration(text string) (time.Duration, error) {
	dim := &dimension{name: "duration"}
	if len(text) > longestText {
		return 0, reject(text, dim, fmt.Sprintf("longer than %d bytes", longestText))
	}
	s := strings.TrimSpace(text)
	if s == "" {
		return 0, reject(text, dim, "empty; write a number and a unit (wk, d, h, min, s)")
	}
	var sum float64
	last := time.Duration(1 << 62)
	for s != "" {
		number, rest, why := readNumber(s)
		if why != "" {
			return 0, reject(text, dim, why)
		}
		name := rest
		if i := nextTerm(rest); i > 0 {
			name, rest = strings.TrimSpace(rest[:i]), rest[i:]
		} else {
			rest = ""
		}
		d := time.Duration(0)
		for _, t := range times {
			for _, n := range t.names {
				if strings.EqualFold(n, name) {
					d = t.d
				}
			}
		}
		if d == 0 && name == "" {
			return 0, reject(text, dim, "no unit; write one of wk, d, h, min, s")
		}
		if d == 0 && slices.ContainsFunc([]string{"month", "months", "mo", "year", "years", "y", "yr"}, func(n string) bool { return strings.EqualFold(n, name) }) {
			return 0, reject(text, dim, fmt.Sprintf("%q differ in length: say wk or d; a month is about 30 d", name))
		}
		if d == 0 {
			return 0, reject(text, dim, fmt.Sprintf("%q is not one of its units: wk, d, h, min, s", name))
		}
		if d >= last {
			return 0, reject(text, dim, "units must become smaller from left to right")
		}
		x, err := strconv.ParseFloat(number, 64)
		if err != nil || x < 0 || strings.HasPrefix(number, "-") {
			return 0, reject(text, dim, "a duration is not negative")
		}
		sum += x * float64(d)
		last, s = d, rest
	}
	if sum > float64(100*365*24*time.Hour) {
		return 0, reject(text, dim, "above 100 years")
	}
	return time.Duration(sum), nil
}
