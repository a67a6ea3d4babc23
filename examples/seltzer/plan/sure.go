package plan

import (
	"math"
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// A doubt is how sure a plan is of one of its figures: the squares by which the unknowns move it down and up, each off by its
// standard uncertainty, k = 1, and the one that moves it most.
type doubt struct {
	of, none       float64 // the figure, and what it is if no chalk drops
	down, up, most float64
	from           string
}

// add counts what an unknown moves the figure by to one side and to the other.
func (d *doubt) add(name string, one, other float64) {
	down, up := min(0, one, other), max(0, one, other)
	down, up = down*down, up*up
	d.down, d.up = d.down+down, d.up+up
	if down+up > d.most {
		d.most, d.from = down+up, name
	}
}

// u is the standard uncertainty where both sides count alike, part the same as a part of the figure.
func (d doubt) u() float64    { return math.Sqrt((d.down + d.up) / 2) }
func (d doubt) part() float64 { return d.u() / d.of }

// around are the ends at k = 2 about a figure as it is printed.
func (d doubt) around(x float64) (low, high float64) {
	return x - 2*math.Sqrt(d.down), x + 2*math.Sqrt(d.up)
}

// What a plan says of its base and is in doubt of.
const (
	ofStrength = iota                   // % vol of the base
	ofFloor                             // its gravity when it is fermented, with what the formulas leave
	ofOriginal                          // the gravity of the wash
	ofVolume                            // of the wash, L
	ofBuffer                            // mol of charge that the fermented base lacks at the floor of its pH
	ofPH                                // of the wash with each third of its sugar used
	ofAfter    = ofPH + courseSteps + 1 // of the drink, each time that it is told once it is fermented
	doubtful   = ofAfter + mostAfter

	ofEnd = ofPH + courseSteps
)

// inDoubt are those figures of one world.
type inDoubt [doubtful]float64

// saltSpread is how far a gram of one salt raises the gravity otherwise than that of another, as a part of it:
// 0.0001 of 0.00075 ([gravity.Solution.GravityWith]).
const saltSpread = 0.0001 / 0.00075

// doubt finds them. The batch is carried to its dry base with the usual unknowns, and once more with each of them off by
// its deviation; what that moves adds in squares. It is the list that [Draw] draws, to first order; where the pH moves far
// it is carried to either side.
//
//   - Source: JCGM 100:2008 (GUM), eq. 10, with differences for the derivatives (5.1.3, note 2).
func (m *maker) doubt(*notes) (d [doubtful]doubt, err error) {
	w, err := m.worlds()
	if err != nil {
		return d, err
	}
	for i := range d {
		d[i].of, d[i].none = w.was[i], w.none[i]
	}
	for _, k := range m.known() {
		of := k.In(&w.bare)
		if of == &w.bare.Chalk && m.brewed.scale > 0 {
			less, more := m.chalkDropped(k)
			for i := range d {
				d[i].add(k.Name, less*(w.was[i]-w.none[i]), more*(w.was[i]-w.none[i]))
			}
			continue
		}
		first := slices.IndexFunc(w.base.steps[:w.ferment+1], func(st forward.Step) bool { return k.Moves(st.Kind) })
		if first < 0 || k.Deviation() == 0 || of == &w.bare.Chalk || of == &w.bare.Growth || of == &w.bare.Solubility {
			continue // the last two of a closed pack, of the gas alone
		}
		from := &w.none
		if first == w.ferment {
			from = &w.was
		}
		is, err := w.moved(&k, k.Deviation(), first, from)
		if err != nil {
			return d, err
		}
		var other inDoubt
		for i := range other {
			other[i] = 2*from[i] - is[i]
		}
		if math.Abs(is[ofEnd]-from[ofEnd]) > bends {
			if other, err = w.moved(&k, -k.Deviation(), first, from); err != nil {
				return d, err
			}
		}
		for i := range d {
			d[i].add(k.Name, is[i]-from[i], other[i]-from[i])
		}
	}
	dry, err := m.brewed.fermented.Solution()
	if err != nil {
		return d, err
	}
	rho, _ := dry.DensityUncertainty()
	for _, left := range []struct {
		name string
		by   float64
	}{{"density formulas", rho.In(units.KilogramPerCubicMetre) / 1000 / waterPerLitre}, {"salts", saltSpread * m.plan.Gravity.Minerals}} {
		d[ofFloor].add(left.name, left.by, -left.by)
	}
	return d, nil
}

// Worlds are the batch with one unknown or another off.
type worlds struct {
	*reader
	base              *walk
	ferment, unstaged int              // the step that ferments, and the last state without the nutrient of the stages
	bare, off         forward.Unknowns // the usual ones, but that no chalk drops, nine tenths of the work of a walk; one of them off
	was, none         inDoubt          // with the usual chalk, and without
	states            []forward.State  // room for those of a world
}

// worlds are those of the batch as it is brewed.
func (m *maker) worlds() (*worlds, error) {
	base, err := m.baseWalk()
	if err != nil {
		return nil, err
	}
	w := &worlds{reader: m.reader(courseSteps), base: base, bare: m.brewed.unknowns}
	w.ferment = slices.IndexFunc(base.steps, func(st forward.Step) bool { return st.Kind == forward.Ferment })
	w.unstaged = w.ferment - 1 - m.plan.Nutrient.staged
	w.bare.Chalk = 0
	w.states = make([]forward.State, 2*w.ferment)
	if base.states, _, err = forward.Walk(w.states[w.ferment:w.ferment], base.steps[:w.ferment], forward.State{}, &w.bare, &base.like); err != nil {
		return nil, err
	}
	wash, usual := m.brewed.wash, m.brewed.unknowns
	if w.was, err = w.read(&wash, m.brewed.unstaged, &usual, nil, true); err != nil {
		return nil, err
	}
	w.none = w.was
	if m.brewed.scale > 0 {
		w.none, err = w.read(&base.states[w.ferment-1], base.states[w.unstaged], &w.bare, nil, true)
	}
	return w, err
}

// moved is a world with one unknown off by so much, held against another: its first step that comes out otherwise is given.
func (w *worlds) moved(k *forward.Unknown, by float64, first int, from *inDoubt) (is inDoubt, err error) {
	w.off = w.bare
	u := &w.off
	of := k.In(u)
	*of = min(max(*of+by, min(k.Low, *of)), max(k.High, *of))
	if first == w.ferment {
		return w.read(nil, w.brewed.unstaged, u, from, of != &u.Lost && of != &u.Glycerol)
	}
	var start forward.State
	if first = min(first, w.unstaged); first > 0 {
		start = w.base.states[first-1]
	}
	states, _, err := forward.Walk(w.states[:0], w.base.steps[first:w.ferment], start, u, &w.base.like)
	if err != nil {
		return is, err
	}
	return w.read(&states[len(states)-1], states[w.unstaged-first], u, from, of == &u.Wash)
}

// chalkDropped is by how much less, and more, of the chalk drops than usual, as a part of it: the root of the mean square over
// the rates below the usual one, and above. What has dropped goes with the time as 1 − exp(−rate·time).
func (m *maker) chalkDropped(k forward.Unknown) (less, more float64) {
	share := func(rate float64) float64 { return -math.Expm1(-rate * m.req.Kettle.Boil.minutes()) }
	const worlds = 32
	var squares, n [2]float64
	for i := range worlds {
		off := share(k.Quantile((float64(i)+0.5)/worlds))/share(k.Usual) - 1
		side := 0
		if off > 0 {
			side = 1
		}
		squares[side], n[side] = squares[side]+off*off, n[side]+1
	}
	return -math.Sqrt(squares[0] / max(1, n[0])), math.Sqrt(squares[1] / max(1, n[1]))
}

// sureGravities are the gravities with how sure they are, k = 2, and what most of that comes from.
func (m *maker) sureGravities(*notes) (GravityPlan, error) {
	g, floor, original := m.plan.Gravity, m.doubts[ofFloor], m.doubts[ofOriginal]
	g.FloorUncertainty, g.FloorFrom = 2*floor.u(), floor.from
	g.OriginalUncertainty, g.OriginalFrom = 2*original.u(), original.from
	return g, nil
}

// off is the standard uncertainty that an unknown has by itself, in its unit.
func (m *maker) off(name string) float64 { return unknown(m.known(), name).Deviation() }

// pHSpread is how sure the plan is of its pH when a share of the sugar is used, k = 1.
func (m *maker) pHSpread(used float64) float64 {
	return onCourse(m.plan.Acidity.Points, units.Fraction.Of(checked.Number(used)), func(p AcidityPoint) float64 { return (p.High - p.Low) / 4 })
}
