package plan

import (
	"math"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/units"
)

// known is what is known of the unknowns, with the fermentable and the instruments of the request: the
// one list that a plan's intervals come from, drawn or not.
func (m *maker) known() []forward.Unknown {
	all := forward.Known()
	between := func(name string, low, high float64, evidence string) {
		if k := unknown(all, name); k != nil {
			k.Low, k.High, k.Evidence = low, high, evidence
		}
	}
	set := func(name string, half float64) { between(name, -half, half, "the request's instruments") }
	if m.batch.fermentable > 0 {
		set("scale", 50*m.req.Scales.Sugar.Quantity().In(units.Kilogram)/m.batch.fermentable)
		purity := 2 * m.solidsSpread() // k = 2
		between("sugar of the fermentable", -purity, purity, "package material, its spread")
	}
	left := 200 * m.unfermentedSpread() // k = 2
	between("sugar that yeast leaves", -left, left, "package material, its spread; at most half of what is left")
	if m.brings.salts == 0 {
		between("salts of the fruit, honey or malt", 0, 0, "of sugar none")
	}
	if lost := unknown(all, ethanolLost); m.malt() {
		half := math.Sqrt(6) * maltSpread * (100 - lost.Usual) // of a triangle
		between(ethanolLost, lost.Usual-half, lost.Usual+half, "Balling's yield, package gravity")
	}
	if lost := unknown(all, ethanolLost); m.req.Yeast.Yield != nil && m.brewed != nil {
		lost.Usual = m.brewed.unknowns.Lost
		half := math.Sqrt(6) * ownSpread * (100 - lost.Usual) // of a triangle
		between(ethanolLost, max(0, lost.Usual-half), lost.Usual+half, "the request's own yield, 1 % from batch to batch: common practice, no source")
	}
	set("hydrometer", 500*m.division())
	if i := m.req.Instruments; i != nil {
		if i.Volume != nil {
			set("level", 100*i.Volume.In(units.Litre)/m.plan.Water.Volume.In(units.Litre))
		}
		if i.Thermometer != nil {
			set("thermometer", i.Thermometer.In(units.KelvinDifference))
		}
		if i.Gauge != nil {
			set("gauge", i.Gauge.In(units.KilopascalGauge))
		}
	}
	return all
}

// ownSpread is how far one's own yield is off in the next batch, as a part of it (common practice, no source): a third of what
// the yield of others is known to.
const ownSpread = 0.01

// unknown finds one by its name.
func unknown(all []forward.Unknown, name string) *forward.Unknown {
	for i := range all {
		if all[i].Name == name {
			return &all[i]
		}
	}
	return nil
}

// solidsSpread is how well the sugar of the fermentable is known, %, apart from what of it the yeast leaves: its spread is
// of both. Where that takes all of it the solids are known to a quarter of a percent (common practice, no source).
func (m *maker) solidsSpread() float64 {
	all, left := m.fermentable.Spread().In(units.Percent), 100*m.unfermentedSpread()
	if left == 0 {
		return all
	}
	return max(0.25, math.Sqrt(max(0, all*all-left*left)))
}

// unfermentedSpread is how well it is known what of the solids the yeast leaves, as a part of the
// sugar: as well as the sugar itself, but no worse than by half of what is left (chosen). Of
// sugar alone nothing is left.
func (m *maker) unfermentedSpread() float64 {
	c := m.fermentable.Composition()
	sugar, rest := c.Sugar().In(units.Fraction), c.UnfermentedSolids.In(units.Fraction)
	if sugar == 0 {
		return 0
	}
	return min(m.fermentable.Spread().In(units.Fraction), rest/sugar/2)
}

const ethanolLost = "ethanol lost"
