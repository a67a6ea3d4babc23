package plan

import (
	"fmt"
	"math"
	"time"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
)

// yeast is what to pitch.
func (m *maker) yeast(say *notes) (y YeastPlan, err error) {
	cold := m.batch.wash.VolumeAt20()
	cells, err := yeast.CellsToPitch(yeast.UsualRate().Value, m.batch.wash.Gravity().Extract(), cold)
	if err != nil {
		return y, err
	}
	y.Cells, y.Form = cells.In(units.BillionCells), m.req.Yeast.Form
	pack, err := yeast.DryPack(units.Cells{}, units.Celsius.Of(4))
	if y.Form == "liquid" {
		pack, err = yeast.LiquidPack(units.Cells{})
	}
	if err != nil {
		return y, err
	}
	age := time.Duration(0)
	if a := m.req.Yeast.Age; a != nil {
		age = time.Duration(*a)
	}
	pitch, err := pack.Need(cells, age)
	if err != nil {
		return y, err
	}
	y.Source = pack.Evidence().String()
	y.Packs = pitch.Packs.Value
	much := y.Packs
	if y.Form == "dry" {
		much = pitch.Mass.Value.In(units.Gram)
		if y.Mass, err = pitch.Mass.Value.Round(m.req.Scales.Small, units.Up); err != nil {
			return y, err
		}
		say.weigh(Weight{What: "dry yeast", For: "fermenter", Mass: y.Mass, Asked: pitch.Mass.Value})
	}
	k := m.cells()
	y.Low, y.High, y.From = much*k.Usual/k.Quantile(0.975), much*k.Usual/k.Quantile(0.025), k.Name
	for _, c := range pitch.Cautions {
		say.caution(c.Text())
	}
	if y.Form == "dry" {
		wake, err := yeast.Rehydrate(y.Mass.Quantity(), yeast.AleYeast, m.req.Fermenter.Temperature)
		if err != nil {
			return y, err
		}
		y.Rehydration = &RehydrationPlan{Water: wake.Water.Value, Temperature: wake.Temperature.Value, Time: Duration(wake.Time)}
	}
	return y, nil
}

// cells is what is known of the cells in a gram of dry yeast, or in a pack of liquid yeast, as they were packed.
func (r *recipe) cells() forward.Unknown {
	k := *unknown(forward.Known(), "cells in a gram")
	if r.req.Yeast.Form == "liquid" {
		k.Name, k.Low, k.Usual, k.High, k.Evidence = "cells in a pack", 50, 100, 200, "package yeast, LiquidPack"
	}
	return k
}

// strain says where the batch leaves its yeast's own sheet. A strength that the strain does not
// reach is refused: the sugar that it leaves would be found in the packs.
func (m *maker) strain(say *notes) error {
	if own := m.req.Yeast.Yield; own != nil && m.req.atoms > 0 {
		say.caution(fmt.Sprintf("Your yield, %.2f g/L of sugar to 1 %% vol, is better than the balance of atoms gives with the yeast that this nitrogen "+
			"grows: the plan counts %.2f g/L.", own.In(units.GramPerLitre), own.In(units.GramPerLitre)/m.req.atoms))
	}
	s := m.req.Yeast.Strain
	if s == nil {
		return nil
	}
	base := units.PercentVolume.Of(checked.Number(m.batch.base.ByVolume().In(units.PercentVolume) / m.swell))
	if t := s.Tolerance; t != nil && base.Compare(*t) > 0 {
		most := m.plan.Strength.In(units.PercentVolume) * t.In(units.PercentVolume) / base.In(units.PercentVolume)
		return &RequestError{Field: "yeast.strain.tolerance", Value: t.Text(units.PercentVolume, 1), is: quantity(*t),
			Allowed: fmt.Sprintf("at least the %.1f %% vol of the base drink: take another strain, or a strength of at most %.1f %% vol",
				math.Ceil(10*base.In(units.PercentVolume))/10, math.Floor(10*most+1e-9)/10)}
	}
	name := s.Name
	if name == "" {
		name = "The yeast"
	}
	t := m.req.Fermenter.Temperature
	if s.Coldest != nil && t.Compare(*s.Coldest) < 0 {
		say.caution(fmt.Sprintf("%s works from %s on by its sheet: this yeast was not made for %s, it may not start or stop early.", name,
			s.Coldest.Text(units.Celsius, 0), t.Text(units.Celsius, 0)))
	}
	if s.Warmest != nil && t.Compare(*s.Warmest) > 0 {
		say.caution(fmt.Sprintf("%s works up to %s by its sheet: this yeast was not made for %s, it may taste of solvent or die early.",
			name, s.Warmest.Text(units.Celsius, 0), t.Text(units.Celsius, 0)))
	}
	if d := m.req.Nutrient.Demand; s.Demand != "" && d != "" && s.Demand != d {
		say.caution(fmt.Sprintf("%s has a %s demand for nitrogen by its sheet, the batch is fed for a %s one.", name, s.Demand, d))
	}
	return nil
}
