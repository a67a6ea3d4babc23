package water

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// CO2Loss says what becomes of the CO2 that an acid sets free. The zero value is a closed
// water: all CO2 stays dissolved.
type CO2Loss struct {
	lost bool
	kPa  float64
}

// CO2LostTo is a water stirred or boiled until its CO2 is in balance with a partial
// pressure, such as that of the air, [AirCO2].
func CO2LostTo(p units.AbsolutePressure) CO2Loss { return CO2Loss{true, p.In(units.Kilopascal)} }

// acidDose is the unknown of [solution.atPH]: the moles a kilogram of an acid.
type acidDose struct {
	anion   component // nothing where it reacts with nothing
	x       float64
	base    float64 // content of its ion before
	alk     float64 // alkalinity before
	inert   float64
	protons float64
}

func (s *solution) dose(a Acid) acidDose {
	f := &acidTable[a]
	d := acidDose{alk: s.alk, inert: s.inertStrength, protons: float64(f.protons)}
	for c := partCO3; c < partCount; c++ {
		if partTable[c].ion == f.ion {
			d.anion, d.base = c, s.total[c]
		}
	}
	return d
}

// set books a dose of x mol/kg.
func (d *acidDose) set(s *solution, x float64) {
	d.x = x
	if d.anion != nothing {
		s.total[d.anion] = d.base + x
	} else {
		s.inertStrength = d.inert + x/2
	}
	s.alk = d.alk - x*d.protons
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
	Cautions      caution.List             // how to handle it
}

// AcidToPH returns the acid that brings a water of known pH to another one, lower or
// equal. The result is exact for the equilibrium; a mash or a must with its own
// buffers needs more.
//
// Errors are a [*units.StateError] for a water of unknown pH, a [*units.RangeError] for a target above what the water has
// (with the CO2 lost first, where it is lost) or below 2, and those of
// [Profile.Closed].
//
//   - Source: mass balances and electroneutrality, see [Profile.Closed].
//   - Uncertainty: 0.02 in the pH that it ends at. Of the dose that is 1.3 % from pH 6 to
//     5.2, against a general geochemistry program; where the pH hardly needs acid, close
//     to the pH it starts from or where the alkalinity is used up, it is 0.02 times the
//     buffer capacity there, [Equilibrium.BufferCapacity], and can be more than the dose.
//     Malate and the pairs of magnesium with lactate have no constants here: beside 100
//     mg/L of magnesium more acid may be counted than it takes. Pipette and strength as
//     sold come on top.
func (p Profile) AcidToPH(a Acid, ph float64, volume units.Volume, co2 CO2Loss) (AcidDose, error) {
	const fn = "water.Profile.AcidToPH"
	litres := volume.In(units.Litre)
	if err := checkVolume(fn, litres); err != nil {
		return AcidDose{}, err
	}
	mmol, after, err := p.acidPerLitre(fn, a, ph, co2)
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
	return p.acidPerLitre("water.Profile.AcidPerLitre", a, ph, co2)
}

func (p Profile) acidPerLitre(fn string, a Acid, ph float64, co2 CO2Loss) (units.MolarConcentration, Profile, error) {
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
	var s solution
	p.fillSolution(&s)
	most, way := p.ph+negligible, byCarbon
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
		if s.alkalinity() > s.alk+negligible {
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
	p.carbon = s.free[partCO3] * s.held(partCO3) / molal
	return units.MillimolePerLitre.Of(checked.Number(mmol)), p, nil
}
