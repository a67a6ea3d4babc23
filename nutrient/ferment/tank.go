package ferment

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Tank is a wash to ferment: what it is made of, what feeds it, what buffers it. Its
// methods follow the pH while sugar is used. Fields left at zero take what is said at
// them.
type Tank struct {
	Brew        sugar.Brew             // of [sugar.Wash.For] or [sugar.Wash.From]
	Water       water.Profile          // the treated water that the wash is made of
	Amino       units.Mass             // nitrogen of amino acids that juice, honey or malt brings; zero of sugar
	Feed        []material.Dose        // all additions together
	Additions   int                    // the feed goes in as [nutrient.StageShares] says; 0 is 1, all with the yeast
	Buffer      material.Dose          `json:",omitzero"` // one of [Buffers]; zero is none
	Metabolism  Metabolism             // the zero value is [UsualMetabolism]
	AcidsKnown  bool                   `json:",omitzero"` // the acids are those of the Metabolism, without their spread: what is a range otherwise is one value
	Temperature units.Temperature      // of the ferment
	Pressure    units.AbsolutePressure // of the gas above it; zero is 101.325 kPa
}

// fermenting is a Ferment that was checked, by the litre of finished drink.
type fermenting struct {
	Tank
	litres   float64
	hexose   float64        // g, used in all
	ethanol  [2]float64     // % vol, at the start and the end
	start    acidity.Liquid // water and buffer
	amino    float64        // mg/L of nitrogen, of the wash itself
	feed     nutrient.Supply
	upTo     [3]Metabolism // usual, least, most
	others   []water.Content
	perLitre float64       // litres of the brew's water in a litre of drink
	water    float64       // litres of water in that, once its sugar has taken some
	before   float64       // mmol/L of CO2 in all forms in the wash under air; zero is not worked out yet
	like     *water.Series // of this ferment's liquids, where there are many
}

const fermentSource = "washes that yeast ferments"

func (f Tank) checked(fn string) (fermenting, error) {
	c := fermenting{Tank: f}
	salt := &buffer{}
	var err error
	if !f.Buffer.Material.IsZero() || !f.Buffer.Mass.IsZero() {
		if salt, err = bufferOf(fn, f.Buffer.Material); err != nil {
			return c, err
		}
	}
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
	c.amino = f.Amino.In(units.Milligram) / c.litres
	if err := limit.Check(fn, "amino nitrogen of the wash", c.amino, "mg/L", 0, 1000, "needs published for musts"); err != nil {
		return c, err
	}
	if err := limit.Check(fn, "nitrogen fed", c.feed.Nitrogen().In(units.MilligramPerLitre), "mg/L", 0, 1000, "needs published for musts"); err != nil {
		return c, err
	}
	grams := f.Buffer.Mass.In(units.Gram)
	if err := limit.Check(fn, salt.Name(), grams/c.litres, "g/L", 0, mostBuffer, "buffers that a drink can bear"); err != nil {
		return c, err
	}
	c.perLitre = f.Brew.Water.In(units.Kilogram) / waterPerLitre / c.litres
	c.water = f.Brew.Finish.Water().In(units.Kilogram) / waterPerLitre / c.litres
	c.start = acidity.Of(f.Water).Scaled(c.perLitre)
	if grams > 0 {
		c.start = salt.in(c.start, 1000*grams/salt.MolarMass().In(units.GramPerMole)/c.litres)
	}
	c.hexose = f.Brew.Hexose().In(units.Gram)
	c.ethanol = [2]float64{f.Brew.Start.ByVolume().In(units.PercentVolume), f.Brew.Finish.ByVolume().In(units.PercentVolume)}
	return c, nil
}

const (
	rounding      = 1e-12  // of a count of additions
	mostBuffer    = 20     // g/L
	mostEthanol   = 16     // % vol, the end of [water.Profile.WithEthanol]
	waterPerLitre = 0.9982 // kg at 20 °C, the litre of package water
)
