package nutrient

import (
	"fmt"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

const (
	leastFloor = 2.5  // pH
	sameCharge = 1e-7 // mEq/L: a hundredth of a milligram of buffer in a cubic metre
	allUsed    = 1.0  // share of the sugar at the end
)

// BufferFor returns the buffer, on top of what the ferment holds already, with which the
// pH at the end does not fall below a floor. It is a range, as the acids made are: the
// value is for the usual acids, High for the most.
//
//   - Source: as [Ferment.At], solved for the dose by inverse interpolation of the
//     charge that is lacking at the floor.
//   - Range: floor 2.5 to 6, reached with at most 20 g/L; otherwise as [Ferment.At].
//   - Uncertainty: the ends of the dose.
func (f Ferment) BufferFor(floor float64, b Buffer) (BufferDose, error) {
	const fn = "nutrient.Ferment.BufferFor"
	if err := limit.Check(fn, "pH", floor, "", leastFloor, 6, "floors for a ferment"); err != nil {
		return BufferDose{}, err
	}
	c, err := f.checked(fn)
	if err != nil {
		return BufferDose{}, err
	}
	c.like = new(water.Series)
	var mmol [3]float64
	var like doseCurve
	with := c
	for i, m := range c.upTo {
		mmol[i], err = solveDose(fn, b, floor, c.around(allUsed), &like, func(dose float64) acidity {
			with.start = c.start.with(b, dose)
			return with.acidity(with.balance(m, allUsed), allUsed)
		})
		if err != nil {
			return BufferDose{}, err
		}
	}
	return c.doseOf(b, mmol)
}

// solveDose returns the mmol/L of a buffer that bring a liquid to a pH, zero if it is
// there already. The curve of a like liquid, once one is known, tells where to begin;
// each point then bends the curve of this liquid nearer to the truth.
func solveDose(fn string, b Buffer, target float64, s surroundings, like *doseCurve, liquid func(mmol float64) acidity) (dose float64, err error) {
	most := 1000 * mostBuffer / b.MolarMass()
	low, high := -most, most+most
	x := dose
	if like.known() {
		x = min(max(x, like.dose(0)), most)
	}
	var curve doseCurve
	for range mostSteps {
		a := liquid(x)
		lack, err := a.lacks(target, s)
		if err != nil {
			return dose, err
		}
		if lack > 0 {
			low = x
		} else {
			high = x
		}
		if high == dose { // none
			return dose, nil
		}
		if low == most {
			pH, err := a.pH(s)
			if err == nil {
				err = limit.Check(fn, "pH", target, "", leastFloor, pH, "20 g/L of "+b.String())
			}
			return dose, err
		}
		curve.add(x, lack)
		if math.Abs(lack) <= sameCharge {
			*like = curve
			return x, nil
		}
		var next float64
		switch {
		case curve.known():
			next = curve.dose(0)
		case like.known():
			next = x + like.dose(0) - like.dose(lack)
		default: // as if no buffer took any of its charge back
			next = x + lack/b.charge()
		}
		next = min(max(dose, next), most)
		if !(next > low && next < high) {
			next = (max(dose, low) + min(most, high)) / 2
		}
		x = next
	}
	return dose, numeric.ErrNoConvergence
}

// doseOf makes doses of mmol/L with the usual, the least and the most acids.
func (f *fermenting) doseOf(b Buffer, mmol [3]float64) (BufferDose, error) {
	mass := func(n float64) units.Mass { return grams(n / 1000 * b.MolarMass() * f.litres) }
	out := BufferDose{
		Buffer: b,
		Mass: Figure[units.Mass]{
			Value: mass(mmol[0]), Low: mass(min(mmol[0], mmol[1])), High: mass(max(mmol[0], mmol[2])),
			Evidence: Evidence{"charge balance of the liquid", Computed},
		},
		Concentration: mgPerL(mmol[0] * b.MolarMass()),
	}
	facts := b.facts()
	sodium, potassium, citrate := Taste()
	for _, c := range [...]struct {
		ion    water.Ion
		mmol   float64
		most   Figure[units.MassConcentration]
		before float64
	}{
		{water.Sodium, mmol[0] * facts.sodium, sodium, f.start.sodium},
		{water.Potassium, mmol[0] * facts.potassium, potassium, f.start.potassium},
		{water.Citrate, mmol[0] * facts.citrate, citrate, f.start.organic[citric]},
	} {
		mg := (c.mmol + c.before) * c.ion.MolarMass()
		if c.mmol > 0 && mg > c.most.Value.In(units.MilligramPerLitre) {
			out.Cautions = append(out.Cautions, fmt.Sprintf("%.0f mg/L of %s may taste: from %s it does.", mg, c.ion.Name(), c.most.Value.Text(units.MilligramPerLitre, 0)))
		}
	}
	if facts.bicarbonate > 0 && mmol[0] > 0 {
		out.Cautions = append(out.Cautions, "Bicarbonate foams: stir it in by portions, and leave the vessel open to the gas.")
	}
	out.Water = f.Water
	if f.perLitre > 0 {
		var err error
		if out.Water, err = withBuffer(f.Water, b, mmol[0]/f.perLitre); err != nil {
			return BufferDose{}, err
		}
	}
	return out, nil
}

// withBuffer is a water with so many mmol/L of a buffer dissolved in it.
func withBuffer(p water.Profile, b Buffer, mmol float64) (water.Profile, error) {
	facts := b.facts()
	more := map[water.Ion]float64{water.Sodium: mmol * facts.sodium, water.Potassium: mmol * facts.potassium, water.Citrate: mmol * facts.citrate}
	var ions []water.Content
	for _, i := range water.Ions() {
		if i == water.Bicarbonate || i == water.Carbonate || i == water.Hydroxide {
			continue
		}
		mg := p.Ion(i).In(units.MilligramPerLitre) + more[i]*i.MolarMass()
		if mg > 0 {
			ions = append(ions, i.At(mgPerL(mg)))
		}
	}
	alkalinity := p.Alkalinity().In(units.MilligramPerLitreCaCO3) + mmol*facts.bicarbonate*caCO3PerEquivalent
	return water.NewProfile(p.Temperature(), units.MilligramPerLitreCaCO3.Of(checked.Number(alkalinity)), ions...)
}

// Correction is a buffer for a ferment that stopped.
type Correction struct {
	Dose BufferDose
	// End is the pH when the rest of the sugar has fermented after the dose.
	End Figure[float64]
	// Unexplained is the acid in the liquid beyond what the balance foresees at the usual
	// acids; a negative one means that there is less.
	Unexplained units.EquivalentConcentration
	Cautions    []string
}

// Correct returns the buffer that brings a ferment which stopped at a share of its sugar
// and a measured pH to another pH. The measured pH fixes the charge of the strong ions;
// the acids made are taken from the balance, as they resist the change.
//
//   - Source: as [Ferment.At].
//   - Range: pH 2 to 6, to a higher one of at most 6.5; share above 0; otherwise as
//     [Ferment.At].
//   - Uncertainty: the ends of the dose; a pH meter is good to 0.05, which is a fifth of a
//     small dose. Add half, stir, measure again.
func (f Ferment) Correct(used units.Share, measured, target float64, b Buffer) (Correction, error) {
	const fn = "nutrient.Ferment.Correct"
	if err := limit.Check(fn, "measured pH", measured, "", 2, 6, "ferments"); err != nil {
		return Correction{}, err
	}
	if err := limit.Check(fn, "pH", target, "", measured, 6.5, "above the measured pH"); err != nil {
		return Correction{}, err
	}
	x := used.In(units.Percent) / 100
	if err := limit.Check(fn, "share of the sugar used", used.In(units.Percent), "%", 0.1, 100, "a ferment that has begun"); err != nil {
		return Correction{}, err
	}
	c, err := f.checked(fn)
	if err != nil {
		return Correction{}, err
	}
	c.like = new(water.Series)
	var mmol, end [3]float64
	var like doseCurve
	var out Correction
	for i, m := range c.upTo {
		foreseen := c.acidity(c.balance(m, x), x)
		now, err := foreseen.atPH(measured, c.around(x))
		if err != nil {
			return Correction{}, err
		}
		mmol[i], err = solveDose(fn, b, target, c.around(x), &like, func(dose float64) acidity { return now.with(b, dose) })
		if err != nil {
			return Correction{}, err
		}
		last := c.acidity(c.balance(m, allUsed), allUsed).with(b, mmol[i])
		last.strong += now.strong - foreseen.strong
		if end[i], err = last.pH(c.around(allUsed)); err != nil {
			return Correction{}, err
		}
		if i == 0 {
			out.Unexplained = units.MilliequivalentPerLitre.Of(checked.Number(foreseen.strong - now.strong))
		}
	}
	out.End = Figure[float64]{end[0], min(end[0], end[1], end[2]), max(end[0], end[1], end[2]), Evidence{"charge balance of the liquid", Computed}}
	if out.Dose, err = c.doseOf(b, mmol); err != nil {
		return Correction{}, err
	}
	out.Cautions = append(out.Cautions, "Add half of the dose, stir, wait for the gas to leave, and measure again before the rest.")
	return out, nil
}
