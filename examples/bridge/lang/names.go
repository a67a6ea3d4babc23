package lang

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
)

// unitNames are the units of the catalogue's inputs as a part of a name: temperature_celsius.
var unitNames = map[string]string{
	"%":             "percent",
	"% mass":        "percent_mass",
	"% vol":         "percent_vol",
	"1/h":           "per_hour",
	"K":             "kelvins",
	"L":             "litres",
	"L/min":         "litres_per_minute",
	"billion":       "billion",
	"d":             "days",
	"g":             "grams",
	"g/L":           "grams_per_litre",
	"g/L CO2":       "grams_co2_per_litre",
	"g/g":           "grams_per_gram",
	"g/mL":          "grams_per_millilitre",
	"h":             "hours",
	"kJ":            "kilojoules",
	"kPa absolute":  "kilopascals_absolute",
	"kPa gauge":     "kilopascals_gauge",
	"kg":            "kilograms",
	"kg/m³":         "kilograms_per_cubic_metre",
	"m":             "metres",
	"mEq/(kg pH)":   "milliequivalents_per_kilogram_and_ph",
	"mEq/L":         "milliequivalents_per_litre",
	"mL":            "millilitres",
	"mg/L":          "milligrams_per_litre",
	"mg/L as CaCO3": "milligrams_per_litre_as_calcium_carbonate",
	"min":           "minutes",
	"mm":            "millimetres",
	"mmol":          "millimoles",
	"mmol/L":        "millimoles_per_litre",
	"mol/L":         "moles_per_litre",
	"m³":            "cubic_metres",
	"m³/h":          "cubic_metres_per_hour",
	"vol CO2":       "volumes_co2",
	"°Bé":           "degrees_baume",
	"°C":            "celsius",
	"°P":            "degrees_plato",
	"µS/cm":         "microsiemens_per_centimetre",
}

// numberName is the name of an input as a number: with its unit, or as it is for one without.
// Where the unit begins with the name, it is said once: volumes_co2.
func numberName(in *catalogue.Input) (string, error) {
	if in.Unit == "" {
		return in.Name, nil
	}
	unit, ok := unitNames[in.Unit]
	if !ok {
		return "", fmt.Errorf("%s: the unit %q has no name for an argument", in.Name, in.Unit)
	}
	if strings.HasPrefix(unit, in.Name+"_") {
		return unit, nil
	}
	return in.Name + "_" + unit, nil
}

// twoForms reports whether an input is a text under its own name and a number under another.
func twoForms(in *catalogue.Input) bool { return in.Unit != "" }

// example is an input as a text: "20 °C", "1.048", "gypsum".
func example(in *catalogue.Input) string {
	return strings.TrimSpace(in.Text(in.Example) + " " + in.Unit)
}

// limits are the values that an input may have.
func limits(in *catalogue.Input) string {
	if in.Options != nil {
		return strings.Join(in.Options, ", ")
	}
	s := fmt.Sprintf("%s to %s", in.Text(in.Min), in.Text(in.Max))
	if in.Unit != "" {
		s += " " + in.Unit
	}
	if in.Whole {
		s = "a whole number, " + s
	}
	return s
}

// orElse says what stands where an input is left out; it is empty for one that may not be.
func orElse(in *catalogue.Input) string {
	if !in.HasDefault {
		return ""
	}
	return strings.TrimSpace(in.Text(in.Default) + " " + in.Unit)
}
