package catalogue

import (
	"fmt"
	"time"

	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
)

// takesCells is a number of cells in billions.
func takesCells(name, meaning string, min, max, example float64) arg[units.Cells] {
	return reads(number(name, "billion", meaning, min, max, example), units.BillionCells.Try)
}

// takesHeat is a published heat of the ferment.
func takesHeat() arg[ferment.HeatRate] {
	rates := ferment.HeatRates()
	var names []string
	for _, h := range rates {
		heat, _ := h.Of(units.Kilogram.Of(1))
		names = append(names, fmt.Sprintf("%s, %.4g kJ/kg", h.Name(), heat.In(units.Kilojoule)))
	}
	return picksBy("rate", "which published value", rates, names...).or(0)
}

// nutrientYeast are yeast to pitch, and the ferment as a process.
func nutrientYeast() []*Function {
	type (
		heat    = pair[units.Energy, units.TemperatureDifference]
		starter = yeast.Starter
		woken   = yeast.Rehydration
	)
	return []*Function{
		heavy(entry("liquid_yeast_packs", "packs of liquid yeast for so many live cells, by its age",
			"common practice, no source: 0.7 % of the live cells lost each day",
			of3(takesCells("cells", "live cells wanted", 0, 1e9, 240),
				of1(takesCells("cells_per_pack", "live cells in a pack when it was packed", 1, 1e5, 100).or(100), yeast.LiquidPack),
				takesTime("age", "d", "since it was packed", 0, 3650, 30).or(0),
				func(c units.Cells, pack yeast.Pack, age time.Duration) (yeast.Pitch, error) { return pack.Need(c, age) }),
			numberFrom(func(p yeast.Pitch) float64 { return p.Packs.Value }, "packs", "", "packs to use"))),
		heavy(entry("yeast_starter", "extract and volume of a starter that takes live cells to a number",
			"Balling, Die Gährungschemie; cell mass 40 to 60 pg (recalled from memory)",
			of3(takesCells("have", "live cells to start with", 0, 1e6, 80), takesCells("wanted", "live cells wanted", 0, 1e6, 200),
				takes("extract", units.DegreePlato, "of the starter", 2, 20, 10).or(10), yeast.StarterFor),
			from(func(s starter) units.Mass { return s.Extract }, "extract_mass", units.Gram, "extract to dissolve"),
			from(func(s starter) units.Volume { return s.Volume }, "volume", units.Litre, "of the starter"))),
		heavy(entry("rehydration_water", "water that wakes dry yeast, and how warm it is", "several supplier sheets",
			of2(takes("dry_yeast", units.Gram, "dry yeast", 0.01, 1e6, 40), picksBy("kind", "what the yeast was bred for", upTo(yeast.Kind(2)), "wine", "ale", "lager"),
				func(m units.Mass, k yeast.Kind) (woken, error) { return yeast.Rehydrate(m, k, units.Celsius.Of(20)) }),
			from(func(w woken) units.Volume { return w.Water.Low }, "least", units.Millilitre, "least water"),
			from(func(w woken) units.Volume { return w.Water.High }, "most", units.Millilitre, "most water"),
			from(func(w woken) units.Temperature { return w.Temperature.Low }, "coldest", units.Celsius, "coldest water"),
			from(func(w woken) units.Temperature { return w.Temperature.High }, "warmest", units.Celsius, "warmest water"))),
		entry("ferment_heat", "heat of fermenting extract, and how far it would warm the liquid", "values in use, one chosen: usual 586.6 kJ/kg",
			of3(takes("extract_mass", units.Kilogram, "extract that ferments", 0, 1e9, 4.4), takesHeat(),
				takes("volume", units.Litre, "of the liquid", 0.001, 1e9, 60).or(60),
				func(m units.Mass, h ferment.HeatRate, v units.Volume) (heat, error) {
					q, err := h.Of(m)
					if err != nil {
						return heat{}, err
					}
					rise, err := h.Rise(m, v)
					return heat{q, rise}, err
				}),
			from(func(h heat) units.Energy { return h.a }, "heat", units.Kilojoule, "heat given off"),
			from(func(h heat) units.TemperatureDifference { return h.b }, "rise", units.KelvinDifference, "if nothing cools it")),
		entry("ferment_cooling", "power that holds the temperature while extract ferments", "values in use of the heat, one chosen: usual 586.6 kJ/kg",
			of3(takes("extract_mass", units.Kilogram, "extract that ferments in the time", 0, 1e9, 1.5),
				takesTime("time", "h", "in which it ferments", 0.02, 8766, 24).or(24),
				takesHeat(), func(m units.Mass, t time.Duration, h ferment.HeatRate) (units.Power, error) {
					return h.CoolingPower(m, t)
				}),
			gives("power", units.Watt, "cooling, without what the room gives or takes")),
	}
}
