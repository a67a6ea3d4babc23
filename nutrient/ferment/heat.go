package ferment

import (
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// HeatRate is the heat that fermenting a mass of extract gives off, by one published
// value. The values span a sixth: which one is taken is a choice.
type HeatRate struct {
	name     string
	kJPerKg  float64
	evidence evidence.Evidence
}

// UsualHeat is the heat that cooling is commonly sized with, 586.6 kJ/kg of extract
// (252 Btu/lb, which is 586.2).
//
//   - Source: common practice, no source that was read; the figure is quoted widely.
func UsualHeat() HeatRate {
	return HeatRate{"usual", 586.6, evidence.Evidence{Grade: evidence.CommonPractice}}
}

// higherUsualHeat is 652.4 kJ/kg of extract.
//
//   - Source: common practice, no source: quoted in the trade.
func higherUsualHeat() HeatRate {
	return HeatRate{"usual, higher", 652.4, evidence.Evidence{Grade: evidence.CommonPractice}}
}

// thermochemicalHeat is the heat of Gay-Lussac's reaction as it runs in a ferment,
// dissolved glucose to dissolved ethanol and CO2 gas: 563 kJ/kg of hexose. Sucrose adds
// that of its inversion, 15 kJ/mol, and gives 636 kJ/kg of sucrose. Between pure
// substances, solid glucose and liquid ethanol, it is 382 kJ/kg; the 219 kJ/mol, 1216
// kJ/kg, that is quoted as heat is the free energy of the reaction, which no cooler sees.
//
//   - Source: enthalpies of formation of the solutes −1262.2 (Goldberg & Tewari, J. Phys.
//     Chem. Ref. Data 18 (1989) 809), −288.3 and of the gas −393.51 kJ/mol (NBS tables
//     1982); recalled from memory.
//   - Uncertainty: 5 %; growth of yeast on little nitrogen moves it by less.
func thermochemicalHeat() HeatRate {
	const glucose, ethanol, gas = -1262.2, -288.3, -393.51 // kJ/mol
	perMole := glucose - 2*ethanol - 2*gas
	return HeatRate{"thermochemical", 1000 * perMole / formula.Hexose.Molar(),
		evidence.Evidence{Source: "NBS tables 1982; Goldberg & Tewari 1989, enthalpies of formation in water", Grade: evidence.Recalled}}
}

// HeatRates returns the values, the one to size cooling with first: [UsualHeat], a higher one of
// the trade (652.4 kJ/kg of extract), and that of the reaction as it runs in a ferment, dissolved
// glucose to dissolved ethanol and CO2 gas (563 kJ/kg of hexose, 636 of sucrose).
func HeatRates() []HeatRate {
	return []HeatRate{UsualHeat(), higherUsualHeat(), thermochemicalHeat()}
}

// Name reads "usual", "usual, higher" or "thermochemical".
func (h HeatRate) Name() string { return h.name }

// String is [HeatRate.Name].
func (h HeatRate) String() string { return h.name }

// MarshalText is [HeatRate.Name]; the zero HeatRate is a [*units.NameError].
func (h HeatRate) MarshalText() ([]byte, error) {
	_, err := heatRate("ferment.HeatRate.MarshalText", h.name)
	return []byte(h.name), err
}

// UnmarshalText reads what [HeatRate.MarshalText] writes; another text is a
// [*units.NameError].
func (h *HeatRate) UnmarshalText(text []byte) error {
	found, err := heatRate("ferment.HeatRate.UnmarshalText", string(text))
	if err == nil {
		*h = found
	}
	return err
}

func heatRate(fn, name string) (HeatRate, error) {
	var names []string
	for _, h := range HeatRates() {
		if h.name == name {
			return h, nil
		}
		names = append(names, h.name)
	}
	return HeatRate{}, &units.NameError{Func: fn, What: "rate of heat", Name: name, Choices: names}
}

// Evidence says where the value comes from.
func (h HeatRate) Evidence() evidence.Evidence { return h.evidence }

// Of returns the heat from fermenting so much extract.
//
//   - Source: the rate's.
//   - Range: 0 to 1e9 kg; beyond it the error is a [*units.RangeError].
func (h HeatRate) Of(extract units.Mass) (units.Energy, error) {
	kg := extract.In(units.Kilogram)
	if err := limit.Check("ferment.HeatRate.Of", "extract", kg, "kg", 0, amount.MostMass/1000, "a mass weighed"); err != nil {
		return units.Energy{}, err
	}
	return units.Kilojoule.Of(checked.Number(kg * h.kJPerKg)), nil
}

// Rise returns how far a liquid would warm if it could lose no heat: about 1.5 K for
// each degree Plato fermented.
//
//   - Source: heat over the heat capacity of a dilute wash, 4.0 kJ/L/K (computed for
//     the same figure).
//   - Range: extract and volume as [HeatRate.Of]; a rise up to 100 K; beyond it the
//     error is a [*units.RangeError].
func (h HeatRate) Rise(extract units.Mass, v units.Volume) (units.TemperatureDifference, error) {
	const fn = "ferment.HeatRate.Rise"
	heat, err := h.Of(extract)
	if err != nil {
		return units.TemperatureDifference{}, limit.Named(fn, err)
	}
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", amount.LeastVolume, amount.MostVolume, "a volume of liquid"); err != nil {
		return units.TemperatureDifference{}, err
	}
	k := heat.In(units.Kilojoule) / (heatCapacity * litres)
	if err := limit.Check(fn, "rise", k, "K", 0, 100, "a liquid that does not boil"); err != nil {
		return units.TemperatureDifference{}, err
	}
	return units.KelvinDifference.Of(checked.Number(k)), nil
}

const heatCapacity = 4.0 // kJ/L/K

// CoolingPower returns the power that holds the temperature while so much extract
// ferments in a time, for example on the busiest day. Heat that the vessel loses to
// the room, or takes up from it, comes on top.
//
//   - Source: the rate's; heat over time.
//   - Range: a minute to a year; beyond it the error is a [*units.RangeError].
func (h HeatRate) CoolingPower(extract units.Mass, in time.Duration) (units.Power, error) {
	heat, err := h.Of(extract)
	if err != nil {
		return units.Power{}, limit.Named("ferment.HeatRate.CoolingPower", err)
	}
	if err := limit.Check("ferment.HeatRate.CoolingPower", "time", in.Hours(), "h", 1.0/60, 8766, "a ferment"); err != nil {
		return units.Power{}, err
	}
	return units.Watt.Of(checked.Number(1000 * heat.In(units.Kilojoule) / in.Seconds())), nil
}

// PeakDay returns the share of the sugar that ferments on the busiest day of a
// ferment, to size cooling with: a third when nothing better is known.
//
//   - Source: common practice, no source; from a fifth for cold ferments to a half for
//     warm ones.
func PeakDay() evidence.Figure[units.Share] {
	return evidence.Figure[units.Share]{Value: amount.Share(1.0 / 3), Low: units.Percent.Of(20), High: units.Percent.Of(50), Evidence: evidence.Evidence{}}
}
