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

// ColdCrash is what happens when a fermenter is cooled under an open airlock: gas
// shrinks, liquid shrinks, cold liquid takes up CO2, and air comes in.
type ColdCrash struct {
	// AtOnce is the air drawn in before the cold liquid takes up CO2 from the
	// head-space; AtRest once it has, and its share of the air too. Volumes at the cold temperature and the
	// pressure of the atmosphere.
	AtOnce, AtRest units.Volume
	Oxygen         units.Mass                 // in AtRest
	OxygenPerLitre units.MassConcentration    // of the drink, if all of it went in
	Content        units.CarbonDioxideContent // of the drink at equilibrium in the cold
	// CO2ToFill is the CO2 that keeps the air out when it is let in from a
	// regulator at the pressure of the atmosphere.
	CO2ToFill units.Mass
	Cautions  caution.List
}

// oxygenShare is the share of oxygen in dry air by volume (US Standard Atmosphere
// 1976, table 3).
const oxygenShare, molarMassOxygen = 0.209476, 2 * 15.999

// Crash cools a fermenter from a warm temperature, at which drink and head-space were
// full of CO2 at the pressure of the atmosphere, to a cold one. f.Headspace is that
// at the warm temperature.
//
//   - Source: conservation of CO2, [Liquid.Content], gas law, volumes of package
//     gravity; oxygen 20.95 % of air (US Standard Atmosphere 1976); nitrogen and oxygen
//     that the drink takes up by IAPWS G7-04 (2004).
//   - Range: cold not above warm, −2 to 40 °C; drink 1 mL to 10,000 m³, head-space
//     from a millionth to a thousand times as much, and some left in the cold, as a
//     drink grows again below 4 °C or so; otherwise the error is a [*units.RangeError].
//   - Units: drink in litres at the warm temperature.
//   - Uncertainty: AtOnce and AtRest bound it: cooling takes a day, taking up CO2
//     through a still surface takes weeks.
func (f Fermenter) Crash(s gravity.Solution, warm, cold units.Temperature, outside units.Atmosphere) (ColdCrash, error) {
	const fn = "carbonation.Fermenter.Crash"
	w, c := warm.In(units.Celsius), cold.In(units.Celsius)
	drink, space := f.Drink.In(units.Litre), f.Headspace.In(units.Litre)
	if err := cmp.Or(
		limit.Check(fn, "warm temperature", w, "°C", coldest, warmestFilling, "density of the drink"),
		limit.Check(fn, "cold temperature", c, "°C", coldest, w, "colder than the warm one"),
		limit.Check(fn, "volume of the drink", drink, "L", leastVolume, mostVolume, vesselRange),
		limit.Check(fn, "head-space", space, "L", 1e-6*drink, 1000*drink, vesselRange),
	); err != nil {
		return ColdCrash{}, err
	}
	l, err := NewLiquid(s)
	if err != nil {
		return ColdCrash{}, limit.Named(fn, err)
	}
	grows, err := newExpansion(s.Volume)
	if err != nil {
		return ColdCrash{}, limit.Named(fn, err)
	}
	before, after, standard := grows.litres(w), grows.litres(c), grows.litres(20) // of the solution
	around := outside.Pressure().In(units.Kilopascal)
	Tw, Tc := w+chemistry.ZeroCelsius, c+chemistry.ZeroCelsius
	vw, vc := l.vapours(Tw, 1/Tw), l.vapours(Tc, 1/Tc)
	at20 := drink * standard / before
	room := space + drink*(1-after/before) // at the cold temperature
	if err := limit.Check(fn, "head-space in the cold", room, "L", 1e-7*drink, 1001*drink, "a drink that runs over has none"); err != nil {
		return ColdCrash{}, err
	}
	dissolved := at20 * l.dissolved(Tw, 1/Tw, around-vw, around)
	above := gasMass(Tw, around-vw, space)

	// At once: the gas alone shrinks to what it is in the cold, the rest is air.
	left := volumeOf(Tc, around-vc, above)
	r := ColdCrash{
		AtOnce:    units.Litre.Of(checked.Number(math.Max(room-left, 0))),
		CO2ToFill: units.Gram.Of(checked.Number(math.Max(gasMass(Tc, around-vc, room)+at20*l.dissolved(Tc, 1/Tc, around-vc, around)-dissolved-above, 0))),
		Cautions:  cautions(airDrawnIn).with(Freezing, c < l.freezes).list(),
	}
	// At rest: CO2 in the liquid and above it add up to what there was.
	p, err := upTo(highest, func(p float64) float64 {
		return at20*l.dissolved(Tc, 1/Tc, p, around) + gasMass(Tc, p, room) - dissolved - above
	})
	if err != nil { // not reached: the gas was held under a lower pressure than the highest
		return ColdCrash{}, err
	}
	nl, ol := airHeld(Tc, 1/Tc)
	water := at20 * l.water()
	drawn := math.Max(around-vc-p, 0) / airAbove(nitrogenShare, 1-nitrogenShare, room/(chemistry.Gas*Tc), water*nl, water*ol) // mol
	r.AtRest = units.Litre.Of(checked.Number(drawn * chemistry.Gas * Tc / around))
	oxygen := molarMassOxygen * oxygenShare * drawn
	r.Oxygen = units.Gram.Of(checked.Number(oxygen))
	r.OxygenPerLitre = units.GramPerLitre.Of(checked.Number(oxygen / at20))
	r.Content = grams(l.dissolved(Tc, 1/Tc, math.Min(p, around-vc), around))
	return r, nil
}

// volumeOf is the volume in L of a mass of CO2 in g at p in kPa.
func volumeOf(T, p, mass float64) float64 {
	return mass * chemistry.Gas * T * dioxide.GasAt(1/T).Compressibility(p) / (chemistry.CO2 * p)
}
