package plan_test

import (
	"encoding/json"
	"errors"
	"math/rand/v2"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// What people write into a field: usual, at an edge, far off, or in another unit.
var written = map[string][]string{
	"volume":         {"60 L", "1 L", "0.33 mL", "1000 hL", "5 gal US", "20000 L"},
	"strength":       {"4.6 % vol", "0.5 % vol", "15 % vol", "12 % vol", "23.71990533730591 % vol", "0.1 % vol"},
	"place.altitude": {"640 m", "-500 m", "5000 m", "3000 m", "9000 m"},
	"fermentable": {"white sugar", "dextrose monohydrate", "fructose", "invert sugar syrup", "honey", "dry malt extract",
		"juice 12 °Bx", "juice 5 °Bx", "maltodextrin", "lactose"},
	"water.report.calcium":    {"14 mg/L", "0 mg/L", "400 mg/L", "20 g/L", "50 g/L"},
	"water.report.sodium":     {"9 mg/L", "0 mg/L", "900 mg/L", "30 g/L", "50 g/L", "60 g/L"},
	"water.report.chloride":   {"11 mg/L", "0 mg/L", "700 mg/L", "30 g/L", "50 g/L"},
	"water.report.sulfate":    {"8 mg/L", "0 mg/L", "700 mg/L", "30 g/L"},
	"water.report.alkalinity": {"38 mg/L as CaCO3", "0 mg/L as CaCO3", "300 mg/L as CaCO3", "5000 mg/L as CaCO3", "40000 mg/L as CaCO3"},
	"water.target.calcium":    {"50 mg/L", "0 mg/L", "1000 mg/L", "20 g/L", "50 g/L"},
	"water.target.sodium":     {"30 mg/L", "0 mg/L", "1000 mg/L", "50 g/L", "49 g/L"},
	"water.target.alkalinity": {"90 mg/L as CaCO3", "0 mg/L as CaCO3", "5000 mg/L as CaCO3", "60000 mg/L as CaCO3"},
	"water.pH":                {"6.9", "4", "11", "12"},
	"kettle.capacity":         {"80 L", "1 L", "200 L", "200000 L", "60 L"},
	"kettle.boil":             {"15 min", "0 min", "6 h", "7 h", "1 s"},
	"kettle.boil_off":         {"5 L/h", "0 L/h", "100 L/h", "1000 L/h"},
	"kettle.loss":             {"0.8 L", "0 L", "40 L", "79.9 L"},
	"fermenter.capacity":      {"75 L", "60 L", "1000 L", "0.33 mL"},
	"fermenter.loss":          {"1.5 L", "0 L", "40 L", "75 L"},
	"fermenter.temperature":   {"20 °C", "4 °C", "38 °C", "5 °C", "35 °C", "39 °C"},
	"fermenter.warmest":       {"22 °C", "0 °C", "40 °C", "20 °C"},
	"yeast.form":              {"dry", "liquid", "none"},
	"nutrient.demand":         {"low", "medium", "high"},
	"nutrient.law":            {"EU", "US"},
	"buffer.floor_pH":         {"3.6", "2.5", "5", "3", "4.5", "4.9"},
	"buffer.salt":             {"potassium bicarbonate", "sodium bicarbonate", "tripotassium citrate monohydrate"},
	"packs.0.size":            {"20 L", "0.05 L", "40 L", "19.99 L", "0.33 mL", "60 L"},
	"packs.0.co2":             {"3.0 vol", "0.5 vol", "6 vol", "7.5 vol", "12 g/L", "0.1 g/L"},
	"packs.0.temperature":     {"4 °C", "-2 °C", "40 °C", "25 °C"},
	"packs.0.rating":          {"9 bar gauge", "0.1 bar gauge", "300 bar gauge", "2 bar gauge"},
	"packs.1.size":            {"0.33 L", "0.05 L", "20 L", "0.75 L"},
	"packs.1.co2":             {"2.8 vol", "0.5 vol", "6 vol", "still", "0.9 vol"},
	"packs.1.temperature":     {"6 °C", "-2 °C", "40 °C"},
	"packs.1.head_space":      {"4 %", "0.5 %", "50 %", "0.1 %", "1 %"},
	"packs.1.store":           {"35 °C", "0 °C", "70 °C", "71 °C"},
	"packs.1.prime_with":      {"white sugar", "fructose", "honey", "invert sugar syrup", "lactose", "maltodextrin"},
	"flavour.sample":          {"200 mL", "1 mL", "100 L", "0.33 mL"},
	"flavour.added":           {"0.6 mL", "0.0001 mL", "40 mL", "20 mL", "41 mL"},
	"flavour.strength":        {"40 % vol", "0 % vol", "96.5 % vol", "96 % vol", "100 % vol"},
	"label.law":               {"EU", "US"},
	"label.serving":           {"330 mL", "10 mL", "5 L", "0.33 mL"},
	"scales.sugar":            {"10 g", "0.001 g", "1 kg", "100 g"},
	"scales.small":            {"0.1 g", "0.001 g", "1 kg", "5 g", "100 g"},
}

// put writes a field of a JSON tree by its path.
func put(node any, path, text string) {
	key, rest, deeper := strings.Cut(path, ".")
	var at any
	switch n := node.(type) {
	case map[string]any:
		if !deeper {
			n[key] = text
			if strings.HasSuffix(path, "pH") {
				n[key] = json.Number(text)
			}
			return
		}
		at = n[key]
	case []any:
		at = n[key[0]-'0']
	}
	put(at, rest, text)
}

// Each refusal names a field of the request, in which no function, no search and no
// digits of an exponent show, and says nothing that contradicts itself.
func TestRefusalsOfRandomRequests(t *testing.T) {
	g := rand.New(rand.NewPCG(31, 7))
	var paths []string
	for p := range written {
		paths = append(paths, p)
	}
	slices.Sort(paths)
	for range 600 {
		said := map[string]string{}
		for range 1 + g.IntN(4) {
			p := paths[g.IntN(len(paths))]
			said[p] = written[p][g.IntN(len(written[p]))]
		}
		plannedOrRefused(t, said)
	}
	for _, said := range []map[string]string{
		{"water.report.sodium": "30 g/L"}, {"water.report.sodium": "50 g/L"}, {"water.report.calcium": "50 g/L"},
		{"water.target.sodium": "49 g/L"}, {"water.target.sodium": "50 g/L"}, {"water.report.alkalinity": "40000 mg/L as CaCO3"},
		{"packs.1.prime_with": "lactose"}, {"flavour.added": "40 mL", "flavour.strength": "96 % vol"}, {"flavour.added": "40 mL", "fermentable": "fructose"},
	} {
		if plannedOrRefused(t, said) {
			t.Errorf("%v: planned", said)
		}
	}
}

// A water that is too strong is the water's fault, not the boil's or the nutrient's.
func TestRefusalBlamesTheWater(t *testing.T) {
	for _, ion := range []string{"sodium", "chloride", "sulfate"} {
		_, err := planned(t, map[string]string{"water.report." + ion: "30 g/L"})
		if e, ok := errors.AsType[*plan.RequestError](err); !ok || !strings.HasPrefix(e.Field, "water") {
			t.Errorf("30 g/L of %s: %v", ion, err)
		}
	}
}

// Where the buffer is needed only if chalk drops out, nothing of 0.0 g is advised.
func TestNoFirstDoseOfNothing(t *testing.T) {
	p, err := planned(t, map[string]string{"water.target.alkalinity": "215 mg/L as CaCO3"})
	if err != nil || !p.Acidity.ByMeter {
		t.Fatal(err, p.Acidity)
	}
	said := strings.Join(p.Cautions, " ")
	if strings.Contains(said, " 0.0 g") || !strings.Contains(said, "add none at first") {
		t.Error(said)
	}
}

// A refusal shows a quantity as it was typed, while it is that of the request.
func TestRefusalEchoesWhatWasTyped(t *testing.T) {
	for path, want := range map[string]string{
		"fermenter.capacity": "0.33 mL: 1 to 200000 L", "kettle.capacity": "13 US gal: at least ", "volume": "7.9 hL: ",
		"place.altitude": "30000 ft: -500 to 5000 m", "strength": "0 % vol: 0.5 to 15 % vol",
	} {
		typed, _, _ := strings.Cut(want, ":")
		_, err := planned(t, map[string]string{path: typed})
		if e, ok := errors.AsType[*plan.RequestError](err); !ok || (e.Field == path) && !strings.HasPrefix(e.Error(), path+": "+want) {
			t.Errorf("%s: %v", path, err)
		}
	}
	r := request(t)
	r.Volume = units.Millilitre.Of(2)
	if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "volume: 0.002 L: ") {
		t.Errorf("changed after it was read: %v", err)
	}
}

// planned makes the built-in plan with some fields written otherwise.
func planned(t *testing.T, said map[string]string) (plan.Plan, error) {
	t.Helper()
	var tree any
	if err := json.Unmarshal(builtIn(t), &tree); err != nil {
		t.Fatal(err)
	}
	for p, v := range said {
		put(tree, p, v)
	}
	text, err := json.Marshal(tree)
	if err != nil {
		t.Fatal(err)
	}
	r, err := plan.ReadRequest(text)
	if err != nil {
		return plan.Plan{}, err
	}
	return plan.Make(r)
}

var (
	aRange  = regexp.MustCompile(`: (-?[0-9.]+)([^:0-9]*): (-?[0-9.]+) to (-?[0-9.]+)`)
	atLeast = regexp.MustCompile(`: ([0-9.]+) L: at least ([0-9.]+) L`)
	ofCode  = regexp.MustCompile(`numeric|sign change|convergence|\b(?:gravity|water|carbonation|nutrient|units)\.[A-Z]|[0-9]e[+-]?[0-9]|NaN|Inf|[0-9]\.[0-9]{9}|[0-9]m0s`)
	aField  = regexp.MustCompile(`^[a-z0-9_.\[\]]+(?:pH)?: `)
)

func plannedOrRefused(t *testing.T, said map[string]string) bool {
	t.Helper()
	_, err := planned(t, said)
	if err == nil {
		return true
	}
	if _, ok := errors.AsType[*plan.RequestError](err); !ok || !aField.MatchString(err.Error()) || ofCode.MatchString(err.Error()) {
		t.Errorf("%v:\n%v", said, err)
	}
	number := func(s string) float64 {
		x, err := strconv.ParseFloat(s, 64)
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
	if m := aRange.FindStringSubmatch(err.Error()); m != nil && strings.HasSuffix(err.Error(), m[2]) && number(m[1]) >= number(m[3]) &&
		number(m[1]) <= number(m[4]) {
		t.Errorf("%v:\n%v: inside", said, err)
	}
	if m := atLeast.FindStringSubmatch(err.Error()); m != nil && number(m[1]) >= number(m[2]) {
		t.Errorf("%v:\n%v: as much", said, err)
	}
	return false
}
