package water

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Profile is a water: its ions, alkalinity, temperature and, where known, pH. The
// zero value is pure water at 0 °C of unknown pH. Profiles compare with ==.
type Profile struct {
	mg      [ionCount]float64 // mg/L; the alkalinity is apart
	alk     float64           // mEq/L
	t       float64           // °C
	ph      float64           // 0: unknown
	ethanol float64           // % vol
	carbon  float64           // mmol/L of inorganic carbon, where the pH is known
}

const (
	mostIon        = 50000 // mg/L: above this it is a brine
	mostAlkalinity = 1000  // mEq/L
	negligible     = 1e-9  // in any unit here: far below what can be measured, far above rounding
	waterSource    = "what a water can hold, package water"
)

// cacO3PerEquivalent is the mass of CaCO3 that neutralises an equivalent of acid,
// half its molar mass, in g/Eq.
//
//   - Source: atomic weights 2021.
var cacO3PerEquivalent = chemistry.MustMass("CaCO3") / 2

// NewProfile returns the water of that temperature, alkalinity and ions; what is
// not given is zero. Its pH is unknown until [Profile.WithPH].
//
// Bicarbonate, carbonate and hydroxide are not given as ions but as alkalinity; a
// bicarbonate content is taken when the alkalinity is zero, as water reports print
// it. Phosphate and the organic anions count with the charge they have at the
// titration end point (see the package comment).
//
// Errors are a [*units.RangeError]: an ion above 50,000 mg/L, given twice or
// unknown; an alkalinity beyond ±1000 mEq/L; a temperature outside 0 to 100 °C.
func NewProfile(t units.Temperature, alkalinity units.CalciumCarbonate, ions ...Content) (Profile, error) {
	const fn = "water.NewProfile"
	var p Profile
	p.t = t.In(units.Celsius)
	p.alk = alkalinity.In(units.MilligramPerLitreCaCO3) / cacO3PerEquivalent
	if err := limit.Check(fn, "temperature", p.t, "°C", 0, 100, waterSource); err != nil {
		return Profile{}, err
	}
	if err := limit.Check(fn, "alkalinity", p.alk, "mEq/L", -mostAlkalinity, mostAlkalinity, waterSource); err != nil {
		return Profile{}, err
	}
	var seen [ionCount]bool
	for _, c := range ions {
		if err := c.Ion.known(fn); err != nil {
			return Profile{}, err
		}
		v := c.Concentration.In(units.MilligramPerLitre)
		most := float64(mostIon)
		if c.Ion == Carbonate || c.Ion == Hydroxide || seen[c.Ion] || c.Ion == Bicarbonate && p.alk != 0 {
			most = 0 // given twice, or as alkalinity
		}
		if err := limit.Check(fn, c.Ion.Name(), v, "mg/L", 0, most, waterSource+"; each ion once, carbonates as alkalinity"); err != nil {
			return Profile{}, err
		}
		seen[c.Ion] = true
		if c.Ion == Bicarbonate {
			p.alk = v / Bicarbonate.facts().mass
			continue
		}
		p.mg[c.Ion] = v
	}
	return p, nil
}

// Temperature returns the temperature of the water.
func (p Profile) Temperature() units.Temperature {
	return units.Celsius.Of(checked.Number(p.t))
}

// PH returns the pH and whether it is known.
func (p Profile) PH() (ph float64, known bool) { return p.ph, p.ph != 0 }

// Ion returns the content of an ion. For Bicarbonate it is the alkalinity as
// bicarbonate, as reports print it, and zero where the alkalinity is negative;
// Carbonate and Hydroxide are counted there and return zero.
func (p Profile) Ion(i Ion) units.MassConcentration {
	return units.MilligramPerLitre.Of(checked.Number(max(0, p.ion(i))))
}

// ion returns mg/L; the bicarbonate may be negative.
func (p *Profile) ion(i Ion) float64 {
	switch {
	case i < 0 || i >= ionCount:
		return 0
	case i == Bicarbonate:
		return p.alk * Bicarbonate.facts().mass
	}
	return p.mg[i]
}

// mmol returns the content of an ion in mmol/L.
func (p *Profile) mmol(i Ion) float64 { return p.mg[i] / ionTable[i].mass }

// Alkalinity returns the alkalinity, as CaCO3. It is negative in an acid water.
func (p Profile) Alkalinity() units.CalciumCarbonate {
	return units.MilligramPerLitreCaCO3.Of(checked.Number(p.alk * cacO3PerEquivalent))
}

// DissolvedSolids returns the sum of the ions, the alkalinity counted as
// bicarbonate: what the report's figures add up to, not the residue of drying.
func (p Profile) DissolvedSolids() units.MassConcentration {
	sum := max(0, p.ion(Bicarbonate))
	for _, v := range p.mg {
		sum += v
	}
	return units.MilligramPerLitre.Of(checked.Number(sum))
}

// AtTemperature returns the same water at another temperature, of unknown pH:
// the pH moves with temperature. The error is a [*units.RangeError] outside 0 to
// 100 °C.
func (p Profile) AtTemperature(t units.Temperature) (Profile, error) {
	v := t.In(units.Celsius)
	if err := limit.Check("water.Profile.AtTemperature", "temperature", v, "°C", 0, 100, waterSource); err != nil {
		return Profile{}, err
	}
	p.t, p.ph, p.carbon = v, 0, 0
	return p, nil
}
