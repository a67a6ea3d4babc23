package nutrient

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Supply is what doses bring to a litre.
type Supply struct {
	Ammonium, Amino, Urea                  units.MassConcentration // nitrogen by form, as N
	Phosphorus, Potassium, Magnesium, Zinc units.MassConcentration // as the element
	Sulfate, Chloride                      units.MassConcentration // as the ion
	Thiamine                               units.MassConcentration // as the hydrochloride
}

// Nitrogen returns the nitrogen in all its forms, as N.
func (s Supply) Nitrogen() units.MassConcentration { return s.Ammonium.Plus(s.Amino).Plus(s.Urea) }

// Plus adds what another set of doses brings.
func (s Supply) Plus(o Supply) Supply {
	return Supply{
		Ammonium: s.Ammonium.Plus(o.Ammonium), Amino: s.Amino.Plus(o.Amino), Urea: s.Urea.Plus(o.Urea),
		Phosphorus: s.Phosphorus.Plus(o.Phosphorus), Potassium: s.Potassium.Plus(o.Potassium),
		Magnesium: s.Magnesium.Plus(o.Magnesium), Zinc: s.Zinc.Plus(o.Zinc),
		Sulfate: s.Sulfate.Plus(o.Sulfate), Chloride: s.Chloride.Plus(o.Chloride),
		Thiamine: s.Thiamine.Plus(o.Thiamine),
	}
}

// SupplyOf returns what doses bring to a volume of liquid.
//
//   - Source: composition of each material.
//   - Range: doses not negative, volume above 0 and up to 1e9 L; beyond it the error
//     is a [*units.RangeError].
//   - Units: nitrogen, phosphorus and metals as the element.
//   - Uncertainty: that of the composition.
func SupplyOf(v units.Volume, doses ...material.Dose) (Supply, error) {
	const fn = "nutrient.SupplyOf"
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", amount.LeastVolume, amount.MostVolume, "a volume of liquid"); err != nil {
		return Supply{}, err
	}
	for _, d := range doses {
		if err := limit.Check(fn, "dose", d.Mass.In(units.Gram), "g", 0, amount.MostMass, "a mass weighed"); err != nil {
			return Supply{}, err
		}
	}
	return supplyOf(litres, doses), nil
}

func supplyOf(litres float64, doses []material.Dose) (sum Supply) {
	for _, d := range doses {
		p, k := d.Material.Composition(), d.Mass.In(units.Milligram)/litres // mg of the source per litre
		of := func(s units.Share) units.MassConcentration {
			return units.MilligramPerLitre.Of(checked.Number(s.In(units.Percent) / 100 * k))
		}
		sum = sum.Plus(Supply{
			Ammonium: of(p.AmmoniumNitrogen), Amino: of(p.AminoNitrogen), Urea: of(p.UreaNitrogen),
			Phosphorus: of(p.Phosphorus), Potassium: of(p.Potassium), Magnesium: of(p.Magnesium), Zinc: of(p.Zinc),
			Sulfate: of(p.Sulfate), Chloride: of(p.Chloride), Thiamine: of(p.Thiamine),
		})
	}
	return sum
}
