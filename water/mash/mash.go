package mash

import (
	"cmp"
	"errors"
	"fmt"
	"math"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/water"
)

// Mash is malts in water.
type Mash struct {
	Malts  []Malt
	Water  water.Profile // with the salts and acids that go into it; its pH is not used
	Volume units.Volume  // of the water
}

// Prediction is a pH with its band, and what the band is made of.
type Prediction struct {
	evidence.Figure[float64]
	Parts []Part
}

// String reads "5.52 (5.31 to 5.70)".
func (p Prediction) String() string {
	return fmt.Sprintf("%.2f (%.2f to %.2f)", p.Value, p.Low, p.High)
}

// Part is how far one thing that is not known well moves the pH, with it at the low and at the
// high end of its band.
type Part struct {
	Name      string
	Low, High float64
}

// PH returns the pH of the mash.
//
// Errors are a [*units.RangeError]: no malt; a mass outside 0.001 to 100,000 kg; a volume outside 1 to 20
// L for each kilogram; a pH of a malt outside 3.5 to 7, a buffering outside 5 to 150
// mEq/(kg pH), a band that does not hold its value; a pH that comes out below 4 or above 7; and those of
// [water.Profile.AlkalinityAt].
//
//   - Source: the balance of protons of A. J. deLange, MBAA TQ 52 (2015) 1, 3-12 (its abstract
//     was read): each malt by its pH in distilled water and the first term of its
//     titration. Calcium and magnesium as Kolbach has them for wort, 1 equivalent of acid
//     for 3.5 of calcium and 7 of magnesium (Monatsschr. Brau. 6 (1953) 49).
//   - Uncertainty: the band. Its parts are moved to their ends one at a time and added by their
//     squares: pH and buffering of each malt; the divisors from 2 to 7 and from 4 to 14
//     (chosen: Barth and Zaman, J. Am. Soc. Brew. Chem. 2015-0621-01, found that Kolbach's must be
//     modified for a mash, and their figures were not read; four mashes of Taylor 1990 give 2 to
//     5 at 3 L and 30 mEq to the kilogram); the CO2 of the alkalinity, all lost (taken) or
//     all kept. Not in it: further terms of a titration, salts that do not dissolve, a pH meter.
func (m Mash) PH() (Prediction, error) {
	const fn = "mash.Mash.PH"
	s, err := m.prepare(fn)
	if err != nil {
		return Prediction{}, err
	}
	return s.estimatePH()
}

func (s *state) estimatePH() (Prediction, error) {
	e, err := s.estimate(s.ph)
	if err != nil {
		return Prediction{}, err
	}
	if err := limit.Check(s.fn, "pH of the mash", e.Value, "", leastPH, mostPH, "a mash"); err != nil {
		return Prediction{}, err
	}
	e.Evidence = evidence.Evidence{Source: "deLange 2015, with Kolbach's divisors", Grade: evidence.Computed, Note: "pH of the mash"}
	return e, nil
}

const (
	leastPH = 4.0
	mostPH  = 7.0
	// The ends of a band may lie beyond.
	sourest, flattest = 3.5, 8.5

	closely = 1e-9 // pH, mmol/L

	// Kolbach's divisors.
	calciumDivisor   = 3.5
	magnesiumDivisor = 7.0
)

// unknown is a number of the mash with its band; value is what it counts as now.
type unknown struct {
	name string
	figure
	now float64
}

// state is a mash with its unknowns: pH and buffering of each malt, then four more.
type state struct {
	fn      string
	kg      []float64
	litres  float64
	water   water.Profile
	carbon  water.Profile // shows how much of CO2 is bicarbonate at a pH
	unknown []unknown
}

func (m Mash) prepare(fn string) (*state, error) {
	s := &state{fn: fn, litres: m.Volume.In(units.Litre)}
	total := 0.0
	for _, malt := range m.Malts {
		kg := malt.Mass.In(units.Kilogram)
		if err := limit.Check(fn, "mass of "+malt.Name, kg, "kg", 0.001, 1e5, "a mash"); err != nil {
			return nil, err
		}
		if err := check(malt.PH, fn, "pH in distilled water of "+malt.Name, "", 3.5, 7); err != nil {
			return nil, err
		}
		buffer := inMillimoles(malt.BufferPerKilogram)
		if err := check(buffer, fn, "buffering of "+malt.Name, "mEq/(kg pH)", 5, 150); err != nil {
			return nil, err
		}
		total += kg
		s.kg = append(s.kg, kg)
		s.unknown = append(s.unknown, unknown{"pH of " + malt.Name, malt.PH, malt.PH.Value}, unknown{"buffering of " + malt.Name, buffer, buffer.Value})
	}
	if err := limit.Check(fn, "malts", float64(len(m.Malts)), "", 1, 1000, "a mash"); err != nil {
		return nil, err
	}
	if err := limit.Check(fn, "water to the malt", s.litres/total, "L/kg", 1, 20, "a mash"); err != nil {
		return nil, err
	}
	for _, u := range [...]unknown{
		{name: "calcium with malt phosphate", figure: band(1/calciumDivisor, 1./7, 1./2)},
		{name: "magnesium with malt phosphate", figure: band(1/magnesiumDivisor, 1./14, 1./4)},
		{name: "CO2 that stays in the mash", figure: band(0, 0, 1)},
	} {
		u.now = u.Value
		s.unknown = append(s.unknown, u)
	}
	var err, also error
	s.water, err = m.Water.AtTemperature(units.Celsius.Of(room))
	s.carbon, also = water.NewProfile(units.Celsius.Of(room), units.MilligramPerLitreCaCO3.Of(1))
	return s, limit.Named(fn, cmp.Or(err, also))
}

// room is the temperature of the sample, °C.
const room = 20

// estimate computes a figure with its band: each unknown at its ends, one at a time. It rises or falls with each all the
// way, so that the one end is below it and the other above.
func (s *state) estimate(compute func() (float64, error)) (e Prediction, err error) {
	if e.Value, err = compute(); err != nil {
		return Prediction{}, err
	}
	var down, up float64
	for k := range s.unknown {
		u := &s.unknown[k]
		part := Part{Name: u.name}
		for _, end := range [...]struct {
			at   float64
			into *float64
		}{{u.Low, &part.Low}, {u.High, &part.High}} {
			u.now = end.at
			v, err := compute()
			if err != nil {
				return Prediction{}, err
			}
			*end.into = v - e.Value
		}
		u.now = u.Value
		e.Parts = append(e.Parts, part)
		down += square(min(part.Low, part.High))
		up += square(max(part.Low, part.High))
	}
	e.Low, e.High = e.Value-math.Sqrt(down), e.Value+math.Sqrt(up)
	return e, nil
}

func square(x float64) float64 { return x * x }

// ph returns the pH with the unknowns as they are now; beyond what is refused it is the end
// of a band only, and stays at sourest or flattest.
func (s *state) ph() (float64, error) {
	above, err := numeric.Rising(func(x float64) (float64, error) { return s.lacking(s.water, sourest+x) }, flattest-sourest, 2, flattest-sourest, closely)
	if errors.Is(err, numeric.ErrBracket) {
		err = nil
	}
	return sourest + above, err
}

// lacking returns the base that the mash with that water lacks to be at a pH, in mEq.
//
//   - Source: A. J. deLange 2015, the proton condition.
func (s *state) lacking(p water.Profile, ph float64) (float64, error) {
	a, err := p.AlkalinityAt(ph, units.AbsolutePressure{})
	var also error
	has := equivalents(p.Alkalinity())
	n := len(s.unknown)
	calcium, magnesium, kept := s.unknown[n-3].now, s.unknown[n-2].now, s.unknown[n-1].now
	sum := s.litres * (equivalents(a) - has + calcium*mEq(p, water.Calcium) + magnesium*mEq(p, water.Magnesium))
	// An acid in p has driven out what carbon the water brought, unless it is kept.
	if carbon := max(has, equivalents(s.water.Alkalinity())); kept > 0 && carbon > 0 {
		bicarbonate, err := s.bicarbonate(ph)
		sum, also = sum+s.litres*kept*carbon*bicarbonate, err
	}
	for k, kg := range s.kg {
		sum += kg * s.unknown[2*k+1].now * (ph - s.unknown[2*k].now)
	}
	return sum, limit.Named(s.fn, cmp.Or(err, also))
}

// bicarbonate returns the share of the inorganic carbon that is still bicarbonate at a pH.
func (s *state) bicarbonate(ph float64) (float64, error) {
	p, err := s.carbon.WithPH(ph)
	e, also := p.Equilibrium()
	return e.Of(water.BicarbonateFree).In(units.MillimolePerLitre) / e.InorganicCarbon().In(units.MillimolePerLitre), cmp.Or(err, also)
}

// equivalents returns mEq/L.
func equivalents(c units.CalciumCarbonate) float64 {
	return c.In(units.MilligramPerLitreCaCO3) / ((chemistry.Ca + chemistry.C + 3*chemistry.O) / 2)
}

func mEq(p water.Profile, i water.Ion) float64 {
	return p.Ion(i).In(units.MilligramPerLitre) / i.MolarMass().In(units.GramPerMole) * float64(i.Charge())
}
