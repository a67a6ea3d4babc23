package water

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/zymase/units"
)

// The moderate water in every form a laboratory prints. By definition 1 °dH is
// 10 mg/L CaO (0.35665 mEq/L), 1 °fH 10 mg/L CaCO3 (0.1998 mEq/L), 1 °e 14.25377 mg/L
// CaCO3; N 14.007, S 32.06, P 30.974.
func TestReportForms(t *testing.T) {
	for name, r := range map[string]struct {
		line Reading
		want float64 // mg/L of the ion
	}{
		"mg/L":          {Reading{Calcium, 60, AsIon}, 60},
		"mEq/L":         {Reading{Calcium, 2.9942, AsEquivalents}, 60},
		"mmol/L":        {Reading{Calcium, 1.4971, AsMillimoles}, 60},
		"CaCO3":         {Reading{Calcium, 149.84, AsCaCO3}, 60},
		"°dH":           {Reading{Calcium, 8.3953, AsGermanDegree}, 60},
		"°dH magnesium": {Reading{Magnesium, 1, AsGermanDegree}, 4.3342},
		"°fH":           {Reading{Magnesium, 1, AsFrenchDegree}, 2.428},
		"°fH calcium":   {Reading{Calcium, 1, AsFrenchDegree}, 4.004},
		"°e":            {Reading{Calcium, 1, AsEnglishDegree}, 14.25377 * 0.40044},
		"nitrate as N":  {Reading{Nitrate, 10, AsNitrogen}, 44.27},
		"nitrite as N":  {Reading{Nitrite, 1, AsNitrogen}, 3.2844},
		"ammonium as N": {Reading{Ammonium, 1, AsNitrogen}, 1.2879},
		"sulfate as S":  {Reading{Sulfate, 10, AsSulfur}, 29.961},
		"phosphate":     {Reading{Phosphate, 1, AsPhosphorus}, 3.0661},
	} {
		p, _, err := Report{Temperature: celsius(20), Readings: []Reading{r.line}}.Profile()
		if err != nil {
			t.Fatal(err)
		}
		near(t, name, p.Ion(r.line.Ion).In(units.MilligramPerLitre), r.want, 0.0002*r.want)
	}
	for name, r := range map[string]struct {
		v   float64
		as  Form
		end float64
	}{
		"CaCO3": {144, AsCaCO3, 0}, "bicarbonate": {175.58, AsIon, 0}, "mEq/L": {2.8775, AsEquivalents, 0}, "mmol/L": {2.8775, AsMillimoles, 0},
		"°dH": {8.0682, AsGermanDegree, 0}, "°fH": {14.4, AsFrenchDegree, 0}, "°e": {10.1026, AsEnglishDegree, 0},
		"to pH 4.3": {2.8775 + 0.05012, AsEquivalents, 4.3},
	} {
		p, _, err := Report{Temperature: celsius(20), Alkalinity: r.v, AlkalinityAs: r.as, Endpoint: r.end}.Profile()
		if err != nil {
			t.Fatal(err)
		}
		near(t, name, p.Alkalinity().In(units.MilligramPerLitreCaCO3), 144, 0.01)
	}
}

func TestReportGaps(t *testing.T) {
	base := Report{Temperature: celsius(25), Readings: []Reading{{Calcium, 60, AsIon}, {Sodium, 20, AsIon}, {Potassium, 3, AsIon}, {Chloride, 30, AsIon}, {Sulfate, 50, AsIon}},
		Alkalinity: 144, AlkalinityAs: AsCaCO3, Hardness: caco3(191.02), PH: 7.5}
	p, notes, err := base.Profile()
	if err != nil || len(notes) != 0 {
		t.Fatal(notes, err)
	}
	near(t, "magnesium by difference", p.Ion(Magnesium).In(units.MilligramPerLitre), 10, 0.002)
	if ph, known := p.PH(); !known || math.Abs(ph-7.5) > 1e-9 {
		t.Errorf("pH %v", ph)
	}
	// What fits is silent; what does not is told. 500 µS/cm is what the program of
	// conductivity_test.go gives; 0.6·144 + 60 + 10 + 20 + 3 + 30 + 50 = 259.4 mg/L.
	for _, r := range []struct {
		k, tds float64
		notes  int
	}{{480, 262, 0}, {480, 310, 0}, {600, 262, 1}, {480, 320, 1}, {400, 250, 2}} {
		q := base
		q.Conductivity, _ = units.MicrosiemensPerCentimetre.Try(r.k)
		q.Solids = mgL(r.tds)
		if _, notes, err := q.Profile(); err != nil || len(notes) != r.notes {
			t.Errorf("%+v: %q, %v", r, notes, err)
		}
	}
	// Sodium left out, and taken from the balance on request.
	q := base
	q.Readings = []Reading{{Calcium, 60, AsIon}, {Potassium, 3, AsIon}, {Chloride, 30, AsIon}, {Sulfate, 50, AsIon}}
	_, notes, err = q.Profile()
	if err != nil || len(notes) != 1 || !strings.HasPrefix(notes[0], "ions do not balance") {
		t.Errorf("%q, %v", notes, err)
	}
	q.Estimate = true
	p, notes, err = q.Profile()
	if err != nil || len(notes) != 1 || !strings.Contains(notes[0], "an estimate") {
		t.Errorf("%q, %v", notes, err)
	}
	near(t, "sodium by balance", p.Ion(Sodium).In(units.MilligramPerLitre), 20, 0.05)
	q.Readings = []Reading{{Calcium, 60, AsIon}, {Sodium, 20, AsIon}, {Potassium, 3, AsIon}, {Sulfate, 50, AsIon}}
	p, _, err = q.Profile()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "chloride by balance", p.Ion(Chloride).In(units.MilligramPerLitre), 30, 0.05)
}

func TestReportRefuses(t *testing.T) {
	ca := func(v float64, as Form) []Reading { return []Reading{{Calcium, v, as}} }
	for name, r := range map[string]Report{
		"negative":        {Readings: ca(-1, AsIon)},
		"NaN":             {Readings: ca(math.NaN(), AsIon)},
		"calcium as N":    {Readings: ca(1, AsNitrogen)},
		"calcium as S":    {Readings: ca(1, AsSulfur)},
		"calcium as P":    {Readings: ca(1, AsPhosphorus)},
		"no form":         {Readings: ca(1, 99)},
		"no ion":          {Readings: []Reading{{Ion(99), 1, AsIon}}},
		"twice":           {Readings: []Reading{{Calcium, 1, AsIon}, {Calcium, 1, AsIon}}},
		"hardness":        {Readings: ca(100, AsIon), Hardness: caco3(200)},
		"alkalinity as N": {Alkalinity: 1, AlkalinityAs: AsNitrogen},
		"alkalinity":      {Alkalinity: math.Inf(1)},
		"end point low":   {Alkalinity: 1, Endpoint: 3.4},
		"end point high":  {Alkalinity: 1, Endpoint: 5.6},
		"pH":              {Alkalinity: 20, AlkalinityAs: AsCaCO3, PH: 12},
	} {
		_, _, err := r.Profile()
		var re *units.RangeError
		if !errors.As(err, &re) {
			t.Errorf("%s: %v", name, err)
		}
	}
	for _, end := range []float64{3.5, 5.5} {
		if _, notes, err := (Report{Alkalinity: 100, AlkalinityAs: AsCaCO3, Endpoint: end}).Profile(); err != nil || len(notes) == 0 {
			t.Error(err)
		}
	}
}
