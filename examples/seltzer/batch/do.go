package batch

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Left is what a step, or several, brought in and took away. What was there and came in is what is there and
// went: State before + In = State after + [Left.Out].
type Left struct {
	In       Amounts // weighed, poured or taken up
	Vapour   Amounts // boiled off
	Gas      Amounts // given off, with what it carries
	Scale    Amounts // chalk, on the kettle or as haze that is left there
	Sediment Amounts // yeast and cream of tartar left behind
	Liquid   Amounts // left behind, or filled elsewhere
}

// Out returns all that went.
func (l *Left) Out() (a Amounts) {
	for _, of := range []*Amounts{&l.Vapour, &l.Gas, &l.Scale, &l.Sediment, &l.Liquid} {
		a.plus(of, 1)
	}
	return a
}

// Do carries a state through one step: the state after it, and what came in and left.
//
// Errors: a [*units.RangeError] where the step asks for what cannot be (more left behind than there is,
// a boil of ethanol, a state that no formula covers), a [*units.NameError] for a
// material that no package reads, a [*units.StateError] for a step that this state does not
// allow (a pack closed twice). Nothing is done then.
//
//   - Source: the packages that own the physics; each step names its own.
func Do(step Step, s State, u *Unknowns) (State, Left, error) {
	j := job{s: s, u: u, like: new(water.Series)}
	if err := j.do(&step); err != nil {
		return s, Left{}, err
	}
	return j.s, j.left, nil
}

// Walk carries a state through the steps, and appends the state after each of them to out, which
// may have room already: with room enough nothing is allocated. The pH of each step is where
// the search for the next begins. What came in and left is that of all steps together. The
// error is that of [Do], the states those up to it.
func Walk(out []State, steps []Step, s State, u *Unknowns, like *water.Series) ([]State, Left, error) {
	j := job{s: s, u: u, like: like}
	for i := range steps {
		was := j.s
		if err := j.do(&steps[i]); err != nil {
			return out, j.left, &StepError{Index: i, Kind: steps[i].Kind, State: was, Err: err}
		}
		out = append(out, j.s)
	}
	return out, j.left, nil
}

// StepError is a step of a walk that could not be done.
type StepError struct {
	Index int
	Kind  Kind
	State State // before it
	Err   error
}

// Error names the step and the reason.
func (e *StepError) Error() string {
	return "batch.Walk: step " + trim(float64(e.Index+1)) + ", " + e.Kind.String() + ": " + e.Err.Error()
}

// Unwrap returns the reason.
func (e *StepError) Unwrap() error { return e.Err }

// A job is a state on its way through a step.
type job struct {
	s    State
	left Left
	u    *Unknowns
	like *water.Series
}

// do is one step; the calls are plain, so that the job stays off the heap.
func (j *job) do(st *Step) error {
	switch st.Kind {
	case Blend:
		return j.blend(st)
	case Treat:
		return j.treat(st)
	case Dissolve:
		return j.dissolve(st)
	case Heat:
		return j.heat(st)
	case Boil:
		return j.boil(st)
	case Cool:
		return j.cool(st)
	case Transfer:
		return j.transfer(st)
	case Pitch:
		return j.pitch(st)
	case Feed:
		return j.feed(st)
	case Ferment:
		return j.ferment(st)
	case Stand:
		return j.stand(st)
	case Degas:
		return j.degas(st)
	case Chill:
		return j.chill(st)
	case Fine:
		return j.fine(st)
	case Dilute:
		return j.dilute(st)
	case Flavour:
		return j.flavour(st)
	case Sweeten:
		return j.sweeten(st)
	case Acidify:
		return j.acidify(st)
	case Stabilise:
		return j.stabilise(st)
	case Malolactic:
		return j.malolactic(st)
	case Settle:
		return j.bitartrate(st)
	case Carbonate:
		return j.carbonate(st)
	case Prime:
		return j.prime(st)
	case Fill:
		return j.fill(st)
	case Close:
		return j.close(st)
	case Warm:
		return j.warm(st)
	case Open:
		return j.open(st)
	}
	return &units.NameError{Func: do, What: "step", Name: st.Kind.String()}
}

const (
	do        = "batch.Do"
	aStep     = "a step of a batch"
	mostKilos = 1e9
)

// bring adds so many moles from outside; negative is not brought but taken out of what came in.
func (j *job) bring(c Component, mol float64) {
	j.s.amount[c] += mol
	j.left.In[c] += mol
}

// take lets so many moles go.
func (j *job) take(c Component, mol float64, into *Amounts) {
	j.s.amount[c] -= mol
	into[c] += mol
}

// exchange brings a gas to an amount, from or into what is above.
func (j *job) exchange(c Component, mol float64) {
	if more := mol - j.s.amount[c]; more > 0 {
		j.bring(c, more)
	} else {
		j.take(c, -more, &j.left.Gas)
	}
}

// add weighs something in.
func (j *job) add(st *Step, of use) error {
	if err := j.opened(st); err != nil {
		return err
	}
	g := st.Mass.In(units.Gram)
	if err := limit.Check(do, "mass", g/1000, "kg", 0, mostKilos, aStep); err != nil {
		return err
	}
	m, err := weighed(st, of)
	if err != nil {
		return err
	}
	g *= 1 + j.u.Scale/100
	if of&asSugar != 0 {
		g *= 1 + j.u.Sugar/100
	}
	for c, n := range &m.per {
		if n != 0 {
			j.bring(Component(c), n*g)
		}
	}
	return nil
}

// portion takes a share of the liquid away.
func (j *job) portion(share float64, into *Amounts) {
	for c, n := range &j.s.amount {
		j.take(Component(c), share*n, into)
	}
}

// share reads a share of 0 to 100 %.
func share(st *Step) (float64, error) {
	x := st.Share.In(units.Percent) / 100
	return x, limit.Check(do, "share", 100*x, "%", 0, 100, aStep)
}

// opened refuses what is done to the liquid of a closed pack.
func (j *job) opened(st *Step) error {
	if j.s.above.Closed {
		return &units.StateError{Func: do, What: "pack", Why: "is closed: " + st.Kind.String() + " needs it open"}
	}
	return nil
}

// atRest is the CO2, mol, that the liquid holds at rest under CO2 of a total pressure, with what is
// bound as bicarbonate.
//
//   - Source: [carbonation.Liquid.Content]; [water.Profile.Under] for what is bound.
func (j *job) atRest(total units.AbsolutePressure, t units.Temperature) (float64, error) {
	drink, err := j.s.Solution()
	if err != nil {
		return 0, err
	}
	l, err := carbonation.NewLiquid(drink)
	if err != nil {
		return 0, err
	}
	free, err := l.Content(total, t)
	if err != nil {
		return 0, err
	}
	vapours, err := l.Pressure(units.CarbonDioxideContent{}, t)
	if err != nil {
		return 0, err
	}
	e, err := j.under(units.Kilopascal.Of(checked.Number(total.In(units.Kilopascal) - vapours.In(units.Kilopascal))))
	if err != nil {
		return 0, err
	}
	g := free.In(units.GramCO2PerLitre) * drink.VolumeAt20().In(units.Litre) * j.u.Solubility
	return g/molar[CarbonDioxide] + j.s.bound(e), nil
}

// under is the water of the liquid under CO2.
func (j *job) under(co2 units.AbsolutePressure) (water.Equilibrium, error) {
	p, err := j.s.Profile()
	if err != nil {
		return water.Equilibrium{}, err
	}
	return j.like.Under(p, co2)
}

// vent lets go what the liquid cannot hold under CO2 of a pressure.
func (j *job) vent(total units.AbsolutePressure) error {
	if j.s.amount[CarbonDioxide] <= 0 {
		return nil
	}
	most, err := j.atRest(total, j.s.t)
	if err != nil {
		return err
	}
	if over := j.s.amount[CarbonDioxide] - most; over > 0 {
		j.take(CarbonDioxide, over, &j.left.Gas)
		for _, c := range [...]Component{Nitrogen, Oxygen} { // swept out
			j.take(c, j.s.amount[c], &j.left.Gas)
		}
	}
	return nil
}

// temper sets the temperature.
func (j *job) temper(st *Step, min, max float64, why string) error {
	c := st.Temperature.In(units.Celsius)
	if err := limit.Check(do, "temperature", c, "°C", min, max, why); err != nil {
		return err
	}
	j.s.t = st.Temperature
	return nil
}
