package catalogue

import (
	"example.org/zymase/units"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

const (
	juiceSource   = "electroneutrality and the balance of a titration; " + equilibria + "; NIST Standard Reference Database 46"
	ethanolSource = "E. Prenesti et al., Sci. World J. 2012, 249041, table 4"
)

// asAnion is a content of an acid, as its anion.
func asAnion(a water.Acid, gram float64) water.Content {
	return a.Ion().At(as(units.GramPerLitre, gram*a.Ion().MolarMass().In(units.GramPerMole)/a.MolarMass().In(units.GramPerMole)))
}

// juiceAcids are the acids of a reading, in the order of its shares.
var juiceAcids = [...]water.Acid{water.TartaricAcid, water.MalicAcid, water.CitricAcid, water.LacticAcid}

// A measured is what a maker measures of a drink, and the parts of its acids.
type measured struct {
	must.Reading
	acids must.AcidShares
}

func takesMeasured() arg[measured] {
	part := func(acid string, example float64) arg[float64] {
		return takesNumber(acid+"_part", "", acid+" acid, in parts by mass of its acids", 0, 100, example)
	}
	acids := of4(part("tartaric", 1), part("malic", 1), part("citric", 0).or(0), part("lactic", 0).or(0),
		func(tartaric, malic, citric, lactic float64) (must.AcidShares, error) {
			var s must.AcidShares
			for k, part := range [...]float64{tartaric, malic, citric, lactic} {
				s = append(s, asAnion(juiceAcids[k], part))
			}
			return s, nil
		})
	return of6(takesNumber("ph", "", "pH of the drink", 2, 6, 3.4), takes("acidity", units.GramPerLitre, "titratable acidity", 0, 50, 7), takesConvention(), acids,
		takes("temperature", units.Celsius, "temperature of the pH reading", 0, 40, 20).or(20),
		takes("strength", units.PercentVolume, "strength of the drink", 0, 16, 0).or(0),
		func(ph float64, c units.MassConcentration, by water.Titration, acids must.AcidShares, t units.Temperature, s units.StrengthByVolume) (measured, error) {
			return measured{must.Reading{PH: ph, Acidity: c, Titration: by, Temperature: t, Strength: s}, acids}, nil
		})
}

// drink is what was measured, and more acids of known parts.
func (m measured) drink(more ...water.Content) (must.Drink, error) {
	return m.Reading.Drink(append(m.acids, more...))
}

// A juice is a drink that was measured, with the convention of its acidity.
type juice struct {
	must.Drink
	by water.Titration
}

func takesJuice() arg[juice] {
	return of1(takesMeasured(), func(m measured) (juice, error) {
		d, err := m.drink()
		return juice{d, m.Titration}, err
	})
}

// held is an acid of a drink, in g/L of the acid.
func held(d must.Drink, a water.Acid) float64 {
	return d.Water().Ion(a.Ion()).In(units.GramPerLitre) * a.MolarMass().In(units.GramPerMole) / a.Ion().MolarMass().In(units.GramPerMole)
}

// heldOutput says it.
func heldOutput(a water.Acid, name string) result[juice] {
	return stated(func(j juice) float64 { return held(j.Drink, a) }, name, units.GramPerLitre, name+" acid, free and as salts")
}

// takesAnalysis is a wine by the laboratory.
func takesAnalysis() arg[must.Analysis] {
	mg := func(i water.Ion, name, meaning string, most, example float64) arg[water.Content] {
		return of1(takes(name, units.MilligramPerLitre, meaning, 0, most, example), sure(i.At))
	}
	acid := func(a water.Acid, name string, most, example float64) arg[water.Content] {
		return of1(takesStated(name, units.GramPerLitre, name+" acid", 0, most, example),
			func(gram float64) (water.Content, error) {
				return asAnion(a, gram), nil
			})
	}
	ions := of8(acid(water.TartaricAcid, "tartaric", 20, 1.6), acid(water.MalicAcid, "malic", 30, 1.9),
		mg(water.Potassium, "potassium", "potassium", 5000, 900), mg(water.Calcium, "calcium", "calcium", 1000, 60),
		mg(water.Magnesium, "magnesium", "magnesium", 1000, 100), mg(water.Phosphate, "phosphate", "phosphate, as PO4", 2000, 400).or(0),
		mg(water.Chloride, "chloride", "chloride", 2000, 60).or(0), mg(water.Sulfate, "sulfate", "sulfate; 300 where it is not known", 3000, 300).or(300),
		func(a, b, c, d, e, f, g, h water.Content) ([]water.Content, error) {
			return []water.Content{a, b, c, d, e, f, g, h}, nil
		})
	return of4(takesStated("acidity", units.MilliequivalentPerLitre, "titratable acidity to pH 7.0", 0, 500, 75), ions,
		takes("strength", units.PercentVolume, "strength", 0, 16, 13), takes("temperature", units.Celsius, "temperature of the pH reading", 0, 40, 20).or(20),
		func(mEq float64, ions []water.Content, s units.StrengthByVolume, t units.Temperature) (must.Analysis, error) {
			return must.Analysis{
				Ions: ions, Strength: s, Temperature: t,
				Acidity:   as(units.MilligramPerLitre, mEq*water.HydrochloricAcid.MolarMass().In(units.GramPerMole)),
				Titration: water.Titration{End: 7.0, As: water.HydrochloricAcid},
			}, nil
		})
}

// juiceFunctions are what is known of a juice, a must or a wine.
func juiceFunctions() []*Function {
	type guess = must.Estimate
	const source = juiceSource + "; " + ethanolSource
	return []*Function{
		heavy(entry("juice_ph_from_acidity", "Guess of the pH of a juice from its titratable acidity alone, with its band of 0.3; measure the pH where it counts",
			"one content of salts for each fruit, fitted to half of the juices of Kumar et al. 2021 (apples) and of Migicovsky et al. (grapes)",
			of3(picks("fruit", "whose juice", upTo(must.FromGrape)), takes("acidity", units.GramPerLitre, "titratable acidity", 0, 50, 5), takesConvention(),
				must.Origin.FromAcidity),
			numberFrom(func(e guess) float64 { return e.PH }, "ph", "", "the pH"), numberFrom(func(e guess) float64 { return e.Low }, "low", "", "low end of its band"),
			numberFrom(func(e guess) float64 { return e.High }, "high", "", "high end of its band"))),
		heavy(entry("juice_from_ph_and_acidity", "Acids, salts and buffering of a juice, must or wine of which pH and titratable acidity were measured", source,
			takesJuice(),
			from(juice.StrongIons, "strong_ions", units.MilliequivalentPerLitre,
				"potassium and other cations less chloride and sulfate: the acids that are there as salts"),
			heldOutput(water.TartaricAcid, "tartaric"), heldOutput(water.MalicAcid, "malic"), heldOutput(water.CitricAcid, "citric"),
			heldOutput(water.LacticAcid, "lactic"),
			from(juice.BufferCapacity, "buffer_capacity", units.MilliequivalentPerLitre, "strong base for one pH, at first"))),
		heavy(entry("wine_ph_from_analysis", "pH of a wine by its analysis; acidity beyond the acids named counts as lactic", source,
			of1(takesAnalysis(), func(a must.Analysis) (must.Drink, error) {
				return a.Drink(must.AcidShares{water.Lactate.At(units.MilligramPerLitre.Of(1))})
			}),
			numberFrom(must.Drink.PH, "ph", "", "the pH, good to 0.2"),
			stated(func(d must.Drink) float64 { return held(d, water.LacticAcid) }, "rest", units.GramPerLitre, "other acid, as lactic"))),
		acidBuffer(),
		entry("drink_ph_shift", "How much ethanol raises the pH of a drink whose acids and salts stay the same", ethanolSource,
			of1(takes("strength", units.PercentVolume, "strength of the drink", 0, 16, 12), water.PKShift),
			givesNumber("shift", "", "the rise")),
	}
}

// chalkEquivalent is the mass of CaCO3 in an equivalent, mg/mEq.
const chalkEquivalent = 50.043

// partlyNeutralised is acids in mmol/L, as they were before the lye that dilutes them.
func partlyNeutralised(first, second acidAmount, lye, molar float64, s units.StrengthByVolume, t units.Temperature) (must.Drink, error) {
	whole := 1 + lye/1000/molar // L
	sodium := lye / whole
	alk := sodium
	var ions []water.Content
	add := func(i water.Ion, mmol float64) {
		ions = append(ions, i.At(as(units.MilligramPerLitre, mmol/whole*i.MolarMass().In(units.GramPerMole))))
		alk += mmol / whole * float64(i.Charge())
	}
	if second.of == first.of {
		first.mmol, second.mmol = first.mmol+second.mmol, 0
	} else if second.of != noIon {
		add(second.of, second.mmol)
	}
	add(first.of, first.mmol)
	ions = append(ions, water.Sodium.At(as(units.MilligramPerLitre, sodium*water.Sodium.MolarMass().In(units.GramPerMole))))
	p, err := water.NewProfile(t, as(units.MilligramPerLitreCaCO3, alk*chalkEquivalent), ions...)
	if err != nil {
		return must.Drink{}, err
	}
	return must.New(p, s)
}

// An acidAmount is an acid by its anion, in mmol/L; noIon is none.
type acidAmount struct {
	of   water.Ion
	mmol float64
}

func amountOf(i water.Ion, mmol float64) (acidAmount, error) { return acidAmount{i, mmol}, nil }

// acidBuffer is the buffer capacity of acids in water or dilute ethanol.
func acidBuffer() *Function {
	anions := []water.Ion{water.Tartrate, water.Malate, water.Succinate, water.Citrate, water.Lactate, water.Acetate}
	names := []string{"tartaric acid", "malic acid", "succinic acid", "citric acid", "lactic acid", "acetic acid"}
	return heavy(entry("acid_buffer_capacity", "Buffer capacity of an acid, or of two, partly neutralised with lye", juiceSource+"; "+ethanolSource,
		of6(of2(picksBy("acid", "the acid", anions, names...), takesStated("amount", units.MillimolePerLitre, "the acid, before the lye", 0.1, 500, 40), amountOf),
			of2(picksBy("other_acid", "a second acid", append([]water.Ion{noIon}, anions...), append([]string{"none"}, names...)...).or(0),
				takesStated("other_amount", units.MillimolePerLitre, "the second acid, before the lye", 0, 500, 0).or(0), amountOf),
			takesStated("neutralised", units.MilliequivalentPerLitre, "sodium hydroxide, for a litre as it was before", 0, 500, 20),
			takesNumber("lye", "mol/L", "sodium hydroxide in the lye, which dilutes the acid", 0.01, 20, 0.1),
			takes("strength", units.PercentVolume, "strength of acid and lye", 0, 16, 0).or(0), takes("temperature", units.Celsius, "temperature", 0, 40, 25).or(25),
			partlyNeutralised),
		from(must.Drink.BufferCapacity, "capacity", units.MilliequivalentPerLitre, "strong base for one pH, in a litre of the mixture"),
		numberFrom(must.Drink.PH, "ph", "", "its pH")))
}

// noIon stands for no second acid.
const noIon water.Ion = -1
