package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/zymase/units/caution"
)

// A Working is a problem worked out: the steps with their numbers, and the answers
// beside their check values.
type Working struct {
	Steps    []string
	Answers  []Answer
	Cautions []string
}

// An Answer is a number with the value that it is checked against.
type Answer struct {
	Name   string
	Got    float64
	Unit   string
	Places int     // decimals printed
	Check  float64 // printed in the source, or worked by hand
	Within float64 // how far the two may be apart
}

// Holds reports whether the answer is within its tolerance of the check.
func (a Answer) Holds() bool { return a.Got >= a.Check-a.Within && a.Got <= a.Check+a.Within }

// String reads "density: 999.10 kg/m³ (check 999.099, within 0.006)".
func (a Answer) String() string {
	unit := a.Unit
	if unit != "" {
		unit = " " + unit
	}
	return fmt.Sprintf("%s: %.*f%s (check %s, %s)", a.Name, a.Places, a.Got, unit, a.Printed(), a.Bound())
}

// Printed returns the check value with all its digits, and no fewer than the answer has.
func (a Answer) Printed() string {
	s := shortest(a.Check)
	if _, decimals, _ := strings.Cut(s, "."); len(decimals) < a.Places {
		return strconv.FormatFloat(a.Check, 'f', a.Places, 64)
	}
	return s
}

// Bound reads "within 0.006", or "exact".
func (a Answer) Bound() string {
	if a.Within == 0 {
		return "exact"
	}
	return "within " + shortest(a.Within)
}

func shortest(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// Step adds a line to the working.
func (w *Working) Step(format string, args ...any) {
	w.Steps = append(w.Steps, fmt.Sprintf(format, args...))
}

// Answer adds an answer.
func (w *Working) Answer(name string, got float64, places int, unit string, check, within float64) {
	w.Answers = append(w.Answers, Answer{name, got, unit, places, check, within})
}

// Caution adds what whoever uses the answer must know, each text once.
func (w *Working) Caution(texts ...string) {
	for _, text := range texts {
		if !slices.Contains(w.Cautions, text) {
			w.Cautions = append(w.Cautions, text)
		}
	}
}

// Cautioned adds the cautions of a result about gas and pressure.
func (w *Working) Cautioned(of caution.List) {
	for _, c := range of {
		w.Caution(c.Text())
	}
}

// Solve works a problem out. The error is that of the library.
func (p Problem) Solve() (w Working, err error) {
	defer func() {
		if r := recover(); r != nil {
			f, ok := r.(failure)
			if !ok {
				panic(r)
			}
			err = fmt.Errorf("%s: %w", p.Title, f.err)
		}
	}()
	p.Work(&w)
	return w, nil
}

// A failure carries an error of the library out of a working, so that the workings
// read as arithmetic. It never leaves Solve.
type failure struct{ err error }

func must[T any](v T, err error) T {
	if err != nil {
		panic(failure{err})
	}
	return v
}
