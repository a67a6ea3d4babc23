package acidity

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Liquid is a liquid as its pH sees it: the charge that no pH changes, and the weak
// acids by their totals; mEq and mmol a litre.
type Liquid struct {
	Strong              float64 // cations less anions of strong acids, ammonium with them
	Ammonium, Potassium float64 // parts of strong that yeast takes up
	Sodium              float64 // part of strong
	Phosphate           float64
	Organic             [organics]float64
}

// The organic acids of a wash.
const (
	Succinic = iota
	Acetic
	Lactic
	Citric
	malic
	tartaric
	gluconic
	organics
)

// organicIons are their anions, with the charge they have when they hold no proton.
var organicIons = [organics]water.Ion{
	Succinic: water.Succinate, Acetic: water.Acetate, Lactic: water.Lactate,
	Citric: water.Citrate, malic: water.Malate, tartaric: water.Tartrate, gluconic: water.Gluconate,
}

// Of reads a water. Its alkalinity counts from H2PO4- and the bare organic
// anions, so that the strong charge is the alkalinity and what these hold.
func Of(p water.Profile) Liquid {
	a := Liquid{
		Ammonium: Millimole(p, water.Ammonium), Potassium: Millimole(p, water.Potassium), Sodium: Millimole(p, water.Sodium),
		Phosphate: Millimole(p, water.Phosphate),
		Strong:    p.Alkalinity().In(units.MilligramPerLitreCaCO3) / CaCO3PerEquivalent,
	}
	a.Strong += a.Phosphate
	for i, ion := range organicIons {
		a.Organic[i] = Millimole(p, ion)
		a.Strong -= float64(ion.Charge()) * a.Organic[i]
	}
	return a
}

// CaCO3PerEquivalent is mg of CaCO3 for 1 mEq.
var CaCO3PerEquivalent = chemistry.MustMass("CaCO3") / 2

// Millimole is an ion of a water, mmol/L.
func Millimole(p water.Profile, i water.Ion) float64 {
	return p.Ion(i).In(units.MilligramPerLitre) / i.MolarMass().In(units.GramPerMole)
}

// Scaled is the same when it fills a share of the liquid.
func (a Liquid) Scaled(k float64) Liquid {
	a.Strong *= k
	a.Ammonium *= k
	a.Potassium *= k
	a.Sodium *= k
	a.Phosphate *= k
	for i := range a.Organic {
		a.Organic[i] *= k
	}
	return a
}

// Fed is the same with what nutrients bring.
func (a Liquid) Fed(s nutrient.Supply, share float64) Liquid {
	mmol := func(c units.MassConcentration, molar float64) float64 {
		return share * c.In(units.MilligramPerLitre) / molar
	}
	n, k := mmol(s.Ammonium, formula.WeightN), mmol(s.Potassium, formula.WeightK)
	a.Ammonium += n
	a.Potassium += k
	a.Phosphate += mmol(s.Phosphorus, formula.WeightP)
	a.Strong += n + k + 2*mmol(s.Magnesium, formula.WeightMg) + 2*mmol(s.Zinc, formula.WeightZn) -
		2*mmol(s.Sulfate, water.Sulfate.MolarMass().In(units.GramPerMole)) - mmol(s.Chloride, formula.WeightCl)
	return a
}

// Profile is the liquid as a water, by the litre of the water in it.
func (a Liquid) Profile(s Surroundings) (water.Profile, error) {
	a = a.Scaled(1 / s.water())
	alkalinity := a.Strong - a.Phosphate
	var room [organics + 16]water.Content
	ions := room[:0]
	for _, o := range s.Others {
		ions = append(ions, o.Ion.At(units.MilligramPerLitre.Of(checked.Number(o.Concentration.In(units.MilligramPerLitre)/s.water()))))
	}
	add := func(i water.Ion, mmol float64) {
		if mmol > 0 {
			ions = append(ions, i.At(amount.MgPerL(mmol*i.MolarMass().In(units.GramPerMole))))
		}
	}
	for i, ion := range organicIons {
		alkalinity += float64(ion.Charge()) * a.Organic[i]
		add(ion, a.Organic[i])
	}
	add(water.Phosphate, a.Phosphate)
	add(water.Ammonium, a.Ammonium)
	add(water.Potassium, a.Potassium)
	add(water.Sodium, a.Sodium)
	p, err := water.NewProfile(s.At, units.MilligramPerLitreCaCO3.Of(checked.Number(alkalinity*CaCO3PerEquivalent)), ions...)
	if err != nil || s.Strength.IsZero() {
		return p, err
	}
	return p.WithEthanol(s.Strength)
}

// Surroundings are what a pH depends on beside the acidity.
type Surroundings struct {
	At       units.Temperature
	Strength units.StrengthByVolume // up to the most that [water.Profile.WithEthanol] takes
	Gas      units.AbsolutePressure // of CO2
	Carbon   float64                // mmol/L of CO2 in all forms, where that is too little for the gas; zero is enough
	Flat     bool                   // no CO2 at all, as for a titration
	Others   []water.Content        // ions that no yeast and no buffer changes
	Like     *water.Series          // of liquids like it, where there are any
	Water    float64                // litres of water in a litre, by which package water counts; zero is 1
}

// water is the litres of water in a litre.
func (s *Surroundings) water() float64 {
	if s.Water == 0 {
		return 1
	}
	return s.Water
}

// Rest is the liquid in balance with the gas above it, or with the CO2 that it holds where
// that does not saturate it.
func (a Liquid) Rest(s Surroundings) (e water.Equilibrium, err error) {
	p, err := a.Profile(s)
	switch {
	case err != nil:
		return e, err
	case s.Flat:
		return p.Closed(units.MolarConcentration{})
	case s.Like != nil:
		e, err = s.Like.Under(p, s.Gas)
	default:
		e, err = p.Under(s.Gas)
	}
	if c := s.Carbon / s.water(); err == nil && c > 0 && e.InorganicCarbon().In(units.MillimolePerLitre) > c {
		e, err = p.Closed(units.MillimolePerLitre.Of(checked.Number(c)))
	}
	return e, err
}

// PH is that of the liquid at equilibrium.
func (a Liquid) PH(s Surroundings) (float64, error) {
	e, err := a.Rest(s)
	if err != nil {
		return 0, err
	}
	return e.PH(), nil
}

// Lacks is the strong charge, mEq/L, that the liquid lacks to have a pH under the gas of its
// surroundings (none if that is zero); negative where it has too much.
func (a Liquid) Lacks(ph float64, s Surroundings) (float64, error) {
	p, err := a.Profile(s)
	if err != nil {
		return 0, err
	}
	var wanted units.CalciumCarbonate
	if s.Like != nil {
		wanted, err = s.Like.AlkalinityAt(p, ph, s.Gas)
	} else {
		wanted, err = p.AlkalinityAt(ph, s.Gas)
	}
	return s.water() * (wanted.In(units.MilligramPerLitreCaCO3) - p.Alkalinity().In(units.MilligramPerLitreCaCO3)) / CaCO3PerEquivalent, err
}

// AtPH is the liquid with the strong charge that gives it a pH.
func (a Liquid) AtPH(ph float64, s Surroundings) (Liquid, error) {
	more, err := a.Lacks(ph, s)
	a.Strong += more
	return a, err
}

// Clean takes out what rounding leaves below zero.
func (a Liquid) Clean() Liquid {
	a.Ammonium, a.Potassium, a.Phosphate = max(0, a.Ammonium), max(0, a.Potassium), max(0, a.Phosphate)
	return a
}
