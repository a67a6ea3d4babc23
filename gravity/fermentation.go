package gravity

import (
	"cmp"
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// Fermentation is one consistent state of a fermented liquid: what it was, what it
// is, and the yield between them. Any two figures that determine it make one, and
// from there every other figure follows: the same from every pair.
//
// The extract is that of the sugar the [Yield] is for. Its residue (glycerol,
// acids) counts in the real extract. A state whose liquid no formula covers (see
// [Solution.DensityUncertainty]) is none: the error is a [*units.RangeError].
type Fermentation struct {
	wort, liquid Solution // 100 kg of wort, and what it became
	yield        Yield
	used         float64 // kg of extract
}

const sourceState = "balance of the yield, R 22, SPS-4, Tabarié"

// stateOf ferments used kg of the extract of 100 kg of wort at p % mass.
func stateOf(fn string, p, used float64, y Yield) (Fermentation, error) {
	if err := y.check(fn); err != nil {
		return Fermentation{}, err
	}
	s := Solution{water: 100 - p}
	s.extract[y.sugar()] = p
	wort, err := s.checked(fn)
	if err != nil {
		return Fermentation{}, err
	}
	liquid, _, err := wort.Ferment(kilograms(clamp(used, 0, p)), y)
	if err != nil {
		return Fermentation{}, limit.Named(fn, err)
	}
	return Fermentation{wort, liquid, y, clamp(used, 0, p)}, nil
}

func (y Yield) sugar() Sugar {
	if y.kind.Fermentable() {
		return y.kind
	}
	return AsSucrose
}

// sugarOf returns the mass fraction of the yield's sugar in a wort that reads that
// extract on the sucrose scale. For glucose it is a little more.
func sugarOf(fn string, original units.Extract, y Yield) (x float64, err error) {
	const most = 50
	b := original.In(units.DegreePlato)
	if err := limit.Check(fn, "original extract", b, "°P", 0, most, sourceState); err != nil {
		return x, err
	}
	k := y.sugar()
	if k == AsSucrose {
		return b, nil
	}
	s := syrup20
	s.change(k, 1)
	x = 100 * s.fraction(syrup20.density(b/100))
	return x, limit.Check(fn, "original extract", x, "% mass", 0, lighters[k].most, sourceCRC)
}

// FromOriginalAndApparent returns the state from original and apparent extract: the
// hydrometer before and after.
//
//   - Source: the balance of the [Yield]; the density of the liquid as [Solution.Gravity].
//   - Range: original 0 to 50 °P; apparent between the original and dry. Otherwise the
//     error is a [*units.RangeError].
//   - Uncertainty: 0.001 in each gravity is 0.2 % vol together; the yield 3 % of the
//     ethanol for a wash, 1 % for malt.
func FromOriginalAndApparent(original, apparent units.Extract, y Yield) (Fermentation, error) {
	const fn = "gravity.FromOriginalAndApparent"
	p, err := sugarOf(fn, original, y)
	if err != nil {
		return Fermentation{}, err
	}
	return solveUsed(fn, "apparent extract", "°P", p, y, apparent.In(units.DegreePlato),
		func(s Solution) (float64, error) { return s.Gravity().Extract().In(units.DegreePlato), nil })
}

// FromOriginalAndReal returns the state from original and real extract.
//
//   - Source: the balance of the [Yield].
//   - Range: original 0 to 50 °P; real extract between the original and the residue of
//     complete fermentation. Otherwise the error is a [*units.RangeError].
//   - Uncertainty: 0.1 °P in either is 0.07 % vol; the yield as [FromOriginalAndApparent].
func FromOriginalAndReal(original, real units.Extract, y Yield) (Fermentation, error) {
	const fn = "gravity.FromOriginalAndReal"
	p, err := sugarOf(fn, original, y)
	if err != nil {
		return Fermentation{}, err
	}
	return solveUsed(fn, "real extract", "°P", p, y, real.In(units.DegreePlato),
		func(s Solution) (float64, error) { return s.RealExtract().In(units.DegreePlato), nil })
}

// FromOriginalAndStrength returns the state from original extract and a measured
// strength.
//
//   - Source: the balance of the [Yield].
//   - Range: original 0 to 50 °P; strength from 0 to that of complete fermentation.
//     Otherwise the error is a [*units.RangeError].
//   - Uncertainty: 0.1 % vol is 0.15 °P of real extract; the yield as
//     [FromOriginalAndApparent].
func FromOriginalAndStrength(original units.Extract, strength units.StrengthByVolume, y Yield) (Fermentation, error) {
	const fn = "gravity.FromOriginalAndStrength"
	p, err := sugarOf(fn, original, y)
	if err != nil {
		return Fermentation{}, err
	}
	return solveUsed(fn, "strength", "% vol", p, y, strength.In(units.PercentVolume),
		func(s Solution) (float64, error) { return s.strength(), nil })
}

// FromOriginalAndBrix returns the state from the original extract and what a
// refractometer shows in the fermented liquid, on a Brix scale at 20 °C. factor is what it
// shows for each °P of the wort: 1 for a sugar wash, [WortFactor] for malt. The original
// extract is the true one: a hydrometer's, or the reading in the wort over the factor. See
// [Refractometer] for how sure that is.
//
//   - Source: the balance of the [Yield]; index as [Solution.RefractiveIndex], where the
//     extract bends light by the factor more.
//   - Range: original 0 to 50 °P; factor 0.95 to 1.1; a reading between the original and that
//     of complete fermentation. Otherwise the error is a [*units.RangeError].
func FromOriginalAndBrix(original, read units.Extract, factor float64, y Yield) (Fermentation, error) {
	const fn = "gravity.FromOriginalAndBrix"
	p, err := sugarOf(fn, original, y)
	if err = cmp.Or(err, checkFactor(fn, factor)); err != nil {
		return Fermentation{}, err
	}
	return solveUsed(fn, "refractometer reading", "°Bx", p, y, read.In(units.DegreePlato),
		func(s Solution) (float64, error) { return s.shows(factor) })
}

// solveUsed finds the extract used at which the figure of the liquid is as wanted; it
// moves one way as the fermentation goes on.
func solveUsed(fn, what, unit string, p float64, y Yield, want float64, figure func(Solution) (float64, error)) (Fermentation, error) {
	start, err := stateOf(fn, p, 0, y)
	if err != nil {
		return Fermentation{}, err
	}
	end, err := stateOf(fn, p, p, y)
	if err != nil {
		return Fermentation{}, err
	}
	a, err := figure(start.liquid)
	b, tooStrong := figure(end.liquid)
	if err = cmp.Or(err, tooStrong); err != nil {
		return Fermentation{}, err
	}
	if err := limit.Check(fn, what, want, unit, min(a, b)-rounding, max(a, b)+rounding, "unfermented to dry; "+sourceState); err != nil {
		return Fermentation{}, err
	}
	switch {
	case (want-a)*(b-a) <= 0:
		return start, nil
	case (want-b)*(a-b) <= 0:
		return end, nil
	}
	used, err := numeric.Root(func(used float64) float64 {
		v, _ := figure(start.wort.fermented(used, y)) // no error between start and end
		return v - want
	}, 0, p, p*sharp)
	if err != nil { // not reached: the figure passes the one wanted on the way
		return Fermentation{}, err
	}
	return stateOf(fn, p, used, y)
}

// FromApparentAndStrength returns the state from the apparent extract and a measured
// strength, as a laboratory does: what the wort was comes out.
//
//   - Source: density as [Solution.Gravity], solved for the real extract; the balance
//     of the [Yield].
//   - Range: strength 0 to 20 % vol; an apparent extract that leaves at least the
//     residue of that much ethanol, and at most 30 °P. Otherwise the error is a
//     [*units.RangeError].
//   - Uncertainty: 0.1 % vol is 0.18 °P of original extract; the yield as
//     [FromOriginalAndApparent].
func FromApparentAndStrength(apparent units.Extract, strength units.StrengthByVolume, y Yield) (Fermentation, error) {
	const fn = "gravity.FromApparentAndStrength"
	v := strength.In(units.PercentVolume)
	if err := limit.Check(fn, "strength", v, "% vol", 0, 20, sourceState); err != nil {
		return Fermentation{}, err
	}
	g, err := FromExtract(apparent)
	if err != nil {
		return Fermentation{}, limit.Named(fn, err)
	}
	return fromGravityAndEthanol(fn, g, v/100*pureEthanol20/g.Density().In(units.KilogramPerCubicMetre), y)
}

// fromGravityAndEthanol finds the sugar left that gives the gravity, with the mass
// fraction e of ethanol.
func fromGravityAndEthanol(fn string, g Gravity, e float64, y Yield) (Fermentation, error) {
	want := g.SG()
	gravityAt := func(sugar float64) (float64, error) {
		s, err := liquidOf(fn, e, sugar, y)
		return s.Gravity().SG(), err
	}
	lo, err := gravityAt(0)
	if err != nil {
		return Fermentation{}, err
	}
	const most = 0.3
	hi, err := gravityAt(most)
	if err != nil {
		return Fermentation{}, err
	}
	if err := limit.Check(fn, "gravity with this strength", want, "", lo-hair, hi, "dry to 30 % mass of sugar; "+sourceState); err != nil {
		return Fermentation{}, err
	}
	if want <= lo {
		return backward(fn, e, 0, y)
	}
	sugar, err := numeric.Root(func(x float64) float64 {
		v, _ := gravityAt(x)
		return v - want
	}, 0, most, sharp)
	if err != nil { // not reached: the gravity rises from lo to hi with the sugar
		return Fermentation{}, err
	}
	return backward(fn, e, sugar, y)
}

// liquidOf is 1 kg of liquid with mass fractions of ethanol and of sugar that is
// left; the residue goes with the ethanol.
func liquidOf(fn string, e, sugar float64, y Yield) (Solution, error) {
	if err := y.check(fn); err != nil {
		return Solution{}, err
	}
	residue := e / y.ethanol * y.residue
	s := Solution{ethanol: e, water: 1 - e - sugar - residue}
	s.extract[y.sugar()] = sugar
	s.leave(residue)
	return s.checked(fn)
}

// backward returns the state whose liquid has those mass fractions.
func backward(fn string, e, sugar float64, y Yield) (Fermentation, error) {
	used := e / y.ethanol
	wort := 1 + used*(y.co2+y.biomass) // kg for 1 kg of liquid
	return stateOf(fn, 100*(sugar+used)/wort, 100*used/wort, y)
}

// FromStrengthAndReal returns the state from measured strength and real extract: a
// distillation.
//
//   - Source: density as [Solution.Gravity]; the balance of the [Yield].
//   - Range: strength 0 to 20 % vol, real extract from the residue of that much ethanol
//     to 30 °P. Otherwise the error is a [*units.RangeError].
//   - Uncertainty: 0.1 % vol is 0.15 °P of original extract; the yield as
//     [FromOriginalAndApparent].
func FromStrengthAndReal(strength units.StrengthByVolume, real units.Extract, y Yield) (Fermentation, error) {
	const fn = "gravity.FromStrengthAndReal"
	v, x := strength.In(units.PercentVolume), real.In(units.DegreePlato)/100
	if err := cmp.Or(
		limit.Check(fn, "strength", v, "% vol", 0, 20, sourceState),
		limit.Check(fn, "real extract", 100*x, "°P", 0, 30, sourceState),
		y.check(fn),
	); err != nil {
		return Fermentation{}, err
	}
	ethanol := v / 100 * pureEthanol20 // kg in a m³
	e := ethanol / mixture20[0]
	for range mostSteps { // the density hardly depends on e
		residue := min(e/y.ethanol*y.residue, x)
		s, err := liquidOf(fn, e, x-residue, y)
		if err != nil {
			return Fermentation{}, err
		}
		next := ethanol / s.density20()
		if math.Abs(next-e) < sharp {
			break
		}
		e = next
	}
	if err := limit.Check(fn, "real extract", 100*x, "°P", 100*e/y.ethanol*y.residue-rounding, 30, "the residue of the fermentation at least"); err != nil {
		return Fermentation{}, err
	}
	return backward(fn, e, max(0, x-e/y.ethanol*y.residue), y)
}
