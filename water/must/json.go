package must

import (
	"encoding/json"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/water"
)

// The form of a [Drink] in JSON: what its pH follows from.
type drinkJSON struct {
	Water    water.Profile          `json:"water"`
	Strength units.StrengthByVolume `json:"strength"`
}

// MarshalJSON writes the ions, the alkalinity and the strength; pH and buffer capacity follow
// from them. The zero Drink is a [*units.StateError].
func (d Drink) MarshalJSON() ([]byte, error) {
	if d.ph == 0 {
		return nil, &units.StateError{Func: "must.Drink.MarshalJSON", What: "drink", Why: "is none: make it with New, Reading.Drink or Analysis.Drink"}
	}
	return json.Marshal(drinkJSON{d.water, d.Strength()})
}

// UnmarshalJSON reads what [Drink.MarshalJSON] writes. Errors are those of [New] and of
// package json.
func (d *Drink) UnmarshalJSON(text []byte) error {
	var in drinkJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	read, err := newDrink("must.Drink.UnmarshalJSON", in.Water, in.Strength)
	if err == nil {
		*d = read
	}
	return err
}

// The form of an [Aim] in JSON.
type aimJSON struct {
	PH        float64                  `json:"pH,omitempty"`
	Acidity   *units.MassConcentration `json:"acidity,omitempty"`
	Titration *water.Titration         `json:"titration,omitempty"`
}

// MarshalJSON writes the pH, or the acidity with its titration. The zero Aim is a
// [*units.StateError].
func (a Aim) MarshalJSON() ([]byte, error) {
	switch {
	case a.ph != 0:
		return json.Marshal(aimJSON{PH: a.ph})
	case a.titration != water.Titration{}:
		acidity := milligrams(a.acidity)
		return json.Marshal(aimJSON{Acidity: &acidity, Titration: &a.titration})
	}
	return nil, &units.StateError{Func: "must.Aim.MarshalJSON", What: "aim", Why: "is none: make it with ToPH or ToAcidity"}
}

// UnmarshalJSON reads what [Aim.MarshalJSON] writes. One that names neither or both is a
// [*units.ParseError].
func (a *Aim) UnmarshalJSON(text []byte) error {
	var in aimJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	switch {
	case in.PH != 0 && in.Acidity == nil && in.Titration == nil:
		*a = ToPH(in.PH)
	case in.PH == 0 && in.Acidity != nil && in.Titration != nil:
		*a = ToAcidity(*in.Acidity, *in.Titration)
	default:
		return &units.ParseError{Input: strings.ToValidUTF8(string(text[:min(len(text), 64)]), "?"), Want: "aim",
			Reason: `write a pH, or an acidity with its titration: {"pH":3.4}`}
	}
	return nil
}

// The form of a [Constituent] in JSON.
type partJSON struct {
	Name    string                                   `json:"name"`
	Content evidence.Figure[units.MassConcentration] `json:"content"`
}

// MarshalJSON writes the name and the content.
func (p Constituent) MarshalJSON() ([]byte, error) { return json.Marshal(partJSON{p.Name, p.Content}) }

// UnmarshalJSON reads what [Constituent.MarshalJSON] writes. A name that is of no ion, nitrogen or
// acidity is a [*units.NameError].
func (p *Constituent) UnmarshalJSON(text []byte) error {
	var in partJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	read := Constituent{Name: in.Name, Content: in.Content}
	switch acid, acidity := strings.CutPrefix(in.Name, acidityOf); {
	case in.Name == nitrogenNames[amino]:
		read.nitrogen = amino
	case in.Name == nitrogenNames[ammonium]:
		read.nitrogen = ammonium
	case acidity:
		read.nitrogen = ofAcidity
		if _, err := water.ParseAcid(acid); err != nil {
			return limit.Named("must.Constituent.UnmarshalJSON", err)
		}
	default:
		var err error
		if read.ion, err = water.ParseIon(in.Name); err != nil {
			return limit.Named("must.Constituent.UnmarshalJSON", err)
		}
	}
	*p = read
	return nil
}
