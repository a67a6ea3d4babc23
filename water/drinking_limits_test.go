package water

import (
	"fmt"
	"strings"
	"testing"

	"example.org/zymase/internal/published"
)

// Every limit against the table of what was read and recalled.
func TestDrinkingLimits(t *testing.T) {
	printed := map[string]bool{}
	for _, name := range []string{"drinking_water_limits", "drinking_water_limits_who4"} {
		table, err := published.Find(name)
		if err != nil {
			t.Fatal(err)
		}
		for row := range table.Rows() {
			least, _ := row.Number("least")
			most, _ := row.Number("most")
			printed[fmt.Sprintf("%s|%s|%s|%g|%g", row.Text("authority"), row.Text("substance"), row.Text("kind"), most, least)] = true
		}
	}
	all := DrinkingLimits()
	if len(all) != len(printed) {
		t.Errorf("%d limits, %d rows", len(all), len(printed))
	}
	for _, l := range all {
		_, least, most, _ := Finding{Limit: l}.numbers()
		key := fmt.Sprintf("%s|%s|%s|%g|%g", l.Authority, l.Substance, l.Kind, most, least)
		if !printed[key] {
			t.Errorf("no row for %s", key)
		}
		// The edition of each source; manganese is of the addendum of 2022 (recalled).
		year := map[string]int{"40 CFR 143.3": 2015, "40 CFR 141.62": 2015, "40 CFR 141.80(c)": 2015,
			"Directive (EU) 2020/2184 annex I part B, as in 98/83/EC": 2020, "Directive (EU) 2020/2184 annex I part C, as in 98/83/EC": 2020,
			"WHO Guidelines, 2nd ed.": 1996, "WHO Guidelines, 4th ed.": 2011}[l.Source]
		if l.Authority == WHOGuideline && l.Substance == "manganese" {
			year = 2022
		}
		if l.Year != year || (l.Authority == WHOGuideline && l.Year > 2000) != l.Recalled {
			t.Errorf("%+v", l)
		}
	}
}

func TestCheckDrinking(t *testing.T) {
	if f := reports[0].equilibrium(t, 20).Water().CheckDrinking(); len(f) != 0 {
		t.Errorf("%v", f)
	}
	// 600 mg/L of sulfate; solids above 500.
	var got []string
	for _, f := range reports[2].equilibrium(t, 20).Water().CheckDrinking() {
		got = append(got, f.String())
	}
	want := []string{
		"sulfate 600 mg/L, at most 250 mg/L (US secondary (aesthetic), 40 CFR 143.3, 2015)",
		"total dissolved solids 1165 mg/L, at most 500 mg/L (US secondary (aesthetic), 40 CFR 143.3, 2015)",
		"sulfate 600 mg/L, at most 250 mg/L (EU indicator parameter, Directive (EU) 2020/2184 annex I part C, as in 98/83/EC, 2020)",
		"sulfate 600 mg/L, at most 500 mg/L (WHO notify above, WHO Guidelines, 4th ed., 2011, recalled from memory)",
	}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("%s", strings.Join(got, "\n"))
	}
	// Nitrate: 44.3 mg/L as NO3 is 10 mg/L as N; 50 mg/L is the European limit.
	for nitrate, n := range map[float64]int{44.2: 0, 44.4: 2, 49.9: 2, 50.1: 4} {
		p, _ := NewProfile(celsius(20), caco3(100), Nitrate.At(mgL(nitrate)))
		if f := p.CheckDrinking(); len(f) != n {
			t.Errorf("%v mg/L: %v", nitrate, f)
		}
	}
	acid, _ := NewProfile(celsius(20), caco3(20))
	acid, err := acid.WithPH(6)
	if err != nil {
		t.Fatal(err)
	}
	if f := acid.CheckDrinking(); len(f) != 2 || !strings.Contains(f[0].String(), "pH 6, at least 6.5 (US") {
		t.Errorf("%v", f)
	}
	salty, _ := NewProfile(celsius(20), caco3(100), Sodium.At(mgL(199)), Chloride.At(mgL(200)), Nitrite.At(mgL(0.49)))
	if f := salty.CheckDrinking(); len(f) != 1 { // solids only
		t.Errorf("%v", f)
	}
	if Authority(9).String() != "unknown authority 9" {
		t.Error("name")
	}
}
