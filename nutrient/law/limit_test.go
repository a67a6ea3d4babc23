package law

import (
	"encoding/json"
	"errors"
	"regexp"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
)

// The law's number, its exact conversion and its printed figure.
func TestLimitsAsPrinted(t *testing.T) {
	for _, c := range []struct {
		j                Jurisdiction
		s                Substance
		scope            Scope
		amount, unit     string
		gramsPerLitre    string
		printed          string
		articleHas, year string
		grade            evidence.Grade
	}{
		{US, AmmoniumPhosphate, Wine, "8", "lb/1000 US gal", "0.95861", "0.96 g/L", "24.246", "2015", evidence.Read},
		{US, thiamine, Wine, "0.005", "lb/1000 US gal", "0.00060", "0.6 mg/L", "24.246", "2015", evidence.Read},
		{US, YeastCellWalls, Wine, "3", "lb/1000 US gal", "0.35948", "0.36 g/L", "24.246", "2015", evidence.Read},
		{US, soyFlour, Wine, "2", "lb/1000 US gal", "0.23965", "0.24 g/L", "24.246", "2015", evidence.Read},
		{US, calciumPantothenate, appleWine, "0.004", "lb/1000 US gal", "0.00048", "0.1 lb/25,000 gal", "24.246", "2015", evidence.Read},
		{US, AmmoniumPhosphate, DistillingMaterial, "10", "lb/1000 US gal", "1.19826", "1.2 g/L", "24.247", "2015", evidence.Read},
		{US, citricAcid, Wine, "5.8", "lb/1000 US gal", "0.69499", "0.7 g/L", "24.246", "2015", evidence.Read},
		{US, fumaricAcid, Wine, "25", "lb/1000 US gal", "2.99566", "3.0 g/L", "24.246", "2015", evidence.Read},
		{US, copperSulfate, Wine, "6", "mg/L", "0.006", "", "24.246", "2015", evidence.Read},
		{US, calciumCarbonate, Wine, "30", "lb/1000 US gal", "3.59479", "3.59 g/L", "24.246", "2015", evidence.Read},
		{US, potassiumBitartrate, Wine, "35", "lb/1000 US gal", "4.19392", "4.19 g/L", "24.246", "2015", evidence.Read},
		{US, dimethylDicarbonate, Wine, "200", "mg/L", "0.2", "", "24.246", "2015", evidence.Read},
		{US, lysozyme, Wine, "500", "mg/L", "0.5", "", "24.246", "2015", evidence.Read},
		{US, acacia, Wine, "2", "lb/1000 US gal", "0.23965", "0.24 g/L", "24.246", "2015", evidence.Read},
		{US, SorbicAcid, Wine, "300", "mg/L", "0.3", "", "24.246", "2015", evidence.Read},
		{US, SulfurDioxide, Wine, "350", "mg/L", "0.35", "", "4.22(b)(1)", "2015", evidence.Read},
		{EU, AmmoniumPhosphate, Wine, "1", "g/L", "1", "", "2019/934", "2019", evidence.Recalled},
		{EU, ammoniumSulfate, Wine, "1", "g/L", "1", "", "2019/934", "2019", evidence.Recalled},
		{EU, AmmoniumPhosphate, secondFermentation, "0.3", "g/L", "0.3", "", "2019/934", "2019", evidence.Recalled},
		{EU, thiamine, Wine, "0.6", "mg/L", "0.0006", "", "2019/934", "2019", evidence.Recalled},
		{EU, YeastCellWalls, Wine, "0.4", "g/L", "0.4", "", "2019/934", "2019", evidence.Recalled},
		{EU, SorbicAcid, Wine, "200", "mg/L", "0.2", "", "2019/934", "2019", evidence.Recalled},
		{EU, SulfurDioxide, redWine, "150", "mg/L", "0.15", "", "2019/934", "2019", evidence.Recalled},
		{EU, SulfurDioxide, whiteWine, "200", "mg/L", "0.2", "", "2019/934", "2019", evidence.Recalled},
		{EU, SulfurDioxide, organicRedWine, "100", "mg/L", "0.1", "", "203/2012", "2012", evidence.Read},
		{EU, SulfurDioxide, organicWhiteWine, "150", "mg/L", "0.15", "", "203/2012", "2012", evidence.Read},
		{EU, SorbicAcid, CiderAndPerry, "200", "mg/L", "0.2", "", "1333/2008", "2011", evidence.Recalled},
		{EU, SorbicAcid, fruitWine, "200", "mg/L", "0.2", "", "1333/2008", "2011", evidence.Recalled},
		{EU, SulfurDioxide, CiderAndPerry, "200", "mg/L", "0.2", "", "1333/2008", "2011", evidence.Recalled},
		{EU, SulfurDioxide, fruitWine, "200", "mg/L", "0.2", "", "1333/2008", "2011", evidence.Recalled},
		{EU, sucralose, flavouredDrink, "300", "mg/L", "0.3", "", "1333/2008", "2011", evidence.Recalled},
		{EU, sucralose, flavouredAlcoholic, "250", "mg/L", "0.25", "", "1333/2008", "2011", evidence.Recalled},
		{EU, sucralose, CiderAndPerry, "50", "mg/L", "0.05", "", "1333/2008", "2011", evidence.Recalled},
		{EU, sucralose, alcoholFreeBeer, "250", "mg/L", "0.25", "", "1333/2008", "2011", evidence.Recalled},
		{US, biotin, Wine, "0.025", "mg/L", "0.000025", "25 ppb", "TTB-185", "2022", evidence.Recalled},
		{US, folicAcid, Wine, "0.1", "mg/L", "0.0001", "100 ppb", "TTB-185", "2022", evidence.Recalled},
		{US, inositol, Wine, "2", "mg/L", "0.002", "2 ppm", "TTB-185", "2022", evidence.Recalled},
		{US, magnesiumSulfate, Wine, "15", "mg/L", "0.015", "15 ppm", "TTB-185", "2022", evidence.Recalled},
		{US, niacin, Wine, "1", "mg/L", "0.001", "1 ppm", "TTB-185", "2022", evidence.Recalled},
		{US, calciumPantothenate, Wine, "1.5", "mg/L", "0.0015", "1.5 ppm", "TTB-185", "2022", evidence.Recalled},
		{US, pyridoxine, Wine, "0.15", "mg/L", "0.00015", "150 ppb", "TTB-185", "2022", evidence.Recalled},
		{EU, acesulfameK, flavouredDrink, "350", "mg/L", "0.35", "", "1333/2008", "2011", evidence.Recalled},
		{EU, acesulfameK, flavouredAlcoholic, "350", "mg/L", "0.35", "", "1333/2008", "2011", evidence.Recalled},
		{EU, aspartame, flavouredDrink, "600", "mg/L", "0.6", "", "1333/2008", "2011", evidence.Recalled},
		{EU, aspartame, flavouredAlcoholic, "600", "mg/L", "0.6", "", "1333/2008", "2011", evidence.Recalled},
		{EU, cyclamate, flavouredDrink, "250", "mg/L", "0.25", "", "1333/2008", "2011", evidence.Recalled},
		{EU, cyclamate, flavouredAlcoholic, "250", "mg/L", "0.25", "", "1333/2008", "2011", evidence.Recalled},
		{EU, saccharin, flavouredDrink, "80", "mg/L", "0.08", "", "1333/2008", "2011", evidence.Recalled},
		{EU, saccharin, flavouredAlcoholic, "80", "mg/L", "0.08", "", "1333/2008", "2011", evidence.Recalled},
		{EU, neohesperidinDC, flavouredDrink, "30", "mg/L", "0.03", "", "1333/2008", "2011", evidence.Recalled},
		{EU, neohesperidinDC, flavouredAlcoholic, "30", "mg/L", "0.03", "", "1333/2008", "2011", evidence.Recalled},
		{EU, neotame, flavouredDrink, "20", "mg/L", "0.02", "", "1333/2008", "2011", evidence.Recalled},
		{EU, neotame, flavouredAlcoholic, "20", "mg/L", "0.02", "", "1333/2008", "2011", evidence.Recalled},
		{EU, steviolGlycosides, flavouredDrink, "80", "mg/L", "0.08", "", "1333/2008", "2011", evidence.Recalled},
		{EU, steviolGlycosides, flavouredAlcoholic, "150", "mg/L", "0.15", "", "1333/2008", "2011", evidence.Recalled},
		{EU, advantame, flavouredDrink, "6", "mg/L", "0.006", "", "1333/2008", "2011", evidence.Recalled},
		{EU, advantame, flavouredAlcoholic, "6", "mg/L", "0.006", "", "1333/2008", "2011", evidence.Recalled},
	} {
		found, err := c.j.Limits(c.s, c.scope)
		if err != nil || len(found) == 0 {
			t.Errorf("%v %v %q: no limit, %v", c.j, c.s, c.scope, err)
			continue
		}
		l := found[0]
		n, unit := l.Amount()
		if n.String() != c.amount || unit != c.unit || l.Printed != c.printed || l.Grade != c.grade {
			t.Errorf("%v: got %s %s, %q, %v", l, n, unit, l.Printed, l.Grade)
		}
		places := len(c.gramsPerLitre) - strings.IndexByte(c.gramsPerLitre+".", '.') - 1
		if got := l.GramsPerLitre(max(places, 0)).StringFixed(int32(max(places, 0))); got != c.gramsPerLitre {
			t.Errorf("%v: got %s g/L, want %s", l, got, c.gramsPerLitre)
		}
		check.Near(t, l.String(), l.Concentration().In(units.GramPerLitre), l.GramsPerLitre(20).InexactFloat64(), 1e-15, "the same limit")
		if !strings.Contains(l.Article, c.articleHas) || !strings.Contains(l.Article, c.year) {
			t.Errorf("%v: article %q", l, l.Article)
		}
		if !strings.Contains(l.String(), "check the law in force") {
			t.Errorf("%v: no caution", l)
		}
	}
	all := append(check.Must(US.Limits(Unlisted)), check.Must(EU.Limits(Unlisted))...)
	if n := len(all); n != 56 {
		t.Errorf("%d rows in the table, 56 are checked", n)
	}
	for _, l := range all {
		if !dated.MatchString(l.Article) {
			t.Errorf("%v: no year of the text in %q", l, l.Article)
		}
	}
}

// dated finds the year of a text beside its number: (2015 edition), (list of 2011).
var dated = regexp.MustCompile(`\([^()]*\b20[012]\d\b[^()]*\)`)

// EU law counts thiamine, not its hydrochloride; its text says so.
func TestThiamineSaysHowItIsCounted(t *testing.T) {
	if l := check.Must(EU.Limits(thiamine, Wine))[0]; !strings.Contains(l.String(), "at most 0.6 mg/L as thiamine, wine") ||
		!strings.Contains(l.String(), "recalled from memory") {
		t.Error(l)
	}
}

// The sentence names all that is added up, the printed figure and the law.
func TestLimitReads(t *testing.T) {
	l := check.Must(EU.Limits(AmmoniumPhosphate, Wine))[0]
	if got, want := l.String(), "ammonium phosphate and ammonium sulfate: at most 1 g/L, wine, Reg. (EU) 2019/934 annex I part A "+
		"(2019), EU (recalled from memory); check the law in force"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	l = check.Must(US.Limits(AmmoniumPhosphate, Wine))[0]
	if got, want := l.String(), "ammonium phosphate: at most 0.96 g/L (8 lb/1000 US gal), wine, 27 CFR 24.246 (2015 edition), US; "+
		"check the law in force"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	// Places below 0 and above 30 are taken as these; 0.96 g/L is 1 g/L without places.
	for places, want := range map[int]int32{-3: 0, 0: 0, 30: -30, 99: -30} {
		if got := l.GramsPerLitre(places).Exponent(); got != want {
			t.Errorf("%d places: exponent %d, want %d", places, got, want)
		}
	}
}

// What is weighed for 0.6 mg/L of thiamine, by atomic weights to five digits (CIAAW, abridged
// 2021): C12H17N4OS is 265.355, C12H17ClN4OS·HCl 337.263.
func TestWeighed(t *testing.T) {
	const (
		C, H, N, O, S, Cl = 12.011, 1.008, 14.007, 15.999, 32.06, 35.45
		vitamin           = 12*C + 17*H + 4*N + O + S
	)
	l := check.Must(EU.Limits(thiamine, Wine))[0]
	check.Near(t, "hydrochloride", l.Weighed().In(units.MilligramPerLitre), 0.6*(vitamin+H+2*Cl)/vitamin, 5e-5, "atomic weights; the library rounds both to 0.01")
	l = check.Must(EU.Limits(AmmoniumPhosphate, Wine))[0]
	check.Near(t, "phosphate", l.Weighed().In(units.GramPerLitre), 1, 0, "the limit itself")
}

// Thiamine is what is mostly thiamine, a salt of zinc what is over a hundredth zinc: a vitamin on
// a carrier, or yeast rich in zinc, has no limit of its own here.
func TestSubstanceOf(t *testing.T) {
	for _, c := range []struct {
		of   material.Composition
		want Substance
	}{
		{material.Composition{Thiamine: check.Percent(50.5)}, thiamine}, {material.Composition{Thiamine: check.Percent(49.5)}, Unlisted},
		{material.Composition{Zinc: check.Percent(1.5)}, zinc}, {material.Composition{Zinc: check.Percent(0.97)}, Unlisted},
	} {
		if got := SubstanceOf(check.Must(material.ByLabel("one's own", c.of))); got != c.want {
			t.Errorf("%v thiamine, %v zinc: %v, want %v", c.of.Thiamine, c.of.Zinc, got, c.want)
		}
	}
}

func TestAllows(t *testing.T) {
	l := check.Must(EU.Limits(AmmoniumPhosphate, Wine))[0]
	for _, c := range []struct {
		c    units.MassConcentration
		want bool
	}{
		{units.GramPerLitre.Of(1), true},
		{units.GramPerLitre.Of(1.0000000000001), true}, // rounding
		{units.GramPerLitre.Of(1.00000000001), false},
	} {
		if got := l.Allows(c.c); got != c.want {
			t.Errorf("%v: %v", c.c, got)
		}
	}
}

// Every name reads back, every row of the table too; what is none of them is refused.
func TestNamesTravel(t *testing.T) {
	for s := Unlisted; s <= pyridoxine; s++ {
		check.Travels(t, s)
	}
	for _, j := range []Jurisdiction{US, EU} {
		check.Travels(t, j)
		for _, l := range check.Must(j.Limits(Unlisted)) {
			check.Travels(t, l)
		}
	}
	for s := Wine; s <= alcoholFreeBeer; s++ {
		check.Travels(t, s)
	}
	for _, v := range []any{Substance(-1), pyridoxine + 1, Jurisdiction(9), alcoholFreeBeer + 1, Limit{}} {
		if text, err := json.Marshal(v); err == nil {
			t.Errorf("%#v is written: %s", v, text)
		}
	}
	for _, into := range []any{new(Substance), new(Jurisdiction), new(Scope), new(Limit)} {
		err := json.Unmarshal([]byte(`"no such thing"`), into)
		if e, ok := errors.AsType[*units.NameError](err); !ok || e.Name != "no such thing" {
			t.Errorf("%T: %v", into, err)
		}
	}
}

// A law, a substance or a scope that is none of the list is refused, not asked in vain.
func TestLimitsRefuse(t *testing.T) {
	for what, f := range map[string]func() ([]Limit, error){
		"law":                    func() ([]Limit, error) { return Jurisdiction(9).Limits(zinc) },
		"substance with a limit": func() ([]Limit, error) { return EU.Limits(-1) },
		"scope of a limit":       func() ([]Limit, error) { return EU.Limits(zinc, Wine, 99) },
	} {
		l, err := f()
		if e, ok := errors.AsType[*units.NameError](err); !ok || e.What != what || l != nil {
			t.Errorf("%s: %v, %v", what, l, err)
		}
	}
	if l, err := EU.Limits(lysozyme); err != nil || len(l) != 0 {
		t.Errorf("%v, %v: no limit was read", l, err)
	}
}
