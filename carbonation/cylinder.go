package carbonation

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// CylinderState is what a cylinder with liquid in it shows.
type CylinderState struct {
	Pressure units.AbsolutePressure // zero if there is no liquid
	Gauge    units.GaugePressure
	// Liquid says that there can be liquid at this temperature.
	Liquid   bool
	Cautions caution.List
}

// CylinderAt returns what a cylinder's gauge shows at a temperature as long as there
// is liquid in it, however much.
//
//   - Source: [SaturationPressure]; critical point 30.9782 °C (Span & Wagner 1996).
//   - Range: −56.558 to 60 °C; beyond it the error is a [*units.RangeError]. Above
//     the critical point there is no pressure to give: Liquid is false and the
//     cautions say why.
//   - Units: gauge in the atmosphere given.
//   - Uncertainty: 0.012 %; a cylinder just used is colder than the room.
func CylinderAt(t units.Temperature, outside units.Atmosphere) (CylinderState, error) {
	c := t.In(units.Celsius)
	if err := limit.Check("carbonation.CylinderAt", "temperature", c, "°C", tripleCelsius, 60, dioxide.SpanWagner); err != nil {
		return CylinderState{}, err
	}
	if c > criticalCelsius {
		return CylinderState{Cautions: cautions(Cylinder, noLiquidCO2).list()}, nil
	}
	p := kilopascals(saturation(c + chemistry.ZeroCelsius))
	return CylinderState{Pressure: p, Gauge: outside.Gauge(p), Liquid: true, Cautions: cautions(Cylinder).list()}, nil
}

// KegService is what is done to each keg of a kind with the gas of a cylinder.
type KegService struct {
	Volume      units.Volume      // of the keg
	Drink       units.Volume      // in it
	Temperature units.Temperature // of serving
	Serving     units.GaugePressure
	// Carbonate is the CO2 that the drink takes up from the cylinder, zero if it was
	// primed or spunded.
	Carbonate units.CarbonDioxideContent
	Purge     units.Mass  // gas for one keg, see [FillAndVent]
	Leak      units.Share // of all the gas, lost at seals and lines
}

// CylinderUse is the gas that kegs take.
type CylinderUse struct {
	Purge, Carbonate, Serve, Leak units.Mass // for each keg
	Each                          units.Mass
	Kegs                          int // that the charge serves whole
	Left                          units.Mass
	Cautions                      caution.List
}

// Kegs returns how many kegs a charge of CO2 serves.
//
//   - Source: gas balance: what the drink takes up, and the keg full of gas at the
//     serving pressure when it is empty ([GasDensity]).
//   - Range: keg 0.1 to 1000 L with no more drink than it holds; charge 1 g to 1000 kg;
//     serving −2 to 40 °C at 0 to 500 kPa gauge; content to 30 g/L; leak to 90 %; otherwise
//     the error is a [*units.RangeError].
//   - Units: gauge in the atmosphere given.
//   - Uncertainty: the leak; a cylinder runs out without warning, as its pressure falls
//     only when the liquid is gone.
func (k KegService) Kegs(charge units.Mass, outside units.Atmosphere) (CylinderUse, error) {
	const fn, source = "carbonation.KegService.Kegs", "kegs of the trade"
	keg, drink := k.Volume.In(units.Litre), k.Drink.In(units.Litre)
	for _, x := range []struct {
		what     string
		v        float64
		unit     string
		min, max float64
	}{
		{"keg volume", keg, "L", 0.1, 1000},
		{"drink", drink, "L", 0, keg},
		{"charge", charge.In(units.Gram), "g", 1, 1e6},
		{"temperature", k.Temperature.In(units.Celsius), "°C", coldest, 40},
		{"serving pressure", k.Serving.In(units.KilopascalGauge), "kPa gauge", 0, 500},
		{"content", k.Carbonate.In(units.GramCO2PerLitre), "g/L", 0, 30},
		{"purge gas", k.Purge.In(units.Gram), "g", 0, 1e5},
		{"leak", k.Leak.In(units.Percent), "%", 0, 90},
	} {
		if err := limit.Check(fn, x.what, x.v, x.unit, x.min, x.max, source); err != nil {
			return CylinderUse{}, err
		}
	}
	T := k.Temperature.In(units.Celsius) + chemistry.ZeroCelsius
	p := outside.Pressure().In(units.Kilopascal) + k.Serving.In(units.KilopascalGauge)
	purge, carbonate, serve := k.Purge.In(units.Gram), drink*k.Carbonate.In(units.GramCO2PerLitre), gasMass(T, p, keg)
	leak := (purge + carbonate + serve) * k.Leak.In(units.Fraction) / (1 - k.Leak.In(units.Fraction))
	each := purge + carbonate + serve + leak
	n := math.Floor(charge.In(units.Gram) / each)
	gram := func(g float64) units.Mass { return units.Gram.Of(checked.Number(g)) }
	return CylinderUse{
		Purge: gram(purge), Carbonate: gram(carbonate), Serve: gram(serve), Leak: gram(leak), Each: gram(each),
		Kegs: int(n), Left: gram(charge.In(units.Gram) - n*each),
		Cautions: cautions(PressureVessel, Asphyxiation, Cylinder).with(fromMemory, !k.Leak.IsZero()).list(),
	}, nil
}
