package border

import (
	"bytes"
	"encoding/json"
	"fmt"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A Topic is what [Ask] can be asked. Its number crosses, so the order is a contract.
type Topic int

// Topics, with what they take and give as JSON.
const (
	Plan          Topic = iota // a request, as package plan has it; the plan
	Walk                       // a [WalkRequest]; a [WalkAnswer]
	ForecastOpen               // a [kinetics.Forecast]: the start, temperatures, readings so far; a [ForecastHandle]
	ForecastAdd                // a [ForecastReading]; null
	ForecastAsk                // a [ForecastQuestion]; a [ForecastAnswer]
	ForecastState              // a [ForecastHandle]; what ForecastOpen takes
	ForecastClose              // a [ForecastHandle]; null
	topicCount
)

var topics = [topicCount]func([]byte) (any, error){
	Plan: planned, Walk: walked,
	ForecastOpen: forecastOpen, ForecastAdd: forecastAdd, ForecastAsk: forecastAsk, ForecastState: forecastState, ForecastClose: forecastClose,
}

// Ask answers JSON with JSON.
func Ask(topic Topic, request []byte) (answer []byte, err error) {
	defer guard(&err)
	if topic < 0 || topic >= topicCount {
		return nil, &units.NameError{Func: "border.Ask", What: "topic", Name: fmt.Sprint(int(topic))}
	}
	v, err := topics[topic](request)
	if err != nil {
		return nil, Tell(err)
	}
	return json.Marshal(v)
}

// read reads a request and refuses what it does not know, so that no field is passed over.
func read[T any](request []byte) (v T, err error) {
	d := json.NewDecoder(bytes.NewReader(request))
	d.DisallowUnknownFields()
	if err = d.Decode(&v); err != nil {
		if _, ok := err.(*json.SyntaxError); ok {
			err = &Refusal{Kind: Text, Message: "this is not JSON: " + err.Error()}
		}
	}
	return v, err
}

func planned(request []byte) (any, error) {
	req, err := plan.ReadRequest(request)
	if err != nil {
		return nil, err
	}
	return plan.Make(req)
}
