package catalogue

import (
	"fmt"
	"time"

	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
)

var heatRates = ferment.HeatRates()

// billion is a number of cells.
func billion(name, meaning string) Output { return pure(name, "", meaning+", in billions") }

// nutrientYeast are yeast to pitch, and the ferment as a process.
func nutrientYeast() []Function {
	var heats []string
	for _, h := range heatRates {
		heats = append(heats, fmt.Sprintf("%s, %.4g kJ/kg", h.Name(), h.KilojoulesPerKilogram()))
	}
	heat := func() Input { return choice("rate", "which published value", heats...).or(0) }
	return []Function{
		{
			Name:    "liquid_yeast_packs",
			heavy:   true,
			Meaning: "packs of liquid yeast for so many live cells, by its age",
			Source:  "common practice, no source: 0.7 % of the live cells lost each day",
			Inputs: []Input{
				number("cells", "billion", "live cells wanted", 0, 1e9, 240),
				number("cells_per_pack", "billion", "live cells in a pack when it was packed", 1, 1e5, 100).or(100),
				span("age", "d", "since it was packed", 0, 3650, 30).or(0),
			},
			Outputs: []Output{pure("packs", "", "packs to use")},
			call: func(in, out []float64) error {
				per, err := yeast.Billion(in[1])
				if err != nil {
					return err
				}
				pack, err := yeast.LiquidPack(per)
				if err != nil {
					return err
				}
				c, err := yeast.Billion(in[0])
				if err != nil {
					return err
				}
				p, err := pack.Need(c, time.Duration(in[2]*24*float64(time.Hour)))
				out[0] = p.Packs
				return err
			},
		},
		{
			Name:    "yeast_starter",
			heavy:   true,
			Meaning: "extract and volume of a starter that takes live cells to a number",
			Source:  "Balling, Die Gährungschemie; cell mass 40 to 60 pg (recalled from memory)",
			Inputs: []Input{
				number("have", "billion", "live cells to start with", 0, 1e6, 80),
				number("wanted", "billion", "live cells wanted", 0, 1e6, 200),
				in("extract", units.DegreePlato, "of the starter", 2, 20, 10).or(10),
			},
			Outputs: []Output{
				out("extract_mass", units.Gram, "extract to dissolve"),
				out("volume", units.Litre, "of the starter"),
			},
			call: func(in, out []float64) error {
				have, err := yeast.Billion(in[0])
				if err != nil {
					return err
				}
				wanted, err := yeast.Billion(in[1])
				if err != nil {
					return err
				}
				s, err := yeast.StarterFor(have, wanted, as(units.DegreePlato, in[2]))
				out[0], out[1] = s.Extract.In(units.Gram), s.Volume.In(units.Litre)
				return err
			},
		},
		{
			Name:    "rehydration_water",
			heavy:   true,
			Meaning: "water that wakes dry yeast, and how warm it is",
			Source:  "several supplier sheets",
			Inputs: []Input{
				in("dry_yeast", units.Gram, "dry yeast", 0.01, 1e6, 40),
				choice("kind", "what the yeast was bred for", "wine", "ale", "lager"),
			},
			Outputs: []Output{
				out("least", units.Millilitre, "least water"),
				out("most", units.Millilitre, "most water"),
				out("coldest", units.Celsius, "coldest water"),
				out("warmest", units.Celsius, "warmest water"),
			},
			call: func(in, out []float64) error {
				r, err := yeast.Rehydrate(as(units.Gram, in[0]), yeast.Kind(in[1]), units.Celsius.Of(20))
				out[0], out[1] = r.Water.Low.In(units.Millilitre), r.Water.High.In(units.Millilitre)
				out[2], out[3] = r.Temperature.Low.In(units.Celsius), r.Temperature.High.In(units.Celsius)
				return err
			},
		},
		{
			Name:    "ferment_heat",
			Meaning: "heat of fermenting extract, and how far it would warm the liquid",
			Source:  "values in use, one chosen: usual 586.6 kJ/kg",
			Inputs: []Input{
				in("extract_mass", units.Kilogram, "extract that ferments", 0, 1e9, 4.4),
				heat(),
				in("volume", units.Litre, "of the liquid", 0.001, 1e9, 60).or(60),
			},
			Outputs: []Output{
				out("heat", units.Kilojoule, "heat given off"),
				out("rise", units.KelvinDifference, "if nothing cools it"),
			},
			call: func(in, out []float64) error {
				h := heatRates[int(in[1])]
				q, err := h.Of(as(units.Kilogram, in[0]))
				if err != nil {
					return err
				}
				rise, err := h.Rise(as(units.Kilogram, in[0]), as(units.Litre, in[2]))
				out[0], out[1] = q.In(units.Kilojoule), rise.In(units.KelvinDifference)
				return err
			},
		},
		{
			Name:    "ferment_cooling",
			Meaning: "power that holds the temperature while extract ferments",
			Source:  "values in use of the heat, one chosen: usual 586.6 kJ/kg",
			Inputs: []Input{
				in("extract_mass", units.Kilogram, "extract that ferments in the time", 0, 1e9, 1.5),
				span("time", "h", "in which it ferments", 0.02, 8766, 24).or(24),
				heat(),
			},
			Outputs: []Output{out("power", units.Watt, "cooling, without what the room gives or takes")},
			call: func(in, out []float64) error {
				p, err := heatRates[int(in[2])].CoolingPower(as(units.Kilogram, in[0]), time.Duration(in[1]*float64(time.Hour)))
				out[0] = p.In(units.Watt)
				return err
			},
		},
	}
}
