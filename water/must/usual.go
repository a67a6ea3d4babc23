package must

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/water"
)

// Constituent is one thing that a must usually holds: of an ion, of nitrogen by its form, or its acidity.
type Constituent struct {
	Name     string // "potassium", "acidity as malic acid", "amino nitrogen"
	Content  evidence.Figure[units.MassConcentration]
	ion      water.Ion
	nitrogen int // 1 amino, 2 ammonium; otherwise an ion, or the acidity
}

// Usual is what a litre of a must or wash usually holds beside its sugar.
type Usual struct {
	Extract units.MassConcentration  // solids of the litre; what follows goes with them
	PH      evidence.Figure[float64] // of fruit it follows from acidity and strong ions, and is here what was measured
	Parts   []Constituent
}

// What a [Constituent] is that is no ion.
const (
	anIon = iota
	amino
	ammonium
	ofAcidity
)

const (
	// honeyOf is kg in a litre of the solution in which its pH and acidity are measured: 10 g in 75 mL, at 1.42 kg/L.
	honeyOf = 0.010 / (0.075 + 0.010/1.42)
)

func about(name string, v, low, high float64, e evidence.Evidence) Constituent {
	return Constituent{Name: name, Content: evidence.Figure[units.MassConcentration]{Value: milligrams(v), Low: milligrams(low),
		High: milligrams(high), Evidence: e}}
}

func holds(i water.Ion, v, low, high float64, e evidence.Evidence) Constituent {
	p := about(i.Name(), v, low, high, e)
	p.ion = i
	return p
}

const acidityOf = "acidity as "

var nitrogenNames = [...]string{amino: "amino nitrogen", ammonium: "ammonium nitrogen"}

func nitrogen(form int, v, low, high float64, e evidence.Evidence) Constituent {
	p := about(nitrogenNames[form], v, low, high, e)
	p.nitrogen = form
	return p
}

func acidityAs(a water.Acid, v, low, high float64, e evidence.Evidence) Constituent {
	p := about(acidityOf+a.Name(), v, low, high, e)
	p.nitrogen = ofAcidity
	return p
}

func scaled(p Constituent, k float64) Constituent {
	c := &p.Content
	for _, v := range []*units.MassConcentration{&c.Value, &c.Low, &c.High} {
		*v = milligrams(k * v.In(units.MilligramPerLitre))
	}
	return p
}

// What the usual figures rest on.
var (
	readIn = func(source string) evidence.Evidence { return evidence.Evidence{Source: source, Grade: evidence.Read} }
	quoted = func(source string) evidence.Evidence {
		return evidence.Evidence{Source: source, Grade: evidence.Read, Note: "as a page quotes it"}
	}
	recalled = evidence.Evidence{Source: "handbooks", Grade: evidence.Recalled}
	chosen   = func(within string) evidence.Evidence {
		return evidence.Evidence{Source: within, Grade: evidence.Chosen}
	}
)

// Usual returns what a must or wash of the origin usually holds, each figure with its spread and its source: of an
// apple juice of 12 °Bx, a grape must of 22 °Bx, honey as 10 g in 75 mL of water, a wort of 12 °P from pale malt
// or its extract. Potassium of the fruits follows from their strong ions ([Origin.FromAcidity]) and is not among the
// parts. The acids and peptides of a wort that have no name here stand as glutamate, whose side group
// buffers where they do: as much as makes a usual dose of lactic acid do what it is said to.
//
// The error is a [*units.NameError] for an Origin that is none.
//
//   - Uncertainty: each figure's spread; a drink is known by what is measured of it ([Origin.Brings]).
func (f Origin) Usual() (Usual, error) {
	if err := origins.Check("must.Origin.Usual", f); err != nil {
		return Usual{}, err
	}
	ph := func(v, low, high float64, e evidence.Evidence) evidence.Figure[float64] {
		return evidence.Figure[float64]{Value: v, Low: low, High: high, Evidence: e}
	}
	gl := func(x float64) units.MassConcentration { return units.GramPerLitre.Of(checked.Number(x)) }
	switch f {
	case FromApple:
		const minerals = "Zeiner et al. 2010, clarified apple juice"
		return Usual{gl(125.6), ph(3.71, 3.37, 4.24, quoted("Eisele & Drake 2005, 175 varieties")), []Constituent{
			acidityAs(water.MalicAcid, 4200, 1500, 9100, quoted("Mattick & Moyer, 15 varieties")),
			holds(water.Calcium, 85, 50, 120, readIn(minerals)), holds(water.Magnesium, 40, 20, 60, readIn(minerals)), holds(water.Sodium, 17, 11, 24, readIn(minerals)),
			holds(water.Phosphate, 215, 120, 300, recalled), holds(water.Zinc, 0.2, 0.05, 0.5, recalled),
			nitrogen(amino, 90, 20, 256, chosen("Valois et al. 2006, 20 to 138, and Plotkowski & Cline 2021, 60 to 256 mg/L; all of it amino")),
		}}, nil
	case FromGrape:
		const wines = "89 wines of Piedmont"
		return Usual{gl(240), ph(3.4, 3.02, 4.04, readIn("Kliewer et al. 1967, 50 wine varieties, early")), []Constituent{
			acidityAs(water.TartaricAcid, 7000, 3700, 13200, chosen("Kliewer et al. 1967, 3.7 to 13.2 g/L")),
			holds(water.Calcium, 60, 28, 134, chosen(wines)), holds(water.Magnesium, 100, 70, 151, chosen(wines)), holds(water.Phosphate, 400, 290, 640,
				chosen(wines)), holds(water.Zinc, 0.5, 0.1, 1.5, recalled),
			nitrogen(amino, 100, 40, 250, recalled), nitrogen(ammonium, 50, 20, 120, recalled),
		}}, nil
	case FromHoney:
		const white, zealand = "White et al. 1962, 490 honeys", "honeys of New Zealand, Food Chem. 128 (2011) 236"
		u := Usual{gl(1000 * honeyOf * 0.828), ph(3.91, 3.42, 6.10, quoted(white)), []Constituent{
			acidityAs(water.HydrochloricAcid, 29.12*36.458, 8.68*36.458, 59.49*36.458, quoted(white+", free and lactone")),
			holds(water.Potassium, 764, 34.8, 3640, readIn("70 honeys of Turkey, PMC6828168; spread: "+zealand)),
			holds(water.Calcium, 50, 7.21, 94.3, chosen(zealand)), holds(water.Magnesium, 20, 7, 90, recalled), holds(water.Phosphate, 276, 90, 782,
				chosen(zealand)), holds(water.Zinc, 2, 0.5, 5, recalled),
			nitrogen(amino, 30, 5, 60, chosen("less than 20 mg/L in a must of 25 °Bx, Staggered nutrient additions in mead making")),
		}}
		for i, p := range u.Parts { // a kilogram, so far
			u.Parts[i] = scaled(p, honeyOf)
		}
		return u, nil
	}
	const worts = "Holzmann & Piendl 1977, all-malt wort of 12 °P"
	return Usual{gl(125.6), ph(5.2, 5.0, 5.6, chosen("5.0 to 5.2 after the boil, as a page quotes it; congress wort to 6.0")), []Constituent{
		holds(water.Potassium, 550, 400, 700, quoted(worts)), holds(water.Sodium, 30, 10, 60, quoted(worts)), holds(water.Calcium, 35, 20, 60, quoted(worts)),
		holds(water.Magnesium, 100, 70, 120, quoted(worts)),
		holds(water.Phosphate, 920, 600, 1200, recalled), holds(water.Zinc, 0.12, 0.05, 0.2, recalled),
		holds(water.Citrate, 116, 60, 200, quoted("Montanari et al. 1999, mean of beers")), holds(water.Malate, 63, 30, 120,
			quoted("Montanari et al. 1999, mean of beers")),
		holds(water.Glutamate, 2600, 1300, 5200, evidence.Evidence{Source: "15 mL of lactic acid of 88 % in 18.9 L for pH 4.35, as a page says; another says " +
			"twice", Grade: evidence.Fitted}),
		nitrogen(amino, 160, 100, 220, recalled), nitrogen(ammonium, 10, 5, 25, recalled),
	}}, nil
}

// Brought is what a litre of wash holds for what it is made of.
type Brought struct {
	Drink           Drink                   // the wash with its water, still
	Ammonium, Amino units.MassConcentration // nitrogen, as N; the ammonium stands among the ions too
	Band            float64                 // of the pH, to either side
	Measured        bool                    // by pH, and acidity where that is asked for
}

// Band of the pH of a wash by its usual composition, of fruit, honey and malt (chosen, of the spreads that [Usual]
// names); of what was measured.
const (
	bandFruit, bandHoney, bandMalt = 0.4, 0.5, 0.3
	bandMeasured                   = 0.05
)

// Brings returns a wash of 20 °C that holds so much extract (solids, by the litre) of an origin, dissolved in a water whose
// contents are given by the litre of wash: a profile without ions for a juice as it comes. r is what was measured of the wash: pH and
// titratable acidity of juice and honey; of malt the pH alone, as a titration does not show its buffers; of a fruit the acidity alone
// will do, with its band of 0.3; nothing, and the usual composition counts, in proportion to the extract. own are
// contents that are known of the wash: potassium, by a report. Nitrogen is the usual.
//
// Errors are a [*units.NameError] for an Origin that is none; a [*units.StateError] for one reading of two; a
// [*units.RangeError] for an extract outside 1 to 900 g/L; and those of [Reading.Drink].
//
//   - Source: [Origin.Usual]; electroneutrality.
//   - Uncertainty: [Brought.Band].
func (f Origin) Brings(extract units.MassConcentration, in water.Profile, r Reading, own ...water.Content) (Brought, error) {
	const fn = "must.Origin.Brings"
	u, err := f.Usual()
	if err != nil {
		return Brought{}, limit.Named(fn, err)
	}
	if err := limit.Check(fn, "extract", extract.In(units.GramPerLitre), "g/L", 1, 900, source); err != nil {
		return Brought{}, err
	}
	k := extract.In(units.GramPerLitre) / u.Extract.In(units.GramPerLitre)
	out := Brought{Band: bandMeasured, Measured: true}
	held := contents{}
	for _, p := range u.Parts {
		p = scaled(p, k)
		switch p.nitrogen {
		case amino:
			out.Amino = p.Content.Value
		case ammonium:
			out.Ammonium = p.Content.Value
			held[water.Ammonium] = out.Ammonium.In(units.MilligramPerLitre) / nitrogenOfAmmonium
		case ofAcidity:
		default:
			held[p.ion] = p.Content.Value.In(units.MilligramPerLitre)
		}
	}
	measured := held.with(in)
	if f != FromMalt { // the potassium of the others follows from the charge, where no report has it
		delete(measured, water.Potassium)
	}
	for _, c := range own {
		measured[c.Ion] = c.Concentration.In(units.MilligramPerLitre)
	}
	acidity := r.Acidity.In(units.MilligramPerLitre)
	switch {
	case f == FromMalt && acidity > 0:
		return Brought{}, &units.StateError{Func: fn, What: "wash of malt", Why: "does not show its buffers in a titration: give its pH alone"}
	case f == FromMalt && r.PH > 0:
		out.Drink, err = atPH(fn, r.PH, measured)
	case r.PH > 0 && acidity == 0:
		return Brought{}, &units.StateError{Func: fn, What: "pH", Why: "is one reading of two: give the titratable acidity too"}
	case r.PH > 0:
		out.Drink, err = r.Drink(f.Acids(), measured.list()...)
	case acidity > 0 && f >= FromHoney:
		return Brought{}, &units.StateError{Func: fn, What: "titratable acidity", Why: "is one reading of two: give the pH too"}
	case acidity > 0:
		out.Band, out.Measured = band, false
		out.Drink, err = f.byStrong(fn, k, measured, in, r.Acidity, r.Titration)
	default:
		out.Measured = false
		out.Drink, out.Band, err = f.byUsual(fn, u, k, measured, in)
	}
	if err != nil {
		return Brought{}, limit.Named(fn, err)
	}
	return out, nil
}

// byStrong is the drink of a fruit by its acidity, with the strong ions that it usually has.
func (f Origin) byStrong(fn string, k float64, held contents, in water.Profile, acidity units.MassConcentration, t water.Titration) (Drink, error) {
	facts := &fruitTable[f]
	strong := k*facts.strong.In(units.MilliequivalentPerLitre) + alkalinity(in)
	if _, known := held[water.Potassium]; !known {
		held[water.Potassium] = max(0, strong-charge(held)) * water.Potassium.MolarMass().In(units.GramPerMole)
	}
	x, err := Reading{Acidity: acidity, Titration: t, Temperature: room}.unknown(fn, facts.acids, held.list())
	if err != nil {
		return Drink{}, err
	}
	rest := strong - charge(held) // without a name
	return x.solve(func(acid float64) (water.Profile, error) { return x.neutral(acid, rest) })
}

// byUsual is the drink of an origin of which nothing was measured.
func (f Origin) byUsual(fn string, u Usual, k float64, held contents, in water.Profile) (Drink, float64, error) {
	if f < FromHoney {
		t := water.MalicAcid.TitratedTo(8.2)
		if f == FromGrape {
			t = water.TartaricAcid.TitratedTo(8.2)
		}
		d, err := f.byStrong(fn, k, held, in, scaled(u.Parts[0], k).Content.Value, t)
		return d, bandFruit, err
	}
	// As measured in pure water, in proportion; its rest of charge without a name goes with it.
	own := contents{}
	for _, p := range u.Parts {
		switch p.nitrogen {
		case anIon:
			own[p.ion] = p.Content.Value.In(units.MilligramPerLitre)
		case ammonium:
			own[water.Ammonium] = p.Content.Value.In(units.MilligramPerLitre) / nitrogenOfAmmonium
		}
	}
	var d Drink
	var err error
	band := bandMalt
	if f == FromMalt {
		d, err = atPH(fn, u.PH.Value, own)
	} else {
		band = bandHoney
		r := Reading{PH: u.PH.Value, Acidity: u.Parts[0].Content.Value, Titration: water.Titration{End: 8.5, As: water.HydrochloricAcid}, Temperature: room}
		d, err = r.Drink(f.Acids(), own.list()...)
	}
	if err != nil { // not reached: the figures of a table
		return Drink{}, 0, err
	}
	all := contents{}
	for _, i := range water.Ions() {
		if v := d.water.Ion(i).In(units.MilligramPerLitre); v > 0 && i != water.Bicarbonate && i != water.Carbonate && i != water.Hydroxide {
			all[i] = k * v
		}
	}
	more := 0.0 // mEq/L, that a report of potassium changes
	if v, ok := held[water.Potassium]; ok {
		if was := all[water.Potassium] + in.Ion(water.Potassium).In(units.MilligramPerLitre); was != v {
			more = (v - was) / water.Potassium.MolarMass().In(units.GramPerMole)
		}
	}
	all = all.with(in)
	if v, ok := held[water.Potassium]; ok {
		all[water.Potassium] = v
	}
	p, err := water.NewProfile(room, units.MilligramPerLitreCaCO3.Of(checked.Number((k*alkalinity(d.water)+alkalinity(in)+more)*caCO3)), all.list()...)
	if err != nil {
		return Drink{}, 0, err
	}
	d, err = newDrink(fn, p, units.StrengthByVolume{})
	return d, band, err
}

// atPH is the drink of these contents that shows a pH.
func atPH(fn string, ph float64, held contents) (Drink, error) {
	p, err := water.NewProfile(room, units.CalciumCarbonate{}, held.list()...)
	if err != nil {
		return Drink{}, err
	}
	alk, err := p.AlkalinityAt(ph, units.AbsolutePressure{})
	if err != nil {
		return Drink{}, err
	}
	if p, err = water.NewProfile(room, alk, held.list()...); err != nil { // not reached: the alkalinity came of these ions
		return Drink{}, err
	}
	return newDrink(fn, p, units.StrengthByVolume{})
}

// contents are ions in mg/L.
type contents map[water.Ion]float64

// with is the same with what a water brings.
func (c contents) with(in water.Profile) contents {
	out := contents{}
	for _, i := range water.Ions() {
		if i == water.Bicarbonate || i == water.Carbonate || i == water.Hydroxide {
			continue
		}
		if v := c[i] + in.Ion(i).In(units.MilligramPerLitre); v > 0 {
			out[i] = v
		}
	}
	return out
}

func (c contents) list() (of []water.Content) {
	for _, i := range water.Ions() {
		if v, ok := c[i]; ok {
			of = append(of, i.At(milligrams(v)))
		}
	}
	return of
}

// charge is that of the strong ions, mEq/L: weak acids stand aside.
func charge(c contents) (sum float64) {
	for _, i := range water.Ions() { // in one order: a sum keeps its digits
		if i.Charge() > 0 || i == water.Chloride || i == water.Sulfate || i == water.Nitrate {
			sum += c[i] / i.MolarMass().In(units.GramPerMole) * float64(i.Charge())
		}
	}
	return sum
}

var (
	nitrogenOfAmmonium = chemistry.N / water.Ammonium.MolarMass().In(units.GramPerMole)

	room = units.Celsius.Of(20)
)
