package gravity

import (
	"encoding/json"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// The form of a [Solution] in JSON: masses by name, of the extract what there is.
type solutionJSON struct {
	Water   units.Mass           `json:"water"`
	Extract map[Sugar]units.Mass `json:"extract,omitempty"`
	Ethanol units.Mass           `json:"ethanol"`
}

// MarshalJSON writes the masses with their units, the extract by kind:
// {"water":"90 kg","extract":{"sucrose":"10 kg"},"ethanol":"0 kg"}.
func (s Solution) MarshalJSON() ([]byte, error) {
	out := solutionJSON{Water: s.Water(), Ethanol: s.Ethanol()}
	for k, x := range s.extract {
		if x > 0 {
			if out.Extract == nil {
				out.Extract = map[Sugar]units.Mass{}
			}
			out.Extract[Sugar(k)] = kilograms(x)
		}
	}
	return json.Marshal(out)
}

// UnmarshalJSON reads what [Solution.MarshalJSON] writes, in any unit of mass. Errors are
// those of [NewSolution], a [*units.NameError] for a kind of extract that this package does
// not name, and those of package json.
func (s *Solution) UnmarshalJSON(text []byte) error {
	var in solutionJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	read := Solution{water: in.Water.In(units.Kilogram), ethanol: in.Ethanol.In(units.Kilogram)}
	for k, m := range in.Extract {
		read.extract[k] = m.In(units.Kilogram)
	}
	read, err := read.checked("gravity.Solution.UnmarshalJSON")
	if err == nil {
		*s = read
	}
	return err
}

// The form of a [Yield] in JSON: what a kilogram of extract becomes.
type yieldJSON struct {
	Of units.Mass `json:"extract"`
	Fermented
	Sugar Sugar `json:"sugar"`
}

// MarshalJSON writes what a kilogram of extract becomes, and the sugar that it is for. The
// zero Yield is a [*units.StateError].
func (y Yield) MarshalJSON() ([]byte, error) {
	if y.ethanol == 0 {
		return nil, &units.StateError{Func: "gravity.Yield.MarshalJSON", What: "yield", Why: "makes no ethanol: take one of this package or NewYield"}
	}
	return json.Marshal(yieldJSON{units.Kilogram.Of(1), Fermented{
		CO2: kilograms(y.co2), Biomass: kilograms(y.biomass), Ethanol: kilograms(y.ethanol), Residue: kilograms(y.residue), Water: kilograms(y.water),
	}, y.kind})
}

// UnmarshalJSON reads what [Yield.MarshalJSON] writes, of any mass of extract. Errors are
// those of [NewYield] and of package json.
func (y *Yield) UnmarshalJSON(text []byte) error {
	var in yieldJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	read, err := NewYield(in.Of, in.Fermented)
	if err != nil {
		return limit.Named("gravity.Yield.UnmarshalJSON", err)
	}
	if in.Of == units.Kilogram.Of(1) { // to the bit, not closed again
		read.co2, read.biomass = in.CO2.In(units.Kilogram), in.Biomass.In(units.Kilogram)
	}
	read.kind = in.Sugar
	*y = read
	return nil
}

// The form of a [Fermentation] in JSON: what determines it.
type fermentationJSON struct {
	Wort  Solution   `json:"wort"`
	Used  units.Mass `json:"extract_used"`
	Yield Yield      `json:"yield"`
}

// MarshalJSON writes 100 kg of the wort, how much of its extract is used, and the yield.
// The zero Fermentation is a [*units.StateError].
func (f Fermentation) MarshalJSON() ([]byte, error) {
	if f == (Fermentation{}) {
		return nil, &units.StateError{Func: "gravity.Fermentation.MarshalJSON", What: "fermentation", Why: "is of nothing: make it from two figures"}
	}
	return json.Marshal(fermentationJSON{f.wort, kilograms(f.used), f.yield})
}

// UnmarshalJSON reads what [Fermentation.MarshalJSON] writes. Errors are those of
// [Solution.Ferment] and of package json; a [*units.RangeError] for a wort of another mass
// than 100 kg.
func (f *Fermentation) UnmarshalJSON(text []byte) error {
	const fn = "gravity.Fermentation.UnmarshalJSON"
	var in fermentationJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	if err := limit.Check(fn, "mass of the wort", in.Wort.total(), "kg", 100*(1-hair), 100*(1+hair), "a state is of 100 kg"); err != nil {
		return err
	}
	liquid, _, err := in.Wort.Ferment(in.Used, in.Yield)
	if err != nil {
		return limit.Named(fn, err)
	}
	*f = Fermentation{in.Wort, liquid, in.Yield, in.Used.In(units.Kilogram)}
	return nil
}
