package water

import (
	"math"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/numeric"
)

// fit is log10 K = a + b·T + c/T + d·log10 T + e/T² + f·T², T in kelvins.
type fit struct{ a, b, c, d, e, f float64 }

// heat returns the fit of a constant at 25 °C with its enthalpy in kJ/mol, taken as
// constant (van 't Hoff).
func heat(log25, kJ float64) fit {
	slope := kJ * 1000 / (math.Ln10 * gasConstant)
	return fit{a: log25 + slope/kelvin25, c: -slope}
}

// kcal is heat with an enthalpy in kcal/mol.
func kcal(log25, kcal float64) fit { return heat(log25, kcal*joulePerCalorie) }

const (
	gasConstant     = chemistry.Gas
	kelvin0         = chemistry.ZeroCelsius
	kelvin25        = kelvin0 + 25
	joulePerCalorie = 4.184
)

// warmth is a temperature with what the fits need of it.
type warmth struct{ t, inverse, log float64 }

func warm(celsius float64) warmth {
	t := celsius + kelvin0
	return warmth{t, 1 / t, math.Log10(t)}
}

// log10 returns the decimal logarithm of the constant.
func (f *fit) log10(w *warmth) float64 {
	return f.a + (f.b+f.f*w.t)*w.t + (f.c+f.e*w.inverse)*w.inverse + f.d*w.log
}

func (f *fit) at(w *warmth) float64 { return power(f.log10(w)) }

// power is the constant of a decimal logarithm.
func power(log10 float64) float64 { return numeric.Exp(math.Ln10 * log10) }

// log25 is a constant whose enthalpy is not known: the value of 25 °C serves at every
// temperature.
func log25(log float64) fit { return fit{a: log} }

// plus returns the fit of two reactions, one after the other.
func (f fit) plus(g fit) fit {
	return fit{f.a + g.a, f.b + g.b, f.c + g.c, f.d + g.d, f.e + g.e, f.f + g.f}
}

// pKa is a dissociation constant at 25 °C with its enthalpy in kJ/mol.
type pKa [2]float64

// protonation returns the fit of an anion that takes up protons, the last dissociation
// first.
func protonation(steps ...pKa) (out fit) {
	for _, s := range steps {
		out = out.plus(heat(s[0], -s[1]))
	}
	return out
}
