package main

import (
	"encoding/json"
	"io"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/internal/published"
)

// A Report is every table that was checked, with totals.
type Report struct {
	Version   int      `json:"version"` // of this form
	Tables    []Result `json:"tables"`
	Totals    []Total  `json:"totals"`
	Failed    int      `json:"failed"`              // rows
	Unreached []string `json:"unreached,omitempty"` // functions that no row of any table reaches
	Unread    []string `json:"unread,omitempty"`    // functions that rows reach, but none that was read in its source
	Functions int      `json:"functions,omitempty"` // in the catalogue
}

// A Total sums the tables of one status.
type Total struct {
	Status  published.Status `json:"status"`
	Tables  int              `json:"tables"`
	Rows    int              `json:"rows"`
	Again   int              `json:"again"` // the same printed rows against another function, not in Rows
	Sources int              `json:"sources"`
	Failed  int              `json:"failed"`
}

// total fills in the sums; whole tells that every table was checked, so that
// functions without one can be named.
func (r *Report) total(whole bool) {
	r.Version = 1
	reached, read := map[string]bool{}, map[string]bool{}
	for _, status := range published.Statuses() {
		sum := Total{Status: status}
		sources := map[string]bool{}
		for _, t := range r.Tables {
			if t.Status != status {
				continue
			}
			sum.Tables++
			if t.Again == "" {
				sum.Rows += t.Count
			} else {
				sum.Again += t.Count
			}
			sum.Failed += t.Failed
			sources[t.Source] = true
			reached[t.Function] = true
			if status == published.Read {
				read[t.Function] = true
			}
		}
		sum.Sources = len(sources)
		r.Failed += sum.Failed
		if sum.Tables > 0 {
			r.Totals = append(r.Totals, sum)
		}
	}
	if !whole {
		return
	}
	for _, f := range catalogue.All() {
		r.Functions++
		if !reached[f.Name] {
			r.Unreached = append(r.Unreached, f.Name)
		} else if !read[f.Name] {
			r.Unread = append(r.Unread, f.Name)
		}
	}
}

func (r *Report) writeJSON(w io.Writer) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", " ")
	return e.Encode(r)
}
