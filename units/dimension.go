package units

// Dimension is the set of kinds of quantity. It is closed: a new kind is added
// here, with its units and the range that it can take.
type Dimension interface {
	mass | anhydrousMass | volume | temperature | temperatureDifference |
		absolutePressure | gaugePressure | density |
		strengthByVolume | strengthByMass | percentagePoints | extract |
		massConcentration | equivalentConcentration | calciumCarbonate | molarConcentration |
		carbonDioxideVolumes | carbonDioxideContent |
		energy | power | length | amount | conductivity | volumeFlow | share | pureNumber |
		molarMass | cells | pitchRate | dynamicViscosity | speed | rate | pasteurisationUnits
	describe() *dimension
}

// A dimension says what Try and Parse accept, and how text is read.
type dimension struct {
	name     string
	min, max float64 // in base units
	compound bool    // "3 lb 4 oz"

	units int    // the [Unit] of the first, which is the base unit
	table []unit // in the order of their constants

	// ambiguous maps a unit text with several meanings to what to write instead.
	ambiguous map[string]string

	// unsaid is the same, in small letters, for what names a unit well enough but leaves a
	// number with it in doubt.
	unsaid map[string]string
}

// most is the largest magnitude that Try and Parse take, in base units.
const most = 1e15

// bound is where sums stop. It is far above most, so that no sum of real
// quantities meets it, and far below the largest float64.
const bound = 1e18

// The tags. Their names show in the compiler's messages.
type (
	mass                    struct{}
	anhydrousMass           struct{}
	volume                  struct{}
	temperature             struct{}
	temperatureDifference   struct{}
	absolutePressure        struct{}
	gaugePressure           struct{}
	density                 struct{}
	strengthByVolume        struct{}
	strengthByMass          struct{}
	percentagePoints        struct{}
	extract                 struct{}
	massConcentration       struct{}
	equivalentConcentration struct{}
	calciumCarbonate        struct{}
	molarConcentration      struct{}
	carbonDioxideVolumes    struct{}
	carbonDioxideContent    struct{}
	energy                  struct{}
	power                   struct{}
	length                  struct{}
	amount                  struct{}
	conductivity            struct{}
	volumeFlow              struct{}
	share                   struct{}
	pureNumber              struct{}
	molarMass               struct{}
	cells                   struct{}
	pitchRate               struct{}
	dynamicViscosity        struct{}
	speed                   struct{}
	rate                    struct{}
	pasteurisationUnits     struct{}
)

// What a [Unit] says: the place of the dimension in dimensions times slots, and the place of the unit
// in its table. Places begin at a number that nobody writes for a unit by mistake, and lie so that no
// sum and no multiple of two units is one.
const (
	slots = 32
	first = 64
)

const (
	massUnits = (first + iota) * slots
	anhydrousMassUnits
	volumeUnits
	temperatureUnits
	temperatureDifferenceUnits
	absolutePressureUnits
	gaugePressureUnits
	densityUnits
	strengthByVolumeUnits
	strengthByMassUnits
	percentagePointsUnits
	extractUnits
	massConcentrationUnits
	equivalentConcentrationUnits
	calciumCarbonateUnits
	molarConcentrationUnits
	carbonDioxideVolumesUnits
	carbonDioxideContentUnits
	energyUnits
	powerUnits
	lengthUnits
	amountUnits
	conductivityUnits
	volumeFlowUnits
	shareUnits
	pureNumberUnits
	molarMassUnits
	cellsUnits
	pitchRateUnits
	dynamicViscosityUnits
	speedUnits
	rateUnits
	pasteurisationUnitsUnits
)

var dimensions = [...]*dimension{
	theMass, theAnhydrousMass, theVolume, theTemperature, theTemperatureDifference, theAbsolutePressure,
	theGaugePressure, theDensity, theStrengthByVolume, theStrengthByMass, thePercentagePoints, theExtract,
	theMassConcentration, theEquivalentConcentration, theCalciumCarbonate, theMolarConcentration,
	theCarbonDioxideVolumes, theCarbonDioxideContent, theEnergy, thePower, theLength, theAmount,
	theConductivity, theVolumeFlow, theShare, thePureNumber, theMolarMass,
	theCells, thePitchRate, theDynamicViscosity, theSpeed, theRate, thePasteurisationUnits,
}

// because gives every text of a row the reason that the row begins with.
func because(rows ...[]string) map[string]string {
	m := map[string]string{}
	for _, row := range rows {
		for _, text := range row[1:] {
			m[text] = row[0]
		}
	}
	return m
}
