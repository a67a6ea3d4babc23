package numeric

// Rising returns the x in [0, most] where f, which rises and may fail, becomes zero, to
// within tol: 0 where f is not below zero there. The search goes up from start by steps of
// growth, so that no try lies far beyond x; the last call of f is at the x that is returned.
//
// The error is that of f, or [ErrBracket] beside most where f is below zero up to there.
func Rising(f func(float64) (float64, error), start, growth, most, tol float64) (float64, error) {
	var failed error
	at := func(x float64) float64 {
		y, err := f(x)
		if err != nil {
			failed = err
		}
		return y
	}
	var low, high float64
	for at(high) < 0 && failed == nil {
		if high == most {
			return most, ErrBracket
		}
		low, high = high, min(max(start, growth*high), most)
	}
	if failed != nil || high == low {
		return low, failed
	}
	// f is below zero at low and not at high: there is a root.
	x, _ := Root(at, low, high, tol)
	at(x)
	return x, failed
}
