package units

// CarbonDioxideVolumes is a CO2 content as volumes of gas at 0 °C and 1 atm in a
// volume of liquid. What a volume weighs depends on the definition (ideal or real gas);
// package carbonation converts and states it.
//
// In: VolumesCO2.Of(2.8), [Unit.Try], Parse[CarbonDioxideVolumes](text). Out: q.In(VolumesCO2). Methods: [Quantity].
type CarbonDioxideVolumes = Quantity[carbonDioxideVolumes, carbonDioxideVolumes]

// Units of [CarbonDioxideVolumes] and [CarbonDioxideContent].
const (
	// VolumesCO2 (vol CO2): one volume of gas in one of liquid.
	VolumesCO2 Unit[carbonDioxideVolumes, carbonDioxideVolumes] = carbonDioxideVolumesUnits

	// GramCO2PerLitre (g/L CO2): the base unit.
	GramCO2PerLitre Unit[carbonDioxideContent, carbonDioxideContent] = carbonDioxideContentUnits
)

var theCarbonDioxideVolumes = &dimension{
	name: "volumes of CO2", min: 0, max: most,
	units: carbonDioxideVolumesUnits, table: []unit{
		{symbol: "vol CO2", num: 1, den: 1, names: []string{"vol", "vols", "volumes", "volumes CO2", "vol/vol", "v/v"}},
	},
	ambiguous: map[string]string{
		"g/L": "this is a mass of CO2; volumes are wanted",
	},
}

func (carbonDioxideVolumes) describe() *dimension { return theCarbonDioxideVolumes }

// CarbonDioxideContent is the mass of CO2 dissolved in a volume of liquid, stored in
// g/L.
//
// In: GramCO2PerLitre.Of(4.2), [Unit.Try], Parse[CarbonDioxideContent](text). Out: q.In(GramCO2PerLitre). Methods: [Quantity].
type CarbonDioxideContent = Quantity[carbonDioxideContent, carbonDioxideContent]

var theCarbonDioxideContent = &dimension{
	name: "CO2 content", min: 0, max: most,
	units: carbonDioxideContentUnits, table: []unit{
		{symbol: "g/L CO2", num: 1, den: 1, names: []string{"g/L", "g/l", "g CO2/L", "kg/m3", "kg/m³"}},
		{symbol: "g/100 mL CO2", num: 10, den: 1, names: []string{"g/100 mL", "g/100 ml"}},
	},
	ambiguous: map[string]string{
		"vol":     "volumes are another type; package carbonation converts",
		"volumes": "volumes are another type; package carbonation converts",
	},
}

func (carbonDioxideContent) describe() *dimension { return theCarbonDioxideContent }
