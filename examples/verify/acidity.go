package main

import (
	"cmp"
	"fmt"
	"io"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/published"
	"example.org/zymase/units"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

// statedBand is what package must says of a pH from the acidity alone.
const statedBand = 0.3

// An acidityScore is how near the pH of a set of juices or wines comes to the measured one.
type acidityScore struct {
	Set     string
	Rows    int
	Inside  int // within what is stated
	Bias    float64
	RMS     float64
	squares float64
}

func (s *acidityScore) add(off float64) {
	s.Rows++
	s.Bias += off
	s.squares += off * off
	if math.Abs(off) <= statedBand {
		s.Inside++
	}
}

func (s *acidityScore) close() acidityScore {
	s.Bias /= float64(s.Rows)
	s.RMS = math.Sqrt(s.squares / float64(s.Rows))
	return *s
}

// numbers reads cells of a row, and keeps the first error.
type numbers struct {
	row published.Row
	err error
}

func (n *numbers) of(column string) float64 {
	v, err := n.row.Number(column)
	n.err = cmp.Or(n.err, err)
	return v
}

// sulfates are what is taken of a wine whose analysis lacks sulfate, mg/L.
var sulfates = [...]struct {
	name string
	mg   float64
}{{"none", 0}, {"usual, 300 mg/L", 300}, {"high, 550 mg/L", 550}}

// scoreAcidity scores the pH of juices by their acidity alone, and of wines by their analysis without sulfate.
func scoreAcidity() ([]acidityScore, error) {
	var out []acidityScore
	for _, set := range [...]struct {
		name, table string
		from        must.Origin
		by          water.Titration
	}{
		{"cider apples, 2021", "juice_apple_2021", must.FromApple, water.TitrationCiderUS},
		{"musts, rootstock trial", "juice_grape_rootstock", must.FromGrape, water.TitrationUS},
		{"musts, ripening", "juice_grape_ripening", must.FromGrape, water.TitrationUS},
	} {
		t, err := published.Find(set.table)
		if err != nil {
			return nil, err
		}
		s := acidityScore{Set: set.name}
		for row := range t.Rows() {
			n := numbers{row: row}
			acidity, ph := n.of("acidity"), n.of("ph")
			if n.err != nil {
				return nil, n.err
			}
			e, err := set.from.FromAcidity(units.GramPerLitre.Of(checked.Number(acidity)), set.by)
			if err != nil {
				return nil, err
			}
			s.add(e.PH - ph)
		}
		out = append(out, s.close())
	}
	wines, err := published.Find("wine_piedmont")
	if err != nil {
		return nil, err
	}
	for _, sulfate := range sulfates {
		s := acidityScore{Set: "89 wines, sulfate " + sulfate.name}
		for row := range wines.Rows() {
			off, err := wineOff(row, sulfate.mg)
			if err != nil {
				return nil, err
			}
			s.add(off)
		}
		out = append(out, s.close())
	}
	return out, nil
}

// wineOff is how far the pH of a wine by its analysis is from the measured one.
func wineOff(row published.Row, sulfate float64) (float64, error) {
	n := numbers{row: row}
	mg := func(i water.Ion, v float64) water.Content {
		return i.At(units.MilligramPerLitre.Of(checked.Number(v)))
	}
	acid := func(a water.Acid, gram float64) water.Content {
		return mg(a.Ion(), 1000*gram*a.Ion().MolarMass()/a.MolarMass())
	}
	a := must.Analysis{
		Ions: []water.Content{
			acid(water.TartaricAcid, n.of("tartaric")), acid(water.MalicAcid, n.of("malic")),
			mg(water.Potassium, n.of("potassium")), mg(water.Calcium, n.of("calcium")), mg(water.Magnesium, n.of("magnesium")),
			mg(water.Phosphate, n.of("phosphate")), mg(water.Chloride, n.of("chloride")), mg(water.Sulfate, sulfate),
		},
		Acidity:   units.MilligramPerLitre.Of(checked.Number(n.of("acidity") * water.HydrochloricAcid.MolarMass())),
		Titration: water.Titration{End: water.TitrationOIV.End, As: water.HydrochloricAcid}, Temperature: units.Celsius.Of(20),
		Strength: units.PercentVolume.Of(checked.Number(n.of("strength"))),
	}
	measured := n.of("ph")
	if n.err != nil {
		return 0, n.err
	}
	d, err := a.Drink(must.AcidShares{water.Lactate.At(units.MilligramPerLitre.Of(1))})
	return d.PH() - measured, err
}

// writeAcidity prints the scores.
func writeAcidity(w io.Writer) error {
	scores, err := scoreAcidity()
	if err != nil {
		return err
	}
	fmt.Fprintln(w, "pH of juices from their titratable acidity alone, and of wines by an analysis that lacks sulfate, against the measured pH")
	fmt.Fprintf(w, "\n%-34s %5s  %-14s %6s  %5s\n", "", "rows", "within 0.3", "bias", "rms")
	for _, s := range scores {
		fmt.Fprintf(w, "%-34s %5d  %3d (%3.0f %%)    %+6.2f  %5.2f\n", s.Set, s.Rows, s.Inside, 100*float64(s.Inside)/float64(s.Rows), s.Bias, s.RMS)
	}
	_, err = fmt.Fprintln(w, "\nThe rows are half of each set; the other half was not looked at. One content of strong ions for each fruit\nis fitted to these rows; nothing is fitted to the wines.")
	return err
}
