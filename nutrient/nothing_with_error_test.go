package nutrient

import (
	"errors"
	"testing"
	"time"

	"example.org/zymase/units"
)

// nothing fails unless there is an error and the value beside it is zero.
func nothing[T comparable](t *testing.T, what string, v T, err error) {
	t.Helper()
	var zero T
	if err == nil || v != zero {
		t.Errorf("%s: got %v, %v; want nothing and an error", what, v, err)
	}
}

// A number that was not found is zero, so that nobody takes a guess for a result.
func TestNothingComesWithAnError(t *testing.T) {
	const name = "no such thing"
	buffer, err := ParseBuffer(name)
	nothing(t, "ParseBuffer", buffer, err)
	demand, err := ParseDemand(name)
	nothing(t, "ParseDemand", demand, err)
	form, err := ParseYeastForm(name)
	nothing(t, "ParseYeastForm", form, err)
	law, err := ParseJurisdiction(name)
	nothing(t, "ParseJurisdiction", law, err)

	long, err := EstimatedTime(share(0.5), 0)
	nothing(t, "EstimatedTime", long, err)
	pK, err := SulfurDioxidePK(units.PercentVolume.Of(16), units.Celsius.Of(20))
	nothing(t, "strength of SulfurDioxidePK", pK, err)
	pK, err = SulfurDioxidePK(units.PercentVolume.Of(10), units.Celsius.Of(19))
	nothing(t, "temperature of SulfurDioxidePK", pK, err)
	pack := must(LiquidPack(Cells{}))
	alive, err := pack.Alive(-time.Hour)
	nothing(t, "Pack.Alive", alive, err)
	alive, err = Pack{}.Alive(time.Hour)
	nothing(t, "Pack{}.Alive", alive, err)

	x, err := settle(1, 0, 1, func(float64) (float64, error) { return 1, errors.New("no") })
	nothing(t, "settle", x, err)
	x, err = settle(1, 0, 1, func(float64) (float64, error) { return 1, nil })
	nothing(t, "settle without end", x, err)

	pH, err := acidity{strong: 2000}.pH(surroundings{at: room})
	nothing(t, "alkalinity of a brine", pH, err)
	pH, err = acidity{}.pH(surroundings{at: room, gas: units.Kilopascal.Of(2000)})
	nothing(t, "2000 kPa", pH, err)
	lack, err := acidity{strong: 2000}.lacks(3, surroundings{at: room})
	nothing(t, "lack of a brine", lack, err)
	_, err = acidity{}.atPH(3, surroundings{at: room, gas: units.Kilopascal.Of(2000)})
	nothing(t, "a pH under 2000 kPa", 0, err)
}
