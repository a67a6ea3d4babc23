package finish

import (
	"cmp"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// Flavouring is a liquid that is added by drops: its strength and its sugar.
type Flavouring struct {
	Strength units.StrengthByVolume
	Sugar    units.MassConcentration // as sucrose
	OilBased bool                    // essential oils in alcohol, such as citrus, anise or mint
}

// Liquid returns a volume of the flavouring at 20 °C as masses.
//
//   - Source: ethanol at 20 °C from the strength (OIML R 22), the rest of the volume made
//     up with water and sugar by the densities of [gravity.Solution].
//   - Range: volume up to 1e9 L, sugar up to 700 g/L with a strength that leaves room for
//     it; beyond it the error is a [*units.RangeError].
func (f Flavouring) Liquid(v units.Volume) (gravity.Solution, error) {
	const fn = "finish.Flavouring.Liquid"
	litres, sucrose := v.In(units.Litre), f.Sugar.In(units.GramPerLitre)
	if err := limit.Check(fn, "volume", litres, "L", 1e-9, amount.MostVolume, "a flavouring"); err != nil {
		return gravity.Solution{}, err
	}
	if err := limit.Check(fn, "sugar", sucrose, "g/L", 0, 700, "a flavouring"); err != nil {
		return gravity.Solution{}, err
	}
	ethanol := f.Strength.In(units.PercentVolume) / 100 * amount.PureEthanol // kg/L
	part := f.Strength.In(units.PercentVolume)/100 + 0.62*sucrose/1000       // of the volume, before mixing shrinks it
	if err := limit.Check(fn, "strength and sugar", part, "of the volume", 0, 1, "a flavouring"); err != nil {
		return gravity.Solution{}, err
	}
	of := func(water, litres float64) (gravity.Solution, error) {
		return gravity.NewSolution(amount.Kilograms(water*litres), amount.Kilograms(sucrose/1000*litres), amount.Kilograms(ethanol*litres))
	}
	const litre = 1.0
	water, err := numeric.Settle(litre-part, 0, litre, func(water float64) (missing float64, err error) {
		s, err := of(water, litre)
		return litre - s.VolumeAt20().In(units.Litre), err
	})
	if err != nil {
		return gravity.Solution{}, limit.Named(fn, err)
	}
	s, err := of(water, litres)
	return s, limit.Named(fn, err)
}

// BenchTrial is a sample that tasted right: so much of something in so much drink.
type BenchTrial struct {
	Sample units.Volume // of drink
	Added  units.Volume // of the flavouring
}

// Flavoured is a batch flavoured as the trial was.
type Flavoured struct {
	Flavouring    units.Volume // to add
	Liquid        gravity.Solution
	Before, After units.StrengthByVolume
	Ratio         units.Share             // flavouring in the finished drink, by volume of the parts
	Sugar         units.MassConcentration // that the flavouring brings
	AlcoholShare  units.Share             // of the drink's alcohol that the flavouring brings
	OverShare     bool                    // AlcoholShare is above what US law allows flavours to bring to a malt drink
	Cautions      caution.List
}

// hazeCaution goes with oil-based flavours in drinks below the strength at which they
// were dissolved.
const hazeCaution caution.Caution = "haze: Oil-based flavour falls out as haze when its alcohol is diluted (anethole stays clear above 38 % vol only): " +
	"try it in the cold, and use an extract made to be soluble in water where the drink must be clear."

// Scale adds to a batch what the trial added to its sample, in proportion to volume.
//
//   - Source: proportion; strength and sugar by the masses of a [gravity.Solution]. Legal
//     share: flavours may bring at most 49 % of the alcohol up to 6 % vol (27 CFR 25.15(b)
//     and 7.5, read; check the law in force).
//   - Range: sample above 0.1 mL, added up to the sample's volume; beyond it the error is a
//     [*units.RangeError].
//   - Uncertainty: that of the measure; a drop is 0.02 to 0.05 mL (common practice, no
//     source), so count many or dilute the flavouring first.
func (t BenchTrial) Scale(batch gravity.Solution, f Flavouring) (Flavoured, error) {
	const fn, most = "finish.BenchTrial.Scale", 49 // % of the alcohol
	sample, added := t.Sample.In(units.Millilitre), t.Added.In(units.Millilitre)
	if err := limit.Check(fn, "sample", sample, "mL", 0.1, 1e9, "a bench trial"); err != nil {
		return Flavoured{}, err
	}
	if err := limit.Check(fn, "flavouring added", added, "mL", 1e-6, sample, "a bench trial"); err != nil {
		return Flavoured{}, err
	}
	before := batch.VolumeAt20().In(units.Litre)
	if err := limit.Check(fn, "batch", before, "L", amount.LeastVolume, amount.MostVolume, "a batch"); err != nil {
		return Flavoured{}, err
	}
	v := units.Litre.Of(checked.Number(before * added / sample))
	drops, err := f.Liquid(v)
	if err != nil {
		return Flavoured{}, limit.Named(fn, err)
	}
	all, err := batch.Plus(drops)
	if err != nil {
		return Flavoured{}, limit.Named(fn, err)
	}
	out := Flavoured{
		Flavouring: v, Liquid: all, Before: batch.ByVolume(), After: all.ByVolume(),
		Ratio: amount.Share(added / (sample + added)),
		Sugar: units.GramPerLitre.Of(checked.Number(drops.Extract().In(units.Gram) / all.VolumeAt20().In(units.Litre))),
	}
	if e := all.Ethanol().In(units.Kilogram); e > 0 {
		out.AlcoholShare = amount.Share(drops.Ethanol().In(units.Kilogram) / e)
	}
	if out.AlcoholShare.In(units.Percent) > most {
		out.OverShare = true
		out.Cautions = caution.List{overShare}
	}
	out.Cautions = out.Cautions.WithIf(f.OilBased, hazeCaution).WithIf(!f.Sugar.IsZero(), sugarInIt)
	return out, nil
}

const (
	overShare caution.Caution = "over_share: The flavouring brings more than 49 % of the alcohol (27 CFR 7.5, malt drinks up to 6 % vol). " + checkTheLaw
	sugarInIt caution.Caution = "sugar_in_flavouring: Its sugar ferments: a pack with live yeast builds more pressure than the priming alone."
)

// ScaleDose returns what to add to a batch of a fining or of carbon that was right in a
// bench trial: so much mass in so much drink. A large tank mixes worse and settles
// slower than a glass; try half of the batch first where it cannot be undone.
//
//   - Source: proportion to volume.
//   - Range: sample and batch above 0.1 mL, dose up to 50 g/L; beyond it the error is a
//     [*units.RangeError].
func ScaleDose(sample units.Volume, dose units.Mass, batch units.Volume) (units.Mass, error) {
	const fn = "finish.ScaleDose"
	ml, g, total := sample.In(units.Millilitre), dose.In(units.Gram), batch.In(units.Millilitre)
	if err := cmp.Or(
		limit.Check(fn, "sample", ml, "mL", 0.1, 1e9, "a bench trial"),
		limit.Check(fn, "batch", total, "mL", 0.1, 1e12, "a batch"),
		limit.Check(fn, "dose", 1000*g/ml, "g/L", 0, 50, "finings and carbon"),
	); err != nil {
		return units.Mass{}, err
	}
	return amount.Grams(g / ml * total), nil
}
