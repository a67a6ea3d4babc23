package units

// MassConcentration is the mass of a named substance (an ion, a sugar, an acid) in a
// volume of liquid, stored in mg/L.
//
// In: MilligramPerLitre.Of(4.2), [Unit.Try], Parse[MassConcentration](text). Out: q.In(MilligramPerLitre). Methods: [Quantity].
//
// The factors of the pound and ounce in a US gallon are exact (NIST Handbook 44 (2024) appendix C).
type MassConcentration = Quantity[massConcentration, massConcentration]

// Units of [MassConcentration], [EquivalentConcentration], [CalciumCarbonate], [MolarConcentration] and [Conductivity].
const (
	// MilligramPerLitre (mg/L): the base unit; "ppm" is read as mg/L, as water reports mean it.
	MilligramPerLitre Unit[massConcentration, massConcentration] = massConcentrationUnits
	// GramPerLitre (g/L): 1000 mg/L.
	GramPerLitre Unit[massConcentration, massConcentration] = massConcentrationUnits + 1
	// GramPerHectolitre (g/hL): 10 mg/L.
	GramPerHectolitre Unit[massConcentration, massConcentration] = massConcentrationUnits + 2
	// PoundPerThousandUSGallons (lb/1000 US gal): 453592370000/3785411784 mg/L, the unit of the US wine regulations.
	PoundPerThousandUSGallons Unit[massConcentration, massConcentration] = massConcentrationUnits + 5

	// MilliequivalentPerLitre (mEq/L): the base unit.
	MilliequivalentPerLitre Unit[equivalentConcentration, equivalentConcentration] = equivalentConcentrationUnits

	// MilligramPerLitreCaCO3 (mg/L as CaCO3): the base unit.
	MilligramPerLitreCaCO3 Unit[calciumCarbonate, calciumCarbonate] = calciumCarbonateUnits
	// GermanDegree (°dH): 10 mg/L as CaO.
	GermanDegree Unit[calciumCarbonate, calciumCarbonate] = calciumCarbonateUnits + 1
	// FrenchDegree (°fH): 10 mg/L as CaCO3.
	FrenchDegree Unit[calciumCarbonate, calciumCarbonate] = calciumCarbonateUnits + 2
	// EnglishDegree (°e): 1 grain of CaCO3 in an imperial gallon.
	EnglishDegree Unit[calciumCarbonate, calciumCarbonate] = calciumCarbonateUnits + 3

	// MillimolePerLitre (mmol/L): the base unit.
	MillimolePerLitre Unit[molarConcentration, molarConcentration] = molarConcentrationUnits
	// MolePerLitre (mol/L): 1000 mmol/L.
	MolePerLitre Unit[molarConcentration, molarConcentration] = molarConcentrationUnits + 1

	// MicrosiemensPerCentimetre (µS/cm): the base unit.
	MicrosiemensPerCentimetre Unit[conductivity, conductivity] = conductivityUnits
)

var theMassConcentration = &dimension{
	name: "mass concentration", min: 0, max: most,
	units: massConcentrationUnits, table: []unit{
		{symbol: "mg/L", num: 1, den: 1, names: []string{"mg/l", "ppm", "g/m3", "g/m³", "mg/dm3", "mg/dm³"}},
		{symbol: "g/L", num: 1000, den: 1, names: []string{"g/l", "kg/m3", "kg/m³", "g/dm3", "g/dm³"}},
		{symbol: "g/hL", num: 10, den: 1, names: []string{"g/hl"}},
		{symbol: "µg/L", num: 1, den: 1000, names: []string{"μg/L", "ug/L", "µg/l", "ppb"}},
		{symbol: "oz/US gal", num: 28349523125000, den: 3785411784, names: []string{"oz/gal US"}},
		{symbol: "lb/1000 US gal", num: 453592370000, den: 3785411784, names: []string{"lb/1000 gal US"}},
	},
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

// EquivalentConcentration is charge or alkalinity in a volume of liquid, stored in
// mEq/L. It may be negative (an acidity).
//
// In: MilliequivalentPerLitre.Of(4.2), [Unit.Try], Parse[EquivalentConcentration](text). Out: q.In(MilliequivalentPerLitre). Methods: [Quantity].
type EquivalentConcentration = Quantity[equivalentConcentration, equivalentConcentration]

var theEquivalentConcentration = &dimension{
	name: "equivalent concentration", min: -most, max: most,
	units: equivalentConcentrationUnits, table: []unit{
		{symbol: "mEq/L", num: 1, den: 1, names: []string{"meq/L", "meq/l", "mval/L", "mmol(c)/L"}},
	},
	ambiguous: map[string]string{
		"mg/L": "this is a mass concentration; mEq/L is wanted",
	},
}

func (equivalentConcentration) describe() *dimension { return theEquivalentConcentration }

// CalciumCarbonate is hardness or alkalinity expressed as the mass of calcium
// carbonate with the same charge, stored in mg/L as CaCO3. It may be negative (a residual
// alkalinity).
//
// In: MilligramPerLitreCaCO3.Of(4.2), [Unit.Try], Parse[CalciumCarbonate](text). Out: q.In(MilligramPerLitreCaCO3). Methods: [Quantity].
//
// The German degree (10 mg/L CaO) uses CaO 56.077 and CaCO3 100.086 g/mol (CIAAW abridged atomic weights 2021); the
// French degree is 10 mg/L, the English degree 1 grain an imperial gallon, gpg 1 grain a US gallon, all exact.
type CalciumCarbonate = Quantity[calciumCarbonate, calciumCarbonate]

var theCalciumCarbonate = &dimension{
	name: "concentration as CaCO3", min: -most, max: most,
	units: calciumCarbonateUnits, table: []unit{
		{symbol: "mg/L as CaCO3", num: 1, den: 1, names: []string{"mg/l as CaCO3", "ppm as CaCO3", "mg/L CaCO3", "mg/l CaCO3", "ppm CaCO3", "mg CaCO3/L"}},
		{symbol: "°dH", num: 1000860, den: 56077, names: []string{"dH", "degree German"}},
		{symbol: "°fH", num: 10, den: 1, names: []string{"fH", "°f"}},
		{symbol: "°e", num: 64798910, den: 4546090, names: []string{"°Clark", "Clark"}},
		{symbol: "gr/US gal", num: 64798910000, den: 3785411784, names: []string{"gpg"}},
	},
	ambiguous: map[string]string{
		"mg/L":         "say \"mg/L as CaCO3\": alkalinity and hardness are also reported as HCO3 or Ca",
		"ppm":          "say \"mg/L as CaCO3\": alkalinity and hardness are also reported as HCO3 or Ca",
		"mg/L as HCO3": "this is a mass of hydrogencarbonate; convert it with package water",
	},
}

func (calciumCarbonate) describe() *dimension { return theCalciumCarbonate }

// MolarConcentration is the amount of a named substance in a volume of liquid,
// stored in mmol/L.
//
// In: MillimolePerLitre.Of(4.2), [Unit.Try], Parse[MolarConcentration](text). Out: q.In(MillimolePerLitre). Methods: [Quantity].
type MolarConcentration = Quantity[molarConcentration, molarConcentration]

var theMolarConcentration = &dimension{
	name: "amount concentration", min: 0, max: most,
	units: molarConcentrationUnits, table: []unit{
		{symbol: "mmol/L", num: 1, den: 1, names: []string{"mmol/l", "mM"}},
		{symbol: "mol/L", num: 1000, den: 1, names: []string{"mol/l"}},
	},
	ambiguous: map[string]string{
		"M": "say mol/L",
	},
}

func (molarConcentration) describe() *dimension { return theMolarConcentration }

// Conductivity is the electrical conductivity of a water, stored in µS/cm.
//
// In: MicrosiemensPerCentimetre.Of(4.2), [Unit.Try], Parse[Conductivity](text). Out: q.In(MicrosiemensPerCentimetre). Methods: [Quantity].
type Conductivity = Quantity[conductivity, conductivity]

var theConductivity = &dimension{
	name: "conductivity", min: 0, max: most,
	units: conductivityUnits, table: []unit{
		{symbol: "µS/cm", num: 1, den: 1, names: []string{"μS/cm", "uS/cm", "µmho/cm"}},
		{symbol: "mS/cm", num: 1000, den: 1},
		{symbol: "mS/m", num: 10, den: 1},
	},
}

func (conductivity) describe() *dimension { return theConductivity }
