package plan

import (
	"cmp"
	"fmt"
	"strings"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// The sugar that a litre may take for 1 % vol: the least is what the balance of atoms gives with
// the glycerol that yeast makes.
const leastForPercent, mostForPercent = 16.5, 25.0 // g/L

// yeastOK checks what is said of the yeast, and takes its own yield.
func (k *recipe) yeastOK() (err error) {
	y := k.req.Yeast
	if a := y.Attenuation; a != nil {
		if err := within("yeast.attenuation", *a, units.Percent, 20, 100); err != nil {
			return err
		}
		for i, p := range k.packs {
			if p.primes() && a.In(units.Percent) < 100 {
				return &RequestError{Field: fmt.Sprintf("packs[%d].prime_with", i), Value: p.Priming,
					Allowed: "left out where the yeast leaves sugar: in the bottle it goes on with it. Take a keg, or fill under counter-pressure"}
			}
		}
	}
	if own := y.Yield; own != nil {
		if err := within("yeast.sugar_for_1_percent", *own, units.GramPerLitre, leastForPercent, mostForPercent); err != nil {
			return err
		}
		if k.yield, err = scaled(k.yield, cmp.Or(k.req.atoms, 1)*usualForPercent/own.In(units.GramPerLitre)); err != nil {
			return named("yeast.sugar_for_1_percent", own.Text(units.GramPerLitre, 2), err)
		}
		if strings.Contains(k.fermentable.Name(), "malt") {
			return &RequestError{Field: "yeast.sugar_for_1_percent", Value: own.Text(units.GramPerLitre, 2),
				Allowed: "left out for malt extract, whose yield is Balling's"}
		}
	}
	return k.strainOK()
}

// usualForPercent is the hexose that a litre takes for 1 % vol: French order of 3 May 1996 art. 2,
// as [gravity.SugarWashYield] has it.
const usualForPercent = 16.83 // g/L

// scaled is a yield with so many times the ethanol and its gas; the yeast takes up the difference.
func scaled(y gravity.Yield, times float64) (gravity.Yield, error) {
	ethanol, co2 := times*y.Ethanol().In(units.Fraction), times*y.CO2().In(units.Fraction)
	return gravity.NewYield(units.Kilogram.Of(1), gravity.Fermented{
		Ethanol: kilograms(ethanol), CO2: kilograms(co2), Residue: kilograms(y.Residue().In(units.Fraction)), Water: kilograms(y.Water().In(units.Fraction)),
		Biomass: kilograms(max(0, 1+y.Water().In(units.Fraction)-ethanol-co2-y.Residue().In(units.Fraction))),
	})
}

// strainOK holds the batch against its maker's sheet: a strength that it does not reach is refused, the rest
// is a caution.
func (k *recipe) strainOK() error {
	s := k.req.Yeast.Strain
	if s == nil {
		return nil
	}
	if s.Demand != "" {
		if err := oneOf("yeast.strain.demand", s.Demand, "low", "medium", "high"); err != nil {
			return err
		}
	}
	if t := s.Tolerance; t != nil {
		if err := within("yeast.strain.tolerance", *t, units.PercentVolume, 1, 25); err != nil {
			return err
		}
	}
	for _, t := range []struct {
		field string
		t     *units.Temperature
	}{{"coldest", s.Coldest}, {"warmest", s.Warmest}} {
		if t.t != nil {
			if err := within("yeast.strain."+t.field, *t.t, units.Celsius, 0, 45); err != nil {
				return err
			}
		}
	}
	if s.Coldest != nil && s.Warmest != nil && s.Coldest.Compare(*s.Warmest) > 0 {
		return &RequestError{Field: "yeast.strain.coldest", Value: s.Coldest.Text(units.Celsius, 1), is: quantity(*s.Coldest),
			Allowed: "at most its warmest, " + s.Warmest.Text(units.Celsius, 1)}
	}
	return nil
}
