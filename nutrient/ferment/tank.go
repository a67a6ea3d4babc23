package ferment

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/water"
)

// Tank is a wash to ferment: what it is made of, what feeds it, what buffers it. Its
// methods follow the pH while sugar is used. Fields left at zero take what is said at
// them.
type Tank struct {
	Brew        sugar.Brew      // of [sugar.Wash.For] or [sugar.Wash.From]
	Water       water.Profile   // the treated water that the wash is made of
	Feed        []nutrient.Dose // all additions together
	Additions   int             // the feed goes in as [nutrient.StageShares] says; 0 is 1, all with the yeast
	Buffer      Buffer
	BufferMass  units.Mass             // of Buffer; zero is none
	Metabolism  Metabolism             // the zero value is [UsualMetabolism]
	Temperature units.Temperature      // of the ferment
	Pressure    units.AbsolutePressure // of the gas above it; zero is 101.325 kPa
}

// NitrogenUptake returns the share of the sugar by which yeast has taken up its
// nitrogen.
//
//   - Source: common practice, no source: the first third to two thirds.
func NitrogenUptake() evidence.Figure[units.Share] {
	return evidence.Figure[units.Share]{Value: units.Percent.Of(50), Low: amount.Share(1.0 / 3), High: amount.Share(2.0 / 3), Evidence: evidence.Evidence{}}
}

// Point is a ferment when a share of its sugar is used. Strength and CO2 are by the yield
// of the Brew, the Balance by its own atoms; the two differ by 2 to 4 %, within the
// uncertainty of both, unless the Brew was made with [Balance.Yield].
type Point struct {
	Used     units.Share
	PH       evidence.Figure[float64] // Low with the most acids that yeast makes, High with the least
	Gravity  gravity.Gravity
	Strength units.StrengthByVolume
	CO2      units.Mass              // given off until then
	Gas      units.AbsolutePressure  // of CO2 that the liquid is at rest with: of air before the yeast works, then rising to that of the gas above, which it reaches at about a twentieth of the sugar
	Balance  Balance                 // until then, with the usual acids
	Nitrogen units.MassConcentration // in the liquid, that yeast can still take up
	Liquid   water.Profile           // with the usual acids; its alkalinity is negative when it is sour
}

// fermenting is a Ferment that was checked, by the litre of finished drink.
type fermenting struct {
	Tank
	litres   float64
	hexose   float64        // g, used in all
	start    acidity.Liquid // water and buffer
	feed     nutrient.Supply
	upTo     [3]Metabolism // usual, least, most
	others   []water.Content
	perLitre float64       // litres of water in a litre of drink
	before   float64       // mmol/L of CO2 in all forms in the wash under air; zero is not worked out yet
	like     *water.Series // of this ferment's liquids, where there are many
}

const fermentSource = "washes that yeast ferments"

func (f Tank) checked(fn string) (fermenting, error) {
	c := fermenting{Tank: f}
	var err error
	v := f.Brew.Finish.VolumeAt20()
	c.litres = v.In(units.Litre)
	if err := limit.Check(fn, "volume of the brew", c.litres, "L", amount.LeastVolume, amount.MostVolume, "a Brew of Wash.For or Wash.From"); err != nil {
		return c, err
	}
	t := f.Temperature.In(units.Celsius)
	if err := limit.Check(fn, "temperature", t, "°C", 0, 40, fermentSource); err != nil {
		return c, err
	}
	if c.Pressure.IsZero() {
		c.Pressure = units.StandardAtmosphere.Of(1)
	}
	if err := limit.Check(fn, "pressure", c.Pressure.In(units.Kilopascal), "kPa", 50, 400, fermentSource); err != nil {
		return c, err
	}
	if c.Additions == 0 {
		c.Additions = 1
	}
	if err := limit.Check(fn, "additions", float64(c.Additions), "", 1, 10, "common practice"); err != nil {
		return c, err
	}
	if c.Metabolism == (Metabolism{}) {
		c.Metabolism = UsualMetabolism()
	}
	c.upTo = [3]Metabolism{c.Metabolism, c.Metabolism.LeastAcids(), c.Metabolism.MostAcids()}
	if err := c.Metabolism.check(fn); err != nil {
		return c, err
	}
	if c.feed, err = nutrient.SupplyOf(v, f.Feed...); err != nil {
		return c, err
	}
	if err := limit.Check(fn, "nitrogen fed", c.feed.Nitrogen().In(units.MilligramPerLitre), "mg/L", 0, 1000, "needs published for musts"); err != nil {
		return c, err
	}
	grams := f.BufferMass.In(units.Gram)
	if err := limit.Check(fn, f.Buffer.String(), grams/c.litres, "g/L", 0, mostBuffer, "buffers that a drink can bear"); err != nil {
		return c, err
	}
	c.perLitre = f.Brew.Water.In(units.Kilogram) / waterPerLitre / c.litres
	c.start = f.Buffer.buffered(acidity.Of(f.Water).Scaled(c.perLitre), 1000*grams/f.Buffer.MolarMass()/c.litres)
	c.hexose = f.Brew.Hexose().In(units.Gram)
	return c, nil
}

const (
	rounding      = 1e-12  // of a count of additions
	mostBuffer    = 20     // g/L
	waterPerLitre = 0.9982 // kg at 20 °C, the litre of package water
)

// fed is the share of the feed that is in when a share of the sugar is used.
func (f *fermenting) fed(used float64) float64 {
	n := f.Additions
	last := nutrient.LastAddition().In(units.Fraction)
	in := 1 + int(used/last*float64(n-1)+rounding)
	return float64(min(n, in)) / float64(n)
}

// balance is what was used and made when a share of the sugar is used.
func (f *fermenting) balance(m Metabolism, used float64) Balance {
	fed := f.fed(used)
	taken := min(fed, used/NitrogenUptake().Value.In(units.Fraction))
	g := func(perLitre units.MassConcentration, share float64) units.Mass {
		return amount.Grams(share * perLitre.In(units.GramPerLitre) * f.litres)
	}
	return m.ferment(Substrate{
		Hexose:   amount.Grams(f.hexose * used),
		Ammonium: g(f.feed.Ammonium, taken).Plus(amount.Grams(taken * f.start.Ammonium * formula.WeightN / 1000 * f.litres)),
		Amino:    g(f.feed.Amino, taken), Urea: g(f.feed.Urea, taken),
		Phosphorus: g(f.feed.Phosphorus, fed).Plus(amount.Grams(f.start.Phosphate * formula.WeightP / 1000 * f.litres)),
		Potassium:  g(f.feed.Potassium, fed).Plus(amount.Grams(f.start.Potassium * formula.WeightK / 1000 * f.litres)),
	})
}

// acidity is the liquid when a share of the sugar is used, with the balance until then.
func (f *fermenting) acidity(b Balance, used float64) acidity.Liquid {
	a := f.start.Fed(f.feed, f.fed(used))
	per := 1000 / f.litres // mmol/L for a mol
	n := b.b
	a.Ammonium -= per * n.ammonium
	a.Potassium -= per * n.potassium
	a.Phosphate -= per * n.phosphorus
	a.Strong -= per * (n.ammonium + n.free*n.potassium)
	a.Organic[acidity.Succinic] += per * n.succinic
	a.Organic[acidity.Acetic] += per * n.acetic
	a.Organic[acidity.Lactic] += per * n.lactic
	return a.Clean()
}

// around is what the pH depends on: the wash stands under air before the yeast starts,
// then under its own CO2.
func (f *fermenting) around(used float64) acidity.Surroundings {
	s := acidity.Surroundings{At: f.Temperature, Others: f.rest(), Like: f.like, Gas: f.Pressure}
	if used == 0 {
		s.Gas = f.air()
	}
	return s
}

// air is the CO2 of the air before the yeast works: that of the place, or of sea level
// where the vessel is to hold a pressure of its own.
func (f *fermenting) air() units.AbsolutePressure {
	place, _ := units.Barometer(f.Pressure) // above 110 kPa no air is so dense: the zero Atmosphere, sea level
	return water.AirCO2(place)
}

// saturates is CO2, mmol/L, that saturates any wash of this package: 77 mmol/L at 0 °C and
// an atmosphere (Plummer & Busenberg 1982), and as bicarbonate what the cations hold.
func (f *fermenting) saturates(a acidity.Liquid) float64 {
	return 80*f.Pressure.In(units.StandardAtmosphere) + max(0, a.Strong)
}

// rests is the liquid when a share of the sugar is used. At first its CO2 is too little to
// saturate it: that of the wash under air and what was made.
func (f *fermenting) rests(m Metabolism, used float64) (water.Equilibrium, error) {
	b := f.balance(m, used)
	a, s := f.acidity(b, used), f.around(used)
	if made := 1000 * b.b.co2 / f.litres; used > 0 && made < f.saturates(a) {
		if f.before == 0 {
			e, err := f.start.Fed(f.feed, f.fed(0)).Rest(f.around(0))
			if err != nil {
				return e, err
			}
			f.before = e.InorganicCarbon().In(units.MillimolePerLitre)
		}
		s.Carbon = f.before + made
	}
	return a.Rest(s)
}

func (f *fermenting) pH(m Metabolism, used float64) (float64, error) {
	e, err := f.rests(m, used)
	if err != nil {
		return 0, err
	}
	return e.PH(), nil
}

// span is the pH with the usual, the most and the least acids.
func (f *fermenting) span(used float64) (evidence.Figure[float64], error) {
	var v [3]float64
	for i, m := range f.upTo {
		if used == 0 && i > 0 { // no acids are made yet
			v[i] = v[0]
			continue
		}
		var err error
		if v[i], err = f.pH(m, used); err != nil {
			return evidence.Figure[float64]{}, err
		}
	}
	return evidence.Figure[float64]{Value: v[0], Low: min(v[0], v[2]), High: max(v[0], v[1]), Evidence: evidence.Evidence{Source: "charge balance of the liquid", Grade: evidence.Computed}}, nil
}

// At returns the ferment when a share of its sugar is used. At zero the wash is at rest
// with the CO2 of air, a state that a wash fresh from the kettle comes near in hours; its
// own CO2 then takes the pH down by up to three, until the liquid is saturated at about
// a twentieth of the sugar.
//
//   - Source: charge balance: strong ions of water, feed and buffer; H+ for ammonium and
//     potassium taken up, phosphate with its proton, acids made ([Metabolism.Ferment]);
//     the CO2 made, up to that of the gas above; equilibria of package water.
//   - Range: a wash of 0 to 40 °C at 50 to 400 kPa, up to 1000 mg/L of nitrogen and 20
//     g/L of buffer; beyond it the error is a [*units.RangeError].
//   - Uncertainty: PH.Low to PH.High, from the acids made; the nitrogen that yeast
//     takes up is counted as if it took all. Ethanol makes acids weaker, which is left out:
//     from 0 to 12 % vol lactic acid's pK rises by 0.17 and succinic acid's last by 0.17 (read
//     in a data base), by 0.07 at 5 % vol, and the end pH by no more: above the figure given.
func (f Tank) At(used units.Share) (Point, error) {
	c, err := f.whenUsed("ferment.Tank.At", used)
	if err != nil {
		return Point{}, limit.Named("ferment.Tank.At", err)
	}
	c.like = new(water.Series)
	p, err := c.at(used.In(units.Percent) / 100)
	return p, limit.Named("ferment.Tank.At", err)
}

// PH returns the pH when a share of the sugar is used, with the usual acids: that of
// [Tank.At] in a third of its time. Source, range, errors and uncertainty are those of
// [Tank.At].
func (f Tank) PH(used units.Share) (float64, error) {
	c, err := f.whenUsed("ferment.Tank.PH", used)
	if err != nil {
		return 0, limit.Named("ferment.Tank.PH", err)
	}
	ph, err := c.pH(c.Metabolism, used.In(units.Percent)/100)
	return ph, limit.Named("ferment.Tank.PH", err)
}

// whenUsed is the ferment, checked together with a share of its sugar.
func (f Tank) whenUsed(fn string, used units.Share) (fermenting, error) {
	if err := limit.Check(fn, "share of the sugar used", used.In(units.Percent), "%", 0, 100, "a part of the sugar"); err != nil {
		return fermenting{}, err
	}
	return f.checked(fn)
}

func (f *fermenting) at(used float64) (Point, error) {
	p := Point{Used: amount.Share(used)}
	var err error
	if p.PH, err = f.span(used); err != nil {
		return Point{}, err
	}
	s, made, err := f.Brew.At(p.Used)
	if err != nil {
		return Point{}, err
	}
	p.Gravity, p.Strength, p.CO2 = s.Gravity(), s.ByVolume(), made.CO2
	e, err := f.rests(f.Metabolism, used)
	if err != nil {
		return Point{}, err
	}
	p.Gas = e.CO2Pressure()
	p.Balance = f.balance(f.Metabolism, used)
	a := f.acidity(p.Balance, used)
	fed := f.fed(used)
	amino := fed*(f.feed.Amino.In(units.MilligramPerLitre)+f.feed.Urea.In(units.MilligramPerLitre)) -
		p.Balance.Amino.Plus(p.Balance.Urea).In(units.Milligram)/f.litres
	p.Nitrogen = amount.MgPerL(max(0, a.Ammonium*formula.WeightN+amino))
	p.Liquid, err = a.Profile(f.Temperature, f.rest())
	return p, err
}

// rest is the ions that no yeast and no buffer changes, by the litre of drink.
func (f *fermenting) rest() []water.Content {
	if f.others != nil {
		return f.others
	}
	f.others = make([]water.Content, 0, 8)
	for _, c := range [...]struct {
		ion  water.Ion
		more float64 // mg/L
	}{
		{water.Calcium, 0}, {water.Magnesium, f.feed.Magnesium.In(units.MilligramPerLitre)},
		{water.Chloride, f.feed.Chloride.In(units.MilligramPerLitre)}, {water.Sulfate, f.feed.Sulfate.In(units.MilligramPerLitre)},
		{water.Nitrate, 0}, {water.Zinc, f.feed.Zinc.In(units.MilligramPerLitre)},
	} {
		mg := f.perLitre*f.Water.Ion(c.ion).In(units.MilligramPerLitre) + c.more
		if mg > 0 {
			f.others = append(f.others, c.ion.At(units.MilligramPerLitre.Of(checked.Number(mg))))
		}
	}
	return f.others
}

// Course is a ferment from its start to its end.
type Course struct {
	Points   []Point // the first before the yeast works, at rest with air
	Cautions []string
}

// Course returns the ferment in so many equal steps of sugar used.
//
//   - Source: as [Tank.At].
//   - Range: 1 to 200 steps; otherwise as [Tank.At].
//   - Uncertainty: as [Tank.At].
func (f Tank) Course(steps int) (Course, error) {
	const fn = "ferment.Tank.Course"
	if err := limit.Check(fn, "steps", float64(steps), "", 1, 200, "a limit of the function"); err != nil {
		return Course{}, err
	}
	c, err := f.checked(fn)
	if err != nil {
		return Course{}, limit.Named(fn, err)
	}
	c.like = new(water.Series)
	out := Course{Points: make([]Point, 0, steps+1)}
	for i := range steps + 1 {
		p, err := c.at(float64(i) / float64(steps))
		if err != nil {
			return Course{}, limit.Named(fn, err)
		}
		out.Points = append(out.Points, p)
	}
	out.Cautions = c.cautions(out.Points)
	return out, nil
}
