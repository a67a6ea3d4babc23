package batch

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Mass returns the mass of the liquid with its gas and its yeast, as a scale has it.
func (s State) Mass() units.Mass { return s.amount.Mass() }

// Volume returns the volume at a temperature, without gas and yeast. Salts do not count.
//
//   - Source, range, errors: [gravity.Solution.Volume].
func (s State) Volume(t units.Temperature) (units.Volume, error) {
	l, err := s.Solution()
	if err != nil {
		return units.Volume{}, err
	}
	return l.Volume(t)
}

// Gravity returns the gravity 20/20 °C: what a hydrometer shows with the gas out and the yeast
// settled, salts and all.
//
//   - Source, range, errors, uncertainty: [gravity.Solution.GravityWith].
func (s State) Gravity() (gravity.Gravity, error) {
	l, err := s.Solution()
	if err != nil {
		return gravity.Gravity{}, err
	}
	if l.Mass().IsZero() {
		return gravity.Gravity{}, nil
	}
	minerals := 0.0 // g
	for _, i := range ions[:firstAcid] {
		minerals += s.amount[i.c] * molar[i.c]
	}
	minerals += max(0, min(-s.amount[Proton], s.amount[CarbonDioxide])) * bicarbonate
	return l.GravityWith(units.GramPerLitre.Of(checked.Number(minerals / l.VolumeAt20().In(units.Litre))))
}

var bicarbonate = chemistry.MustMass("HCO3")

// Strength returns the strength by volume.
//
//   - Source, errors: [gravity.Solution.ByVolume].
func (s State) Strength() (units.StrengthByVolume, error) {
	l, err := s.Solution()
	return l.ByVolume(), err
}

// A Meter measures like liquids one after the other: each search for a pH begins where the last one ended, which halves
// it. The zero Meter is ready.
type Meter struct{ like water.Series }

// Equilibrium is [State.Equilibrium].
func (m *Meter) Equilibrium(s *State) (water.Equilibrium, error) { return s.equilibrium(&m.like) }

// PH is [State.PH].
func (m *Meter) PH(s *State) (float64, error) {
	e, err := s.equilibrium(&m.like)
	if err != nil {
		return 0, err
	}
	return e.PH(), nil
}

// Equilibrium returns the water of the liquid with all its species at rest, closed: with the
// CO2 that it holds.
//
//   - Source, range, errors, uncertainty: [water.Profile.Closed]; above 90 °C and below 0 °C as [State.Profile] has it.
func (s State) Equilibrium() (water.Equilibrium, error) { return new(Meter).Equilibrium(&s) }

func (s *State) equilibrium(like *water.Series) (water.Equilibrium, error) {
	p, err := s.Profile()
	if err != nil {
		return water.Equilibrium{}, err
	}
	return like.Closed(p, units.MillimolePerLitre.Of(checked.Number(max(0, 1000*s.amount[CarbonDioxide]/s.litresOfWater()))))
}

// PH returns the pH of the liquid as it is, with the gas that it holds. Errors are those of
// [State.Equilibrium].
func (s State) PH() (float64, error) { return new(Meter).PH(&s) }

// PHUnder returns the pH of the liquid at rest under CO2 of a pressure: that of a ferment under its own gas, in one search.
//
//   - Source, range, errors: [water.Profile.Under]; that of [State.Profile].
func (m *Meter) PHUnder(s *State, co2 units.AbsolutePressure) (float64, error) {
	p, err := s.Profile()
	if err != nil {
		return 0, err
	}
	e, err := m.like.Under(p, co2)
	return e.PH(), err
}

// CalciteIndex returns how far above calcite's solubility the liquid is, as a logarithm: above
// zero it can drop chalk. Errors are those of [State.Equilibrium].
func (s State) CalciteIndex() (float64, error) {
	e, err := s.Equilibrium()
	if err != nil {
		return 0, err
	}
	return e.SaturationIndex(water.Calcite), nil
}

// Alkalinity returns the alkalinity of the liquid's water, as CaCO3; it is negative in a sour
// liquid. Errors are those of [State.Profile].
func (s State) Alkalinity() (units.CalciumCarbonate, error) {
	p, err := s.Profile()
	return p.Alkalinity(), err
}

// Content returns the CO2 that the liquid holds as such, without what is bound as bicarbonate, by
// the litre of gas-free liquid at 20 °C. In a closed pack it is what stays in the liquid at its
// temperature.
//
//   - Source, errors: [State.Equilibrium]; in a pack [State.Pack].
func (s State) Content() (units.CarbonDioxideContent, error) { return new(Meter).Content(&s) }

// Content is [State.Content].
func (m *Meter) Content(s *State) (units.CarbonDioxideContent, error) {
	if s.above.Closed {
		p, err := m.Pack(s, units.GaugePressure{})
		return p.Content, err
	}
	l, err := s.Solution()
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	e, err := m.Equilibrium(s)
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	g := (s.amount[CarbonDioxide] - s.bound(e)) * molar[CarbonDioxide]
	return units.GramCO2PerLitre.Of(checked.Number(g / l.VolumeAt20().In(units.Litre))), nil
}

// bound is the CO2, mol, that stands as bicarbonate and carbonate.
func (s *State) bound(e water.Equilibrium) float64 {
	mmol := e.InorganicCarbon().In(units.MillimolePerLitre) - e.Of(water.CarbonDioxide).In(units.MillimolePerLitre)
	return mmol / 1000 * s.litresOfWater()
}

// Pack returns the state of a closed pack at its temperature: pressure, content, head-space,
// the verdict against a rating (zero if none is known) and its cautions.
//
//   - Source, range, errors, uncertainty: [carbonation.Vessel.Hold].
func (s State) Pack(rating units.GaugePressure) (carbonation.PackState, error) {
	return new(Meter).Pack(&s, rating)
}

// Pack is [State.Pack].
func (m *Meter) Pack(s *State, rating units.GaugePressure) (carbonation.PackState, error) {
	if err := limit.Check("batch.State.Pack", "capacity", s.above.Capacity.In(units.Litre), "L", 1e-3, 1e7, "a pack that was filled"); err != nil {
		return carbonation.PackState{}, err
	}
	drink, err := s.Solution()
	if err != nil {
		return carbonation.PackState{}, err
	}
	e, err := m.Equilibrium(s)
	if err != nil {
		return carbonation.PackState{}, err
	}
	place, err := units.Barometer(s.above.of())
	if err != nil {
		return carbonation.PackState{}, err
	}
	mass := func(c Component, n float64) units.Mass { return grams(max(0, n) * molar[c]) }
	held, err := carbonation.Vessel{Capacity: s.above.Capacity, Rating: rating, StretchPerBar: s.above.Stretch}.Hold(drink, drink.VolumeAt20(), carbonation.Gases{
		CO2:      mass(CarbonDioxide, s.amount[CarbonDioxide]-s.bound(e)),
		Nitrogen: mass(Nitrogen, s.amount[Nitrogen]), Oxygen: mass(Oxygen, s.amount[Oxygen]),
	}, place)
	if err != nil {
		return carbonation.PackState{}, err
	}
	return held.At(s.t)
}

// OsmoticLoad returns the moles of dissolved particles in a kilogram of the liquid's water,
// as if they were ideal: sugars, glycerol, salts, acids; without ethanol and gases, which
// pass through a cell's wall. Yeast suffers from about 2 on (common practice, no source).
//
//   - Source: van 't Hoff's law on the molal scale, osmotic coefficients left at 1.
//   - Range: a liquid with water in it; otherwise the error is a [*units.RangeError].
//   - Uncertainty: a tenth for salts, up to a third low for syrups.
func (s State) OsmoticLoad() (float64, error) {
	kg := s.amount[Water] * molar[Water] / 1000
	if err := limit.Check("batch.State.OsmoticLoad", "water", kg, "kg", 1e-6, 1e9, "a liquid"); err != nil {
		return 0, err
	}
	n := s.amount[Amino] + s.amount[Urea] + max(0, -s.amount[Proton]) // bicarbonate
	for c := Sucrose; c <= Glutamate; c++ {
		n += s.amount[c]
	}
	return n / kg, nil
}

// Yeast returns the mass of dry yeast in the liquid.
func (s State) Yeast() units.Mass {
	return grams(s.amount[YeastMatter]*molar[YeastMatter] + s.amount[YeastNitrogen]*molar[YeastNitrogen] +
		s.amount[YeastPhosphorus]*molar[YeastPhosphorus] + s.amount[YeastPotassium]*molar[YeastPotassium])
}

// Fermentable returns the mass of the sugars that yeast can use.
func (s State) Fermentable() units.Mass {
	return grams(s.amount[Sucrose]*molar[Sucrose] + s.amount[Glucose]*molar[Glucose] + s.amount[Fructose]*molar[Fructose])
}

// Cells returns the live cells of the yeast in the liquid, in billion, at what a gram holds.
func (s State) Cells(u *Unknowns) float64 { return u.Cells * s.Yeast().In(units.Gram) }

// Shown returns what a hydrometer at hand shows in the liquid at 20 °C: its gravity with the fault
// of the instrument. Errors are those of [State.Gravity].
func (s State) Shown(u *Unknowns) (float64, error) {
	g, err := s.Gravity()
	return g.SG() + u.Hydrometer/1000, err
}
