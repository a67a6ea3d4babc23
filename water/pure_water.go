package water

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Distilled returns distilled water as it stands in a can: no salts, and the CO2 of
// air, which gives it a pH near 5.6. The error is a [*units.RangeError] outside 0 to
// 90 °C.
func Distilled(t units.Temperature) (Profile, error) {
	p := Profile{t: t.In(units.Celsius)}
	e, err := p.InAir()
	return e.water, limit.Named("water.Distilled", err)
}

// Permeate returns what a reverse-osmosis membrane lets through of a feed water of
// known pH: each ion and the alkalinity by the share not rejected, and all of the
// CO2, so that permeate is more acid than its feed. A household membrane in good
// order rejects 95 to 98 %: common practice, no source; real ones hold back divalent
// ions better than single ones.
//
// Errors are a [*units.StateError] for a feed of unknown pH and those of [Profile.Closed].
func (p Profile) Permeate(rejection units.Share) (Profile, error) {
	const fn = "water.Profile.Permeate"
	if err := p.knownPH(fn); err != nil {
		return Profile{}, err
	}
	var e Equilibrium
	if err := e.closed(fn, &p); err != nil {
		return Profile{}, err
	}
	held := rejection.In(units.Fraction)
	if err := limit.Check(fn, "rejection", held, "", 0, 1, "a share"); err != nil {
		return Profile{}, err
	}
	pass := 1 - held
	gas := e.s.species(CarbonDioxide) / molal
	out := p
	for i := range out.mg {
		out.mg[i] *= pass
	}
	out.alk *= pass
	out.carbon = gas + pass*(p.carbon-gas)
	return out.closedPH(fn)
}
