package batch

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// close shuts a filled pack. Its head-space is at the pressure of the place, a share of it air and
// the rest CO2, as a bottle has it that was filled under counter-pressure and let down to be capped; a keg keeps the gas
// that it was carbonated with. A drink that meets air on its way there takes a part of what it holds of it ([Unknowns]).
//
//   - Source: gas law; [carbonation.GasDensity]; [carbonation.Liquid.Aerated].
func (j *job) close(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	if j.s.above.Capacity.IsZero() {
		return &units.StateError{Func: do, What: "pack", Why: "is not filled: close what was filled"}
	}
	air, err := share(st)
	if err != nil {
		return err
	}
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
	v, err := drink.Volume(j.s.t)
	if err != nil {
		return err
	}
	gas := max(0, j.s.amount[CarbonDioxide]) * molar[CarbonDioxide]
	swollen := v.In(units.Litre) + Swelling(units.GramCO2PerLitre.Of(1)).In(units.Fraction)*gas
	space := j.s.above.Capacity.In(units.Litre) - swollen
	if err := limit.Check(do, "head-space", space, "L", 0, 1e7, "the pack has room for the drink with its gas"); err != nil {
		return err
	}
	dry := st.place().In(units.Kilopascal) - vapours.In(units.Kilopascal)
	co2 := (1 - air) * dry
	held := st.Gas && j.s.above.Gas
	if held {
		dry, co2 = 0, j.s.above.Pressure.In(units.Kilopascal)-vapours.In(units.Kilopascal)
	}
	rho, err := carbonation.GasDensity(units.Kilopascal.Of(checked.Number(max(0, co2))), j.s.t)
	if err != nil {
		return err
	}
	j.bring(CarbonDioxide, rho.In(units.KilogramPerCubicMetre)*space/molar[CarbonDioxide])
	n := air * dry * space / (gasConstant * (j.s.t.In(celsius) + 273.15))
	j.bring(Nitrogen, (1-oxygenOfAir)*n)
	j.bring(Oxygen, oxygenOfAir*n)
	if j.u.Air > 0 && air > 0 && !held {
		nitrogen, oxygen, err := l.Aerated(st.place(), j.s.t)
		if err != nil {
			return err
		}
		at20 := drink.VolumeAt20().In(units.Litre)
		j.bring(Nitrogen, j.u.Air*nitrogen.In(units.GramPerLitre)*at20/molar[Nitrogen])
		j.bring(Oxygen, j.u.Air*oxygen.In(units.GramPerLitre)*at20/molar[Oxygen])
	}
	j.s.above.Closed, j.s.above.Gas, j.s.above.Pressure = true, false, st.Pressure
	return nil
}

// Swelling is by how much of its volume at 20 °C a drink grows with its gas.
//
//   - Source: 32.3 mL for a mole of dissolved CO2, R. F. Weiss, Mar. Chem. 2 (1974) 203.
func Swelling(c units.CarbonDioxideContent) units.Share {
	return units.Fraction.Of(checked.Number(molarVolume * c.In(units.GramCO2PerLitre) / molar[CarbonDioxide]))
}

const (
	gasConstant = 8.314462618 // J/(mol·K), CODATA 2018
	oxygenOfAir = 0.209476    // US Standard Atmosphere 1976, table 3; argon counts as nitrogen
	molarVolume = 32.3e-3     // L/mol of dissolved CO2, Weiss, Mar. Chem. 2 (1974) 203
)
