package ferment

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/water"
)

// NitrogenUptake returns the share of the sugar by which yeast has taken up its
// nitrogen.
//
//   - Source: common practice, no source: the first third to two thirds.
func NitrogenUptake() evidence.Figure[units.Share] {
	return evidence.Figure[units.Share]{Value: units.Percent.Of(50), Low: amount.Share(1.0 / 3), High: amount.Share(2.0 / 3), Evidence: evidence.Evidence{}}
}

// fed is the share of the feed that is in when a share of the sugar is used.
func (f *fermenting) fed(used float64) float64 {
	n := f.Additions
	last := nutrient.LastAddition().In(units.Fraction)
	in := 1 + int(used/last*float64(n-1)+rounding)
	return float64(min(n, in)) / float64(n)
}

// balance is what was used and made when a share of the sugar is used.
func (f *fermenting) balance(m Metabolism, used float64) Balance {
	fed := f.fed(used)
	taken := min(fed, used/NitrogenUptake().Value.In(units.Fraction))
	g := func(perLitre units.MassConcentration, share float64) units.Mass {
		return amount.Grams(share * perLitre.In(units.GramPerLitre) * f.litres)
	}
	return m.ferment(Substrate{
		Hexose:   amount.Grams(f.hexose * used),
		Ammonium: g(f.feed.Ammonium, taken).Plus(amount.Grams(taken * f.start.Ammonium * formula.WeightN / 1000 * f.litres)),
		Amino:    g(f.feed.Amino, taken).Plus(amount.Grams(taken * f.amino / 1000 * f.litres)), Urea: g(f.feed.Urea, taken),
		Phosphorus: g(f.feed.Phosphorus, fed).Plus(amount.Grams(f.start.Phosphate * formula.WeightP / 1000 * f.litres)),
		Potassium:  g(f.feed.Potassium, fed).Plus(amount.Grams(f.start.Potassium * formula.WeightK / 1000 * f.litres)),
	})
}

// acidity is the liquid when a share of the sugar is used, with the balance until then.
func (f *fermenting) acidity(b Balance, used float64) acidity.Liquid {
	a := f.start.Fed(f.feed, f.fed(used))
	per := 1000 / f.litres // mmol/L for a mol
	n := b.moles()
	a.Ammonium -= per * n.ammonium
	a.Potassium -= per * n.potassium
	a.Phosphate -= per * n.phosphorus
	a.Strong -= per * (n.ammonium + n.free*n.potassium)
	a.Organic[acidity.Succinic] += per * n.succinic
	a.Organic[acidity.Acetic] += per * n.acetic
	a.Organic[acidity.Lactic] += per * n.lactic
	return a.Clean()
}

// rest is the ions that no yeast and no buffer changes, by the litre of drink.
func (f *fermenting) rest() []water.Content {
	if f.others != nil {
		return f.others
	}
	f.others = make([]water.Content, 0, 8)
	for _, c := range [...]struct {
		ion  water.Ion
		more float64 // mg/L
	}{
		{water.Calcium, 0}, {water.Magnesium, f.feed.Magnesium.In(units.MilligramPerLitre)},
		{water.Chloride, f.feed.Chloride.In(units.MilligramPerLitre)}, {water.Sulfate, f.feed.Sulfate.In(units.MilligramPerLitre)},
		{water.Nitrate, 0}, {water.Zinc, f.feed.Zinc.In(units.MilligramPerLitre)},
		{water.Glutamate, 0}, {water.Sulfite, 0}, {water.Sorbate, 0},
	} {
		mg := f.perLitre*f.Water.Ion(c.ion).In(units.MilligramPerLitre) + c.more
		if mg > 0 {
			f.others = append(f.others, c.ion.At(units.MilligramPerLitre.Of(checked.Number(mg))))
		}
	}
	return f.others
}
