package ferment

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
)

// Substrate is what a ferment uses, and what it has at hand to grow on.
type Substrate struct {
	Hexose                units.Mass // sugar used, counted after inversion: [sugar.Parts].AsHexose
	Ammonium, Amino, Urea units.Mass // nitrogen at hand by form, as N
	Phosphorus, Potassium units.Mass // at hand, as the element

	// Reserve is the nitrogen that yeast which is there already holds above its lean
	// content, as N: it can grow on it. So a ferment may be reckoned in parts.
	Reserve units.Mass
}

// Balance is a ferment in which every atom and every charge is accounted for.
type Balance struct {
	Hexose, Ethanol, CO2               units.Mass
	Glycerol, Succinic, Acetic, Lactic units.Mass
	DryYeast                           units.Mass // new, not what was pitched
	Water                              units.Mass // made; negative if used up; without the water of inversion

	Ammonium, Amino, Urea units.Mass // nitrogen taken up by form, as N
	Phosphorus, Potassium units.Mass // taken up, as the element

	// Protons is the H+ set free into the liquid by what yeast takes up: one for each
	// ammonium, [Metabolism].FreePerPotassium for each potassium, less one for each
	// phosphate, which goes in as neutral acid. It may be negative. The acids made
	// are not counted here: they give off H+ as far as the pH allows.
	Protons units.Amount
}

// moles is the same balance in mol.
type moles struct {
	hexose, ethanol, co2, glycerol, succinic, acetic, lactic float64
	skeleton                                                 float64 // C-mol of yeast without N, P, K
	water                                                    float64
	ammonium, amino, urea, phosphorus, potassium             float64
	free                                                     float64 // of 1, H+ for K+
}

// Ferment returns the balance of using so much sugar with what is at hand to grow on.
// Yeast grows until the nitrogen is used up, down to its lean nitrogen content, or
// until it reaches the most that the sugar carries; it takes nitrogen up to its full
// content while there is any. Ethanol follows from the electrons
// that the other products leave, CO2 from the carbon, water from the oxygen.
//
//   - Source: elemental and electron balance (Roels, Energetics and Kinetics in
//     Biotechnology (1983), chapter 2; recalled from memory) with CIAAW atomic weights
//     2021. Ammonium sets one H+ free, amino acids and urea none (Castrillo et al.,
//     Microbiology 141 (1995) 1567, recalled from memory). Amino acids are counted as
//     alanine.
//   - Range: hexose up to 1e9 kg, nitrogen and minerals up to a tenth of it each;
//     shares of m as their checks say; beyond it the error is a [*units.RangeError].
//   - Uncertainty: that of the shares; ethanol about 1 % (Pasteur's balance: 0.8 %).
func (m Metabolism) Ferment(in Substrate) (Balance, error) {
	const fn = "ferment.Metabolism.Ferment"
	if err := m.check(fn); err != nil {
		return Balance{}, err
	}
	g := in.Hexose.In(units.Gram)
	if err := limit.Check(fn, "hexose", g/1000, "kg", 0, amount.MostMass/1000, metabolismSource); err != nil {
		return Balance{}, err
	}
	most := g / 10
	for _, c := range [...]struct {
		what string
		m    units.Mass
	}{
		{"ammonium nitrogen", in.Ammonium}, {"amino nitrogen", in.Amino}, {"urea nitrogen", in.Urea},
		{"phosphorus", in.Phosphorus}, {"potassium", in.Potassium}, {"nitrogen held by yeast", in.Reserve},
	} {
		if v := c.m.In(units.Gram); !(v >= 0 && v <= most) {
			return Balance{}, limit.Check(fn, c.what, v, "g", 0, most, "a tenth of the sugar")
		}
	}
	return m.ferment(in), nil
}

func (m Metabolism) ferment(in Substrate) Balance {
	g := in.Hexose.In(units.Gram)
	nitrogen := in.Ammonium.In(units.Gram) + in.Amino.In(units.Gram) + in.Urea.In(units.Gram)

	// Growth, g.
	most := m.MostYeast.In(units.Fraction) * g
	lean, full := m.LeanNitrogen.In(units.Fraction), m.FullNitrogen.In(units.Fraction)
	yeast := math.Min(most, (nitrogen+in.Reserve.In(units.Gram))/lean)
	taken := math.Min(nitrogen, full*most)
	var share float64 // of each form alike
	if nitrogen > 0 {
		share = taken / nitrogen
	}
	phosphorus := math.Min(in.Phosphorus.In(units.Gram), m.Phosphorus.In(units.Fraction)*yeast)
	potassium := math.Min(in.Potassium.In(units.Gram), m.Potassium.In(units.Fraction)*yeast)

	n := moles{
		hexose:   g / formula.Hexose.Molar(),
		glycerol: g * m.Glycerol.In(units.Fraction) / formula.GlycerolFormula.Molar(),
		succinic: g * m.Succinic.In(units.Fraction) / formula.SuccinicAcid.Molar(),
		acetic:   g * m.Acetic.In(units.Fraction) / formula.AceticAcid.Molar(),
		lactic:   g * m.Lactic.In(units.Fraction) / formula.LacticAcid.Molar(),

		ammonium: share * in.Ammonium.In(units.Gram) / formula.WeightN,
		amino:    share * in.Amino.In(units.Gram) / formula.WeightN,
		urea:     share * in.Urea.In(units.Gram) / 2 / formula.WeightN,

		phosphorus: phosphorus / formula.WeightP, potassium: potassium / formula.WeightK,
		free: m.FreePerPotassium.In(units.Fraction),
	}
	n.skeleton = n.skeletonOf(yeast)

	// Electrons, then carbon, then oxygen.
	n.ethanol = (n.hexose*formula.Hexose.Reduction() + n.amino*formula.Alanine.Reduction() + n.urea*formula.UreaFormula.Reduction() -
		n.glycerol*formula.GlycerolFormula.Reduction() - n.succinic*formula.SuccinicAcid.Reduction() - n.acetic*formula.AceticAcid.Reduction() -
		n.lactic*formula.LacticAcid.Reduction() - n.skeleton*formula.YeastSkeleton.Reduction()) / formula.EthanolFormula.Reduction()
	n.co2 = n.hexose*formula.Hexose.C + n.amino*formula.Alanine.C + n.urea*formula.UreaFormula.C -
		n.ethanol*formula.EthanolFormula.C - n.glycerol*formula.GlycerolFormula.C - n.succinic*formula.SuccinicAcid.C - n.acetic*formula.AceticAcid.C -
		n.lactic*formula.LacticAcid.C - n.skeleton*formula.YeastSkeleton.C
	n.water = n.hexose*formula.Hexose.O + n.amino*formula.Alanine.O + n.urea*formula.UreaFormula.O -
		n.ethanol*formula.EthanolFormula.O - n.co2*formula.CarbonDioxide.O - n.glycerol*formula.GlycerolFormula.O - n.succinic*formula.SuccinicAcid.O -
		n.acetic*formula.AceticAcid.O - n.lactic*formula.LacticAcid.O - n.skeleton*formula.YeastSkeleton.O

	return Balance{
		Hexose: in.Hexose, Ethanol: amount.Grams(n.ethanol * formula.EthanolFormula.Molar()), CO2: amount.Grams(n.co2 * formula.CarbonDioxide.Molar()),
		Glycerol: amount.Grams(n.glycerol * formula.GlycerolFormula.Molar()), Succinic: amount.Grams(n.succinic * formula.SuccinicAcid.Molar()),
		Acetic: amount.Grams(n.acetic * formula.AceticAcid.Molar()), Lactic: amount.Grams(n.lactic * formula.LacticAcid.Molar()),
		DryYeast: amount.Grams(yeast), Water: amount.Grams(n.water * formula.WaterFormula.Molar()),
		Ammonium: amount.Grams(n.ammonium * formula.WeightN), Amino: amount.Grams(n.amino * formula.WeightN), Urea: amount.Grams(2 * n.urea * formula.WeightN),
		Phosphorus: amount.Grams(phosphorus), Potassium: amount.Grams(potassium),
		Protons: units.Mole.Of(checked.Number(n.protons())),
	}
}

// moles is the balance in mol, which its masses and protons hold whole.
func (b Balance) moles() moles {
	g := func(m units.Mass) float64 { return m.In(units.Gram) }
	n := moles{
		hexose: g(b.Hexose) / formula.Hexose.Molar(), ethanol: g(b.Ethanol) / formula.EthanolFormula.Molar(), co2: g(b.CO2) / formula.CarbonDioxide.Molar(),
		glycerol: g(b.Glycerol) / formula.GlycerolFormula.Molar(), succinic: g(b.Succinic) / formula.SuccinicAcid.Molar(),
		acetic: g(b.Acetic) / formula.AceticAcid.Molar(), lactic: g(b.Lactic) / formula.LacticAcid.Molar(), water: g(b.Water) / formula.WaterFormula.Molar(),
		ammonium: g(b.Ammonium) / formula.WeightN, amino: g(b.Amino) / formula.WeightN, urea: g(b.Urea) / 2 / formula.WeightN,
		phosphorus: g(b.Phosphorus) / formula.WeightP, potassium: g(b.Potassium) / formula.WeightK,
	}
	n.skeleton = n.skeletonOf(g(b.DryYeast))
	if n.potassium > 0 {
		n.free = (b.Protons.In(units.Mole) - n.ammonium + n.phosphorus) / n.potassium
	}
	return n
}

// skeletonOf is the C-mol of yeast that are left of its dry matter, g, beside nitrogen and ash.
func (n moles) skeletonOf(yeast float64) float64 {
	inYeast := n.ammonium + n.amino + 2*n.urea // N
	ash := inYeast*formula.Ammonia.Molar() + n.phosphorus*formula.PhosphoricAcid.Molar() + n.potassium*(formula.WeightK-formula.WeightH)
	return (yeast - ash) / formula.YeastSkeleton.Molar()
}

func (n moles) protons() float64 { return n.ammonium + n.free*n.potassium - n.phosphorus }

// Yield returns the balance as a yield for planning, by the mass of extract that became
// its hexose. Its ethanol is 2 to 4 % above that of [gravity.SugarWashYield], which follows
// the wine law and leaves more to losses.
//
//   - Source: the balance.
//   - Range: an extract from 0.9 to 1 times the hexose; otherwise the error is a
//     [*units.RangeError].
func (b Balance) Yield(extract units.Mass) (gravity.Yield, error) {
	g, h := extract.In(units.Gram), b.Hexose.In(units.Gram)
	if err := limit.Check("ferment.Balance.Yield", "extract", g, "g", max(0.9*h, 1e-9), h, "the extract that the hexose comes from"); err != nil {
		return gravity.Yield{}, err
	}
	per := func(m units.Mass) float64 { return m.In(units.Gram) / g }
	ethanol, co2 := per(b.Ethanol), per(b.CO2)
	residue := per(b.Glycerol) + per(b.Succinic) + per(b.Acetic) + per(b.Lactic)
	inversion := (h - g) / g
	// What nutrients bring to the yeast, and the little water that is made, go with it; what is used up
	// beside the inversion, where next to nothing grows, comes from the liquid.
	inversion += max(0, ethanol+co2+residue-inversion-1)
	kg := func(v float64) units.Mass { return units.Kilogram.Of(checked.Number(v)) }
	y, err := gravity.NewYield(units.Kilogram.Of(1), gravity.Fermented{
		Ethanol: kg(ethanol), CO2: kg(co2), Biomass: kg(max(0, 1+inversion-ethanol-co2-residue)), Residue: kg(residue), Water: kg(inversion),
	})
	return y, limit.Named("ferment.Balance.Yield", err)
}

// Ledger is what enters or leaves a ferment: the amount of each element and of charge, and
// the mass.
type Ledger struct {
	C, H, N, O, P, K, Charge units.Amount
	Mass                     units.Mass
}

// Ledgers returns what goes into the ferment and what comes out, so that anyone can
// check that it closes. Ions taken up stand in what goes in; the H+ set free, and the
// charge that moves with ions not named, in what comes out.
//
//   - Source: conservation of elements, charge and mass.
func (b Balance) Ledgers() (in, out Ledger) {
	n := b.moles()
	in.add(n.hexose, formula.Hexose, 0)
	in.add(n.ammonium, formula.AmmoniumIon, 1)
	in.add(n.amino, formula.Alanine, 0)
	in.add(n.urea, formula.UreaFormula, 0)
	in.add(n.phosphorus, formula.Dihydrophosphate, -1)
	in.add(n.potassium, formula.Compound{K: 1}, 1)

	out.add(n.ethanol, formula.EthanolFormula, 0)
	out.add(n.co2, formula.CarbonDioxide, 0)
	out.add(n.glycerol, formula.GlycerolFormula, 0)
	out.add(n.succinic, formula.SuccinicAcid, 0)
	out.add(n.acetic, formula.AceticAcid, 0)
	out.add(n.lactic, formula.LacticAcid, 0)
	out.add(n.water, formula.WaterFormula, 0)
	out.add(n.skeleton, formula.YeastSkeleton, 0) // yeast
	out.add(n.ammonium+n.amino+2*n.urea, formula.Ammonia, 0)
	out.add(n.phosphorus, formula.PhosphoricAcid, 0)
	out.add(n.potassium, formula.Compound{K: 1, H: -1}, 0)
	out.add(n.protons(), formula.Compound{H: 1}, 1)
	out.add((1-n.free)*n.potassium, formula.Compound{H: 1}, 1) // ions not named, counted as H+
	return in, out
}

func (l *Ledger) add(moles float64, c formula.Compound, charge float64) {
	plus := func(sum *units.Amount, each float64) { *sum = sum.Plus(units.Mole.Of(checked.Number(moles * each))) }
	plus(&l.C, c.C)
	plus(&l.H, c.H)
	plus(&l.N, c.N)
	plus(&l.O, c.O)
	plus(&l.P, c.P)
	plus(&l.K, c.K)
	plus(&l.Charge, charge)
	l.Mass = l.Mass.Plus(units.Gram.Of(checked.Number(moles * c.Molar())))
}
