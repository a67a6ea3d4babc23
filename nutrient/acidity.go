package nutrient

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// acidity is a liquid as its pH sees it: the charge that no pH changes, and the weak
// acids by their totals; mEq and mmol a litre.
type acidity struct {
	strong              float64 // cations less anions of strong acids, ammonium with them
	ammonium, potassium float64 // parts of strong that yeast takes up
	sodium              float64 // part of strong
	phosphate           float64
	organic             [organics]float64
}

// The organic acids of a wash.
const (
	succinic = iota
	acetic
	lactic
	citric
	malic
	tartaric
	organics
)

// organicIons are their anions, with the charge they have when they hold no proton.
var organicIons = [organics]water.Ion{
	succinic: water.Succinate, acetic: water.Acetate, lactic: water.Lactate,
	citric: water.Citrate, malic: water.Malate, tartaric: water.Tartrate,
}

// acidityOf reads a water. Its alkalinity counts from H2PO4- and the bare organic
// anions, so that the strong charge is the alkalinity and what these hold.
func acidityOf(p water.Profile) acidity {
	a := acidity{
		ammonium: millimole(p, water.Ammonium), potassium: millimole(p, water.Potassium), sodium: millimole(p, water.Sodium),
		phosphate: millimole(p, water.Phosphate),
		strong:    p.Alkalinity().In(units.MilligramPerLitreCaCO3) / caCO3PerEquivalent,
	}
	a.strong += a.phosphate
	for i, ion := range organicIons {
		a.organic[i] = millimole(p, ion)
		a.strong -= float64(ion.Charge()) * a.organic[i]
	}
	return a
}

// caCO3PerEquivalent is mg of CaCO3 for 1 mEq.
var caCO3PerEquivalent = mustMass("CaCO3") / 2

func millimole(p water.Profile, i water.Ion) float64 {
	return p.Ion(i).In(units.MilligramPerLitre) / i.MolarMass()
}

// scaled is the same when it fills a share of the liquid.
func (a acidity) scaled(k float64) acidity {
	a.strong *= k
	a.ammonium *= k
	a.potassium *= k
	a.sodium *= k
	a.phosphate *= k
	for i := range a.organic {
		a.organic[i] *= k
	}
	return a
}

// fed is the same with what nutrients bring.
func (a acidity) fed(s Supply, share float64) acidity {
	mmol := func(c units.MassConcentration, molar float64) float64 {
		return share * c.In(units.MilligramPerLitre) / molar
	}
	n, k := mmol(s.Ammonium, weightN), mmol(s.Potassium, weightK)
	a.ammonium += n
	a.potassium += k
	a.phosphate += mmol(s.Phosphorus, weightP)
	a.strong += n + k + 2*mmol(s.Magnesium, weightMg) + 2*mmol(s.Zinc, weightZn) -
		2*mmol(s.Sulfate, water.Sulfate.MolarMass()) - mmol(s.Chloride, weightCl)
	return a
}

// profile is the liquid as a water.
func (a acidity) profile(t units.Temperature, others []water.Content) (water.Profile, error) {
	alkalinity := a.strong - a.phosphate
	var room [organics + 16]water.Content
	ions := append(room[:0], others...)
	add := func(i water.Ion, mmol float64) {
		if mmol > 0 {
			ions = append(ions, i.At(mgPerL(mmol*i.MolarMass())))
		}
	}
	for i, ion := range organicIons {
		alkalinity += float64(ion.Charge()) * a.organic[i]
		add(ion, a.organic[i])
	}
	add(water.Phosphate, a.phosphate)
	add(water.Ammonium, a.ammonium)
	add(water.Potassium, a.potassium)
	add(water.Sodium, a.sodium)
	return water.NewProfile(t, units.MilligramPerLitreCaCO3.Of(checked.Number(alkalinity*caCO3PerEquivalent)), ions...)
}

// surroundings are what a pH depends on besides the acidity.
type surroundings struct {
	at     units.Temperature
	gas    units.AbsolutePressure // of CO2
	carbon float64                // mmol/L of CO2 in all forms, where that is too little for the gas; zero is enough
	flat   bool                   // no CO2 at all, as for a titration
	others []water.Content        // ions that no yeast and no buffer changes
	like   *water.Series          // of liquids like it, where there are any
}

// rest is the liquid in balance with the gas above it, or with the CO2 that it holds where
// that does not saturate it.
func (a acidity) rest(s surroundings) (e water.Equilibrium, err error) {
	p, err := a.profile(s.at, s.others)
	switch {
	case err != nil:
		return e, err
	case s.flat:
		return p.Closed(units.MolarConcentration{})
	case s.like != nil:
		e, err = s.like.Under(p, s.gas)
	default:
		e, err = p.Under(s.gas)
	}
	if err == nil && s.carbon > 0 && e.InorganicCarbon().In(units.MillimolePerLitre) > s.carbon {
		e, err = p.Closed(units.MillimolePerLitre.Of(checked.Number(s.carbon)))
	}
	return e, err
}

func (a acidity) pH(s surroundings) (float64, error) {
	e, err := a.rest(s)
	if err != nil {
		return 0, err
	}
	return e.PH(), nil
}

// lacks is the strong charge, mEq/L, that the liquid lacks to have a pH under the gas of its
// surroundings (none if that is zero); negative where it has too much.
func (a acidity) lacks(pH float64, s surroundings) (float64, error) {
	p, err := a.profile(s.at, s.others)
	if err != nil {
		return 0, err
	}
	var wanted units.CalciumCarbonate
	if s.like != nil {
		wanted, err = s.like.AlkalinityAt(p, pH, s.gas)
	} else {
		wanted, err = p.AlkalinityAt(pH, s.gas)
	}
	return (wanted.In(units.MilligramPerLitreCaCO3) - p.Alkalinity().In(units.MilligramPerLitreCaCO3)) / caCO3PerEquivalent, err
}

// atPH is the liquid with the strong charge that gives it a pH.
func (a acidity) atPH(pH float64, s surroundings) (acidity, error) {
	more, err := a.lacks(pH, s)
	a.strong += more
	return a, err
}

// clean takes out what rounding leaves below zero.
func (a acidity) clean() acidity {
	a.ammonium, a.potassium, a.phosphate = max(0, a.ammonium), max(0, a.potassium), max(0, a.phosphate)
	return a
}
