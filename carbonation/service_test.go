package carbonation_test

import (
	"math"
	"testing"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/check"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"pgregory.net/rapid"
)

// Dalton by hand: the CO2 of the blend presses as pure CO2 does.
func TestMixedGas(t *testing.T) {
	l := liquid(t, 4.6, 0.5)
	p := ok[units.AbsolutePressure](t)(l.Pressure(gramsCO2(4), celsius(4))).In(units.Kilopascal)
	v := vapours(t, l, 4)
	mixed := ok[units.AbsolutePressure](t)(l.MixedGasPressure(gramsCO2(4), percent(60), celsius(4)))
	near(t, "60 %", mixed.In(units.Kilopascal), (p-v)/0.6+v, 1e-9)
	pure := ok[units.AbsolutePressure](t)(l.MixedGasPressure(gramsCO2(4), percent(100), celsius(4)))
	near(t, "100 %", pure.In(units.Kilopascal), p, 1e-9)
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(10, 100).Draw(t, "CO2")
		c := gramsCO2(rapid.Float64Range(1, 5).Draw(t, "content"))
		p := ok[units.AbsolutePressure](t)(l.MixedGasPressure(c, percent(x), celsius(4)))
		near(t, "share", ok[units.Share](t)(l.BlendFor(c, p, celsius(4))).In(units.Percent), x, 1e-9)
	})
	for _, x := range []float64{4.9, 0} {
		_, err := l.MixedGasPressure(gramsCO2(4), percent(x), celsius(4))
		refused(t, "lean", err, "CO2 in the blend")
	}
	_, err := l.MixedGasPressure(gramsCO2(8), percent(5), celsius(4))
	refused(t, "high", err, "pressure of the blend")
	_, err = l.MixedGasPressure(gramsCO2(8), percent(50), celsius(99))
	refused(t, "hot", err, "temperature")
	for _, none := range []float64{0, -1, 51} { // a drink without gas: no share of CO2 keeps it
		x, err := l.BlendFor(gramsCO2(none), kpa(1), celsius(4))
		refused(t, "no gas", err, "content")
		near(t, "no gas", x.In(units.Percent), 0, 0)
	}
	_, err = l.BlendFor(gramsCO2(4), kpa(p-1), celsius(4))
	refused(t, "low", err, "pressure")
	_, err = l.BlendFor(gramsCO2(2), kpa(1900), celsius(4))
	refused(t, "high", err, "pressure")
	_, err = l.BlendFor(gramsCO2(4), kpa(p), celsius(99))
	refused(t, "hot", err, "temperature")
}

// 2.0 bar gauge, 5 rounds at sea level: 4.30e-03 (computed from the definition by
// another program).
func TestPurge(t *testing.T) {
	p := ok[carbonation.Purge](t)(carbonation.FillAndVent(litre(19), celsius(20), barGauge(2), 5, units.Atmosphere{}))
	near(t, "air", p.Air.In(units.Fraction), 4.30e-3, 5e-6)
	near(t, "oxygen", p.Oxygen.In(units.PartPerMillion), 209476*p.Air.In(units.Fraction), 1e-6)
	rho := func(p float64) float64 {
		return ok[units.Density](t)(carbonation.GasDensity(kpa(p), celsius(20))).In(units.KilogramPerCubicMetre)
	}
	near(t, "gas", p.Gas.In(units.Gram), 5*19*(rho(301.325)-rho(101.325)), 1e-9)
	f := ok[carbonation.Purge](t)(carbonation.Flush(litre(19), celsius(20), 5, units.Atmosphere{}))
	near(t, "flush", f.Air.In(units.Fraction), math.Exp(-5), 1e-15)
	near(t, "gas", f.Gas.In(units.Gram), 5*19*rho(101.325), 1e-9)
	for _, c := range []caution.List{p.Cautions, f.Cautions} {
		if !c.Has(carbonation.Asphyxiation) || !c.Has(carbonation.PressureVessel) {
			t.Errorf("%v", c)
		}
	}
	none := ok[carbonation.Purge](t)(carbonation.FillAndVent(litre(19), celsius(20), barGauge(2), 0, units.Atmosphere{}))
	near(t, "no rounds", none.Air.In(units.Percent), 100, 0)
	refuse := func(quantity string, v, c, bar float64, n int) {
		_, err := carbonation.FillAndVent(litre(v), celsius(c), barGauge(bar), n, units.Atmosphere{})
		refused(t, quantity, err, quantity)
	}
	refuse("rounds", 19, 20, 2, -1)
	refuse("rounds", 19, 20, 2, 1001)
	refuse("pressure", 19, 20, 10.1, 1)
	refuse("pressure", 19, 20, -0.1, 1)
	refuse("volume", 0, 20, 2, 1)
	refuse("temperature", 19, 41, 2, 1)
	_, err := carbonation.Flush(litre(19), celsius(20), 101, units.Atmosphere{})
	refused(t, "flush", err, "volumes of gas")
	_, err = carbonation.Flush(litre(19), celsius(-1), 1, units.Atmosphere{})
	refused(t, "flush", err, "temperature")
}

// The rounds that RoundsFor gives are enough, one fewer is not.
func TestRoundsFor(t *testing.T) {
	if n := ok[int](t)(carbonation.RoundsFor(ppm(100), barGauge(2), units.Atmosphere{})); n != 8 { // ln(2094.76)/ln(3.0/1.01325…) = 7.02
		t.Errorf("%d rounds", n)
	}
	rapid.Check(t, func(t *rapid.T) {
		most := rapid.Float64Range(1, 1e5).Draw(t, "ppm")
		left := func(p carbonation.Purge) float64 { return p.Oxygen.In(units.PartPerMillion) }
		n := ok[int](t)(carbonation.RoundsFor(ppm(most), barGauge(1.5), units.Atmosphere{}))
		enough := ok[carbonation.Purge](t)(carbonation.FillAndVent(litre(1), celsius(20), barGauge(1.5), n, units.Atmosphere{}))
		fewer := ok[carbonation.Purge](t)(carbonation.FillAndVent(litre(1), celsius(20), barGauge(1.5), n-1, units.Atmosphere{}))
		if left(enough) > most*(1+1e-6) || left(fewer) <= most*(1-1e-6) {
			t.Errorf("%d rounds leave %g, one fewer %g, of %g", n, left(enough), left(fewer), most)
		}
	})
	for _, x := range []float64{0.001, 209477} {
		_, err := carbonation.RoundsFor(ppm(x), barGauge(2), units.Atmosphere{})
		refused(t, "oxygen", err, "oxygen")
	}
	for _, b := range []float64{0.009, 10.1} {
		_, err := carbonation.RoundsFor(ppm(100), barGauge(b), units.Atmosphere{})
		refused(t, "pressure", err, "pressure")
	}
}

// Gauge of a part-full cylinder at 20 °C: 816.3 psi (computed from the saturation
// pressure by another program).
func TestCylinderAt(t *testing.T) {
	s := ok[carbonation.CylinderState](t)(carbonation.CylinderAt(celsius(20), units.Atmosphere{}))
	near(t, "psi", s.Gauge.In(units.PSIGauge), 816.3, 0.1)
	if !s.Liquid || !s.Cautions.Has(carbonation.Cylinder) || s.Cautions.Has("no_liquid_co2") {
		t.Errorf("%+v", s)
	}
	s = ok[carbonation.CylinderState](t)(carbonation.CylinderAt(celsius(31), units.Atmosphere{}))
	if s.Liquid || !s.Cautions.Has("no_liquid_co2") || !s.Pressure.IsZero() {
		t.Errorf("%+v", s)
	}
	for _, c := range []float64{-57, 60.1} {
		_, err := carbonation.CylinderAt(celsius(c), units.Atmosphere{})
		refused(t, "cylinder", err, "temperature")
	}
}

// By hand: 19 L kegs at 4 °C under 1 bar gauge, 5 g/L taken up by 18 L, 100 g to purge, a
// tenth lost.
func TestKegs(t *testing.T) {
	k := carbonation.KegService{Volume: litre(19), Drink: litre(18), Temperature: celsius(4), Serving: barGauge(1),
		Carbonate: gramsCO2(5), Purge: units.Gram.Of(100), Leak: percent(10)}
	u := ok[carbonation.CylinderUse](t)(k.Kegs(units.Kilogram.Of(2.268), units.Atmosphere{}))
	rho := ok[units.Density](t)(carbonation.GasDensity(kpa(201.325), celsius(4))).In(units.KilogramPerCubicMetre)
	each := (100 + 90 + 19*rho) / 0.9
	near(t, "each", u.Each.In(units.Gram), each, 1e-9)
	near(t, "parts", u.Purge.Plus(u.Carbonate).Plus(u.Serve).Plus(u.Leak).In(units.Gram), each, 1e-9)
	near(t, "serve", u.Serve.In(units.Gram), 19*rho, 1e-9)
	if n := int(2268 / each); u.Kegs != n {
		t.Errorf("%d kegs, want %d", u.Kegs, n)
	}
	near(t, "left", u.Left.In(units.Gram), 2268-float64(u.Kegs)*each, 1e-6)
	if !u.Cautions.Has(carbonation.Cylinder) || !u.Cautions.Has(carbonation.Asphyxiation) {
		t.Errorf("%v", u.Cautions)
	}
	for quantity, change := range map[string]func(*carbonation.KegService){
		"keg volume":       func(k *carbonation.KegService) { k.Volume = units.Volume{} },
		"drink":            func(k *carbonation.KegService) { k.Drink = litre(19.1) },
		"temperature":      func(k *carbonation.KegService) { k.Temperature = celsius(41) },
		"serving pressure": func(k *carbonation.KegService) { k.Serving = barGauge(5.1) },
		"content":          func(k *carbonation.KegService) { k.Carbonate = gramsCO2(31) },
		"purge gas":        func(k *carbonation.KegService) { k.Purge = units.Kilogram.Of(101) },
		"leak":             func(k *carbonation.KegService) { k.Leak = percent(91) },
	} {
		bad := k
		change(&bad)
		_, err := bad.Kegs(units.Kilogram.Of(2), units.Atmosphere{})
		refused(t, quantity, err, quantity)
	}
	for _, g := range []float64{0.5, 1e6 + 1} {
		_, err := k.Kegs(units.Gram.Of(checked.Number(g)), units.Atmosphere{})
		refused(t, "charge", err, "charge")
	}
}

// 1 kg at 20 °C is 0.5437 m³; 2.268 kg in 30 m³ add 4.1 % vol (computed by another
// program from the second virial coefficient).
func TestReleased(t *testing.T) {
	r := ok[carbonation.Release](t)(carbonation.Released(units.Kilogram.Of(1), units.CubicMetre.Of(30), celsius(20), ppm(0), units.Atmosphere{}))
	near(t, "m³", r.Gas.In(units.CubicMetre), 0.5437, 5e-5)
	r = ok[carbonation.Release](t)(carbonation.Released(units.Kilogram.Of(2.268), units.CubicMetre.Of(30), celsius(20), ppm(420), units.Atmosphere{}))
	near(t, "ppm", r.Level.In(units.PartPerMillion), 41_000+420, 150)
	near(t, "oxygen", r.Oxygen.In(units.Percent), 20.9476*(1-0.0411), 0.002)
	if !r.Cautions.Has(carbonation.Asphyxiation) || !r.Cautions.Has(carbonation.OverExposure) {
		t.Errorf("%v", r.Cautions)
	}
	for _, row := range []struct {
		ppm  float64
		over bool
	}{{4999, false}, {5000, false}} {
		r = ok[carbonation.Release](t)(carbonation.Released(units.Mass{}, units.CubicMetre.Of(30), celsius(20), ppm(row.ppm), units.Atmosphere{}))
		if r.Cautions.Has(carbonation.OverExposure) != row.over {
			t.Errorf("%g ppm: %v", row.ppm, r.Cautions)
		}
	}
	r = ok[carbonation.Release](t)(carbonation.Released(units.Gram.Of(1), units.CubicMetre.Of(30), celsius(20), ppm(5000), units.Atmosphere{}))
	if !r.Cautions.Has(carbonation.OverExposure) {
		t.Errorf("over 5000 ppm: %v", r.Cautions)
	}
	flood := ok[carbonation.Release](t)(carbonation.Released(units.Kilogram.Of(100), units.CubicMetre.Of(10), celsius(20), ppm(420), units.Atmosphere{}))
	near(t, "nothing but CO2", flood.Level.In(units.PartPerMillion), 1e6, 0)
	near(t, "no oxygen", flood.Oxygen.In(units.Percent), 0, 0)
	// What is said at 0.86, 5.5 and 100 %, and on either side of 4 % (NIOSH 1994).
	for _, row := range []struct {
		ppm    float64
		danger bool
	}{{8600, false}, {39_999, false}, {40_000, true}, {55_000, true}, {999_000, true}} {
		kg := row.ppm / 1e6 * 30 / flood.Gas.In(units.CubicMetre) * 100
		r := ok[carbonation.Release](t)(carbonation.Released(units.Kilogram.Of(checked.Number(kg*(1+1e-9))), units.CubicMetre.Of(30),
			celsius(20), ppm(0), units.Atmosphere{}))
		if r.Cautions.Has(carbonation.ImmediateDanger) != row.danger || !r.Cautions.Has(carbonation.OverExposure) {
			t.Errorf("%g ppm: %v", r.Level.In(units.PartPerMillion), r.Cautions)
		}
	}
	try := func(kg, m3, c, fresh float64) error {
		_, err := carbonation.Released(units.Kilogram.Of(checked.Number(kg)), units.CubicMetre.Of(checked.Number(m3)), celsius(c), ppm(fresh), units.Atmosphere{})
		return err
	}
	refused(t, "mass", try(1e6+1, 30, 20, 0), "mass")
	refused(t, "room", try(1, 0.09, 20, 0), "room")
	refused(t, "cold", try(1, 30, -1, 0), "temperature")
	refused(t, "hot", try(1, 30, 41, 0), "temperature")
	refused(t, "fresh", try(1, 30, 20, 5001), "CO2 of the fresh air")
}

// By hand: 100 g/h at 20 °C are 54.37 L/h; to hold 5000 ppm with fresh air of 420 ppm takes
// 54.37/0.00458 = 11.87 m³/h; a closed room of 20 m³ is there in 20·0.00458/0.05437 = 1.685 h.
func TestVentilate(t *testing.T) {
	v := ok[carbonation.Ventilation](t)(carbonation.Ventilate(units.Gram.Of(100), units.CubicMetre.Of(20), celsius(20), ppm(5000), ppm(420), units.Atmosphere{}))
	near(t, "gas", v.Gas.In(units.LitrePerHour), 54.37, 0.005)
	near(t, "fresh air", v.FreshAir.In(units.CubicMetrePerHour), 11.871, 0.002)
	near(t, "changes", v.AirChanges.In(units.PerHour), 0.59355, 1e-4)
	near(t, "reached", v.Reached.Hours(), 1.6848, 3e-4)
	near(t, "dangerous", v.Dangerous.Hours(), 20*0.03958/0.05437, 3e-3)
	if !v.Cautions.Has(carbonation.Asphyxiation) || v.Cautions.Has(carbonation.OverExposure) {
		t.Errorf("%v", v.Cautions)
	}
	v = ok[carbonation.Ventilation](t)(carbonation.Ventilate(units.Gram.Of(100), units.CubicMetre.Of(20), celsius(20), ppm(5001), ppm(420), units.Atmosphere{}))
	if !v.Cautions.Has(carbonation.OverExposure) {
		t.Errorf("a limit over the workplace's: %v", v.Cautions)
	}
	v = ok[carbonation.Ventilation](t)(carbonation.Ventilate(units.Gram.Of(0.001), units.CubicMetre.Of(1e6), celsius(20), ppm(5000), ppm(420), units.Atmosphere{}))
	near(t, "long", v.Reached.Hours(), 1e5, 0)
	try := func(g, most float64) error {
		_, err := carbonation.Ventilate(units.Gram.Of(checked.Number(g)), units.CubicMetre.Of(20), celsius(20), ppm(most), ppm(420), units.Atmosphere{})
		return err
	}
	refused(t, "rate", try(1e-4, 5000), "CO2 in an hour")
	refused(t, "rate", try(1e6+1, 5000), "CO2 in an hour")
	refused(t, "limit", try(100, 420), "limit")
	refused(t, "limit", try(100, 40001), "limit")
	_, err := carbonation.Ventilate(units.Gram.Of(100), units.Volume{}, celsius(20), ppm(5000), ppm(420), units.Atmosphere{})
	refused(t, "room", err, "room")
}

// Against the balance stepped through by Euler's way: V·dC/dt = Q·(fresh − C).
func TestAirOut(t *testing.T) {
	out := func(m3, q, level, most, fresh float64) (time.Duration, caution.List, error) {
		return carbonation.AirOut(units.CubicMetre.Of(checked.Number(m3)), units.CubicMetrePerHour.Of(checked.Number(q)), ppm(level), ppm(most), ppm(fresh))
	}
	for _, row := range []struct{ m3, q, level, most, fresh float64 }{{30, 15, 55_000, 5000, 420}, {10, 200, 1e6, 5000, 0}, {25, 2, 8600, 1000, 420}} {
		d, c, err := out(row.m3, row.q, row.level, row.most, row.fresh)
		if err != nil || !c.Has(carbonation.Asphyxiation) || !c.Has(carbonation.OverExposure) || c.Has(carbonation.ImmediateDanger) != (row.level > 40_000) {
			t.Errorf("%v, %v", c, err)
		}
		const steps = 1_000_000
		level, step := row.level, d.Hours()/steps
		for range steps {
			level += row.q / row.m3 * (row.fresh - level) * step
		}
		close(t, "level then", level, row.most, 2e-5)
	}
	for _, level := range []float64{0, 420, 5000} {
		if d, c, err := out(30, 15, level, 5000, 420); d != 0 || err != nil || c.Has(carbonation.OverExposure) {
			t.Errorf("%g ppm: %v, %v, %v", level, d, c, err)
		}
	}
	for quantity, row := range map[string][5]float64{
		"room": {0.09, 15, 5e4, 5000, 420}, "fresh air": {30, 1e-4, 5e4, 5000, 420}, "level": {30, 15, 1e6 + 1, 5000, 420},
		"limit": {30, 15, 5e4, 420, 420}, "CO2 of the fresh air": {30, 15, 5e4, 6000, 5001}, "time": {1e6, 1e-3, 5e4, 5000, 420},
	} {
		_, _, err := out(row[0], row[1], row[2], row[3], row[4])
		refused(t, quantity, err, quantity)
	}
	for _, bad := range [][2]float64{{15e6, 5e4}, {15, -1}} {
		if _, _, err := out(30, bad[0], bad[1], 5000, 420); err == nil {
			t.Errorf("%v is taken", bad)
		}
	}
	_, _, err := out(30, 15, 5e4, 40_001, 420)
	refused(t, "limit", err, "limit")
	if d, _, err := out(30, 15, 5e4, 421.5, 420); err != nil || math.Abs(d.Hours()-2*math.Log((5e4-420)/1.5)) > 1e-6 {
		t.Errorf("a limit of 1.5 ppm over the fresh air: %v, %v", d, err)
	}
}

func TestGivenOff(t *testing.T) {
	m, v, err := carbonation.GivenOff(units.Kilogram.Of(5), units.Fraction.Of(0.46286), celsius(20), units.Atmosphere{})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "mass", m.In(units.Kilogram), 2.3143, 1e-9)
	near(t, "volume", v.In(units.CubicMetre), 2.3143*0.5437, 2e-4)
	try := func(kg, y, c float64) error {
		_, _, err := carbonation.GivenOff(units.Kilogram.Of(checked.Number(kg)), units.Fraction.Of(checked.Number(y)), celsius(c), units.Atmosphere{})
		return err
	}
	refused(t, "extract", try(1e6+1, 0.5, 20), "extract")
	refused(t, "yield", try(1, 1.1, 20), "CO2 yield")
	refused(t, "temperature", try(1, 0.5, 41), "temperature")
	refused(t, "temperature", try(1, 0.5, -1), "temperature")
}

// 29 CFR 1910.1000 prints 5000 ppm as 9000 mg/m³, at 25 °C.
func TestExposureLimits(t *testing.T) {
	d := ok[units.Density](t)(carbonation.GasDensity(kpa(101.325), celsius(25))).In(units.KilogramPerCubicMetre)
	near(t, "mg/m³", 5000*d, 9000, 60)
	want := map[string]float64{"OSHA PEL, 8 h": 5000, "ACGIH TLV, 8 h": 5000, "ACGIH short-term, 15 min": 30000, "NIOSH REL, 10 h": 5000,
		"NIOSH short-term, 15 min": 30000, "NIOSH immediately dangerous": 40000}
	over := map[string]time.Duration{"OSHA PEL, 8 h": 8 * time.Hour, "ACGIH TLV, 8 h": 8 * time.Hour, "ACGIH short-term, 15 min": 15 * time.Minute,
		"NIOSH REL, 10 h": 10 * time.Hour, "NIOSH short-term, 15 min": 15 * time.Minute}
	for _, l := range carbonation.ExposureLimits() {
		if want[l.Name] != l.Level.In(units.PartPerMillion) || over[l.Name] != l.Over || l.Source.Source == "" {
			t.Errorf("%+v", l)
		}
	}
	if len(carbonation.ExposureLimits()) != len(want) {
		t.Error("limits missing")
	}
}

// 27 CFR 24.245: 0.392 g in 100 mL and 0.009 more, 1.983 volumes; 27 CFR 24.251: 0.64 g in 100 mL.
func TestContentLimits(t *testing.T) {
	type law struct{ most, tolerance, low, high float64 }
	want := map[string]law{
		"US still wine": {0.392, 0.009, 0, 0}, "US hard cider": {0.64, 0, 0, 0},
		"EU semi-sparkling wine": {0, 0, 1, 2.5}, "EU sparkling wine": {0, 0, 3, 0}, "EU quality sparkling wine": {0, 0, 3.5, 0},
	}
	list := carbonation.ContentLimits()
	if len(list) != len(want) {
		t.Error("limits missing")
	}
	for _, l := range list {
		got := law{l.Most.In(check.Must(units.GramCO2PerLitre.Find("g/100 mL CO2"))), l.Tolerance.In(check.Must(units.GramCO2PerLitre.Find("g/100 mL CO2"))),
			l.LeastPressure.In(units.BarGauge), l.MostPressure.In(units.BarGauge)}
		if w := want[l.Drink]; math.Abs(got.most-w.most) > 1e-12 || math.Abs(got.tolerance-w.tolerance) > 1e-12 || got.low != w.low || got.high != w.high ||
			l.Law.Source == "" {
			t.Errorf("%+v", l)
		}
	}
	near(t, "volumes", carbonation.RealVolume.Volumes(list[0].Most).In(units.VolumesCO2), 1.983, 5e-4)
	if !list[0].Allows(gramsCO2(3.92)) || list[0].Allows(gramsCO2(3.93)) || !list[2].Allows(gramsCO2(9)) {
		t.Error("Allows")
	}
}
