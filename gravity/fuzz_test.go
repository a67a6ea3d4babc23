package gravity_test

import (
	"math"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/internal/check"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// A fataler is a *testing.T or a *rapid.T.
type fataler interface {
	Helper()
	Fatalf(format string, args ...any)
}

// finite reports a NaN or an infinity anywhere in a result, errors aside.
func finite(t fataler, what string, results ...any) {
	t.Helper()
	failed := false
	for _, r := range results {
		if e, isError := r.(error); isError && e != nil {
			failed = true
			if len(e.Error()) > 500 {
				t.Fatalf("%s: an error of %d bytes", what, len(e.Error()))
			}
		}
	}
	for _, r := range results {
		v := reflect.ValueOf(r)
		if !v.IsValid() {
			continue
		}
		if _, isError := r.(error); isError {
			continue
		}
		walk(t, what, v)
		if failed && v.Kind() == reflect.Struct && !v.IsZero() {
			t.Fatalf("%s: %v beside an error", what, r)
		}
	}
}

func walk(t fataler, what string, v reflect.Value) {
	t.Helper()
	switch v.Kind() {
	case reflect.Float64:
		if x := v.Float(); x-x != 0 {
			t.Fatalf("%s gives %v", what, x)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			walk(t, what, v.Field(i))
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			walk(t, what, v.Index(i))
		}
	}
}

func two[A, B any](a A, b B) []any                  { return []any{a, b} }
func three[A, B, C any](a A, b B, c C) []any        { return []any{a, b, c} }
func four[A, B, C, D any](a A, b B, c C, d D) []any { return []any{a, b, c, d} }

// FuzzEverything: no number given to any exported function makes a panic, a NaN or an
// infinity, or a value beside an error.
func FuzzEverything(f *testing.F) {
	for _, s := range [][5]float64{{10, 20, 5, 3, 1}, {1.048, 25, 4.6, 0, 0.5}, {0, 0, 0, 0, 0}, {-1, 1e300, math.NaN(), math.Inf(1), math.Inf(-1)},
		{80, 100, 100, 40, 1e-300}, {0.79, -20, 1e12, 1e-12, 2}, {789.24, 40, 998, 1.2, 0.03}, {50, 30, 20, 15, 4}} {
		f.Add(s[0], s[1], s[2], s[3], s[4], byte(0))
	}
	f.Fuzz(func(t *testing.T, a, b, c, d, e float64, k byte) { everything(t, a, b, c, d, e, k) })
}

// The same with numbers that are mostly sensible, so that the formulas are reached.
func TestEverythingIsFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		some := rapid.OneOf(
			rapid.Float64Range(-2, 110), rapid.Float64Range(0, 20), rapid.Float64Range(0, 1), rapid.Float64Range(0.78, 1.42),
			rapid.Float64Range(700, 1500), rapid.Float64(),
			rapid.SampledFrom([]float64{0, -1, math.NaN(), math.Inf(1), math.Inf(-1), 1e12, 1e15, 1e-300, 5e-324, 20, 100, 1.048, 0.99, 80, 40, 1e-9}))
		everything(t, some.Draw(t, "a"), some.Draw(t, "b"), some.Draw(t, "c"), some.Draw(t, "d"), some.Draw(t, "e"), rapid.Byte().Draw(t, "k"))
	})
}

func everything(t fataler, a, b, c, d, e float64, k byte) {
	sugar, ref := gravity.Sugar(int(k%8)-1), gravity.Reference(int(k%9)-1)
	yields := []gravity.Yield{{}, gravity.BallingYield(), gravity.SugarWashYield(sugar), gravity.StoichiometricYield(sugar)}
	y := yields[int(k)%len(yields)]
	air := gravity.Air(k % 2)

	finite(t, "WaterDensity", two(gravity.WaterDensity(celsius(a)))...)
	finite(t, "WaterDensityTanaka", two(rival.WaterDensityTanaka(celsius(a)))...)
	finite(t, "WaterDensityKell", two(rival.WaterDensityKell(celsius(a)))...)
	finite(t, "EthanolDensity", two(gravity.EthanolDensity(massPct(a), celsius(b)))...)
	finite(t, "EthanolStrength", two(gravity.EthanolStrength(kgm3(a), celsius(b)))...)
	finite(t, "ByVolume", gravity.ByVolume(massPct(a)), gravity.ByMass(volPct(a)), label.Strength(volPct(a)))
	finite(t, "SucroseDensity", two(gravity.SucroseDensity(plato(a), celsius(b)))...)
	finite(t, "SucroseExtract", two(gravity.SucroseExtract(kgm3(a), celsius(b)))...)
	finite(t, "SugarDensity", two(sugar.Density(plato(a), celsius(b)))...)
	finite(t, "FromSG", two(gravity.FromSG(a))...)
	finite(t, "FromExtract", two(gravity.FromExtract(plato(a)))...)
	finite(t, "FromDensity", two(gravity.FromDensity(kgm3(a)))...)
	finite(t, "FromBaume", two(gravity.FromBaume(a))...)
	finite(t, "FromReference", two(gravity.FromReference(a, ref, air))...)
	finite(t, "FromDensityAt", two(gravity.FromDensityAt(kgm3(a), volPct(c), celsius(b)))...)
	if g, err := gravity.FromSG(a); err == nil {
		finite(t, "Gravity", g.SG(), g.Points(), g.Extract(), g.Density(), g.Oechsle(), g.Baume(), g.BaumeUS(), g.SakeMeter(), g.ScaleMethods())
		finite(t, "As", two(g.As(ref, air))...)
		h, err := gravity.FromSG(b)
		if err == nil {
			finite(t, "SpiritIndication", two(gravity.SpiritIndication(g, h))...)
		}
	}
	finite(t, "DensityInAir", two(gravity.DensityInAir(kgm3(a)))...)
	finite(t, "DensityInVacuum", two(gravity.DensityInVacuum(kgm3(a)))...)
	for name, m := range map[string]func(float64) (units.Extract, error){"BrixNBS": rival.BrixNBS, "PlatoASBC": rival.PlatoASBC,
		"PlatoLincoln": rival.PlatoLincoln, "BrixLinear": rival.BrixLinear, "PlatoHyperbola": rival.PlatoHyperbola, "BrixFromIndex": gravity.BrixFromIndex,
		"BrixFromIndexPolynomial": rival.BrixFromIndexPolynomial} {
		finite(t, name, two(m(a))...)
	}
	finite(t, "RefractiveIndex", two(gravity.RefractiveIndex(plato(a)))...)
	finite(t, "RefractometerCorrectionCRC", two(rival.RefractometerCorrectionCRC(plato(a), celsius(b)))...)
	finite(t, "RefractometerCorrectionOIV", two(rival.RefractometerCorrectionOIV(plato(a), celsius(b)))...)
	finite(t, "ExtractConcentration", two(gravity.ExtractConcentration(plato(a), celsius(b)))...)
	finite(t, "ExtractFromConcentration", two(gravity.ExtractFromConcentration(mgL(a), celsius(b)))...)
	finite(t, "OriginalExtractBalling", two(rival.OriginalExtractBalling(massPct(a), plato(b)))...)
	finite(t, "StrengthBalling", two(rival.StrengthBalling(plato(a), plato(b)))...)
	finite(t, "RealExtractBalling", two(rival.RealExtractBalling(plato(a), massPct(b)))...)
	finite(t, "StrengthCutaiaReal", two(rival.StrengthCutaiaReal(plato(a), plato(b)))...)
	finite(t, "OriginalExtract", two(y.OriginalExtract(massPct(a), plato(b)))...)
	finite(t, "NewYield", two(newYield(a, b, c, d, e))...)
	for name, m := range map[string]func(a, b units.Extract) (rival.Attenuated, error){"tables": rival.AttenuatedBallingTables,
		"handbook": rival.AttenuatedHandbook, "MEBAK": rival.AttenuatedMEBAK, "Cutaia": rival.AttenuatedCutaia, "Doemens": rival.AttenuatedDoemens} {
		finite(t, name, two(m(plato(a), plato(b)))...)
	}
	finite(t, "StrengthMethods", two(gravity.StrengthMethods(plato(a), plato(b)))...)
	for name, m := range map[string]func() (gravity.Fermentation, error){
		"FromOriginalAndApparent": func() (gravity.Fermentation, error) { return gravity.FromOriginalAndApparent(plato(a), plato(b), y) },
		"FromOriginalAndReal":     func() (gravity.Fermentation, error) { return gravity.FromOriginalAndReal(plato(a), plato(b), y) },
		"FromOriginalAndStrength": func() (gravity.Fermentation, error) { return gravity.FromOriginalAndStrength(plato(a), volPct(b), y) },
		"FromOriginalAndBrix":     func() (gravity.Fermentation, error) { return gravity.FromOriginalAndBrix(plato(a), plato(b), 1, y) },
		"FromApparentAndStrength": func() (gravity.Fermentation, error) { return gravity.FromApparentAndStrength(plato(a), volPct(b), y) },
		"FromStrengthAndReal":     func() (gravity.Fermentation, error) { return gravity.FromStrengthAndReal(volPct(a), plato(b), y) },
		"FromApparentAndBrix":     func() (gravity.Fermentation, error) { return gravity.FromApparentAndBrix(plato(a), plato(b), 1, y) },
	} {
		state, err := m()
		finite(t, name, state, err)
		if err == nil {
			finite(t, name, state.ApparentAttenuation(), state.RealAttenuation(), state.RealDegreeOfFermentation(), state.Fermented(),
				state.OriginalExtract(), state.ApparentExtract(), state.RealExtract(), state.ByMass(), state.ByVolume())
		}
	}
	h := gravity.Hydrometer{Reference: ref}
	finite(t, "Hydrometer.Correct", two(h.Correct(a, volPct(c), celsius(b)))...)
	finite(t, "Pycnometer", two(gravity.Pycnometer(kg(a), kg(b), kg(c), celsius(d)))...)
	finite(t, "DistillateStrength", two(gravity.DistillateStrength(litre(a), litre(b), kgm3(c), celsius(d)))...)
	finite(t, "StandardDrinks", two(label.StandardDrink(int(k%5)-1).Count(volPct(b), litre(a)))...)
	finite(t, "LabelTolerance", two(label.Category(int(k%8)-1).Tolerance(volPct(a)))...)
	finite(t, "RoundCaloriesUS", two(label.RoundCaloriesUS(check.Kilocalorie(a)))...)

	s, err := gravity.NewSolution(kg(a), kg(b), kg(c))
	finite(t, "NewSolution", s, err)
	if err != nil {
		return
	}
	if x, err := s.AddExtract(sugar, kg(d)); err == nil {
		s = x
	}
	u, _ := s.DensityUncertainty()
	finite(t, "SpecificGravity", two(s.SpecificGravity(ref, air))...)
	finite(t, "figures", u, s.Water(), s.Extract(), s.ExtractOf(sugar), s.Fermentable(), s.Ethanol(), s.Mass(), s.RealExtract(),
		s.ByMass(), s.ByVolume(), s.Gravity(), label.EnergyEU(s), label.NutritionOf(s), s.Concentration(sugar), s.WashYield())
	finite(t, "Density", two(s.Density(celsius(d)))...)
	finite(t, "Volume", two(s.Volume(celsius(d)))...)
	finite(t, "Reading", two(h.Reading(s, celsius(d)))...)
	finite(t, "RefractiveIndex", two(s.RefractiveIndex())...)
	finite(t, "RefractometerBrix", two(s.RefractometerBrix())...)
	finite(t, "EnergyUS", two(label.EnergyUS(s, percent(e)))...)
	finite(t, "AddWater", two(s.AddWater(kg(d)))...)
	finite(t, "AddSugar", two(s.AddSugar(kg(d)))...)
	finite(t, "AddEthanol", two(s.AddEthanol(kg(d)))...)
	finite(t, "BoilOff", two(s.BoilOff(kg(d)))...)
	finite(t, "Take", two(s.Take(percent(d)))...)
	finite(t, "Remaining", two(s.Remaining(percent(d)))...)
	finite(t, "Times", two(s.Times(d))...)
	finite(t, "TakeVolume", three(s.TakeVolume(litre(d), celsius(e)))...)
	finite(t, "DiluteTo", three(s.DiluteTo(volPct(d)))...)
	finite(t, "Ferment", three(s.Ferment(kg(d), y))...)
	finite(t, "Dry", three(s.Dry(y))...)
	finite(t, "FromWeightLost", three(s.FermentByWeight(kg(d), gCO2(e), y))...)
	if g, err := gravity.FromSG(d); err == nil {
		finite(t, "At", two(s.At(g, y))...)
	}
	o, err := gravity.NewSolution(kg(d), kg(e), kg(a))
	if err != nil {
		return
	}
	finite(t, "Plus", two(s.Plus(o))...)
	finite(t, "FortifyTo", three(s.FortifyTo(volPct(e), o))...)
	finite(t, "BlendToStrength", four(gravity.BlendToStrength(s, o, volPct(e), litre(b)))...)
	water, err := gravity.NewSolution(kg(1), kg(0), kg(0))
	finite(t, "water", water, err)
	finite(t, "BlendToStrengthAndExtract", three(gravity.BlendToStrengthAndExtract(s, o, water, volPct(e), plato(d), litre(b)))...)
}
