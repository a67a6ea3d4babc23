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
		line ReportLine
		want float64 // mg/L of the ion
	}{
		"mg/L":          {ReportLine{Calcium, 60, AsIon}, 60},
		"mEq/L":         {ReportLine{Calcium, 2.9942, AsEquivalents}, 60},
		"mmol/L":        {ReportLine{Calcium, 1.4971, AsMillimoles}, 60},
		"CaCO3":         {ReportLine{Calcium, 149.84, AsCaCO3}, 60},
		"°dH":           {ReportLine{Calcium, 8.3953, AsGermanDegree}, 60},
		"°dH magnesium": {ReportLine{Magnesium, 1, AsGermanDegree}, 4.3342},
		"°fH":           {ReportLine{Magnesium, 1, AsFrenchDegree}, 2.428},
		"°fH calcium":   {ReportLine{Calcium, 1, AsFrenchDegree}, 4.004},
		"°e":            {ReportLine{Calcium, 1, AsEnglishDegree}, 14.25377 * 0.40044},
		"nitrate as N":  {ReportLine{Nitrate, 10, AsNitrogen}, 44.27},
		"nitrite as N":  {ReportLine{Nitrite, 1, AsNitrogen}, 3.2844},
		"ammonium as N": {ReportLine{Ammonium, 1, AsNitrogen}, 1.2879},
		"sulfate as S":  {ReportLine{Sulfate, 10, AsSulfur}, 29.961},
		"phosphate":     {ReportLine{Phosphate, 1, AsPhosphorus}, 3.0661},
	} {
		p, _, err := Report{Temperature: celsius(20), Readings: []ReportLine{r.line}}.Profile()
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
	base := Report{Temperature: celsius(25), Readings: []ReportLine{{Calcium, 60, AsIon}, {Sodium, 20, AsIon}, {Potassium, 3, AsIon},
		{Chloride, 30, AsIon}, {Sulfate, 50, AsIon}},
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
	q.Readings = []ReportLine{{Calcium, 60, AsIon}, {Potassium, 3, AsIon}, {Chloride, 30, AsIon}, {Sulfate, 50, AsIon}}
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
	q.Readings = []ReportLine{{Calcium, 60, AsIon}, {Sodium, 20, AsIon}, {Potassium, 3, AsIon}, {Sulfate, 50, AsIon}}
	p, _, err = q.Profile()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "chloride by balance", p.Ion(Chloride).In(units.MilligramPerLitre), 30, 0.05)
}

// The ends of what is usual, by figures a little to either side: 0.9 to 1.1 times the
// conductivity, 1.0 to 1.2 times the solids, which are 0.6 of a negative alkalinity
// too; a solids figure below 1 mg/L is looked at as any.
func TestReportEnds(t *testing.T) {
	base := Report{Temperature: celsius(25), Readings: []ReportLine{{Calcium, 60, AsIon}, {Magnesium, 10, AsIon}, {Sodium, 20, AsIon},
		{Potassium, 3, AsIon}, {Chloride, 30, AsIon}, {Sulfate, 50, AsIon}},
		Alkalinity: 144, AlkalinityAs: AsCaCO3, PH: 7.5}
	p, _, err := base.Profile()
	if err != nil {
		t.Fatal(err)
	}
	e, err := p.Equilibrium()
	if err != nil {
		t.Fatal(err)
	}
	k := e.Conductivity().In(units.MicrosiemensPerCentimetre)
	for times, notes := range map[float64]int{0.895: 1, 0.905: 0, 1.095: 0, 1.105: 1, 0.001: 1} {
		q := base
		q.Conductivity, _ = units.MicrosiemensPerCentimetre.Try(times * k)
		if _, got, err := q.Profile(); err != nil || len(got) != notes {
			t.Errorf("conductivity %v times: %q, %v", times, got, err)
		}
	}
	for times, notes := range map[float64]int{0.995: 1, 1.005: 0, 1.195: 0, 1.205: 1, 0.001: 1} {
		q := base
		q.Solids = mgL(times * (0.6*144 + 60 + 10 + 20 + 3 + 30 + 50))
		if _, got, err := q.Profile(); err != nil || len(got) != notes {
			t.Errorf("solids %v times: %q, %v", times, got, err)
		}
	}
	// 10 mg/L of hydrochloric acid as CaCO3: 7.0838 mg/L of chloride; 100 - 6 mg/L of sodium chloride stand.
	acid := Report{Temperature: celsius(25), Alkalinity: -10, AlkalinityAs: AsCaCO3,
		Readings: []ReportLine{{Sodium, 39.339, AsIon}, {Chloride, 60.661 + 7.0838, AsIon}}}
	for solids, notes := range map[float64]int{(100 + 7.0838 - 6) * 1.005: 0, (100 + 7.0838 - 6) * 0.995: 1} {
		acid.Solids = mgL(solids)
		if _, got, err := acid.Profile(); err != nil || len(got) != notes {
			t.Errorf("acid, %v: %q, %v", solids, got, err)
		}
	}
	// Hardness a negligible under that of the calcium, 60·2.4973: no magnesium.
	little := Report{Temperature: celsius(25), Hardness: caco3(149), Readings: []ReportLine{{Calcium, 60, AsIon}}}
	if p, _, err := little.Profile(); err != nil || p.mg[Magnesium] != 0 {
		t.Errorf("%v, %v", p.mg[Magnesium], err)
	}
	// 0.5 mg/L of magnesium is 2.059 as CaCO3.
	little.Hardness = caco3(149.838 - 2.08)
	var re *units.RangeError
	if _, _, err := little.Profile(); !errors.As(err, &re) || re.Min != -0.5 || re.Max != 50000 {
		t.Error(err)
	}
	little.Hardness = caco3(149.838 - 2.04)
	if _, _, err := little.Profile(); err != nil {
		t.Error(err)
	}
	// What balances needs nothing to balance it.
	even := Report{Temperature: celsius(25), Estimate: true, Readings: []ReportLine{{Sodium, 1, AsMillimoles}, {Chloride, 1, AsMillimoles}}}
	if _, notes, err := even.Profile(); err != nil || len(notes) != 0 {
		t.Errorf("%q, %v", notes, err)
	}
}

func TestReportRefuses(t *testing.T) {
	ca := func(v float64, as Form) []ReportLine { return []ReportLine{{Calcium, v, as}} }
	for name, r := range map[string]Report{
		"negative":        {Readings: ca(-1, AsIon)},
		"NaN":             {Readings: ca(math.NaN(), AsIon)},
		"calcium as N":    {Readings: ca(1, AsNitrogen)},
		"calcium as S":    {Readings: ca(1, AsSulfur)},
		"calcium as P":    {Readings: ca(1, AsPhosphorus)},
		"no form":         {Readings: ca(1, 99)},
		"no ion":          {Readings: []ReportLine{{Ion(99), 1, AsIon}}},
		"twice":           {Readings: []ReportLine{{Calcium, 1, AsIon}, {Calcium, 1, AsIon}}},
		"hardness":        {Readings: ca(100, AsIon), Hardness: caco3(200)},
		"alkalinity as N": {Alkalinity: 1, AlkalinityAs: AsNitrogen},
		"alkalinity":      {Alkalinity: math.Inf(1)},
		"end point low":   {Alkalinity: 1, Endpoint: 3.4},
		"end point high":  {Alkalinity: 1, Endpoint: 5.6},
		"pH":              {Alkalinity: 20, AlkalinityAs: AsCaCO3, PH: 12},
	} {
		_, _, err := r.Profile()
		if !refused(err) {
			t.Errorf("%s: %v", name, err)
		}
	}
	for _, end := range []float64{3.5, 5.5} {
		if _, notes, err := (Report{Alkalinity: 100, AlkalinityAs: AsCaCO3, Endpoint: end}).Profile(); err != nil || len(notes) == 0 {
			t.Error(err)
		}
	}
}
