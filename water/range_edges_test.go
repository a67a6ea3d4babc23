package water

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Each refusal prints the range that the documentation of the function gives.
func TestRangesPrinted(t *testing.T) {
	known := reports[0].equilibrium(t, 20).Water()
	unknown := reports[0].profile(t, 20)
	dry, l := litres(0), litres(1)
	aim := []Target{Calcium.Aim(mgL(50))}
	gyp := []Stock{{Salt: material.Gypsum()}}
	aims := func(n int) []Target { return make([]Target, n) }
	salter := func(s []Stock, a []Target, limits ...Bound) error {
		_, err := newSalter("f", s, a, limits...)
		return err
	}
	acidPH := func(p Profile, ph float64, loss CO2Loss) error {
		_, err := p.AcidToPH(LacticAcid, ph, l, loss)
		return err
	}
	sold := func(percent, density float64) error {
		d, _ := units.KilogramPerCubicMetre.Try(density)
		w, _ := units.Percent.Try(percent)
		_, err := LacticAcid.AsSold(w, d)
		return err
	}
	wash := func(w Totals) error { _, err := washPH(w, celsius(20)); return err }
	second := func(_ any, err error) error { return err }
	first := func(p Profile, err error) error {
		if p != (Profile{}) {
			t.Errorf("%v beside an error", p)
		}
		return err
	}
	scale := func(text string) error {
		_, err := Request{unknown, l, gyp, aim, nil}.SolveSteps(exactGrams(t, text))
		return err
	}
	for name, r := range map[string]struct {
		err      error
		min, max float64
	}{
		"acid, volume":         {first(known.AddAcid(LacticAcid, units.Amount{}, dry)), 1e-6, 1e12},
		"acid to pH, volume":   {second(known.AcidToPH(LacticAcid, 5, dry, CO2Loss{})), 1e-6, 1e12},
		"acid to alk, volume":  {second(known.AcidToAlkalinity(LacticAcid, caco3(1), dry)), 1e-6, 1e12},
		"base to alk, volume":  {second(known.BaseToAlkalinity(material.BakingSoda(), caco3(200), dry)), 1e-6, 1e12},
		"base to pH, volume":   {second(known.BaseToPH(material.BakingSoda(), 8, dry)), 1e-6, 1e12},
		"chlorine, volume":     {second(known.Dechlorinate(shelf.Material("ascorbic acid"), FreeChlorine(mgL(1), AsCl2), dry)), 1e-6, 1e12},
		"salter, volume":       {second(Request{known, dry, gyp, aim, nil}.Solve()), 1e-6, 1e12},
		"acid, amount":         {first(known.AddAcid(LacticAcid, units.Mole.Of(2), l)), 0, 1000},
		"membrane, share":      {first(known.Permeate(units.Percent.Of(101))), 0, 1},
		"acid, pH":             {acidPH(known, 1.99, CO2Loss{}), 2, known.ph + 1e-9},
		"acid, pH with gas":    {acidPH(known, 1.99, CO2LostTo(AirCO2(units.Atmosphere{}))), 2, 14},
		"acid, dose":           {acidPH(known, 2, CO2Loss{}), 0, 0.5},
		"acid, pressure":       {acidPH(known, 5, CO2LostTo(units.Kilopascal.Of(1000.1))), 0, 1000},
		"pressure":             {second(known.Under(units.Kilopascal.Of(1000.1))), 0, 1000},
		"measured pH":          {first(known.WithPH(1.99)), 2, 12},
		"carbon":               {second(known.Closed(mmolL(1000.1))), 0, 1000},
		"base, pH":             {second(known.BaseToPH(material.SodiumHydroxide(), 12.51, l)), known.ph, 12.5},
		"base, none":           {second(known.BaseToPH(material.Gypsum(), 8, l)), 1e-3, 100},
		"base, alkalinity":     {second(known.BaseToAlkalinity(material.BakingSoda(), caco3(50044), l)), known.alk, 1000},
		"acid, alkalinity":     {second(known.AcidToAlkalinity(LacticAcid, caco3(150), l)), -1000, known.alk},
		"dilution":             {second(known.DilutionFor(Calcium, mgL(61))), 0, 60},
		"chlorine":             {second(known.Dechlorinate(shelf.Material("ascorbic acid"), FreeChlorine(mgL(101), AsCl2), l)), 0, 100},
		"temperature":          {first(known.AtTemperature(celsius(101))), 0, 100},
		"profile, temperature": {first(NewProfile(celsius(-1), caco3(1))), 0, 100},
		"profile, alkalinity":  {first(NewProfile(celsius(1), caco3(51000))), -1000, 1000},
		"profile, ion":         {first(NewProfile(celsius(1), caco3(1), Calcium.At(mgL(50001)))), 0, 50000},
		"constants":            {second(Distilled(celsius(91))), 0, 90},
		"salt, mass":           {first(known.Add(l, material.Gypsum().Dose(grams(50.1)))), 0, 50},
		"titration, end":       {second(known.TitratableAcidity(Titration{3, LacticAcid})), 4, 10},
		"acidity":              {second(ConvertAcidity(units.MassConcentration{}.Minus(mgL(1)), LacticAcid, LacticAcid)), 0, math.MaxFloat64},
		"sold, share":          {sold(0, 1000), 0.01, 100},
		"sold, density":        {sold(50, 1), 900, 2000},
		"scale, light":         {scale("0.0000001 g"), 1e-6, 1e6},
		"scale, heavy":         {scale("1000001 g"), 1e-6, 1e6},
		"no salts":             {salter(nil, aim), 1, 16},
		"many salts":           {salter(make([]Stock, 17), aim), 1, 16},
		"no targets":           {salter(gyp, nil), 1, 16},
		"many targets":         {salter(gyp, aims(17)), 1, 16},
		"many limits":          {salter(gyp, aim, make([]Bound, 17)...), 0, 16},
		"twice":                {salter([]Stock{gyp[0], gyp[0]}, aim), 0, 1},
		"stock":                {salter([]Stock{{material.Gypsum(), units.Mass{}.Minus(grams(1))}}, aim), 0, math.MaxFloat64},
		"weight":               {salter(gyp, []Target{{Calcium, mgL(1), mgL(1), 1.01e6}}), 0, 1e6},
		"target":               {salter(gyp, []Target{Calcium.Aim(mgL(50001))}), 0, 50000},
		"target, upper":        {salter(gyp, []Target{Calcium.Between(mgL(5), mgL(50001))}), 5, 50000},
		"factor":               {salter(gyp, aim, SulfateToChloride(0, 1.01e6)...), -1e6, 1e6},
		"limit, low":           {salter(gyp, aim, Calcium.AtLeast(mgL(50001))), math.Inf(-1), 50000},
		"limit, high":          {salter(gyp, aim, HardnessBetween(caco3(3), caco3(2))), 3, math.Inf(1)},
		"wash, charge":         {wash(Totals{StrongIons: mEqL(1001)}), -1000, 1000},
		"wash, acid":           {wash(Totals{Lactate: mmolL(1001)}), 0, 1000},
		"wash, others":         {wash(Totals{Others: mmolL(1001)}), 0, 1000},
		"wash, strength":       {wash(Totals{Others: mmolL(600)}), 0, 0.5},
	} {
		var re *units.RangeError
		if !errors.As(r.err, &re) {
			t.Errorf("%s: %v", name, r.err)
		} else if !(re.Min == r.min && math.Abs(re.Max-r.max) <= 1e-12*math.Abs(r.max) || re.Min == r.min && re.Max == r.max) {
			t.Errorf("%s: %v", name, re)
		}
	}
	// What was named twice was named two times.
	var re *units.RangeError
	if err := salter([]Stock{gyp[0], gyp[0]}, aim); !errors.As(err, &re) || re.Value != 2 {
		t.Error(err)
	}
	// The factor at the end of its range, and the weight, are taken.
	if err := salter(gyp, []Target{{Calcium, mgL(1), mgL(1), 1e6}}, SulfateToChloride(0, 1e6)...); err != nil {
		t.Error(err)
	}
}

// A report's forms and ends, and what comes beside an error: nothing.
func TestNothingBesideAnError(t *testing.T) {
	for what, v := range map[string]func() (float64, error){
		"ion":  func() (float64, error) { i, err := ParseIon("gold"); return float64(i), err },
		"acid": func() (float64, error) { a, err := ParseAcid("aqua regia"); return float64(a), err },
		"wash": func() (float64, error) { return washPH(Totals{Others: mmolL(700)}, celsius(20)) },
		"buffer": func() (float64, error) {
			b, err := washBuffer(Totals{Others: mmolL(700)}, celsius(20))
			return b.In(units.MilliequivalentPerLitre), err
		},
		"reading, ion":   func() (float64, error) { return ReportLine{Ion(99), 1, AsIon}.millimoles("") },
		"reading, value": func() (float64, error) { return ReportLine{Calcium, -1, AsIon}.millimoles("") },
		"reading, form":  func() (float64, error) { return ReportLine{Calcium, 1, AsSulfur}.millimoles("") },
	} {
		if got, err := v(); err == nil || got != 0 {
			t.Errorf("%s: %v, %v", what, got, err)
		}
	}
	if !(Profile{}).Ion(Ion(99)).IsZero() || !(Profile{}).Ion(Ion(-1)).IsZero() {
		t.Error("an unknown ion has a content")
	}
	if _, known := (Profile{}).PH(); known {
		t.Error("the pH of the zero profile is known")
	}
}
