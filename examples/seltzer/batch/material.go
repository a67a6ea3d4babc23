package batch

import (
	"strings"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// This file alone knows how the packages name what is weighed.

// material is what a gram of something weighed brings, in moles.
type material struct {
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
func weighed(name string, of use) (*material, error) {
	m, ok := materials[name]
	if !ok {
		m = materials[spelled(name)]
	}
	if m == nil || m.use&of == 0 {
		return nil, &units.NameError{Func: "batch.Do", What: "material for this step", Name: name}
	}
	return m, nil
}

// spelled is the name in materials of what a package reads a text as.
func spelled(text string) string {
	if s, err := water.ParseSalt(text); err == nil {
		return s.Name()
	}
	if a, err := water.ParseAcid(text); err == nil {
		return a.Name()
	}
	if f, err := nutrient.ParseFermentable(text); err == nil {
		return f.Name()
	}
	if s, err := nutrient.ParseSource(text); err == nil {
		return s.Name()
	}
	if b, err := nutrient.ParseBuffer(text); err == nil {
		return b.String()
	}
	return strings.ToLower(strings.TrimSpace(text))
}

var materials = func() map[string]*material {
	all := map[string]*material{"water": {asWater, Amounts{Water: 1 / molar[Water]}}, "dry yeast": {asYeast, dryYeast()}}
	for _, s := range water.Salts() {
		all[s.Name()] = &material{asSalt | asFood, ofSalt(s)}
	}
	for _, a := range water.Acids() {
		all[a.Name()] = &material{asAcid, ofAcid(a)}
	}
	for _, f := range nutrient.Fermentables() {
		all[f.Name()] = &material{asSugar, ofFermentable(f)}
	}
	all["glycerol"] = &material{asSugar, Amounts{Glycerol: 1 / molar[Glycerol]}}
	for _, s := range nutrient.Sources() {
		if all[s.Name()] == nil { // else it is a salt
			all[s.Name()] = &material{asFood, ofSource(s)}
		}
	}
	for b := nutrient.PotassiumBicarbonate; b <= nutrient.TrisodiumCitrate; b++ {
		if all[b.String()] == nil {
			metal := Potassium
			if b == nutrient.TrisodiumCitrate {
				metal = Sodium
			}
			n := 1 / b.MolarMass()
			all[b.String()] = &material{asSalt | asFood, rest(with(metal, 3*n, Citrate, n), Water)}
		}
	}
	const dioxides = 2
	so2 := molar[Sulfite] - molar[Water] + molar[Proton]
	for _, s := range []nutrient.Sulfite{nutrient.PotassiumMetabisulfite, nutrient.SodiumMetabisulfite} {
		metal := Potassium
		if s == nutrient.SodiumMetabisulfite {
			metal = Sodium
		}
		n := s.Yield().In(units.Fraction) / so2 / dioxides
		all[s.String()] = &material{asStabiliser, rest(with(metal, dioxides*n, Sulfite, dioxides*n), Water)} // less a water
	}
	n := nutrient.SorbicAcidShare().In(units.Fraction) / (molar[Sorbate] + molar[Proton])
	all["potassium sorbate"] = &material{asStabiliser, Amounts{Potassium: n, Sorbate: n}}
	return all
}()

// with is so much of two components.
func with(a Component, x float64, b Component, y float64) (out Amounts) {
	out[a], out[b] = x, y
	return out
}

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

// ofSalt is by the ions of a gram in a litre; what they leave of its mass is crystal water and
// the water of its alkalinity.
func ofSalt(s water.Salt) (a Amounts) {
	p, err := water.Profile{}.Add(units.Litre.Of(1), s.Dose(units.Gram.Of(1)))
	if err != nil {
		panic(err) // a test makes every one
	}
	for _, i := range ions {
		a[i.c] = p.Ion(i.ion).In(units.GramPerLitre) / i.ion.MolarMass()
	}
	a = neutral(a)
	switch f := s.Formula(); {
	case strings.Contains(f, "HCO3"):
		a[CarbonDioxide] = -a[Proton]
	case strings.Contains(f, "CO3"):
		a[CarbonDioxide] = -a[Proton] / 2
	}
	return rest(a, Water)
}

func ofAcid(a water.Acid) Amounts {
	c, _ := component(a.Ion())
	return neutral(with(c, 1/a.MolarMass(), c, 1/a.MolarMass()))
}

func ofFermentable(f nutrient.Fermentable) (a Amounts) {
	s, err := gravity.NewSolution(units.Kilogram.Of(1), units.Mass{}, units.Mass{}) // no density is known without water
	if err == nil {
		s, err = f.AddTo(s, units.Gram.Of(1))
	}
	if err != nil {
		panic(err) // a test makes every one
	}
	for c, m := range map[Component]units.Mass{
		Sucrose: s.ExtractOf(gravity.Sucrose), Glucose: s.ExtractOf(gravity.Glucose),
		Fructose: s.ExtractOf(gravity.Fructose), Dextrin: s.ExtractOf(gravity.Dextrin),
	} {
		a[c] = m.In(units.Gram) / molar[c]
	}
	return rest(a, Water)
}

// ofSource is by the shares of a label; matter without a name counts as dextrin.
func ofSource(s nutrient.Source) Amounts {
	p := s.Shares()
	per := func(x units.Share, as float64) float64 { return x.In(units.Fraction) / as }
	return rest(neutral(Amounts{
		Ammonium: per(p.AmmoniumNitrogen, weights[N]), Amino: per(p.AminoNitrogen, weights[N]),
		Urea:      per(p.UreaNitrogen, weights[N]) / 2,
		Phosphate: per(p.Phosphorus, weights[P]), Potassium: per(p.Potassium, weights[K]),
		Magnesium: per(p.Magnesium, weights[Mg]), Zinc: per(p.Zinc, weights[Zn]),
		Sulfate: per(p.Sulfate, molar[Sulfate]), Chloride: per(p.Chloride, weights[Cl]),
	}), Dextrin)
}

// dryYeast is lean yeast: its growth is by what the liquid brings.
func dryYeast() Amounts {
	m := nutrient.UsualMetabolism()
	return rest(Amounts{
		YeastNitrogen:   m.LeanNitrogen.In(units.Fraction) / weights[N],
		YeastPhosphorus: m.Phosphorus.In(units.Fraction) / weights[P],
		YeastPotassium:  m.Potassium.In(units.Fraction) / weights[K],
	}, YeastMatter)
}

// flavouring is a litre of it at 20 °C.
func flavouring(strength units.StrengthByVolume, sugar units.MassConcentration) (a Amounts, err error) {
	l, err := nutrient.Flavouring{Strength: strength, Sugar: sugar}.Liquid(units.Litre.Of(1))
	a[Water], a[Ethanol] = l.Water().In(units.Gram)/molar[Water], l.Ethanol().In(units.Gram)/molar[Ethanol]
	a[Sucrose] = l.ExtractOf(gravity.Sucrose).In(units.Gram) / molar[Sucrose]
	return a, err
}

// metabolism is what yeast does with sugar, by the unknowns.
func metabolism(u *Unknowns) nutrient.Metabolism {
	m := nutrient.UsualMetabolism()
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
	most := hexose / 10 // as far as the balance asks; it takes far less
	m := metabolism(u)
	nitrogen := [...]float64{s.amount[Ammonium] * weights[N], s.amount[Amino] * weights[N], 2 * s.amount[Urea] * weights[N]}
	sum := max(0, nitrogen[0]) + max(0, nitrogen[1]) + max(0, nitrogen[2])
	offered := 1.0
	if sum > most {
		offered = most / sum * (1 - 1e-12)
	}
	held := s.amount[YeastNitrogen]*weights[N] - m.LeanNitrogen.In(units.Fraction)*s.Yeast().In(units.Gram)
	b, err := m.Ferment(nutrient.Substrate{
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
	succinic, acetic, lactic := mol(b.Succinic, molar[Succinate]+2*molar[Proton]), mol(b.Acetic, molar[Acetate]+molar[Proton]), mol(b.Lactic, molar[Lactate]+molar[Proton])
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
