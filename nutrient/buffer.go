package nutrient

import (
	"strings"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Buffer is a salt that holds the pH of a ferment up.
type Buffer int

// The buffers of the trade.
const (
	PotassiumBicarbonate Buffer = iota // KHCO3
	SodiumBicarbonate                  // NaHCO3
	TripotassiumCitrate                // K3C6H5O7·H2O
	TrisodiumCitrate                   // Na3C6H5O7·2H2O
)

// bufferFacts is what a mole brings.
type bufferFacts struct {
	name, also           string
	mass                 float64 // g
	potassium, sodium    float64
	citrate, bicarbonate float64
}

var bufferTable = [...]bufferFacts{
	PotassiumBicarbonate: {name: "potassium bicarbonate", mass: mustMass("KHCO3"), also: "KHCO3", potassium: 1, bicarbonate: 1},
	SodiumBicarbonate:    {name: "sodium bicarbonate", mass: mustMass("NaHCO3"), also: "baking soda", sodium: 1, bicarbonate: 1},
	TripotassiumCitrate:  {name: "tripotassium citrate monohydrate", mass: mustMass("K3C6H5O7.H2O"), also: "potassium citrate", potassium: 3, citrate: 1},
	TrisodiumCitrate:     {name: "trisodium citrate dihydrate", mass: mustMass("Na3C6H5O7.2H2O"), also: "sodium citrate", sodium: 3, citrate: 1},
}

func (b Buffer) facts() *bufferFacts {
	if b < PotassiumBicarbonate || b > TrisodiumCitrate {
		return &bufferTable[PotassiumBicarbonate]
	}
	return &bufferTable[b]
}

// String returns the name with its crystal water.
func (b Buffer) String() string { return b.facts().name }

// MolarMass returns g/mol with crystal water.
//
//   - Source: [water.MolarMass].
func (b Buffer) MolarMass() float64 { return b.facts().mass }

// ParseBuffer returns the buffer of that name; "KHCO3", "baking soda", "potassium
// citrate" and "sodium citrate" are taken too. The error is a [*units.ParseError].
func ParseBuffer(text string) (Buffer, error) {
	name := strings.TrimSpace(text)
	var names []string
	for i, f := range bufferTable {
		if strings.EqualFold(name, f.name) || strings.EqualFold(name, f.also) {
			return Buffer(i), nil
		}
		names = append(names, f.name)
	}
	return 0, unknown(text, "buffer", strings.Join(names, ", "))
}

// charge is the strong charge that a mole brings.
func (b Buffer) charge() float64 { return b.facts().potassium + b.facts().sodium }

// buffered is a liquid with so many mmol/L of a buffer; the bicarbonate leaves as CO2.
func (b Buffer) buffered(a acidity, mmol float64) acidity {
	f := b.facts()
	a.strong += mmol * b.charge()
	a.potassium += mmol * f.potassium
	a.sodium += mmol * f.sodium
	a.organic[citric] += mmol * f.citrate
	return a
}

// BufferDose is a dose of a buffer.
type BufferDose struct {
	Buffer Buffer
	// Mass for the volume: Value for the usual acids, Low and High for the least and most
	// acids that yeast makes.
	Mass          Figure[units.Mass]
	Concentration units.MassConcentration // of the salt, at the value
	Water         water.Profile           // the wash's water, with the ions of the dose at the value; as it is where none is added
	Cautions      []string
}

// Taste returns the content of sodium, potassium and citrate from which a delicate drink
// tastes of it.
//
//   - Source: sodium 200 mg/L (indicator parameter of Directive 98/83/EC annex I part C,
//     read; Directive (EU) 2020/2184, which replaced it, has it too, recalled from memory; also the taste figure of the WHO, recalled from memory). Potassium 400 mg/L
//     and citric acid 300 mg/L: common practice, no source.
func Taste() (sodium, potassium, citrate Figure[units.MassConcentration]) {
	directive := Evidence{"Directive 98/83/EC annex I part C (1998; in Directive (EU) 2020/2184 too, recalled from memory)", Read}
	return Figure[units.MassConcentration]{mgPerL(200), mgPerL(100), mgPerL(200), directive},
		Figure[units.MassConcentration]{mgPerL(400), mgPerL(300), mgPerL(600), Evidence{}},
		Figure[units.MassConcentration]{mgPerL(300), mgPerL(100), mgPerL(400), Evidence{}}
}
