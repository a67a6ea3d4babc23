package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// CRC Handbook of Chemistry and Physics, 102nd ed., "Concentrative properties of
// aqueous solutions", g/mL at 20 °C; tolerance 0.1 kg/m³ (the curve is laid through
// these rows; the table is printed to 0.1).
var crcSugars = map[gravity.Sugar][][2]float64{
	gravity.AsGlucose: {
		{0.5, 1.0001}, {2, 1.0058}, {4, 1.0136}, {6, 1.0214}, {8, 1.0294}, {10, 1.0375}, {12, 1.0457}, {14, 1.0540}, {16, 1.0624}, {18, 1.0710}, {20, 1.0797},
		{24, 1.0973}, {28, 1.1154}, {32, 1.1340}, {36, 1.1529}, {40, 1.1724}, {44, 1.1924}, {48, 1.2130}, {52, 1.2342}, {56, 1.2562}, {60, 1.2793},
	},
	gravity.AsFructose: {
		{0.5, 1.0002}, {2, 1.0061}, {4, 1.0140}, {6, 1.0221}, {8, 1.0303}, {10, 1.0385}, {12, 1.0469}, {14, 1.0554}, {16, 1.0640}, {18, 1.0728}, {20, 1.0816},
		{24, 1.0996}, {28, 1.1182}, {32, 1.1372}, {36, 1.1568}, {40, 1.1769}, {44, 1.1975}, {48, 1.2187},
	},
	// recalled from memory
	gravity.AsGlycerol: {{5, 1.0097}, {10, 1.0215}, {20, 1.0459}},
}

func TestSugarDensityCRC(t *testing.T) {
	for k, rows := range crcSugars {
		for _, r := range rows {
			got := ok[units.Density](t)(k.Density(plato(r[0]), celsius(20))).In(units.KilogramPerCubicMetre)
			near(t, fmt.Sprint(k, " ", r[0], " % mass"), got, 1000*r[1], 0.1)
		}
	}
}

// A dextrose wash reads 0.0006 below the sucrose scale at 10 % mass (the same
// table: 1.0375 and 1.0381 g/mL).
func TestDextroseReadsLower(t *testing.T) {
	s, g := ok[units.Density](t)(gravity.AsSucrose.Density(plato(10), celsius(20))), ok[units.Density](t)(gravity.AsGlucose.Density(plato(10), celsius(20)))
	near(t, "gravity", (s.In(units.KilogramPerCubicMetre)-g.In(units.KilogramPerCubicMetre))/998.2, 0.0006, 0.00005)
}

func TestSugarDensityRefuses(t *testing.T) {
	for k, most := range map[gravity.Sugar]float64{gravity.AsSucrose: 80, gravity.AsGlucose: 60, gravity.AsFructose: 48, gravity.AsDextrin: 80,
		gravity.AsGlycerol: 20} {
		for _, b := range []float64{-1e-9, most + 1e-6, math.NaN()} {
			_, err := k.Density(plato(b), celsius(20))
			refused(t, k.String(), err, "extract")
		}
		ok[units.Density](t)(k.Density(plato(most), celsius(100)))
		ok[units.Density](t)(k.Density(plato(0), celsius(0)))
		for _, c := range []float64{-0.01, 100.01} {
			_, err := k.Density(plato(1), celsius(c))
			refused(t, k.String(), err, "temperature")
		}
	}
	for _, k := range []gravity.Sugar{-1, 6, 99} {
		_, err := k.Density(plato(1), celsius(20))
		unknown(t, err, "kind of extract")
	}
}

func TestSugar(t *testing.T) {
	for k, want := range map[gravity.Sugar]string{gravity.AsSucrose: "sucrose", gravity.AsGlucose: "glucose", gravity.AsFructose: "fructose",
		gravity.AsDextrin: "dextrin", gravity.AsGlycerol: "glycerol", gravity.AsOrganicAcid: "organic acid", -1: "unknown kind of extract -1",
		6: "unknown kind of extract 6"} {
		if got := k.String(); got != want {
			t.Errorf("%d: %q, want %q", k, got, want)
		}
		if k.Fermentable() != (k >= gravity.AsSucrose && k <= gravity.AsFructose) {
			t.Errorf("%v: fermentable %v", k, k.Fermentable())
		}
	}
}
