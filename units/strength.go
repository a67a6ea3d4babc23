package units

// StrengthByVolume is the volume of ethanol at 20 °C in 100 volumes of the liquid
// at 20 °C, stored in % vol (OIML R 22, definition of alcoholic strength by volume).
// Two strengths do not add; their difference is [PercentagePoints].
//
// In: PercentVolume.Of(4.2), [Unit.Try], Parse[StrengthByVolume](text). Out: q.In(PercentVolume). Methods: [Quantity].
type StrengthByVolume = Quantity[strengthByVolume, percentagePoints]

// Units of [StrengthByVolume], [StrengthByMass], [PercentagePoints], [Extract] and [Share].
const (
	// PercentVolume (% vol): the base unit.
	PercentVolume Unit[strengthByVolume, percentagePoints] = strengthByVolumeUnits

	// PercentMass (% mass): the base unit.
	PercentMass Unit[strengthByMass, percentagePoints] = strengthByMassUnits

	// PercentagePoint (percentage points): from 4.2 to 4.6 % vol it is 0.4 of them.
	PercentagePoint Unit[percentagePoints, percentagePoints] = percentagePointsUnits

	// DegreePlato (°P): the base unit, 1 % mass; 1 °Bx.
	DegreePlato Unit[extract, extract] = extractUnits

	// Percent (%): the base unit.
	Percent Unit[share, share] = shareUnits
	// Fraction: the whole is 1.
	Fraction Unit[share, share] = shareUnits + 1
	// PartPerMillion (ppm), of a gas by volume.
	PartPerMillion Unit[share, share] = shareUnits + 2
)

var theStrengthByVolume = &dimension{
	name: "strength by volume", min: 0, max: 100,
	units: strengthByVolumeUnits, table: []unit{
		{symbol: "% vol", num: 1, den: 1, names: []string{"%vol", "% vol.", "% ABV", "%ABV", "ABV", "% by volume", "vol%", "% v/v", "%v/v",
			"% alc. vol", "% alc/vol"}},
	},
	ambiguous: map[string]string{
		"%":      "say % vol or % mass",
		"% ABW":  "this is strength by mass",
		"% mass": "this is strength by mass",
		"proof":  "say % vol: proof is measured at 60 °F (15.56 °C) and differs by country",
		"°":      "say % vol",
	},
}

func (strengthByVolume) describe() *dimension { return theStrengthByVolume }

// StrengthByMass is the mass of ethanol in 100 masses of the liquid, stored in
// % mass. Two strengths do not add; their difference is [PercentagePoints].
//
// In: PercentMass.Of(4.2), [Unit.Try], Parse[StrengthByMass](text). Out: q.In(PercentMass). Methods: [Quantity].
type StrengthByMass = Quantity[strengthByMass, percentagePoints]

var theStrengthByMass = &dimension{
	name: "strength by mass", min: 0, max: 100,
	units: strengthByMassUnits, table: []unit{
		{symbol: "% mass", num: 1, den: 1, names: []string{"%mass", "% ABW", "%ABW", "ABW", "% by mass", "% by weight", "% w/w", "%w/w", "% m/m"}},
	},
	ambiguous: map[string]string{
		"%":     "say % mass or % vol",
		"% ABV": "this is strength by volume",
		"% vol": "this is strength by volume",
	},
}

func (strengthByMass) describe() *dimension { return theStrengthByMass }

// PercentagePoints is the difference of two strengths, or the uncertainty of one.
//
// In: PercentagePoint.Of(0.3), [Unit.Try], Parse[PercentagePoints](text). Out: q.In(PercentagePoint). Methods: [Quantity].
type PercentagePoints = Quantity[percentagePoints, percentagePoints]

var thePercentagePoints = &dimension{
	name: "difference of strengths", min: -most, max: most,
	units: percentagePointsUnits, table: []unit{
		{symbol: "percentage points", num: 1, den: 1, names: []string{"percentage point"}},
	},
	ambiguous: map[string]string{
		"%":      "say percentage points: 5 % of a strength is another thing",
		"% vol":  "a difference is in percentage points; 4.6 % vol is a strength",
		"% mass": "a difference is in percentage points; 3.7 % mass is a strength",
		"points": "say percentage points; points of gravity are another thing",
	},
}

func (percentagePoints) describe() *dimension { return thePercentagePoints }

// Extract is the mass of dissolved solids in 100 masses of the liquid, counted as
// sucrose of the same density: degrees Plato, degrees Brix, % mass. An apparent extract is
// that of a liquid which also holds ethanol; it may be negative.
//
// In: DegreePlato.Of(12), [Unit.Try], Parse[Extract](text). Out: q.In(DegreePlato). Methods: [Quantity].
type Extract = Quantity[extract, extract]

var theExtract = &dimension{
	name: "extract", min: -70, max: 100,
	units: extractUnits, table: []unit{
		{symbol: "°P", num: 1, den: 1, names: []string{"P", "Plato", "° Plato", "°Plato", "°Bx", "Bx", "Brix", "°Brix", "% mass", "g/100 g"}},
	},
	ambiguous: map[string]string{
		"%":   "say °P, °Bx or % mass",
		"g/L": "this is a mass in a volume; the share of mass (°P) is wanted",
		"SG":  "this is a gravity; package gravity converts it",
	},
}

func (extract) describe() *dimension { return theExtract }

// Share is a part of a whole, stored in per cent from 0 to 100: a purity, a loss, a
// fermentable part.
//
// In: Percent.Of(95), [Unit.Try], Parse[Share](text). Out: q.In(Fraction). Methods: [Quantity].
type Share = Quantity[share, share]

var theShare = &dimension{
	name: "share", min: 0, max: 100,
	units: shareUnits, table: []unit{
		{symbol: "%", num: 1, den: 1, names: []string{"percent", "per cent"}},
		{symbol: "of 1", num: 100, den: 1},
		{symbol: "ppm", unread: true, num: 1, den: 10000},
	},
	ambiguous: map[string]string{"": "say %, for example 95 %"},
}

func (share) describe() *dimension { return theShare }
