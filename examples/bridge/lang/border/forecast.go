package border

import (
	"encoding/json"
	"sync"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// A ForecastHandle names a forecast that is kept on this side.
type ForecastHandle struct {
	Forecast int64  `json:"forecast"`
	Caution  string `json:"caution,omitempty"` // what of the start lies outside that to which the model was fitted
}

// A ForecastReading is the share of the sugar used, and its standard uncertainty, both from 0 to 1.
type ForecastReading struct {
	Forecast    int64   `json:"forecast"`
	Hours       float64 `json:"hours"` // since the yeast was pitched
	Used        float64 `json:"used"`
	Uncertainty float64 `json:"uncertainty"`
}

// A ForecastQuestion asks for the share used at times, and for the times when shares are used.
type ForecastQuestion struct {
	Forecast int64     `json:"forecast"`
	Hours    []float64 `json:"hours,omitempty"` // since the yeast was pitched
	Used     []float64 `json:"used,omitempty"`  // shares from 0 to 1
}

// A ForecastBand is what may be expected: half of all outcomes lie from low50 to high50, nine in
// ten from low90 to high90.
type ForecastBand struct {
	Low90  float64 `json:"low90"`
	Low50  float64 `json:"low50"`
	Median float64 `json:"median"`
	High50 float64 `json:"high50"`
	High90 float64 `json:"high90"`
}

// A ForecastAnswer has a band of shares for each time asked, and a band of hours for each share.
type ForecastAnswer struct {
	Used []ForecastBand `json:"used"` // shares
	When []ForecastWhen `json:"when"` // hours
	// Next is the hour, from the last that was asked on, at which a reading would tell most.
	Next    float64  `json:"next"`
	Stalled *float64 `json:"stalled"` // the hour since when the readings show a stop, null if they show none
	Leaves  *float64 `json:"leaves"`  // the hour from which the readings leave what was planned, null if they do not
	Faster  bool     `json:"faster"`  // which way they leave
}

// A ForecastWhen is when a share is used, among the outcomes in which it is.
type ForecastWhen struct {
	ForecastBand
	Stops float64 `json:"stops"` // how likely the ferment stays below the share, 0 to 1
}

// kept is a forecast behind a handle.
type kept struct {
	mu sync.Mutex
	f  *kinetics.Forecast
}

// forecasts are those that are open.
var forecasts = struct {
	mu   sync.Mutex
	last int64
	open map[int64]*kept
}{open: map[int64]*kept{}}

func forecastOf(handle int64) (*kept, error) {
	forecasts.mu.Lock()
	defer forecasts.mu.Unlock()
	k := forecasts.open[handle]
	if k == nil {
		return nil, &units.StateError{Func: "forecast", What: "forecast", Why: "is closed, or was never opened"}
	}
	return k, nil
}

func forecastOpen(request []byte) (any, error) {
	var f kinetics.Forecast
	if err := json.Unmarshal(request, &f); err != nil {
		return nil, err
	}
	forecasts.mu.Lock()
	defer forecasts.mu.Unlock()
	forecasts.last++
	forecasts.open[forecasts.last] = &kept{f: &f}
	return ForecastHandle{Forecast: forecasts.last, Caution: f.Pace().Caution()}, nil
}

func forecastAdd(request []byte) (any, error) {
	r, err := read[ForecastReading](request)
	if err != nil {
		return nil, err
	}
	k, err := forecastOf(r.Forecast)
	if err != nil {
		return nil, err
	}
	at, err := since(r.Hours)
	if err != nil {
		return nil, err
	}
	used, err := share("share used", r.Used)
	if err != nil {
		return nil, err
	}
	uncertainty, err := share("uncertainty", r.Uncertainty)
	if err != nil {
		return nil, err
	}
	k.mu.Lock()
	defer k.mu.Unlock()
	return nil, k.f.Add(at, used, uncertainty)
}

func forecastAsk(request []byte) (any, error) {
	q, err := read[ForecastQuestion](request)
	if err != nil {
		return nil, err
	}
	k, err := forecastOf(q.Forecast)
	if err != nil {
		return nil, err
	}
	k.mu.Lock()
	defer k.mu.Unlock()
	fit := k.f.Fit()
	a := ForecastAnswer{Used: []ForecastBand{}, When: []ForecastWhen{}}
	var last time.Duration
	for _, h := range q.Hours {
		at, err := since(h)
		if err != nil {
			return nil, err
		}
		last = max(last, at)
		b := fit.Used(at)
		a.Used = append(a.Used, bandOf([...]units.Share{b.Low90, b.Low50, b.Median, b.High50, b.High90}, func(s units.Share) float64 { return s.In(units.Fraction) }))
	}
	for _, u := range q.Used {
		used, err := share("share used", u)
		if err != nil {
			return nil, err
		}
		w, err := fit.When(used)
		if err != nil {
			return nil, err
		}
		a.When = append(a.When, ForecastWhen{
			bandOf([...]time.Duration{w.Low90, w.Low50, w.Median, w.High50, w.High90}, time.Duration.Hours), fit.Stops(used).In(units.Fraction),
		})
	}
	a.Next = fit.Next(last).Hours()
	if at, stalled := k.f.Stalled(); stalled {
		h := at.Hours()
		a.Stalled = &h
	}
	if at, faster, leaves := k.f.Leaves(); leaves {
		h := at.Hours()
		a.Leaves, a.Faster = &h, faster
	}
	return a, nil
}

func forecastState(request []byte) (any, error) {
	h, err := read[ForecastHandle](request)
	if err != nil {
		return nil, err
	}
	k, err := forecastOf(h.Forecast)
	if err != nil {
		return nil, err
	}
	k.mu.Lock()
	defer k.mu.Unlock()
	text, err := json.Marshal(k.f)
	return json.RawMessage(text), err
}

func forecastClose(request []byte) (any, error) {
	h, err := read[ForecastHandle](request)
	if err != nil {
		return nil, err
	}
	forecasts.mu.Lock()
	defer forecasts.mu.Unlock()
	delete(forecasts.open, h.Forecast)
	return nil, nil
}

func bandOf[T any](v [5]T, in func(T) float64) ForecastBand {
	return ForecastBand{in(v[0]), in(v[1]), in(v[2]), in(v[3]), in(v[4])}
}

// longest is how far a forecast reaches, in hours.
const longest = 90 * 24

func since(hours float64) (time.Duration, error) {
	if !(hours >= 0 && hours <= longest) {
		return 0, &units.RangeError{Func: "forecast", Quantity: "time since the pitch", Value: hours, Unit: "h", Min: 0, Max: longest}
	}
	return time.Duration(hours * float64(time.Hour)), nil
}

func share(what string, x float64) (units.Share, error) {
	if !(x >= 0 && x <= 1) {
		return units.Share{}, &units.RangeError{Func: "forecast", Quantity: what, Value: x, Min: 0, Max: 1}
	}
	return units.Fraction.Of(checked.Number(x)), nil
}
