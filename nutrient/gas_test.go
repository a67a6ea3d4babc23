package nutrient

import (
	"testing"

	"example.org/zymase/units"
)

var atmosphere = units.Kilopascal.Of(101.325)

// 1 kg of CO2 at 20 °C and 101.325 kPa is 0.5437 m³ as a real gas; ideal 0.6 % more. A
// 2.268 kg charge in a closed room of 30 m³ adds 4.1 % vol.
func TestGasVolume(t *testing.T) {
	v := must(GasVolume(units.Kilogram.Of(1), units.Celsius.Of(20), atmosphere)).In(units.CubicMetre)
	near(t, "volume", v, 0.5437, 0.0035, "real gas, second virial coefficient -127.9 cm³/mol")
	near(t, "ideal", v, 8.314462618*293.15/101325/44.009*1000, 1e-9, "by hand")
	near(t, "room", must(RoomCO2(units.Kilogram.Of(2.268), units.CubicMetre.Of(30), units.Celsius.Of(20), atmosphere)).In(units.Percent), 4.1, 0.05, "arithmetic of a gas safety table")

	_, err := GasVolume(units.Mass{}.Minus(units.Gram.Of(1)), room, atmosphere)
	refused(t, err, "CO2", 0, 1e9)
	_, err = GasVolume(units.Kilogram.Of(1.0005e9), room, atmosphere)
	refused(t, err, "CO2", 0, 1e9)
	_, err = GasVolume(units.Gram.Of(1), units.Celsius.Of(61), atmosphere)
	refused(t, err, "temperature", -10, 60)
	_, err = GasVolume(units.Gram.Of(1), units.Celsius.Of(-11), atmosphere)
	refused(t, err, "temperature", -10, 60)
	_, err = GasVolume(units.Gram.Of(1), room, units.Kilopascal.Of(201))
	refused(t, err, "pressure", 20, 200)
	_, err = GasVolume(units.Gram.Of(1), room, units.Kilopascal.Of(19))
	refused(t, err, "pressure", 20, 200)
	_, err = RoomCO2(units.Gram.Of(1), units.Volume{}, room, atmosphere)
	refused(t, err, "room", 0.1, 1e6)
	_, err = RoomCO2(units.Kilogram.Of(1000), units.CubicMetre.Of(1), room, atmosphere)
	refused(t, err, "gas", 0, 100)
	// 1 kg is 0.5466 m³ of ideal gas: 0.549 m³ of air hold it, 0.544 m³ do not.
	near(t, "nearly full", must(RoomCO2(units.Kilogram.Of(1), units.CubicMetre.Of(0.549), room, atmosphere)).In(units.Percent), 99.56, 0.01, "by hand")
	_, err = RoomCO2(units.Kilogram.Of(1), units.CubicMetre.Of(0.544), room, atmosphere)
	refused(t, err, "gas", 0, 100)
	_, err = RoomCO2(units.Kilogram.Of(1), units.CubicMetre.Of(1), units.Celsius.Of(99), atmosphere)
	refused(t, err, "temperature", -10, 60)
}

// A tenth of a sugar wash, a fifth of a wort: common practice, no source.
func TestHeadSpaceNeed(t *testing.T) {
	h := must(HeadSpaceNeed(units.Litre.Of(67), units.Litre.Of(60), false))
	near(t, "wanted", h.Wanted.In(units.Litre), 6, 1e-9, "common practice, no source")
	near(t, "room", h.Room.In(units.Litre), 7, 1e-9, "by hand")
	if h.BlowOff || len(h.Cautions) != 1 {
		t.Errorf("%+v", h)
	}
	h = must(HeadSpaceNeed(units.Litre.Of(67), units.Litre.Of(60), true))
	near(t, "wanted", h.Wanted.In(units.Litre), 12, 1e-9, "common practice, no source")
	if !h.BlowOff || len(h.Cautions) != 2 {
		t.Errorf("%+v", h)
	}
	// A fifth of 5/8 m³ is 1/8 m³: just enough.
	if h = must(HeadSpaceNeed(units.CubicMetre.Of(0.75), units.CubicMetre.Of(0.625), true)); h.BlowOff || h.Room.Compare(h.Wanted) != 0 {
		t.Errorf("%+v", h)
	}
	_, err := HeadSpaceNeed(units.Litre.Of(50), units.Litre.Of(60), true)
	refused(t, err, "volume", leastVolume, 50)
}
