package carbonation

import "strings"

// A Caution is something that the person who uses a result must know. It is
// data, so that a program that takes the result over cannot lose it.
type Caution uint8

// The cautions of this package.
const (
	// ImmediateDanger: CO2 at 4 % of the air or more.
	ImmediateDanger Caution = iota
	// OverRatingCaution: the pressure is above the rating that was given.
	OverRatingCaution
	// NoRating: no rating was given, so nothing is said about whether it holds.
	NoRating
	// HydraulicLock: the liquid fills the vessel; its pressure then rises by several bar a kelvin.
	HydraulicLock
	// Freezing: below the freezing point of the drink.
	Freezing
	// LittleHeadspace: head-space under 2 % at the temperature asked for.
	LittleHeadspace
	// AboveComputed: the pressure is above the range of the physics; it is at least what is given.
	AboveComputed
	// SugarCanFerment: sugar left in the drink can still make gas.
	SugarCanFerment
	// WorstOverRating: over the rating if the sugar left ferments too.
	WorstOverRating
	// TrappedAir: air shut in with the drink adds to the pressure and stales it.
	TrappedAir
	// PressureVessel: the usual caution of anything closed under pressure.
	PressureVessel
	// HotVessel: heating a closed pack.
	HotVessel
	// NoSugarNeeded: the drink holds more gas already than was asked for.
	NoSugarNeeded
	// Overshoot: left at the high pressure, the drink passes the content wanted.
	Overshoot
	// BelowAtmosphere: a pressure below zero gauge, which no regulator can set.
	BelowAtmosphere
	// Asphyxiation: CO2 in rooms.
	Asphyxiation
	// OverExposure: above a limit of exposure.
	OverExposure
	// Cylinder: how gas cylinders are handled.
	Cylinder
	// NoLiquidCO2: above the critical point the pressure depends on how full a cylinder is.
	NoLiquidCO2
	// AirDrawnIn: cooling draws air into the fermenter.
	AirDrawnIn
	// SharedRegulator: kegs on one regulator share its pressure and can flow back.
	SharedRegulator
	// UnevenSpread: a dose below what the scale resolves.
	UnevenSpread
	// TurningFlow: the flow may be laminar or turbulent.
	TurningFlow
	// Recalled: a figure from memory or common practice stands in the result.
	Recalled
	cautionCount
)

var cautionText = [cautionCount]struct{ code, text string }{
	ImmediateDanger:   {"immediate_danger", "Immediate danger to life: CO2 at 4 % of the air (40,000 ppm, NIOSH) or more; at 10 % people drop within minutes. Nobody goes in, not even to help: get everyone out, call the fire service, and air the room from outside."},
	OverRatingCaution: {"over_rating", "Above the rating given: do not fill, warm or move it so. Chill it now, keep people away, wear eye and hand protection, and let gas off through a valve made for it or discard it by the maker's advice; less sugar or content, a cooler store, more head-space or a vessel of higher rating cure the plan."},
	NoRating:          {"no_rating", "No rating was given, so nothing is said about whether the vessel holds: ask its maker."},
	HydraulicLock:     {"hydraulic_lock", "The liquid fills the vessel: each further kelvin adds several bar and the vessel bursts or its closure gives. Fill lower."},
	Freezing:          {"freezing", "Below the freezing point of the drink: ice takes a twelfth more room than its water, drives the gas into the rest and bursts bottles, whatever the pressure given here. Do not store it so cold; let a frozen pack thaw behind a shield, and touch it last."},
	LittleHeadspace:   {"little_headspace", "Less than 2 % head-space is left: a small error of fill or temperature multiplies the pressure."},
	AboveComputed:     {"above_computed", "The pressure is above the range of the formulas (20 bar absolute): the figure is only a lower bound."},
	SugarCanFerment:   {"sugar_can_ferment", "Fermentable sugar is left: yeast or wild organisms can turn it into gas in the closed vessel."},
	WorstOverRating:   {"worst_over_rating", "Above the rating given if the sugar left ferments: ferment to the floor, or keep it from fermenting by a method fit for it, before closing."},
	TrappedAir:        {"trapped_air", "Air shut in adds to the pressure and stales the drink: purge the head-space or close on foam."},
	PressureVessel:    {"pressure_vessel", "Vessels under pressure can burst. Use only vessels, closures and fittings made and marked for it, unworn and within the maker's rating, with a relief valve where there is one; local codes come first."},
	HotVessel:         {"hot_vessel", "A closed pack under heat is near its highest pressure: shield it, warm and cool it slowly, follow the maker's limit of temperature and pressure."},
	NoSugarNeeded:     {"no_sugar_needed", "The drink holds, or its sugar will make, as much gas as wanted or more: add no sugar, and mind the pressure."},
	Overshoot:         {"overshoot", "Left at the high pressure the drink passes the content wanted: set the pressure back at the stop time; shaking shortens it."},
	BelowAtmosphere:   {"below_atmosphere", "The pressure is below that of the air outside: no regulator can set it. At this temperature the drink keeps more CO2 than asked for with no pressure at all: ask for more, or have it warmer."},
	Asphyxiation:      {"asphyxiation", "CO2 is heavier than air, collects low and kills without warning: air cellars and pits from below, use a CO2 alarm with its sensor no more than 30 cm above the floor (International Fire Code 2018, 5307.3.2), never work alone; local codes and licensed practice come first."},
	OverExposure:      {"over_exposure", "Above a limit of exposure: keep people out until a meter shows it is below."},
	Cylinder:          {"cylinder", "Chain the cylinder upright, use a regulator with a relief valve, keep it below 50 °C and out of the sun; filling and testing are licensed work."},
	NoLiquidCO2:       {"no_liquid_co2", "Above 30.98 °C there is no liquid CO2 and the pressure rises steeply with how full the cylinder is."},
	AirDrawnIn:        {"air_drawn_in", "Cooling draws air into the fermenter: keep it on a little CO2 from a regulator, or the oxygen stales the drink; a closed, unvented vessel may collapse under vacuum."},
	SharedRegulator:   {"shared_regulator", "Kegs on one regulator stand at one pressure: fit check valves, so that liquid and gas cannot flow from one to another."},
	UnevenSpread:      {"uneven_spread", "The dose for one container is near what the scale resolves: dissolve the sugar and dose by volume, or mix it into the whole batch."},
	TurningFlow:       {"turning_flow", "The flow is where laminar turns to turbulent (Reynolds number 2000 to 4000) and may be either: the same line can resist up to two and a half times as much. The length jumps at Reynolds number 2300. Choose a flow or a bore well to one side, and trim the line by trial."},
	Recalled:          {"recalled", "A figure here is common practice or recalled from memory; check it against the maker's data."},
}

// String returns the code of the caution: "over_rating".
func (c Caution) String() string {
	if c >= cautionCount {
		return "unknown"
	}
	return cautionText[c].code
}

// Text returns the caution as a sentence to print.
func (c Caution) Text() string {
	if c >= cautionCount {
		return ""
	}
	return cautionText[c].text
}

// MarshalText is the code; the error is always nil.
func (c Caution) MarshalText() ([]byte, error) { return []byte(c.String()), nil }

// Cautions is a set of cautions. The zero value is empty.
type Cautions uint32

// Has reports whether c is in the set.
func (s Cautions) Has(c Caution) bool { return c < cautionCount && s&(1<<c) != 0 }

// List returns the cautions in a fixed order, the gravest first.
func (s Cautions) List() []Caution {
	var list []Caution
	for c := range cautionCount {
		if s.Has(c) {
			list = append(list, c)
		}
	}
	return list
}

// String is the codes with commas between: "over_rating, pressure_vessel".
func (s Cautions) String() string {
	var b strings.Builder
	for i, c := range s.List() {
		if i > 0 {
			b.WriteString(", ")
		}
		b.WriteString(c.String())
	}
	return b.String()
}

// MarshalText is the text of [Cautions.String]; the error is always nil.
func (s Cautions) MarshalText() ([]byte, error) { return []byte(s.String()), nil }

func cautions(list ...Caution) Cautions {
	var s Cautions
	for _, c := range list {
		s |= 1 << c
	}
	return s
}

// with returns s with c in it if when holds.
func (s Cautions) with(c Caution, when bool) Cautions {
	if when {
		s |= 1 << c
	}
	return s
}
