package main

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"example.org/zymase/internal/published"
)

// No tolerance is wider than its table needs. Each amount of it ("0.2 % or 0.05" has two) is
// half the last printed digit ("printed"), or the rounding of the arithmetic ("exact"), or
// among the rows in which it is the larger the worst takes a twentieth of it at least. So an
// amount that is made a hundred times wider fails here, whichever it is: the worst row then
// takes a hundredth at most.
func TestTolerancesAreUsed(t *testing.T) {
	const least = 0.05
	for _, name := range published.Names() {
		table, err := published.Find(name)
		if err != nil {
			t.Fatal(err)
		}
		result, err := check(table)
		if err != nil {
			t.Fatal(err)
		}
		for _, a := range result.Tolerances {
			for amount := range strings.SplitSeq(a.Amount, " or ") {
				if amount == "printed" || amount == "exact" {
					continue
				}
				used := 0.0
				for _, row := range result.Rows {
					for _, v := range row.Values {
						if v.Name == a.Column && v.Tolerance > 0 && allowed(t, amount, v.Printed) >= v.Tolerance*(1-1e-9) {
							used = max(used, math.Abs(v.Difference)/v.Tolerance)
						}
					}
				}
				if used < least {
					t.Errorf("%s, %s: %s (%s), of which the worst row takes %.2g; tighten it, or write \"printed\" or \"exact\"", name, a.Column, amount, a.Reason, used)
				}
			}
		}
	}
}

// allowed is one amount of a tolerance for a printed cell.
func allowed(t *testing.T, amount, cell string) float64 {
	t.Helper()
	number := func(text string) float64 {
		x, err := strconv.ParseFloat(strings.TrimSpace(text), 64)
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
	if times, ok := strings.CutSuffix(amount, "printed"); ok {
		return number(times) * published.HalfDigit(cell)
	}
	if part, ok := strings.CutSuffix(amount, "%"); ok {
		return number(part) / 100 * math.Abs(number(cell))
	}
	return number(amount)
}
