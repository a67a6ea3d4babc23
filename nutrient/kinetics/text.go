package kinetics

import (
	"encoding/json"
	"math"
	"time"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// written is a forecast as JSON.
type written struct {
	Sugar        units.MassConcentration `json:"sugar"`
	Nitrogen     units.MassConcentration `json:"nitrogen"`
	Yeast        units.MassConcentration `json:"yeast"`
	PH           float64                 `json:"pH,omitempty"`
	Ethanol      units.MassConcentration `json:"ethanol,omitzero"`
	Temperatures []writtenHold           `json:"temperatures"`
	Readings     []writtenBin            `json:"readings,omitempty"`
}

type writtenHold struct {
	Hour        float64           `json:"hour"`
	Temperature units.Temperature `json:"temperature"`
}

// writtenBin is the mean of the readings of six hours.
type writtenBin struct {
	Hour        float64 `json:"hour"`
	Used        float64 `json:"used"`
	Uncertainty float64 `json:"uncertainty"`
}

// MarshalJSON writes the start, the temperatures and the readings as six-hour means, enough
// to go on from.
func (f *Forecast) MarshalJSON() ([]byte, error) {
	if f.pace == nil {
		return nil, &units.StateError{Func: "kinetics.Forecast.MarshalJSON", What: "forecast", Why: "has no pace: make it with NewForecast"}
	}
	w := f.pace.written()
	for _, b := range f.bins {
		if hour, used, _, ok := b.mean(); ok {
			w.Readings = append(w.Readings, writtenBin{hour, used, 1 / math.Sqrt(b.weight)})
		}
	}
	return json.Marshal(w)
}

// UnmarshalJSON reads what [Forecast.MarshalJSON] writes, with the checks of [NewPace] and
// [Forecast.Add].
func (f *Forecast) UnmarshalJSON(text []byte) error {
	const fn = "kinetics.Forecast.UnmarshalJSON"
	var w written
	if err := json.Unmarshal(text, &w); err != nil {
		return err
	}
	p, err := w.pace()
	if err != nil {
		return limit.Named(fn, err)
	}
	read := NewForecast(p)
	for _, r := range w.Readings {
		d, err := clock(r.Hour)
		if err != nil {
			return limit.Named(fn, err)
		}
		used, err := units.Fraction.Try(r.Used)
		if err != nil {
			return limit.Named(fn, err)
		}
		u, err := units.Fraction.Try(r.Uncertainty)
		if err != nil {
			return limit.Named(fn, err)
		}
		if err := read.add(d, used, u, surest); err != nil {
			return limit.Named(fn, err)
		}
	}
	*f = *read
	return nil
}

// written is the pace as JSON has it: what it was integrated from.
func (p *Pace) written() written {
	s := p.start
	w := written{Sugar: s.Sugar, Nitrogen: s.Nitrogen, Yeast: s.Yeast, PH: s.PH, Ethanol: s.Ethanol}
	for _, h := range p.holds {
		w.Temperatures = append(w.Temperatures, writtenHold{h.From.Hours(), h.Temperature})
	}
	return w
}

// pace integrates it again.
func (w *written) pace() (*Pace, error) {
	holds := make([]Hold, len(w.Temperatures))
	for i, h := range w.Temperatures {
		d, err := clock(h.Hour)
		if err != nil {
			return nil, err
		}
		holds[i] = Hold{d, h.Temperature}
	}
	return NewPace(Start{Sugar: w.Sugar, Nitrogen: w.Nitrogen, Yeast: w.Yeast, PH: w.PH, Ethanol: w.Ethanol}, holds...)
}

// MarshalJSON writes the start and the temperatures, from which it is worked out. The zero
// Pace is a [*units.StateError].
func (p *Pace) MarshalJSON() ([]byte, error) {
	if len(p.holds) == 0 {
		return nil, &units.StateError{Func: "kinetics.Pace.MarshalJSON", What: "pace", Why: "has no start: make it with NewPace"}
	}
	return json.Marshal(p.written())
}

// UnmarshalJSON reads what [Pace.MarshalJSON] writes, with the checks of [NewPace].
func (p *Pace) UnmarshalJSON(text []byte) error {
	var w written
	if err := json.Unmarshal(text, &w); err != nil {
		return err
	}
	read, err := w.pace()
	if err != nil {
		return limit.Named("kinetics.Pace.UnmarshalJSON", err)
	}
	*p = *read
	return nil
}

// MarshalJSON refuses: a Fit is worked out from a [Forecast], so write that. The error is a
// [*units.StateError].
func (f *Fit) MarshalJSON() ([]byte, error) {
	return nil, &units.StateError{Func: "kinetics.Fit.MarshalJSON", What: "fit", Why: "is not written: write the forecast that it is of"}
}

// clock is a time since the pitch that was written in hours.
func clock(hours float64) (time.Duration, error) {
	if !(hours >= 0 && hours <= horizon.Hours()) {
		return 0, &units.RangeError{Func: "kinetics.Forecast.UnmarshalJSON", Quantity: "time since the pitch", Value: hours, Unit: "h", Min: 0, Max: horizon.Hours(),
			Source: "how far a forecast reaches"}
	}
	return time.Duration(hours * float64(time.Hour)), nil
}
