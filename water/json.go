package water

import (
	"encoding/json"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// profileJSON is a profile as JSON, every quantity with its unit.
type profileJSON struct {
	Temperature units.Temperature               `json:"temperature"`
	Alkalinity  units.EquivalentConcentration   `json:"alkalinity"`
	Ions        map[Ion]units.MassConcentration `json:"ions,omitempty"`
	PH          float64                         `json:"pH,omitempty"`
	Carbon      units.MolarConcentration        `json:"inorganic_carbon,omitzero"` // known with the pH
	Ethanol     units.StrengthByVolume          `json:"ethanol,omitzero"`
}

// MarshalJSON writes temperature, alkalinity (in mEq/L), ions and, where known, pH and
// inorganic carbon, each with its unit.
func (p Profile) MarshalJSON() ([]byte, error) {
	out := profileJSON{
		Temperature: p.Temperature(), Alkalinity: units.MilliequivalentPerLitre.Of(checked.Number(p.alk)),
		PH: p.ph, Carbon: units.MillimolePerLitre.Of(checked.Number(p.carbon)), Ethanol: p.Ethanol(),
	}
	for i, v := range p.mg {
		if v != 0 {
			if out.Ions == nil {
				out.Ions = map[Ion]units.MassConcentration{}
			}
			out.Ions[Ion(i)] = units.MilligramPerLitre.Of(checked.Number(v))
		}
	}
	return json.Marshal(out)
}

// UnmarshalJSON reads what [Profile.MarshalJSON] writes. The error is a
// [*units.RangeError] for a number that no profile holds.
func (p *Profile) UnmarshalJSON(text []byte) error {
	const fn = "water.Profile.UnmarshalJSON"
	var in profileJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	out := Profile{
		t: in.Temperature.In(units.Celsius), alk: in.Alkalinity.In(units.MilliequivalentPerLitre), ph: in.PH,
		carbon: in.Carbon.In(units.MillimolePerLitre), ethanol: in.Ethanol.In(units.PercentVolume),
	}
	for i, c := range in.Ions {
		out.mg[i] = c.In(units.MilligramPerLitre)
		if i == Bicarbonate || i == Carbonate || i == Hydroxide {
			return &units.NameError{Func: fn, What: "ion beside the alkalinity", Name: i.Name()}
		}
		if err := limit.Check(fn, i.Name(), out.mg[i], "mg/L", 0, mostIon, waterSource); err != nil {
			return err
		}
	}
	for _, r := range [...]struct {
		what        string
		v           float64
		unit        string
		least, most float64
	}{
		{"temperature", out.t, "°C", 0, 105}, {"alkalinity", out.alk, "mEq/L", -mostAlkalinity, mostAlkalinity},
		{"pH", out.ph, "", leastPH, mostPH}, {"inorganic carbon", out.carbon, "mmol/L", 0, mostCarbon}, {"ethanol", out.ethanol, "% vol", 0, mostEthanol},
	} {
		if err := limit.Check(fn, r.what, r.v, r.unit, r.least, r.most, waterSource); err != nil {
			return err
		}
	}
	*p = out
	return nil
}

// MarshalJSON writes the water of the equilibrium, which holds all that it follows from.
// The zero value is refused with a [*units.StateError].
func (e Equilibrium) MarshalJSON() ([]byte, error) {
	if e.water.ph == 0 {
		return nil, &units.StateError{Func: "water.Equilibrium.MarshalJSON", What: "equilibrium", Why: "is of no water: take it from a method of Profile"}
	}
	return json.Marshal(e.water)
}

// UnmarshalJSON reads a water of known pH and finds its equilibrium again, to 1e-9. Errors
// are those of [Profile.UnmarshalJSON] and [Profile.Equilibrium].
func (e *Equilibrium) UnmarshalJSON(text []byte) error {
	var p Profile
	const fn = "water.Equilibrium.UnmarshalJSON"
	if err := p.UnmarshalJSON(text); err != nil {
		return limit.Named(fn, err)
	}
	out, err := p.Equilibrium()
	if err != nil {
		return limit.Named(fn, err)
	}
	*e = out
	return nil
}

// lossJSON is a CO2Loss: kept where it has no pressure.
type lossJSON struct {
	LostTo *units.AbsolutePressure `json:"lost_to,omitempty"`
}

// MarshalJSON writes {} for a closed water, and otherwise the pressure that CO2 is lost to.
func (c CO2Loss) MarshalJSON() ([]byte, error) {
	var out lossJSON
	if c.lost {
		out.LostTo = new(units.AbsolutePressure)
		*out.LostTo = units.Kilopascal.Of(checked.Number(c.kPa))
	}
	return json.Marshal(out)
}

// UnmarshalJSON reads what [CO2Loss.MarshalJSON] writes.
func (c *CO2Loss) UnmarshalJSON(text []byte) error {
	var in lossJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	*c = CO2Loss{}
	if in.LostTo != nil {
		*c = CO2LostTo(*in.LostTo)
	}
	return nil
}

// residualJSON is a residual; chloramine where it is no free chlorine.
type residualJSON struct {
	Chloramine bool                     `json:"chloramine"`
	Amount     units.MolarConcentration `json:"amount"`
}

// MarshalJSON writes which disinfectant it is, and its amount.
func (r Residual) MarshalJSON() ([]byte, error) {
	if err := chlorineForms.Check("water.Residual.MarshalJSON", r.as); err != nil {
		return nil, err
	}
	return json.Marshal(residualJSON{r.chloramine, units.MillimolePerLitre.Of(checked.Number(r.mmol))})
}

// UnmarshalJSON reads what [Residual.MarshalJSON] writes.
func (r *Residual) UnmarshalJSON(text []byte) error {
	var in residualJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	*r = Residual{chloramine: in.Chloramine, mmol: in.Amount.In(units.MillimolePerLitre)}
	return nil
}

// MarshalJSON refuses: a limit is made again by its function, as [Ion.AtMost].
func (l Bound) MarshalJSON() ([]byte, error) { return nil, noText("water.Bound.MarshalJSON", "limit") }

// UnmarshalJSON refuses as [Bound.MarshalJSON] does.
func (l *Bound) UnmarshalJSON([]byte) error { return noText("water.Bound.UnmarshalJSON", "limit") }

// MarshalJSON refuses: a series is a search under way.
func (r *Series) MarshalJSON() ([]byte, error) {
	return nil, noText("water.Series.MarshalJSON", "series")
}

func noText(fn, what string) error {
	return &units.StateError{Func: fn, What: what, Why: "is not to be stored: make it again"}
}

// The form of a [DrinkingLimit] in JSON: its exported fields.
type drinkingLimitJSON struct {
	Authority        Authority
	Substance        string
	Most             units.MassConcentration
	LeastPH, MostPH  float64
	MostConductivity units.Conductivity
	Kind             string
	Source           string
	Year             int
	Recalled         bool
}

func (l *DrinkingLimit) written() drinkingLimitJSON {
	return drinkingLimitJSON{l.Authority, l.Substance, l.Most, l.LeastPH, l.MostPH, l.MostConductivity, l.Kind, l.Source, l.Year, l.Recalled}
}

// MarshalJSON writes the exported fields.
func (l DrinkingLimit) MarshalJSON() ([]byte, error) { return json.Marshal(l.written()) }

// UnmarshalJSON reads what [DrinkingLimit.MarshalJSON] writes. A limit that is none of
// [DrinkingLimits] is a [*units.NameError].
func (l *DrinkingLimit) UnmarshalJSON(text []byte) error {
	var in drinkingLimitJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	for _, known := range DrinkingLimits() {
		if known.written() == in {
			*l = known
			return nil
		}
	}
	return &units.NameError{Func: "water.DrinkingLimit.UnmarshalJSON", What: "limit for drinking water", Name: in.Authority.String() + " " + in.Substance}
}
