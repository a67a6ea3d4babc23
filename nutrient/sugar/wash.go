package sugar

import (
	"cmp"
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

// Basis is the amount that a brew is planned on. Make one with [Finished], [Kettle] or
// [WaterAtHand].
type Basis struct {
	kind  basis
	litre float64 // of the liquid
	at    units.Temperature
	kg    float64 // of water
}

type basis int

const (
	noBasis basis = iota
	finishedVolume
	kettleVolume
	waterMass
)

// Finished plans on the volume of the liquid when it has fermented, at 20 °C.
func Finished(v units.Volume) Basis {
	return Basis{kind: finishedVolume, litre: v.In(units.Litre), at: amount.Room}
}

// Kettle plans on the volume of the start liquid at a temperature: what fills the
// kettle or the fermenter before the yeast goes in.
func Kettle(v units.Volume, t units.Temperature) Basis {
	return Basis{kind: kettleVolume, litre: v.In(units.Litre), at: t}
}

// WaterAtHand plans on the water that the sugar is dissolved in.
func WaterAtHand(m units.Mass) Basis { return Basis{kind: waterMass, kg: m.In(units.Kilogram)} }

// Wash is a brew to plan: what ferments, how far, and how much of it.
type Wash struct {
	Fermentable material.Material
	Yield       gravity.Yield    `json:",omitzero"` // the zero value takes [Fermentable.Yield]
	Attenuation units.Share      // of the fermentable sugar, that the yeast uses
	Base        gravity.Solution // what else is in it, such as juice; the zero value is nothing
	Basis       Basis
}

// Brew is a plan whose masses are known.
type Brew struct {
	Fermentable units.Mass // to weigh
	Water       units.Mass // to add, beside that in the fermentable and the base
	Start       gravity.Solution
	Finish      gravity.Solution
	Used        units.Mass // extract that the yeast uses
	Yield       gravity.Yield
	Made        gravity.Fermented
	Cautions    caution.List
}

// At returns the liquid when a share of the sugar that ferments is used, with its gravity
// for the hydrometer, and what was made until then.
//
//   - Source: [gravity.Solution.Ferment].
//   - Range: a Brew of [Wash.For] or [Wash.From]; otherwise the error is a
//     [*units.RangeError].
func (b Brew) At(used units.Share) (gravity.Solution, gravity.Fermented, error) {
	all := b.Used.In(units.Kilogram)
	now, made, err := b.Start.Ferment(amount.Kilograms(min(all, all*used.In(units.Percent)/100)), b.Yield)
	return now, made, limit.Named("sugar.Brew.At", err)
}

// Where a wash is one, and where nearly all yeast stops.
const (
	leastStrength = 0.01 // % vol
	mostStrength  = 20   // % vol
)

const strengthSource = "what yeast ferments to"

// ForStrength returns the mass of a fermentable and the water for a finished
// volume at 20 °C of a strength, when all of the sugar ferments with the usual yield.
// See [Wash.For] for other bases and yields.
//
//   - Source: masses of water, extract and ethanol in a [gravity.Solution]; yield of
//     [Fermentable.Yield].
//   - Range: as [Wash.For].
//   - Uncertainty: 3 % of the sugar, from the yield.
func ForStrength(m material.Material, strength units.StrengthByVolume, finished units.Volume) (Brew, error) {
	b, err := Wash{Fermentable: m, Attenuation: units.Percent.Of(100), Basis: Finished(finished)}.For(strength)
	return b, limit.Named("sugar.ForStrength", err)
}

// Yield returns what its sugar turns into: the yield of a sugar wash by kind of sugar,
// and Balling's for what comes from malt extract. Without sugar it is that of sucrose.
//
//   - Source: [gravity.SugarWashYield], [gravity.BallingYield].
func (f Fermentable) Yield() gravity.Yield {
	s := f.shares()
	sugar := s.sugar()
	if sugar == 0 {
		return gravity.SugarWashYield(gravity.AsSucrose)
	}
	malt := s.malt / sugar
	if malt > 1-1e-9 { // all of it, to rounding
		return gravity.BallingYield()
	}
	monos := (s.glucose + s.fructose - s.malt*glucoseOfMalt) / (sugar - s.malt) // beside the malt
	wash := gravity.SugarWashYield(gravity.AsSucrose).Blend(gravity.SugarWashYield(gravity.AsGlucose), amount.Share(monos))
	return wash.Blend(gravity.BallingYield(), amount.Share(malt))
}

// glucoseOfMalt is the share of hexoses in the fermentable sugar of malt, as
// package material has it.
const glucoseOfMalt = 0.15

// AddTo dissolves a mass of f in a liquid. Sugars of two and three units count as
// sucrose, solids that yeast leaves as dextrin.
//
//   - Source: composition of f.
//   - Range: 0 to 1e9 kg, and a liquid that a formula covers; beyond it the error is a
//     [*units.RangeError].
func (f Fermentable) AddTo(s gravity.Solution, m units.Mass) (gravity.Solution, error) {
	kg := m.In(units.Kilogram)
	if err := limit.Check("sugar.Fermentable.AddTo", "mass", kg, "kg", 0, amount.MostMass/1000, "a mass weighed"); err != nil {
		return gravity.Solution{}, err
	}
	of := f.shares()
	s, err := s.AddWater(amount.Kilograms(max(0, kg*(1-of.sugar()-of.rest))))
	for _, p := range [...]struct {
		kind gravity.Sugar
		part float64
	}{{gravity.AsSucrose, of.di + of.tri}, {gravity.AsGlucose, of.glucose}, {gravity.AsFructose, of.fructose}, {gravity.AsDextrin, of.rest}} {
		if err == nil && p.part > 0 {
			s, err = s.AddExtract(p.kind, amount.Kilograms(kg*p.part))
		}
	}
	return s, limit.Named("sugar.Fermentable.AddTo", err)
}

// For returns the fermentable and the water that end at a strength. The volume follows
// from the densities of the liquids, not from a rule of grams a litre.
//
//   - Source: masses of water, extract and ethanol in a [gravity.Solution], solved for
//     the strength with [numeric.Root].
//   - Range: strength above 0 to 20 % vol, attenuation above 0 to 100 %, a basis above
//     0; beyond it, or where the base alone is stronger or more than the basis holds,
//     the error is a [*units.RangeError].
//   - Uncertainty: that of the yield, about 3 %, and of the fermentable's sugar.
func (w Wash) For(strength units.StrengthByVolume) (Brew, error) {
	const fn = "sugar.Wash.For"
	want := strength.In(units.PercentVolume)
	if err := limit.Check(fn, "strength", want, "% vol", leastStrength, mostStrength, strengthSource); err != nil {
		return Brew{}, err
	}
	w, err := w.checked(fn)
	if err != nil {
		return Brew{}, limit.Named(fn, err)
	}
	if err := limit.Check(fn, "sugar that yeast takes up", 100*Of(w.Fermentable).shares().sugar(), "%", 0.1, 100, "a fermentable"); err != nil {
		return Brew{}, err
	}
	if w.Basis.kind == finishedVolume {
		return w.forFinished(fn, want)
	}
	least, err := w.from(fn, 0)
	if err != nil {
		return Brew{}, limit.Named(fn, err)
	}
	if have := least.Finish.ByVolume().In(units.PercentVolume); have > want {
		return Brew{}, limit.Check(fn, "strength", want, "% vol", have, mostStrength, "the base alone ferments to more")
	}
	high, err := w.above(fn, want)
	if err != nil {
		return Brew{}, limit.Named(fn, err)
	}
	var inside error
	kg, err := numeric.Root(func(kg float64) float64 {
		var b Brew
		if b, inside = w.from(fn, kg); inside != nil {
			return math.NaN() // ends the search
		}
		return b.Finish.ByVolume().In(units.PercentVolume) - want
	}, 0, high, 1e-12*high)
	if err != nil {
		return Brew{}, limit.Named(fn, cmp.Or(inside, err))
	}
	return w.from(fn, kg)
}

// forFinished needs no search for the strength: the ethanol in the finished volume is
// known, and with it the sugar.
func (w Wash) forFinished(fn string, want float64) (Brew, error) {
	ethanol := want / 100 * w.Basis.litre * amount.PureEthanol // kg
	used := (ethanol - w.Base.Ethanol().In(units.Kilogram)) / w.Yield.Ethanol().In(units.Fraction)
	kg := (used/w.Attenuation.In(units.Fraction) - w.Base.Fermentable().In(units.Kilogram)) / Of(w.Fermentable).shares().sugar()
	if kg < 0 {
		made := w.Base.Fermentable().In(units.Kilogram) * w.Attenuation.In(units.Fraction) * w.Yield.Ethanol().In(units.Fraction)
		have := (made + w.Base.Ethanol().In(units.Kilogram)) / amount.PureEthanol / w.Basis.litre
		return Brew{}, limit.Check(fn, "strength", want, "% vol", 100*have, mostStrength, "the base alone ferments to more")
	}
	return w.from(fn, kg)
}

// above returns a mass of the fermentable that ends above a strength.
func (w Wash) above(fn string, want float64) (kg float64, err error) {
	size := w.Basis.litre
	if w.Basis.kind == waterMass {
		size = w.Basis.kg + w.Base.Mass().In(units.Kilogram)
	}
	var have float64
	for kg = size * want / 100; kg < 10*size; kg *= 1.3 {
		b, err := w.from(fn, kg)
		if err != nil {
			return kg, err
		}
		if have = b.Finish.ByVolume().In(units.PercentVolume); have > want {
			return kg, nil
		}
	}
	return kg, limit.Check(fn, "strength", want, "% vol", leastStrength, have, "what this fermentable reaches")
}

// From returns what a mass of the fermentable ends at: the reverse of [Wash.For].
//
//   - Source: as [Wash.For].
//   - Range: mass 0 to 1e9 kg, attenuation above 0 to 100 %, a basis above 0 that holds
//     the fermentable and the base; beyond it the error is a [*units.RangeError].
func (w Wash) From(m units.Mass) (Brew, error) {
	const fn = "sugar.Wash.From"
	w, err := w.checked(fn)
	if err != nil {
		return Brew{}, limit.Named(fn, err)
	}
	return w.from(fn, m.In(units.Kilogram))
}

// checked fills in the yield and refuses what cannot be.
func (w Wash) checked(fn string) (Wash, error) {
	if w.Yield == (gravity.Yield{}) {
		w.Yield = Of(w.Fermentable).Yield()
	}
	if err := limit.Check(fn, "attenuation", w.Attenuation.In(units.Percent), "%", 0.1, 100, "a ferment"); err != nil {
		return w, err
	}
	if w.Basis.kind == waterMass {
		least := 1e-6
		if !w.Base.Water().IsZero() {
			least = 0 // the base dissolves it
		}
		return w, limit.Check(fn, "water", w.Basis.kg, "kg", least, amount.MostVolume, "a brew")
	}
	if err := limit.Check(fn, "basis", float64(w.Basis.kind), "", float64(finishedVolume), float64(waterMass),
		"one of Finished, Kettle, WaterAtHand"); err != nil {
		return w, err
	}
	return w, limit.Check(fn, "volume", w.Basis.litre, "L", 1e-6, amount.MostVolume, "a brew")
}

// from plans with a mass of the fermentable.
func (w Wash) from(fn string, kg float64) (Brew, error) {
	out := Brew{Fermentable: amount.Kilograms(kg), Yield: w.Yield}
	var err error
	switch w.Basis.kind {
	case waterMass:
		out.Water = amount.Kilograms(w.Basis.kg)
		err = w.ferment(&out)
	default:
		err = w.fill(fn, &out)
	}
	if err != nil {
		return Brew{}, limit.Named(fn, err)
	}
	if out.Finish.ByVolume().In(units.PercentVolume) > 14 {
		out.Cautions = caution.List{strong}
	}
	return out, nil
}

const strong caution.Caution = "strong: Above 14 % vol many yeasts stop: take one that its maker rates for the strength."

// fill finds the water that makes up the volume.
func (w Wash) fill(fn string, out *Brew) error {
	want := w.Basis.litre
	var have float64
	guess := want - w.Base.Mass().In(units.Kilogram) - out.Fermentable.In(units.Kilogram)
	least := 1e-4 * want // with no water at all there is no liquid
	_, err := numeric.Settle(guess, least, want, func(water float64) (missing float64, err error) {
		out.Water = amount.Kilograms(water)
		if err := w.ferment(out); err != nil {
			return missing, err
		}
		s := out.Finish
		if w.Basis.kind == kettleVolume {
			s = out.Start
		}
		v, err := s.Volume(w.Basis.at)
		have = v.In(units.Litre)
		return want - have, err
	})
	if err != nil {
		return err
	}
	return limit.Check(fn, "volume", want, "L", have*(1-1e-9), amount.MostVolume, "the sugar and the base alone take more")
}

// ferment fills in the liquids and what is made of known masses.
func (w Wash) ferment(b *Brew) error {
	s, err := w.Base.AddWater(b.Water)
	if err != nil {
		return err
	}
	b.Start, err = Of(w.Fermentable).AddTo(s, b.Fermentable)
	if err != nil {
		return err
	}
	b.Used = amount.Kilograms(b.Start.Fermentable().In(units.Kilogram) * w.Attenuation.In(units.Fraction))
	b.Finish, b.Made, err = b.Start.Ferment(b.Used, w.Yield)
	return err
}

// Hexose returns the sugar that the yeast uses, counted after inversion.
func (b Brew) Hexose() units.Mass {
	have := b.Start.Fermentable().In(units.Kilogram)
	if have == 0 {
		return units.Mass{}
	}
	sum := b.Start.ExtractOf(gravity.AsSucrose).In(units.Kilogram)*formula.GainOfDi +
		b.Start.ExtractOf(gravity.AsGlucose).In(units.Kilogram) + b.Start.ExtractOf(gravity.AsFructose).In(units.Kilogram)
	return amount.Kilograms(sum * b.Used.In(units.Kilogram) / have)
}
