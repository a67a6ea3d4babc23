package water

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// CO2Loss says what becomes of the CO2 that an acid sets free. The zero value is
// CO2Kept.
type CO2Loss struct {
	lost bool
	kPa  float64
}

// CO2Kept is a closed water: all CO2 stays dissolved.
var CO2Kept = CO2Loss{}

// CO2LostTo is a water stirred or boiled until its CO2 is in balance with a partial
// pressure, such as that of the air, [AirCO2].
func CO2LostTo(p units.AbsolutePressure) CO2Loss { return CO2Loss{true, p.In(units.Kilopascal)} }

// CO2LostToAir is a water stirred until its CO2 is that of open air at sea level.
func CO2LostToAir() CO2Loss { return CO2LostTo(AirCO2(units.Atmosphere{})) }

// acidDose is the unknown of [solution.atPH]: the moles a kilogram of an acid.
type acidDose struct {
	acid    Acid
	weak    int // index in weakAcids, -1 where the acid is none of them
	x       float64
	base    float64 // content of its ion before
	alk     float64 // alkalinity before
	inert   float64
	protons float64
}

func (s *solution) dose(a Acid) acidDose {
	f := &acidTable[a]
	d := acidDose{acid: a, weak: -1, alk: s.alk, inert: s.inertStrength, protons: float64(f.protons)}
	switch f.ion {
	case Phosphate:
		d.base = s.po4
	case Sulfate:
		d.base = s.so4
	default:
		for i := range weakAcids {
			if weakAcids[i].ion == f.ion {
				d.weak, d.base = i, s.acid[i]
			}
		}
	}
	return d
}

// set books a dose of x mol/kg.
func (d *acidDose) set(s *solution, x float64) {
	d.x = x
	switch acidTable[d.acid].ion {
	case Phosphate:
		s.po4 = d.base + x
	case Sulfate:
		s.so4 = d.base + x
	case Chloride:
		s.inertStrength = d.inert + x/2
	default:
		s.acid[d.weak] = d.base + x
		s.acids = s.acids || x > 0
	}
	s.alk = d.alk - x*d.protons
}

// adjust takes a step of Newton to the dose that gives the alkalinity of the state,
// and returns the relative change.
func (d *acidDose) adjust(s *solution, way int) float64 {
	alk, _ := s.alkalinity(way)
	x := max(0, min(beyond*mostAcid, d.x+(s.alk-alk)/d.slope(s)))
	move := math.Abs(x-d.x) / (x + math.Abs(d.alk) + s.c.h)
	d.set(s, x)
	return move
}

// slope returns by how much the alkalinity of the state runs away from the one that
// is left, for each mole of the acid.
func (d *acidDose) slope(s *solution) float64 {
	c := &s.c
	switch {
	case d.weak >= 0:
		mean, _ := s.protons(d.weak)
		return d.protons - mean
	case acidTable[d.acid].ion == Phosphate:
		sum := 1 + c.hp[0] + c.hp[1] + c.hp[2]
		return d.protons + (2+c.hp[0]-c.hp[2])/sum
	case acidTable[d.acid].ion == Sulfate:
		return d.protons - c.hso4/(1+c.hso4)
	}
	return d.protons
}

const (
	mostAcid    = 0.5 // mol/kg
	leastAcidPH = 2.0
)

// AcidDose is an amount of acid for a volume of water, with what it makes of it.
type AcidDose struct {
	Acid          Acid
	Amount        units.Amount             // pure acid for the volume
	Concentration units.MolarConcentration // pure acid a litre of the water
	Water         Profile                  // the water after it, pH known
	Cautions      []string                 // how to handle it
}

// AcidToPH returns the acid that brings a water of known pH to another one, lower or
// equal. The result is exact for the equilibrium; a mash or a must with its own
// buffers needs more.
//
// Errors are a [*units.RangeError]: a pH unknown, a target above what the water has
// (with the CO2 lost first, where it is lost) or below 2, and those of
// [Profile.Closed].
//
//   - Source: mass balances and electroneutrality, see [Profile.Closed].
//   - Uncertainty: 1 % of the dose against a general geochemistry program; more by
//     pipette and strength as sold.
func (p Profile) AcidToPH(volume units.Volume, a Acid, ph float64, co2 CO2Loss) (AcidDose, error) {
	const fn = "water.Profile.AcidToPH"
	litres := volume.In(units.Litre)
	if err := checkVolume(fn, litres); err != nil {
		return AcidDose{}, err
	}
	mmol, after, err := p.AcidPerLitre(a, ph, co2)
	if err != nil {
		return AcidDose{}, err
	}
	return AcidDose{
		Acid: a, Amount: units.Millimole.Of(checked.Number(mmol.In(units.MillimolePerLitre) * litres)),
		Concentration: mmol, Water: after, Cautions: AcidCautions(),
	}, nil
}

// AcidPerLitre is [Profile.AcidToPH] for a litre, without the cautions; it allocates
// nothing.
func (p Profile) AcidPerLitre(a Acid, ph float64, co2 CO2Loss) (units.MolarConcentration, Profile, error) {
	const fn = "water.Profile.AcidToPH"
	var none units.MolarConcentration
	if err := a.known(fn); err != nil {
		return none, Profile{}, err
	}
	if err := p.knownPH(fn); err != nil {
		return none, Profile{}, err
	}
	if err := p.ready(fn); err != nil {
		return none, Profile{}, err
	}
	if err := limit.Check(fn, "CO2 pressure", co2.kPa, "kPa", 0, mostGas, "Weiss 1974, second virial coefficient"); err != nil {
		return none, Profile{}, err
	}
	s := p.solution()
	most, way := p.ph+trifle, byCarbon
	if co2.lost {
		way = byGas
		s.fugacity = fugacity(co2.kPa, p.t)
		most = mostPH
	}
	if err := limit.Check(fn, "pH", ph, "", leastAcidPH, most, "below what the water has"); err != nil {
		return none, Profile{}, err
	}
	d := s.dose(a)
	d.set(&s, molal) // a start: 1 mmol/L
	s.constantsAt(p.t)
	s.begin(ph)
	if err := s.atPH(fn, way, &d); err != nil {
		return none, Profile{}, err
	}
	if err := limit.Check(fn, "acid", d.x, "mol/kg", 0, mostAcid, "a dose that the acid can bring about"); err != nil {
		return none, Profile{}, err
	}
	if d.x == 0 {
		if alk, _ := s.alkalinity(way); alk > s.alk+trifle {
			// The water is below that pH once its CO2 has left.
			e, err := p.rest(fn, co2)
			if err == nil && ph > e.PH()+lightly {
				err = limit.Check(fn, "pH", ph, "", leastAcidPH, e.PH(), "the water without acid, its CO2 lost")
			}
			if err != nil {
				return none, Profile{}, err
			}
		}
	}
	mmol := d.x / molal
	p.acidify(a, mmol)
	p.ph = ph
	p.carbon = s.co3 * s.carbonPerCO3() / molal
	return units.MillimolePerLitre.Of(checked.Number(mmol)), p, nil
}
