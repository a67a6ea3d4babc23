package batch

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// State is one liquid with all that is in it, its temperature and what stands above it. The
// zero State is nothing at all, at 0 °C, open to the air at sea level. States compare with ==.
//
// What the head-space of a closed pack holds is counted with the liquid: only what has left
// the pack has left the state. How it divides is measured ([State.Pack]).
type State struct {
	amount Amounts
	t      units.Temperature
	above  Above
}

// Above is what stands above a liquid.
type Above struct {
	Pressure units.AbsolutePressure // of the place, or of the gas over an open keg; zero is 101.325 kPa
	Gas      bool                   // it is CO2 that holds that pressure, not air
	Capacity units.Volume           // of the pack that the liquid fills, brim-full at 20 °C; zero is none
	Stretch  units.Share            // by how much the pack grows for each bar inside; zero is a rigid one
	Closed   bool
}

// of is the pressure above.
func (a Above) of() units.AbsolutePressure {
	if a.Pressure.IsZero() {
		return units.StandardAtmosphere.Of(1)
	}
	return a.Pressure
}

// FromWater returns a volume of a water of known pH as a state, the volume at 20 °C; it holds no
// air. The charge that the report leaves over stands as [Unnamed].
//
//   - Range: 1 mL to 1e9 L; otherwise the error is a [*units.RangeError], also for a water of
//     unknown pH.
func FromWater(p water.Profile, v units.Volume) (State, error) {
	const fn = "batch.FromWater"
	l := v.In(units.Litre)
	if err := limit.Check(fn, "volume", l, "L", 1e-3, 1e9, "a batch"); err != nil {
		return State{}, err
	}
	e, err := p.Equilibrium()
	if err != nil {
		return State{}, limit.Named(fn, err)
	}
	s := State{t: p.Temperature()}
	mol := l / 1000 // for a mmol/L
	s.amount[Water] = 1000 * l * waterPerLitre / molar[Water]
	for _, i := range ions {
		s.amount[i.c] = mol * p.Ion(i.ion).In(units.MilligramPerLitre) / i.ion.MolarMass().In(units.GramPerMole)
	}
	s.amount[Proton] = -mol * p.Alkalinity().In(units.MilligramPerLitreCaCO3) / caCO3PerEquivalent
	s.amount[CarbonDioxide] = mol * e.InorganicCarbon().In(units.MillimolePerLitre)
	s.amount[Unnamed] = -s.amount.Element(Charge)
	return s, nil
}

// Of returns the moles of a component.
func (s State) Of(c Component) float64 {
	if c >= componentCount {
		return 0
	}
	return s.amount[c]
}

// Amounts returns the moles of every component.
func (s State) Amounts() Amounts { return s.amount }

// Temperature returns the temperature of the liquid.
func (s State) Temperature() units.Temperature { return s.t }

// Above returns what stands above the liquid.
func (s State) Above() Above { return s.above }

// waterPerLitre is kg at 20 °C, the litre of package water.
const waterPerLitre = 0.998203

var caCO3PerEquivalent = chemistry.MustMass("CaCO3") / 2

// litresOfWater is the water in the liquid as package water counts it.
func (s *State) litresOfWater() float64 {
	return s.amount[Water] * molar[Water] / 1000 / waterPerLitre
}

// Solution returns the liquid as package gravity sees it: water, ethanol, extract by kind, with
// the acids of yeast and of doses as organic acid; without gas, yeast and salts.
//
//   - Range: that of [gravity.Solution]; otherwise the error is a [*units.RangeError].
func (s State) Solution() (gravity.Solution, error) {
	kg := func(c Component) units.Mass { return grams(max(0, s.amount[c]) * molar[c]) }
	out, err := gravity.NewSolution(kg(Water), kg(Sucrose), kg(Ethanol))
	for _, x := range [...]struct {
		c    Component
		kind gravity.Sugar
	}{{Glucose, gravity.AsGlucose}, {Fructose, gravity.AsFructose}, {Dextrin, gravity.AsDextrin}, {Glycerol, gravity.AsGlycerol}} {
		if s.amount[x.c] > 0 && err == nil {
			out, err = out.AddExtract(x.kind, kg(x.c))
		}
	}
	acids := 0.0
	for _, x := range ions[firstAcid:] {
		acids += s.amount[x.c] * (molar[x.c] - components[x.c].of[Charge]*molar[Proton])
	}
	if acids > 0 && err == nil {
		out, err = out.AddExtract(gravity.AsOrganicAcid, grams(acids))
	}
	return out, err
}

// Profile returns the water of the liquid as package water sees it, its pH unknown: ions and
// alkalinity by the litre of water.
//
//   - Range: a liquid with water in it, at 90 °C where it is hotter and at 0 °C where it is colder, and that of
//     [water.NewProfile]; otherwise the error is a [*units.RangeError].
func (s State) Profile() (water.Profile, error) {
	l := s.litresOfWater()
	if err := limit.Check("batch.State.Profile", "water", l, "L", 1e-6, 1e9, "a liquid"); err != nil {
		return water.Profile{}, err
	}
	var room [len(ions)]water.Content
	held := room[:0]
	for _, i := range ions {
		if n := s.amount[i.c]; n > 0 {
			mg := 1000 * n * i.ion.MolarMass().In(units.GramPerMole) / l
			held = append(held, i.ion.At(units.MilligramPerLitre.Of(checked.Number(mg))))
		}
	}
	alk := -1000 * s.amount[Proton] / l * caCO3PerEquivalent
	t := s.t
	switch {
	case t.Compare(hottest) > 0:
		t = hottest
	case t.Compare(coldest) < 0:
		t = coldest
	}
	p, err := water.NewProfile(t, units.MilligramPerLitreCaCO3.Of(checked.Number(alk)), held...)
	if err != nil || s.amount[Ethanol] == 0 {
		return p, err
	}
	strength, err := s.Strength()
	if err != nil {
		return water.Profile{}, err
	}
	if strength.Compare(mostWithAcids) > 0 {
		strength = mostWithAcids
	}
	return p.WithEthanol(strength)
}

// mostWithAcids is the end of [water.Profile.WithEthanol]; above it counts as at it, as in nutrient/ferment.
var mostWithAcids = units.PercentVolume.Of(16)

// hottest and coldest are the ends of the constants of package water.
var hottest, coldest = units.Celsius.Of(90), units.Celsius.Of(0)

func grams(x float64) units.Mass { return units.Gram.Of(checked.Number(x)) }
