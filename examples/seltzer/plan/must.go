package plan

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

// MustPlan is what a juice, honey or malt brings to the wash beside its sugar.
type MustPlan struct {
	Of        string                  `json:"of"` // "apple juice", as it comes; "wash of honey"
	PH        float64                 `json:"pH"`
	Band      float64                 `json:"pH_band"`  // to either side, also of the pH of the ferment
	Measured  bool                    `json:"measured"` // by pH and acidity; otherwise the usual composition, or the acidity alone
	Acidity   units.MassConcentration `json:"titratable_acidity"`
	As        string                  `json:"acidity_as"` // "malic acid to pH 8.2"
	Potassium units.MassConcentration `json:"potassium"`  // in the wash, of the juice, honey or malt
	Nitrogen  units.MassConcentration `json:"nitrogen"`   // in the wash, of it that yeast can take up
	Source    string                  `json:"source"`
	Blend     *BlendPlan              `json:"blend,omitempty"`
}

// brought is what the fermentable of a recipe brings of its own; none of it for sugar.
type brought struct {
	from     must.Origin
	some     bool // it brings acids and minerals
	known    bool // by its origin or by what was measured
	juice    bool
	acids    must.AcidShares
	material material.Material // the fermentable with all that it brings
	amino    float64           // g of nitrogen in a kilogram of it
	nitrogen float64           // g, all of it
	salts    float64           // mol of charge in all of it, to either side (k = 2): its band in pH, as strong ions
}

// setMust finds what the fermentable is, by its name, and checks what was measured.
func (k *recipe) setMust() error {
	name := k.fermentable.Name()
	b := &k.brings
	fruit, _, _ := strings.Cut(k.juiceText(), "juice ")
	switch {
	case k.fruit.name == "" && strings.Contains(name, "honey"):
		b.some, b.known, b.from = true, true, must.FromHoney
	case strings.Contains(name, "malt"):
		b.some, b.known, b.from = true, true, must.FromMalt
	case strings.Contains(name, "juice"):
		b.some, b.juice = true, true
		if of := strings.TrimSpace(fruit); of != "" {
			b.known = b.from.UnmarshalText([]byte(of)) == nil
		}
	}
	r := k.req.Must
	if r == nil {
		return nil
	}
	if !b.some {
		return &RequestError{Field: "must", Value: "given", Allowed: "left out of " + name + ", which brings no acids; only for juice, honey and malt"}
	}
	if err := r.measuredOK(b); err != nil {
		return err
	}
	for i, p := range r.Acids {
		field := fmt.Sprintf("must.acids[%d].", i)
		a, err := water.ParseAcid(p.What)
		if err != nil {
			return named(field+"what", p.What, err)
		}
		if !(p.Parts > 0 && p.Parts <= 1000) {
			return &RequestError{Field: field + "parts", Value: trim(p.Parts), Allowed: "above 0, up to 1000"}
		}
		b.acids = append(b.acids,
			a.Ion().At(units.GramPerLitre.Of(checked.Number(p.Parts*a.Ion().MolarMass().In(units.GramPerMole)/a.MolarMass().In(units.GramPerMole)))))
	}
	if b.juice && !b.known && r.PH != 0 && len(b.acids) > 0 {
		b.known = true
	}
	return nil
}

// must works out what the juice, honey or malt brings.
func (m *maker) must(say *notes) (b brought, p *MustPlan, err error) {
	if b = m.brings; !b.known {
		return b, nil, nil
	}
	juice, part := m.ofJuice()
	kilos := part * m.batch.share * kg(m.batch.wash.Mass())
	c := juice.Composition()
	solids := c.Sugar().Plus(c.UnfermentedSolids).In(units.Fraction)

	of, err := m.sampled(kilos)
	if err != nil {
		return b, nil, err
	}
	r := m.req.Must
	if r == nil {
		r = new(Must)
	}
	known := r.known(of)
	found := func(reading must.Reading) (got must.Brought, err error) {
		if len(b.acids) > 0 && reading.PH > 0 {
			got.Band, got.Measured = 0.05, true
			got.Drink, err = reading.Drink(b.acids, known...)
			return got, err
		}
		return b.from.Brings(units.GramPerLitre.Of(checked.Number(1000*solids*kilos/of.water)), of.base, reading, known...)
	}
	got, err := found(of.reading(r.PH, r.Acidity))
	if err != nil {
		return b, nil, &RequestError{Field: "must", Value: "as given", Allowed: told(err), Err: err}
	}
	var blend *BlendPlan
	if x := r.Blend; x != nil {
		other, err := found(of.reading(x.PH, &x.Acidity))
		if err != nil {
			return b, nil, &RequestError{Field: "must.blend", Value: "as given", Allowed: told(err), Err: err}
		}
		if got.Drink, blend, err = m.blended(x, got.Drink, other.Drink, of, kilos, say); err != nil {
			return b, nil, err
		}
	}
	if r.Nitrogen != nil {
		ammonium := got.Ammonium
		if r.Ammonium != nil {
			ammonium = of.inWater(*r.Ammonium)
		}
		amino := of.inWater(*r.Nitrogen).In(units.MilligramPerLitre) - ammonium.In(units.MilligramPerLitre)
		got.Amino = units.MilligramPerLitre.Of(checked.Number(max(0, amino)))
	}
	if err := m.compose(&b, c, got, of.base, of.water/kilos); err != nil {
		return b, nil, err
	}
	b.salts = got.Band * got.Drink.BufferCapacity().In(units.MilliequivalentPerLitre) * of.water / 1000
	if p, err = m.mustPlan(b, got, of.ratio, r, say); err == nil {
		p.Blend = blend
	}
	return b, p, err
}

// A sample is what was measured: the juice as it comes, or the wash of honey or malt.
type sample struct {
	water float64       // L, of it
	ratio float64       // of its volume to its water: package water counts by the litre of water
	base  water.Profile // what else is in that water
}

// sampled is that of so many kilograms of the fermentable.
func (m *maker) sampled(kilos float64) (of sample, err error) {
	if !m.brings.juice {
		of.water = kg(m.batch.wash.Water()) / waterPerLitre
		of.ratio, of.base = m.batch.wash.VolumeAt20().In(units.Litre)/of.water, m.boiled.high
		return of, nil
	}
	none, err := gravity.NewSolution(units.Mass{}, units.Mass{}, units.Mass{})
	if err != nil { // not reached: nothing of anything
		return of, err
	}
	juice, _ := m.ofJuice()
	one, err := sugar.Of(juice).AddTo(none, kilograms(kilos))
	if err != nil {
		return of, err
	}
	of.water = kg(one.Water()) / waterPerLitre
	of.ratio = one.VolumeAt20().In(units.Litre) / of.water
	of.base, err = water.NewProfile(at20, units.CalciumCarbonate{})
	return of, err
}

// inWater is a content of the sample in a litre of its water.
func (of sample) inWater(c units.MassConcentration) units.MassConcentration {
	return units.MilligramPerLitre.Of(checked.Number(of.ratio * c.In(units.MilligramPerLitre)))
}

// reading is what was measured of it.
func (of sample) reading(ph float64, acidity *Acidity) must.Reading {
	r := must.Reading{PH: ph, Temperature: at20}
	if acidity != nil {
		r.Acidity, r.Titration = of.inWater(acidity.content), acidity.by
	}
	return r
}

// known are the ions whose content a report gives.
func (r *Must) known(of sample) (c []water.Content) {
	if r.Potassium != nil {
		c = append(c, water.Potassium.At(of.inWater(*r.Potassium)))
	}
	if r.Ammonium != nil {
		c = append(c, water.Ammonium.At(of.inWater(units.MilligramPerLitre.Of(checked.Number(
			r.Ammonium.In(units.MilligramPerLitre)*water.Ammonium.MolarMass().In(units.GramPerMole)/chemistry.N)))))
	}
	return c
}

// withMust is the water of the wash with what is brought. It is sour: no chalk drops.
func (m *maker) withMust(*notes) (p WaterPlan, b boiledWater, err error) {
	if p, b = m.plan.Water, m.boiled; !m.brings.known {
		return p, b, nil
	}
	wash, err := m.washAt(forward.Usual().Chalk)
	if err != nil {
		return p, b, err
	}
	p.Boiled = nil
	b.low, err = wash[0].state.Profile()
	b.high = b.low
	return p, b, err
}

// mustPlan tells what is brought.
func (m *maker) mustPlan(b brought, got must.Brought, k float64, r *Must, say *notes) (*MustPlan, error) {
	cold := m.batch.wash.VolumeAt20().In(units.Litre)
	kilos := m.batch.share * kg(m.batch.wash.Mass())
	mgl := func(gram float64) units.MassConcentration {
		return units.MilligramPerLitre.Of(checked.Number(1000 * gram / cold))
	}
	by := m.convention()
	ta, err := got.Drink.Acidity(by)
	if err != nil {
		return nil, err
	}
	p := &MustPlan{
		Of: "wash of " + m.fermentable.Name(), PH: got.Drink.PH(), Band: got.Band, Measured: got.Measured,
		Acidity:   units.MilligramPerLitre.Of(checked.Number(ta.In(units.MilligramPerLitre) / k)),
		As:        by.As.Name() + " to pH " + trim(by.End),
		Potassium: mgl(1000 * kilos * b.material.Composition().Potassium.In(units.Fraction)),
		Nitrogen:  mgl(kilos * b.nitrogen),
		Source:    "pH and acidity as measured",
	}
	if b.juice {
		fruit, _, _ := strings.Cut(m.juiceText(), "juice ")
		p.Of = fruit + "juice"
	}
	switch {
	case got.Measured && b.from == must.FromMalt && b.known && !b.juice:
		p.Source = "pH as measured, buffers as usual"
	case !got.Measured && r.Acidity != nil:
		p.Source = "acidity as measured, salts as usual: measure the pH too"
	case !got.Measured:
		p.Source = "the usual composition: measure your own"
	}
	if !got.Measured {
		say.caution(fmt.Sprintf("The pH of this %s rests on what is usual of it and is good to ±%.1f only, from the start to the end of "+
			"the ferment: measure the pH before the yeast, and give it as must.pH%s. Dose acid and buffer by a meter.",
			p.Of, got.Band, map[bool]string{true: "", false: " with its titratable acidity"}[b.from == must.FromMalt && !b.juice]))
	}
	return p, nil
}

// convention is how the acidity of this drink is stated.
func (m *maker) convention() water.Titration {
	if r := m.req.Must; r != nil && r.Acidity != nil {
		return r.Acidity.by
	}
	if a := m.req.Acid; a != nil && a.Acidity != nil {
		return a.Acidity.by
	}
	switch b := m.brings; {
	case b.juice && b.from == must.FromApple:
		return water.MalicAcid.TitratedTo(8.2)
	case !b.juice && b.some && b.from == must.FromMalt:
		return water.LacticAcid.TitratedTo(8.2)
	}
	return water.TartaricAcid.TitratedTo(8.2)
}

// washAt is the wash before the nutrient and the yeast, with chalk that drops in the boil at each of some rates.
func (m *maker) washAt(rates ...float64) ([]carried, error) {
	c, deeds, err := m.atStart()
	if err != nil {
		return nil, err
	}
	var out []carried
	for i, d := range deeds {
		switch d.step.Kind {
		case forward.Feed, forward.Pitch, forward.Ferment:
			return out, nil
		case forward.Boil:
			out = slices.Repeat([]carried{*c}, len(rates))
			for k, r := range rates {
				out[k].unknowns.Chalk = r
			}
		}
		if out == nil {
			err = c.deed(d)
		}
		for k := range out {
			if err == nil {
				err = out[k].deed(deeds[i])
			}
		}
		if err != nil {
			return nil, err
		}
	}
	return out, nil
}

// dissolving is the fermentable as a step of the batch, with what it brings.
func (m *maker) dissolving() forward.Step {
	if !m.brings.material.IsZero() {
		return forward.Step{Own: m.brings.material, Salts: m.brings.salts / (m.batch.share * kg(m.batch.wash.Mass()))}
	}
	return weighable(m.fermentable)
}

// decimalNumber reads a plain number.
func decimalNumber(text string) (float64, bool) {
	v, err := strconv.ParseFloat(strings.TrimSpace(text), 64)
	return v, err == nil && !math.IsNaN(v) && !math.IsInf(v, 0)
}

// aimed is a refusal of an acid's aim.
func aimed(field, value string, err error) error {
	if r, ok := errors.AsType[*units.RangeError](err); ok {
		return &RequestError{Field: field, Value: value, Allowed: told(r), Err: err}
	}
	return &RequestError{Field: field, Value: value, Allowed: reason(err), Err: err}
}

// What package ferment says of a sugar wash, and where growth slows sharply.
const (
	mayFall = "may_fall"
	slowPH  = 3.0
)

// richest is the largest share of the fermentable that a wash is looked for at: three times that of the plan, or all that
// a density is known of, a juice without water at most.
func (m *maker) richest() float64 {
	share := math.Min(3*m.batch.share, 1)
	for range mostThinner {
		if _, err := m.washOf(share, 1); err == nil {
			break
		}
		share = (share + m.batch.share) / 2
	}
	return share
}

const mostThinner = 20
