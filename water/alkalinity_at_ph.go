package water

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// AlkalinityAt returns the alkalinity with which the ions of the water come to a pH, in
// balance with CO2 of that partial pressure: what a base must bring it to, or an acid
// lower it to. It is negative where the pH needs more acid than the salts hold. The
// water's own alkalinity and pH are not used; a pressure of zero is no CO2 at all.
//
// Errors are a [*units.RangeError]: a pH outside 1 to 13, an alkalinity beyond ±1 Eq/L,
// a pressure above 1000 kPa, and those of [Profile.Under].
//
//   - Source: as [Profile.Under], read the other way.
//   - Uncertainty: 5 % for 0.02 in pH where bicarbonate carries it.
func (p Profile) AlkalinityAt(ph float64, co2 units.AbsolutePressure) (units.CalciumCarbonate, error) {
	var e Equilibrium
	return e.alkalinityAt(&p, ph, co2)
}

func (e *Equilibrium) alkalinityAt(p *Profile, ph float64, co2 units.AbsolutePressure) (units.CalciumCarbonate, error) {
	const fn = "water.Profile.AlkalinityAt"
	var none units.CalciumCarbonate
	if err := limit.Check(fn, "pH", ph, "", 1, 13, rangeSource); err != nil {
		return none, err
	}
	kPa := co2.In(units.Kilopascal)
	if err := limit.Check(fn, "CO2 pressure", kPa, "kPa", 0, mostGas, "Weiss 1974, second virial coefficient"); err != nil {
		return none, err
	}
	if err := p.ready(fn); err != nil {
		return none, err
	}
	s := &e.s
	e.follow(p, ph)
	s.fugacity = fugacity(kPa, p.t)
	if err := s.atPH(fn, byGas, nil); err != nil {
		return none, err
	}
	alk := s.alkalinity()
	if err := limit.Check(fn, "alkalinity at this pH", alk/molal, "mEq/L", -mostAlkalinity, mostAlkalinity, waterSource); err != nil {
		return none, err
	}
	return units.MilligramPerLitreCaCO3.Of(checked.Number(alk / molal * cacO3PerEquivalent)), nil
}
