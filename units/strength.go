package units

// StrengthByVolume is the volume of ethanol at 20 °C in 100 volumes of the liquid
// at 20 °C, stored in % vol (OIML R 22, definition of alcoholic strength by volume).
// Two strengths do not add; their difference is [PercentagePoints].
//
// In: PercentVolume.Of(4.2), [Unit.Try], Parse[StrengthByVolume](text). Out: q.In(PercentVolume). Methods: [Quantity].
type StrengthByVolume = Quantity[strengthByVolume, percentagePoints]

// Units of [StrengthByVolume].
var (
	// PercentVolume (% vol): the base unit.
	PercentVolume = define[strengthByVolume, percentagePoints]("% vol", 1, 1,
		"%vol", "% vol.", "% ABV", "%ABV", "ABV", "% by volume", "vol%", "% v/v", "%v/v", "% alc. vol", "% alc/vol")
)

var theStrengthByVolume = &dimension{
	name: "strength by volume", min: 0, max: 100,
	ambiguous: map[string]string{
		"%":      "say % vol or % mass",
		"% ABW":  "this is strength by mass",
		"% mass": "this is strength by mass",
		"proof":  "say % vol: proof is measured at 60 °F (15.56 °C) and differs by country",
		"°":      "say % vol",
	},
}

func (strengthByVolume) describe() *dimension { return theStrengthByVolume }
func (strengthByVolume) table() []*unit {
	return []*unit{PercentVolume.u}
}

// StrengthByMass is the mass of ethanol in 100 masses of the liquid, stored in
// % mass. Two strengths do not add; their difference is [PercentagePoints].
//
// In: PercentMass.Of(4.2), [Unit.Try], Parse[StrengthByMass](text). Out: q.In(PercentMass). Methods: [Quantity].
type StrengthByMass = Quantity[strengthByMass, percentagePoints]

// Units of [StrengthByMass].
var (
	// PercentMass (% mass): the base unit.
	PercentMass = define[strengthByMass, percentagePoints]("% mass", 1, 1, "%mass", "% ABW", "%ABW", "ABW", "% by mass", "% by weight", "% w/w", "%w/w", "% m/m")
)

var theStrengthByMass = &dimension{
	name: "strength by mass", min: 0, max: 100,
	ambiguous: map[string]string{
		"%":     "say % mass or % vol",
		"% ABV": "this is strength by volume",
		"% vol": "this is strength by volume",
	},
}

func (strengthByMass) describe() *dimension { return theStrengthByMass }
func (strengthByMass) table() []*unit {
	return []*unit{PercentMass.u}
}

// PercentagePoints is the difference of two strengths, or the uncertainty of one.
//
// In: PercentagePoint.Of(0.3), [Unit.Try], Parse[PercentagePoints](text). Out: q.In(PercentagePoint). Methods: [Quantity].
type PercentagePoints = Quantity[percentagePoints, percentagePoints]

// Units of [PercentagePoints].
var (
	// PercentagePoint (percentage points): from 4.2 to 4.6 % vol it is 0.4 of them.
	PercentagePoint = define[percentagePoints, percentagePoints]("percentage points", 1, 1, "percentage point")
)

var thePercentagePoints = &dimension{
	name: "difference of strengths", min: -most, max: most,
	ambiguous: map[string]string{
		"%":      "say percentage points: 5 % of a strength is another thing",
		"% vol":  "a difference is in percentage points; 4.6 % vol is a strength",
		"% mass": "a difference is in percentage points; 3.7 % mass is a strength",
		"points": "say percentage points; points of gravity are another thing",
	},
}

func (percentagePoints) describe() *dimension { return thePercentagePoints }
func (percentagePoints) table() []*unit {
	return []*unit{PercentagePoint.u}
}

// Extract is the mass of dissolved solids in 100 masses of the liquid, counted as
// sucrose of the same density: degrees Plato, degrees Brix, % mass. An apparent extract is
// that of a liquid which also holds ethanol; it may be negative.
//
// In: DegreePlato.Of(12), [Unit.Try], Parse[Extract](text). Out: q.In(DegreePlato). Methods: [Quantity].
type Extract = Quantity[extract, extract]

// Units of [Extract].
var (
	// DegreePlato (°P): the base unit, 1 % mass; 1 °Bx.
	DegreePlato = define[extract, extract]("°P", 1, 1, "P", "Plato", "° Plato", "°Plato", "°Bx", "Bx", "Brix", "°Brix", "% mass", "g/100 g")
)

var theExtract = &dimension{
	name: "extract", min: -70, max: 100,
	ambiguous: map[string]string{
		"%":   "say °P, °Bx or % mass",
		"g/L": "this is a mass in a volume; the share of mass (°P) is wanted",
		"SG":  "this is a gravity; package gravity converts it",
	},
}

func (extract) describe() *dimension { return theExtract }
func (extract) table() []*unit {
	return []*unit{DegreePlato.u}
}

// Share is a part of a whole, stored in per cent from 0 to 100: a purity, a loss, a
// fermentable part.
//
// In: Percent.Of(95), [Unit.Try], Parse[Share](text). Out: q.In(Fraction). Methods: [Quantity].
type Share = Quantity[share, share]

// Units of [Share].
var (
	// Percent (%): the base unit.
	Percent = define[share, share]("%", 1, 1, "percent", "per cent")
	// Fraction: the whole is 1.
	Fraction = define[share, share]("of 1", 100, 1)
	// PartPerMillion (ppm), of a gas by volume.
	PartPerMillion = define[share, share]("ppm", 1, 10000)
)

var theShare = &dimension{
	name: "share", min: 0, max: 100,
	ambiguous: map[string]string{"": "say %, for example 95 %"},
}

func (share) describe() *dimension { return theShare }
func (share) table() []*unit {
	return []*unit{Percent.u, Fraction.u}
}
