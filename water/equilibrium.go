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

// Equilibrium is a water with its pH and all its species at equilibrium.
type Equilibrium struct {
	water Profile
	s     solution
}

// fillSolution writes the totals of the profile.
func (p *Profile) fillSolution(s *solution) {
	s.alk, s.ethanol = p.alk*molal, p.ethanol
	s.unreported = -s.alk
	for c := partCa; c < partCount; c++ {
		f := &plan.free[c]
		s.total[c] = p.mg[f.ion] * f.perMg
		s.unreported += s.total[c] * f.inProfile
	}
	s.total[partCO3] = p.carbon * molal
	for i := range inert {
		f := &inert[i]
		n := p.mg[f.ion] * f.perMg
		s.inertCharge += n * f.charge
		s.inertStrength += n * f.charge * f.charge / 2
	}
	s.unreported += s.inertCharge
}

// inert are the ions that react with nothing.
var inert = inertOf(Iron, Manganese, Zinc, Copper, Chloride, Nitrate, Nitrite, Fluoride)

type inertIon struct {
	ion           Ion
	perMg, charge float64
}

func inertOf(ions ...Ion) (all [8]inertIon) {
	for i, ion := range ions {
		all[i] = inertIon{ion, ionTable[ion].perMg, float64(ionTable[ion].charge)}
	}
	return all
}

// knownPH refuses a water whose pH is not known.
func (p *Profile) knownPH(fn string) error {
	if p.ph != 0 {
		return nil
	}
	return &units.StateError{Func: fn, What: "water", Why: "has no known pH: give it one with WithPH, InAir, Under or Closed"}
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
	s.total[partCO3] = s.free[partCO3] * s.held(partCO3)
	if err := limit.Check(fn, "inorganic carbon at this pH and alkalinity", s.total[partCO3]/molal, "mmol/L", 0, mostCarbon, waterSource); err != nil {
		return Equilibrium{}, err
	}
	alk := s.alkalinity()
	if off := math.Abs(alk - s.alk); off > 10*closely*(math.Abs(alk)+s.hydrogen+s.oh) {
		// No content of CO2 makes this alkalinity at this pH.
		err := limit.Check(fn, "alkalinity at this pH", p.alk, "mEq/L", alk/molal, mostAlkalinity, "the least alkalinity that the pH and the other ions leave")
		if err != nil {
			return Equilibrium{}, err
		}
	}
	err = e.seal(nil)
	return e, err
}

// seal writes the pH and the carbon into the profile, or clears the state after an error.
func (e *Equilibrium) seal(err error) error {
	if err != nil {
		*e = Equilibrium{}
		return err
	}
	e.water.ph = -math.Log10(e.s.h)
	e.water.carbon = e.s.total[partCO3] / molal
	return nil
}

// closedPH finds the pH of the closed water again where it was known.
func (p Profile) closedPH(fn string) (Profile, error) {
	if p.ph == 0 {
		p.carbon = 0
		return p, nil
	}
	var e Equilibrium
	err := e.closed(fn, &p)
	return e.water, err
}

// closed finds the equilibrium of a water with its inorganic carbon; after an error e
// holds none.
func (e *Equilibrium) closed(fn string, p *Profile) error {
	err := p.ready(fn)
	if err == nil {
		e.follow(p, p.ph)
		err = e.s.findPH(fn, byCarbon)
	}
	return e.seal(err)
}

// Closed returns the equilibrium of the water without air: its alkalinity and the
// inorganic carbon (CO2, HCO3- and CO3-2 together) set the pH.
//
// Errors of this and the other equilibria are a [*units.RangeError]: outside 0 to
// 90 °C, above an ionic strength of 0.5 mol/kg, or where the pH would leave 0 to 14.
//
//   - Source: mass balances and electroneutrality; constants as
//     [Species.Describe] prints them.
//   - Uncertainty: 0.02 in pH against a general geochemistry program, most of it for what
//     CaHCO3+ is taken to bind. In waters of sodium and alkalinity it is more when
//     warm, 0.15 at 50 °C and 0.4 at 90 °C in 20 mEq/L of them: of NaCO3- compilations agree at 25 °C alone (log K 1.27) and not on the sign
//     of its enthalpy, +8.91 kcal/mol in wateq4f.dat (taken) and -20.35 kJ/mol in minteq.v4.dat.
func (p Profile) Closed(carbon units.MolarConcentration) (Equilibrium, error) {
	var e Equilibrium
	if err := p.enclose(closedName, carbon); err != nil {
		return e, err
	}
	err := e.closed(closedName, &p)
	return e, err
}

const closedName, underName = "water.Profile.Closed", "water.Profile.Under"

// enclose sets the inorganic carbon of a water.
func (p *Profile) enclose(fn string, carbon units.MolarConcentration) error {
	p.carbon = carbon.In(units.MillimolePerLitre)
	return limit.Check(fn, "inorganic carbon", p.carbon, "mmol/L", 0, mostCarbon, waterSource)
}

// Equilibrium returns the equilibrium of a water of known pH; where it is not known the
// error is a [*units.StateError].
func (p Profile) Equilibrium() (Equilibrium, error) {
	var e Equilibrium
	const fn = "water.Profile.Equilibrium"
	if err := p.knownPH(fn); err != nil {
		return e, err
	}
	err := e.closed(fn, &p)
	return e, err
}

// Under returns the equilibrium of the water under CO2 of that partial pressure,
// given time enough. Errors are those of [Profile.Closed], and a pressure above
// 1000 kPa.
//
//   - Source: solubility, Plummer and Busenberg (1982); fugacity from the second
//     virial coefficient, R. F. Weiss, Mar. Chem. 2 (1974) 203, eq. 6.
func (p Profile) Under(co2 units.AbsolutePressure) (Equilibrium, error) {
	var e Equilibrium
	err := e.under(underName, &p, co2)
	return e, err
}

// under finds the equilibrium of a water under CO2; after an error e holds none.
func (e *Equilibrium) under(fn string, p *Profile, co2 units.AbsolutePressure) error {
	err := checkGas(fn, co2)
	if err == nil {
		err = p.ready(fn)
	}
	if err == nil {
		e.follow(p, p.ph)
		e.s.fugacity = fugacity(co2.In(units.Kilopascal), p.t)
		err = e.s.findPH(fn, byGas)
		e.s.total[partCO3] = e.s.free[partCO3] * e.s.held(partCO3)
	}
	return e.seal(err)
}

func checkGas(fn string, co2 units.AbsolutePressure) error {
	return limit.Check(fn, "CO2 pressure", co2.In(units.Kilopascal), "kPa", 0, mostGas, "Weiss 1974, second virial coefficient")
}

// InAir returns the equilibrium of the water with the CO2 of open air at sea level: an
// aerated water after hours to days. At another height it is [Profile.Under] [AirCO2].
func (p Profile) InAir() (Equilibrium, error) {
	var e Equilibrium
	err := e.under("water.Profile.InAir", &p, AirCO2(units.Atmosphere{}))
	return e, err
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

// IonicStrength returns half the sum of c·z², c that of [Equilibrium.Of].
func (e Equilibrium) IonicStrength() units.MolarConcentration {
	return units.MillimolePerLitre.Of(checked.Number(e.s.strength / molal))
}

// InorganicCarbon returns CO2, HCO3-, CO3-2 and their pairs together.
func (e Equilibrium) InorganicCarbon() units.MolarConcentration {
	return units.MillimolePerLitre.Of(checked.Number(e.s.total[partCO3] / molal))
}

// CO2Pressure returns the pressure of CO2 that the water would hold in balance.
func (e Equilibrium) CO2Pressure() units.AbsolutePressure {
	s := &e.s
	if !s.served() {
		return units.AbsolutePressure{} // the zero value, which is no water
	}
	f := s.active(CarbonDioxide) / s.henry * kPaPerAtm // kPa
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
	if !e.s.served() {
		return units.EquivalentConcentration{} // the zero value, which is no water
	}
	var t sums
	e.s.sums(byCarbon, false, nil, &t)
	return units.MilliequivalentPerLitre.Of(checked.Number(math.Ln10 * t.capacity / molal))
}
