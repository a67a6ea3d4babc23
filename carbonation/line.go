package carbonation

import (
	"cmp"
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/pipe"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// A Line is the way from the keg to the glass.
type Line struct {
	Bore      units.Length // inside diameter
	Roughness units.Length // of the wall; 1.5 µm for drawn plastic, zero for smooth
	Rise      units.Length // of the tap over the middle of the keg; negative if below
	// Losses is the sum of the loss coefficients of couplers, bends, shank and tap,
	// in velocity heads; the drink's own speed out of the tap counts one more.
	Losses float64
	// Restriction is a further resistance at the flow wanted: a flow control, a
	// chiller coil, from its maker's sheet.
	Restriction units.GaugePressure
}

// LineState is the balance of a line at a flow.
type LineState struct {
	Length   units.Length     // of the line
	Flow     units.VolumeFlow // out of the tap
	Speed    units.Speed      // in the line
	Reynolds float64
	Laminar  bool

	// Where the pressure of the keg goes.
	Friction, Lift, Fittings, Restriction units.GaugePressure
	PerMetre                              units.GaugePressure // of the line

	Cautions caution.List
}

const lineRange, standardGravity = "a serving line", 9.80665

// flowing holds what the physics needs, in SI units.
type flowing struct {
	line             Line
	density, viscous float64 // kg/m³, Pa·s
	bore, area       float64 // m, m²
	ice              bool    // below the freezing point
}

func (l Line) flow(fn string, s gravity.Solution, t units.Temperature) (flowing, error) {
	bore := l.Bore.In(units.Metre)
	if err := cmp.Or(
		limit.Check(fn, "bore", l.Bore.In(units.Millimetre), "mm", 1, 50, lineRange),
		limit.Check(fn, "roughness", l.Roughness.In(units.Metre)/bore, "of the bore", 0, 0.05, "Haaland 1983"),
		limit.Check(fn, "rise", l.Rise.In(units.Metre), "m", -30, 30, lineRange),
		limit.Check(fn, "losses", l.Losses, "velocity heads", 0, 1e4, lineRange),
		limit.Check(fn, "restriction", l.Restriction.In(units.KilopascalGauge), "kPa", 0, 1000, lineRange),
	); err != nil {
		return flowing{}, err
	}
	liquid, err := NewLiquid(s)
	if err != nil {
		return flowing{}, err
	}
	mu, err := Viscosity(s, t)
	c := math.Min(math.Max(t.In(units.Celsius), 0), 40)
	rho, noDensity := s.Density(units.Celsius.Of(checked.Number(c)))
	if err = cmp.Or(err, noDensity); err != nil {
		return flowing{}, err
	}
	return flowing{line: l, density: rho.In(units.KilogramPerCubicMetre), viscous: mu.In(units.MillipascalSecond) / 1000, bore: bore,
		area: math.Pi / 4 * bore * bore,
		ice:  t.In(units.Celsius) < liquid.freezes}, nil
}

// state is the balance in SI units at a speed in m/s; slope is the friction in Pa/m.
func (f flowing) state(speed float64) (reynolds, slope, fittings, lift float64) {
	reynolds = f.density * speed * f.bore / f.viscous
	head := f.density * speed * speed / 2
	if reynolds < pipe.LaminarBelow {
		slope = 32 * f.viscous * speed / (f.bore * f.bore) // 64/Re, also at rest
	} else {
		slope = pipe.Friction(reynolds, f.line.Roughness.In(units.Metre)/f.bore) * head / f.bore // Darcy & Weisbach
	}
	fittings = (f.line.Losses + 1) * head
	lift = f.density * standardGravity * f.line.Rise.In(units.Metre)
	return reynolds, slope, fittings, lift
}

func (f flowing) result(speed, length float64) LineState {
	re, slope, fittings, lift := f.state(speed)
	pa := func(p float64) units.GaugePressure { return units.KilopascalGauge.Of(checked.Number(p / 1000)) }
	return LineState{
		Length: units.Metre.Of(checked.Number(length)), Flow: units.LitrePerMinute.Of(checked.Number(speed * f.area * litresPerMinute)),
		Speed: units.MetrePerSecond.Of(checked.Number(speed)), Reynolds: re, Laminar: re < pipe.LaminarBelow,
		Friction: pa(slope * length), Lift: pa(lift), Fittings: pa(fittings), Restriction: f.line.Restriction, PerMetre: pa(slope),
		Cautions: cautions(PressureVessel).with(fromMemory, true).with(Freezing, f.ice).with(turningFlow, re > turnsFrom && re < turnsTo).list(),
	}
}

const litresPerMinute = 60_000 // m³/s in L/min

// Between these Reynolds numbers a flow may be laminar or turbulent: L. F. Moody's
// critical zone, Trans. ASME 66 (1944) 671; recalled from memory.
const turnsFrom, turnsTo = 2000, 4000

// Balance returns the length of line that gives a flow from a keg pressure: with less
// the drink rushes and foams, with more it crawls. The keg pressure is that which
// keeps the content ([Liquid.Pressure]), so that the line is fitted to the drink, not
// the drink to the line.
//
//   - Source: Darcy & Weisbach with the friction factor of S. E. Haaland, J. Fluids Eng. 105
//     (1983) 89; velocity heads; lift ρ·g·h.
//   - Range: bore 1 to 50 mm, roughness to 5 % of it, rise −30 to 30 m, losses to 10,000
//     velocity heads, restriction to 1000 kPa; flow 0.05 to 100 L/min; a keg pressure
//     that covers lift, fittings and restriction; at most 1000 m; otherwise the error is
//     a [*units.RangeError].
//   - Units: gauge pressure; viscosity and density of the drink without gas.
//   - Uncertainty: 10 % of the length; gas that breaks out along the line makes it
//     resist more. At Reynolds number 2300 the length drops by two fifths, as the greater
//     friction counts from there on: the result then carries the caution turning_flow.
func (l Line) Balance(s gravity.Solution, t units.Temperature, keg units.GaugePressure, flow units.VolumeFlow) (LineState, error) {
	const fn = "carbonation.Line.Balance"
	f, err := l.flow(fn, s, t)
	if err != nil {
		return LineState{}, limit.Named(fn, err)
	}
	q := flow.In(units.LitrePerMinute)
	if err := limit.Check(fn, "flow", q, "L/min", 0.05, 100, lineRange); err != nil {
		return LineState{}, err
	}
	speed := q / litresPerMinute / f.area
	_, slope, fittings, lift := f.state(speed)
	used := fittings + lift + 1000*l.Restriction.In(units.KilopascalGauge)
	if err := limit.Check(fn, "keg pressure", keg.In(units.KilopascalGauge), "kPa gauge", used/1000, (used+1000*slope)/1000,
		"lift, fittings and restriction at this flow, and 1000 m of line"); err != nil {
		return LineState{}, err
	}
	return f.result(speed, math.Max(1000*keg.In(units.KilopascalGauge)-used, 0)/slope), nil
}

// FlowOf returns the flow out of a line of a length from a keg pressure.
//
//   - Source: as [Line.Balance], solved for the speed.
//   - Range: a line as [Line.Balance] takes it, a length of 0 to 1000 m; a keg pressure
//     that covers lift and restriction; a speed up to 50 m/s; otherwise the error is a
//     [*units.RangeError].
//   - Units: gauge pressure.
//   - Uncertainty: 10 % of the flow. Near Re 2300 the flow may be either of two: the
//     result carries the caution turning_flow.
func (l Line) FlowOf(s gravity.Solution, t units.Temperature, keg units.GaugePressure, length units.Length) (LineState, error) {
	const fn, fastest = "carbonation.Line.FlowOf", 50 // m/s
	f, err := l.flow(fn, s, t)
	if err != nil {
		return LineState{}, limit.Named(fn, err)
	}
	m := length.In(units.Metre)
	if err := limit.Check(fn, "length", m, "m", 0, 1000, lineRange); err != nil {
		return LineState{}, err
	}
	given := 1000 * (keg.In(units.KilopascalGauge) - l.Restriction.In(units.KilopascalGauge))
	asks := func(v float64) float64 { // Pa
		_, slope, fittings, lift := f.state(v)
		return slope*m + fittings + lift
	}
	least, most := asks(0), asks(fastest)
	if err := limit.Check(fn, "keg pressure", keg.In(units.KilopascalGauge), "kPa gauge",
		keg.In(units.KilopascalGauge)+(least-given)/1000, keg.In(units.KilopascalGauge)+(most-given)/1000, "lift and restriction, and 50 m/s"); err != nil {
		return LineState{}, limit.Named(fn, err)
	}
	given = math.Min(math.Max(given, least), most) // it may lie a rounding outside
	v, err := upTo(fastest, func(v float64) float64 { return asks(v) - given })
	if err != nil { // not reached: the ends of the search were checked
		return LineState{}, err
	}
	return f.result(v, m), nil
}

// PracticeResistance is what the trade counts for beer line of a bore, in kPa for a
// metre: a rule for flows near 3.8 L/min (a US pint in 7 to 8 seconds), common
// practice, no source. It hides the flow, so [Line.Balance] is better.
//
//   - Source: common practice, no source: 3/16 in 3.0 psi/ft, 1/4 in 0.85, 5/16 in
//     0.40, 3/8 in 0.20 for plastic line.
//   - Range: those four bores, within 0.1 mm; otherwise the error is a
//     [*units.RangeError].
//   - Units: pressure a metre of line.
//   - Uncertainty: makers' figures for 3/16 in run from 1.8 to 3 psi/ft.
func PracticeResistance(bore units.Length) (units.GaugePressure, error) {
	mm := bore.In(units.Millimetre)
	near := practice[0]
	for _, row := range practice {
		if math.Abs(mm-row.mm) < math.Abs(mm-near.mm) {
			near = row
		}
	}
	if err := limit.Check("carbonation.PracticeResistance", "bore", mm, "mm", near.mm-boreWithin, near.mm+boreWithin,
		"common practice for 3/16, 1/4, 5/16 and 3/8 in"); err != nil {
		return units.GaugePressure{}, err
	}
	return units.PSIGauge.Of(checked.Number(near.psiPerFoot / metresPerFoot)), nil
}

const boreWithin, metresPerFoot = 0.1, 0.3048 // mm

var practice = [...]struct{ mm, psiPerFoot float64 }{{4.7625, 3}, {6.35, 0.85}, {7.9375, 0.40}, {9.525, 0.20}}
