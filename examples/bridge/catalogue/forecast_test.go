package catalogue

import (
	"math"
	"testing"
)

// Without readings the forecast is the plan's: wide, a factor of two either way and more; with
// those of the wort at 15 °C of Foster et al. 2022 (supplementary fig. S1, printed gravities to
// the third day: 1.0429, 1.0417, 1.0416, 1.0395, 1.0363, 1.0321, 1.0238) it narrows, and the
// gravity that was printed for the fifth day, 1.0116, comes before the day it is dry.
func TestFermentForecast(t *testing.T) {
	f, err := Find("ferment_forecast")
	if err != nil {
		t.Fatal(err)
	}
	ask := func(set map[string]float64) map[string]float64 {
		in, out := make([]float64, len(f.Inputs)), make([]float64, len(f.Outputs))
		for i, p := range f.Inputs {
			if in[i] = p.Default; !p.HasDefault {
				in[i] = p.Example
			}
		}
		for name, v := range set {
			i, ok := f.Input(name)
			if !ok {
				t.Fatal(name)
			}
			in[i] = v
		}
		if err := f.Call(in, out); err != nil {
			t.Fatal(err)
		}
		got := map[string]float64{}
		for i, o := range f.Outputs {
			got[o.Name] = out[i]
		}
		return got
	}
	wort := map[string]float64{"sugar": 82.24, "nitrogen": 200, "temperature": 15, "original": 1.0429, "end": 1.0064, "yeast": 0.48}
	plan := ask(wort)
	if wide := plan["dry_high_90"] / plan["dry_low_90"]; wide < 4 {
		t.Errorf("without readings within a factor of %.1f", wide)
	}
	for i, r := range [][2]float64{{6, 1.0417}, {12, 1.0416}, {24, 1.0395}, {36, 1.0363}, {48, 1.0321}, {72, 1.0238}} {
		n := string(rune('1' + i))
		wort["hour_"+n], wort["gravity_"+n] = r[0], r[1]
	}
	read := ask(wort)
	if wide := read["dry_high_90"] / read["dry_low_90"]; wide > 2.6 {
		t.Errorf("with six readings within a factor of %.1f", wide)
	}
	// A third is 1.0307 of the printed gravities: between the second and the third day.
	if third := read["third"]; third < 1.9 || third > 2.7 {
		t.Errorf("a third after %.2f d", third)
	}
	if dry := read["dry"]; dry < 5 || dry > 12 {
		t.Errorf("dry after %.1f d", dry)
	}
	if d := read["settled"] - read["dry"]; math.Abs(d-3) > 1e-9 {
		t.Errorf("unchanged %.2f d after dry", d)
	}
}
