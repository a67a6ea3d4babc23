package ferment

import (
	"strings"

	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
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
	PotassiumBicarbonate: {name: "potassium bicarbonate", mass: formula.MustMass("KHCO3"), also: "KHCO3", potassium: 1, bicarbonate: 1},
	SodiumBicarbonate:    {name: "sodium bicarbonate", mass: formula.MustMass("NaHCO3"), also: "baking soda", sodium: 1, bicarbonate: 1},
	TripotassiumCitrate:  {name: "tripotassium citrate monohydrate", mass: formula.MustMass("K3C6H5O7.H2O"), also: "potassium citrate", potassium: 3, citrate: 1},
	TrisodiumCitrate:     {name: "trisodium citrate dihydrate", mass: formula.MustMass("Na3C6H5O7.2H2O"), also: "sodium citrate", sodium: 3, citrate: 1},
}

func (b Buffer) facts() *bufferFacts {
	if b < PotassiumBicarbonate || b > TrisodiumCitrate {
		return &bufferTable[PotassiumBicarbonate]
	}
	return &bufferTable[b]
}

var buffers = choice.Of[Buffer]("buffer", bufferTable[0].name, bufferTable[1].name, bufferTable[2].name, bufferTable[3].name)

// String is the name with its crystal water.
func (b Buffer) String() string { return buffers.Text(b) }

// MarshalText is [Buffer.String]; an unknown buffer is a [*units.NameError].
func (b Buffer) MarshalText() ([]byte, error) {
	return buffers.Marshal("ferment.Buffer.MarshalText", b)
}

// UnmarshalText reads what [Buffer.MarshalText] writes; another text is a
// [*units.NameError].
func (b *Buffer) UnmarshalText(text []byte) error {
	return buffers.Unmarshal("ferment.Buffer.UnmarshalText", text, b)
}

// MolarMass returns g/mol with crystal water.
//
//   - Source: [material.MolarMass].
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
	return 0, limit.Unknown(text, "buffer", strings.Join(names, ", "))
}

// charge is the strong charge that a mole brings.
func (b Buffer) charge() float64 { return b.facts().potassium + b.facts().sodium }

// buffered is a liquid with so many mmol/L of a buffer; the bicarbonate leaves as CO2.
func (b Buffer) buffered(a acidity.Liquid, mmol float64) acidity.Liquid {
	f := b.facts()
	a.Strong += mmol * b.charge()
	a.Potassium += mmol * f.potassium
	a.Sodium += mmol * f.sodium
	a.Organic[acidity.Citric] += mmol * f.citrate
	return a
}

// BufferDose is a dose of a buffer.
type BufferDose struct {
	Buffer Buffer
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
//     read; Directive (EU) 2020/2184, which replaced it, has it too, recalled from memory; also the taste figure of the WHO, recalled from memory). Potassium 400 mg/L
//     and citric acid 300 mg/L: common practice, no source.
func TasteThresholds() (sodium, potassium, citrate evidence.Figure[units.MassConcentration]) {
	directive := evidence.Evidence{Source: "Directive 98/83/EC annex I part C (1998; in Directive (EU) 2020/2184 too, recalled from memory)", Grade: evidence.Read}
	return evidence.Figure[units.MassConcentration]{Value: amount.MgPerL(200), Low: amount.MgPerL(100), High: amount.MgPerL(200), Evidence: directive},
		evidence.Figure[units.MassConcentration]{Value: amount.MgPerL(400), Low: amount.MgPerL(300), High: amount.MgPerL(600), Evidence: evidence.Evidence{}},
		evidence.Figure[units.MassConcentration]{Value: amount.MgPerL(300), Low: amount.MgPerL(100), High: amount.MgPerL(400), Evidence: evidence.Evidence{}}
}
