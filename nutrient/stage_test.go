package nutrient

import (
	"strings"
	"testing"
	"time"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

func TestStageShares(t *testing.T) {
	for n, want := range map[int][]float64{1: {0}, 2: {0, 100.0 / 3}, 3: {0, 100.0 / 6, 100.0 / 3}, 4: {0, 100.0 / 9, 200.0 / 9, 100.0 / 3}} {
		got := check.Must(StageShares(n))
		for i := range want {
			check.Near(t, "share", got[i].In(units.Percent), want[i], 1e-9, "common practice, no source")
		}
	}
	check.Near(t, "last", LastAddition().In(units.Percent), 100.0/3, 1e-9, "common practice, no source")
	for _, n := range []int{0, 11} {
		_, err := StageShares(n)
		check.Refused(t, err, "additions", 1, 10)
	}
	if _, err := StageShares(10); err != nil {
		t.Error(err)
	}
}

// 5.09 g at 0.1 g: 5.0 g in all, 1.7 + 1.7 + 1.6.
func TestInStages(t *testing.T) {
	scale := check.Mass(t, "0.1 g")
	s := check.Must(InStages(3, scale, material.Dose{Material: material.DiammoniumPhosphate(), Mass: units.Gram.Of(5.09)},
		material.Dose{Material: material.ZincSulfateHeptahydrate(), Mass: units.Gram.Of(0.05)}))
	want := [][]string{{"1.7 g", "0 g"}, {"1.7 g", "0 g"}, {"1.6 g", "0 g"}}
	sum := decimal.Zero
	for i, st := range s.Stages {
		for k, w := range st.Weigh {
			if w.String() != want[i][k] && !(w.Decimal().IsZero() && want[i][k] == "0 g") {
				t.Errorf("stage %d dose %d: %v, want %s", i, k, w, want[i][k])
			}
		}
		sum = sum.Add(st.Weigh[0].Decimal())
	}
	if !sum.Equal(s.Totals[0].Decimal()) || !sum.Equal(decimal.RequireFromString("5")) {
		t.Errorf("sum %v, total %v", sum, s.Totals[0])
	}
	if len(s.Cautions) != 1 || !strings.Contains(s.Cautions[0].Text(), "zinc") {
		t.Errorf("%q", s.Cautions)
	}
	_, err := InStages(1, scale, material.Dose{Material: shelf.Material("urea"), Mass: units.Mass{}.Minus(units.Gram.Of(1))})
	check.Refused(t, err, "dose", 0, amount.MostMass)
	if _, err := InStages(0, scale); err == nil {
		t.Error("no stage is taken")
	}
	if _, err := InStages(1, check.Mass(t, "0 g"), material.Dose{Material: shelf.Material("urea"), Mass: units.Gram.Of(1)}); err == nil {
		t.Error("a scale of 0 g is taken")
	}
}

func TestEstimatedTime(t *testing.T) {
	for _, c := range []struct {
		share float64
		want  time.Duration
	}{{0, 12 * time.Hour}, {0.5, 78 * time.Hour}, {1, 144 * time.Hour}} {
		got := check.Must(EstimatedTime(amount.Share(c.share), 6*24*time.Hour))
		if d := got - c.want; d > time.Second || d < -time.Second {
			t.Errorf("%v: %v, want %v", c.share, got, c.want)
		}
	}
	_, err := EstimatedTime(amount.Share(0.5), 23*time.Hour)
	check.Refused(t, err, "length of the ferment", 1, 365)
	_, err = EstimatedTime(amount.Share(0.5), 366*24*time.Hour)
	check.Refused(t, err, "length of the ferment", 1, 365)
}

func TestNoTimeComesWithAnError(t *testing.T) {
	long, err := EstimatedTime(amount.Share(0.5), 0)
	check.Nothing(t, "EstimatedTime", long, err)
}
