package water

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// CreamOfTartar returns the potassium hydrogen tartrate, KHC4H4O6, that settles out of a litre of the water or
// drink until it is at equilibrium with the crystals, at its temperature and strength ([Profile.WithEthanol]): zero
// where it could hold more. Wines stay above it for months: colloids and tannins hinder the crystals.
//
//   - Source: solubility in water and ethanol, H. W. Berg & R. M. Keefer, Am. J. Enol. Vitic. 9 (1958) 180,
//     recalled from memory; at rest the product of the activities of K+ and HC4H4O6- is that of the pure saturated
//     solution. Between the tabled figures the logarithm is interpolated.
//   - Range: 0 to 20 °C, 0 to 16 % vol; otherwise as [Profile.Closed]. Beyond it the error is a
//     [*units.RangeError].
//   - Uncertainty: 15 % of the solubility (0.57 g in 100 mL of water at 20 °C is quoted, where the table has 0.49).
func (p Profile) CreamOfTartar() (units.MassConcentration, error) {
	const fn = "water.Profile.CreamOfTartar"
	var none units.MassConcentration
	if err := p.ready(fn); err != nil {
		return none, err
	}
	if err := limit.Check(fn, "temperature", p.t, "°C", 0, 20, tartarSource); err != nil {
		return none, err
	}
	most := min(p.mg[Potassium]/Potassium.facts().mass, p.mg[Tartrate]/Tartrate.facts().mass) // mmol/L
	if most <= 0 {
		return none, nil
	}
	saturated := Profile{t: p.t, ethanol: p.ethanol}
	saturated.settle(-tartarSolubility(p.t, p.ethanol) / tartar * 1000)
	var like Series
	rest, err := like.tartar(saturated)
	if err != nil { // not reached: a saturated solution is a thin one
		return none, limit.Named(fn, err)
	}
	over := func(mmol float64) (float64, error) {
		q := p
		q.settle(mmol)
		now, err := like.tartar(q)
		return rest - now, err
	}
	// One of the two runs out before it all has settled.
	if off, err := over(0); err != nil || off >= 0 {
		return none, limit.Named(fn, err)
	}
	n, err := numeric.Rising(over, most/64, 2, most*(1-1e-9), most*1e-10)
	if err != nil { // not reached: what settles makes the water thinner
		return none, limit.Named(fn, err)
	}
	return units.MilligramPerLitre.Of(checked.Number(n * tartar)), nil
}

// settle takes mmol/L of KHC4H4O6 out of the water.
func (p *Profile) settle(mmol float64) {
	p.mg[Potassium] -= mmol * Potassium.facts().mass
	p.mg[Tartrate] -= mmol * Tartrate.facts().mass
	p.alk += mmol // K+ is one charge, the tartrate two
	p.ph, p.carbon = 0, 0
}

// tartar is the logarithm of the product of the activities of K+ and HC4H4O6-, without CO2.
func (r *Series) tartar(p Profile) (float64, error) {
	e, err := r.Closed(p, units.MolarConcentration{})
	if err != nil {
		return 0, err
	}
	return math.Log(max(1e-300, e.s.active(potassiumFree)*e.s.active(tartaricH))), nil
}

const tartarSource = "Berg & Keefer 1958"

var tartar = Potassium.facts().mass + Tartrate.facts().mass + chemistry.H // g/mol

// tartarTable is g/L at 0, 5, 10, 15, 20 °C, in 0, 10, 12, 14, 20 % vol.
var (
	tartarStrengths = [...]float64{0, 10, 12, 14, 20}
	tartarTable     = [...][len(tartarStrengths)]float64{
		{2.25, 1.26, 1.11, 0.98, 0.68},
		{2.66, 1.58, 1.49, 1.24, 0.86},
		{3.42, 2.02, 1.81, 1.63, 1.10},
		{4.17, 2.45, 2.25, 2.03, 1.51},
		{4.92, 3.08, 2.77, 2.51, 1.82},
	}
)

// tartarSolubility is g/L.
func tartarSolubility(celsius, strength float64) float64 {
	i := min(int(celsius/5), len(tartarTable)-2)
	k := 0
	for k < len(tartarStrengths)-2 && strength > tartarStrengths[k+1] {
		k++
	}
	u, v := celsius/5-float64(i), (strength-tartarStrengths[k])/(tartarStrengths[k+1]-tartarStrengths[k])
	at := func(i int) float64 { return (1-v)*math.Log(tartarTable[i][k]) + v*math.Log(tartarTable[i][k+1]) }
	return math.Exp((1-u)*at(i) + u*at(i+1))
}
