package water

import "example.org/zymase/internal/limit"

// A volume of water is one from a drop to a lake: 1e-6 to 1e12 L.
const (
	leastVolume = 1e-6
	mostVolume  = 1e12
)

func checkVolume(fn string, litres float64) error {
	return limit.Check(fn, "volume", litres, "L", leastVolume, mostVolume, "a volume of water")
}
