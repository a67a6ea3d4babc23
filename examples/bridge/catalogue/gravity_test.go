package catalogue_test

import (
	"math"
	"testing"

	"example.org/zymase/examples/bridge/catalogue"
)

// call is one function with inputs by name; the others have their default.
func call(t *testing.T, name string, given map[string]float64) map[string]float64 {
	t.Helper()
	f, err := catalogue.Find(name)
	if err != nil {
		t.Fatal(err)
	}
	in, out := make([]float64, len(f.Inputs)), make([]float64, len(f.Outputs))
	for i, p := range f.Inputs {
		v, ok := given[p.Name]
		if !ok && !p.HasDefault {
			t.Fatalf("%s: %s is not given", name, p.Name)
		}
		if in[i] = v; !ok {
			in[i] = p.Default
		}
	}
	if err := f.Call(in, out); err != nil {
		t.Fatal(name, err)
	}
	got := map[string]float64{}
	for i, o := range f.Outputs {
		got[o.Name] = out[i]
	}
	return got
}

// Before any ferment nothing is gone, whatever the yield (definition: (OE − RE)/OE), and a wash
// that reads what it read at the start has all of its extract left.
func TestBeforeTheFerment(t *testing.T) {
	for yield := range 4 {
		got := call(t, "ferment_from_extracts", map[string]float64{"original_extract": 12, "apparent_extract": 12, "yield": float64(yield)})
		if got["real_attenuation"] != 0 || got["apparent_attenuation"] != 0 || got["strength"] != 0 {
			t.Errorf("yield %d: %v", yield, got)
		}
		now := call(t, "wash_progress", map[string]float64{"original_extract": 12, "gravity": got["original_gravity"], "yield": float64(yield)})
		if !(math.Abs(now["used"]) < 1e-6) {
			t.Errorf("yield %d: %v", yield, now)
		}
	}
}

// Minerals raise reading and floor alike: what is used does not change.
func TestProgressWithMinerals(t *testing.T) {
	without := call(t, "wash_progress", map[string]float64{"original_extract": 7, "gravity": 1.0000, "yield": 1})
	with := call(t, "wash_progress", map[string]float64{"original_extract": 7, "gravity": 1.0004, "yield": 1, "minerals": 0.4 / 0.75})
	if d := with["used"] - without["used"]; math.Abs(d) > 1e-6 {
		t.Errorf("used differs by %v %%", d)
	}
	if d := with["dry_gravity"] - without["dry_gravity"]; math.Abs(d-0.0004) > 1e-9 {
		t.Errorf("the floor rises by %v", d)
	}
	if u := without["dry_gravity_uncertainty"]; !(u > 0.0002 && u < 0.0004) {
		t.Errorf("± %v", u)
	}
}

// The wort factor is 1.04 for malt and 1 for sugar where none is given.
func TestWortFactorByYield(t *testing.T) {
	for yield, factor := range map[float64]float64{0: 1.04, 1: 1, 3: 1} {
		in := map[string]float64{"original_extract": 12, "brix": 6.4, "yield": yield}
		got := call(t, "ferment_from_refractometer", in)["strength"]
		in["wort_factor"] = factor
		if want := call(t, "ferment_from_refractometer", in)["strength"]; got != want {
			t.Errorf("yield %v: %v, with %v %v", yield, got, factor, want)
		}
	}
}
