package units

// MassConcentration is the mass of a named substance (an ion, a sugar, an acid) in a
// volume of liquid, stored in mg/L.
//
// In: MilligramPerLitre.Of(4.2), [Unit.Try], Parse[MassConcentration](text). Out: q.In(MilligramPerLitre). Methods: [Quantity].
//
// The factors of the pound and ounce in a US gallon are exact (NIST Handbook 44 (2024) appendix C).
type MassConcentration = Quantity[massConcentration, massConcentration]

// Units of [MassConcentration].
var (
	// MilligramPerLitre (mg/L): the base unit; "ppm" is read as mg/L, as water reports mean it.
	MilligramPerLitre = define[massConcentration, massConcentration]("mg/L", 1, 1, "mg/l", "ppm", "g/m3", "g/m³", "mg/dm3", "mg/dm³")
	// GramPerLitre (g/L): 1000 mg/L.
	GramPerLitre = define[massConcentration, massConcentration]("g/L", 1000, 1, "g/l", "kg/m3", "kg/m³", "g/dm3", "g/dm³")
	// GramPerHectolitre (g/hL): 10 mg/L.
	GramPerHectolitre = define[massConcentration, massConcentration]("g/hL", 10, 1, "g/hl")
	// microgramPerLitre (µg/L): 1/1000 mg/L.
	microgramPerLitre = other("µg/L", 1, 1000, "μg/L", "ug/L", "µg/l", "ppb")
	// ouncePerUSGallon (oz/US gal): 28349523125000/3785411784 mg/L.
	ouncePerUSGallon = other("oz/US gal", 28349523125000, 3785411784, "oz/gal US")
	// PoundPerThousandUSGallons (lb/1000 US gal): 453592370000/3785411784 mg/L, the unit of the US wine regulations.
	PoundPerThousandUSGallons = define[massConcentration, massConcentration]("lb/1000 US gal", 453592370000, 3785411784, "lb/1000 gal US")
)

var theMassConcentration = &dimension{
	name: "mass concentration", min: 0, max: most,
	ambiguous: map[string]string{
		"mg/L as CaCO3": "this is a mass as CaCO3; the mass of the ion itself is wanted",
		"ppm as CaCO3":  "this is a mass as CaCO3; the mass of the ion itself is wanted",
		"mEq/L":         "this is an equivalent concentration; mg/L of the ion is wanted",
		"oz/gal":        "say oz/US gal",
		"lb/gal":        "say lb/US gal",
		"gpg":           "say mg/L; grains a gallon are a hardness as CaCO3",
	},
}

func (massConcentration) describe() *dimension { return theMassConcentration }
func (massConcentration) table() []*unit {
	return []*unit{MilligramPerLitre.u, GramPerLitre.u, GramPerHectolitre.u, microgramPerLitre, ouncePerUSGallon, PoundPerThousandUSGallons.u}
}

// EquivalentConcentration is charge or alkalinity in a volume of liquid, stored in
// mEq/L. It may be negative (an acidity).
//
// In: MilliequivalentPerLitre.Of(4.2), [Unit.Try], Parse[EquivalentConcentration](text). Out: q.In(MilliequivalentPerLitre). Methods: [Quantity].
type EquivalentConcentration = Quantity[equivalentConcentration, equivalentConcentration]

// Units of [EquivalentConcentration].
var (
	// MilliequivalentPerLitre (mEq/L): the base unit.
	MilliequivalentPerLitre = define[equivalentConcentration, equivalentConcentration]("mEq/L", 1, 1, "meq/L", "meq/l", "mval/L", "mmol(c)/L")
)

var theEquivalentConcentration = &dimension{
	name: "equivalent concentration", min: -most, max: most,
	ambiguous: map[string]string{
		"mg/L": "this is a mass concentration; mEq/L is wanted",
	},
}

func (equivalentConcentration) describe() *dimension { return theEquivalentConcentration }
func (equivalentConcentration) table() []*unit {
	return []*unit{MilliequivalentPerLitre.u}
}

// CalciumCarbonate is hardness or alkalinity expressed as the mass of calcium
// carbonate with the same charge, stored in mg/L as CaCO3. It may be negative (a residual
// alkalinity).
//
// In: MilligramPerLitreCaCO3.Of(4.2), [Unit.Try], Parse[CalciumCarbonate](text). Out: q.In(MilligramPerLitreCaCO3). Methods: [Quantity].
//
// The German degree (10 mg/L CaO) uses CaO 56.077 and CaCO3 100.086 g/mol (CIAAW abridged atomic weights 2021); the
// French degree is 10 mg/L, the English degree 1 grain an imperial gallon, gpg 1 grain a US gallon, all exact.
type CalciumCarbonate = Quantity[calciumCarbonate, calciumCarbonate]

// Units of [CalciumCarbonate].
var (
	// MilligramPerLitreCaCO3 (mg/L as CaCO3): the base unit.
	MilligramPerLitreCaCO3 = define[calciumCarbonate, calciumCarbonate]("mg/L as CaCO3", 1, 1,
		"mg/l as CaCO3", "ppm as CaCO3", "mg/L CaCO3", "mg/l CaCO3", "ppm CaCO3", "mg CaCO3/L")
	// GermanDegree (°dH): 10 mg/L as CaO.
	GermanDegree = define[calciumCarbonate, calciumCarbonate]("°dH", 1000860, 56077, "dH", "degree German")
	// FrenchDegree (°fH): 10 mg/L as CaCO3.
	FrenchDegree = define[calciumCarbonate, calciumCarbonate]("°fH", 10, 1, "fH", "°f")
	// EnglishDegree (°e): 1 grain of CaCO3 in an imperial gallon.
	EnglishDegree = define[calciumCarbonate, calciumCarbonate]("°e", 64798910, 4546090, "°Clark", "Clark")
	// grainPerUSGallon (gr/US gal): 1 grain of CaCO3 in a US gallon.
	grainPerUSGallon = other("gr/US gal", 64798910000, 3785411784, "gpg")
)

var theCalciumCarbonate = &dimension{
	name: "concentration as CaCO3", min: -most, max: most,
	ambiguous: map[string]string{
		"mg/L":         "say \"mg/L as CaCO3\": alkalinity and hardness are also reported as HCO3 or Ca",
		"ppm":          "say \"mg/L as CaCO3\": alkalinity and hardness are also reported as HCO3 or Ca",
		"mg/L as HCO3": "this is a mass of hydrogencarbonate; convert it with package water",
	},
}

func (calciumCarbonate) describe() *dimension { return theCalciumCarbonate }
func (calciumCarbonate) table() []*unit {
	return []*unit{MilligramPerLitreCaCO3.u, GermanDegree.u, FrenchDegree.u, EnglishDegree.u, grainPerUSGallon}
}

// MolarConcentration is the amount of a named substance in a volume of liquid,
// stored in mmol/L.
//
// In: MillimolePerLitre.Of(4.2), [Unit.Try], Parse[MolarConcentration](text). Out: q.In(MillimolePerLitre). Methods: [Quantity].
type MolarConcentration = Quantity[molarConcentration, molarConcentration]

// Units of [MolarConcentration].
var (
	// MillimolePerLitre (mmol/L): the base unit.
	MillimolePerLitre = define[molarConcentration, molarConcentration]("mmol/L", 1, 1, "mmol/l", "mM")
	// MolePerLitre (mol/L): 1000 mmol/L.
	MolePerLitre = define[molarConcentration, molarConcentration]("mol/L", 1000, 1, "mol/l")
)

var theMolarConcentration = &dimension{
	name: "amount concentration", min: 0, max: most,
	ambiguous: map[string]string{
		"M": "say mol/L",
	},
}

func (molarConcentration) describe() *dimension { return theMolarConcentration }
func (molarConcentration) table() []*unit {
	return []*unit{MillimolePerLitre.u, MolePerLitre.u}
}

// Conductivity is the electrical conductivity of a water, stored in µS/cm.
//
// In: MicrosiemensPerCentimetre.Of(4.2), [Unit.Try], Parse[Conductivity](text). Out: q.In(MicrosiemensPerCentimetre). Methods: [Quantity].
type Conductivity = Quantity[conductivity, conductivity]

// Units of [Conductivity].
var (
	// MicrosiemensPerCentimetre (µS/cm): the base unit.
	MicrosiemensPerCentimetre = define[conductivity, conductivity]("µS/cm", 1, 1, "μS/cm", "uS/cm", "µmho/cm")
	// millisiemensPerCentimetre (mS/cm): 1000 µS/cm.
	millisiemensPerCentimetre = other("mS/cm", 1000, 1)
	// millisiemensPerMetre (mS/m): 10 µS/cm.
	millisiemensPerMetre = other("mS/m", 10, 1)
)

var theConductivity = &dimension{
	name: "conductivity", min: 0, max: most,
}

func (conductivity) describe() *dimension { return theConductivity }
func (conductivity) table() []*unit {
	return []*unit{MicrosiemensPerCentimetre.u, millisiemensPerCentimetre, millisiemensPerMetre}
}
