package batch

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// WithPH returns the liquid with the pH that was read in it, under the pressure of its own CO2:
// the difference stands as protons that nobody accounted for, and their charge as [Unnamed].
//
//   - Source: [water.Series.AlkalinityAt].
//   - Range: pH 2 to 9, and that of [State.Profile]; otherwise the error is a [*units.RangeError].
//   - Uncertainty: what the meter leaves; the gas of a sample that was stirred out is 0.05 at pH 4.
func (s State) WithPH(ph float64, gas units.AbsolutePressure) (State, error) {
	const fn = "batch.State.WithPH"
	if err := limit.Check(fn, "pH", ph, "", 2, 9, "a liquid that ferments"); err != nil {
		return State{}, err
	}
	lacks, err := new(Meter).Lacks(&s, ph, gas)
	if err != nil {
		return State{}, limit.Named(fn, err)
	}
	s.amount[Unnamed] += lacks
	s.amount[Proton] -= lacks
	return s, nil
}

// Lacks returns the charge, mol, that a liquid under the pressure of its own CO2 lacks at a pH: below zero where it has more.
//
//   - Source, range, errors: [State.WithPH].
func (m *Meter) Lacks(s *State, ph float64, gas units.AbsolutePressure) (float64, error) {
	p, err := s.Profile()
	if err != nil {
		return 0, err
	}
	alkalinity, err := m.like.AlkalinityAt(p, ph, Above{Pressure: gas}.of())
	if err != nil {
		return 0, err
	}
	return s.amount[Proton] + alkalinity.In(units.MilligramPerLitreCaCO3)/caCO3PerEquivalent/1000*s.litresOfWater(), nil
}

// OfVolume returns so much of the liquid, its composition unchanged: what a level shows.
//
//   - Range: 1 mL to 1e9 L at 20 °C; otherwise the error is a [*units.RangeError].
func (s State) OfVolume(v units.Volume) (State, error) {
	const fn = "batch.State.OfVolume"
	l := v.In(units.Litre)
	if err := limit.Check(fn, "volume", l, "L", 1e-3, 1e9, "a batch"); err != nil {
		return State{}, err
	}
	has, err := s.Volume(at20)
	if err != nil {
		return State{}, limit.Named(fn, err)
	}
	if err := limit.Check(fn, "volume that there is", has.In(units.Litre), "L", 1e-6, 1e9, "a liquid"); err != nil {
		return State{}, err
	}
	k := l / has.In(units.Litre)
	for c := range s.amount {
		s.amount[c] *= k
	}
	return s, nil
}

// YeastNitrogenLeft returns what yeast can still take up, as N by the litre of liquid at 20 °C.
//
//   - Errors: those of [State.Volume].
func (s State) YeastNitrogenLeft() (units.MassConcentration, error) {
	v, err := s.Volume(at20)
	if err != nil {
		return units.MassConcentration{}, err
	}
	return units.GramPerLitre.Of(checked.Number(s.amount.YeastNitrogen().In(units.Gram) / v.In(units.Litre))), nil
}

// YeastNitrogen returns the nitrogen among them that yeast can take up.
func (a *Amounts) YeastNitrogen() units.Mass {
	const nitrogen = 14.007 // g/mol
	return grams(nitrogen * (a[Ammonium] + a[Amino] + 2*a[Urea]))
}
