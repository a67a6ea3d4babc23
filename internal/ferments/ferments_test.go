package ferments

import (
	"math"
	"slices"
	"strings"
	"testing"
)

func all(t *testing.T) map[string]Series {
	t.Helper()
	list, err := All()
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]Series{}
	for _, s := range list {
		if _, twice := out[s.Name]; twice {
			t.Errorf("%s stands twice", s.Name)
		}
		out[s.Name] = s
	}
	return out
}

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: got %.6g, want %.6g ± %g", what, got, want, within)
	}
}

// Every series begins at nothing used, goes forward in time, has a start that a ferment can have, and says what of it is
// assumed; replicates of one yeast or temperature are one cluster.
func TestSeriesAreFerments(t *testing.T) {
	series := all(t)
	if len(series) != 41 {
		t.Errorf("%d series", len(series))
	}
	clusters := map[string]int{}
	for name, s := range series {
		clusters[s.Cluster]++
		if len(s.Hours) != len(s.Used) || len(s.Hours) < 6 || s.Hours[0] != 0 || s.Used[0] != 0 || !slices.IsSorted(s.Hours) {
			t.Errorf("%s: %v, %v", name, s.Hours, s.Used)
		}
		if s.Source == "" || s.Assumed == "" || s.Celsius < 10 || s.Celsius > 45 || s.SugarGramPerLitre < 50 || s.NitrogenMilligramPerLitre < 100 ||
			s.YeastGramPerLitre <= 0 {
			t.Errorf("%+v", s)
		}
		for i, u := range s.Used {
			if u < -0.05 || u > 1.2 { // gravities and weights scatter
				t.Errorf("%s: %v used after %v h", name, u, s.Hours[i])
			}
		}
	}
	for cluster, n := range map[string]int{"foster2022_12C": 3, "foster2022_15C": 3, "foster2022_30C": 3, "foster2022_42C": 3,
		"tyrell2013_extract": 1, "montpellier2023_C01": 4, "montpellier2023_C15": 4} {
		if clusters[cluster] != n {
			t.Errorf("%s: %d series, want %d", cluster, clusters[cluster], n)
		}
	}
	if len(clusters) != 4+1+7 {
		t.Errorf("clusters %v", clusters)
	}
}

// What the sources print, turned by hand into a share used.
func TestSharesByHand(t *testing.T) {
	series := all(t)
	at := func(name string, hour float64) float64 {
		t.Helper()
		s := series[name]
		i := slices.Index(s.Hours, hour)
		if i < 0 {
			t.Fatalf("%s has no reading at %v h", name, hour)
		}
		return s.Used[i]
	}
	// Foster et al. 2022: from 1.0429 to 1.0238, where the same wort went down to 1.0064.
	near(t, "half a lager", at("foster2022_Cali_15C", 72), (1.0429-1.0238)/(1.0429-1.0064), 1e-9)
	near(t, "the end of the wort", at("foster2022_Kolsch_30C", 120), 1, 1e-9)
	near(t, "stopped by heat", at("foster2022_VT_42C", 120), (1.0448-1.0349)/(1.0448-1.0064), 1e-9)
	// Tyrell et al. 2013 print the share themselves.
	near(t, "as printed", at("tyrell2013_extract", 48), 0.594, 0)
	// 200 g/L of hexose weigh 200·2·44.009/180.156 = 97.71 g less as CO2 alone, 96.5 % of which is 94.29 g (Gay-Lussac; the
	// yield of a wine as in nutrient's balance).
	near(t, "weight lost", at("montpellier2023_C03_r1", 45.01), 66.95/(200*2*44.009/180.156*0.965), 5e-4)
}

// What was known at the start: a wort of 12 °P, 1.2·10⁷ and 9.96·10⁶ cells a millilitre; a must of 200 g/L with 425 mg/L of
// nitrogen, a million cells a millilitre at 24 °C. A cell weighs 4·10⁻¹¹ g (Coleman, Fish & Block 2007).
func TestStartsAsPublished(t *testing.T) {
	series := all(t)
	for name, want := range map[string]struct{ celsius, sugar, nitrogen, cells float64 }{
		"foster2022_VT_12C":      {12, 82.24, 200, 1.2e10},
		"foster2022_Kolsch_42C":  {42, 82.24, 200, 1.2e10},
		"tyrell2013_extract":     {15, 82.24, 200, 9.96e9},
		"montpellier2023_C08_r4": {24, 200, 425, 1e9},
	} {
		s := series[name]
		near(t, name+", °C", s.Celsius, want.celsius, 0)
		near(t, name+", sugar", s.SugarGramPerLitre, want.sugar, 0)
		near(t, name+", nitrogen", s.NitrogenMilligramPerLitre, want.nitrogen, 0)
		near(t, name+", yeast", s.YeastGramPerLitre, want.cells*4e-11, 1e-9)
	}
	// The sugar of the wort: 12 °P weigh 1046.5 kg/m³ at 20 °C (ICUMSA SPS-4), so 125.6 g/L of extract, of which 62 to 70 %
	// are used in an all-malt wort (real attenuation; common practice, no source).
	near(t, "sugar of a wort of 12 °P", series["tyrell2013_extract"].SugarGramPerLitre, 0.12*1046.5*0.66, 0.12*1046.5*0.04)
}

// A table that is damaged is refused by its place, not read as something else.
func TestDamagedTable(t *testing.T) {
	const head = "series,hours,measured\n"
	for damage, says := range map[string]string{
		head + "foster2022_VT_12C,0,1.043\nfoster2022_VT_12C,six,1.04\n": "six",
		head + "foster2022_VT_12C,0,light\n":                             "light",
		head + "foster2022_VT_warm,0,1.043\n":                            "warm",
		head + "somebody2020_A,0,1.043\n":                                "no start is known for somebody2020_A",
		head + "tyrell2013_extract,0\n":                                  "wrong number of fields",
	} {
		if got, err := read(damage); err == nil || !strings.Contains(err.Error(), says) || got != nil {
			t.Errorf("%q: %v, %v", damage, got, err)
		}
	}
}
