package carbonation

import (
	"example.org/zymase/internal/choice"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// A Verdict sets a pressure against the rating that the caller gave.
type Verdict int

// The verdicts. The zero value says nothing.
const (
	// Unrated: no rating was given, so there is no verdict.
	Unrated Verdict = iota
	// WithinRating: at or below the rating that was given. It says nothing of
	// the vessel's condition, nor of a rating that is wrong.
	WithinRating
	// OverRating: above the rating that was given.
	OverRating
	// Locked: the vessel is full of liquid; no rating helps.
	Locked
	// BeyondComputed: above 20 bar absolute, where the physics ends, and the rating
	// is higher still.
	BeyondComputed
	// MayFreeze: at or below the rating, but below the freezing point of the drink, where
	// the pressure given is not what bursts the vessel.
	MayFreeze
)

var verdicts = choice.Of[Verdict]("carbonation.Verdict", "verdict", "unrated", "within the rating given", "over the rating given", "hydraulic lock",
	"above the computed range", "below the freezing point")

// Rated sets a gauge pressure that a person sets, on a regulator or a valve, against the
// rating of what it goes into; a rating of zero is none. The cautions say if it is over,
// if no rating was given, and if the pressure is below that of the atmosphere, which no
// regulator can set.
func Rated(set, rating units.GaugePressure) (Verdict, caution.List) {
	v, s := rated(set, rating)
	return v, s.list()
}

func rated(set, rating units.GaugePressure) (Verdict, said) {
	v := WithinRating
	switch {
	case rating.IsZero():
		v = Unrated
	case set.Compare(rating) > 0:
		v = OverRating
	}
	return v, cautions(PressureVessel).with(OverRatingCaution, v == OverRating).with(noRating, v == Unrated).
		with(BelowAtmosphere, set.In(units.KilopascalGauge) < 0)
}

// iced adds what ice does to a verdict and its cautions.
func iced(v Verdict, c said, below bool) (Verdict, said) {
	if below && v == WithinRating {
		v = MayFreeze
	}
	return v, c.with(Freezing, below)
}

// String is "unrated", "within the rating given" and so on.
func (v Verdict) String() string { return verdicts.Text(v) }

// MarshalText is [Verdict.String]; an unknown verdict is a [*units.NameError].
func (v Verdict) MarshalText() ([]byte, error) { return verdicts.Marshal(v) }

// UnmarshalText reads what [Verdict.MarshalText] writes; another text is a
// [*units.NameError].
func (v *Verdict) UnmarshalText(text []byte) error { return verdicts.Unmarshal(text, v) }
