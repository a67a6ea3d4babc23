package batch

import (
	"math"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// boil drives water off at a rate of cold water, and all gas but what air's CO2 holds. Chalk above
// calcite's solubility drops at a rate of first order, towards what the liquid holds as it is boiled down.
//
//   - Source: [carbonation.BoilingPoint]; calcite at rest by [water.Profile.BoiledAt]; the rate of
//     [Unknowns].
//   - Range: a liquid without ethanol, and some water left; otherwise the error is a
//     [*units.RangeError].
func (j *job) boil(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	minutes := math.Abs(float64(st.For)) / 6e10
	if minutes == 0 {
		return nil
	}
	place, err := units.Barometer(st.place())
	if err != nil {
		return err
	}
	if j.s.t, err = carbonation.BoilingPoint(place.Pressure()); err != nil {
		return err
	}
	if err := limit.Check(do, "ethanol", j.s.amount[Ethanol], "mol", 0, 0, "it boils off with the water"); err != nil {
		return err
	}
	cold, err := gravity.WaterDensity(at20)
	if err != nil {
		return err
	}
	g := (1 + j.u.BoilOff/100) * st.Rate.In(units.LitrePerMinute) * minutes * cold.In(units.KilogramPerCubicMetre)
	if err := limit.Check(do, "water boiled off", g/1000, "kg", 0, 0.999*j.s.amount[Water]*molar[Water]/1000, "the water there is"); err != nil {
		return err
	}
	before := j.s
	j.take(Water, g/molar[Water], &j.left.Vapour)
	if j.u.Chalk > 0 {
		if err := j.chalk(&before, place, j.u.Chalk*minutes, st.Rests); err != nil {
			return err
		}
	}
	for _, c := range [...]Component{Nitrogen, Oxygen} {
		j.take(c, j.s.amount[c], &j.left.Gas)
	}
	e, err := j.under(water.AirCO2(place))
	if err != nil {
		return err
	}
	j.exchange(CarbonDioxide, e.InorganicCarbon().In(units.MillimolePerLitre)/1000*j.s.litresOfWater())
	_, err = j.s.Solution()
	return err
}

// chalk drops what falls out while the liquid boils down from before to what it is: towards
// rest, x/dτ = −k·(x − rest(water)). What is at rest depends on the water alone, not on how much
// is still dissolved, so that it is laid through a few waters as a polynomial and the
// equation integrated along it; two half boils are one.
func (j *job) chalk(before *State, place units.Atmosphere, k float64, known *Rests) error {
	chalk := before.amount[Calcium] // takes as much water along when it drops: without that, the water is only boiled off
	w0, w1 := before.amount[Water]-chalk, j.s.amount[Water]-chalk
	n := 1
	if w0 > w1 {
		n = min(mostNodes, 4+int(20*math.Log(w0/w1)))
	}
	var at, rest [mostNodes]float64 // share of the time; mol of calcium that stays
	drop, last := 0.0, 0.0
	if math.IsInf(k, 1) { // where it ends alone counts
		var err error
		if drop, err = j.calcite(j.s, water.AirCO2(place), 0); err != nil {
			return err
		}
		j.scale(drop)
		return nil
	}
	var waters [mostNodes]float64
	for i := range n {
		at[i] = 0.5
		if n > 1 {
			at[i] = (1 - math.Cos(math.Pi*float64(i)/float64(n-1))) / 2
		}
		waters[i] = w0 + at[i]*(w1-w0)
	}
	if known != nil && !known.found {
		if err := known.find(j, before, j.s.t, w1/w0, water.AirCO2(place)); err != nil {
			return err
		}
	}
	if known == nil || !known.of(before, waters[:n], rest[:n]) {
		for i := range n {
			s := *before
			s.t, s.amount[Water] = j.s.t, waters[i]
			var err error
			guess := drop
			if i > 1 && last > 0 { // as it went before
				guess += (drop - last) * (at[i] - at[i-1]) / (at[i-1] - at[i-2])
			}
			last = drop
			if drop, err = j.calcite(s, water.AirCO2(place), guess); err != nil {
				return err
			}
			rest[i] = chalk - drop
		}
	}
	// What came before the last forty times of 1/k is forgotten.
	from := max(0, 1-40/k)
	panels := 1 + int(2*k*(1-from))
	x, h := chalk, (1-from)/float64(panels)
	decay := math.Exp(-k * h)
	for i := range panels {
		x *= decay
		for q, u := range gaussAt {
			x += gaussWeight[q] * h * k * math.Exp(-k*h*(1-u)) * through(at[:n], rest[:n], from+(float64(i)+u)*h)
		}
	}
	j.scale(chalk - x)
	return nil
}

// scale lets so many moles of chalk drop.
func (j *job) scale(mol float64) {
	if mol > 0 {
		j.take(Calcium, mol, &j.left.Scale)
		j.take(CarbonDioxide, mol, &j.left.Scale)
		j.take(Water, mol, &j.left.Scale)
		j.take(Proton, -2*mol, &j.left.Scale)
	}
}

const mostNodes = 9

// calcite is the chalk, mol, that drops from a liquid until it is at rest with calcite under CO2: none
// where it is not above saturation. The search begins at a guess.
//
//   - Source: [water.Equilibrium.SaturationIndex].
func (j *job) calcite(s State, co2 units.AbsolutePressure, guess float64) (float64, error) {
	most := min(s.amount[Calcium], -s.amount[Proton]/2)
	index := func(x float64) (float64, error) {
		less := s
		less.amount[Calcium] -= x
		less.amount[Proton] += 2 * x
		p, err := less.Profile()
		if err != nil {
			return 0, err
		}
		e, err := j.like.Under(p, co2)
		if err != nil {
			return 0, err
		}
		return e.SaturationIndex(water.Calcite), nil
	}
	if most <= 0 {
		return 0, nil
	}
	low, high, x := 0.0, most, min(guess, 0.999*most)
	var lastX, last float64
	for n := range mostTries {
		y, err := index(x)
		if err != nil {
			return 0, err
		}
		if y > 0 {
			low = x
		} else if high = x; x == 0 {
			return 0, nil
		}
		slope := -(1/(s.amount[Calcium]-x) + 2/(most-x)) / math.Ln10 // about; alkalinity counts twice as CO3
		if measured := (y - last) / (x - lastX); n > 0 && measured < 0 && measured > 10*slope {
			slope = measured
		}
		lastX, last = x, y
		if x -= y / slope; !(x > low && x < high) {
			x = (low + high) / 2
		} else if math.Abs(y) < 1e-6 { // the step that was just taken squares that
			return x, nil
		}
		if x == low || x == high || math.Abs(x-lastX) < 1e-13*most {
			return x, nil
		}
	}
	return 0, numeric.ErrNoConvergence
}

const mostTries = 60

// Gauss and Legendre's four points of the unit interval.
var (
	gaussAt     = [...]float64{0.06943184420297371, 0.33000947820757187, 0.6699905217924281, 0.9305681557970263}
	gaussWeight = [...]float64{0.17392742256872692, 0.32607257743127307, 0.32607257743127307, 0.17392742256872692}
)

// through is the polynomial through points, at x.
func through(at, y []float64, x float64) (sum float64) {
	for i := range at {
		part := y[i]
		for k := range at {
			if k != i {
				part *= (x - at[k]) / (at[i] - at[k])
			}
		}
		sum += part
	}
	return sum
}

// degrees is a temperature in °C.
func degrees(c float64) units.Temperature { return units.Celsius.Of(checked.Number(c)) }

var (
	at20    = units.Celsius.Of(20)
	celsius = units.Celsius
)
