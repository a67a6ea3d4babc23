package units

import "math"

// Atmosphere is the pressure of the air around a gauge. It stands between gauge
// and absolute pressure. The zero value is the standard atmosphere, 101.325 kPa.
type Atmosphere struct{ excess float64 } // kPa above 101.325

// Standard atmosphere below 11 km: ISO 2533:1975, US Standard Atmosphere 1976.
const (
	seaLevelKPa   = 101.325
	seaLevelK     = 288.15
	lapseKPerM    = 0.0065
	isaExponent   = 9.80665 / (287.05287 * lapseKPerM) // g0/(R·L) = 5.25588
	lowestMetres  = -500.0
	highestMetres = 11000.0
)

// Barometer returns the atmosphere that a barometer shows at the place itself
// (station pressure, not reduced to sea level as weather reports give it).
//
//   - Range: 20 to 110 kPa; the error is a [*RangeError].
func Barometer(p AbsolutePressure) (Atmosphere, error) { return barometer("units.Barometer", p) }

func barometer(fn string, p AbsolutePressure) (Atmosphere, error) {
	if !(p.v >= 20 && p.v <= 110) {
		return Atmosphere{}, &RangeError{Func: fn, Quantity: "barometer reading", Value: p.v, Unit: "kPa absolute",
			Min: 20, Max: 110, Source: "from above the highest town to below the lowest shore"}
	}
	return Atmosphere{p.v - seaLevelKPa}, nil
}

// AtAltitude returns the standard atmosphere at a height above sea level.
// Weather moves the real pressure by up to about 3 kPa around it.
//
//   - Source: ISO 2533:1975, Standard atmosphere (US Standard Atmosphere 1976):
//     p = 101.325 kPa·(1 − 0.0065·H/288.15)^5.25588, H geopotential metres.
//   - Range: −500 to 11,000 m; the error is a [*RangeError].
//   - Uncertainty: none as a definition; 0.1 % between geometric and geopotential
//     height at 3000 m.
func AtAltitude(h Length) (Atmosphere, error) {
	if !(h.v >= lowestMetres && h.v <= highestMetres) {
		return Atmosphere{}, &RangeError{Func: "units.AtAltitude", Quantity: "altitude", Value: h.v, Unit: "m",
			Min: lowestMetres, Max: highestMetres, Source: "ISO 2533:1975"}
	}
	p := seaLevelKPa * math.Pow(1-lapseKPerM*h.v/seaLevelK, isaExponent)
	return Atmosphere{p - seaLevelKPa}, nil
}

// Pressure returns the pressure of the atmosphere.
func (a Atmosphere) Pressure() AbsolutePressure {
	return AbsolutePressure{v: a.excess + seaLevelKPa}
}

// Gauge returns what a gauge in this atmosphere shows at the absolute pressure
// p. It is negative below the atmosphere.
func (a Atmosphere) Gauge(p AbsolutePressure) GaugePressure {
	return GaugePressure{v: bounded(p.v - seaLevelKPa - a.excess)}
}

// Absolute returns the absolute pressure where a gauge in this atmosphere shows
// g. The error is a [*RangeError] if that is below vacuum.
func (a Atmosphere) Absolute(g GaugePressure) (AbsolutePressure, error) {
	v := bounded(g.v + seaLevelKPa + a.excess)
	if v < 0 && v > -1e-12 { // vacuum, but for the rounding of the sums
		v = 0
	}
	if v < 0 {
		return AbsolutePressure{}, &RangeError{Func: "units.Atmosphere.Absolute", Quantity: "gauge pressure", Value: g.v, Unit: "kPa gauge",
			Min: -seaLevelKPa - a.excess, Max: most, Source: "vacuum is the lowest pressure"}
	}
	return AbsolutePressure{v: v}, nil
}

// String is the pressure: "93.9 kPa absolute".
func (a Atmosphere) String() string { return a.Pressure().String() }

// MarshalText is the text of [Atmosphere.String]; the error is always nil.
func (a Atmosphere) MarshalText() ([]byte, error) { return a.Pressure().MarshalText() }

// UnmarshalText reads an absolute pressure as [Parse] does, and takes it as
// [Barometer] does.
func (a *Atmosphere) UnmarshalText(text []byte) error {
	const fn = "units.Atmosphere.UnmarshalText"
	p, err := parse[absolutePressure, absolutePressure](fn, string(text), none)
	if err != nil {
		return err
	}
	air, err := barometer(fn, p)
	if err == nil {
		*a = air
	}
	return err
}
