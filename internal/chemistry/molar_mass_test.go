package chemistry

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/zymase/units"
)

// Molar masses from the abridged atomic weights 2021 (Pure Appl. Chem. 94 (2022)
// 573), added up by another program, to 0.001 g/mol.
func TestMolarMass(t *testing.T) {
	rows := []struct {
		formula string
		mass    float64
	}{
		{"CaSO4.2H2O", 172.164}, {"CaSO4", 136.134}, {"CaCl2", 110.978}, {"CaCl2·2H2O", 147.008},
		{"MgSO4.7H2O", 246.466}, {"MgCl2.6H2O", 203.295}, {"NaCl", 58.440}, {"NaHCO3", 84.006},
		{"KHCO3", 100.114}, {"KCl", 74.548}, {"K2CO3", 138.204}, {"Na2CO3", 105.988}, {"CaCO3", 100.086},
		{"Ca(OH)2", 74.092}, {"Na2SO4", 142.036}, {"KH2PO4", 136.084}, {"(NH4)2HPO4", 132.056},
		{"NH4H2PO4", 115.025}, {"(NH4)2SO4", 132.134}, {"NH4Cl", 53.489}, {"CO(NH2)2", 60.056},
		{"K2S2O5", 222.311}, {"Na2S2O5", 190.095}, {"KC6H7O2", 150.218}, {"C6H8O2", 112.128},
		{"ZnSO4.7H2O", 287.541}, {"ZnSO4.H2O", 179.451}, {"C6H8O7", 192.123}, {"C6H8O7.H2O", 210.138},
		{"C4H6O6", 150.086}, {"C4H6O5", 134.087}, {"C3H6O3", 90.078}, {"C2H4O2", 60.052}, {"H3PO4", 97.994},
		{"H2SO4", 98.072}, {"HCl", 36.458}, {"SO2", 64.058}, {"CO2", 44.009}, {"C12H18Cl2N4OS", 337.263},
		{"C6H12O6", 180.156}, {"C12H22O11", 342.297}, {"C12H24O12", 360.312}, {"C2H6O", 46.069}, {"H2O", 18.015},
	}
	for _, r := range rows {
		got, err := MolarMass(r.formula)
		if err != nil || math.Abs(got-r.mass) > 0.00051 {
			t.Errorf("%s: %.4f (%v), want %.3f", r.formula, got, err, r.mass)
		}
	}
}

// The weights themselves (CIAAW 2021, abridged), for those no compound above holds.
func TestAtomicWeights(t *testing.T) {
	for formula, mass := range map[string]float64{"F": 18.998, "Mn": 54.938, "Fe": 55.845, "Cu": 63.546} {
		if got, err := MolarMass(formula); err != nil || math.Abs(got-mass) > 1e-9 {
			t.Errorf("%s: %v, %v", formula, got, err)
		}
	}
	// Ten and more of an element.
	if got, _ := MolarMass("C12"); math.Abs(got-12*12.011) > 1e-9 {
		t.Errorf("C12: %v", got)
	}
}

func TestMolarMassRefuses(t *testing.T) {
	long := strings.Repeat("H", 65)
	for _, text := range []string{"", "Xx", "Ca(OH", "OH)", "()", ".", "2", "c", "Ca ", "Cäo", long} {
		_, err := MolarMass(text)
		var pe *units.ParseError
		if !errors.As(err, &pe) || pe.Want != "chemical formula" || len(pe.Input) > 64 {
			t.Errorf("%q: %v", text, err)
		}
	}
	if got, err := MolarMass(strings.Repeat("H", 64)); err != nil || math.Abs(got-64*1.008) > 1e-9 {
		t.Errorf("64 bytes: %v, %v", got, err)
	}
	if got, err := MolarMass("H9999"); err != nil || math.Abs(got-9999*1.008) > 1e-6 {
		t.Errorf("four digits: %v, %v", got, err)
	}
	for _, nought := range []string{"0C0000", "CO0", "0H2O", "(OH)0"} {
		if m, err := MolarMass(nought); err == nil || m != 0 {
			t.Errorf("%s: %v, %v", nought, m, err)
		}
	}
	if _, err := MolarMass("H10000"); err == nil {
		t.Error("five digits taken")
	}
}

func FuzzMolarMass(f *testing.F) {
	for _, s := range []string{"CaSO4.2H2O", "(NH4)2HPO4", "Ca(OH", "·", "9999"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		m, err := MolarMass(text)
		if err == nil && !(m > 0 && m < 1e30) || err != nil && m != 0 {
			t.Errorf("%q: %v, %v", text, m, err)
		}
	})
}
