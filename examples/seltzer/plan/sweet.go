package plan

import (
	"fmt"
	"math"
	"slices"
	"strings"

	forward "example.org/zymase/examples/seltzer/batch"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// sweetness is what sweetens a litre of a packed drink.
type sweetness struct {
	name     string
	perLitre float64           // kg as weighed
	of       material.Material // what is weighed
	counts   polyol            // on a label
	lactose  bool              // which is a sugar that yeast leaves
	ferments bool
	cautions []string
}

// most that may sweeten and sour a drink, g/L.
const mostSweet, mostAcid = 200.0, 15.0

// setTaste checks what a pack has of its own: strength, flavouring, sweetener, acid.
func (p *packRecipe) setTaste(r Request, f func(string) string) error {
	p.ratio, p.taste, p.tasteField = 1, r.Flavour, "flavour"
	if s := p.Strength; s != nil {
		if err := within(f("strength"), *s, units.PercentVolume, leastStrength, mostStrength); err != nil {
			return err
		}
		p.ratio = s.In(units.PercentVolume) / r.Strength.In(units.PercentVolume)
	}
	if p.Pack.Flavour != nil {
		p.taste, p.tasteField = p.Pack.Flavour, f("flavour")
		if p.taste.Name == withoutFlavour {
			p.taste = nil
		}
	}
	var err error
	if p.flavouring, err = p.taste.checked(p.tasteField); err != nil {
		return err
	}
	return p.setSweet(r, f)
}

// withoutFlavour is the name of a pack's flavouring that there is none.
const withoutFlavour = "none"

// setSweet checks the sweetener and the acid.
func (p *packRecipe) setSweet(r Request, f func(string) string) error {
	if s := p.Sweeten; s != nil {
		if err := within(f("sweeten.like_sugar"), s.Like, units.GramPerLitre, 0.1, mostSweet); err != nil {
			return err
		}
		if err := p.sweetener(*s, r, f); err != nil {
			return err
		}
	}
	if a := p.Acid; a != nil {
		acid, err := water.ParseAcid(a.What)
		if err != nil {
			return named(f("acid.what"), a.What, err)
		}
		if err := within(f("acid.dose"), a.Dose, units.GramPerLitre, 0.01, mostAcid); err != nil {
			return err
		}
		p.acid = a.Dose.In(units.GramPerLitre) / 1000
		p.mineral = slices.Contains([]water.Ion{water.Phosphate, water.Sulfate, water.Chloride}, acid.Ion())
	}
	return nil
}

// sweetener reads what sweetens, by its sweetness: a sugar, which no yeast may meet; or what yeast leaves.
func (p *packRecipe) sweetener(s Sweeten, of Request, f func(string) string) error {
	var whose law.Jurisdiction // another law is refused as the label's
	_ = whose.UnmarshalText([]byte(of.Label.Law))
	found, err := finish.ParseSweetener(strings.TrimSuffix(s.What, " monohydrate")) // lactose is sold as that
	if err == nil && found.Survives() {
		dose, err := finish.SweetenLike(found, s.Like, units.Litre.Of(1), whose)
		if err != nil {
			return &RequestError{Field: f("sweeten.like_sugar"), Value: s.Like.Text(units.GramPerLitre, 1), Allowed: reason(err), Err: err}
		}
		if p.sweet, err = left(found.Name(), kg(dose.Mass)); err != nil {
			return err
		}
		p.sweet.counts, p.sweet.lactose = polyols[found.Name()], found.Name() == "lactose"
		for _, c := range dose.Cautions {
			p.sweet.cautions = append(p.sweet.cautions, c.Text())
		}
		return nil
	}
	m, err := material.FindAmong(s.What, sugar.Fermentables()...)
	if err != nil {
		return named(f("sweeten.what"), s.What, &units.NameError{Func: "plan.Make", What: "sweetener", Name: s.What, Choices: sweeteners(p.primes())})
	}
	if p.primes() {
		return &RequestError{Field: f("sweeten.what"), Value: s.What,
			Allowed: "one that yeast leaves, such as erythritol: yeast that primes a bottle ferments its sugar too. Or a keg, or a filling under counter-pressure"}
	}
	like := s.Like.In(units.GramPerLitre) / sweetnessOf(m)
	p.sweet = sweetness{name: m.Name(), perLitre: like / 1000 / sugar.Of(m).Sugar().In(units.Fraction), of: m, ferments: true}
	return nil
}

// sweetnessOf is how sweet the sugar of something is, sucrose 1: of what has one sugar alone the middle of the reviews
// ([finish.Sweetener]), of the rest as sucrose.
func sweetnessOf(m material.Material) float64 {
	c := m.Composition()
	for name, part := range map[string]units.Share{"glucose": c.Glucose, "fructose": c.Fructose} {
		if s, err := finish.ParseSweetener(name); err == nil && part == c.Sugar() {
			return s.Sweetness().Value
		}
	}
	return 1
}

// sweeteners are the names of what may sweeten a pack: what yeast leaves and, where none is to prime it, sugars.
func sweeteners(primed bool) (names []string) {
	for _, s := range finish.Sweeteners() {
		if s.Survives() {
			names = append(names, s.Name())
		}
	}
	for _, m := range sugar.Fermentables() {
		if !primed && !sugar.Of(m).Sugar().IsZero() {
			names = append(names, m.Name())
		}
	}
	return names
}

// left is so much, in kg, of a sweetener that yeast leaves: as a known material, which may hold water, or as what it is alone.
// Yeast and a hydrometer take it as they take dextrin.
func left(name string, dry float64) (s sweetness, err error) {
	if s.of, err = material.Find(name); err == nil {
		return sweetness{name: s.of.Name(), perLitre: dry / s.of.Composition().UnfermentedSolids.In(units.Fraction), of: s.of}, nil
	}
	s = sweetness{name: name, perLitre: dry}
	s.of, err = material.ByLabel(name, material.Composition{UnfermentedSolids: units.Fraction.Of(1)})
	return s, err
}

// softened is a drink with its sweetener and acid.
func (p *packRecipe) softened(drink gravity.Solution) (_ gravity.Solution, err error) {
	if s := p.sweet; s.perLitre > 0 {
		drink, err = sugar.Of(s.of).AddTo(drink, kilograms(s.perLitre))
	}
	if err == nil && p.acid > 0 && !p.mineral {
		drink, err = drink.AddExtract(gravity.AsOrganicAcid, kilograms(p.acid))
	}
	return drink, err
}

// ownTaste is what a pack has beside the batch's drink: what is weighed for it, and its label.
func (m *maker) ownTaste(p *PackPlan, r packRecipe, k, asked packed, say *notes) (err error) {
	weigh := func(what, whatFor string, kilos float64) (*Weight, error) {
		w := Weight{What: what, For: whatFor + " the " + p.Named(), Asked: kilograms(kilos)}
		if w.Mass, err = w.Asked.Round(m.req.Scales.Small, units.Nearest); err != nil {
			return nil, err
		}
		if w.Mass.Decimal().IsZero() {
			say.caution(fmt.Sprintf("%s, %.0f mg, is too little for the scale: dissolve it in water by weight, and measure that.", what, w.Asked.In(units.Milligram)))
		}
		say.weigh(w)
		return &w, nil
	}
	if k.sweet > 0 {
		if p.Sweetener, err = weigh(r.sweet.name, "sweetening", asked.sweet); err != nil {
			return err
		}
		for _, c := range r.sweet.cautions {
			say.caution(c)
		}
		if r.sweet.ferments {
			say.caution(fmt.Sprintf("The %s are sweetened with %s, which yeast that is left in them can ferment: keep them cold, or stabilise "+
				"or pasteurise the drink, and hold their highest pressure against their rating.", p.Named(), r.sweet.name))
		}
	}
	if k.acid > 0 {
		if p.Acid, err = weigh(r.Acid.What, "souring", asked.acid); err != nil {
			return err
		}
	}
	if r.Pack.Flavour != nil {
		say.tried(r.taste)
	}
	if r.Strength == nil && r.Pack.Flavour == nil && r.Sweeten == nil && r.Acid == nil {
		return nil
	}
	p.Own, err = m.ownLabel(r, k)
	return err
}

// ownLabel is the label of a pack that is a drink of its own.
func (m *maker) ownLabel(r packRecipe, k packed) (*PackLabel, error) {
	l := &PackLabel{Strength: units.PercentVolume.Of(checked.Number(math.Round(10*k.drink.ByVolume().In(units.PercentVolume)) / 10))}
	l.Within = math.Abs(k.drink.ByVolume().In(units.PercentVolume)-l.Strength.In(units.PercentVolume)) <= labelTolerance
	n, err := nutrients(m.req.Label.Law, k.drink, sweetened{r.sweet, k.sweet})
	l.Kilojoules, l.Kilocalories, l.Carbohydrate, l.Sugars = n.kJ, n.kcal, n.carbohydrate, n.sugars
	return l, err
}

// soured are the packs with their pH, where it is foreseen.
func (m *maker) soured(say *notes) (packs []PackPlan, err error) {
	packs = slices.Clone(m.plan.Packs)
	for i, r := range m.recipe.packs {
		p := &packs[i]
		switch {
		case m.recipe.base != nil && m.req.made().PH == nil, m.recipe.base == nil && (r.Acid == nil || m.unforeseen() != ""):
			continue
		}
		if p.PH, err = m.sourness(i, p.Content); err != nil {
			return nil, r.refused(err)
		}
		if err := m.sulfiteSoured(p, say); err != nil {
			return nil, err
		}
	}
	return packs, nil
}

// sourness is the pH of a pack with its gas, with and without its acid.
func (m *maker) sourness(i int, content units.CarbonDioxideContent) (*PackPH, error) {
	f, r := m.poured.packs[i], m.recipe.packs[i]
	of := func(c carried) (float64, error) {
		if _, err := c.do(m.temper(c.state.Temperature(), at20)); err != nil {
			return 0, err
		}
		if content.IsZero() {
			if _, err := c.do(forward.Step{Kind: forward.Degas, Share: units.Percent.Of(100)}); err != nil {
				return 0, err
			}
			return c.state.PH()
		}
		set, err := m.setTo(m.batch.packed[i].drink, r, content, at20)
		if err != nil {
			return 0, err
		}
		if _, err := c.do(forward.Step{Kind: forward.Carbonate, Gauge: set, Pressure: m.air.Pressure()}); err != nil {
			return 0, err
		}
		return c.state.PH()
	}
	with, err := of(f.carried)
	if err != nil {
		return nil, err
	}
	plain := f.carried
	plain.state = f.before
	for _, st := range f.steps {
		if st.Kind == forward.Acidify {
			continue
		}
		if _, err := plain.do(st); err != nil {
			return nil, err
		}
	}
	without, err := of(plain)
	return &PackPH{Without: without, With: with}, err
}

// sulfiteSoured warns where the acid in a pack frees far more of the SO2 than was asked for: the sulfite was
// dosed for the pH of the batch.
func (m *maker) sulfiteSoured(p *PackPlan, say *notes) error {
	if m.plan.After == nil || m.plan.After.Sulfite == nil {
		return nil
	}
	s, at := m.plan.After.Sulfite, max(p.PH.With, leastSulfitePH)
	share, err := finish.MolecularSharePractice(at)
	if err != nil {
		return err
	}
	wanted := s.Molecular.In(units.MilligramPerLitre)
	got := s.Free.In(units.MilligramPerLitre) * share.In(units.Fraction)
	if got < tooFree*wanted {
		return nil
	}
	say.caution(fmt.Sprintf("The sulfite is dosed for the batch, before the %s are soured: at their pH of %.2f it would be %.1f mg/L "+
		"of molecular SO2 where %.1f is wanted, and sting. Sour the batch before the sulfite instead (acid.when), or leave the sulfite "+
		"until the acid is in and dose it for %.0f mg/L of free SO2.",
		p.Named(), p.PH.With, got, wanted, wanted/share.In(units.Fraction)))
	return nil
}

const (
	leastSulfitePH = 2.5 // from which the share of SO2 that is molecular is reckoned
	tooFree        = 1.5 // times the molecular SO2 that is wanted
)
