package water

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Titration is a convention of titratable acidity: the pH where it ends and the acid it is
// expressed as. Wine is titrated to pH 7.0 as tartaric acid (OIV-MA-AS313-01, read; the CO2
// driven out first), in France as sulfuric; American practice is pH 8.2, wine as tartaric, beer
// as lactic, cider as malic, soft drinks as citric acid (AOAC 962.12, recalled from memory).
type Titration struct {
	End float64
	As  Acid
}

// TitratedTo is the convention that ends at a pH and counts as this acid:
// TartaricAcid.TitratedTo(7) for wine by the OIV.
func (a Acid) TitratedTo(ph float64) Titration { return Titration{End: ph, As: a} }

// TitratableAcidity returns the sodium hydroxide that a water or a wash without CO2 takes
// to the end point, as the acid of the convention. It is zero where the pH is above the end
// point already.
//
// Errors are a [*units.RangeError] as in [Profile.Closed], an end point outside 4 to
// 10 or an unknown acid.
//
//   - Source: [Titration]; the equilibrium of [Profile.Closed] at the end point.
func (p Profile) TitratableAcidity(t Titration) (units.MassConcentration, error) {
	const fn = "water.Profile.TitratableAcidity"
	var none units.MassConcentration
	if err := t.As.known(fn); err != nil {
		return none, err
	}
	if err := limit.Check(fn, "end point", t.End, "", 4, 10, "conventions of titration"); err != nil {
		return none, err
	}
	if err := p.ready(fn); err != nil {
		return none, err
	}
	var s solution
	p.fillSolution(&s)
	s.total[partCO3] = 0
	s.constantsAt(p.t)
	s.begin(t.End)
	// The sodium of the titrant adds to the ionic strength, and that a little to the
	// alkalinity at the end point.
	before := s.total[partNa]
	var mEq float64
	for range mostRounds {
		s.total[partNa] = before + mEq*molal
		if err := s.atPH(fn, byCarbon, nil); err != nil {
			return none, err
		}
		alk := s.alkalinity()
		last := mEq
		mEq = max(0, alk/molal-p.alk)
		if math.Abs(mEq-last) <= closely*mEq {
			break
		}
	}
	return units.MilligramPerLitre.Of(checked.Number(mEq * t.As.equivalent())), nil
}

// equivalent returns g/Eq of the acid, all its acid hydrogens counted (two of
// phosphoric).
func (a Acid) equivalent() float64 {
	f := a.facts()
	return f.mass / float64(max(1, f.hydrogens))
}

// ConvertAcidity expresses an acidity as another acid: 1 g/L as tartaric is 0.653 g/L
// as sulfuric. The error is a [*units.RangeError] for an unknown acid.
//
//   - Source: molar mass over the acid hydrogens; atomic weights 2021.
func ConvertAcidity(c units.MassConcentration, from, to Acid) (units.MassConcentration, error) {
	const fn = "water.ConvertAcidity"
	for _, a := range [...]Acid{from, to} {
		if err := a.known(fn); err != nil {
			return units.MassConcentration{}, err
		}
	}
	v := c.In(units.MilligramPerLitre)
	if err := limit.Check(fn, "acidity", v, "mg/L", 0, math.MaxFloat64, "an acidity"); err != nil {
		return units.MassConcentration{}, err
	}
	return units.MilligramPerLitre.Of(checked.Number(v / from.equivalent() * to.equivalent())), nil
}
