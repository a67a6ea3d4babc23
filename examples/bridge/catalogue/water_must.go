package catalogue

import (
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/units"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

const usualSource = "usual compositions of package must, each figure with its source: Kumar et al. 2021, Mattick & Moyer, Zeiner et al. 2010; " +
	"Kliewer et al. 1967; White et al. 1962; Holzmann & Piendl 1977"

// A brought is what an origin brings to a wash, with its acidity.
type brought struct {
	must.Brought
	acidity units.MassConcentration
}

func usually(o must.Origin, extract units.MassConcentration) (brought, error) {
	distilled, err := water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{})
	if err != nil {
		return brought{}, err
	}
	b, err := o.Brings(extract, distilled, must.Reading{})
	if err != nil {
		return brought{}, err
	}
	ta, err := b.Drink.Acidity(water.TartaricAcid.TitratedTo(8.2))
	return brought{b, ta}, err
}

// A soured is a drink before and after an acid.
type soured struct {
	treated
	freeBefore, freeAfter units.MassConcentration // SO2 for 0.8 mg/L of molecular
	acting                units.Share             // of sorbic acid
}

func sour(m measured, succinic float64, a water.Acid, dose units.MassConcentration) (s soured, err error) {
	before, err := m.drink(water.Succinate.At(as(units.GramPerLitre, succinic)))
	if err != nil {
		return s, err
	}
	d, err := before.AddAcid(a, dose)
	if err != nil {
		return s, err
	}
	if s.treated, err = after(d, dose, m.Titration); err != nil {
		return s, err
	}
	if s.freeBefore, err = freeFor(before.PH()); err != nil {
		return s, err
	}
	if s.freeAfter, err = freeFor(d.PH()); err != nil {
		return s, err
	}
	s.acting, err = finish.Undissociated(d.PH())
	return s, err
}

func freeFor(ph float64) (units.MassConcentration, error) {
	share, err := finish.MolecularSharePractice(ph)
	if err != nil {
		return units.MassConcentration{}, err
	}
	return finish.FreeSulfite(units.MilligramPerLitre.Of(0.8), share)
}

// settle brings a wine to rest with the crystals in the cold.
func settle(ph float64, potassium units.MassConcentration, tartaric, malic water.Content, s units.StrengthByVolume,
	t units.Temperature) (tartar treated, err error) {
	ions := []water.Content{water.Potassium.At(potassium), tartaric, malic}
	p, err := water.NewProfile(t, units.CalciumCarbonate{}, ions...)
	if err != nil {
		return tartar, err
	}
	if p, err = p.WithEthanol(s); err != nil {
		return tartar, err
	}
	alk, err := p.AlkalinityAt(ph, units.AbsolutePressure{})
	if err != nil {
		return tartar, err
	}
	if p, err = water.NewProfile(t, alk, ions...); err != nil {
		return tartar, err
	}
	wine, err := must.New(p, s)
	if err != nil {
		return tartar, err
	}
	if p, err = p.WithEthanol(s); err != nil {
		return tartar, err
	}
	if tartar.dose, err = p.CreamOfTartar(); err != nil {
		return tartar, err
	}
	rest, err := wine.Settled(tartar.dose)
	tartar.ph = rest.PH()
	return tartar, err
}

// mustFunctions are what a juice, honey or malt usually brings, an acid by taste, and tartar in the cold.
func mustFunctions() []*Function {
	acid := func(a water.Acid, name string, example float64) arg[water.Content] {
		return of1(takesStated(name, units.GramPerLitre, name+" acid, free and as salts", 0, 15, example),
			func(gram float64) (water.Content, error) {
				return asAnion(a, gram), nil
			})
	}
	return []*Function{
		heavy(entry("must_usual",
			"pH, acidity, potassium and nitrogen that a juice, honey or malt usually gives a wash in distilled water, with the band of the pH: measure your own",
			usualSource,
			of2(picks("origin", "what the wash is made of", upTo(must.FromMalt)),
				takes("extract", units.GramPerLitre, "solids of it in a litre of wash", 1, 900, 125), usually),
			numberFrom(func(b brought) float64 { return b.Drink.PH() }, "ph", "", "the pH"),
			numberFrom(func(b brought) float64 { return b.Band }, "band", "", "to either side of it"),
			from(func(b brought) units.MassConcentration { return b.acidity }, "acidity", units.GramPerLitre, "titratable acidity to pH 8.2 as tartaric acid"),
			from(func(b brought) units.MassConcentration { return b.Drink.Water().Ion(water.Potassium) }, "potassium", units.MilligramPerLitre, "potassium"),
			from(func(b brought) units.MassConcentration { return b.Ammonium.Plus(b.Amino) }, "nitrogen", units.MilligramPerLitre,
				"nitrogen that yeast can take up, as N"))),
		heavy(entry("drink_soured",
			"What an acid added by taste does to a finished drink of measured pH and titratable acidity: pH, acidity, the free SO2 that "+
				"holds 0.8 mg/L of molecular SO2, "+
				"and the part of sorbate that acts",
			juiceSource+"; "+ethanolSource+"; pK 1.81 of wine practice; pK 4.76 of sorbic acid",
			of4(takesMeasured(), takesNumber("succinic_part", "", "succinic acid, in parts by mass of its acids: most of what yeast makes", 0, 100, 0).or(0),
				takesAcid(), takes("dose", units.GramPerLitre, "pure acid added", 0, 20, 2), sour),
			numberFrom(func(s soured) float64 { return s.ph }, "ph_after", "", "pH after it"),
			from(func(s soured) units.MassConcentration { return s.acidity }, "acidity_after", units.GramPerLitre, "titratable acidity after it"),
			from(func(s soured) units.MassConcentration { return s.freeBefore }, "free_so2_before", units.MilligramPerLitre,
				"free SO2 for 0.8 mg/L of molecular, before"),
			from(func(s soured) units.MassConcentration { return s.freeAfter }, "free_so2_after", units.MilligramPerLitre, "the same, after"),
			from(func(s soured) units.Share { return s.acting }, "sorbate_acting", units.Percent, "undissociated part of sorbic acid, after"))),
		heavy(entry("cream_of_tartar_settled",
			"Cream of tartar that settles out of a wine in the cold until it is at rest with the crystals; wines stay above that for months",
			"H. W. Berg & R. M. Keefer, Am. J. Enol. Vitic. 9 (1958) 180, recalled from memory; "+equilibria,
			of6(takesNumber("ph", "", "pH of the wine", 2.5, 4.5, 3.4), takes("potassium", units.MilligramPerLitre, "potassium", 0, 5000, 900),
				acid(water.TartaricAcid, "tartaric", 2.5), acid(water.MalicAcid, "malic", 1.5).or(0),
				takes("strength", units.PercentVolume, "strength", 0, 16, 12), takes("temperature", units.Celsius, "of the cold", 0, 20, 2), settle),
			from(func(t treated) units.MassConcentration { return t.dose }, "settled", units.GramPerLitre, "KHC4H4O6"),
			numberFrom(func(t treated) float64 { return t.ph }, "ph_after", "", "pH after it"))),
	}
}
