package ferment

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
)

// Metabolism says what yeast makes of sugar beside ethanol and gas, and what it
// takes from the liquid to grow. Start from [UsualMetabolism] and change what is
// known better.
type Metabolism struct {
	// Mass made for each mass of hexose used.
	Succinic, Acetic, Lactic, Glycerol units.Share

	MostYeast units.Share // dry yeast for each mass of hexose when nothing is short

	// Nitrogen in dry yeast: short of nitrogen it grows down to Lean, well fed it
	// takes up to Full.
	LeanNitrogen, FullNitrogen units.Share

	// What dry yeast takes up if it is there.
	Phosphorus, Potassium units.Share

	// FreePerPotassium is the H+ set free for each K+ taken up, of 1. The rest of the
	// charge moves with ions that were not measured.
	FreePerPotassium units.Share
}

// UsualMetabolism returns what fermenting yeast usually does.
//
//   - Source: succinic acid and glycerol 0.67 and 3.16 g from 105.26 g of hexose
//     (Pasteur, Ann. Chim. Phys. 58 (1860) 323, recalled from memory); acetic and
//     lactic acid 0.2–0.6 and 0.1–0.3 g/L in wine of 200 g/L sugar (recalled from
//     memory); nitrogen 10 % of dry matter (Dharmadhikari, read), 6.4 % when lean
//     (crude protein 40 %, recalled from memory); dry yeast 5.323 of 100 extract
//     (Balling, Die Gährungschemie, read); P 1.3 %, K 2 % of dry matter (recalled
//     from memory); 0.8 free H+ for each K+ (abstract on potassium and ammonium
//     uptake of fermenting yeast, read).
//   - Units: shares of the mass of hexose used; of dry yeast; of moles for potassium.
//   - Uncertainty: see [Metabolism.LeastAcids] and [Metabolism.MostAcids]; a factor of two
//     in most figures.
func UsualMetabolism() Metabolism {
	return Metabolism{
		Succinic: units.Percent.Of(100 * 0.67 / 105.26), Glycerol: units.Percent.Of(100 * 3.16 / 105.26),
		Acetic: units.Percent.Of(100 * 0.4 / 200), Lactic: units.Percent.Of(100 * 0.2 / 200),
		MostYeast:    units.Percent.Of(5.323 / 1.0526),
		LeanNitrogen: amount.Share(formula.NitrogenOfLeanYeast), FullNitrogen: amount.Share(formula.NitrogenOfYeast),
		Phosphorus: units.Percent.Of(1.3), Potassium: units.Percent.Of(2),
		FreePerPotassium: units.Fraction.Of(0.8),
	}
}

// LeastAcids returns m with the least acids of their spread.
//
//   - Source: in wine of about 200 g/L sugar: succinic 0.5 g/L (MSc thesis,
//     Stellenbosch 2010, read), acetic 0.2, lactic 0.1 g/L (recalled from memory).
func (m Metabolism) LeastAcids() Metabolism {
	m.Succinic, m.Acetic, m.Lactic = units.Percent.Of(100*0.5/200), units.Percent.Of(100*0.2/200), units.Percent.Of(100*0.1/200)
	return m
}

// MostAcids returns m with the most acids of their spread.
//
//   - Source: succinic 1.7 g/L from about 200 g/L sugar (Metabolism of the anaerobic
//     formation of succinic acid by S. cerevisiae, abstract, read); acetic 24 mmol for
//     each mole of glucose with ammonium (Yang et al., World J. Microbiol. Biotechnol.
//     2021, read), 8.0 g/kg; lactic 0.3 g/L in wine of 200 g/L (recalled from memory).
func (m Metabolism) MostAcids() Metabolism {
	m.Succinic, m.Lactic = units.Percent.Of(100*1.7/200), units.Percent.Of(100*0.3/200)
	m.Acetic = amount.Share(0.024 * formula.AceticAcid.Molar() / formula.Hexose.Molar())
	return m
}

const metabolismSource = "a ferment that makes mostly ethanol"

func (m Metabolism) check(fn string) error {
	for _, c := range [...]struct {
		what     string
		s        units.Share
		min, max float64
	}{
		{"succinic acid", m.Succinic, 0, 5}, {"acetic acid", m.Acetic, 0, 5}, {"lactic acid", m.Lactic, 0, 5},
		{"glycerol", m.Glycerol, 0, 15}, {"most yeast", m.MostYeast, 0, 20},
		{"lean nitrogen", m.LeanNitrogen, 3, 12}, {"full nitrogen", m.FullNitrogen, 3, 12},
		{"phosphorus of yeast", m.Phosphorus, 0, 4}, {"potassium of yeast", m.Potassium, 0, 5},
		{"free H+ for K+", m.FreePerPotassium, 0, 100},
	} {
		if v := c.s.In(units.Percent); !(v >= c.min && v <= c.max) {
			return limit.Check(fn, c.what, v, "%", c.min, c.max, metabolismSource)
		}
	}
	return limit.Check(fn, "full nitrogen", m.FullNitrogen.In(units.Percent), "%", m.LeanNitrogen.In(units.Percent), 12, metabolismSource)
}
