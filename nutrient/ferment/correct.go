package ferment

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Correction is a buffer for a ferment that stopped.
type Correction struct {
	Dose BufferDose
	// Now is the pH once the dose is stirred in, End that when the rest of the sugar has
	// fermented: the one asked for at the usual acids, Low with the most that yeast makes.
	Now, End evidence.Figure[float64]
	// Unexplained is the acid in the liquid beyond what the balance foresees at the usual
	// acids; a negative one means that there is less.
	Unexplained units.EquivalentConcentration
	Cautions    caution.List
}

// Correct returns the buffer with which a ferment that stopped at a share of its sugar
// and a measured pH does not fall below another pH, now or when the rest of the sugar
// has fermented. The measured pH fixes the charge of the strong ions; the acids made are
// taken from the balance, as they resist the change. Potassium of the dose is taken up
// as if it had been there from the start, which asks for the larger dose.
//
//   - Source: as [Tank.At].
//   - Range: pH 2 to 6, to a higher one of at most 6.5; share above 0; otherwise as
//     [Tank.At].
//   - Uncertainty: the ends of the dose; a pH meter is good to 0.05, which is a fifth of a
//     small dose. Add half, stir, measure again.
func (f Tank) Correct(salt material.Material, used units.Share, measured, target float64) (Correction, error) {
	const fn = "ferment.Tank.Correct"
	b, err := bufferOf(fn, salt)
	if err != nil {
		return Correction{}, err
	}
	if err := limit.Check(fn, "measured pH", measured, "", 2, 6, "ferments"); err != nil {
		return Correction{}, err
	}
	if err := limit.Check(fn, "pH", target, "", measured, 6.5, "above the measured pH"); err != nil {
		return Correction{}, err
	}
	x := used.In(units.Percent) / 100
	if err := limit.Check(fn, "share of the sugar used", used.In(units.Percent), "%", 0.1, 100, "a ferment that has begun"); err != nil {
		return Correction{}, err
	}
	c, err := f.checked(fn)
	if err != nil {
		return Correction{}, limit.Named(fn, err)
	}
	c.like = new(water.Series)
	var mmol, nowPH, endPH [3]float64
	var like doseCurve
	var out Correction
	for i, m := range c.upTo {
		if i > 0 && f.AcidsKnown {
			mmol[i], nowPH[i], endPH[i] = mmol[0], nowPH[0], endPH[0]
			continue
		}
		foreseen := c.acidity(c.balance(m, x), x)
		now, err := foreseen.AtPH(measured, c.around(x))
		if err != nil {
			return Correction{}, limit.Named(fn, err)
		}
		more := now.Strong - foreseen.Strong
		atEnd := func(dose float64) acidity.Liquid {
			with := c
			with.start = b.in(c.start, dose)
			last := with.acidity(with.balance(m, allUsed), allUsed)
			last.Strong += more
			return last
		}
		mmol[i], err = solveDose(fn, b, target, c.around(allUsed), &like, atEnd)
		if err != nil {
			return Correction{}, limit.Named(fn, err)
		}
		atOnce := func(dose float64) acidity.Liquid { return b.in(now, dose) }
		least, err := atOnce(mmol[i]).PH(c.around(x))
		if err == nil && least < target { // what is still to come makes it less sour
			mmol[i], err = solveDose(fn, b, target, c.around(x), new(doseCurve), atOnce)
		}
		if err == nil {
			nowPH[i], err = atOnce(mmol[0]).PH(c.around(x))
		}
		if err == nil {
			endPH[i], err = atEnd(mmol[0]).PH(c.around(allUsed))
		}
		if err != nil {
			return Correction{}, limit.Named(fn, err)
		}
		if i == 0 {
			out.Unexplained = units.MilliequivalentPerLitre.Of(checked.Number(foreseen.Strong - now.Strong))
		}
	}
	spread := func(v [3]float64) evidence.Figure[float64] {
		return evidence.Figure[float64]{Value: v[0], Low: min(v[0], v[1], v[2]), High: max(v[0], v[1], v[2]),
			Evidence: evidence.Evidence{Source: "charge balance of the liquid", Grade: evidence.Computed}}
	}
	out.Now, out.End = spread(nowPH), spread(endPH)
	if out.Dose, err = c.doseOf(b, mmol); err != nil {
		return Correction{}, limit.Named(fn, err)
	}
	out.Cautions = caution.List{halfFirst}
	return out, nil
}

const halfFirst caution.Caution = "half_first: Add half of the dose, stir, wait for the gas to leave, and measure again before the rest."
