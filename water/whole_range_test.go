package water

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// anyInRange draws a water from the whole of the declared range: each ion up to its
// limit, small contents as often as large ones, and some at the limit itself.
func anyInRange(t *rapid.T) Profile {
	p := Profile{t: rapid.Float64Range(0, 90).Draw(t, "°C")}
	powers := rapid.Map(rapid.Float64Range(-3, math.Log10(mostIon)), func(x float64) float64 { return math.Pow(10, x) })
	content := rapid.OneOf(rapid.Just(0.0), rapid.Just(0.0), powers)
	for i := range ionCount {
		if !isAlkalinity(i) {
			p.mg[i] = content.Draw(t, i.Name())
		}
	}
	if i := rapid.SampledFrom(Ions()).Draw(t, "at its limit, or none"); !isAlkalinity(i) && rapid.Bool().Draw(t, "is") {
		p.mg[i] = mostIon
	}
	p.alk = rapid.OneOf(rapid.Float64Range(-mostAlkalinity, mostAlkalinity), rapid.Float64Range(-20, 20)).Draw(t, "mEq/L")
	return p
}

// state brings the water to rest in one of the ways there are.
func stateOf(t *rapid.T, p Profile) (e Equilibrium, err error) {
	switch rapid.IntRange(0, 3).Draw(t, "closed, in air, under CO2, at a pH") {
	case 0:
		c, _ := units.MillimolePerLitre.Try(rapid.Float64Range(0, mostCarbon).Draw(t, "mmol/L of carbon"))
		return p.Closed(c)
	case 1:
		return p.InAir()
	case 2:
		kPa, _ := units.Kilopascal.Try(rapid.Float64Range(0, mostGas).Draw(t, "kPa"))
		return p.Under(kPa)
	}
	return p.measured("test", rapid.Float64Range(2, 12).Draw(t, "pH"))
}

// No water of the declared range is refused because the search for its state does
// not settle: what is refused names what the model or the water cannot hold.
func TestWholeRange(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyInRange(t)
		e, err := stateOf(t, p)
		if err != nil {
			cleanRefusal(t, err)
			return
		}
		checkState(t, p, e)
	})
}

func cleanRefusal(t rapid.TB, err error) {
	re, ok := errors.AsType[*units.RangeError](err)
	if !ok {
		t.Fatal(err)
	}
	switch re.Quantity {
	case "ionic strength":
		if re.Max != 0.5 || re.Unit != "mol/kg" || !(re.Value > 0.5) {
			t.Error(err)
		}
	case "pH", "inorganic carbon at this pH and alkalinity", "alkalinity at this pH", "acid":
	default:
		t.Error(err)
	}
}

// An acid brings a water of the whole range to its pH, or is refused as cleanly; and
// the water after it is at that pH.
func TestWholeRangeOfAcid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e, err := stateOf(t, anyInRange(t))
		if err != nil || e.PH() <= leastAcidPH {
			return
		}
		p := e.Water()
		a := rapid.SampledFrom(Acids()).Draw(t, "acid")
		loss := rapid.SampledFrom([]CO2Loss{CO2Loss{}, CO2LostTo(AirCO2(units.Atmosphere{}))}).Draw(t, "loss")
		ph := rapid.Float64Range(leastAcidPH, p.ph).Draw(t, "pH")
		_, after, err := p.AcidPerLitre(a, ph, loss)
		if err == nil {
			err = e.closed("test", &after)
		}
		if err != nil {
			cleanRefusal(t, err)
			return
		}
		near(t, "pH", e.PH(), ph, 1e-6)
		checkState(t, after, e)
	})
}

// The quick way and the sure way come to the same state.
func TestSureWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyInRange(t)
		e, err := stateOf(t, p)
		if err != nil {
			return
		}
		s := e.s
		// The quick way leaves coefficients that are out by 1e-7 of the ionic strength.
		compare := func(way string, err error, off float64) {
			if err != nil {
				t.Fatal(way, err)
			}
			same := func(what string, got, want float64) { near(t, what, got, want, 1e-6*want+off*e.s.strength) }
			same(way+" H+", s.h, e.s.h)
			same(way+" ionic strength", s.strength, e.s.strength)
			for sp := range speciesCount {
				same(way+" "+sp.String(), s.species(sp), e.s.species(sp))
			}
		}
		compare("closed", s.surePH("test", byCarbon), 1e-9)
		compare("at its pH", s.sureAtPH("test", byCarbon, nil), 1e-9)
		if e.PH() > 5 { // below it, alkalinity hardly knows CO2
			compare("at its alkalinity", s.sureAtPH("test", byAlk, nil), 1e-6)
		}
	})
}

// The dose of an acid on the sure way is the one of the quick way.
func TestSureDose(t *testing.T) {
	for _, r := range reports {
		p := r.equilibrium(t, 20).water
		for _, a := range Acids() {
			quick, _, err := p.AcidPerLitre(a, 5.2, CO2Loss{})
			if err != nil {
				t.Fatal(err)
			}
			s := p.solution()
			d := s.dose(a)
			d.set(&s, molal)
			s.constantsAt(p.t)
			s.begin(5.2)
			if err := s.sureAtPH("test", byCarbon, &d); err != nil {
				t.Fatal(err)
			}
			near(t, r.name+", "+a.Name(), d.x/molal, quick.In(units.MillimolePerLitre), 1e-6)
		}
	}
}
