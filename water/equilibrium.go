package water

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// kilogramsPerLitre is the water in a litre at 20 °C: L. B. Bettin and F. Spieweck,
// PTB-Mitteilungen 100 (1990) 195, 998.203 kg/m³. Dissolved salts of a drinking
// water move it by less than 0.1 %.
const kilogramsPerLitre = 0.998203

// molal is mol/kg of water for a mmol/L.
const molal = 1e-3 / kilogramsPerLitre

// Equilibrium is a water with its pH and all its species at rest.
type Equilibrium struct {
	water Profile
	s     solution
}

// solution writes the totals of the profile.
func (p *Profile) solution() (s solution) {
	p.fillSolution(&s)
	return s
}

func (p *Profile) fillSolution(s *solution) {
	get := func(i Ion) float64 { return p.mg[i] * ionTable[i].perMg }
	s.ca, s.mg, s.na, s.kk = get(Calcium), get(Magnesium), get(Sodium), get(Potassium)
	s.nh4, s.so4, s.po4 = get(Ammonium), get(Sulfate), get(Phosphate)
	for i := range weakAcids {
		s.acid[i] = get(weakAcids[i].ion)
		s.acids = s.acids || s.acid[i] > 0
	}
	for _, i := range [...]Ion{Iron, Manganese, Zinc, Copper, Chloride, Nitrate, Nitrite, Fluoride} {
		if p.mg[i] > 0 {
			z := float64(ionTable[i].charge)
			n := get(i)
			s.inertCharge += z * n
			s.inertStrength += n * z * z / 2
		}
	}
	s.alk, s.carbon = p.alk*molal, p.carbon*molal
	cations := s.inertCharge + 2*(s.ca+s.mg) + s.na + s.kk + s.nh4
	anions := 2*s.so4 + s.po4 + s.alk
	for i := range weakAcids {
		anions += s.acid[i] * float64(weakAcids[i].charge-weakAcids[i].zero)
	}
	s.unreported = cations - anions
}

// knownPH refuses a water whose pH is not known.
func (p *Profile) knownPH(fn string) error {
	if p.ph != 0 {
		return nil
	}
	return limit.Check(fn, "pH of the water", math.NaN(), "", leastPH, mostPH, "a water of known pH: WithPH, InAir, Under or Closed")
}

func (p *Profile) ready(fn string) error {
	return limit.Check(fn, "temperature", p.t, "°C", 0, hottest, "Plummer and Busenberg 1982")
}

// start is where the search for the pH begins.
func (p *Profile) start() float64 {
	if ph, known := p.PH(); known {
		return ph
	}
	if p.alk < 0 { // more acid than carbonate: a ferment
		return 4
	}
	return 7.5
}

// WithPH returns the water with the pH that a meter showed at its temperature. It
// fixes the inorganic carbon: alkalinity and pH leave but one content of CO2.
//
// The error is a [*units.RangeError] for a pH outside 2 to 12, or where the
// alkalinity cannot be at that pH (a pH of 11 needs more of it than a soft water
// has; below about 4.5 there is none).
func (p Profile) WithPH(ph float64) (Profile, error) {
	const fn = "water.Profile.WithPH"
	if err := limit.Check(fn, "pH", ph, "", 2, 12, "drinking water and its treatment"); err != nil {
		return Profile{}, err
	}
	e, err := p.measured(fn, ph)
	return e.water, err
}

// measured solves the balances at a measured pH, for the inorganic carbon.
func (p *Profile) measured(fn string, ph float64) (e Equilibrium, err error) {
	if err := p.ready(fn); err != nil {
		return Equilibrium{}, err
	}
	e.water = *p
	s := &e.s
	p.fillSolution(s)
	s.constantsAt(p.t)
	s.begin(ph)
	if err := s.atPH(fn, byAlk, nil); err != nil {
		return Equilibrium{}, err
	}
	s.carbon = s.co3 * s.carbonPerCO3()
	if err := limit.Check(fn, "inorganic carbon at this pH and alkalinity", s.carbon/molal, "mmol/L", 0, mostCarbon, waterSource); err != nil {
		return Equilibrium{}, err
	}
	alk, _ := s.alkalinity(byAlk)
	if off := math.Abs(alk - s.alk); off > closely*(math.Abs(alk)+s.c.h+s.c.oh) {
		// No content of CO2 makes this alkalinity at this pH.
		err := limit.Check(fn, "alkalinity at this pH", p.alk, "mEq/L", alk/molal, mostAlkalinity, "the least alkalinity that the pH and the other ions leave")
		if err != nil {
			return Equilibrium{}, err
		}
	}
	e.seal()
	return e, nil
}

// seal writes the pH and the carbon into the profile.
func (e *Equilibrium) seal() {
	e.water.ph = -math.Log10(e.s.h)
	e.water.carbon = e.s.carbon / molal
}

// closedPH finds the pH of the closed water anew where it was known.
func (p Profile) closedPH(fn string) (Profile, error) {
	if p.ph == 0 {
		p.carbon = 0
		return p, nil
	}
	e, err := p.closed(fn)
	return e.water, err
}

func (p *Profile) closed(fn string) (e Equilibrium, err error) {
	if err := e.closed(fn, p); err != nil {
		return Equilibrium{}, err
	}
	return e, nil
}

// closed finds the equilibrium of a water with its inorganic carbon.
func (e *Equilibrium) closed(fn string, p *Profile) error {
	if err := p.ready(fn); err != nil {
		return err
	}
	e.follow(p, p.ph)
	if err := e.s.findPH(fn, byCarbon); err != nil {
		return err
	}
	e.seal()
	return nil
}

// Closed returns the equilibrium of the water without air: its alkalinity and the
// inorganic carbon (CO2, HCO3- and CO3-2 together) set the pH.
//
// Errors of this and the other equilibria are a [*units.RangeError]: outside 0 to
// 90 °C, above an ionic strength of 0.5 mol/kg, or where the pH would leave 0 to 14.
//
//   - Source: mass balances and electroneutrality; constants as
//     carbonate_constants.go and weak_acid_constants.go give them.
//   - Uncertainty: 0.02 in pH against a general geochemistry program.
func (p Profile) Closed(carbon units.MolarConcentration) (Equilibrium, error) {
	if err := p.enclose(closedName, carbon); err != nil {
		return Equilibrium{}, err
	}
	return p.closed(closedName)
}

const closedName, underName = "water.Profile.Closed", "water.Profile.Under"

// enclose sets the inorganic carbon of a water.
func (p *Profile) enclose(fn string, carbon units.MolarConcentration) error {
	p.carbon = carbon.In(units.MillimolePerLitre)
	return limit.Check(fn, "inorganic carbon", p.carbon, "mmol/L", 0, mostCarbon, waterSource)
}

// Equilibrium returns the equilibrium of a water of known pH. The error is a
// [*units.RangeError] too where the pH is not known.
func (p Profile) Equilibrium() (Equilibrium, error) {
	const fn = "water.Profile.Equilibrium"
	if err := p.knownPH(fn); err != nil {
		return Equilibrium{}, err
	}
	return p.closed(fn)
}

// Under returns the equilibrium of the water under CO2 of that partial pressure,
// given time enough. Errors are those of [Profile.Closed], and a pressure above
// 1000 kPa.
//
//   - Source: solubility, Plummer and Busenberg (1982); fugacity from the second
//     virial coefficient, R. F. Weiss, Mar. Chem. 2 (1974) 203, eq. 6.
func (p Profile) Under(co2 units.AbsolutePressure) (Equilibrium, error) {
	return p.under(underName, co2)
}

func (p *Profile) under(fn string, co2 units.AbsolutePressure) (e Equilibrium, err error) {
	if err := e.under(fn, p, co2); err != nil {
		return Equilibrium{}, err
	}
	return e, nil
}

// under finds the equilibrium of a water under CO2.
func (e *Equilibrium) under(fn string, p *Profile, co2 units.AbsolutePressure) error {
	kPa := co2.In(units.Kilopascal)
	if err := limit.Check(fn, "CO2 pressure", kPa, "kPa", 0, mostGas, "Weiss 1974, second virial coefficient"); err != nil {
		return err
	}
	if err := p.ready(fn); err != nil {
		return err
	}
	s := &e.s
	e.follow(p, p.ph)
	s.fugacity = fugacity(kPa, p.t)
	if err := s.findPH(fn, byGas); err != nil {
		return err
	}
	s.carbon = s.co3 * s.carbonPerCO3()
	e.seal()
	return nil
}

// InAir returns the equilibrium of the water with the CO2 of open air at sea level: an
// aerated water after hours to days. At another height it is [Profile.Under] [AirCO2].
func (p Profile) InAir() (Equilibrium, error) {
	return p.under("water.Profile.InAir", AirCO2(units.Atmosphere{}))
}

const mostCarbon = 1000 // mmol/L

// fugacity returns the fugacity of CO2 in atm at a pressure in kPa.
func fugacity(kPa, celsius float64) float64 {
	return kPa / kPaPerAtm * fugacityCoefficient(kPa, celsius)
}

// fugacityCoefficient is the fugacity of CO2 over its pressure.
//
//   - Source: R. F. Weiss, Mar. Chem. 2 (1974) 203, eq. 6 (virial coefficient in
//     cm³/mol) and ln(f/p) = B p/(RT).
func fugacityCoefficient(kPa, celsius float64) float64 {
	t := celsius + kelvin0
	b := -1636.75 + t*(12.0408+t*(-0.0327957+t*3.16528e-5)) // eq. 6
	return numeric.Exp(b * kPa / (1000 * gasConstant * t))
}

const (
	kPaPerAtm = 101.325
	mostGas   = 1000 // kPa
)

// Water returns the profile of the water, its pH and inorganic carbon known.
func (e Equilibrium) Water() Profile { return e.water }

// PH returns -log10 of the activity of H+, what a pH meter shows.
func (e Equilibrium) PH() float64 { return e.water.ph }

// IonicStrength returns half the sum of m·z², in mol/kg of water.
func (e Equilibrium) IonicStrength() float64 { return e.s.strength }

// InorganicCarbon returns CO2, HCO3-, CO3-2 and their pairs together.
func (e Equilibrium) InorganicCarbon() units.MolarConcentration {
	return units.MillimolePerLitre.Of(checked.Number(e.s.carbon / molal))
}

// CO2Pressure returns the pressure of CO2 that the water would hold in balance.
func (e Equilibrium) CO2Pressure() units.AbsolutePressure {
	s := &e.s
	f := s.co3 * s.c.co2 * s.g.neutral / s.k.henry * kPaPerAtm // kPa
	p := f
	for range mostRounds { // f = p·φ(p), φ within 1 % of 1 for each atm
		last := p
		p = f / fugacityCoefficient(min(p, mostGas), e.water.t) // beyond it the virial series is not used
		if p == last {
			break
		}
	}
	return units.Kilopascal.Of(checked.Number(p))
}

// Unreported returns the charge that the ions of the report leave over, positive
// where anions are missing. The equilibrium keeps it as ions that react with
// nothing, so that the water as a whole is neutral.
func (e Equilibrium) Unreported() units.EquivalentConcentration {
	return units.MilliequivalentPerLitre.Of(checked.Number(e.s.unreported / molal))
}

// BufferCapacity returns the strong base that raises the pH by one unit, at first,
// in mEq/L: of the closed water.
//
//   - Source: β = dB/dpH, D. D. Van Slyke, J. Biol. Chem. 52 (1922) 525; here at
//     fixed metal ions and activity coefficients.
func (e Equilibrium) BufferCapacity() units.EquivalentConcentration {
	_, slope := e.s.alkalinity(byCarbon)
	return units.MilliequivalentPerLitre.Of(checked.Number(math.Ln10 * slope / molal))
}
