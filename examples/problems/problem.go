package main

import "iter"

// A Chapter is a step of the course.
type Chapter struct {
	Title    string
	Intro    string // what the chapter teaches, in a sentence or two
	Problems []Problem
}

// A Problem is one worked problem.
//
// To add one: write a function that returns it into the file of its chapter, list it in
// the chapter, and give it an Example of the same name in the twin test. The working
// calls the library, and holds a formula of its own only where the library has none; the
// check value does not come from the library.
type Problem struct {
	Title  string
	Ask    string
	Given  []string
	Source Source
	Work   func(w *Working)
}

// A Source is where the check values of a problem come from.
type Source struct {
	Status Status
	Text   string // author, title, year, table; or the arithmetic
}

// Status says how well a check value is known.
type Status int

const (
	Read       Status = iota // a published worked example or table, seen
	Recalled                 // a published figure given from memory
	Practice                 // what the trade does; no source is known
	Computed                 // worked out with another program from read figures
	ByHand                   // arithmetic that anyone can follow
	secondHand               // read in another work, which does not print its name or where its rows come from, or in an excerpt alone: no star
)

// String returns the words that are printed.
func (s Status) String() string {
	switch s {
	case Read:
		return "published, read"
	case Recalled:
		return "published, recalled from memory"
	case Practice:
		return "common practice, no source"
	case Computed:
		return "computed with another program"
	case secondHand:
		return "published, read at second hand"
	default:
		return "by hand"
	}
}

// numbered walks the problems through all chapters, from 1.
func numbered(chapters []Chapter) iter.Seq2[int, Problem] {
	return func(yield func(int, Problem) bool) {
		n := 0
		for _, c := range chapters {
			for _, p := range c.Problems {
				n++
				if !yield(n, p) {
					return
				}
			}
		}
	}
}

func count(chapters []Chapter) int {
	n := 0
	for _, c := range chapters {
		n += len(c.Problems)
	}
	return n
}

// published returns how many problems rest on a printed example or table that was
// read; those recalled from memory do not count.
func published(chapters []Chapter) int {
	n := 0
	for _, p := range numbered(chapters) {
		if p.Source.Status == Read {
			n++
		}
	}
	return n
}
