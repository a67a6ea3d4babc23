package nutrient

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

func price(text string) decimal.Decimal { return decimal.RequireFromString(text) }

// 100 mg/L of nitrogen, 10 of it amino: 0.25 g/L of yeast matter at 4 %, the rest
// 90/212.14 g/L of diammonium phosphate.
func TestBestFeedByHand(t *testing.T) {
	f := check.Must(CheapestFeed(Wants{Nitrogen: units.MilligramPerLitre.Of(100), Amino: units.MilligramPerLitre.Of(10)}, units.Litre.Of(10), law.US,
		Offer{Material: material.AutolysedYeast(), Price: price("20")}, Offer{Material: material.DiammoniumPhosphate(), Price: price("5")},
		Offer{Material: material.MonoammoniumPhosphate(), Price: price("5")}))
	if len(f.Doses) != 2 {
		t.Fatalf("%v", f.Doses)
	}
	check.Near(t, "yeast", f.Doses[0].Mass.In(units.Gram), 2.5, 1e-9, "by hand")
	check.Near(t, "DAP", f.Doses[1].Mass.In(units.Gram), 900/212.14, 1e-3, "by hand")
	check.Near(t, "N", f.Supply.Nitrogen().In(units.MilligramPerLitre), 100, 1e-9, "wanted")
	if !f.Shortfall.IsZero() || len(f.Limits) != 1 || f.Cautions[len(f.Cautions)-1] != law.CheckTheLaw {
		t.Errorf("%+v", f)
	}
}

// Dearer DAP than MAP for the same nitrogen: 0.21214/9 < 0.12177/5.
func TestBestFeedTakesTheCheaper(t *testing.T) {
	f := check.Must(CheapestFeed(Wants{Nitrogen: units.MilligramPerLitre.Of(50)}, units.Litre.Of(1), law.US,
		Offer{Material: material.DiammoniumPhosphate(), Price: price("9")}, Offer{Material: material.MonoammoniumPhosphate(), Price: price("5")}))
	if len(f.Doses) != 1 || f.Doses[0].Material.Name() != "monoammonium phosphate" {
		t.Errorf("%v", f.Doses)
	}
}

// Without a price a kilogram counts as 1: 1/0.21214 for DAP is more than 0.55/0.12177 for
// MAP and less than 0.6/0.12177. One limit asks for the caution about laws.
func TestBestFeedWithoutAPrice(t *testing.T) {
	for p, want := range map[string]string{"0.55": "monoammonium phosphate", "0.6": "diammonium phosphate"} {
		f := check.Must(CheapestFeed(Wants{Nitrogen: units.MilligramPerLitre.Of(50)}, units.Litre.Of(1), law.US,
			Offer{Material: material.DiammoniumPhosphate(), Price: decimal.Zero}, Offer{Material: material.MonoammoniumPhosphate(), Price: price(p)}))
		if len(f.Doses) != 1 || f.Doses[0].Material.Name() != want || len(f.Limits) != 1 || f.Cautions[len(f.Cautions)-1] != law.CheckTheLaw {
			t.Errorf("at %s: %+v", p, f)
		}
	}
}

func TestBestFeedSaysWhatIsOpen(t *testing.T) {
	f := check.Must(CheapestFeed(Wants{Nitrogen: units.MilligramPerLitre.Of(300), Zinc: units.MilligramPerLitre.Of(0.5),
		Magnesium: units.MilligramPerLitre.Of(5)}, units.Litre.Of(1), law.US,
		Offer{Material: material.DiammoniumPhosphate(), Price: decimal.Zero}, Offer{Material: material.ZincSulfateHeptahydrate(), Price: decimal.Zero}))
	check.Near(t, "DAP", f.Doses[0].Mass.In(units.Gram), 0.95861, 1e-5, "27 CFR 24.246")
	check.Near(t, "zinc salt", f.Doses[1].Mass.In(units.Milligram), 0.5*4.398, 0.001, "4.398 mg of the salt for 1 mg Zn")
	check.Near(t, "open", f.Shortfall.In(units.MilligramPerLitre), 300-203.36, 0.01, "by hand")
	all := strings.Join(f.Cautions.Texts(), "\n")
	if !strings.Contains(all, "of the nitrogen") || !strings.Contains(all, "5 mg/L of the magnesium") || strings.Contains(all, "of the zinc") {
		t.Errorf("%s", all)
	}
}

// One want left open is said as several are.
func TestBestFeedSaysOneOpen(t *testing.T) {
	f := check.Must(CheapestFeed(Wants{Nitrogen: units.MilligramPerLitre.Of(300)}, units.Litre.Of(1), law.US,
		Offer{Material: material.DiammoniumPhosphate(), Price: decimal.Zero}))
	if said := wantOpen.With("96.6 mg/L of the nitrogen"); !slices.Contains(f.Cautions, said) { // 300 less 203.36
		t.Errorf("%v, want %v", f.Cautions, said)
	}
}

func TestBestFeedKeepsLimitsAndBeatsTheOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sources := []material.Material{material.DiammoniumPhosphate(), material.MonoammoniumPhosphate(), material.AmmoniumSulfate(), material.AutolysedYeast()}
		need := check.Must(units.MilligramPerLitre.Try(rapid.Float64Range(1, 500).Draw(t, "need, mg/L")))
		whose := law.Jurisdiction(rapid.IntRange(0, 1).Draw(t, "law"))
		var offers []Offer
		costs := map[string]float64{}
		for _, s := range sources {
			cents := int64(rapid.IntRange(100, 5000).Draw(t, "cents a kg"))
			offers = append(offers, Offer{Material: s, Price: decimal.New(cents, -2)})
			costs[s.Name()] = float64(cents) / 100
		}
		v := units.Litre.Of(1)
		best := check.Must(CheapestFeed(Wants{Nitrogen: need}, v, whose, offers...))
		order := check.Must(FeedInOrder(need, v, whose, Offers(sources...)...))
		if best.Shortfall.In(units.MilligramPerLitre) > order.Shortfall.In(units.MilligramPerLitre)+1e-6 {
			t.Fatalf("%v open, %v in order", best.Shortfall, order.Shortfall)
		}
		cost := func(f Feed) (sum float64) {
			for _, d := range f.Doses {
				sum += costs[d.Material.Name()] * d.Mass.In(units.Kilogram)
			}
			return sum
		}
		if order.Shortfall.IsZero() && cost(best) > cost(order)*(1+1e-9) {
			t.Fatalf("%v costs more than %v", best.Doses, order.Doses)
		}
		for _, l := range best.Limits {
			var sum float64
			for _, d := range best.Doses {
				for _, s := range l.Covers {
					if law.SubstanceOf(d.Material) == s {
						sum += d.Mass.In(units.Gram)
					}
				}
			}
			if sum > l.Concentration().In(units.GramPerLitre)*(1+1e-9) {
				t.Fatalf("%v passed", l)
			}
		}
		if d := best.Supply.Nitrogen().Plus(best.Shortfall).Minus(need).In(units.MilligramPerLitre); math.Abs(d) > 1e-5 {
			t.Fatalf("off by %g", d)
		}
	})
}

// 1 mg of P is in 132.056/30.974 mg of DAP, which holds no potassium and no thiamine.
func TestBestFeedForMinerals(t *testing.T) {
	one := units.MilligramPerLitre.Of(1)
	f := check.Must(CheapestFeed(Wants{Phosphorus: one}, units.Litre.Of(1), law.US, Offer{Material: material.DiammoniumPhosphate(), Price: decimal.Zero}))
	check.Near(t, "DAP", f.Doses[0].Mass.In(units.Milligram), 132.056/30.974, 0.001, "stoichiometry")
	f = check.Must(CheapestFeed(Wants{Potassium: one, Thiamine: one}, units.Litre.Of(1), law.US,
		Offer{Material: material.DiammoniumPhosphate(), Price: decimal.Zero}))
	if len(f.Doses) != 0 || !strings.Contains(strings.Join(f.Cautions.Texts(), "\n"), "1 mg/L of the potassium") ||
		!strings.Contains(strings.Join(f.Cautions.Texts(), "\n"), "1 mg/L of the thiamine") {
		t.Errorf("%+v", f)
	}
}

func TestBestFeedRefuses(t *testing.T) {
	dap := Offer{Material: material.DiammoniumPhosphate(), Price: price("1")}
	want := Wants{Nitrogen: units.MilligramPerLitre.Of(10)}
	_, err := CheapestFeed(want, units.Volume{}, law.US, dap)
	check.Refused(t, err, "volume", amount.LeastVolume, amount.MostVolume)
	_, err = CheapestFeed(want, units.Litre.Of(1), law.US)
	check.Refused(t, err, "offers", 1, 30)
	_, err = CheapestFeed(Wants{Zinc: units.MilligramPerLitre.Of(1001)}, units.Litre.Of(1), law.US, dap)
	check.Refused(t, err, "zinc", 0, 1000)
	dap.Price = price("1000001")
	_, err = CheapestFeed(want, units.Litre.Of(1), law.US, dap)
	check.Refused(t, err, "price of diammonium phosphate", 0, 1e6)
	dap.Price = price("999999")
	check.Must(CheapestFeed(want, units.Litre.Of(1), law.US, dap))
}
