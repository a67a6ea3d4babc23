package label

import (
	"cmp"
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// StandardDrink is the measure in which a country counts ethanol.
type StandardDrink int

// Measures by country.
const (
	DrinkUS StandardDrink = iota // 14 g of ethanol, 0.6 US fl oz (NIAAA)
	UnitUK                       // 10 mL of ethanol, 8 g near enough
	DrinkAU                      // 10 g of ethanol: Australia and New Zealand
)

var drinks = choice.Of[StandardDrink]("label.StandardDrink", "measure of drink", "US standard drink", "UK unit", "Australian or New Zealand standard drink")

// String returns the name: "UK unit".
func (d StandardDrink) String() string { return drinks.Text(d) }

// MarshalText is [StandardDrink.String]; an unknown measure of drink is a [*units.NameError].
func (d StandardDrink) MarshalText() ([]byte, error) { return drinks.Marshal(d) }

// UnmarshalText reads what [StandardDrink.MarshalText] writes; other text is a [*units.NameError].
func (d *StandardDrink) UnmarshalText(text []byte) error { return drinks.Unmarshal(text, d) }

// Count returns how many measures a volume of a strength holds, both at
// 20 °C.
//
//   - Source: US: 14 g of ethanol (NIAAA). UK: % vol × mL / 1000. Australia and New
//     Zealand: 10 g of ethanol at 20 °C (Food Standards Code 1.1.2 and 2.7.1). Ethanol
//     weighs 789.24 kg/m³ at 20 °C (OIML R 22).
//   - Range: volume 0 to 1e12 L; otherwise the error is a [*units.RangeError]. An unknown
//     measure is a [*units.NameError].
//   - Uncertainty: that of the strength. For the label see [RoundDrinks].
func (d StandardDrink) Count(strength units.StrengthByVolume, v units.Volume) (float64, error) {
	const fn = "label.StandardDrink.Count"
	if err := cmp.Or(
		limit.Check(fn, "volume", v.In(units.Litre), "L", 0, 1e12, "a volume"),
		limit.Check(fn, "strength", strength.In(units.PercentVolume), "% vol", 0, 100, "a strength"),
		drinks.Check(fn, d),
	); err != nil {
		return 0, err
	}
	ethanol, err := gravity.EthanolDensity(units.PercentMass.Of(100), units.Celsius.Of(20))
	if err != nil { // not reached: inside the range of the formula
		return 0, err
	}
	mL := 10 * v.In(units.Litre) * strength.In(units.PercentVolume) // of ethanol
	grams := mL * ethanol.In(units.KilogramPerCubicMetre) / 1000
	switch d {
	case UnitUK:
		return mL / 10, nil
	case DrinkAU:
		return grams / 10, nil
	}
	return grams / 14, nil
}

// RoundDrinks rounds a number of measures as labels state it: one decimal below 10,
// whole numbers from there up.
//
//   - Source: practice of the Australian standard-drink card (std0910).
//   - Range: 0 to 1e12; otherwise the error is a [*units.RangeError].
func RoundDrinks(n float64) (float64, error) {
	if err := limit.Check("label.RoundDrinks", "measures", n, "", 0, 1e12, "a number of drinks"); err != nil {
		return 0, err
	}
	if tenths := math.Round(10 * n); tenths < 100 {
		return tenths / 10, nil
	}
	return math.Round(n), nil
}
