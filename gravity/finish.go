package gravity

import (
	"encoding/json"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// A Progress is how far a fermentation has come by its gravity.
type Progress struct {
	Liquid Solution    // now
	Floor  Gravity     // when all fermentable extract is used
	Left   units.Mass  // fermentable extract
	Part   units.Share // of the fermentable extract that is used

	// CO2 is the most that the rest can still make, no yeast grown on it. If the liquid is
	// closed up now it stays in there: [Progress.Cautions].
	CO2        units.Mass
	CO2Content units.CarbonDioxideContent // the same in a litre of the liquid at 20 °C
}

const closedTooEarly caution.Caution = "closed_too_early: Closed up now, this liquid can still make %s. " +
	"Glass bursts: pack only at or near the floor, unchanged over days, and within the maker's pressure rating of the pack."

// Cautions returns the caution closed_too_early with how much gas can still come, or nothing where no
// extract is left. JSON holds it too.
func (p Progress) Cautions() caution.List {
	if p.Left.IsZero() {
		return nil
	}
	return caution.List{closedTooEarly.With(p.CO2Content.Text(units.GramCO2PerLitre, 1))}
}

// MarshalJSON writes the fields and the cautions.
func (p Progress) MarshalJSON() ([]byte, error) {
	type fields Progress
	return json.Marshal(struct {
		fields
		Cautions caution.List `json:",omitempty"`
	}{fields(p), p.Cautions()})
}

// At returns how far a wort of known composition has come when the hydrometer, read
// at 20 °C without gas, shows a gravity: what extract is left, what of it can still
// ferment and what gas that makes.
//
//   - Source: [Solution.Ferment] solved for the extract used that gives the gravity;
//     the gas by [StoichiometricYield], as a warning takes the most.
//   - Range: a gravity between the wort's and its floor; up to 0.0005 below the floor
//     counts as the floor. Otherwise the error is a [*units.RangeError]: the recipe or the
//     yield is another, or the reading is wrong. So it is for a gravity at which no formula
//     covers the liquid.
//   - Uncertainty: 0.001 in gravity hides 2.2 g/L of sugar, which is 1.1 g/L of CO2; see
//     [Solution.AtWorst].
func (s Solution) At(reading Gravity, y Yield) (Progress, error) {
	const fn = "gravity.Solution.At"
	dry, _, err := s.Dry(y)
	if err != nil {
		return Progress{}, limit.Named(fn, err)
	}
	floor, top := dry.Gravity(), s.Gravity()
	if err := limit.Check(fn, "gravity", reading.SG(), "", floor.SG()-0.0005, top.SG(), "between the floor of this recipe and its wort"); err != nil {
		return Progress{}, err
	}
	have := s.fermentable()
	if reading.excess <= floor.excess {
		return Progress{Liquid: dry, Floor: floor, Part: units.Percent.Of(100)}, nil
	}
	part, err := numeric.Root(func(part float64) float64 {
		return s.fermented(part*have, y).Gravity().excess - reading.excess
	}, 0, 1, sharp)
	if err != nil { // not reached: the gravity falls from the wort's to the floor
		return Progress{}, limit.Named(fn, err)
	}
	now, _, err := s.Ferment(kilograms(min(part*have, have)), y)
	if err != nil {
		return Progress{}, limit.Named(fn, err)
	}
	var co2 float64
	for k, x := range now.extract {
		if Sugar(k).Fermentable() {
			co2 += x * max(StoichiometricYield(Sugar(k)).co2, y.co2)
		}
	}
	return Progress{
		Liquid: now, Floor: floor, Left: kilograms(have * (1 - part)), Part: percent(100 * part),
		CO2: kilograms(co2), CO2Content: gramsCO2PerLitre(co2 / now.total() * now.density20()),
	}, nil
}

// AtWorst returns the state of the most sugar that a reading may hide: that at the reading
// and k times its standard uncertainty more. A hydrometer read as dry within ± 0.001 still
// leaves room for priming sugar that nobody added.
//
//   - Source: [Solution.At] at the reading plus k·u (JCGM 100:2008 6.2.1).
//   - Range: k from 0 to 10, and that of [Solution.At]; otherwise the error is a
//     [*units.RangeError].
func (s Solution) AtWorst(reading units.MeasuredNumber, y Yield, k float64) (Progress, error) {
	const fn = "gravity.Solution.AtWorst"
	u, err := reading.Expanded(k)
	if err != nil {
		return Progress{}, limit.Named(fn, err)
	}
	most := min(reading.Value().In(units.One)+u.In(units.One), s.Gravity().SG())
	g, err := FromSG(most)
	if err != nil {
		return Progress{}, limit.Named(fn, err)
	}
	p, err := s.At(g, y)
	return p, limit.Named(fn, err)
}
