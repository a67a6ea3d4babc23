package water

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Totals is a dilute liquid as its pH sees it: the charge of the strong ions, and the
// weak acids and bases by their totals, in whatever form.
type Totals struct {
	// StrongIons is the strong-ion difference: Na+, K+, 2 Ca+2, 2 Mg+2 less Cl-,
	// NO3-, 2 SO4-2. Ammonium and what stands below are not in it. Bicarbonate of
	// sodium counts by its sodium.
	StrongIons units.EquivalentConcentration

	Ammonium, Phosphate                   units.MolarConcentration
	Lactate, Acetate, Citrate, Malate     units.MolarConcentration
	Tartrate, Succinate, Sulfite, Sorbate units.MolarConcentration
	CO2                                   units.AbsolutePressure   // partial pressure of the CO2 it is in balance with
	Others                                units.MolarConcentration // salts of charge one in each litre, for the ionic strength only
	Strength                              units.StrengthByVolume   // up to 16 % vol, which makes acids weaker: [Profile.WithEthanol]
}

// Equilibrium returns the liquid at rest at a temperature, by electroneutrality: its pH, its
// species and how well it is buffered.
//
// Errors are a [*units.RangeError]: outside 0 to 90 °C, a strong-ion difference
// beyond ±1 Eq/L, an ionic strength above 0.5 mol/kg.
//
//   - Source: see [Profile.Closed] and the constants that [Species.Describe] prints. The
//     constants are those of water, and of ethanol where [Profile.WithEthanol] has them.
//     Potassium stands for the strong cations: its pairs with citrate and tartrate move a half-neutral acid
//     by up to 0.013.
//   - Uncertainty: 0.05 in pH for known contents.
func (w Totals) Equilibrium(t units.Temperature) (e Equilibrium, err error) {
	const fn = "water.Totals.Equilibrium"
	sid := w.StrongIons.In(units.MilliequivalentPerLitre)
	if err := limit.Check(fn, "strong-ion difference", sid, "mEq/L", -mostAlkalinity, mostAlkalinity, waterSource); err != nil {
		return Equilibrium{}, err
	}
	p := Profile{t: t.In(units.Celsius), alk: sid, ethanol: w.Strength.In(units.PercentVolume)}
	if err := checkEthanol(fn, p.ethanol); err != nil {
		return Equilibrium{}, err
	}
	set := func(i Ion, c units.MolarConcentration) error {
		n := c.In(units.MillimolePerLitre)
		if err := limit.Check(fn, i.Name(), n, "mmol/L", 0, mostAlkalinity, waterSource); err != nil {
			return err
		}
		p.mg[i] += n * i.facts().mass
		p.alk += n * float64(referenceCharge(i))
		return nil
	}
	// Potassium and chloride carry the strong charge; their kind hardly matters.
	pad := w.Others.In(units.MillimolePerLitre)
	if err := limit.Check(fn, "other salts", pad, "mmol/L", 0, mostAlkalinity, waterSource); err != nil {
		return Equilibrium{}, err
	}
	p.mg[Potassium] = (max(0, sid) + pad) * Potassium.facts().mass
	p.mg[Chloride] = (max(0, -sid) + pad) * Chloride.facts().mass
	for _, c := range [...]struct {
		ion Ion
		of  units.MolarConcentration
	}{{Ammonium, w.Ammonium}, {Phosphate, w.Phosphate}, {Lactate, w.Lactate}, {Acetate, w.Acetate}, {Citrate, w.Citrate},
		{Malate, w.Malate}, {Tartrate, w.Tartrate}, {Succinate, w.Succinate}, {Sulfite, w.Sulfite}, {Sorbate, w.Sorbate}} {
		if err := set(c.ion, c.of); err != nil {
			return Equilibrium{}, err
		}
	}
	err = e.under(fn, &p, w.CO2)
	return e, err
}
