package plan_test

import (
	"encoding/json"
	"errors"
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// What a request can say in the place of, or beside, volume and strength: each as the fields that it types; null
// takes one out.
var said = map[string]map[string]string{
	"gravity":         {"strength": `null`, "original_gravity": `1.038`},
	"sugar, volume":   {"strength": `null`, "at_hand": `{"sugar": "1.8 kg"}`},
	"sugar, strength": {"volume": `null`, "at_hand": `{"sugar": "1.8 kg"}`},
	"sugar, water":    {"volume": `null`, "strength": `null`, "at_hand": `{"sugar": "1.8 kg", "water": "20 L"}`},
	"water, strength": {"volume": `null`, "at_hand": `{"water": "20 L"}`},
	"apple juice":     {"fermentable": `"apple juice 12 °Bx"`, "buffer": `null`},
	"grape juice":     {"fermentable": `"grape juice 22 °Bx"`, "buffer": `null`},
	"honey":           {"fermentable": `"honey"`, "buffer": `null`},
	"malt":            {"fermentable": `"dry malt extract"`, "buffer": `null`},
	"fruit":           {"fruit": `{"juice": "apple juice 12 °Bx", "part_of_sugar": "30 %"}`, "buffer": `null`},
	"base": {"at_hand": `{"base": {"volume": "10 L", "strength": "11.2 % vol", "gravity": 0.9872, "pH": 3.6, "warmest": "22 °C"}}`,
		"volume": `null`, "fermentable": `null`, "fermenter": `null`, "yeast": `null`, "nutrient": `null`, "buffer": `null`, "kettle": `null`},
	"small kettle":  {"kettle": `{"capacity": "12 L", "boil": "15 min", "boil_off": "3 L/h", "loss": "0.5 L", "top_up": "12 L"}`},
	"smallest":      {"kettle": `{"capacity": "5 L", "boil": "15 min", "boil_off": "1 L/h", "loss": "0 L", "top_up": "18 L"}`},
	"not boiled":    {"kettle": `{"capacity": "12 L", "boil": "0 min", "boil_off": "3 L/h", "loss": "0.5 L", "top_up": "12 L"}`},
	"topped up":     {"kettle.top_up": `"4 L"`},
	"no kettle":     {"kettle": `null`},
	"several":       {"fermenter": `{"capacity": "13 L", "loss": "0.5 L", "temperature": "20 °C", "warmest": "22 °C", "also": [{"capacity": "14 L", "loss": "0.5 L"}]}`},
	"warm":          {"fermenter": `{"capacity": "28 L", "loss": "0.8 L", "temperature": "35 °C", "warmest": "36 °C"}`},
	"portions":      {"sugar_portions": `3`},
	"salts after":   {"water.salts_go": `"after the boil"`},
	"attenuation":   {"yeast.attenuation": `"80 %"`},
	"own yield":     {"yeast.sugar_for_1_percent": `"17.5 g/L"`},
	"own nutrient":  {"nutrient": `{"demand": "medium", "law": "US", "sources": ["club mix"], "own": [{"name": "club mix", "ammonium_nitrogen": "8 %", "phosphorus": "6 %"}]}`},
	"strain":        {"yeast.strain": `{"name": "Ours", "tolerance": "9 % vol", "coldest": "18 °C", "warmest": "30 °C", "demand": "high"}`},
	"distilled":     {"water.report": `"distilled"`},
	"strong":        {"strength": `"12 % vol"`},
	"kegs alone":    {"packs.1": `null`, "packs.0.volume": `"20 L"`},
	"pack strength": {"packs.0.strength": `"4 % vol"`},
	"still":         {"packs.0.co2": `"still"`},
	"sour":          {"acid": `{"what": "citric acid", "when": "after the ferment", "to_pH": 3.3}`},
}

const plainRequest = `{"name": "pairs", "volume": "20 L", "strength": "5 % vol", "place": {"altitude": "640 m"}, "fermentable": "white sugar",
 "water": {"report": {"calcium": "14 mg/L", "sodium": "9 mg/L", "chloride": "11 mg/L", "sulfate": "8 mg/L", "alkalinity": "38 mg/L as CaCO3"}, "pH": 6.9,
  "target": {"calcium": "50 mg/L", "alkalinity": "90 mg/L as CaCO3"}, "salts": ["gypsum", "calcium chloride dihydrate", "baking soda"]},
 "kettle": {"capacity": "30 L", "boil": "15 min", "boil_off": "3 L/h", "loss": "0.5 L"},
 "fermenter": {"capacity": "28 L", "loss": "0.8 L", "temperature": "20 °C", "warmest": "22 °C"}, "yeast": {"form": "dry"},
 "nutrient": {"demand": "medium", "sources": ["diammonium phosphate", "autolysed yeast"], "law": "US"},
 "buffer": {"salt": "potassium bicarbonate", "floor_pH": 3.6},
 "packs": [{"kind": "keg", "volume": "18 L", "size": "19 L", "co2": "2.7 vol", "temperature": "4 °C", "rating": "9 bar gauge"},
  {"kind": "bottle", "volume": "2 L", "size": "0.5 L", "co2": "2.6 vol", "temperature": "8 °C", "rating": "8 bar gauge", "head_space": "4 %",
   "store": "30 °C", "prime_with": "white sugar"}],
 "label": {"law": "EU", "serving": "330 mL"}, "scales": {"sugar": "1 g", "small": "0.1 g"}}`

// type1 types a field into a request, or takes it out.
func type1(node any, path, text string) any {
	key, rest, deeper := strings.Cut(path, ".")
	switch n := node.(type) {
	case map[string]any:
		switch {
		case deeper:
			if n[key] == nil {
				n[key] = map[string]any{}
			}
			n[key] = type1(n[key], rest, text)
		case text == "null":
			delete(n, key)
		default:
			n[key] = json.RawMessage(text)
		}
	case []any:
		i := int(key[0] - '0')
		switch {
		case i >= len(n):
		case deeper:
			n[i] = type1(n[i], rest, text)
		case text == "null":
			return slices.Delete(n, i, i+1)
		}
	case json.RawMessage: // typed by another
		var o any
		if err := json.Unmarshal(n, &o); err == nil {
			return type1(o, path, text)
		}
	}
	return node
}

// Every pair of the ways to say what is wanted is planned and holds what both say, or refused by a field that was typed
// or is missing, in words of a brewer.
func TestEveryPair(t *testing.T) {
	names := slices.Sorted(maps.Keys(said))
	planned := 0
	for i, a := range names {
		for _, b := range names[i:] {
			var tree any
			if err := json.Unmarshal([]byte(plainRequest), &tree); err != nil {
				t.Fatal(err)
			}
			for _, way := range []string{a, b} {
				for _, path := range slices.Sorted(maps.Keys(said[way])) {
					tree = type1(tree, path, said[way][path])
				}
			}
			text, err := json.Marshal(tree)
			if err != nil {
				t.Fatal(err)
			}
			what := a + " and " + b
			r, err := plan.ReadRequest(text)
			var p plan.Plan
			if err == nil {
				p, err = plan.Make(r)
			}
			if err != nil {
				refusedWell(t, what, text, err)
				continue
			}
			planned++
			keepsWord(t, what, r, p)
		}
	}
	if all := len(names) * (len(names) + 1) / 2; planned < all/2 {
		t.Errorf("%d of %d pairs planned", planned, all)
	}
}

func refusedWell(t *testing.T, what string, text []byte, err error) {
	t.Helper()
	e, ok := errors.AsType[*plan.RequestError](err)
	if !ok {
		t.Errorf("%s: %T: %v", what, err, err)
		return
	}
	var at any
	if err := json.Unmarshal(text, &at); err != nil {
		t.Fatal(err)
	}
	typed := true
	for key := range strings.SplitSeq(strings.NewReplacer("[", ".", "]", "").Replace(e.Field), ".") {
		switch n := at.(type) {
		case map[string]any:
			at, typed = n[key], typed && n[key] != nil
		case []any:
			at = n[key[0]-'0']
		}
	}
	if !typed && !strings.HasPrefix(e.Value, "missing") {
		t.Errorf("%s: %v: nobody typed that", what, err)
	}
	for _, bad := range []string{"at most 0.0", "as given", "e+", "no figure fits", "what these packs"} {
		if strings.Contains(err.Error(), bad) {
			t.Errorf("%s: %v", what, err)
		}
	}
}

func keepsWord(t *testing.T, what string, r plan.Request, p plan.Plan) {
	t.Helper()
	within := func(of string, got, want, off float64) {
		t.Helper()
		if !(math.Abs(got-want) <= off) {
			t.Errorf("%s: %s %.5g, asked for %.5g", what, of, got, want)
		}
	}
	if r.Gravity != nil {
		within("original gravity", p.Gravity.Original, *r.Gravity, 0.0002)
	}
	if !r.Volume.IsZero() {
		within("volume", p.Volume.In(units.Litre), r.Volume.In(units.Litre), 1e-9)
	}
	if !r.Strength.IsZero() {
		within("strength", p.Strength.In(units.PercentVolume), r.Strength.In(units.PercentVolume), 0.02)
	}
	if h := r.AtHand; h != nil && h.Sugar != nil {
		within("sugar", sugarIn(p), h.Sugar.In(units.Kilogram), 0.001)
	}
	if h := r.AtHand; h != nil && h.Water != nil {
		within("water", p.Water.Volume.In(units.Litre), h.Water.In(units.Litre), 0.002)
	}
	holds := r.Fermenter.Capacity.In(units.Litre)
	for _, f := range r.Fermenter.Also {
		holds += f.Capacity.In(units.Litre)
	}
	for _, v := range p.Vessels {
		if l := v.Volume.In(units.Litre); strings.HasPrefix(v.When, "fermenter") && l > holds ||
			strings.HasPrefix(v.When, "kettle") && !r.Kettle.Capacity.IsZero() && l > r.Kettle.Capacity.In(units.Litre) {
			t.Errorf("%s: %s: %v", what, v.When, v.Volume)
		}
	}
}

// sugarIn is the fermentable weighed for the wash, a juice by the name of its material.
func sugarIn(p plan.Plan) (kg float64) {
	for _, w := range p.Weigh {
		if w.For == "kettle" || w.For == "dissolved in the water" || strings.HasPrefix(w.For, "fermenter, portion") {
			kg += w.Mass.Quantity().In(units.Kilogram)
		}
	}
	return kg
}
