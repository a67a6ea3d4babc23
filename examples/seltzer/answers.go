package main

import (
	"example.org/zymase/examples/seltzer/plan"
)

// What a page asks of the library, and what it is answered: all of it text and numbers that
// go through JSON, and all of it what the command line prints.
type (
	// An offer is what would do instead.
	offer struct {
		Text string   `json:"text"`
		Set  []change `json:"set"`
	}
	change struct {
		Path  string `json:"path"`
		Value any    `json:"value"` // nil takes it out
	}
	// A choice is something to look at: its path in the plan's JSON, and its name.
	choice struct {
		Path  string `json:"path"`
		Label string `json:"label"`
	}
)

// undated is a request without its days and its room, whose forecast takes most of the time
// of a plan.
func undated(req plan.Request) plan.Request {
	req.Schedule, req.Room = nil, nil
	return req
}

// A picture is a curve drawn.
type picture struct {
	Title string `json:"title"`
	SVG   string `json:"svg"`
	Read  bool   `json:"read"` // it shows the readings
}
