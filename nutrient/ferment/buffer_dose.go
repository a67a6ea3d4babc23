package ferment

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

const (
	leastFloor = 2.5  // pH
	sameCharge = 1e-7 // mEq/L: a hundredth of a milligram of buffer in a cubic metre
	mostTries  = 60   // where the search gives up
	allUsed    = 1.0  // share of the sugar at the end
)

// BufferFor returns the buffer, on top of what the ferment holds already, with which the
// pH at the end does not fall below a floor. It is a range, as the acids made are: the
// value is for the usual acids, High for the most.
//
//   - Source: as [Tank.At], solved for the dose by inverse interpolation of the
//     charge that is lacking at the floor.
//   - Range: floor 2.5 to 6, reached with at most 20 g/L; otherwise as [Tank.At].
//   - Uncertainty: the ends of the dose. Yeast that lacks potassium takes the first few mg/L of a salt, which lift
//     nothing: a floor less than 0.0005 above the pH without a buffer may be missed by that.
func (f Tank) BufferFor(salt material.Material, floor float64) (BufferDose, error) {
	const fn = "ferment.Tank.BufferFor"
	b, err := bufferOf(fn, salt)
	if err != nil {
		return BufferDose{}, err
	}
	if err := limit.Check(fn, "pH", floor, "", leastFloor, 6, "floors for a ferment"); err != nil {
		return BufferDose{}, err
	}
	c, err := f.checked(fn)
	if err != nil {
		return BufferDose{}, limit.Named(fn, err)
	}
	c.like = new(water.Series)
	var mmol [3]float64
	var like doseCurve
	with := c
	for i, m := range c.upTo {
		if i > 0 && f.AcidsKnown {
			mmol[i] = mmol[0]
			continue
		}
		mmol[i], err = solveDose(fn, b, floor, c.around(allUsed), &like, func(dose float64) acidity.Liquid {
			with.start = b.in(c.start, dose)
			return with.acidity(with.balance(m, allUsed), allUsed)
		})
		if err != nil {
			return BufferDose{}, limit.Named(fn, err)
		}
	}
	dose, err := c.doseOf(b, mmol)
	return dose, limit.Named(fn, err)
}

// solveDose returns the mmol/L of a buffer that bring a liquid to a pH, zero if it is
// there already. The curve of a like liquid, once one is known, says where to begin;
// each point then bends the curve of this liquid nearer to the truth.
func solveDose(fn string, b *buffer, target float64, s acidity.Surroundings, like *doseCurve, liquid func(mmol float64) acidity.Liquid) (dose float64,
	err error) {
	most := 1000 * mostBuffer / b.MolarMass().In(units.GramPerMole)
	low, high := -most, most+most
	x := dose
	if like.known() {
		x = min(max(x, like.dose(0)), most)
	}
	var curve doseCurve
	for range mostTries {
		a := liquid(x)
		lack, err := a.Lacks(target, s)
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
			ph, err := a.PH(s)
			if err == nil {
				err = limit.Check(fn, "pH", target, "", leastFloor, ph, "20 g/L of "+b.Name())
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
			var moved float64
			if next, moved = curve.settling(0); curve.n > 2 && moved*b.charge() <= sameCharge && next > dose && next < most {
				*like = curve
				return next, nil
			}
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
func (f *fermenting) doseOf(b *buffer, mmol [3]float64) (BufferDose, error) {
	mass := func(n float64) units.Mass {
		return amount.Grams(n / 1000 * b.MolarMass().In(units.GramPerMole) * f.litres)
	}
	out := BufferDose{
		Buffer: b.Material,
		Mass: evidence.Figure[units.Mass]{
			Value: mass(mmol[0]), Low: mass(min(mmol[0], mmol[1])), High: mass(max(mmol[0], mmol[2])),
			Evidence: evidence.Evidence{Source: "charge balance of the liquid", Grade: evidence.Computed},
		},
		Concentration: amount.MgPerL(mmol[0] * b.MolarMass().In(units.GramPerMole)),
	}
	sodium, potassium, citrate := TasteThresholds()
	for _, c := range [...]struct {
		ion    water.Ion
		mmol   float64
		most   evidence.Figure[units.MassConcentration]
		before float64
	}{
		{water.Sodium, mmol[0] * b.sodium, sodium, f.start.Sodium},
		{water.Potassium, mmol[0] * b.potassium, potassium, f.start.Potassium},
		{water.Citrate, mmol[0] * b.citrate, citrate, f.start.Organic[acidity.Citric]},
	} {
		mg := (c.mmol + c.before) * c.ion.MolarMass().In(units.GramPerMole)
		if c.mmol > 0 && mg > c.most.Value.In(units.MilligramPerLitre) {
			out.Cautions = out.Cautions.With(("taste_" + caution.Caution(c.ion.Name()) + ": %.0f mg/L of %s may taste: from %s it does.").With(mg, c.ion.Name(),
				c.most.Value.Text(units.MilligramPerLitre, 0)))
		}
	}
	out.Cautions = out.Cautions.WithIf(b.bicarbonate > 0 && mmol[0] > 0, foams)
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
func withBuffer(p water.Profile, b *buffer, mmol float64) (water.Profile, error) {
	more := map[water.Ion]float64{water.Sodium: mmol * b.sodium, water.Potassium: mmol * b.potassium, water.Citrate: mmol * b.citrate}
	var ions []water.Content
	for _, i := range water.Ions() {
		if i == water.Bicarbonate || i == water.Carbonate || i == water.Hydroxide {
			continue
		}
		mg := p.Ion(i).In(units.MilligramPerLitre) + more[i]*i.MolarMass().In(units.GramPerMole)
		if mg > 0 {
			ions = append(ions, i.At(amount.MgPerL(mg)))
		}
	}
	alkalinity := p.Alkalinity().In(units.MilligramPerLitreCaCO3) + mmol*b.bicarbonate*acidity.CaCO3PerEquivalent
	return water.NewProfile(p.Temperature(), units.MilligramPerLitreCaCO3.Of(checked.Number(alkalinity)), ions...)
}

const foams caution.Caution = "foams: Bicarbonate foams: stir it in by portions, and leave the vessel open to the gas."
