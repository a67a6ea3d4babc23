package gravity

import "example.org/zymase/internal/choice"

// Sugar is a kind of extract: what is dissolved, as far as density and yeast
// distinguish it.
type Sugar int

// Kinds of extract. Malt extract, maltose and other extract that is given in °P
// counts as Sucrose, since that scale is defined by sucrose.
const (
	AsSucrose     Sugar = iota // table sugar; also any extract in °P
	AsGlucose                  // dextrose, as the anhydrous sugar
	AsFructose                 // fruit sugar; invert sugar is half of each
	AsDextrin                  // extract that the yeast leaves, with the density of sucrose
	AsGlycerol                 // a polyol; yeast makes it and leaves it
	AsOrganicAcid              // succinic and other acids of yeast or fruit; weighs and bends light as glycerol here
	kinds
)

var sugars = choice.Of[Sugar]("gravity.Sugar", "kind of extract", "sucrose", "glucose", "fructose", "dextrin", "glycerol", "organic acid")

// String returns the name: "sucrose".
func (k Sugar) String() string { return sugars.Text(k) }

// MarshalText is [Sugar.String]; an unknown kind of extract is a [*units.NameError].
func (k Sugar) MarshalText() ([]byte, error) { return sugars.Marshal(k) }

// UnmarshalText reads what [Sugar.MarshalText] writes; other text is a [*units.NameError].
func (k *Sugar) UnmarshalText(text []byte) error { return sugars.Unmarshal(text, k) }

// Fermentable reports whether the yeast can use this kind of extract.
func (k Sugar) Fermentable() bool { return k == AsSucrose || k == AsGlucose || k == AsFructose }

// A lighter is how the density of a solution differs from that of sucrose of the
// same mass fraction at 20 °C, as a polynomial, and up to which fraction the
// table goes.
type lighter struct {
	d    [5]float64 // of b, b², b³ …
	most float64    // % mass
}

// Least squares over the rows of the CRC Handbook of Chemistry and Physics, 102nd
// ed., "Concentrative properties of aqueous solutions", less ICUMSA SPS-4:
// glucose 21 rows to 60 %, worst residual 0.051 kg/m³; fructose 18 rows to 48 %,
// worst residual 0.045 kg/m³; the rows are printed to 0.1 kg/m³. Glycerol: rows of
// the same table recalled from memory (1.0097 at 5 %, 1.0215 at 10 %, 1.0459 at
// 20 %), of which a fermented wash holds below 1 %. Organic acids count as glycerol: a
// wash holds about a sixth as much, and 0.02 kg/m³ would be the difference.
var lighters = [kinds]lighter{
	AsSucrose:  {most: mostSucrose},
	AsGlucose:  {d: [5]float64{-6.367, -2.366, 59.76, -346.4, 377.1}, most: 60},
	AsFructose: {d: [5]float64{5.318, -11.104}, most: 48},
	AsDextrin:  {most: mostSucrose},
	AsGlycerol: asGlycerol, AsOrganicAcid: asGlycerol,
}

var asGlycerol = lighter{d: [5]float64{-158, -86}, most: 20}
