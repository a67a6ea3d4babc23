package carbonation

import (
	"cmp"
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// A Vessel is a bottle, can or keg.
type Vessel struct {
	Capacity units.Volume        // brim-full at 20 °C
	Rating   units.GaugePressure // the maker's; zero if it is not known

	// StretchPerBar is by how much the vessel grows for each bar inside over the
	// pressure outside, as a share of its volume; zero, a rigid vessel, gives the higher pressure. A PET bottle
	// grows, glass does not to speak of.
	StretchPerBar units.Share
	// ExpansionPerKelvin is the thermal growth of its volume; zero gives the higher
	// pressure.
	ExpansionPerKelvin units.Share
}

// A Filling is what is in a vessel when it is closed.
type Filling struct {
	Volume      units.Volume      // of the liquid with its gas, at Temperature
	Temperature units.Temperature // when it is closed
	// Content is the CO2 that is dissolved then.
	Content units.CarbonDioxideContent
	// AtRest says that the head-space is at equilibrium with the content already, as in a
	// keg or behind a counter-pressure filler. Otherwise it is closed at the
	// pressure of the atmosphere and takes its gas from the drink later.
	AtRest bool
	// Air is the share of the head-space, at the pressure of the atmosphere, that is air:
	// 100 % in a bottle that was just filled, near 0 in one that was purged.
	Air units.Share
	// AirRemoved is the share of the air that water open to the atmosphere holds at
	// Temperature which the drink does not bring. Zero, a drink full of air, gives the
	// higher pressure. Near 100 % after a boil or a ferment, whose CO2 sweeps air out,
	// until a splash brings it back.
	AirRemoved units.Share
	// Priming is the sugar added to ferment in the vessel, as sucrose (dextrose
	// makes 5 % less gas, its monohydrate 14 % less). Its gas swells the drink only
	// once it has formed, so it is not to be counted in Content.
	Priming units.MassConcentration
	// SugarLeft is other fermentable sugar in the drink, not meant to ferment. It
	// counts in [ClosedVessel.Worst].
	SugarLeft units.MassConcentration
}

// A ClosedVessel is a filled vessel; [ClosedVessel.At] gives its pressure at a
// temperature. The zero value is no vessel; the methods refuse it.
type ClosedVessel struct {
	vessel  Vessel
	outside units.Atmosphere
	drink   Liquid
	grows   expansion

	at20             float64 // L
	nitrogen, oxygen float64 // mol
	co2, left        float64 // g
	trapped          bool    // air in the head-space
	room             float64 // head-space when it was closed, share of the vessel
}

// A PackState is a closed vessel at equilibrium at one temperature.
type PackState struct {
	Temperature units.Temperature
	Gauge       units.GaugePressure
	Pressure    units.AbsolutePressure // of CO2, Air and Vapours together
	// AtLeast says that the pressure has no figure: above 20 bar absolute, or a vessel
	// full of liquid, which a few kelvin take there. Pressure and Gauge are then those
	// of 20 bar absolute and the rest is zero.
	AtLeast bool

	CO2, Air, Vapours units.AbsolutePressure     // partial pressures in the head-space
	Content           units.CarbonDioxideContent // dissolved
	InLiquid, InSpace units.Mass                 // of CO2
	Headspace         units.Volume
	HeadspaceShare    units.Share // of the inside of the vessel

	Rating   units.GaugePressure // as given; zero if none
	Verdict  Verdict
	Cautions caution.List
}

const vesselRange = "a vessel that can be closed"

// What counts as a rating, kPa gauge; as a drink or a vessel, L; as sugar in it, g/L.
const (
	leastRating, mostRating = 1e-3, 1e5
	leastVolume, mostVolume = 1e-3, 1e7
	mostSugar               = 300
	warmestFilling          = 40 // °C
)

func (v Vessel) check() error {
	const fn = "carbonation.Vessel.Close"
	return cmp.Or(
		limit.Check(fn, "capacity", v.Capacity.In(units.Litre), "L", leastVolume, mostVolume, vesselRange),
		limit.Check(fn, "rating", v.Rating.In(units.KilopascalGauge), "kPa gauge", 0, mostRating, "a rating is not negative"),
		limit.Check(fn, "stretch", v.StretchPerBar.In(units.Percent), "% per bar", 0, 5, vesselRange),
		limit.Check(fn, "thermal expansion", v.ExpansionPerKelvin.In(units.Percent), "% per K", 0, 0.1, vesselRange),
	)
}

func (f Filling) check() error {
	const fn = "carbonation.Vessel.Close"
	return cmp.Or(
		limit.Check(fn, "filling temperature", f.Temperature.In(units.Celsius), "°C", coldest, warmestFilling, "density of the drink"),
		limit.Check(fn, "air in the head-space", f.Air.In(units.Percent), "%", 0, 100, vesselRange),
		limit.Check(fn, "air removed from the drink", f.AirRemoved.In(units.Percent), "%", 0, 100, vesselRange),
		limit.Check(fn, "priming", f.Priming.In(units.GramPerLitre), "g/L", 0, mostSugar, vesselRange),
		limit.Check(fn, "sugar left", f.SugarLeft.In(units.GramPerLitre), "g/L", 0, mostSugar, vesselRange),
	)
}

// Close fills the vessel with a drink and closes it in an atmosphere. Only the
// kind of liquid counts in the solution, not how much of it there is.
//
//   - Source: gas law with [GasDensity] for what the head-space holds; air in the drink by
//     IAPWS G7-04, Guideline on the Henry's Constant (2004), 1 to 4 %;
//     0.51428 g CO2 from a gram of sucrose (Gay-Lussac's equation).
//   - Range: capacity 1 mL to 10,000 m³, rating 0 to 1000 bar, stretch to 5 % a bar,
//     expansion to 0.1 % a kelvin; filled at −2 to 40 °C with no more than the capacity;
//     priming and sugar left to 300 g/L; otherwise the error is a [*units.RangeError].
//     See [NewLiquid] for the drink.
//   - Units: as the fields say.
//   - Uncertainty: see [ClosedVessel.At].
func (v Vessel) Close(drink gravity.Solution, f Filling, outside units.Atmosphere) (ClosedVessel, error) {
	if err := v.check(); err != nil {
		return ClosedVessel{}, limit.Named("carbonation.Vessel.Close", err)
	}
	l, err := NewLiquid(drink)
	grows, noVolume := newExpansion(drink.Volume)
	if err = cmp.Or(err, noVolume); err != nil {
		return ClosedVessel{}, limit.Named("carbonation.Vessel.Close", err)
	}
	return v.shut(l, grows, f, outside)
}

func (v Vessel) shut(drink Liquid, grows expansion, f Filling, outside units.Atmosphere) (ClosedVessel, error) {
	const fn = "carbonation.Vessel.Close"
	if err := f.check(); err != nil {
		return ClosedVessel{}, err
	}
	celsius, litres := f.Temperature.In(units.Celsius), f.Volume.In(units.Litre)
	capacity := v.capacityAt(celsius)
	if err := limit.Check(fn, "volume of liquid", litres, "L", 1e-9, capacity, "the vessel's capacity"); err != nil {
		return ClosedVessel{}, err
	}
	then, standard := grows.litres(celsius), grows.litres(20)
	swelling := f.Content.In(units.GramCO2PerLitre) / chemistry.CO2 * molarVolumeDissolved // of a litre
	c := ClosedVessel{vessel: v, outside: outside, drink: drink, at20: litres / (then/standard + swelling)}
	c.grows = grows.scaled(c.at20 / standard)

	T := celsius + chemistry.ZeroCelsius
	air := f.Air.In(units.Fraction)
	// The thinnest air, 20 kPa, presses harder than the vapours of the warmest filling, 12 kPa.
	space, around := capacity-litres, outside.Pressure().In(units.Kilopascal)-drink.vapours(T, 1/T)
	co2 := around * (1 - air)
	if f.AtRest {
		p, err := drink.Pressure(f.Content, f.Temperature)
		if err != nil {
			return ClosedVessel{}, limit.Named(fn, err)
		}
		co2 = math.Max(p.In(units.Kilopascal)-drink.vapours(T, 1/T), 0)
	}
	nl, ol := airHeld(T, 1/T)
	gas, brings := air*space/(chemistry.Gas*T), c.at20*drink.water()*(1-f.AirRemoved.In(units.Fraction))
	c.nitrogen = around * nitrogenShare * (gas + brings*nl)
	c.oxygen = around * (1 - nitrogenShare) * (gas + brings*ol)
	c.trapped, c.room = air > 0, space/capacity
	c.co2 = c.at20*(f.Content.In(units.GramCO2PerLitre)+perSucrose*f.Priming.In(units.GramPerLitre)) +
		chemistry.CO2*co2*space/(chemistry.Gas*T*dioxide.GasAt(1/T).Compressibility(co2))
	c.left = c.at20 * perSucrose * f.SugarLeft.In(units.GramPerLitre)
	return c, nil
}

// capacityAt is in L at c in °C.
func (v Vessel) capacityAt(c float64) float64 {
	return v.Capacity.In(units.Litre) * (1 + v.ExpansionPerKelvin.In(units.Fraction)*(c-20))
}

// CO2 returns the mass of CO2 in the vessel, dissolved and in the head-space, once
// the priming has fermented.
func (c ClosedVessel) CO2() units.Mass { return units.Gram.Of(checked.Number(c.co2)) }

// At returns the state of the vessel at equilibrium at a temperature, with the priming
// fermented and the sugar left as it is.
//
//   - Source: conservation of CO2, nitrogen and oxygen, Henry's law ([Liquid.Content];
//     IAPWS G7-04 for air), gas law with real-gas term ([GasDensity]), vapours,
//     expansion of the liquid (package gravity) and of the vessel.
//   - Range: −2 to 90 °C; beyond it the error is a [*units.RangeError]. A full
//     vessel and a pressure above 20 bar absolute are no errors: the result says so in
//     AtLeast, Verdict and Cautions.
//   - Units: gauge against the atmosphere at closing.
//   - Uncertainty: that of the solubility, about 5 % of the pressure over
//     atmosphere, and above 40 °C 3 % (60 °C) to 5 % (90 °C) more, by which the figure
//     rather reads too high; 1 to 4 % of the air; and with little head-space that of the filled volume: 1 mL in 330
//     is a tenth of the head-space of a small bottle.
func (c ClosedVessel) At(t units.Temperature) (PackState, error) {
	return c.state("carbonation.ClosedVessel.At", t, false)
}

// Worst returns the worst state at any of the temperatures, in whatever order they
// come, if the sugar left ferments too: full of liquid before all, else the highest
// pressure. Give it every temperature that the vessel meets once it is closed.
//
//   - Source, range, units, uncertainty: as [ClosedVessel.At].
func (c ClosedVessel) Worst(t units.Temperature, more ...units.Temperature) (PackState, error) {
	const fn = "carbonation.ClosedVessel.Worst"
	worst, err := c.state(fn, t, true)
	for _, t := range more {
		s, refused := c.state(fn, t, true)
		if err = cmp.Or(err, refused); err != nil {
			return PackState{}, err
		}
		if full := s.Verdict == Locked; full != (worst.Verdict == Locked) && full || full == (worst.Verdict == Locked) && s.Pressure.Compare(worst.Pressure) > 0 {
			worst = s
		}
	}
	return worst, err
}

func (c ClosedVessel) state(fn string, t units.Temperature, worst bool) (PackState, error) {
	if err := limit.Check(fn, "temperature", t.In(units.Celsius), "°C", coldest, warmest, dioxide.DissolvedRange); err != nil {
		return PackState{}, err
	}
	if err := limit.Check(fn, "capacity", c.vessel.Capacity.In(units.Litre), "L", leastVolume, mostVolume, "a vessel filled by Vessel.Close"); err != nil {
		return PackState{}, err
	}
	return c.stateAt(t, worst), nil
}

// stateAt is state without the checks.
func (c ClosedVessel) stateAt(t units.Temperature, worst bool) PackState {
	celsius := t.In(units.Celsius)
	s, held := c.settle(celsius, worst)
	p := PackState{Temperature: t, Rating: c.vessel.Rating, AtLeast: s.locked || s.beyond}
	if p.AtLeast {
		s.total = highest
	} else {
		p.CO2, p.Air = kilopascals(s.co2), kilopascals(s.air)
		p.InLiquid, p.InSpace = units.Gram.Of(checked.Number(s.inLiquid)), units.Gram.Of(checked.Number(s.inSpace))
		p.Content = grams(s.inLiquid / c.at20)
		p.Headspace = units.Litre.Of(checked.Number(s.space))
		p.HeadspaceShare = units.Fraction.Of(checked.Number(s.space / held.brim(s.total)))
	}
	p.Vapours = kilopascals(s.vapours)
	p.Pressure = kilopascals(s.total)
	p.Gauge = c.outside.Gauge(p.Pressure)
	p.Verdict = c.verdict(s, p.Gauge, celsius < c.drink.freezes)
	warned := cautions(PressureVessel).
		with(OverRatingCaution, p.Verdict == OverRating).
		with(noRating, p.Verdict == Unrated || c.vessel.Rating.IsZero()).
		with(HydraulicLock, s.locked || c.room <= rounding).
		with(AboveComputed, s.beyond).
		with(Freezing, celsius < c.drink.freezes).
		with(LittleHeadspace, c.room > rounding && c.room*100 < littleHeadspace || !p.AtLeast && p.HeadspaceShare.In(units.Percent) < littleHeadspace).
		with(trappedAir, c.trapped).
		with(SugarCanFerment, c.left > 0).
		with(HotVessel, celsius > hotVessel)
	if !worst && c.left > 0 {
		w := c.stateAt(t, true).Verdict
		warned = warned.with(worstOverRating, w == OverRating || w == Locked || w == BeyondComputed)
	}
	p.Cautions = warned.list()
	return p
}

// Share of the capacity, %, below which a head-space is called little, and
// temperature, °C, above which a pack is called hot: common practice, no source.
const (
	littleHeadspace = 2
	hotVessel       = 40
)

func (c ClosedVessel) settle(celsius float64, worst bool) (settled, contents) {
	held := c.contents(celsius, worst)
	b := held.balance()
	return b.settle(), held
}

func (c ClosedVessel) contents(celsius float64, worst bool) contents {
	held := contents{
		drink: c.drink, at20: c.at20, liquid: c.grows.litres(celsius), capacity: c.vessel.capacityAt(celsius),
		stretch: c.vessel.StretchPerBar.In(units.Fraction) / kPaPerBar,
		outside: c.outside.Pressure().In(units.Kilopascal), nitrogen: c.nitrogen, oxygen: c.oxygen, co2: c.co2, T: celsius + chemistry.ZeroCelsius,
	}
	if worst {
		held.co2 += c.left
	}
	return held
}

func (c ClosedVessel) verdict(s settled, g units.GaugePressure, ice bool) Verdict {
	switch {
	case s.locked:
		return Locked
	case c.vessel.Rating.IsZero():
		return Unrated
	case g.Compare(c.vessel.Rating) > 0:
		return OverRating
	case s.beyond:
		return BeyondComputed
	case ice:
		return MayFreeze
	}
	return WithinRating
}

func kilopascals(p float64) units.AbsolutePressure { return units.Kilopascal.Of(checked.Number(p)) }
