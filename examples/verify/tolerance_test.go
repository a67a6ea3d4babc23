package main

import (
	"math"
	"testing"

	"example.org/zymase/internal/published"
)

// No tolerance is wider than its table needs: the worst row of each column takes a twentieth
// of it at least, unless it is half the last printed digit, or rounding. So a tolerance that
// is made a hundred times wider fails here.
func TestTolerancesAreUsed(t *testing.T) {
	const rounding = 1e-12 // of the printed value
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
			used, digits, part := 0.0, 0.0, 0.0
			for _, row := range result.Rows {
				for _, v := range row.Values {
					if v.Name == a.Column && v.Tolerance > 0 {
						used = max(used, math.Abs(v.Difference)/v.Tolerance)
						digits = max(digits, v.Tolerance/published.HalfDigit(v.Printed))
						part = max(part, v.Tolerance/math.Abs(v.Computed))
					}
				}
			}
			if used < 0.05 && digits > 1.001 && part > 1.001*rounding {
				t.Errorf("%s, %s: %s (%s), of which the worst row takes %.2g; tighten it", name, a.Column, a.Amount, a.Reason, used)
			}
		}
	}
}
