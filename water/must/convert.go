package must

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// moved returns the drink with other contents of some ions (mmol/L more) and of alkalinity
// (mEq/L more).
func (d Drink) moved(fn string, alk float64, more map[water.Ion]float64) (Drink, error) {
	p := d.water
	var of []water.Content
	for _, i := range water.Ions() {
		if v := mmol(p, i) + more[i]; v > 0 && i != water.Bicarbonate {
			of = append(of, i.At(milligrams(v*i.MolarMass().In(units.GramPerMole))))
		}
	}
	q, err := water.NewProfile(p.Temperature(), units.MilligramPerLitreCaCO3.Of(checked.Number((alkalinity(p)+alk)*caCO3)), of...)
	if err != nil {
		return Drink{}, limit.Named(fn, err)
	}
	return newDrink(fn, q, d.Strength())
}

// Malolactic returns the drink after bacteria have turned a share of its malic acid into
// lactic acid and CO2, which leaves: C4H6O5 → C3H6O3 + CO2. Half of the acidity of that malic
// acid goes.
//
// Errors are a [*units.RangeError]: a share outside 0 to 100 %, and those of [New].
//
//   - Source: the balance of atoms and charge. What bacteria make of citric acid and sugar
//     besides (acetic acid, diacetyl) is left out.
func (d Drink) Malolactic(share units.Share) (Drink, error) {
	const fn = "must.Drink.Malolactic"
	x := share.In(units.Fraction)
	if err := limit.Check(fn, "share of the malic acid", 100*x, "%", 0, 100, "a share of what there is"); err != nil {
		return Drink{}, err
	}
	n := x * mmol(d.water, water.Malate)
	// Malate counts two charges, lactate one: the charge of the salts stays.
	return d.moved(fn, n, map[water.Ion]float64{water.Malate: -n, water.Lactate: n})
}

// Settled returns the drink after so much cream of tartar, KHC4H4O6, has settled out of each
// litre: by the crystals, or by potassium measured before and after (39.1 mg of it in 188.2 mg). How
// much is at most to settle in a cold wine is [water.Profile.CreamOfTartar]; protective colloids keep wines above
// that for years.
//
// Below pH 3.6 or so the pH falls as it settles, above it the pH rises; the acidity falls
// either way.
//
// Errors are a [*units.RangeError]: more than there is of potassium or tartrate, and those of
// [New].
//
//   - Source: the balance of atoms and charge.
func (d Drink) Settled(bitartrate units.MassConcentration) (Drink, error) {
	const fn = "must.Drink.Settled"
	n := bitartrate.In(units.MilligramPerLitre) / (water.Potassium.MolarMass().In(units.GramPerMole) + water.Tartrate.MolarMass().In(units.GramPerMole) +
		chemistry.H)
	if err := limit.Check(fn, "cream of tartar", n, "mmol/L", 0, min(mmol(d.water, water.Potassium), mmol(d.water, water.Tartrate)),
		"the potassium and the tartrate that there are"); err != nil {
		return Drink{}, err
	}
	// K+ is one charge, the tartrate two: a proton goes with them.
	return d.moved(fn, n, map[water.Ion]float64{water.Potassium: -n, water.Tartrate: -n})
}
