package sheet

// batch is the plan of the sheet: 60 L of a dry elderflower-and-cucumber
// sparkler at 4.6 % vol from white sugar, for a club in a village hall at 640 m;
// 40 L go into kegs at 4 °C, the rest into bottles of 0.33 L.
func batch() []line {
	var lines []line
	for _, part := range [][]line{wanted(), fermenter(), keg(), bottle(), label()} {
		lines = append(append(lines, part...), note(""))
	}
	return lines
}

func wanted() []line {
	return []line{
		heading("A dry sparkler of elderflower and cucumber, from white sugar"),
		note("Change the coloured figures; the others ask the bridge again. It must run: see the last line."),
		note("Where a cell shows Err:540, let the document update its links: the spreadsheet asks when it opens the file."),
		heading("What is wanted"),
		figure("Packaged in all", "packaged", 60, "L", 1, ""),
		figure("Of it in kegs", "keg_volume", 40, "L", 1, ""),
		figure("Left behind with the yeast", "lost", 3, "L", 1, "lees, hoses and samples"),
		figure("Strength", "strength", 4.6, "% vol", 1, ""),
		choice("Sugar", "fermentable", "white sugar", "as sugar_for_strength names it: dextrose monohydrate, honey …"),
		choice("Strain's need of nitrogen", "demand", "low", "low, medium or high: the yeast's data sheet says"),
		figure("Water, alkalinity", "alkalinity", 38, "mg/L as CaCO3", 0, "of the water as it is brewed with"),
		figure("pH not to fall below", "ph_floor", 3.2, "", 1, "common practice: many yeasts slow down below it"),
		figure("Altitude", "altitude", 640, "m", 0, "a gauge shows the pressure above that of the air here"),
		figure("Keg, temperature", "keg_temperature", 4, "°C", 1, ""),
		figure("Keg, fizz", "keg_fizz", 2.9, "vol CO2", 2, ""),
		figure("Bottle, fizz", "bottle_fizz", 2.9, "vol CO2", 2, ""),
		figure("Bottle, drink in it", "bottle_fill", 330, "mL", 0, ""),
		figure("Bottle, brim-full", "bottle_capacity", 345, "mL", 0, "weigh one full of water to the brim"),
		figure("Drink when bottled", "bottling_temperature", 18, "°C", 1, ""),
		figure("Warmest since the gas came off", "warmest", 20, "°C", 1, "a fermenter that stood warmer holds less CO2"),
		figure("Warmest place a bottle may stand", "hot", 35, "°C", 1, "a parked car is hotter"),
	}
}

func fermenter() []line {
	sugar := []input{{"strength", "strength"}, {"volume", "fermented"}, {"fermentable", "fermentable"}}
	wash := []input{{"strength", "strength"}, {"alkalinity", "alkalinity"}, {"nitrogen", "nitrogen"}}
	return []line{
		heading(results),
		note(""),
		heading("In the fermenter"),
		{
			label: "Fermented in all", name: "fermented", unit: "L", places: 1,
			formula: "packaged+lost", compute: func(get func(string) float64) float64 { return get("packaged") + get("lost") },
		},
		{
			label: "Sugar", name: "sugar", unit: "kg", places: 2,
			function: "sugar_for_strength", output: "mass", inputs: sugar,
		},
		{
			label: "Water", name: "water", unit: "kg", places: 1,
			function: "sugar_for_strength", output: "water", inputs: sugar,
			remark: "what boils off comes on top; hot sugar solution burns worse than water",
		},
		{
			label: "Gravity before", name: "gravity_before", places: 4,
			function: "sugar_for_strength", output: "original_gravity", inputs: sugar, remark: "20/20 °C",
		},
		{
			label: "Gravity when dry", name: "gravity_dry", places: 4,
			function: "sugar_for_strength", output: "final_gravity", inputs: sugar,
			remark: "20/20 °C; a reading above it may still hide sugar",
		},
		{
			label: "Extract before", name: "extract", unit: "°P", places: 2,
			function: "sugar_for_strength", output: "original_extract", inputs: sugar,
		},
		{
			label: "Sugar in a litre", name: "sugar_in_litre", unit: "g/L", places: 1,
			formula: "sugar*1000/fermented",
			compute: func(get func(string) float64) float64 { return get("sugar") * 1000 / get("fermented") },
		},
		{
			label: "Nitrogen for the yeast", name: "nitrogen", unit: "mg/L", places: 0,
			function: "nitrogen_need", output: "nitrogen", inputs: []input{{"sugar", "sugar_in_litre"}, {"demand", "demand"}},
			remark: "sugar and water bring none: see nutrient_brings, and the limits on nutrients where you are",
		},
		{
			label: "pH at the end", name: "ph", places: 1,
			function: "ferment_ph", output: "ph", inputs: wash,
			remark: "with ammonium phosphate for the nitrogen; a wash of sugar has next to no buffer",
		},
		{
			label: "Potassium bicarbonate that holds the floor", name: "buffer", unit: "g/L", places: 2,
			function: "buffer_for_ph", output: "dose", inputs: append(wash[:len(wash):len(wash)], input{"floor", "ph_floor"}),
			remark: "of the finished drink; none if the pH stays above the floor",
		},
		{
			label: "Dry yeast", name: "yeast", unit: "g", places: 0,
			function: "yeast_to_pitch", output: "dry_yeast", inputs: []input{{"volume", "fermented"}, {"extract", "extract"}},
		},
		{
			label: "CO2 given off", name: "gas", unit: "kg", places: 2,
			function: "sugar_for_strength", output: "carbon_dioxide", in: "kg", inputs: sugar,
			remark: "it gathers unseen and stifles: air the room, and hang a CO2 alarm at breathing height",
		},
	}
}

func keg() []line {
	return []line{
		heading("In the kegs"),
		{
			label: "Gauge at rest", name: "keg_gauge", unit: "bar gauge", places: 2,
			function: "co2_pressure", output: "gauge_pressure", in: "bar gauge",
			inputs: drinkAt("temperature", "keg_temperature", "volumes", "keg_fizz"),
			remark: "set the regulator to this, and stay below the ratings of keg and fittings; follow the local code for gas",
		},
	}
}

func bottle() []line {
	return []line{
		heading("In the bottles"),
		{
			label: "Left for bottles", name: "bottle_volume", unit: "L", places: 1,
			formula: "packaged-keg_volume", compute: func(get func(string) float64) float64 { return get("packaged") - get("keg_volume") },
		},
		{
			label: "Bottles", name: "bottles", places: 0,
			formula: "ROUNDDOWN(bottle_volume*1000/bottle_fill;0)",
			compute: func(get func(string) float64) float64 {
				return float64(int(get("bottle_volume") * 1000 / get("bottle_fill")))
			},
		},
		{
			label: "White sugar to prime with", name: "priming", unit: "g", places: 0,
			function: "priming_sugar", output: "mass",
			inputs: drinkAt("volumes", "bottle_fizz", "volume", "bottle_volume", "warmest", "warmest"),
			remark: "for all the bottles; boiled in a little water and stirred in evenly",
		},
		{
			label: "Gauge pressure where it is warmest", name: "bottle_gauge", unit: "bar gauge", places: 2,
			function: "closed_vessel_pressure", output: "gauge_pressure", in: "bar gauge",
			inputs: drinkAt("temperature", "hot", "volumes", "bottle_fizz", "capacity", "bottle_capacity",
				"fill", "bottle_fill", "filling_temperature", "bottling_temperature"),
			remark: "once the priming has fermented",
		},
		note("Glass bursts. Hold the pressure against the rating that the bottle's maker gives; without one, do not prime in it. Sugar left unfermented adds to it."),
	}
}

func label() []line {
	return []line{
		heading("On the label, from the keg"),
		{
			label: "Energy of 100 mL", name: "energy", unit: "kcal", places: 0,
			function: "energy_eu", output: "kilocalories", inputs: []input{{"strength", "strength"}},
			remark: "of the alcohol; glycerol and acids that yeast leaves add about 0.15 kcal for each % vol, and priming adds a little strength",
		},
	}
}

// drinkAt are pairs of an input and its cell, and the cells of the drink.
func drinkAt(pairs ...string) []input {
	inputs := []input{{"strength", "strength"}, {"altitude", "altitude"}}
	for i := 0; i < len(pairs); i += 2 {
		inputs = append(inputs, input{pairs[i], pairs[i+1]})
	}
	return inputs
}

// figure is a number that the user may change.
func figure(label, name string, v float64, unit string, places int, remark string) line {
	return line{label: label, name: name, unit: unit, places: places, remark: remark, value: &v}
}

// choice is a word that the user may change.
func choice(label, name, word, remark string) line {
	return line{label: label, name: name, text: word, remark: remark}
}
