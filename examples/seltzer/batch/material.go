package batch

import (
	"strings"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// This file alone knows how the packages name what is weighed, and what they say of yeast.

// stuff is what a gram of something weighed brings, in moles.
type stuff struct {
	use use
	per Amounts
}

// use is what a material is for; several may be joined.
type use uint8

const (
	asWater use = 1 << iota
	asSalt
	asSugar
	asFood
	asAcid
	asStabiliser
	asYeast
)

// weighed finds what a name stands for: first as it is spelled here, then as the packages
// read it.
func weighed(st *Step, of use) (stuff, error) {
	name := st.What
	if !st.Own.IsZero() {
		m := ofMaterial(st.Own)
		if name = st.Own.Name(); m.use&of == 0 {
			return m, &units.NameError{Func: do, What: "material for this step", Name: name}
		}
		return m, nil
	}
	m, ok := stuffs[name]
	if !ok {
		m = stuffs[spelled(name)]
	}
	if m == nil || m.use&of == 0 {
		return stuff{}, &units.NameError{Func: do, What: "material for this step", Name: name}
	}
	return *m, nil
}

// spelled is the name in stuffs of what a package reads a text as.
func spelled(text string) string {
	if m, err := material.Find(text); err == nil {
		return m.Name()
	}
	if a, err := water.ParseAcid(text); err == nil {
		return a.Name()
	}
	return strings.ToLower(strings.TrimSpace(text))
}

var stuffs = func() map[string]*stuff {
	all := map[string]*stuff{
		"water": {asWater, Amounts{Water: 1 / molar[Water]}}, "dry yeast": {asYeast, dryYeast()},
		"glycerol": {asSugar, Amounts{Glycerol: 1 / molar[Glycerol]}},
	}
	for _, m := range material.All() {
		of := ofMaterial(m)
		all[m.Name()] = &of
	}
	for _, s := range water.Salts() {
		all[s.Name()].use |= asSalt
	}
	for _, a := range water.Acids() {
		c, _ := component(a.Ion())
		var per Amounts
		per[c] = 1 / a.MolarMass().In(units.GramPerMole)
		all[a.Name()] = &stuff{asAcid, neutral(per)}
	}
	n := finish.SorbicAcidShare().In(units.Fraction) / (molar[Sorbate] + molar[Proton])
	all["potassium sorbate"] = &stuff{asStabiliser, Amounts{Potassium: n, Sorbate: n}}
	return all
}()

// ofMaterial is a material with what it is for.
func ofMaterial(m material.Material) stuff {
	c := m.Composition()
	of := stuff{asFood, ofComposition(&c, m.Formula() != "" || !c.Acidity.IsZero())}
	switch {
	case !c.Acidity.IsZero():
		of.use = asAcid
	case c.Sugar().In(units.Percent)+c.UnfermentedSolids.In(units.Percent) > 0:
		of.use = asSugar
	case !c.SulfurDioxide.IsZero():
		of.use = asStabiliser
	}
	return of
}

// ofComposition is by what a gram brings. The protons leave no charge; the rest of the mass is the water of
// a salt, of its crystals and its alkalinity, and of a sugar, or matter without a name, which counts as dextrin.
func ofComposition(p *material.Composition, compound bool) Amounts {
	per := func(x units.Share, as float64) float64 { return x.In(units.Fraction) / as }
	a := neutral(Amounts{
		Calcium: per(p.Calcium, weights[Ca]), Magnesium: per(p.Magnesium, weights[Mg]), Sodium: per(p.Sodium, weights[Na]),
		Potassium: per(p.Potassium, weights[K]), Zinc: per(p.Zinc, weights[Zn]),
		Ammonium: per(p.AmmoniumNitrogen, weights[N]), Amino: per(p.AminoNitrogen, weights[N]), Urea: per(p.UreaNitrogen, 2*weights[N]),
		Chloride: per(p.Chloride, molar[Chloride]), Sulfate: per(p.Sulfate, molar[Sulfate]), Lactate: per(p.Lactate, molar[Lactate]),
		Citrate: per(p.Citrate, molar[Citrate]), Acetate: per(p.Acetate, molar[Acetate]), Malate: per(p.Malate, molar[Malate]),
		Tartrate: per(p.Tartrate, molar[Tartrate]), Succinate: per(p.Succinate, molar[Succinate]),
		Gluconate: per(p.Gluconate, molar[Gluconate]), Glutamate: per(p.Glutamate, molar[Glutamate]-molar[Proton]), Phosphate: per(p.Phosphorus, weights[P]),
		Sulfite:       per(p.SulfurDioxide, sulfurDioxide),
		CarbonDioxide: per(p.Bicarbonate, bicarbonate) + per(p.Carbonate, carbonate),
		Glucose:       per(p.Glucose, molar[Glucose]), Fructose: per(p.Fructose, molar[Fructose]),
		Sucrose: per(p.Disaccharides, molar[Sucrose]) + per(p.Trisaccharides, molar[Sucrose]),
		Dextrin: per(p.UnfermentedSolids, molar[Dextrin]),
	})
	ions := false
	for c := Calcium; c <= Glutamate; c++ {
		ions = ions || a[c] > 0
	}
	if compound && ions || !p.Sugar().IsZero() || !p.UnfermentedSolids.IsZero() {
		return rest(a, Water)
	}
	return rest(a, Dextrin)
}

var sulfurDioxide, carbonate = chemistry.MustMass("SO2"), chemistry.MustMass("CO3")

// rest makes a gram of what is there with one more component.
func rest(a Amounts, c Component) Amounts {
	a[c] += (1 - a.grams()) / molar[c]
	return a
}

// neutral takes the protons that leave no charge.
func neutral(a Amounts) Amounts {
	a[Proton] -= a.Element(Charge)
	return a
}

// dryYeast is lean yeast: its growth is by what the liquid brings.
func dryYeast() Amounts {
	m := ferment.UsualMetabolism()
	return rest(Amounts{
		YeastNitrogen:   m.LeanNitrogen.In(units.Fraction) / weights[N],
		YeastPhosphorus: m.Phosphorus.In(units.Fraction) / weights[P],
		YeastPotassium:  m.Potassium.In(units.Fraction) / weights[K],
	}, YeastMatter)
}

// flavouring is a litre of it at 20 °C.
func flavouring(strength units.StrengthByVolume, sugar units.MassConcentration) (a Amounts, err error) {
	l, err := finish.Flavouring{Strength: strength, Sugar: sugar}.Liquid(units.Litre.Of(1))
	a[Water], a[Ethanol] = l.Water().In(units.Gram)/molar[Water], l.Ethanol().In(units.Gram)/molar[Ethanol]
	a[Sucrose] = l.ExtractOf(gravity.AsSucrose).In(units.Gram) / molar[Sucrose]
	return a, err
}

// metabolism is what yeast does with sugar, by the unknowns.
func metabolism(u *Unknowns) ferment.Metabolism {
	m := ferment.UsualMetabolism()
	end := m.MostAcids()
	if u.Acids < 0 {
		end = m.LeastAcids()
	}
	part := func(usual, end units.Share, part float64) units.Share {
		return units.Fraction.Of(checked.Number(usual.In(units.Fraction) + part*(end.In(units.Fraction)-usual.In(units.Fraction))))
	}
	x := max(u.Acids, -u.Acids)
	m.Succinic, m.Acetic, m.Lactic = part(m.Succinic, end.Succinic, x), part(m.Acetic, end.Acetic, x), part(m.Lactic, end.Lactic, x)
	m.Glycerol = part(units.Share{}, m.Glycerol, u.Glycerol)
	m.LeanNitrogen = units.Percent.Of(checked.Number(u.LeanNitrogen))
	return m
}

// balance is what yeast makes of sugar, in moles of the components: what changes in the liquid,
// with the CO2 made. The sugar used is taken out by its kinds before.
func balance(u *Unknowns, hexose float64, s *State) (change Amounts, err error) {
	g := grams
	most := hexose / 10 * (1 - 1e-12) // as far as the balance asks, however a unit rounds it; it takes far less
	m := metabolism(u)
	if s.above.Closed {
		m.MostYeast = units.Fraction.Of(checked.Number(u.Growth * m.MostYeast.In(units.Fraction)))
	}
	nitrogen := [...]float64{s.amount[Ammonium] * weights[N], s.amount[Amino] * weights[N], 2 * s.amount[Urea] * weights[N]}
	sum := max(0, nitrogen[0]) + max(0, nitrogen[1]) + max(0, nitrogen[2])
	offered := 1.0
	if sum > most {
		offered = most / sum
	}
	held := s.amount[YeastNitrogen]*weights[N] - m.LeanNitrogen.In(units.Fraction)*s.Yeast().In(units.Gram)
	b, err := m.Ferment(ferment.Substrate{
		Hexose:   g(hexose),
		Ammonium: g(max(0, offered*nitrogen[0])), Amino: g(max(0, offered*nitrogen[1])), Urea: g(max(0, offered*nitrogen[2])),
		Phosphorus: g(min(most, max(0, s.amount[Phosphate]*weights[P]))), Potassium: g(min(most, max(0, s.amount[Potassium]*weights[K]))),
		Reserve: g(min(most, max(0, held))),
	})
	if err != nil {
		return change, err
	}
	mol := func(m units.Mass, of float64) float64 { return m.In(units.Gram) / of }
	nh4, amino, urea := mol(b.Ammonium, weights[N]), mol(b.Amino, weights[N]), mol(b.Urea, 2*weights[N])
	p, k := mol(b.Phosphorus, weights[P]), mol(b.Potassium, weights[K])
	succinic, acetic, lactic := mol(b.Succinic, molar[Succinate]+2*molar[Proton]), mol(b.Acetic, molar[Acetate]+molar[Proton]), mol(b.Lactic,
		molar[Lactate]+molar[Proton])
	free := m.FreePerPotassium.In(units.Fraction)
	ash := (nh4+amino+2*urea)*molar[YeastNitrogen] + p*molar[YeastPhosphorus] + k*molar[YeastPotassium]
	change = Amounts{
		Ethanol: mol(b.Ethanol, molar[Ethanol]), CarbonDioxide: mol(b.CO2, molar[CarbonDioxide]), Water: mol(b.Water, molar[Water]),
		Glycerol:  mol(b.Glycerol, molar[Glycerol]),
		Succinate: succinic, Acetate: acetic, Lactate: lactic,
		Ammonium: -nh4, Amino: -amino, Urea: -urea, Phosphate: -p, Potassium: -k,
		YeastMatter:   (b.DryYeast.In(units.Gram) - ash) / molar[YeastMatter],
		YeastNitrogen: nh4 + amino + 2*urea, YeastPhosphorus: p, YeastPotassium: k,
		Proton:  2*succinic + acetic + lactic + nh4 + free*k - p,
		Unnamed: (1 - free) * k,
	}
	return change, nil
}
