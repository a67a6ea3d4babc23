package main

import (
	"regexp"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// What the reason of a row has to speak of, by section and label. A row that is not listed
// fails, so that a new figure is given its reason with thought.
var reasons = []struct{ section, label, says string }{
	{"", "packaged", "volume of the ethanol"},
	{"", "atmosphere", "101.325 kPa"}, {"", "atmosphere", "vapour pressure of water"},
	{"Weigh", "white sugar, kettle", "strength asked for"},
	{"Weigh", ".*, water|.*, kettle, after the boil", "distance to the target"},
	{"Weigh", ".*, dissolved in the water|.*, fermenter, portion .*|dextrose monohydrate, kettle", "strength asked for"},
	{"Weigh", ".*, fermenter, with the yeast", "what the yeast grows on"},
	{"Weigh", ".*, fermenter, in stages", "nitrogen share of the source"},
	{"Weigh", "potassium bicarbonate, fermenter, buffer", "end pH"},
	{"Weigh", "dry yeast, fermenter", "live cells"},
	{"Weigh", "white sugar, priming the bottles.*", "CO2 that a gram makes"},
	{"Water", "charge balance of the report", "cations"},
	{"Water", "(residual )?alkalinity|hardness", "alkalinity"},
	{"Water", "[a-z]+", "ions add by mass"},
	{"Water", "(alkalinity|calcium) after the boil|chalk from the boil", "calcite at equilibrium"},
	{"Volumes", ".*", "mass / density"},
	{"Base", "base to take|left of the base", "solved backwards"}, {"Base", "water to it, in all", "volume of the ethanol"},
	{"Base", "sugar that its gravity may hide", "gravity"},
	{"Gravity", "original", "density of water at 20 °C"}, {"Gravity", "original", "20 °C hydrometer"},
	{"Gravity", "first portion of the sugar|portion . goes in by", "density of water at 20 °C"}, {"Gravity", "at the end", "all fermentable sugar is used"},
	{"Gravity", "one third of the sugar used|two thirds used", "density of water at 20 °C"},
	{"Gravity", "dry floor", "all fermentable sugar is used"}, {"Gravity", "dry floor", "below zero"}, {"Gravity", "dry floor", "20 °C hydrometer"},
	{"Nutrient", "nitrogen wanted", "mg N"},
	{"Nutrient", "nitrogen brought|not covered.*|with the yeast|.* of the sugar used", "nitrogen share of the source"},
	{"Nutrient", "phosphorus|potassium|magnesium|zinc|thiamine|other vitamins|once, with the yeast", "what the yeast grows on"},
	{"pH", ".*the yeast works|.* of the sugar used|at the end without buffer", "charge balance"},
	{"pH", "potassium bicarbonate", "end pH"},
	{"Yeast", "live cells|dry yeast|packs", "live cells"},
	{"Yeast", "wake it in", "water 10 to 20 times"},
	{"kegs?|bottles?|cans?", "content", "one volume"},
	{"kegs?|bottles?|cans?", "strength", "volume of the ethanol"},
	{"kegs?|bottles?|cans?", "rack for them", "solved backwards through packs"},
	{"kegs?", "filled", "density of CO2 gas"},
	{"kegs?", "pressure of its own", "pressure at which the liquid holds the content"},
	{"kegs?", "set the gauge to", "pressure at which the liquid holds the content"},
	{"kegs?", "that takes", "95 % of the way is ln 20"},
	{"kegs?", "or fill its room once, to", "the gas that the drink lacks"},
	{"kegs?", "highest, .*", "against the rating"}, {"kegs?", "highest, .*", "at which the liquid holds the content"},
	{"bottles?|cans?", "already dissolved", "under the atmosphere at the warmest"},
	{"bottles?|cans?", "gas from the flavouring's sugar|priming for all", "CO2 that a gram makes"},
	{"bottles?|cans?", "dissolve it in", "ethanol"},
	{"bottles?|cans?", "in the drink when served|pressure served.*|pressure stored.*|highest, .*", "is conserved"},
	{"bottles?|cans?", "highest, .*", "against the rating"},
	{"Flavour", ".*", "dose of the trial"},
	{"Weigh", ".*, (sweetening|souring) the .*", "as much in a litre"}, {"Weigh", ".*, priming the cans", "CO2 that a gram makes"},
	{"kegs?|bottles?|cans?", "water to them", "ethanol"}, {"kegs?|bottles?|cans?", "tried: .*", "dose of the trial"},
	{"kegs?|bottles?|cans?", "its own label", "29 for a gram of ethanol"},
	{"kegs?|bottles?|cans?", "pH with the acid|pH, about", "charge balance"},
	{"kegs?|bottles?|cans?", "erythritol|white sugar|citric acid|malic acid", "as much in a litre"},
	{"bottles?|cans?", "fill under counter-pressure", "pressure at which the liquid holds the content"},
	{"Label", "alcohol|counts as", "% vol for other drinks"},
	{"Label", "energy.*", "29 for a gram of ethanol"},
	{"Label", "carbohydrate.*", "includes polyols"},
	{"Label", "standard drinks.*", "14 g of ethanol"},
	{"How sure", ".*", "u²"},
	{"By the readings", "original, measured|after .*", "shows that reading"},
	{"By the readings", "dry floor of this wash", "all fermentable sugar is used"},
	{"By the readings", "gas that the sugar left can make", "CO2"},
	{"By the readings", "potassium bicarbonate", "end pH"},
	{"When", ".*", "the gravity decides"},
	{"How it may go", "a third used|dry|unchanged .*|chance that it stops|a reading tells most", "ways in which the ferment may go"},
	{"How it may go", "gas in .*|heat in .*", "share of the sugar in the fastest hour"},
	{"How it may go", "temperature|nitrogen|yeast|pH", "likelihood of the readings"},
	{"By the readings", "if it ferments out as it stands|tried: .*", "carried on"}, {"By the readings", "usually begun", "ways in which"},
	{"Air", ".*", "fresh air"},
	{"Buy", ".*", "price"},
	{"Mass balance", ".*", "mass in = mass out"},
}

// Each reason belongs to its figure: in a plan with all that a plan can have.
func TestReasonsBelong(t *testing.T) {
	all := requestsToTry(t)
	for name, change := range map[string]func(*plan.Request){
		"built in": func(*plan.Request) {},
		"over its rating, part full, sweet": func(r *plan.Request) {
			g := units.GramPerLitre.Of(300)
			r.Flavour.Sugar, r.Flavour.Strength = &g, nil
			r.Packs[1].Rating, r.Packs[0].Size = units.BarGauge.Of(2), units.Litre.Of(30)
		},
		"sour and stuck": func(r *plan.Request) {
			sour := 3.0
			r.Readings = []plan.Reading{
				{Gravity: 1.027, Temperature: units.Celsius.Of(20)},
				{After: plan.Duration(5 * 24 * 3600e9), Gravity: 1.012, Temperature: units.Celsius.Of(20)},
				{After: plan.Duration(9 * 24 * 3600e9), Gravity: 1.012, Temperature: units.Celsius.Of(20), PH: &sour},
			}
		},
	} {
		req, err := plan.ParseRequest(builtIn)
		if err != nil {
			t.Fatal(err)
		}
		change(&req)
		all[name] = req
	}
	for name, req := range all {
		p, err := plan.Make(req)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		for i, s := range sheet(p, style{}) {
			for _, r := range s.rows {
				if r.relation == "" {
					continue
				}
				label, title := r.label, s.title
				if strings.HasPrefix(title, "Weigh") {
					label += ", " + r.note
				}
				if i == 0 {
					title = ""
				}
				if strings.HasPrefix(title, "Water") {
					label = strings.TrimSpace(label)
				}
				found := false
				for _, want := range reasons {
					in := want.section == title && title == "" || want.section != "" && regexp.MustCompile("^(\\d+ )?("+want.section+")").MatchString(title)
					if in && regexp.MustCompile("^("+want.label+")$").MatchString(label) {
						found = true
						if !strings.Contains(r.relation, want.says) {
							t.Errorf("%s: %s, %s: the reason does not speak of %q: %s", name, s.title, r.label, want.says, r.relation)
						}
					}
				}
				if !found {
					t.Errorf("%s: %s, %s: no reason is listed for it", name, s.title, label)
				}
			}
		}
	}
}
