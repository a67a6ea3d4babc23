package plan

import (
	"math"
	"testing"
)

// A litre is found from a bad guess of how it fills; a mix that does not grow is an error,
// and leaves what was known of others.
func TestFill(t *testing.T) {
	slope := 5.0
	f, err := fill(0.2, &slope, func(x float64) (finished, error) { return finished{volume: 0.1 + 0.9*x + 0.01*x*x}, nil })
	if err != nil || math.Abs(f.volume-1) > 1e-10 || math.Abs(slope-0.92) > 0.01 {
		t.Errorf("%v L, %v, slope %v", f.volume, err, slope)
	}
	if _, err := fill(1, &slope, func(float64) (finished, error) { return finished{volume: 0.5}, nil }); err == nil || math.Abs(slope-0.92) > 0.01 {
		t.Errorf("%v, slope %v", err, slope)
	}
}
