package ferment

import (
	"errors"
	"testing"
	"time"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

func TestHeatRates(t *testing.T) {
	all := HeatRates()
	for i, c := range []struct {
		name   string
		want   float64
		tol    float64
		grade  evidence.Grade
		source string
	}{
		{"usual", 586.6, 0, evidence.CommonPractice, "252 Btu/lb = 586.2 kJ/kg, trade"},
		{"usual, higher", 652.4, 0, evidence.CommonPractice, "trade"},
		{"thermochemical", 575, 15, evidence.Recalled, "enthalpies in water give 560 to 590"},
	} {
		check.Near(t, c.name, all[i].kJPerKg, c.want, c.tol, c.source)
		if all[i].Name() != c.name || all[i].Evidence().Grade != c.grade {
			t.Errorf("%s: %v", c.name, all[i])
		}
	}
	// Another way round: heats of combustion of the pure substances, 2803.0 and 1366.8 kJ/mol
	// (CRC Handbook, recalled from memory), less what glucose takes up when it dissolves, 11.0,
	// and with what ethanol gives off, 10.6 kJ/mol (recalled from memory).
	check.Near(t, "thermochemical, by mole", thermochemicalHeat().kJPerKg*0.180156, 2803.0-2*1366.8+11.0+2*10.6, 0.5, "combustion and solution")
	check.Near(t, "hand", thermochemicalHeat().kJPerKg*0.180156, -1262.2+2*288.3+2*393.51, 1e-3, "by hand")
	// A gram of sucrose: with 14.9 kJ/mol of its inversion (Goldberg et al., J. Biol. Chem. 264
	// (1989) 9901, recalled from memory), within 10 % of the usual figure.
	sucrose := (2*180.156*thermochemicalHeat().kJPerKg/1000 + 14.9) / 0.342297
	check.Near(t, "sucrose", sucrose, 636, 1, "by hand")
	check.Near(t, "sucrose and the usual", sucrose/UsualHeat().kJPerKg, 1, 0.1, "by hand")
}

func TestHeat(t *testing.T) {
	h := UsualHeat()
	check.Near(t, "heat", check.Must(h.Of(units.Kilogram.Of(2))).In(units.Kilojoule), 1173.2, 1e-9, "by hand")
	// 10 g/L of extract, 1 °P: about 1.5 K.
	check.Near(t, "rise", check.Must(h.Rise(units.Gram.Of(100), units.Litre.Of(10))).In(units.KelvinDifference), 1.5, 0.04, "586.6·10 g/L over 4.0 kJ/L/K")
	check.Near(t, "rise by hand", check.Must(h.Rise(units.Gram.Of(100), units.Litre.Of(10))).In(units.KelvinDifference), 1.4665, 1e-9, "by hand")
	// 1 kg in a day: 586,600 J / 86,400 s = 6.79 W.
	check.Near(t, "power", check.Must(h.CoolingPower(units.Kilogram.Of(1), 24*time.Hour)).In(units.Watt), 6.789, 0.001, "by hand")
	d := PeakDay()
	check.Near(t, "busiest day", d.Value.In(units.Percent), 100.0/3, 1e-9, "common practice, no source")
	check.Near(t, "cold", d.Low.In(units.Percent), 20, 1e-9, "common practice, no source")
	check.Near(t, "warm", d.High.In(units.Percent), 50, 1e-9, "common practice, no source")

	minus := units.Mass{}.Minus(units.Gram.Of(1))
	_, err := h.Of(minus)
	check.Refused(t, err, "extract", 0, 1e9)
	_, err = h.Rise(minus, units.Litre.Of(1))
	check.Refused(t, err, "extract", 0, 1e9)
	_, err = h.Rise(units.Gram.Of(1), units.Volume{})
	check.Refused(t, err, "volume", amount.LeastVolume, amount.MostVolume)
	_, err = h.Rise(units.Kilogram.Of(1), units.Litre.Of(1))
	check.Refused(t, err, "rise", 0, 100)
	_, err = h.CoolingPower(minus, time.Hour)
	check.Refused(t, err, "extract", 0, 1e9)
	_, err = h.CoolingPower(units.Kilogram.Of(1), time.Second)
	check.Refused(t, err, "time", 1.0/60, 8766)
}

func TestHeatRatesTravel(t *testing.T) {
	for _, h := range HeatRates() {
		check.Travels(t, h)
	}
	_, none := HeatRate{}.MarshalText()
	h := UsualHeat()
	for _, err := range []error{none, h.UnmarshalText([]byte("lukewarm"))} {
		if e, ok := errors.AsType[*units.NameError](err); !ok || len(e.Choices) != 3 || h != UsualHeat() {
			t.Error(h, err)
		}
	}
}
