package nutrient

import (
	"errors"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

// The limits for yeast are for its cell walls: US "yeast, cell wall/membranes of
// autolyzed", OIV II.2.3.4 "yeast ghosts". An autolysate alone can feed a wash.
func TestAutolysateHasNoLimit(t *testing.T) {
	need := amount.MgPerL(66.6)
	for _, j := range []law.Jurisdiction{law.US, law.EU} {
		f, err := FeedInOrder(need, units.Litre.Of(60), j, Offer{Material: material.AutolysedYeast()})
		if err != nil || !f.Shortfall.IsZero() || len(f.Limits) != 0 {
			t.Errorf("%v: %v short, limits %v, %v", j, f.Shortfall, f.Limits, err)
		}
		check.Near(t, "autolysate", f.Doses[0].Mass.In(units.Gram), 66.6*60/40, 1e-9, "4 % of nitrogen")
		walls := Offer{Material: check.Must(material.ByLabel("hulls", material.Composition{AminoNitrogen: units.Percent.Of(0.1)})), Group: law.YeastCellWalls}
		if f, err = FeedInOrder(need, units.Litre.Of(60), j, walls); err != nil || f.Shortfall.IsZero() || len(f.Limits) != 1 {
			t.Errorf("%v: hulls %v short, limits %v, %v", j, f.Shortfall, f.Limits, err)
		}
	}
	if _, err := material.FindAmong("yeast hulls", Sources()...); err == nil || !strings.Contains(err.Error(), "autolysed yeast") {
		t.Errorf("hulls are taken for an autolysate: %v", err)
	}
}

// A source that is not used brings no limit into the answer.
func TestLimitsOfUsedSourcesOnly(t *testing.T) {
	f, err := FeedInOrder(amount.MgPerL(50), units.Litre.Of(60), law.EU, Offers(material.DiammoniumPhosphate(), shelf.Material("thiamine hydrochloride"))...)
	if err != nil || len(f.Limits) != 1 {
		t.Errorf("%v, %v", f.Limits, err)
	}
	f, err = FeedInOrder(amount.MgPerL(50), units.Litre.Of(60), law.US, Offers(material.AutolysedYeast(), material.DiammoniumPhosphate())...)
	if err != nil || len(f.Limits) != 0 {
		t.Errorf("a limit of a salt that is not used: %v, %v", f.Limits, err)
	}
	f, err = CheapestFeed(Wants{Nitrogen: amount.MgPerL(50)}, units.Litre.Of(60), law.US,
		Offer{Material: material.AutolysedYeast(), Price: decimal.NewFromInt(1)}, Offer{Material: material.DiammoniumPhosphate(), Price: decimal.NewFromInt(900)})
	if err != nil || len(f.Limits) != 0 || len(f.Doses) != 1 {
		t.Errorf("a limit of a salt that is too dear: %v, %v, %v", f.Limits, f.Doses, err)
	}
}

// EU law counts thiamine, US law its hydrochloride: 0.6 mg/L of C12H17N4OS (265.36) is
// 0.7626 mg/L of the salt (337.26, atomic weights 2021).
func TestThiamineIsCountedAsTheLawDoes(t *testing.T) {
	for j, most := range map[law.Jurisdiction]float64{law.US: 0.599132, law.EU: 0.762576} {
		f, err := CheapestFeed(Wants{Thiamine: amount.MgPerL(2)}, units.Litre.Of(1000), j, Offer{Material: shelf.Material("thiamine hydrochloride")})
		if err != nil || len(f.Doses) != 1 {
			t.Fatal(f, err)
		}
		check.Near(t, j.String(), f.Doses[0].Mass.In(units.Gram), most, 1e-5, "grams in a cubic metre")
	}
}

// A law that is none of the list is refused, not read as one without limits.
func TestNoSuchLaw(t *testing.T) {
	for _, err := range []error{
		second(FeedInOrder(amount.MgPerL(50), units.Litre.Of(60), 9, Offer{Material: material.DiammoniumPhosphate()})),
		second(FeedInOrder(amount.MgPerL(50), units.Litre.Of(60), 9)),
		second(CheapestFeed(Wants{Nitrogen: amount.MgPerL(50)}, units.Litre.Of(60), -1, Offer{Material: shelf.Material("urea")})),
	} {
		if e, ok := errors.AsType[*units.NameError](err); !ok || e.Func == "law.Jurisdiction.Limits" {
			t.Error(err)
		}
	}
}
