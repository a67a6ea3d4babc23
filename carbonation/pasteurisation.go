package carbonation

import (
	"math"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// A LoggedTemperature is one line of a temperature log, taken in the middle of the pack: the
// slowest place to warm. The bath's own temperature counts too much.
type LoggedTemperature struct {
	At          time.Duration // since the start
	Temperature units.Temperature
}

// A Lethality says how the rate of killing goes with temperature: one unit a
// minute at 60 °C and ten times as much for each Z kelvin more.
type Lethality struct {
	z    float64 // K
	name string
}

// DelVecchio is 1.393^(T − 60 °C) a minute: H. W. Del Vecchio, C. A. Dayharsh & F. C.
// Baselt, Proc. Am. Soc. Brew. Chem. (1951) 45. It agrees with [Handbook] within 1 % from
// 58 to 62 °C; at 72 °C it counts 3 % more.
func DelVecchio() Lethality { return Lethality{z: 1 / math.Log10(1.393), name: "1.393^(T-60)"} }

// Handbook is 10^((T − 60 °C)/7 K) a minute, the form of the handbooks.
func Handbook() Lethality { return Lethality{z: 7, name: "10^((T-60)/7)"} }

// NewLethality returns another Z, for example of an organism in cider: 5 to 10 K.
//
//   - Range: 3 to 20 K; beyond it the error is a [*units.RangeError].
func NewLethality(z units.TemperatureDifference) (Lethality, error) {
	k := z.In(units.KelvinDifference)
	if err := limit.Check("carbonation.NewLethality", "z", k, "K", 3, 20, "vegetative cells of drinks"); err != nil {
		return Lethality{}, err
	}
	return Lethality{z: k, name: "own"}, nil
}

// String names the form: "10^((T-60)/7)".
func (l Lethality) String() string { return l.name }

const pasteurReference = 60 // °C

// Rate returns what a minute at a temperature does.
//
//   - Source: see [DelVecchio] and [Handbook].
//   - Range: 0 to 90 °C; beyond it the error is a [*units.RangeError].
//   - Units: PU in a minute.
func (l Lethality) Rate(t units.Temperature) (units.PasteurisationUnits, error) {
	c := t.In(units.Celsius)
	if err := l.check("carbonation.Lethality.Rate", c); err != nil {
		return units.PasteurisationUnits{}, err
	}
	return units.PU.Of(checked.Number(l.rate(c))), nil
}

func (l Lethality) check(fn string, c float64) error {
	if err := limit.Check(fn, "temperature", c, "°C", 0, warmest, "pasteurisation of drinks"); err != nil {
		return err
	}
	return limit.Check(fn, "z", l.z, "K", 3, 20, "a form such as Handbook")
}

func (l Lethality) rate(c float64) float64 { return math.Exp(math.Ln10 / l.z * (c - pasteurReference)) }

// Pasteurisation is the heat that a log gave.
type Pasteurisation struct {
	Units units.PasteurisationUnits // all legs together
	// Warming is what comes before the highest temperature was first reached within
	// Plateau, Holding from then until it was last, Cooling after.
	Warming, Holding, Cooling units.PasteurisationUnits
	Highest                   units.Temperature
	// Peak is the state of the pack at the hottest reading, if a pack was given.
	Peak     PackState
	HasPeak  bool
	Cautions caution.List
}

// plateau is how far below the highest temperature still counts as holding, K.
const plateau = 0.5

const mostReadings, yearMinutes = 1e6, 365 * 24 * 60

// Pasteurise counts the pasteurisation units of a log, between its readings along
// straight lines of temperature, and finds the highest pressure of the pack over
// the same log (nil: no pack).
//
//   - Source: see [DelVecchio] and [Handbook]; each leg is integrated exactly: (r2 −
//     r1)·Δt/ln(r2/r1) with r the units a minute at its ends.
//   - Range: 2 to 1,000,000 readings, times rising from 0 to a year, 0 to 90 °C;
//     otherwise, or if the pack is none, the error is a [*units.RangeError].
//   - Units: PU, of which one is a minute at 60 °C.
//   - Uncertainty: 0.5 K in the log is 18 % of the units. The peak pressure: as
//     [ClosedVessel.At], 8 % at 60 °C, as the solubility of CO2 is less sure in the heat.
func (l Lethality) Pasteurise(log []LoggedTemperature, pack *ClosedVessel) (Pasteurisation, error) {
	const fn = "carbonation.Lethality.Pasteurise"
	if err := limit.Check(fn, "number of readings", float64(len(log)), "", 2, mostReadings, "a log"); err != nil {
		return Pasteurisation{}, err
	}
	top := log[0].Temperature.In(units.Celsius)
	for i, r := range log {
		c, m := r.Temperature.In(units.Celsius), r.At.Minutes()
		if err := l.check(fn, c); err != nil {
			return Pasteurisation{}, err
		}
		var least float64
		if i > 0 {
			least = math.Nextafter(log[i-1].At.Minutes(), math.MaxFloat64)
		}
		if err := limit.Check(fn, "time", m, "min", least, yearMinutes, "times that rise"); err != nil {
			return Pasteurisation{}, err
		}
		top = math.Max(top, c)
	}
	var p Pasteurisation
	// Holding runs from the first to the last reading near the top.
	first := len(log)
	var end int
	for i, r := range log {
		if r.Temperature.In(units.Celsius) >= top-plateau {
			first, end = min(first, i), i
		}
	}
	for i := range len(log) - 1 {
		pu := units.PU.Of(checked.Number(l.leg(log[i], log[i+1])))
		switch {
		case i < first:
			p.Warming = p.Warming.Plus(pu)
		case i < end:
			p.Holding = p.Holding.Plus(pu)
		default:
			p.Cooling = p.Cooling.Plus(pu)
		}
	}
	p.Units = p.Warming.Plus(p.Holding).Plus(p.Cooling)
	p.Highest = units.Celsius.Of(checked.Number(top))
	p.Cautions = cautions(HotVessel, PressureVessel).list()
	if pack == nil {
		return p, nil
	}
	for _, r := range log { // the pressure rises with the temperature: only a hotter reading passes the peak
		if p.HasPeak && r.Temperature.Compare(p.Peak.Temperature) <= 0 {
			continue
		}
		s, err := pack.Worst(r.Temperature)
		if err != nil {
			return Pasteurisation{}, limit.Named(fn, err)
		}
		p.Peak, p.HasPeak = s, true
	}
	p.Cautions = (cautions(p.Cautions...) | cautions(p.Peak.Cautions...)).list()
	return p, nil
}

// leg is the PU between two readings.
func (l Lethality) leg(a, b LoggedTemperature) float64 {
	minutes := (b.At - a.At).Minutes()
	r1 := l.rate(a.Temperature.In(units.Celsius))
	x := math.Ln10 / l.z * b.Temperature.Minus(a.Temperature).In(units.KelvinDifference) // ln(r2/r1)
	if x == 0 {
		return minutes * r1
	}
	return minutes * r1 * math.Expm1(x) / x
}
