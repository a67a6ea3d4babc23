package yeast

import (
	"cmp"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// Rehydration is how to rehydrate dry yeast.
type Rehydration struct {
	Water       evidence.Figure[units.Volume]           // least and most of the range that suppliers give
	Temperature evidence.Figure[units.Temperature]      // of that water
	Hardness    evidence.Figure[units.CalciumCarbonate] // of that water
	Time        time.Duration
	Steps       []units.Temperature // of the yeast while portions of the wash cool it; the last is the wash's
	StepPause   time.Duration       // between portions
	Cautions    caution.List
}

// Rehydrate returns how to rehydrate so much dry yeast for a wash of a
// temperature. Water without minerals bursts the cells: use tap water or add a pinch
// of salts.
//
//   - Source: water 10 to 20 times the yeast, 35–40 °C for wine yeast, 20 min (several
//     supplier sheets, read); ale 25–29 and lager yeast 21–25 °C (Rehydration, yeast
//     supplier, read); hardness 250–500 mg/L (supplier sheet, read). Steps of at most 10
//     K, 5 min each (common practice, no source).
//   - Range: yeast above 0 to 1000 kg, wash 0 to 40 °C; beyond it the error is a
//     [*units.RangeError]. An unknown kind is a [*units.NameError].
func Rehydrate(dry units.Mass, kind Kind, wash units.Temperature) (Rehydration, error) {
	const fn, source = "yeast.Rehydrate", "supplier sheets"
	g, t := dry.In(units.Gram), wash.In(units.Celsius)
	if err := cmp.Or(
		limit.Check(fn, "dry yeast", g, "g", 0.01, 1e6, source),
		limit.Check(fn, "temperature of the wash", t, "°C", 0, 40, source),
		kinds.Check(fn, kind),
	); err != nil {
		return Rehydration{}, err
	}
	warm := [...]struct{ low, high float64 }{WineYeast: {35, 40}, AleYeast: {25, 29}, LagerYeast: {21, 25}}[kind] // °C
	low, high := warm.low, warm.high
	sheets := evidence.Evidence{Source: "several supplier sheets", Grade: evidence.Read}
	ml := func(v float64) units.Volume { return units.Millilitre.Of(checked.Number(v)) }
	celsius := func(v float64) units.Temperature { return units.Celsius.Of(checked.Number(v)) }
	out := Rehydration{
		Water:       evidence.Figure[units.Volume]{Value: ml(10 * g), Low: ml(10 * g), High: ml(20 * g), Evidence: sheets},
		Temperature: evidence.Figure[units.Temperature]{Value: celsius((low + high) / 2), Low: celsius(low), High: celsius(high), Evidence: sheets},
		Hardness: evidence.Figure[units.CalciumCarbonate]{
			Value: units.MilligramPerLitreCaCO3.Of(250), Low: units.MilligramPerLitreCaCO3.Of(250), High: units.MilligramPerLitreCaCO3.Of(500), Evidence: sheets,
		},
		Time: 20 * time.Minute, StepPause: 5 * time.Minute,
		Cautions: caution.List{coldWater, noSugar},
	}
	const step = 10 // K
	for at := (low + high) / 2; at-step > t; {
		at -= step
		out.Steps = append(out.Steps, celsius(at))
	}
	out.Steps = append(out.Steps, wash)
	return out, nil
}

const (
	coldWater caution.Caution = "cold_water: In water of 16 °C up to 60 % of the cells die: measure the temperature."
	noSugar   caution.Caution = "no_sugar: Do not leave it beyond half an hour without sugar."
)
