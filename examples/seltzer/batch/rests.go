package batch

import (
	"math"

	"example.org/zymase/units"
)

// Rests is what stays of the calcium of one water when calcite comes to rest, by how far it is boiled down, with
// its slopes for a water that is hardly another. Many worlds of one boil share it ([Step]): the first that boils
// finds it, the others follow it where their water is within a fiftieth of that.
//
//   - Uncertainty: 4e-5 of what stays for a water within a hundredth (a test holds it); the boil itself is no better known
//     than its rate of chalk.
type Rests struct {
	found, even bool
	per         Amounts                      // of the first water, by the mole of water
	at          [restNodes]float64           // moles of water left of one
	stays       [restNodes]float64           // mol of calcium
	slopes      [restNodes][restWays]float64 // mol for a water that is richer: of one
}

const (
	restNodes = 4
	restWays  = 3     // calcium, alkalinity, all other ions
	restStep  = 0.005 // by which it is made richer to find the slopes
	restFar   = 0.02  // beyond which it is another water
	restLess  = 1.4   // how much more may boil away than in the first world
)

// richer is how much richer a water is than the first, in each of the ways.
func (r *Rests) richer(s *State) (by [restWays]float64) {
	w := s.amount[Water]
	by[0] = s.amount[Calcium]/w/r.per[Calcium] - 1
	by[1] = s.amount[Proton]/w/r.per[Proton] - 1
	is, was := 0.0, 0.0
	for _, i := range ions {
		if i.c != Calcium {
			z := components[i.c].of[Charge]
			is, was = is+z*z*s.amount[i.c]/w, was+z*z*r.per[i.c]
		}
	}
	if was > 0 {
		by[2] = is/was - 1
	}
	return by
}

// find searches for all of it, for a water that is to be boiled down to a part of itself.
func (r *Rests) find(j *job, before *State, t units.Temperature, part float64, co2 units.AbsolutePressure) error {
	r.found = true
	if before.amount[Calcium] <= 0 || before.amount[Proton] >= 0 {
		return nil
	}
	w := before.amount[Water]
	for c, n := range before.amount {
		r.per[c] = n / w
	}
	least := max(0.02, 1-restLess*(1-part))
	stays := func(i, way int, guess float64) (float64, error) {
		s := *before
		s.t, s.amount[Water] = t, w*r.at[i]
		switch way {
		case 0:
			s.amount[Calcium] *= 1 + restStep
		case 1:
			s.amount[Proton] *= 1 + restStep
		case 2:
			for _, k := range ions {
				if k.c != Calcium {
					s.amount[k.c] *= 1 + restStep
				}
			}
		}
		drop, err := j.calcite(s, co2, guess)
		r.even = r.even && drop > 0
		return (s.amount[Calcium] - drop) / w, err
	}
	r.even = true
	for i := range r.at {
		r.at[i] = least + (1-least)*(1+math.Cos(math.Pi*float64(i)/(restNodes-1)))/2
		var err error
		if r.stays[i], err = stays(i, -1, 0); err != nil {
			return err
		}
		for way := range restWays {
			more, err := stays(i, way, before.amount[Calcium]-w*r.stays[i])
			if err != nil {
				return err
			}
			r.slopes[i][way] = (more - r.stays[i]) / restStep
		}
	}
	return nil
}

// of puts what stays of a water in rest, at waters of so many moles; false where it has to be searched for.
func (r *Rests) of(before *State, waters, rest []float64) bool {
	if !r.even {
		return false
	}
	by := r.richer(before)
	for _, x := range by {
		if !(math.Abs(x) < restFar) {
			return false
		}
	}
	var y [restNodes]float64
	for i := range y {
		y[i] = r.stays[i]
		for way, x := range by {
			y[i] += x * r.slopes[i][way]
		}
	}
	w := before.amount[Water]
	for i, left := range waters {
		x := left / w
		if x < r.at[restNodes-1] {
			return false
		}
		rest[i] = w * through(r.at[:], y[:], x)
	}
	return true
}
