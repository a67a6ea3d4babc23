package published

import (
	"slices"
	"strings"

	"example.org/zymase/units"
)

// derived are units that tables use and package units does not have. A table
// gives them as plain numbers of a stated unit, so the unit of the column must
// be that of the catalogue, letter by letter.
var derived = []string{
	"mol/(kg·atm)", "mol/(L·atm)", "mol/(kg·bar)", "g/(L·bar)", "mmol/kg", "mol/kg",
	"cm³/mol", "kJ/mol", "mg/g", "g/g", "g/kg", "kJ/kg", "kJ/L", "kcal/L",
	"kJ/100 mL", "kcal/100 mL", "kcal/100 g", "g/100 mL", "g/100 g", "mg/(kg·d)",
	"cells/mL", "cells/g", "1/h", "1/d", "PU/min", "points", "°Oe", "°Bé",
	"kPa/m", "mg/L N", "mg/g N", "US gal/lb", "percentage points",
}

// Knows reports whether some quantity has the unit, written as tables write it.
func Knows(text string) bool {
	for _, find := range finders() {
		if find(text) {
			return true
		}
	}
	if !strings.ContainsAny(text, "0123456789., ") {
		if _, err := units.ParseDuration("1 " + text); err == nil {
			return true
		}
	}
	return slices.Contains(derived, text)
}

// finders has one function for each dimension of package units.
func finders() []func(string) bool {
	return []func(string) bool{
		finder(units.Kilogram), finder(units.KilogramAnhydrous), finder(units.Litre),
		finder(units.Celsius), finder(units.KelvinDifference),
		finder(units.Kilopascal), finder(units.KilopascalGauge), finder(units.KilogramPerCubicMetre),
		finder(units.PercentVolume), finder(units.PercentMass), finder(units.DegreePlato),
		finder(units.MilligramPerLitre), finder(units.MilliequivalentPerLitre),
		finder(units.MilligramPerLitreCaCO3), finder(units.MillimolePerLitre),
		finder(units.VolumesCO2), finder(units.GramCO2PerLitre),
		finder(units.Kilojoule), finder(units.Watt), finder(units.Metre), finder(units.Mole),
		finder(units.MicrosiemensPerCentimetre), finder(units.LitrePerMinute), finder(units.Percent),
		finder(units.GramPerMole), finder(units.MillipascalSecond), finder(units.MetrePerSecond), finder(units.PU),
	}
}

func finder[D, E units.Dimension](like units.Unit[D, E]) func(string) bool {
	return func(text string) bool {
		_, err := like.Find(text)
		return err == nil
	}
}
