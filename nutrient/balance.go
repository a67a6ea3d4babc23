package nutrient

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Substrate is what a ferment uses, and what it has at hand to grow on.
type Substrate struct {
	Hexose                units.Mass // sugar used, counted after inversion: [Parts].AsHexose
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
	// are not counted here: they give off H+ as far as the pH lets them.
	Protons units.Amount

	b moles
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
	const fn = "nutrient.Metabolism.Ferment"
	if err := m.check(fn); err != nil {
		return Balance{}, err
	}
	g := in.Hexose.In(units.Gram)
	if err := limit.Check(fn, "hexose", g/1000, "kg", 0, mostMass/1000, metabolismSource); err != nil {
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
		hexose:   g / hexose.molar(),
		glycerol: g * m.Glycerol.In(units.Fraction) / glycerolFormula.molar(),
		succinic: g * m.Succinic.In(units.Fraction) / succinicAcid.molar(),
		acetic:   g * m.Acetic.In(units.Fraction) / aceticAcid.molar(),
		lactic:   g * m.Lactic.In(units.Fraction) / lacticAcid.molar(),

		ammonium: share * in.Ammonium.In(units.Gram) / weightN,
		amino:    share * in.Amino.In(units.Gram) / weightN,
		urea:     share * in.Urea.In(units.Gram) / 2 / weightN,

		phosphorus: phosphorus / weightP, potassium: potassium / weightK,
		free: m.FreePerPotassium.In(units.Fraction),
	}
	inYeast := n.ammonium + n.amino + 2*n.urea // N
	ash := inYeast*ammonia.molar() + n.phosphorus*phosphoricAcid.molar() + n.potassium*(weightK-weightH)
	n.skeleton = (yeast - ash) / yeastSkeleton.molar()

	// Electrons, then carbon, then oxygen.
	n.ethanol = (n.hexose*hexose.reduction() + n.amino*alanine.reduction() + n.urea*ureaFormula.reduction() -
		n.glycerol*glycerolFormula.reduction() - n.succinic*succinicAcid.reduction() - n.acetic*aceticAcid.reduction() -
		n.lactic*lacticAcid.reduction() - n.skeleton*yeastSkeleton.reduction()) / ethanolFormula.reduction()
	n.co2 = n.hexose*hexose.c + n.amino*alanine.c + n.urea*ureaFormula.c -
		n.ethanol*ethanolFormula.c - n.glycerol*glycerolFormula.c - n.succinic*succinicAcid.c - n.acetic*aceticAcid.c -
		n.lactic*lacticAcid.c - n.skeleton*yeastSkeleton.c
	n.water = n.hexose*hexose.o + n.amino*alanine.o + n.urea*ureaFormula.o -
		n.ethanol*ethanolFormula.o - n.co2*carbonDioxide.o - n.glycerol*glycerolFormula.o - n.succinic*succinicAcid.o -
		n.acetic*aceticAcid.o - n.lactic*lacticAcid.o - n.skeleton*yeastSkeleton.o

	return Balance{
		Hexose: in.Hexose, Ethanol: grams(n.ethanol * ethanolFormula.molar()), CO2: grams(n.co2 * carbonDioxide.molar()),
		Glycerol: grams(n.glycerol * glycerolFormula.molar()), Succinic: grams(n.succinic * succinicAcid.molar()),
		Acetic: grams(n.acetic * aceticAcid.molar()), Lactic: grams(n.lactic * lacticAcid.molar()),
		DryYeast: grams(yeast), Water: grams(n.water * waterFormula.molar()),
		Ammonium: grams(n.ammonium * weightN), Amino: grams(n.amino * weightN), Urea: grams(2 * n.urea * weightN),
		Phosphorus: grams(phosphorus), Potassium: grams(potassium),
		Protons: units.Mole.Of(checked.Number(n.protons())), b: n,
	}
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
	if err := limit.Check("nutrient.Balance.Yield", "extract", g, "g", max(0.9*h, 1e-9), h, "the extract that the hexose comes from"); err != nil {
		return gravity.Yield{}, err
	}
	per := func(m units.Mass) float64 { return m.In(units.Gram) / g }
	ethanol, co2 := per(b.Ethanol), per(b.CO2)
	residue := per(b.Glycerol) + per(b.Succinic) + per(b.Acetic) + per(b.Lactic)
	inversion := (h - g) / g
	// What nutrients bring to the yeast, and the little water that is made, go with it.
	return gravity.NewYield(ethanol, co2, 1+inversion-ethanol-co2-residue, residue, inversion)
}

// Ledger is what enters or leaves a ferment: moles of each element and of charge, and
// the mass in grams.
type Ledger struct{ C, H, N, O, P, K, Charge, Mass float64 }

// Ledgers returns what goes into the ferment and what comes out, so that anyone can
// check that it closes. Ions taken up stand in what goes in; the H+ set free, and the
// charge that moves with ions not named, in what comes out.
//
//   - Source: conservation of elements, charge and mass.
func (b Balance) Ledgers() (in, out Ledger) {
	n := b.b
	in.add(n.hexose, hexose, 0)
	in.add(n.ammonium, ammoniumIon, 1)
	in.add(n.amino, alanine, 0)
	in.add(n.urea, ureaFormula, 0)
	in.add(n.phosphorus, dihydrophosphate, -1)
	in.add(n.potassium, compound{k: 1}, 1)

	out.add(n.ethanol, ethanolFormula, 0)
	out.add(n.co2, carbonDioxide, 0)
	out.add(n.glycerol, glycerolFormula, 0)
	out.add(n.succinic, succinicAcid, 0)
	out.add(n.acetic, aceticAcid, 0)
	out.add(n.lactic, lacticAcid, 0)
	out.add(n.water, waterFormula, 0)
	out.add(n.skeleton, yeastSkeleton, 0) // yeast
	out.add(n.ammonium+n.amino+2*n.urea, ammonia, 0)
	out.add(n.phosphorus, phosphoricAcid, 0)
	out.add(n.potassium, compound{k: 1, h: -1}, 0)
	out.add(n.protons(), compound{h: 1}, 1)
	out.add((1-n.free)*n.potassium, compound{h: 1}, 1) // ions not named, counted as H+
	return in, out
}

func (l *Ledger) add(n float64, c compound, charge float64) {
	l.C += n * c.c
	l.H += n * c.h
	l.N += n * c.n
	l.O += n * c.o
	l.P += n * c.p
	l.K += n * c.k
	l.Charge += n * charge
	l.Mass += n * c.molar()
}
