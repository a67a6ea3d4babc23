package carbonation

import "example.org/zymase/units/caution"

// The cautions of this package: data, so that a program that takes a result over cannot
// lose them. [Cautions] lists them, the gravest first. Those that a program acts on have a
// name; the others, whose fact stands in a figure beside them, are found by their code.
const (
	// ImmediateDanger: CO2 at 4 % of the air or more.
	ImmediateDanger caution.Caution = "immediate_danger: Immediate danger to life: CO2 at 4 % of the air (40,000 ppm, NIOSH) or more; at 10 % people drop " +
		"within minutes. Nobody goes in, not even to help: get everyone out, call the fire service, and air the room from outside."
	// OverRatingCaution: the pressure is above the rating that was given.
	OverRatingCaution caution.Caution = "over_rating: Above the rating given: do not fill, warm or move it so. Chill it now, keep people away, wear eye " +
		"and hand protection, and let gas off through a valve made for it or discard it by the maker's advice; less sugar or content, a cooler store, more " +
		"head-space or a vessel of higher rating cure the plan."
	// HydraulicLock: the liquid fills the vessel, or did when it was closed; its pressure then
	// rises by several bar a kelvin.
	HydraulicLock caution.Caution = "hydraulic_lock: The liquid fills the vessel, or filled it when it was closed: each further kelvin adds several bar " +
		"and the vessel bursts or its closure gives. Fill lower."
	// Freezing: below the freezing point of the drink.
	Freezing caution.Caution = "freezing: Below the freezing point of the drink: ice takes a twelfth more room than its water, drives the gas into the " +
		"rest and bursts bottles, whatever the pressure given here. Do not store it so cold; let a frozen pack thaw behind a shield before anyone handles it."
	// LittleHeadspace: head-space under 2 % at the temperature asked for or when it was closed.
	LittleHeadspace caution.Caution = "little_headspace: Less than 2 % head-space is left: a small error of fill or temperature multiplies the pressure."
	// AboveComputed: the pressure is above the range of the physics; it is at least what is given.
	AboveComputed caution.Caution = "above_computed: The pressure is above the range of the formulas (20 bar absolute): the figure is only a lower bound."
	// SugarCanFerment: sugar left in the drink can still make gas.
	SugarCanFerment caution.Caution = "sugar_can_ferment: Fermentable sugar is left: yeast or wild organisms can turn it into gas in the closed vessel."
	// PressureVessel: the usual caution of anything closed under pressure.
	PressureVessel caution.Caution = "pressure_vessel: Vessels under pressure can burst. Use only vessels, closures and fittings made and marked for it, " +
		"unworn and within the maker's rating, with a relief valve where there is one; local codes come first."
	// HotVessel: heating a closed pack.
	HotVessel caution.Caution = "hot_vessel: A closed pack under heat is near its highest pressure: shield it, warm and cool it slowly, follow the " +
		"maker's limit of temperature and pressure. Published solubilities of hot CO2 differ by 3 % at 60 °C and by 5 % at 90 °C; the pressure here is the " +
		"highest of them."
	// Overshoot: left at the high pressure, the drink passes the content wanted.
	Overshoot caution.Caution = "overshoot: Left at the high pressure the drink passes the content wanted: set the pressure back at the stop time; " +
		"shaking shortens it."
	// BelowAtmosphere: a pressure below zero gauge, which no regulator can set.
	BelowAtmosphere caution.Caution = "below_atmosphere: The pressure is below that of the air outside: no regulator can set it. Even with no pressure on " +
		"it the drink keeps more CO2 than asked for at this temperature: ask for more, or serve it warmer."
	// Asphyxiation: CO2 in rooms.
	Asphyxiation caution.Caution = "asphyxiation: CO2 is heavier than air, collects low and kills without warning: air cellars and pits from below, use a " +
		"CO2 alarm with its sensor no more than 30 cm above the floor (International Fire Code 2018, 5307.3.2), never work alone; local codes and licensed " +
		"practice come first."
	// OverExposure: above a limit of exposure.
	OverExposure caution.Caution = "over_exposure: Above a limit of exposure: keep people out until a meter shows it is below."
	// Cylinder: how gas cylinders are handled.
	Cylinder caution.Caution = "cylinder: Chain the cylinder upright, use a regulator with a relief valve, keep it below 50 °C and out of the sun; " +
		"filling and testing are licensed work."

	noRating        caution.Caution = "no_rating: No rating was given, so nothing is said about whether the vessel holds: ask its maker."
	worstOverRating caution.Caution = "worst_over_rating: Above the rating given if the sugar left ferments: ferment to the floor, or keep it from " +
		"fermenting by a method fit for it, before closing."
	trappedAir    caution.Caution = "trapped_air: Air shut in adds to the pressure and stales the drink: purge the head-space or close on foam."
	noSugarNeeded caution.Caution = "no_sugar_needed: The drink holds, or its sugar will make, as much gas as wanted or more: add no sugar, and mind the pressure."
	noLiquidCO2   caution.Caution = "no_liquid_co2: Above 30.98 °C there is no liquid CO2 and the pressure rises steeply with how full the cylinder is."
	airDrawnIn    caution.Caution = "air_drawn_in: Cooling draws air into the fermenter: keep it on a little CO2 from a regulator, or the oxygen stales the " +
		"drink; a closed, unvented vessel may collapse under vacuum."
	sharedRegulator caution.Caution = "shared_regulator: Kegs on one regulator stand at one pressure: fit check valves, so that liquid and gas cannot " +
		"flow from one to another."
	unevenSpread caution.Caution = "uneven_spread: The dose for one container is near what the scale resolves: dissolve the sugar and dose by volume, or " +
		"mix it into the whole batch."
	turningFlow caution.Caution = "turning_flow: The flow is where laminar turns to turbulent (Reynolds number 2000 to 4000) and may be either: the same " +
		"line can resist up to two and a half times as much. The length jumps at Reynolds number 2300. Choose a flow or a bore well to one side, and trim " +
		"the line by trial."
	fromMemory caution.Caution = "recalled: A figure here is common practice or recalled from memory; check it against the maker's data."
)

var gravest = [...]caution.Caution{
	ImmediateDanger, OverRatingCaution, noRating, HydraulicLock, Freezing, LittleHeadspace, AboveComputed, SugarCanFerment,
	worstOverRating, trappedAir, PressureVessel, HotVessel, noSugarNeeded, Overshoot, BelowAtmosphere, Asphyxiation, OverExposure, Cylinder, noLiquidCO2,
	airDrawnIn, sharedRegulator, unevenSpread, turningFlow, fromMemory,
}

// Cautions returns all that this package may say, the gravest first.
func Cautions() caution.List { return append(caution.List(nil), gravest[:]...) }

// said is a set of cautions while a result is worked out, by their places in gravest.
type said uint32

func cautions(list ...caution.Caution) said {
	var s said
	for _, c := range list {
		for i := range gravest {
			if gravest[i] == c {
				s |= 1 << i
			}
		}
	}
	return s
}

// with returns s with c in it if when holds.
func (s said) with(c caution.Caution, when bool) said {
	if when {
		s |= cautions(c)
	}
	return s
}

// list is the cautions, the gravest first.
func (s said) list() caution.List {
	var list caution.List
	for i, c := range gravest {
		if s&(1<<i) != 0 {
			list = append(list, c)
		}
	}
	return list
}
