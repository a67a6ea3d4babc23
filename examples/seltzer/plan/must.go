package plan

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	forward "example.org/zymase/examples/seltzer/batch"
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

// BlendPlan is how much of another juice goes into the first, and what each does to the other. PH and acidity of the
// [MustPlan] are those of the blend.
type BlendPlan struct {
	Share        units.Share             `json:"share"` // of the blend, by volume
	Mass         units.Mass              `json:"mass"`  // of the other juice
	PH           float64                 `json:"pH"`    // of the first juice
	Acidity      units.MassConcentration `json:"titratable_acidity"`
	OtherPH      float64                 `json:"other_pH"`
	OtherAcidity units.MassConcentration `json:"other_titratable_acidity"` // by the convention of the plan
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
	checks := []error{}
	if r.PH != 0 && !(r.PH >= 2 && r.PH <= 6) {
		checks = append(checks, &RequestError{Field: "must.pH", Value: trim(r.PH), Allowed: "2 to 6"})
	}
	switch {
	case b.from == must.FromMalt && b.known && r.Acidity != nil:
		checks = append(checks, &RequestError{Field: "must.titratable_acidity", Value: r.Acidity.String(),
			Allowed: "left out for malt: a titration does not show its buffers, its pH says more"})
	case r.PH != 0 && r.Acidity == nil && b.from != must.FromMalt:
		checks = append(checks, &RequestError{Field: "must.titratable_acidity", Value: "missing",
			Allowed: "given with the pH: one of them alone does not tell acid from salt"})
	case r.Acidity != nil && r.PH == 0 && b.from == must.FromHoney && b.known:
		checks = append(checks, &RequestError{Field: "must.pH", Value: "missing", Allowed: "given with the acidity of honey"})
	}
	for _, q := range []struct {
		field string
		c     *units.MassConcentration
		most  float64
	}{{"must.yan", r.Nitrogen, 1000}, {"must.ammonium_nitrogen", r.Ammonium, 500}, {"must.potassium", r.Potassium, 10000}} {
		if q.c != nil {
			checks = append(checks, within(q.field, *q.c, units.MilligramPerLitre, 0, q.most))
		}
	}
	if r.Ammonium != nil && (r.Nitrogen == nil || r.Ammonium.Compare(*r.Nitrogen) > 0) {
		checks = append(checks, &RequestError{Field: "must.ammonium_nitrogen", Value: r.Ammonium.Text(units.MilligramPerLitre, 0), Allowed: "a part of must.yan"})
	}
	if x := r.Blend; x != nil {
		switch {
		case !b.juice || r.PH == 0 || r.Acidity == nil:
			checks = append(checks, &RequestError{Field: "must.blend", Value: "given",
				Allowed: "left out, unless the fermentable is a juice whose must.pH and must.titratable_acidity are given"})
		case !(x.PH >= 2 && x.PH <= 6):
			checks = append(checks, &RequestError{Field: "must.blend.pH", Value: trim(x.PH), Allowed: "2 to 6"})
		case x.Acidity.content.IsZero():
			checks = append(checks, &RequestError{Field: "must.blend.titratable_acidity", Value: "missing", Allowed: acidityForm})
		case (x.ToPH == 0) == (x.ToAcidity == nil):
			checks = append(checks, &RequestError{Field: "must.blend", Value: "as given", Allowed: "with one of to_pH and to_acidity"})
		}
	}
	if err := cmp.Or(checks...); err != nil {
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
	water0 := kg(m.batch.wash.Water())
	c := juice.Composition()
	solids := c.Sugar().Plus(c.UnfermentedSolids).In(units.Fraction)

	// The litre of what was measured, its water, and what else is in that.
	litre, own, base := m.batch.wash.VolumeAt20().In(units.Litre), water0/waterPerLitre, water.Profile{}
	if b.juice {
		none, err := gravity.NewSolution(units.Mass{}, units.Mass{}, units.Mass{})
		if err != nil { // not reached: nothing of anything
			return b, nil, err
		}
		one, err := sugar.Of(juice).AddTo(none, kilograms(kilos))
		if err != nil {
			return b, nil, err
		}
		litre, own = one.VolumeAt20().In(units.Litre), kg(one.Water())/waterPerLitre
	}
	k := litre / own // package water counts by the litre of water
	if base = m.boiled.high; b.juice {
		if base, err = water.NewProfile(at20, units.CalciumCarbonate{}); err != nil {
			return b, nil, err
		}
	}
	per := func(v units.MassConcentration) units.MassConcentration {
		return units.MilligramPerLitre.Of(checked.Number(k * v.In(units.MilligramPerLitre)))
	}
	reading := must.Reading{Temperature: at20}
	var known []water.Content
	r := m.req.Must
	if r == nil {
		r = new(Must)
	}
	reading.PH = r.PH
	if r.Acidity != nil {
		reading.Acidity, reading.Titration = per(r.Acidity.content), r.Acidity.by
	}
	if r.Potassium != nil {
		known = append(known, water.Potassium.At(per(*r.Potassium)))
	}
	if r.Ammonium != nil {
		known = append(known,
			water.Ammonium.At(per(units.MilligramPerLitre.Of(checked.Number(r.Ammonium.In(units.MilligramPerLitre)*
				water.Ammonium.MolarMass().In(units.GramPerMole)/chemistry.N)))))
	}
	found := func(reading must.Reading) (got must.Brought, err error) {
		if len(b.acids) > 0 && reading.PH > 0 {
			got.Band, got.Measured = 0.05, true
			got.Drink, err = reading.Drink(b.acids, known...)
			return got, err
		}
		return b.from.Brings(units.GramPerLitre.Of(checked.Number(1000*solids*kilos/own)), base, reading, known...)
	}
	got, err := found(reading)
	if err != nil {
		return b, nil, &RequestError{Field: "must", Value: "as given", Allowed: told(err), Err: err}
	}
	var blend *BlendPlan
	if x := r.Blend; x != nil {
		other, err := found(must.Reading{PH: x.PH, Acidity: per(x.Acidity.content), Titration: x.Acidity.by, Temperature: at20})
		if err != nil {
			return b, nil, &RequestError{Field: "must.blend", Value: "as given", Allowed: told(err), Err: err}
		}
		field, value, aim := "must.blend.to_pH", trim(x.ToPH), must.ToPH(x.ToPH)
		if x.ToAcidity != nil {
			field, value, aim = "must.blend.to_acidity", x.ToAcidity.String(), must.ToAcidity(per(x.ToAcidity.content), x.ToAcidity.by)
		}
		t, err := got.Drink.WithDrink(other.Drink, aim)
		if err != nil {
			return b, nil, &RequestError{Field: field, Value: value,
				Allowed: "between those of the two juices, " + ends(got.Drink, other.Drink, x.ToAcidity, k), Err: err}
		}
		blend = &BlendPlan{Share: t.Share, Mass: kilograms(t.Share.In(units.Fraction) * kilos), PH: got.Drink.PH(), OtherPH: other.Drink.PH()}
		for _, of := range []struct {
			drink must.Drink
			into  *units.MassConcentration
		}{{got.Drink, &blend.Acidity}, {other.Drink, &blend.OtherAcidity}} {
			ta, err := of.drink.Acidity(m.convention())
			if err != nil {
				return b, nil, err
			}
			*of.into = units.MilligramPerLitre.Of(checked.Number(ta.In(units.MilligramPerLitre) / k))
		}
		got.Drink = t.After
		for _, c := range t.Cautions {
			say.caution(c.Text())
		}
	}
	if r.Nitrogen != nil {
		got.Amino = per(*r.Nitrogen)
		ammonium := got.Ammonium
		if r.Ammonium != nil {
			ammonium = per(*r.Ammonium)
		}
		got.Amino = units.MilligramPerLitre.Of(checked.Number(max(0, got.Amino.In(units.MilligramPerLitre)-ammonium.In(units.MilligramPerLitre))))
	}
	if err := m.compose(&b, c, got, base, own/kilos); err != nil {
		return b, nil, err
	}
	b.salts = got.Band * got.Drink.BufferCapacity().In(units.MilliequivalentPerLitre) * own / 1000
	if p, err = m.mustPlan(b, got, k, r, say); err == nil {
		p.Blend = blend
	}
	return b, p, err
}

// compose makes the material of the fermentable with what it brings: so many litres of water to its kilogram.
func (m *maker) compose(b *brought, c material.Composition, got must.Brought, base water.Profile, litres float64) error {
	p := got.Drink.Water()
	added := 0.0  // g in a gram
	charge := 0.0 // mmol in a gram
	gram := func(i water.Ion) float64 {
		v := (p.Ion(i).In(units.GramPerLitre) - base.Ion(i).In(units.GramPerLitre)) * litres / 1000
		if v < 1e-12 {
			return 0
		}
		added += v
		z := float64(i.Charge())
		switch i { // as alkalinity counts them
		case water.Phosphate:
			z = -1
		case water.Glutamate:
			z = -1
		}
		charge += 1000 * z * v / i.MolarMass().In(units.GramPerMole)
		return v
	}
	of := func(v float64) units.Share { return units.Fraction.Of(checked.Number(v)) }
	c.Calcium, c.Magnesium = of(gram(water.Calcium)), of(gram(water.Magnesium))
	c.Potassium, c.Zinc = of(gram(water.Potassium)), of(gram(water.Zinc))
	c.AmmoniumNitrogen = of(gram(water.Ammonium) * chemistry.N / water.Ammonium.MolarMass().In(units.GramPerMole))
	c.Phosphorus = of(gram(water.Phosphate) * phosphorusOfPhosphate)
	c.Lactate, c.Acetate, c.Citrate, c.Malate = of(gram(water.Lactate)), of(gram(water.Acetate)), of(gram(water.Citrate)), of(gram(water.Malate))
	c.Tartrate, c.Succinate, c.Gluconate, c.Glutamate = of(gram(water.Tartrate)), of(gram(water.Succinate)), of(gram(water.Gluconate)), of(gram(water.Glutamate))
	sodium, chloride := gram(water.Sodium), 0.0
	// The charge that no ion names counts as sodium, or as chloride.
	alk := (p.Alkalinity().In(units.MilligramPerLitreCaCO3) - base.Alkalinity().In(units.MilligramPerLitreCaCO3)) / caCO3PerMilliequivalent * litres / 1000
	if rest := alk - charge; rest > 0 {
		sodium += rest / 1000 * water.Sodium.MolarMass().In(units.GramPerMole)
	} else {
		chloride = -rest / 1000 * water.Chloride.MolarMass().In(units.GramPerMole)
	}
	added += chloride // protons weigh nothing to speak of
	c.Sodium, c.Chloride = of(sodium), of(chloride)
	c.AminoNitrogen = of(got.Amino.In(units.GramPerLitre) * litres / 1000)
	juice, part := m.ofJuice()
	b.amino = part * 1000 * c.AminoNitrogen.In(units.Fraction)
	b.nitrogen = b.amino + part*1000*c.AmmoniumNitrogen.In(units.Fraction)
	// They are part of the solids that yeast leaves: of the Brix, and of the gravity.
	amino := c.AminoNitrogen.In(units.Fraction) * alanine / chemistry.N
	c.UnfermentedSolids = of(math.Max(0, c.UnfermentedSolids.In(units.Fraction)-added-amino))
	c.OfMalt = units.Share{}
	var err error
	b.material, err = material.ByLabel(juice.Name()+", as it comes", c)
	if err == nil && part < 1 {
		b.material, err = m.fruit.with(b.material)
	}
	return err
}

const (
	alanine                 = 3*chemistry.C + 7*chemistry.H + chemistry.N + 2*chemistry.O
	phosphorusOfPhosphate   = chemistry.P / (chemistry.P + 4*chemistry.O)
	caCO3PerMilliequivalent = (chemistry.Ca + chemistry.C + 3*chemistry.O) / 2 // mg
)

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

// ends are the pH of two juices, or their acidity by the convention that is asked for, in g/L: k is what their
// contents are in the wash for 1 in the juice.
func ends(a, b must.Drink, by *Acidity, k float64) string {
	if by == nil {
		return fmt.Sprintf("pH %.2f and %.2f", a.PH(), b.PH())
	}
	first, err := a.Acidity(by.by)
	second, also := b.Acidity(by.by)
	if err = cmp.Or(err, also); err != nil {
		return reason(err)
	}
	return fmt.Sprintf("%.1f and %.1f g/L", first.In(units.GramPerLitre)/k, second.In(units.GramPerLitre)/k)
}
