package catalogue

import (
	"strings"
	"testing"
)

// harmless are the functions whose numbers hurt nobody, with why. Every other one gives a
// caution.
var harmless = map[string]string{
	"a conversion or a constant": `atmosphere_at_altitude pressure_absolute_from_gauge pressure_gauge_from_absolute
		convert_temperature convert_temperature_difference convert_mass convert_volume convert_volume_flow convert_length
		convert_pressure convert_gauge_pressure convert_density convert_concentration convert_hardness convert_energy
		convert_conductivity salt_molar_mass salt_ions co2_grams_from_volumes acidity_as`,
	"a property of a liquid or a gas that nobody sets or swallows by it": `water_density water_density_tanaka water_density_kell
		ethanol_density sugar_density spirit_density refractive_index refractive_index_of_mixture
		water_vapour_pressure ethanol_vapour_pressure co2_second_virial co2_fugacity_coefficient co2_gas_density
		co2_henry_weiss co2_henry co2_mole_fraction co2_mole_fraction_carroll drink_viscosity friction_factor
		mineral_solubility glucose_syrup_composition`,
	"the reading of an instrument in other words": `ethanol_strength sucrose_extract plato_from_sg sg_from_plato hydrometer_correct
		hydrometer_reading extract_concentration extract_from_concentration concentration_from_sg strength_by_volume
		strength_by_mass original_extract strength_from_extracts real_extract gravity_at_reference gravity_from_reference
		gravity_of_mixture density_in_air density_in_vacuum scales_from_sg sg_from_baume brix_from_index
		brix_from_index_polynomial refractometer_correction refractometer_correction_oiv ferment_from_gravities
		ferment_from_extracts ferment_from_real_extract ferment_from_strength ferment_from_refractometer
		ferment_from_apparent_and_strength ferment_from_strength_and_real brix_nbs plato_asbc plato_lincoln brix_linear
		plato_hyperbola beer_balling_tables beer_cutaia beer_doemens beer_handbook beer_mebak density_from_pycnometer
		sg_from_density strength_uncertainty strength_by_volume_at strength_by_mass_at drink_gravity titratable_acidity
		water_conductivity`,
	"what a drink holds under a pressure that somebody else set": `co2_content co2_content_volumes co2_temperature
		co2_beer_chart_volumes co2_european_content co2_wine_content carbonation_rate air_in_drink`,
	"a mixture of drinks and water":               `mix_volumes blend_to_strength make_up_to dilution_water water_blend drinks_mixed`,
	"what a label or a law prints":                `energy_eu nutrition_label_eu energy_us label_tolerance drinking_water_limit limit_in_law`,
	"the state of a water or a drink, not a dose": `water_hardness water_speciation water_ph_under_co2 alkalinity_at_ph wash_ph mash_ph juice_ph_from_acidity juice_from_ph_and_acidity wine_ph_from_analysis acid_buffer_capacity drink_ph_shift malolactic must_usual drink_soured cream_of_tartar_settled ferment_ph so2_pk so2_molecular_share so2_molecular_share_oiv sorbic_acid_undissociated`,
	"kitchen salts, in grams for a batch":         `salts_for_target salts_for_target_weighed`,
	"yeast, its nitrogen and its warmth":          `nitrogen_need nitrogen_assimilable nitrogen_need_must yeast_to_pitch liquid_yeast_packs yeast_starter yeast_other_needs rehydration_water ferment_heat ferment_cooling dry_yeast_by_age`,
}

// Every function whose number can hurt someone says how, and sets a pressure against a
// rating where there is one to set.
func TestEveryFunctionIsJudged(t *testing.T) {
	why := map[string]string{}
	for reason, names := range harmless {
		for _, name := range strings.Fields(names) {
			if why[name] != "" {
				t.Errorf("%s stands twice", name)
			}
			why[name] = reason
		}
	}
	for _, f := range All() {
		c, has := f.Output(cautionName)
		switch {
		case has == (why[f.Name] != ""):
			t.Errorf("%s: caution %v, harmless because %q", f.Name, has, why[f.Name])
		case has && (!f.Outputs[c].IsText() || !f.Outputs[c].Several || c != len(f.Outputs)-1):
			t.Errorf("%s: the caution is the last output, and a text", f.Name)
		}
		_, rating := f.Input(ratingName)
		v, verdict := f.Output(verdictName)
		if rating != verdict || verdict && (!f.Outputs[v].IsText() || f.Outputs[v].Several || v != len(f.Outputs)-2) {
			t.Errorf("%s: rating %v, verdict %v", f.Name, rating, verdict)
		}
		// A pressure that a person sets, or that a pack comes to, is held against a rating.
		for _, o := range f.Outputs {
			sets := o.Name == "gauge_pressure" && f.Name != "pressure_gauge_from_absolute"
			if sets && !rating {
				t.Errorf("%s gives a gauge pressure and takes no rating", f.Name)
			}
		}
		delete(why, f.Name)
	}
	for name := range why {
		t.Errorf("no function %s", name)
	}
	for name := range sayings() {
		if _, err := Find(name); err != nil {
			t.Error(err)
		}
	}
}

// said is the text output of a function at inputs by name, all others at their defaults.
func said(t *testing.T, name, output, inputs string) string {
	t.Helper()
	f, err := Find(name)
	if err != nil {
		t.Fatal(err)
	}
	in, out := make([]float64, len(f.Inputs)), make([]float64, len(f.Outputs))
	for i, p := range f.Inputs {
		if in[i] = p.Default; !p.HasDefault {
			in[i] = p.Example
		}
	}
	for _, pair := range strings.Fields(inputs) {
		key, text, _ := strings.Cut(pair, "=")
		i, ok := f.Input(key)
		if !ok {
			t.Fatalf("%s has no input %s", name, key)
		}
		if in[i], err = f.Inputs[i].Parse(strings.ReplaceAll(text, "_", " ")); err != nil {
			t.Fatal(err)
		}
	}
	if err := f.Call(in, out); err != nil {
		t.Fatalf("%s(%s): %v", name, inputs, err)
	}
	place, ok := f.Output(output)
	if !ok {
		t.Fatalf("%s has no output %s", name, output)
	}
	return f.Outputs[place].Text(out[place])
}

// What is said in cases whose danger is known without the library: a bottle of 8 bar, a
// freezer, a room at 5.5 % CO2, a setting below the atmosphere.
func TestSaid(t *testing.T) {
	for _, c := range []struct{ name, inputs, verdict, has, hasNot string }{
		{"closed_vessel_pressure", "", "unrated", "No rating was given", "Above the rating"},
		{"closed_vessel_pressure", "rating=8_bar_gauge", "within the rating given", "Vessels under pressure can burst", "No rating was given"},
		{"closed_vessel_pressure", "rating=3_bar_gauge", "over the rating given", "Above the rating given", "No rating was given"},
		{"closed_vessel_pressure", "rating=8_bar_gauge sugar_left=10", "over the rating given", "Above the rating given if the sugar left ferments", "No rating"},
		{"closed_vessel_pressure", "rating=8_bar_gauge temperature=-2 strength=4.6", "below the freezing point", "ice takes a twelfth more room", "Above the rating"},
		{"closed_vessel_pressure", "rating=8_bar_gauge fill=344.9", "hydraulic lock", "The liquid fills the vessel", "No rating"},
		{"co2_pressure", "rating=4_bar_gauge", "within the rating given", "Vessels under pressure can burst", "no regulator"},
		{"co2_pressure", "rating=1_bar_gauge", "over the rating given", "Above the rating given", "No rating"},
		{"co2_pressure", "volumes=1", "unrated", "below that of the air outside: no regulator can set it", "Above the rating"},
		{"co2_pressure", "temperature=-1", "unrated", "Below the freezing point", "no regulator"},
		{"co2_pressure", "temperature=-1 rating=4_bar_gauge", "below the freezing point", "Below the freezing point", "Above the rating"},
		{"co2_pressure", "temperature=-1 rating=0.2_bar_gauge", "over the rating given", "Below the freezing point", "no regulator"},
		{"serving_line_length", "temperature=-1", "", "Below the freezing point", ""},
		{"spunding_pressure", "temperature=-1 rating=4_bar_gauge", "below the freezing point", "Below the freezing point", ""},
		{"co2_pressure", "temperature=-1 strength=4.6", "unrated", "No rating", "Below the freezing point"},
		{"co2_pressure_from_content", "content=1", "unrated", "no regulator can set it", ""},
		{"co2_beer_chart_pressure", "volumes=1.5 temperature=-1", "unrated", "no regulator can set it", ""},
		{"co2_european_pressure", "content=9 rating=1_bar_gauge", "over the rating given", "Above the rating", ""},
		{"co2_wine_pressure", "content=11 rating=5_bar_gauge", "over the rating given", "Above the rating", ""},
		{"mixed_gas_pressure", "content=1", "unrated", "CO2 is heavier than air", ""},
		{"spunding_pressure", "rating=1_bar_gauge", "over the rating given", "Fermentable sugar is left", ""},
		{"purge_fill_and_vent", "rating=1_bar_gauge", "over the rating given", "Above the rating", ""},
		{"purge_flush", "", "", "CO2 is heavier than air", ""},
		{"priming_sugar", "volumes=0.5", "", "add no sugar", "Fermentable sugar is left"},
		{"priming_sugar", "sugar_left=2", "", "Fermentable sugar is left", "add no sugar"},
		{"priming_wort", "", "", "Vessels under pressure can burst", "add no sugar"},
		{"cold_crash_air", "", "", "Cooling draws air", "Below the freezing"},
		{"cold_crash_air", "cold=-1.5", "", "Below the freezing point", ""},
		{"room_co2", "mass=0.465", "", "Above a limit of exposure", "Immediate danger"},
		{"room_co2", "mass=2.53", "", "Immediate danger to life", ""},
		{"room_co2", "mass=1000", "", "Immediate danger to life", ""},
		{"room_co2", "mass=0", "", "sensor no more than 30 cm above the floor", "Above a limit"},
		{"room_ventilation", "limit=40000", "", "Immediate danger", ""},
		{"room_airing", "", "", "Immediate danger", ""},
		{"room_airing", "co2=6000", "", "Above a limit of exposure", "Immediate danger"},
		{"time_to_carbonate", "to=3", "", "passes the content wanted", ""},
		{"time_to_carbonate", "to=5.5", "", "Vessels under pressure", "passes the content wanted"},
		{"serving_line_length", "", "", "Vessels under pressure", "laminar turns to turbulent"},
		{"serving_line_length", "flow=0.9", "", "laminar turns to turbulent", ""},
		{"serving_line_flow", "length=30", "", "Vessels under pressure", ""},
		{"cylinder_kegs", "", "", "Chain the cylinder upright", ""},
		{"co2_saturation_pressure", "", "", "Chain the cylinder upright", ""},
		{"pasteurisation_units", "", "", "A closed pack under heat", ""},
		{"co2_given_off", "", "", "CO2 suffocates without warning", ""},
		{"sugar_for_strength", "", "", "hot sugar solution", ""},
		{"water_acid_to_ph", "ph=7.5 alkalinity=100", "", "goggles", ""},
		{"water_base_to_ph", "ph=7.5 alkalinity=100", "", "Lime, soda ash and lye burn", ""},
		{"sulfite_dose", "", "", "asthma", ""},
		{"sorbate_for_wine", "", "", "does not stop a ferment", ""},
		{"nutrient_dose", "source=urea", "", "ethyl carbamate", ""},
		{"nutrient_dose", "", "", "Laws change", "ethyl carbamate"},
		{"nutrient_brings", "source=urea", "", "ethyl carbamate", ""},
		{"wash_progress", "", "", "still make gas", ""},
	} {
		if c.verdict != "" {
			if got := said(t, c.name, verdictName, c.inputs); got != c.verdict {
				t.Errorf("%s %s: %q, want %q", c.name, c.inputs, got, c.verdict)
			}
		}
		got := said(t, c.name, cautionName, c.inputs)
		if !strings.Contains(got, c.has) || c.hasNot != "" && strings.Contains(got, c.hasNot) {
			t.Errorf("%s %s: %q; want %q, not %q", c.name, c.inputs, got, c.has, c.hasNot)
		}
	}
}

// A text of one word, of several, of none.
func TestOutputText(t *testing.T) {
	one, several := verdictOutput(), sentences("Run.", "Hide.", "Fight.")
	for v, want := range map[float64]string{0: "unrated", 2: "over the rating given", -1: "", 99: ""} {
		if got := one.Text(v); got != want {
			t.Errorf("%v is %q, want %q", v, got, want)
		}
	}
	for v, want := range map[float64]string{0: "none", 1: "Run.", 5: "Run. Fight.", 7: "Run. Hide. Fight."} {
		if got := several.Text(v); got != want {
			t.Errorf("%v is %q, want %q", v, got, want)
		}
	}
	if _, err := several.Conversion("kg"); err == nil {
		t.Error("a text in kilograms")
	}
	if c, err := several.Conversion(""); err != nil || c(5) != 5 {
		t.Errorf("%v", err)
	}
}
