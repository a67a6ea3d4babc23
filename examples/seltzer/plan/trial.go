package plan

import (
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// checked checks a flavouring, and returns a litre of it.
func (f *Flavour) checked(field string) (gravity.Solution, error) {
	if f == nil {
		return gravity.Solution{}, nil
	}
	checks := []error{
		within(field+".sample", f.Sample, units.Millilitre, 1, 1e5),
		within(field+".added", f.Added, units.Millilitre, 1e-4, 0.2*f.Sample.In(units.Millilitre)),
	}
	if f.Strength != nil {
		checks = append(checks, within(field+".strength", *f.Strength, units.PercentVolume, 0, 96.5))
	}
	if f.Sugar != nil {
		checks = append(checks, within(field+".sugar", *f.Sugar, units.GramPerLitre, 0, 700))
	}
	for i, d := range f.Tried {
		checks = append(checks, within(fmt.Sprintf("%s.tried[%d]", field, i), d, units.Millilitre, 1e-4, 0.2*f.Sample.In(units.Millilitre)))
	}
	for _, err := range checks {
		if err != nil {
			return gravity.Solution{}, err
		}
	}
	litre, err := f.solution(1)
	if err != nil {
		return litre, &RequestError{Field: field, Value: "its strength and sugar together", Allowed: reason(err), Err: err}
	}
	return litre, nil
}

// flavour scales the bench trial up, for the packs that have the batch's.
func (m *maker) flavour(say *notes) (*FlavourPlan, error) {
	for i, k := range m.batch.packed {
		if p := m.recipe.packs[i]; p.Pack.Flavour != nil && p.taste != nil {
			if err := say.flavourOf(p.taste, " of the "+p.named(), k.flavour, kg(k.drink.Ethanol())); err != nil {
				return nil, err
			}
		}
	}
	f := m.req.Flavour
	if f == nil {
		return nil, nil
	}
	total, drink, volume := 0.0, 0.0, 0.0
	for i, k := range m.batch.packed {
		if m.recipe.packs[i].Pack.Flavour != nil {
			continue
		}
		total += k.flavour
		drink += kg(k.drink.Ethanol())
		volume += m.recipe.packs[i].Volume.In(units.Litre)
	}
	if total == 0 {
		return nil, &RequestError{Field: "flavour", Value: f.Name, Allowed: "left out: every pack has its own"}
	}
	s, err := f.solution(total)
	if err != nil {
		return nil, err
	}
	share := kg(s.Ethanol()) / drink
	say.tried(f)
	return &FlavourPlan{
		Name: f.Name, Added: litres(total),
		Rise:    units.PercentVolume.Of(checked.Number(share * m.batch.strength)),
		Ethanol: units.Percent.Of(checked.Number(100 * share)),
		Sugar:   units.GramPerLitre.Of(checked.Number(1000 * kg(s.Extract()) / volume)),
	}, say.flavourOf(f, "", total, drink)
}

// flavourOf cautions of a flavouring, so many litres of it with so much ethanol in the drink.
func (n *notes) flavourOf(f *Flavour, of string, total, drink float64) error {
	s, err := f.solution(total)
	if err != nil {
		return err
	}
	if kg(s.Ethanol())/drink > 0.49 {
		n.caution("The flavouring" + of + " brings more than 49 % of the alcohol, the US limit for beer and malt beverages up to 6 % vol (27 CFR " +
			"25.15(b), 7.5); check the law in force.")
	}
	if f.Strength != nil && f.Strength.In(units.PercentVolume) > 20 {
		n.caution("An oil-based flavouring falls out as haze when its alcohol is diluted: try it in a glass of the cold, carbonated drink first.")
	}
	return nil
}

// trials are the doses of a bench trial, and what each of them is for a kind of pack.
func (p *packRecipe) trials(k packed) (all []TrialDose) {
	if p.taste == nil {
		return nil
	}
	for _, d := range p.taste.Tried {
		times := d.In(units.Litre) / p.taste.Added.In(units.Litre)
		all = append(all, TrialDose{
			InSample: d, Liked: times > 1-1e-9 && times < 1+1e-9,
			ForAll:   litres(times * k.flavour),
			ForEach:  litres(times * k.flavour / p.Volume.In(units.Litre) * p.Size.In(units.Litre)),
			PerLitre: units.Millilitre.Of(checked.Number(1000 * times * k.flavour / p.Volume.In(units.Litre))),
		})
	}
	return all
}

// tried says where a trial does not bracket what was liked (common practice, no source).
func (n *notes) tried(f *Flavour) {
	if f == nil || len(f.Tried) == 0 {
		return
	}
	least, most, among := f.Tried[0], f.Tried[0], false
	for _, d := range f.Tried {
		if d.Compare(least) < 0 {
			least = d
		}
		if d.Compare(most) > 0 {
			most = d
		}
		among = among || d.Compare(f.Added) == 0
	}
	in := f.Added.Text(units.Millilitre, 2)
	switch {
	case !among:
		n.caution(fmt.Sprintf("The flavouring's dose, %s of %s, is none of those that were tried: pour one glass of it before the batch.", in, f.Name))
	case len(f.Tried) > 1 && f.Added.Compare(most) == 0:
		n.caution(fmt.Sprintf("The flavouring's dose, %s of %s, is the most that was tried: try a glass with more before the batch.", in, f.Name))
	case len(f.Tried) > 1 && f.Added.Compare(least) == 0:
		n.caution(fmt.Sprintf("The flavouring's dose, %s of %s, is the least that was tried: try a glass with less before the batch.", in, f.Name))
	}
}
