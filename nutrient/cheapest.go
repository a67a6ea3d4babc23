package nutrient

import (
	"fmt"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// leftOpen is where the rounding of the linear program ends.
const leftOpen = 1e-8

// Wants is what a wash should be given, at least. Zero fields want nothing.
type Wants struct {
	Nitrogen                               units.MassConcentration // in all forms
	Amino                                  units.MassConcentration // the part of it that sets no acid free
	Phosphorus, Potassium, Magnesium, Zinc units.MassConcentration
	Thiamine                               units.MassConcentration // as the hydrochloride
}

// CheapestFeed returns the cheapest doses that give a wash what it wants within the law's
// limits for wine. Where the sources cannot give all, the doses leave the least open,
// each want counted as a share of itself.
//
//   - Source: composition of each [material.Material]; limits of [law.Jurisdiction.Limits]; least cost by
//     [numeric.Linear].
//   - Range: each want 0 to 1000 mg/L, prices 0 to 1e6, 1 to 30 offers, volume up to 1e9
//     L; beyond it the error is a [*units.RangeError]; an unknown law or group is a
//     [*units.NameError].
//   - Units: wants in mg/L on the volume given.
//   - Uncertainty: that of the wants.
func CheapestFeed(wants Wants, v units.Volume, j law.Jurisdiction, offers ...Offer) (Feed, error) {
	const fn = "nutrient.CheapestFeed"
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", amount.LeastVolume, amount.MostVolume, "a volume of liquid"); err != nil {
		return Feed{}, err
	}
	if err := limit.Check(fn, "offers", float64(len(offers)), "", 1, 30, "sources at hand"); err != nil {
		return Feed{}, err
	}
	p, err := newFeedProgram(fn, wants, j, offers)
	if err != nil {
		return Feed{}, err
	}
	x, err := numeric.Linear(p.cost, p.rows, p.right)
	if err != nil {
		return Feed{}, fmt.Errorf("%s: %w", fn, err)
	}
	var out Feed
	for i, o := range offers {
		if x[i] > leftOpen { // g/L
			out.Doses = append(out.Doses, material.Dose{Material: o.Material, Mass: amount.Kilograms(x[i] * litres / 1000)})
			out.Cautions = out.Cautions.With(o.Material.Cautions()...)
			p.bounds.use(p.bounds.find(o.group()), x[i])
		}
	}
	out.Limits = p.bounds.seen()
	out.Supply = supplyOf(litres, out.Doses)
	var left []string
	for k, w := range p.wanted {
		if open := x[len(offers)+k] * w.want; open > leftOpen*w.want {
			left = append(left, fmt.Sprintf("%.3g mg/L of the %s", open, w.what))
			if w.what == "nitrogen" {
				out.Shortfall = amount.MgPerL(open)
			}
		}
	}
	if len(left) > 0 {
		out.Cautions = out.Cautions.With(wantOpen.With(strings.Join(left, ", ")))
	}
	if len(out.Limits) > 0 {
		out.Cautions = out.Cautions.With(law.CheckTheLaw)
	}
	return out, nil
}

// feedProgram is the linear program: doses in g/L, then what is left open of each want
// as a share of it.
type feedProgram struct {
	cost   []float64
	rows   [][]float64
	right  []float64
	wanted []wanted
	bounds ceilings
}

type wanted struct {
	what string
	want float64 // mg/L
	of   func(material.Composition) units.Share
}

func newFeedProgram(fn string, wants Wants, j law.Jurisdiction, offers []Offer) (feedProgram, error) {
	var p feedProgram
	var err error
	if p.bounds, err = newCeilings(fn, j, offers); err != nil {
		return p, err
	}
	for _, w := range []struct {
		what string
		want units.MassConcentration
		of   func(material.Composition) units.Share
	}{
		{"nitrogen", wants.Nitrogen, material.Composition.Nitrogen},
		{"amino nitrogen", wants.Amino, func(s material.Composition) units.Share { return s.AminoNitrogen }},
		{"phosphorus", wants.Phosphorus, func(s material.Composition) units.Share { return s.Phosphorus }},
		{"potassium", wants.Potassium, func(s material.Composition) units.Share { return s.Potassium }},
		{"magnesium", wants.Magnesium, func(s material.Composition) units.Share { return s.Magnesium }},
		{"zinc", wants.Zinc, func(s material.Composition) units.Share { return s.Zinc }},
		{"thiamine", wants.Thiamine, func(s material.Composition) units.Share { return s.Thiamine }},
	} {
		mg := w.want.In(units.MilligramPerLitre)
		if err := limit.Check(fn, w.what, mg, "mg/L", 0, 1000, "needs published for musts"); err != nil {
			return p, err
		}
		if mg > 0 {
			p.wanted = append(p.wanted, wanted{w.what, mg, w.of})
		}
	}
	n := len(offers) + len(p.wanted)
	var dearest float64
	for _, o := range offers {
		price := o.Price.InexactFloat64()
		if o.Price.IsZero() {
			price = 1
		}
		if err := limit.Check(fn, "price of "+o.Material.Name(), price, "a kg", 0, 1e6, "prices"); err != nil {
			return p, err
		}
		dearest = max(dearest, price)
		p.cost = append(p.cost, price)
	}
	for i := range offers {
		p.cost[i] /= dearest
	}
	for range p.wanted {
		p.cost = append(p.cost, 1e5) // leaving a want open costs more than any dose
	}
	for k, w := range p.wanted { // −supply/want − open ≤ −1
		row := make([]float64, n)
		for i, o := range offers {
			row[i] = -1000 * w.of(o.Material.Composition()).In(units.Percent) / 100 / w.want
		}
		row[len(offers)+k] = -1
		p.rows, p.right = append(p.rows, row), append(p.right, -1)
	}
	for _, o := range offers {
		p.bounds.find(o.group())
	}
	for i, l := range p.bounds.limits { // sum of doses under the limit, over the limit
		row := make([]float64, n)
		most := l.Weighed().In(units.GramPerLitre)
		for k, o := range offers {
			if p.bounds.find(o.group()) == i {
				row[k] = 1 / most
			}
		}
		p.rows, p.right = append(p.rows, row), append(p.right, 1)
	}
	return p, nil
}
