package units

// Volume is a volume, stored in litres.
//
// In: Litre.Of(4.2), [Unit.Try], Parse[Volume](text). Out: q.In(Litre). Methods: [Quantity].
//
// The factors are exact (US gallon 231 in³; imperial gallon 4.54609 L: NIST Handbook 44 (2024) appendix C).
// Text without "US" or "imp" is refused for gallons, quarts, pints, fluid ounces and barrels.
type Volume = Quantity[volume, volume]

// Units of [Volume].
var (
	// Litre (L): the base unit.
	Litre = define[volume, volume]("L", 1, 1, "l", "ℓ", "litre", "litres", "liter", "liters", "ltr")
	// Millilitre (mL): 1/1000 L.
	Millilitre = define[volume, volume]("mL", 1, 1000, "ml", "ML", "millilitre", "millilitres", "milliliter", "milliliters", "cc", "cm3", "cm³")
	// Hectolitre (hL): 100 L.
	Hectolitre = define[volume, volume]("hL", 100, 1, "hl", "HL", "hectolitre", "hectolitres", "hectoliter", "hectoliters")
	// CubicMetre (m³): 1000 L.
	CubicMetre = define[volume, volume]("m³", 1000, 1, "m3", "cubic metre", "cubic metres", "cubic meter", "cubic meters")
	// USGallon (US gal): 231 cubic inches, 3.785411784 L.
	USGallon = define[volume, volume]("US gal", 3785411784, 1000000000, "US gallon", "US gallons", "US gals", "gal US", "gal (US)", "gallons US")
	// usQuart (US qt): 1/4 US gal.
	usQuart = other("US qt", 946352946, 1000000000, "US quart", "US quarts", "qt US")
	// usPint (US pt): 1/8 US gal.
	usPint = other("US pt", 473176473, 1000000000, "US pint", "US pints", "pt US")
	// USFluidOunce (US fl oz): 1/128 US gal.
	USFluidOunce = define[volume, volume]("US fl oz", 295735295625, 10000000000000, "US fl. oz.", "US floz", "US fluid ounce", "US fluid ounces", "fl oz US")
	// USBarrel (US bbl): the US beer barrel, 31 US gal.
	USBarrel = define[volume, volume]("US bbl", 117347765304, 1000000000, "US barrel", "US barrels", "US beer barrel", "bbl US")
	// ImperialGallon (imp gal): 4.54609 L.
	ImperialGallon = define[volume, volume]("imp gal", 454609, 100000,
		"imperial gallon", "imperial gallons", "UK gal", "UK gallon", "UK gallons", "imp gallon", "imp gallons", "imp. gal")
	// imperialQuart (imp qt): 1/4 imp gal.
	imperialQuart = other("imp qt", 11365225, 10000000, "imperial quart", "imperial quarts", "UK qt", "UK quart")
	// imperialPint (imp pt): 1/8 imp gal.
	imperialPint = other("imp pt", 56826125, 100000000,
		"imperial pint", "imperial pints", "UK pt", "UK pint", "UK pints", "imp pint", "imp pints")
	// imperialFluidOunce (imp fl oz): 1/160 imp gal.
	imperialFluidOunce = other("imp fl oz", 284130625, 10000000000, "imperial fl oz", "imperial fluid ounce", "imperial fluid ounces", "UK fl oz")
)

var theVolume = &dimension{
	name: "volume", min: 0, max: most, compound: true,
	ambiguous: map[string]string{
		"gal":          "say US gal or imp gal: 3.785411784 L or 4.54609 L",
		"gals":         "say US gal or imp gal: 3.785411784 L or 4.54609 L",
		"gallon":       "say US gal or imp gal: 3.785411784 L or 4.54609 L",
		"gallons":      "say US gal or imp gal: 3.785411784 L or 4.54609 L",
		"gal.":         "say US gal or imp gal: 3.785411784 L or 4.54609 L",
		"qt":           "say US qt or imp qt: 946.352946 mL or 1136.5225 mL",
		"qts":          "say US qt or imp qt: 946.352946 mL or 1136.5225 mL",
		"quart":        "say US qt or imp qt: 946.352946 mL or 1136.5225 mL",
		"quarts":       "say US qt or imp qt: 946.352946 mL or 1136.5225 mL",
		"pt":           "say US pt or imp pt: 473.176473 mL or 568.26125 mL",
		"pts":          "say US pt or imp pt: 473.176473 mL or 568.26125 mL",
		"pint":         "say US pt or imp pt: 473.176473 mL or 568.26125 mL",
		"pints":        "say US pt or imp pt: 473.176473 mL or 568.26125 mL",
		"fl oz":        "say US fl oz or imp fl oz: 29.5735295625 mL or 28.4130625 mL",
		"fl. oz.":      "say US fl oz or imp fl oz: 29.5735295625 mL or 28.4130625 mL",
		"floz":         "say US fl oz or imp fl oz: 29.5735295625 mL or 28.4130625 mL",
		"fluid ounce":  "say US fl oz or imp fl oz: 29.5735295625 mL or 28.4130625 mL",
		"fluid ounces": "say US fl oz or imp fl oz: 29.5735295625 mL or 28.4130625 mL",
		"oz":           "an ounce is a mass; say US fl oz or imp fl oz for a volume",
		"ounce":        "an ounce is a mass; say US fl oz or imp fl oz for a volume",
		"ounces":       "an ounce is a mass; say US fl oz or imp fl oz for a volume",
		"bbl":          "say US bbl (31 US gal, 117.347765304 L); the imperial barrel is 36 imp gal",
		"barrel":       "say US bbl (31 US gal, 117.347765304 L); the imperial barrel is 36 imp gal",
		"barrels":      "say US bbl (31 US gal, 117.347765304 L); the imperial barrel is 36 imp gal",
		"cup":          "say mL: cups differ by country",
		"cups":         "say mL: cups differ by country",
		"tsp":          "say mL: teaspoons differ by country",
		"tbsp":         "say mL: tablespoons differ by country",
	},
}

func (volume) describe() *dimension { return theVolume }
func (volume) table() []*unit {
	return []*unit{
		Litre.u, Millilitre.u, Hectolitre.u, CubicMetre.u, USGallon.u, usQuart,
		usPint, USFluidOunce.u, USBarrel.u, ImperialGallon.u, imperialQuart, imperialPint, imperialFluidOunce,
	}
}

// VolumeFlow is a volume in a time, stored in litres a minute.
//
// In: LitrePerMinute.Of(4.2), [Unit.Try], Parse[VolumeFlow](text). Out: q.In(LitrePerMinute). Methods: [Quantity].
type VolumeFlow = Quantity[volumeFlow, volumeFlow]

// Units of [VolumeFlow].
var (
	// LitrePerMinute (L/min): the base unit.
	LitrePerMinute = define[volumeFlow, volumeFlow]("L/min", 1, 1, "l/min", "lpm", "LPM")
	// LitrePerHour (L/h): 1/60 L/min.
	LitrePerHour = define[volumeFlow, volumeFlow]("L/h", 1, 60, "l/h")
	// usGallonPerHour (US gal/h): 3.785411784 L/h.
	usGallonPerHour = other("US gal/h", 3785411784, 60000000000, "US gph")
	// CubicMetrePerHour (m³/h): 1000/60 L/min.
	CubicMetrePerHour = define[volumeFlow, volumeFlow]("m³/h", 1000, 60, "m3/h")
	// usGallonPerMinute (US gal/min): 3785411784/1000000000 L/min.
	usGallonPerMinute = other("US gal/min", 3785411784, 1000000000, "US gpm")
)

var theVolumeFlow = &dimension{
	name: "volume flow", min: 0, max: most,
	ambiguous: map[string]string{
		"gal/min": "say US gal/min or imp gal/min",
		"gpm":     "say US gal/min or imp gal/min",
	},
}

func (volumeFlow) describe() *dimension { return theVolumeFlow }
func (volumeFlow) table() []*unit {
	return []*unit{LitrePerMinute.u, LitrePerHour.u, usGallonPerHour, CubicMetrePerHour.u, usGallonPerMinute}
}
