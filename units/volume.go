package units

// Volume is a volume, stored in litres.
//
// In: Litre.Of(4.2), [Unit.Try], Parse[Volume](text). Out: q.In(Litre). Methods: [Quantity].
//
// The factors are exact (US gallon 231 in³; imperial gallon 4.54609 L: NIST Handbook 44 (2024) appendix C).
// Text without "US" or "imp" is refused for gallons, quarts, pints, fluid ounces and barrels.
type Volume = Quantity[volume, volume]

// Units of [Volume] and [VolumeFlow].
const (
	// Litre (L): the base unit.
	Litre Unit[volume, volume] = volumeUnits
	// Millilitre (mL): 1/1000 L.
	Millilitre Unit[volume, volume] = volumeUnits + 1
	// Hectolitre (hL): 100 L.
	Hectolitre Unit[volume, volume] = volumeUnits + 2
	// CubicMetre (m³): 1000 L.
	CubicMetre Unit[volume, volume] = volumeUnits + 3
	// USGallon (US gal): 231 cubic inches, 3.785411784 L.
	USGallon Unit[volume, volume] = volumeUnits + 4
	// USFluidOunce (US fl oz): 1/128 US gal.
	USFluidOunce Unit[volume, volume] = volumeUnits + 7
	// USBarrel (US bbl): the US beer barrel, 31 US gal.
	USBarrel Unit[volume, volume] = volumeUnits + 8
	// ImperialGallon (imp gal): 4.54609 L.
	ImperialGallon Unit[volume, volume] = volumeUnits + 9

	// LitrePerMinute (L/min): the base unit.
	LitrePerMinute Unit[volumeFlow, volumeFlow] = volumeFlowUnits
	// LitrePerHour (L/h): 1/60 L/min.
	LitrePerHour Unit[volumeFlow, volumeFlow] = volumeFlowUnits + 1
	// CubicMetrePerHour (m³/h): 1000/60 L/min.
	CubicMetrePerHour Unit[volumeFlow, volumeFlow] = volumeFlowUnits + 3
)

var theVolume = &dimension{
	name: "volume", min: 0, max: most, compound: true,
	units: volumeUnits, table: []unit{
		{symbol: "L", num: 1, den: 1, names: []string{"l", "ℓ", "litre", "litres", "liter", "liters", "ltr"}},
		{symbol: "mL", num: 1, den: 1000, names: []string{"ml", "ML", "millilitre", "millilitres", "milliliter", "milliliters", "cc", "cm3", "cm³"}},
		{symbol: "hL", num: 100, den: 1, names: []string{"hl", "HL", "hectolitre", "hectolitres", "hectoliter", "hectoliters"}},
		{symbol: "m³", num: 1000, den: 1, names: []string{"m3", "cubic metre", "cubic metres", "cubic meter", "cubic meters"}},
		{symbol: "US gal", num: 3785411784, den: 1000000000, names: []string{"US gallon", "US gallons", "US gals", "gal US", "gal (US)", "gallons US"}},
		{symbol: "US qt", num: 946352946, den: 1000000000, names: []string{"US quart", "US quarts", "qt US"}},
		{symbol: "US pt", num: 473176473, den: 1000000000, names: []string{"US pint", "US pints", "pt US"}},
		{symbol: "US fl oz", num: 295735295625, den: 10000000000000, names: []string{"US fl. oz.", "US floz", "US fluid ounce", "US fluid ounces", "fl oz US"}},
		{symbol: "US bbl", num: 117347765304, den: 1000000000, names: []string{"US barrel", "US barrels", "US beer barrel", "bbl US"}},
		{symbol: "imp gal", num: 454609, den: 100000, names: []string{"imperial gallon", "imperial gallons", "UK gal", "UK gallon",
			"UK gallons", "imp gallon", "imp gallons", "imp. gal"}},
		{symbol: "imp qt", num: 11365225, den: 10000000, names: []string{"imperial quart", "imperial quarts", "UK qt", "UK quart"}},
		{symbol: "imp pt", num: 56826125, den: 100000000,
			names: []string{"imperial pint", "imperial pints", "UK pt", "UK pint", "UK pints", "imp pint", "imp pints"}},
		{symbol: "imp fl oz", num: 284130625, den: 10000000000, names: []string{"imperial fl oz", "imperial fluid ounce", "imperial fluid ounces", "UK fl oz"}},
	},
	ambiguous: because(
		[]string{"say US gal or imp gal: 3.785411784 L or 4.54609 L", "gal", "gals", "gallon", "gallons", "gal."},
		[]string{"say US qt or imp qt: 946.352946 mL or 1136.5225 mL", "qt", "qts", "quart", "quarts"},
		[]string{"say US pt or imp pt: 473.176473 mL or 568.26125 mL", "pt", "pts", "pint", "pints"},
		[]string{"say US fl oz or imp fl oz: 29.5735295625 mL or 28.4130625 mL", "fl oz", "fl. oz.", "floz", "fluid ounce", "fluid ounces"},
		[]string{"an ounce is a mass; say US fl oz or imp fl oz for a volume", "oz", "ounce", "ounces"},
		[]string{"say US bbl (31 US gal, 117.347765304 L); the imperial barrel is 36 imp gal", "bbl", "barrel", "barrels"},
		[]string{"say mL: cups differ by country", "cup", "cups"},
		[]string{"say mL: teaspoons differ by country", "tsp"},
		[]string{"say mL: tablespoons differ by country", "tbsp"},
	),
}

func (volume) describe() *dimension { return theVolume }

// VolumeFlow is a volume in a time, stored in litres a minute.
//
// In: LitrePerMinute.Of(4.2), [Unit.Try], Parse[VolumeFlow](text). Out: q.In(LitrePerMinute). Methods: [Quantity].
type VolumeFlow = Quantity[volumeFlow, volumeFlow]

var theVolumeFlow = &dimension{
	name: "volume flow", min: 0, max: most,
	units: volumeFlowUnits, table: []unit{
		{symbol: "L/min", num: 1, den: 1, names: []string{"l/min", "lpm", "LPM"}},
		{symbol: "L/h", num: 1, den: 60, names: []string{"l/h"}},
		{symbol: "US gal/h", num: 3785411784, den: 60000000000, names: []string{"US gph"}},
		{symbol: "m³/h", num: 1000, den: 60, names: []string{"m3/h"}},
		{symbol: "US gal/min", num: 3785411784, den: 1000000000, names: []string{"US gpm"}},
	},
	ambiguous: map[string]string{
		"gal/min": "say US gal/min or imp gal/min",
		"gpm":     "say US gal/min or imp gal/min",
	},
}

func (volumeFlow) describe() *dimension { return theVolumeFlow }
