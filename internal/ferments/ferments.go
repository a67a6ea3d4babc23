// Package ferments holds measured ferments, for scoring a forecast: what was used of the
// sugar against time, and what was known at the start.
package ferments

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"
)

// Series is one measured ferment.
type Series struct {
	Name, Cluster string // replicates share a cluster
	Source        string
	Celsius       float64
	SugarGramPerLitre,
	NitrogenMilligramPerLitre,
	YeastGramPerLitre float64
	Assumed string // which of these the source does not give
	Hours   []float64
	Used    []float64 // share of the fermentable sugar
}

//go:embed series.csv
var measured string

// A cell of 4e-11 g is Coleman's own figure; a gram of CO2 is 1/0.4716 g of hexose, at
// 96.5 % of the stoichiometric yield (fermentation of European wine law, as in
// nutrient's balance).
const (
	gramPerCell  = 4e-11
	gasPerSugar  = 0.4716
	mustSugar    = 200.0
	worthOfGas   = mustSugar * gasPerSugar
	wortEnd      = 1.0064 // the lowest gravity that the same wort reached, at 30 °C
	wortSugar    = 82.24
	wortNitrogen = 200.0
)

// All returns every series, each with the source's figures turned into a share used.
func All() ([]Series, error) { return read(measured) }

func read(table string) ([]Series, error) {
	r := csv.NewReader(strings.NewReader(table))
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		return nil, err
	}
	var all []Series
	var first float64 // of the series
	for _, row := range rows[1:] {
		hours, err := strconv.ParseFloat(row[1], 64)
		if err != nil {
			return nil, err
		}
		value, err := strconv.ParseFloat(row[2], 64)
		if err != nil {
			return nil, err
		}
		if len(all) == 0 || all[len(all)-1].Name != row[0] {
			s, err := known(row[0])
			if err != nil {
				return nil, err
			}
			all, first = append(all, s), value
		}
		s := &all[len(all)-1]
		switch {
		case strings.HasPrefix(s.Name, "foster"):
			value = (first - value) / (first - wortEnd)
		case strings.HasPrefix(s.Name, "montpellier"):
			value /= worthOfGas
		}
		s.Hours, s.Used = append(s.Hours, hours), append(s.Used, value)
	}
	return all, nil
}

// known is what the source says of the start of a series.
func known(name string) (Series, error) {
	s := Series{Name: name, Cluster: name}
	parts := strings.Split(name, "_")
	switch {
	case parts[0] == "foster2022":
		s.Source = "Foster et al. 2022, Front. Microbiol. 13:747546, supplementary fig. S1"
		s.Cluster = parts[0] + "_" + parts[2]
		t, err := strconv.ParseFloat(strings.TrimSuffix(parts[2], "C"), 64)
		if err != nil {
			return s, err
		}
		s.Celsius, s.YeastGramPerLitre = t, 1.2e10*gramPerCell
		s.SugarGramPerLitre, s.NitrogenMilligramPerLitre = wortSugar, wortNitrogen
		s.Assumed = "sugar of an all-malt wort of 12 °P, usual nitrogen of wort; the end from the same wort at 30 °C"
	case parts[0] == "tyrell2013":
		s.Source = "Tyrell et al. 2013, BrewingScience 66:75, fig. 4"
		s.Celsius, s.YeastGramPerLitre = 15, 9.96e9*gramPerCell
		s.SugarGramPerLitre, s.NitrogenMilligramPerLitre = wortSugar, wortNitrogen
		s.Assumed = "usual nitrogen of wort; 15 °C is the filling temperature"
	case parts[0] == "montpellier2023":
		s.Source = "Leale et al. 2023, synthetic must MS425, weight lost"
		s.Cluster = parts[0] + "_" + parts[1]
		s.Celsius, s.YeastGramPerLitre = 24, 1e9*gramPerCell
		s.SugarGramPerLitre, s.NitrogenMilligramPerLitre = mustSugar, 425
		s.Assumed = "a pitch of a million cells a millilitre; the gas that the sugar gives"
	default:
		return s, fmt.Errorf("ferments: no start is known for %s", name)
	}
	return s, nil
}
