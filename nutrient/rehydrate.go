package nutrient

import (
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// YeastKind is what dry yeast was bred for; it decides how warm it is woken.
type YeastKind int

// The kinds of dry yeast.
const (
	WineYeast YeastKind = iota
	AleYeast
	LagerYeast
)

// String reads "wine", "ale" or "lager".
func (k YeastKind) String() string {
	switch k {
	case AleYeast:
		return "ale"
	case LagerYeast:
		return "lager"
	}
	return "wine"
}

// Rehydration is how to wake dry yeast.
type Rehydration struct {
	Water       Figure[units.Volume]           // least and most of the range that suppliers give
	Temperature Figure[units.Temperature]      // of that water
	Hardness    Figure[units.CalciumCarbonate] // of that water
	Time        time.Duration
	Steps       []units.Temperature // of the yeast while portions of the wash cool it; the last is the wash's
	StepPause   time.Duration       // between portions
	Cautions    []string
}

// Rehydrate returns the recipe for waking so much dry yeast for a wash of a
// temperature. Water without minerals bursts the cells: use tap water or add a pinch
// of salts.
//
//   - Source: water 10 to 20 times the yeast, 35–40 °C for wine yeast, 20 min (several
//     supplier sheets, read); ale 25–29 and lager yeast 21–25 °C (Rehydration, yeast
//     supplier, read); hardness 250–500 mg/L (supplier sheet, read). Steps of at most 10
//     K, 5 min each (common practice, no source).
//   - Range: yeast above 0 to 1000 kg, wash 0 to 40 °C; beyond it the error is a
//     [*units.RangeError].
func Rehydrate(dry units.Mass, kind YeastKind, wash units.Temperature) (Rehydration, error) {
	const fn, source = "nutrient.Rehydrate", "supplier sheets"
	g, t := dry.In(units.Gram), wash.In(units.Celsius)
	if err := limit.Check(fn, "dry yeast", g, "g", 0.01, 1e6, source); err != nil {
		return Rehydration{}, err
	}
	if err := limit.Check(fn, "temperature of the wash", t, "°C", 0, 40, source); err != nil {
		return Rehydration{}, err
	}
	low, high := 35.0, 40.0
	switch kind {
	case AleYeast:
		low, high = 25, 29
	case LagerYeast:
		low, high = 21, 25
	}
	sheets := Evidence{"several supplier sheets", Read}
	ml := func(v float64) units.Volume { return units.Millilitre.Of(checked.Number(v)) }
	celsius := func(v float64) units.Temperature { return units.Celsius.Of(checked.Number(v)) }
	out := Rehydration{
		Water:       Figure[units.Volume]{ml(10 * g), ml(10 * g), ml(20 * g), sheets},
		Temperature: Figure[units.Temperature]{celsius((low + high) / 2), celsius(low), celsius(high), sheets},
		Hardness: Figure[units.CalciumCarbonate]{
			units.MilligramPerLitreCaCO3.Of(250), units.MilligramPerLitreCaCO3.Of(250), units.MilligramPerLitreCaCO3.Of(500), sheets,
		},
		Time: 20 * time.Minute, StepPause: 5 * time.Minute,
		Cautions: []string{"In water of 16 °C up to 60 % of the cells die: measure the temperature.", "Do not leave it beyond half an hour without sugar."},
	}
	const step = 10 // K
	for at := (low + high) / 2; at-step > t; {
		at -= step
		out.Steps = append(out.Steps, celsius(at))
	}
	out.Steps = append(out.Steps, wash)
	return out, nil
}
