package batch

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// open lets out what stands above the drink; what is dissolved stays for the time being.
//
//   - Source: [State.Pack]; Henry's law for air, [carbonation.Liquid.Aerated].
func (j *job) open(st *Step) error {
	if !j.s.above.Closed {
		return &units.StateError{Func: do, What: "pack", Why: "is open already"}
	}
	p, err := j.s.Pack(units.GaugePressure{})
	if err != nil {
		return err
	}
	if p.AtLeast {
		return &units.StateError{Func: do, What: "pack", Why: "is full of liquid or above 20 bar: let it cool before it is opened"}
	}
	j.take(CarbonDioxide, p.InSpace.In(units.Gram)/molar[CarbonDioxide], &j.left.Gas)
	drink, err := j.s.Solution()
	if err != nil {
		return err
	}
	l, err := carbonation.NewLiquid(drink)
	if err != nil {
		return err
	}
	vapours, err := l.Pressure(units.CarbonDioxideContent{}, j.s.t)
	if err != nil {
		return err
	}
	dry := 100.0 // kPa
	nitrogen, oxygen, err := l.Aerated(units.Kilopascal.Of(checked.Number(dry+vapours.In(units.Kilopascal))), j.s.t)
	if err != nil {
		return err
	}
	inSpace := dry * p.Headspace.In(units.Litre) / (gasConstant * (j.s.t.In(celsius) + 273.15)) // mol of any gas at that pressure
	v := drink.VolumeAt20().In(units.Litre)
	for _, g := range [...]struct {
		c    Component
		held float64 // mol in the drink under that pressure of the gas alone
	}{
		{Nitrogen, nitrogen.In(units.GramPerLitre) * v / molar[Nitrogen] / (1 - oxygenOfAir)},
		{Oxygen, oxygen.In(units.GramPerLitre) * v / molar[Oxygen] / oxygenOfAir},
	} {
		j.take(g.c, j.s.amount[g.c]*inSpace/(inSpace+g.held), &j.left.Gas)
	}
	j.s.above = Above{Pressure: st.Pressure}
	return nil
}
