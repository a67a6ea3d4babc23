package gravity

import (
	"cmp"
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

const (
	// Gravity for a gram a litre of brewing salts, and its standard uncertainty from salt to
	// salt: sodium chloride 0.00071 (1 % is 10.053 g/L and 1005.3 kg/m³, Poradnik
	// fizykochemiczny, WNT 1974; read); potassium chloride 0.00064, calcium chloride 0.00083,
	// magnesium sulfate 0.0010 (CRC Handbook; recalled from memory).
	saltGravity, saltGravitySpread = 0.00075, 0.0001
	// What the yeast leaves of the sugar, relative: glycerol of 4 to 8 g for 100 g of ethanol
	// (recalled from memory) where Pasteur has 6.2.
	residueSpread = 0.3
)

// GravityWith returns the gravity 20/20 °C of the liquid with so much of salts, nutrient and
// buffer dissolved in it beside: what a hydrometer shows.
//
//   - Source: [Solution.Gravity]; 0.00075 for a gram a litre of salts.
//   - Range: minerals from 0 to 20 g/L; beyond it the error is a [*units.RangeError].
//   - Uncertainty: 0.0001 for a gram a litre, from salt to salt.
func (s Solution) GravityWith(minerals units.MassConcentration) (Gravity, error) {
	m := minerals.In(units.GramPerLitre)
	if err := limit.Check("gravity.Solution.GravityWith", "minerals", m, "g/L", 0, mostMinerals, "a brewing water with nutrient"); err != nil {
		return Gravity{}, err
	}
	return one(clamp(s.Gravity().SG()+saltGravity*m, lowestGravity, highestGravity)), nil
}

const mostMinerals = 20 // g/L

// MeasuredFloor returns the gravity 20/20 °C that a wash ends at when all of its fermentable
// extract is used, with what is dissolved beside extract, and how sure that is. minerals is
// the least and the most of salts, of nutrient and buffer that stay in the liquid, in g/L:
// 0.3 to 0.8 in most sugar washes (common practice, no source). The yield has a spread, as
// for [StrengthByHydrometer].
//
// In practice a hydrometer shows this within its own error and half a division, 0.001 or more
// for a common one; gas that clings to it lifts it by as much again, so stir the gas out, and
// yeast in suspension counts as dissolved.
//
//   - Source: [Solution.Dry]; 0.00075 for a gram a litre of salts; uncertainty after JCGM
//     100:2008 of the yield, of what yeast leaves (30 %), of minerals (anywhere between the
//     two with the same chance) and of the formulas ([Solution.DensityUncertainty]).
//   - Range: a spread from 0 to 20 %, minerals from 0 to 20 g/L, and that of [Solution.Dry];
//     otherwise the error is a [*units.RangeError].
//   - Uncertainty: the result's own, about 0.0003 for 4.6 % vol.
func (wash Solution) MeasuredFloor(y Yield, spread units.Share, least, most units.MassConcentration) (units.MeasuredNumber, error) {
	const fn = "gravity.Solution.MeasuredFloor"
	lo, hi := least.In(units.GramPerLitre), most.In(units.GramPerLitre)
	if err := cmp.Or(
		checkSpread(fn, spread),
		limit.Check(fn, "least minerals", lo, "g/L", 0, mostMinerals, "a brewing water with nutrient"),
		limit.Check(fn, "most minerals", hi, "g/L", lo, mostMinerals, "a brewing water with nutrient"),
	); err != nil {
		return units.MeasuredNumber{}, limit.Named(fn, err)
	}
	part := spread.In(units.Percent) / 100
	dry, _, err := wash.Dry(y)
	strong, _, strongErr := wash.Dry(y.times(1 + part))
	weak, _, weakErr := wash.Dry(y.times(1 - part))
	if err = cmp.Or(err, strongErr, weakErr); err != nil {
		return units.MeasuredNumber{}, limit.Named(fn, err)
	}
	more := dry // the rest of the sugar is yeast, which is gone
	for _, k := range []Sugar{AsGlycerol, AsOrganicAcid} {
		more.extract[k] += residueSpread * (dry.extract[k] - wash.extract[k])
	}
	rho, _ := dry.DensityUncertainty()
	mean, floor := (lo+hi)/2, dry.Gravity().SG()
	sum := 0.0
	for _, u := range []float64{
		(weak.Gravity().SG() - strong.Gravity().SG()) / 2,
		more.Gravity().SG() - floor,
		saltGravity * (hi - lo) / 2 / math.Sqrt(3),
		saltGravitySpread * mean,
		rho.In(units.KilogramPerCubicMetre) / syrup20[0],
	} {
		sum += u * u
	}
	return units.Measure(number(floor+saltGravity*mean), number(math.Sqrt(sum)))
}
