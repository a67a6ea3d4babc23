package water

import (
	"math"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Conductivity of the four waters at 25 and 20 °C by PHREEQC 3, phreeqc.dat.
func TestConductivity(t *testing.T) {
	for _, r := range speciationRows {
		e := reports[r.w].equilibrium(t, r.t)
		if r.t == 25 {
			near(t, reports[r.w].name, e.Conductivity().In(units.MicrosiemensPerCentimetre), r.conductivity, 0.06*r.conductivity)
		} else {
			near(t, reports[r.w].name, e.ConductivityAt20().In(units.MicrosiemensPerCentimetre), r.conductivity, 0.05*r.conductivity)
		}
	}
	// Pure water under 1 atm of CO2 at 25 °C: 48.3 µS/cm by the same program, nearly all
	// of it H+.
	e, err := Profile{t: 25}.Under(atm(1))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "soda water", e.Conductivity().In(units.MicrosiemensPerCentimetre), 48.3, 0.02*48.3)
	// Slaked lime at 25 °C: 7905 µS/cm by the same program.
	d, err := Profile{t: 25}.AtRestWith(Portlandite, CO2LostTo(units.AbsolutePressure{}))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "lime water", d.Equilibrium.Conductivity().In(units.MicrosiemensPerCentimetre), 7905, 0.06*7905)
}

// Standard solutions at 25 °C: 0.01 mol/L KCl, 1413 µS/cm (Standard Methods 2510,
// recalled from memory); and the limit of each salt, 1000·λ a mmol/L.
func TestConductivityOfSalts(t *testing.T) {
	kcl, err := Profile{t: 25}.Add(litres(1), material.PotassiumChloride().Dose(grams(0.74548)))
	if err != nil {
		t.Fatal(err)
	}
	e, err := kcl.Closed(units.MolarConcentration{})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "KCl", e.Conductivity().In(units.MicrosiemensPerCentimetre), 1413, 0.02*1413)
	for ion, lambda := range map[Ion]float64{Sodium: 50.08, Magnesium: 53.0, Zinc: 52.8, Iron: 54, Manganese: 53.5, Copper: 53.6, Ammonium: 73.5, Calcium: 59.47} {
		z := float64(ion.Charge())
		p, err := NewProfile(celsius(25), units.CalciumCarbonate{}, ion.At(mgL(0.01/z*ion.MolarMass().In(units.GramPerMole))), Chloride.At(mgL(0.01*35.45)))
		if err != nil {
			t.Fatal(err)
		}
		e, err := p.Closed(units.MolarConcentration{})
		if err != nil {
			t.Fatal(err)
		}
		water := 0.0548 // H+ and OH- of pure water at 25 °C, µS/cm
		near(t, ion.Name(), e.Conductivity().In(units.MicrosiemensPerCentimetre)-water, 0.996*0.01*(lambda+76.31), 0.00005*(lambda+76.31))
	}
	for ion, lambda := range map[Ion]float64{Nitrate: 71.42, Nitrite: 71.8, Fluoride: 55.4, Sulfate: 80.0, Lactate: 38.8, Acetate: 40.9,
		Citrate: 70.2, Malate: 58.8, Tartrate: 59.6, Succinate: 58.8, Sorbate: 35} {
		z := -float64(ion.Charge())
		p, err := NewProfile(celsius(25), caco3(5.0043), ion.At(mgL(0.1/z*ion.MolarMass().In(units.GramPerMole))), Sodium.At(mgL(0.2*22.990)))
		if err != nil {
			t.Fatal(err)
		}
		e, err := p.Closed(mmolL(0.1))
		if err != nil {
			t.Fatal(err)
		}
		sum := 0.2*50.08 + 0.1*44.5 + 0.1*lambda
		tol := 0.004 // a little OH- makes up for the attenuation: of the ions of one charge; weak acids and higher charges are less sure
		if z > 1 {
			tol = 0.04
		}
		near(t, ion.Name(), e.Conductivity().In(units.MicrosiemensPerCentimetre), sum, tol*sum)
	}
}

// The formula written out, with the limiting conductivities typed a second time (CRC
// Handbook, recalled from memory), for a water that holds every ion.
func TestConductivityFormula(t *testing.T) {
	p := Profile{t: 25, alk: 3}
	for _, i := range Ions() {
		if i != Bicarbonate && i != Carbonate && i != Hydroxide {
			p.mg[i] = 1.5 * i.MolarMass().In(units.GramPerMole)
		}
	}
	e, err := p.Under(atm(0.0004))
	if err != nil {
		t.Fatal(err)
	}
	s := &e.s
	sum := 0.0
	add := func(z, lambda, molality float64) {
		sum += z * lambda * molality * math.Pow(s.g.of[gammaOf[lactateFree]], 0.6*z)
	}
	of := func(sp Species) float64 { return s.species(sp) }
	add(1, 349.65, of(hydrogen))
	add(1, 198, of(hydroxideFree))
	add(1, 50.08, of(sodiumFree))
	add(1, 73.48, of(potassiumFree))
	add(1, 73.5, of(ammoniumFree))
	add(1, 44.5, of(BicarbonateFree))
	add(2, 69.3, of(CarbonateFree))
	add(2, 59.47, of(calciumFree))
	add(2, 53.0, of(magnesiumFree))
	add(2, 80.0, of(sulfateFree))
	add(1, 33, of(dihydrogenPhosphate))
	add(2, 57, of(hydrogenPhosphate))
	for _, lambda := range []float64{54, 53.5, 52.8, 53.6} { // Fe, Mn, Zn, Cu
		add(2, lambda, 1.5*molal)
	}
	for _, lambda := range []float64{76.31, 71.42, 71.8, 55.4} { // Cl-, NO3-, NO2-, F-
		add(1, lambda, 1.5*molal)
	}
	acids := map[Ion]float64{Lactate: 38.8, Acetate: 40.9, Citrate: 70.2, Malate: 58.8, Tartrate: 59.6, Succinate: 58.8, Sulfite: 58, Sorbate: 35}
	for ion, forms := range map[Ion][]Species{Lactate: {lactateFree, lacticH}, Acetate: {acetateFree, aceticH},
		Citrate: {citrateFree, citricH, citricH2, citricH3},
		Malate:  {malateFree, malicH, malicH2}, Tartrate: {tartrateFree, tartaricH, tartaricH2}, Succinate: {succinateFree, succinicH, succinicH2},
		Sulfite: {sulfiteFree, bisulfite, sulfurousH2}, Sorbate: {sorbateFree, sorbicH}} {
		n, charge := 0.0, 0.0
		for _, sp := range forms {
			n += of(sp)
			charge -= float64(formulaCharge(t, sp.String())) * of(sp)
		}
		add(charge/n, acids[ion], n)
	}
	got := e.Conductivity().In(units.MicrosiemensPerCentimetre)
	near(t, "conductivity", got, 1000*sum*0.998203, 1e-9*got)
	near(t, "at 20 °C", e.ConductivityAt20().In(units.MicrosiemensPerCentimetre), got/1.116, 1e-9*got)
}
