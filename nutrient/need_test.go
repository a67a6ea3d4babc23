package nutrient

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/units"
)

// Supplier rule of the wine trade, 0.75, 0.9 and 1.25 mg N per g sugar: recalled
// from memory.
func TestNeedBySugar(t *testing.T) {
	for _, c := range []struct {
		d    Demand
		want float64
	}{{LowDemand, 75}, {MediumDemand, 90}, {HighDemand, 125}} {
		n := check.Must(NeedBySugar(units.GramPerLitre.Of(100), c.d)).Nitrogen
		check.Near(t, c.d.String(), n.Value.In(units.MilligramPerLitre), c.want, 1e-9, "recalled from memory")
		check.Near(t, "low end", n.Low.In(units.MilligramPerLitre), 75, 1e-9, "recalled from memory")
		check.Near(t, "high end", n.High.In(units.MilligramPerLitre), 125, 1e-9, "recalled from memory")
	}
	_, err := NeedBySugar(units.GramPerLitre.Of(351), LowDemand)
	check.Refused(t, err, "sugar", 0, 350)
}

// Bisson & Butzke 2000, table by Brix: recalled from memory.
func TestNeedOfMustBySugar(t *testing.T) {
	for _, c := range []struct{ brix, want float64 }{{21, 200}, {23, 250}, {25, 300}, {27, 350}} {
		n := check.Must(NeedOfMust("of a must by its sugar", check.Must(units.DegreePlato.Try(c.brix))))
		check.Near(t, "N", n.Nitrogen.Value.In(units.MilligramPerLitre), c.want, 1e-9, "recalled from memory")
		check.Near(t, "low", n.Nitrogen.Low.In(units.MilligramPerLitre), c.want, 1e-9, "recalled from memory")
		check.Near(t, "high", n.Nitrogen.High.In(units.MilligramPerLitre), c.want, 1e-9, "recalled from memory")
	}
	_, err := NeedOfMust("of a must by its sugar", units.DegreePlato.Of(20.9))
	check.Refused(t, err, "extract", 21, 27)
	_, err = NeedOfMust("of a must by its sugar", units.DegreePlato.Of(27.1))
	check.Refused(t, err, "extract", 21, 27)
}

func TestNeedsOfMusts(t *testing.T) {
	for _, c := range []struct {
		n                Need
		value, low, high float64
		source           string
	}{
		{check.Must(NeedOfMust("least of a must", units.DegreePlato.Of(21))), 140, 140, 500, "Agenbach 1977, recalled from memory; Oregon State University"},
		{check.Must(NeedOfMust("of a white must, low risk", units.DegreePlato.Of(21))), 150, 150, 350, "Australian Wine Research Institute"},
		{check.Must(NeedOfMust("free amino nitrogen of a must", units.DegreePlato.Of(21))), 275, 250, 300, "Fertiliser guidelines for the wine industry"},
		{check.Must(NeedByGrowth(units.GramPerLitre.Of(2))), 200, 128, 200, "Dharmadhikari: 10 % of dry matter"},
	} {
		check.Near(t, c.n.Method, c.n.Nitrogen.Value.In(units.MilligramPerLitre), c.value, 1e-9, c.source)
		check.Near(t, c.n.Method+" low", c.n.Nitrogen.Low.In(units.MilligramPerLitre), c.low, 1e-9, c.source)
		check.Near(t, c.n.Method+" high", c.n.Nitrogen.High.In(units.MilligramPerLitre), c.high, 1e-9, c.source)
	}
	if _, err := NeedOfMust("by the moon", units.DegreePlato.Of(21)); err == nil || !strings.Contains(err.Error(), "least of a must") {
		t.Error(err)
	}
	_, err := NeedByGrowth(units.GramPerLitre.Of(21))
	check.Refused(t, err, "dry yeast", 0, 20)
}

func TestNeedsLeavesOutMustsBelow20Brix(t *testing.T) {
	for _, c := range []struct {
		p    float64
		want int
	}{{8, 1}, {19.9, 1}, {20, 4}, {22, 5}} {
		all := check.Must(Needs(units.GramPerLitre.Of(80), check.Must(units.DegreePlato.Try(c.p)), HighDemand))
		if len(all) != c.want {
			t.Errorf("%g °P: %d methods, want %d", c.p, len(all), c.want)
		}
	}
	if _, err := Needs(units.GramPerLitre.Of(400), units.DegreePlato.Of(30), LowDemand); err == nil {
		t.Error("400 g/L is taken")
	}
}

// AWRI: 0.8225 × NH3 + alpha amino nitrogen; the exact factor is 0.8224.
func TestAssimilable(t *testing.T) {
	n := check.Must(Assimilable(units.MilligramPerLitre.Of(100), units.MilligramPerLitre.Of(80)))
	check.Near(t, "YAN", n.In(units.MilligramPerLitre), 82.24+80, 0.006, "Australian Wine Research Institute")
	_, err := Assimilable(units.MilligramPerLitre.Of(2001), units.MilligramPerLitre.Of(80))
	check.Refused(t, err, "ammonia", 0, 2000)
	_, err = Assimilable(units.MilligramPerLitre.Of(1), units.MilligramPerLitre.Of(2001))
	check.Refused(t, err, "amino nitrogen", 0, 2000)
}

func TestDemandTravels(t *testing.T) {
	for _, d := range []Demand{LowDemand, MediumDemand, HighDemand} {
		check.Travels(t, d)
	}
	d := HighDemand
	if err := d.UnmarshalText([]byte(" Low ")); err != nil || d != LowDemand {
		t.Errorf("%v, %v", d, err)
	}
	for _, err := range []error{
		d.UnmarshalText([]byte("huge")), second(json.Marshal(Demand(77))),
		second(NeedBySugar(units.GramPerLitre.Of(80), 77)), second(Needs(units.GramPerLitre.Of(80), units.DegreePlato.Of(8), 77)),
	} {
		if e, ok := errors.AsType[*units.NameError](err); !ok || e.What != "nitrogen demand" || len(e.Choices) != 3 {
			t.Error(err)
		}
	}
}

func second[T any](_ T, err error) error { return err }
