package ferment

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/water"
)

// Point is a ferment when a share of its sugar is used. Strength and CO2 are by the yield
// of the Brew, the Balance by its own atoms; the two differ by 2 to 4 %, within the
// uncertainty of both, unless the Brew was made with [Balance.Yield].
type Point struct {
	Used     units.Share
	PH       evidence.Figure[float64] // Low with the most acids that yeast makes, High with the least
	Gravity  gravity.Gravity
	Strength units.StrengthByVolume
	CO2      units.Mass // given off until then
	// Gas is the pressure of CO2 that the liquid is at equilibrium with: of air before the yeast works, then rising to
	// that of the gas above, which it reaches at about a twentieth of the sugar.
	Gas      units.AbsolutePressure
	Balance  Balance                 // until then, with the usual acids
	Nitrogen units.MassConcentration // in the liquid, that yeast can still take up
	Liquid   water.Profile           // with the usual acids, by the litre of the liquid; its alkalinity is negative when it is sour
}

// At returns the ferment when a share of its sugar is used. At zero the wash is at equilibrium
// with the CO2 of air, a state that a wash fresh from the kettle comes near in hours; its
// own CO2 then takes the pH down by up to three, until the liquid is saturated at about
// a twentieth of the sugar.
//
//   - Source: charge balance: strong ions of water, feed and buffer; H+ for ammonium and
//     potassium taken up, phosphate with its proton, acids made ([Metabolism.Ferment]);
//     the CO2 made, up to that of the gas above; equilibria of package water.
//   - Range: a wash of 0 to 40 °C at 50 to 400 kPa, up to 1000 mg/L of nitrogen and 20
//     g/L of buffer; beyond it the error is a [*units.RangeError].
//   - Uncertainty: PH.Low to PH.High, from the acids made; the nitrogen that yeast
//     takes up is counted as if it took all. Ethanol makes acids weaker as
//     [water.Profile.WithEthanol] counts it, above 16 % vol as at 16.
func (f Tank) At(used units.Share) (Point, error) {
	const fn = "ferment.Tank.At"
	if err := limit.Check(fn, "share of the sugar used", used.In(units.Percent), "%", 0, 100, "a part of the sugar"); err != nil {
		return Point{}, err
	}
	c, err := f.checked(fn)
	if err != nil {
		return Point{}, limit.Named(fn, err)
	}
	c.like = new(water.Series)
	p, err := c.at(used.In(units.Percent) / 100)
	return p, limit.Named(fn, err)
}

func (f *fermenting) at(used float64) (Point, error) {
	p := Point{Used: amount.Share(used)}
	ph, e, err := f.span(used)
	if err != nil {
		return Point{}, err
	}
	p.PH, p.Gas = ph, e.CO2Pressure()
	s, made, err := f.Brew.At(p.Used)
	if err != nil {
		return Point{}, err
	}
	p.Gravity, p.Strength, p.CO2 = s.Gravity(), s.ByVolume(), made.CO2
	p.Balance = f.balance(f.Metabolism, used)
	p.Nitrogen = f.nitrogen(p.Balance, used)
	around := f.around(used)
	around.Water = 0
	p.Liquid, err = f.acidity(p.Balance, used).Profile(around)
	return p, err
}

// nitrogen is what yeast can still take up.
func (f *fermenting) nitrogen(b Balance, used float64) units.MassConcentration {
	amino := f.amino + f.fed(used)*(f.feed.Amino.In(units.MilligramPerLitre)+f.feed.Urea.In(units.MilligramPerLitre)) -
		b.Amino.Plus(b.Urea).In(units.Milligram)/f.litres
	return amount.MgPerL(max(0, f.acidity(b, used).Ammonium*formula.WeightN+amino))
}
