package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// filled is that volume at a temperature of a liquid of a strength and real extract.
func filled(volume units.Volume, strength units.StrengthByVolume, extract units.Extract, t units.Temperature) (s gravity.Solution, err error) {
	if x := extract.In(units.DegreePlato); x == 0 { // up to pure ethanol
		w := gravity.ByMass(strength).In(units.PercentMass)
		s, err = gravity.NewSolution(as(units.Kilogram, 100-w), units.Mass{}, as(units.Kilogram, w))
	} else if strength.In(units.PercentVolume) == 0 {
		s, err = gravity.NewSolution(as(units.Kilogram, 100-x), as(units.Kilogram, x), units.Mass{})
	} else {
		s, err = carbonation.DrinkOf(strength, extract)
	}
	if err != nil {
		return gravity.Solution{}, err
	}
	v, err := s.Volume(t)
	if err != nil {
		return gravity.Solution{}, err
	}
	return s.Times(volume.In(units.Litre) / v.In(units.Litre))
}

// A resized is a liquid brought to a volume, and the water that went or came.
type resized struct {
	liquid gravity.Solution
	water  units.Mass
	volume units.Volume // of that water
}

func boilDownTo(v units.Volume, x units.Extract, wanted units.Volume, t units.Temperature) (r resized, err error) {
	s, err := filled(v, units.StrengthByVolume{}, x, t)
	if err != nil {
		return r, err
	}
	r.liquid, r.water, err = s.BoilDownTo(wanted, t)
	return r, err
}

func makeUpTo(v units.Volume, strength units.StrengthByVolume, x units.Extract, wanted units.Volume, t units.Temperature) (r resized, err error) {
	s, err := filled(v, strength, x, t)
	if err != nil {
		return r, err
	}
	if r.liquid, r.water, err = s.MakeUpTo(wanted, t); err != nil {
		return r, err
	}
	d, err := gravity.WaterDensity(t)
	if err != nil {
		return r, err
	}
	r.volume = as(units.Litre, 1000*r.water.In(units.Kilogram)/d.In(units.KilogramPerCubicMetre))
	return r, nil
}

// gravityVolumes bring a liquid to a volume with more or less water.
func gravityVolumes() []*Function {
	const source = "masses of water and extract, volume by " + tabarie
	litres := func(name, meaning string, example float64) arg[units.Volume] {
		return takes(name, units.Litre, meaning, 0.001, 1e6, example)
	}
	extractAfter := func(r resized) units.Extract { return r.liquid.RealExtract() }
	water := func(r resized) units.Mass { return r.water }
	return []*Function{
		entry("boil_down_to", "extract of a wort or syrup boiled down to a volume, and the water that goes", source,
			of4(litres("volume", "volume before, at the temperature", 28), takes("extract", units.DegreePlato, "extract before", 0, 80, 10),
				litres("wanted", "volume after, at the same temperature", 25), temperatureOf("liquid, for both volumes", 0, 100).or(20), boilDownTo),
			from(extractAfter, "extract_after", units.DegreePlato, "extract after"),
			numberFrom(func(r resized) float64 { return r.liquid.Gravity().SG() }, "gravity_after", "", "specific gravity 20/20 °C after"),
			from(water, "water", units.Kilogram, "water that goes")),
		entry("make_up_to", "water that brings a liquid up to a volume, and what it is then; volumes do not add", source,
			of5(litres("volume", "volume before, at the temperature", 24),
				takes("strength", units.PercentVolume, "ethanol of the liquid, at 20 °C", 0, 100, 9).or(0),
				takes("real_extract", units.DegreePlato, "extract in the liquid, without the ethanol", 0, 80, 0.8).or(0),
				litres("wanted", "volume after, at the same temperature", 46),
				temperatureOf("liquid, for the volumes; with ethanol up to 40 °C", 0, 100).or(20), makeUpTo),
			from(water, "water", units.Kilogram, "water to add"),
			from(func(r resized) units.Volume { return r.volume }, "water_volume", units.Litre, "the same at that temperature"),
			from(func(r resized) units.StrengthByVolume { return r.liquid.ByVolume() }, "strength_after", units.PercentVolume, "strength after, at 20 °C"),
			from(extractAfter, "extract_after", units.DegreePlato, "real extract after")),
	}
}
