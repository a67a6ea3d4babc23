package plan

import (
	"cmp"
	"fmt"
	"math"

	forward "example.org/zymase/examples/seltzer/batch"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// made is the base that a request lets down; nil where it brews one.
func (r *Request) made() *Base {
	if r.AtHand == nil {
		return nil
	}
	return r.AtHand.Base
}

// What a base may be.
const (
	leastBaseGravity, mostBaseGravity = 0.95, 1.1
	leastBasePH, mostBasePH           = 2.5, 7.0
)

// brewOnly are the parts of a request that say how a base is brewed, or what was read while it was.
var brewOnly = []string{"fermenter", "yeast", "nutrient", "buffer", "kettle", "fruit", "acid", "cold", "schedule", "room", "readings"}

func leftOut(field string) error {
	return &RequestError{Field: field, Value: "given", Allowed: "left out: the base is made, it is only let down and packed"}
}

// setMade checks a request that starts from a base.
func (k *recipe) setMade() error {
	r, b := k.req, k.req.made()
	for _, x := range []struct {
		field string
		is    bool
	}{
		{"fermentable", r.Fermentable != ""}, {"buffer", r.Buffer != nil}, {"yeast", r.Yeast != (Yeast{})}, {"sugar_portions", r.Portions != 0},
		{"original_gravity", r.Gravity != nil}, {"at_hand.sugar", r.AtHand.Sugar != nil}, {"at_hand.water", r.AtHand.Water != nil},
		{"nutrient", len(r.Nutrient.Sources)+len(r.Nutrient.Own) > 0}, {"kettle", r.Kettle != (Kettle{})}, {"readings", len(r.Readings) > 0},
		{"schedule", r.Schedule != nil}, {"room", r.Room != nil}, {"water.salts_go", r.Water.When != ""},
		{"fruit", r.Fruit != nil}, {"must", r.Must != nil}, {"acid", r.Acid != nil}, {"malolactic", r.Malolactic != nil}, {"cold", r.Cold != nil},
		{"stabilise", r.Stabilise != nil},
	} {
		if x.is {
			return leftOut(x.field)
		}
	}
	if f := r.Fermenter; !f.Capacity.IsZero() || !f.Loss.IsZero() || len(f.Also) > 0 {
		return leftOut("fermenter")
	}
	if b.Volume != nil {
		if err := within("at_hand.base.volume", *b.Volume, units.Litre, 0.1, mostVolume); err != nil {
			return err
		}
	}
	if b.Loss != nil {
		if err := within("at_hand.base.loss", *b.Loss, units.Litre, 0, mostVolume); err != nil {
			return err
		}
	}
	if ph := b.PH; ph != nil && !(*ph >= leastBasePH && *ph <= mostBasePH) {
		return &RequestError{Field: "at_hand.base.pH", Value: trim(*ph), Allowed: fmt.Sprintf("%s to %s, or left out", plain(leastBasePH), plain(mostBasePH))}
	}
	if g := b.Gravity; !(g >= leastBaseGravity && g <= mostBaseGravity) {
		return &RequestError{Field: "at_hand.base.gravity", Value: trim(g),
			Allowed: fmt.Sprintf("%s to %s, 20/20 °C", plain(leastBaseGravity), plain(mostBaseGravity)) + slipped(g)}
	}
	k.req.Fermenter.Temperature, k.req.Fermenter.Warmest = b.Warmest, b.Warmest
	return cmp.Or(
		within("at_hand.base.strength", b.Strength, units.PercentVolume, leastStrength, 25),
		within("at_hand.base.warmest", b.Warmest, units.Celsius, 0, 40),
		instead(r.Volume.IsZero(), "or at_hand.base.volume, what there is of the base", within("volume", r.Volume, units.Litre, leastVolume, mostVolume)),
		within("strength", r.Strength, units.PercentVolume, leastStrength, mostStrength),
		within("label.serving", r.Label.Serving, units.Millilitre, 10, 5000),
		oneOf("label.law", r.Label.Law, "EU", "US"),
		scaleOK("scales.sugar", r.Scales.Sugar),
		scaleOK("scales.small", r.Scales.Small),
		k.setPlace(),
		k.flavourOK(),
		k.setPacks(),
		k.waterOK(),
		k.setBase(*b),
	)
}

// setBase finds a litre of the base: ethanol by its strength, the rest by its gravity. What yeast
// leaves of the sugar of that ethanol is glycerol and acid; above it the gravity shows sugar.
func (k *recipe) setBase(b Base) error {
	ethanol := b.Strength.In(units.PercentVolume) / 100 * pureEthanol // kg in a litre
	left := ethanol / gravity.SugarWashYield(gravity.AsGlucose).Ethanol().In(units.Fraction) *
		gravity.SugarWashYield(gravity.AsGlucose).Residue().In(units.Fraction)
	of := func(residue, sugar float64) (gravity.Solution, error) {
		s, err := gravity.NewSolution(units.Kilogram.Of(0.5), kilograms(sugar), kilograms(ethanol))
		if err == nil {
			s, err = s.AddExtract(gravity.AsGlycerol, kilograms(residue*5/6))
		}
		if err == nil {
			s, err = s.AddExtract(gravity.AsOrganicAcid, kilograms(residue/6))
		}
		if err != nil {
			return s, err
		}
		s, _, err = s.MakeUpTo(units.Litre.Of(1), at20)
		return s, err
	}
	shows := func(residue, sugar float64) float64 {
		s, err := of(residue, sugar)
		if err != nil {
			return math.NaN()
		}
		return s.Gravity().SG() - b.Gravity
	}
	const mostSugar = 0.3 // kg
	residue, sugar := left, 0.0
	var err error
	switch low, usual, high := shows(0, 0), shows(left, 0), shows(left, mostSugar); {
	case low > 0:
		return &RequestError{Field: "at_hand.base.gravity", Value: trim(b.Gravity),
			Allowed: fmt.Sprintf("at least the %.4f of that strength in pure water: measure both again", b.Gravity+low+5e-5)}
	case high < 0:
		return &RequestError{Field: "at_hand.base.gravity", Value: trim(b.Gravity), Allowed: fmt.Sprintf("at most %.4f at that strength", b.Gravity+high)}
	case usual > 0: // drier than yeast leaves it as a rule
		residue, err = numeric.Root(func(x float64) float64 { return shows(x, 0) }, 0, left, 1e-9)
	default:
		sugar, err = numeric.Root(func(x float64) float64 { return shows(left, x) }, 0, mostSugar, 1e-9)
	}
	if err != nil {
		return named("at_hand.base.gravity", trim(b.Gravity), err)
	}
	if sugar < hiddenSugar { // within what minerals and readings move
		if residue+sugar > 0 {
			residue, sugar = residue+sugar, 0
		}
	}
	litre, err := of(residue, sugar)
	k.base = &litre
	return err
}

// hiddenSugar is what a gravity does not tell from salts and acids, kg in a litre: 0.001 of gravity (common
// practice, no source).
const hiddenSugar = 0.0026

// letDown is the strength to let the base down to; most is what it can have undiluted.
func (r *recipe) letDown(most float64) (float64, error) {
	want := r.req.Strength.In(units.PercentVolume)
	if want > most*(1+1e-9) {
		return 0, &RequestError{Field: "strength", Value: r.req.Strength.Text(units.PercentVolume, 1), is: quantity(r.req.Strength),
			Allowed: fmt.Sprintf("at most the %.1f %% vol that the base has with these flavourings and primers", math.Floor(10*most)/10),
			Err:     &units.RangeError{Func: "plan.Make", Quantity: "strength", Value: want, Unit: "% vol", Min: leastStrength, Max: most, Source: "the base"}}
	}
	return want, nil
}

// takenOf is the whole of what goes into the packs, and of the water to it.
func (r *recipe) takenOf(b *batch, baseVolume float64) (err error) {
	for _, k := range b.packed {
		b.water += k.water
	}
	if b.base, err = r.base.Times(baseVolume); err != nil {
		return err
	}
	b.wash, b.filled = b.base, b.base
	return nil
}

// forBase primes the packs of a base; its strength is asked for.
func (r *recipe) forBase() (batch, error) {
	r.primeAhead()
	for range mostPrimings {
		b, err := r.mix(0)
		if err != nil {
			return b, err
		}
		change, err := r.prime(b)
		if err != nil {
			return b, err
		}
		if change < leastChange {
			return b, nil
		}
	}
	return batch{}, r.unreached()
}

// settledBase is the request of a base with its volume: where it is left out, what the whole base makes.
func (r Request) settledBase() (Request, error) {
	b := r.made()
	if !r.Volume.IsZero() || b.Volume == nil {
		return r, nil
	}
	sum := 0.0
	for _, p := range r.Packs {
		sum += p.Volume.In(units.Litre)
	}
	plain := r
	plain.Volume = litres(sum)
	k, err := newRecipe(plain)
	if err != nil {
		return r, err
	}
	of, err := k.forBase()
	if err != nil {
		return r, err
	}
	have := b.Volume.In(units.Litre) - k.baseLoss()
	scale := have / of.base.VolumeAt20().In(units.Litre)
	if !(scale*sum >= leastVolume) {
		return r, &RequestError{Field: "at_hand.base.volume", Value: b.Volume.Text(units.Litre, 1), is: quantity(*b.Volume),
			Allowed: "more: it makes less than a litre"}
	}
	return smaller(plain, scale), nil
}

// baseLoss is what of the base stays in its vessel, L.
func (r *recipe) baseLoss() float64 {
	if l := r.req.made().Loss; l != nil {
		return l.In(units.Litre)
	}
	return 0
}

// taken is what of the base the packs take.
func (m *maker) taken(*notes) (*BasePlan, error) {
	b, need := m.req.made(), m.batch.base.VolumeAt20().In(units.Litre)
	p := &BasePlan{Taken: litres(need), Added: kilograms(m.batch.water)}
	if b.Volume != nil {
		rest := b.Volume.In(units.Litre) - need - m.baseLoss()
		if rest < -1e-6*need {
			whole := m.req.Volume.In(units.Litre)
			most := math.Floor(10*whole*(b.Volume.In(units.Litre)-m.baseLoss())/need) / 10
			return nil, &RequestError{Field: "at_hand.base.volume", Value: b.Volume.Text(units.Litre, 1), is: quantity(*b.Volume),
				Allowed: fmt.Sprintf("at least %.1f L for this volume and strength; or a volume of at most %.1f L, or left out",
					math.Ceil(10*(need+m.baseLoss()))/10, most)}
		}
		if p.Left = litres(rest); rest < 1e-9 { // all of it is taken
			p.Left = units.Volume{}
		}
	}
	p.Sugar = units.GramPerLitre.Of(checked.Number(1000 * kg(m.recipe.base.Fermentable())))
	return p, nil
}

// baseState is so much of the base as the batch knows it: with the acids that yeast leaves, and as much alkali
// or acid as its pH shows.
func (m *maker) baseState(v float64) (forward.State, error) {
	b, s := m.req.made(), *m.recipe.base
	u := forward.Usual()
	spirit, err := Flavour{Strength: new(units.PercentVolume.Of(96))}.solution(1)
	if err != nil {
		return forward.State{}, err
	}
	litresOfSpirit := v * kg(s.Ethanol()) / kg(spirit.Ethanol())
	pure, err := water.NewProfile(at20, units.CalciumCarbonate{})
	if err != nil {
		return forward.State{}, err
	}
	known, err := pure.WithPH(7)
	if err != nil {
		return forward.State{}, err
	}
	state, err := forward.FromWater(known, litres((v*kg(s.Water())-litresOfSpirit*kg(spirit.Water()))/waterPerLitre))
	if err != nil {
		return state, err
	}
	acid := kg(s.ExtractOf(gravity.AsOrganicAcid)) * v
	steps := []forward.Step{
		{Kind: forward.Flavour, Volume: litres(litresOfSpirit), Strength: units.PercentVolume.Of(96)},
		{Kind: forward.Sweeten, What: "glycerol", Mass: kilograms(v * kg(s.ExtractOf(gravity.AsGlycerol)))},
		{Kind: forward.Sweeten, What: "white sugar", Mass: kilograms(v * kg(s.ExtractOf(gravity.AsSucrose)))},
		{Kind: forward.Acidify, What: "lactic acid", Mass: kilograms(acid)}, // for succinic, whose pK are near
	}
	for _, st := range steps {
		if state, _, err = forward.Do(st, state, &u); err != nil {
			return state, err
		}
	}
	if b.PH != nil {
		if state, err = m.atPH(state, *b.PH, acid, &u); err != nil {
			return state, err
		}
	}
	for _, st := range []forward.Step{
		{Kind: forward.Warm, Temperature: b.Warmest, Pressure: m.air.Pressure()},
		{Kind: forward.Stand, Share: units.Percent.Of(100), Gas: true, Pressure: m.air.Pressure()},
	} {
		if st.Kind == forward.Warm && b.Warmest.Compare(at20) < 0 {
			st.Kind = forward.Chill
		}
		if state, _, err = forward.Do(st, state, &u); err != nil {
			return state, err
		}
	}
	return state, nil
}

// atPH brings a base to its pH: alkali bound to its acids where it is above theirs, more acid where below.
func (m *maker) atPH(state forward.State, ph, acid float64, u *forward.Unknowns) (forward.State, error) {
	with := func(x float64) (forward.State, float64, error) { // kg of bicarbonate above 0, of acid below
		st := forward.Step{Kind: forward.Feed, What: "potassium bicarbonate", Mass: kilograms(max(0, x))}
		if x < 0 {
			st = forward.Step{Kind: forward.Acidify, What: "lactic acid", Mass: kilograms(-x)}
		}
		s, _, err := forward.Do(st, state, u)
		if err != nil {
			return s, 0, err
		}
		if s, _, err = forward.Do(forward.Step{Kind: forward.Degas, Share: units.Percent.Of(100)}, s, u); err != nil {
			return s, 0, err
		}
		got, err := s.PH()
		return s, got - ph, err
	}
	var failed error
	x, err := numeric.Root(func(x float64) float64 {
		_, y, err := with(x)
		if err != nil {
			failed = err
			return math.NaN()
		}
		return y
	}, -10*acid, 2*acid, 1e-9*acid)
	if err = cmp.Or(failed, err); err != nil {
		return state, &RequestError{Field: "at_hand.base.pH", Value: trim(ph),
			Allowed: "what a fermented base of this strength can have: measure it again, or leave it out", Err: err}
	}
	s, _, err := with(x)
	return s, err
}

// pourBase carries the base into its packs.
func (m *maker) pourBase(*notes) (_ *pouring, _ []packed, err error) {
	c := &carried{unknowns: forward.Usual()}
	if c.state, err = m.baseState(m.batch.base.VolumeAt20().In(units.Litre)); err != nil {
		return nil, nil, err
	}
	c.in = note(c.in, "base", kg(c.state.Mass()))
	return m.pourOf(c)
}

// baseCautions are those that go with every base.
func (m *maker) baseCautions(say *notes) error {
	say.caution("The base is taken as finished and clear of yeast but for what primes: let it down with water that was boiled and " +
		"cooled covered, without a splash.")
	for i := range m.recipe.packs {
		if m.recipe.packs[i].primes() {
			say.caution("Primed bottles need yeast: a base that was filtered, or stood for months, has too little left. Stir in some fresh yeast with the primer.")
		}
	}
	if g := m.plan.Base.Sugar.In(units.GramPerLitre); g > 0 {
		say.warn(fmt.Sprintf("The gravity of the base is above that of a dry one of its strength: it may hold %.0f g/L of sugar, which "+
			"counts here as if it fermented in the pack. If it does not, primed bottles stay flatter; if it goes on in a keg or a can, the "+
			"highest pressure is what it comes to.", g))
	}
	if m.req.made().PH == nil {
		say.caution("The pH of the drinks is not foreseen without that of the base: measure it.")
	}
	return nil
}
