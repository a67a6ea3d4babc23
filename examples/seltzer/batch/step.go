package batch

import (
	"strings"
	"time"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Kind is what a step does.
type Kind uint8

// Kinds, in the order of a brew. What each of them reads of a [Step] stands at it.
const (
	Blend      Kind = iota // With, Volume: add a volume of another liquid, at 20 °C; all of it where there is no Volume
	Treat                  // What, Mass: salts of the water
	Dissolve               // What, Mass: a fermentable; Salts
	Heat                   // Temperature
	Boil                   // For, Rate, Pressure of the place: water and gas go, chalk drops
	Cool                   // Temperature
	Transfer               // Volume left behind, at 20 °C; Share of the yeast left with it
	Pitch                  // Mass of dry yeast
	Feed                   // What, Mass: a nutrient or a buffer
	Ferment                // Share of the sugar that there is; Pressure of the gas; Gas: none of it leaves
	Stand                  // Pressure, Share of the way to rest with it; Gas: under CO2, else in air
	Degas                  // Share of the gases that goes
	Chill                  // Temperature
	Fine                   // Share of the yeast that settles and is left
	Dilute                 // Mass of water without gas and ions
	Flavour                // Volume at 20 °C, Strength, Sugar
	Sweeten                // What, Mass: a sugar or glycerol
	Acidify                // What, Mass: a pure acid
	Stabilise              // What, Mass: a sulfite or sorbate
	Malolactic             // Share of the malic acid that bacteria turn into lactic acid
	Settle                 // Share of the way to rest with cream of tartar, at the liquid's temperature
	Carbonate              // Gauge, Pressure of the place: to rest under CO2
	Prime                  // What, Mass: a fermentable
	Fill                   // Capacity of the pack, brim-full at 20 °C, its Stretch; Volume of the liquid in it, at its temperature; the rest leaves
	Close                  // Pressure of the place; Share of the head-space that is air, the rest CO2; Gas: under the gas it was carbonated with, as a keg
	Warm                   // Temperature; what an open liquid cannot hold then goes
	Open                   // Pressure of the place
	kindCount
)

var kinds = [kindCount]string{
	"blend", "treat", "dissolve", "heat", "boil", "cool", "transfer", "pitch", "feed", "ferment", "stand", "degas", "chill", "fine", "dilute",
	"flavour", "sweeten", "acidify", "stabilise", "malolactic", "settle", "carbonate", "prime", "fill", "close", "warm", "open",
}

// Kinds returns every kind in the order of the constants.
func Kinds() []Kind {
	all := make([]Kind, kindCount)
	for i := range all {
		all[i] = Kind(i)
	}
	return all
}

// String returns the verb, "boil".
func (k Kind) String() string {
	if k >= kindCount {
		return "unknown step"
	}
	return kinds[k]
}

// MarshalText writes [Kind.String]. The error is a [*units.NameError] for a Kind that is none.
func (k Kind) MarshalText() ([]byte, error) {
	if k >= kindCount {
		return nil, &units.NameError{Func: "batch.Kind.MarshalText", What: "step", Name: k.String()}
	}
	return []byte(k.String()), nil
}

// UnmarshalText reads a verb. The error is a [*units.NameError].
func (k *Kind) UnmarshalText(text []byte) error {
	for i, name := range kinds {
		if strings.EqualFold(name, string(text)) {
			*k = Kind(i)
			return nil
		}
	}
	return &units.NameError{Func: "batch.Kind.UnmarshalText", What: "step", Name: string(text)}
}

// Step is one thing that is done to a liquid. Which fields count stands at its [Kind]; the
// others are left at zero. A Step marshals as JSON with quantities as text, and is read back the same.
type Step struct {
	Kind        Kind                    `json:"do"`
	What        string                  `json:"what,omitzero"` // as a package reads it: "gypsum", "white sugar"
	Mass        units.Mass              `json:"mass,omitzero"`
	Volume      units.Volume            `json:"volume,omitzero"`
	Share       units.Share             `json:"share,omitzero"`
	Temperature units.Temperature       `json:"temperature,omitzero"`
	For         Duration                `json:"for,omitzero"`
	Rate        units.VolumeFlow        `json:"rate,omitzero"` // of the boil, as cold water
	Pressure    units.AbsolutePressure  `json:"pressure,omitzero"`
	Gauge       units.GaugePressure     `json:"gauge,omitzero"`
	Gas         bool                    `json:"under_co2,omitzero"`
	Capacity    units.Volume            `json:"capacity,omitzero"`
	Stretch     units.Share             `json:"stretch,omitzero"` // of its volume for each bar inside
	Strength    units.StrengthByVolume  `json:"strength,omitzero"`
	Sugar       units.MassConcentration `json:"sugar,omitzero"`
	With        *State                  `json:"with,omitempty"`
	Rests       *Rests                  `json:"-"`              // of a boil that many worlds share, one after the other; nil searches in each
	Own         material.Material       `json:"own,omitzero"`   // in the place of What: a material by its label
	Salts       float64                 `json:"salts,omitzero"` // mol of charge that a kilogram of it may hold more or less (k = 2), as [Unknowns] has it
}

// place is the pressure of the place; zero is 101.325 kPa.
func (st *Step) place() units.AbsolutePressure { return Above{Pressure: st.Pressure}.of() }

// Duration is a time in text form: "15 min".
type Duration time.Duration

// MarshalText writes minutes, as units.ParseDuration reads them.
func (d Duration) MarshalText() ([]byte, error) {
	return []byte(trim(time.Duration(d).Minutes()) + " min"), nil
}

// UnmarshalText reads what units.ParseDuration reads.
func (d *Duration) UnmarshalText(text []byte) error {
	t, err := units.ParseDuration(string(text))
	*d = Duration(t)
	return err
}
