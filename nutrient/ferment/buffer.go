package ferment

import (
	"slices"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Buffers returns the salts that hold the pH of a ferment up: potassium and sodium
// bicarbonate, and their citrates.
func Buffers() []material.Material {
	out := make([]material.Material, len(bufferTable))
	for i := range bufferTable {
		out[i] = bufferTable[i].Material
	}
	return out
}

// buffer is a salt with what a mole of it brings. The zero buffer is none.
type buffer struct {
	material.Material
	potassium, sodium    float64
	citrate, bicarbonate float64
}

var bufferTable = [...]buffer{
	{Material: material.PotassiumBicarbonate(), potassium: 1, bicarbonate: 1},
	{Material: material.BakingSoda(), sodium: 1, bicarbonate: 1},
	{Material: shelf.Material("tripotassium citrate monohydrate"), potassium: 3, citrate: 1},
	{Material: shelf.Material("trisodium citrate dihydrate"), sodium: 3, citrate: 1},
}

// bufferOf finds what a material brings; one that is none of [Buffers] is refused.
func bufferOf(fn string, m material.Material) (*buffer, error) {
	i := slices.IndexFunc(bufferTable[:], func(b buffer) bool { return b.Material == m })
	if i < 0 {
		e := &units.NameError{Func: fn, What: "buffer", Name: m.Name()}
		for _, b := range bufferTable {
			e.Choices = append(e.Choices, b.Name())
		}
		return nil, e
	}
	return &bufferTable[i], nil
}

// charge is the strong charge that a mole brings.
func (b *buffer) charge() float64 { return b.potassium + b.sodium }

// in is a liquid with so many mmol/L of the buffer; the bicarbonate leaves as CO2.
func (b *buffer) in(a acidity.Liquid, mmol float64) acidity.Liquid {
	a.Strong += mmol * b.charge()
	a.Potassium += mmol * b.potassium
	a.Sodium += mmol * b.sodium
	a.Organic[acidity.Citric] += mmol * b.citrate
	return a
}

// BufferDose is a dose of a buffer.
type BufferDose struct {
	Buffer material.Material
	// Mass for the volume: Value for the usual acids, Low and High for the least and most
	// acids that yeast makes.
	Mass          evidence.Figure[units.Mass]
	Concentration units.MassConcentration // of the salt, at the value
	Water         water.Profile           // the wash's water, with the ions of the dose at the value; as it is where none is added
	Cautions      caution.List
}

// TasteThresholds returns the content of sodium, potassium and citrate from which a delicate drink
// tastes of it.
//
//   - Source: sodium 200 mg/L (indicator parameter of Directive 98/83/EC annex I part C,
//     read; Directive (EU) 2020/2184, which replaced it, has it too, recalled from memory; also the taste
//     figure of the WHO, recalled from memory). Potassium 400 mg/L and citric acid 300 mg/L: common practice, no source.
func TasteThresholds() (sodium, potassium, citrate evidence.Figure[units.MassConcentration]) {
	directive := evidence.Evidence{Source: "Directive 98/83/EC annex I part C (1998; in Directive (EU) 2020/2184 too, recalled from memory)", Grade: evidence.Read}
	return evidence.Figure[units.MassConcentration]{Value: amount.MgPerL(200), Low: amount.MgPerL(100), High: amount.MgPerL(200), Evidence: directive},
		evidence.Figure[units.MassConcentration]{Value: amount.MgPerL(400), Low: amount.MgPerL(300), High: amount.MgPerL(600), Evidence: evidence.Evidence{}},
		evidence.Figure[units.MassConcentration]{Value: amount.MgPerL(300), Low: amount.MgPerL(100), High: amount.MgPerL(400), Evidence: evidence.Evidence{}}
}
