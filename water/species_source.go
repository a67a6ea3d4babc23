package water

import (
	"fmt"
	"strconv"
	"strings"
)

// origin says where the constant of a species was read.
type origin uint8

// Origins. Data bases of the U.S. Geological Survey's PHREEQC 3 as of December 2025.
const (
	basis origin = iota
	plummer
	phreeqc
	wateq
	nist46
	critical
	obigt
	thermoddem
	davis
	sit
	vavrusova
	zubiaur
	originCount
)

var originTexts = [originCount]string{
	basis:      "by definition",
	plummer:    "Plummer & Busenberg 1982, as wateq4f.dat prints it (read)",
	phreeqc:    "phreeqc.dat of December 2025 (read)",
	wateq:      "wateq4f.dat, Ball & Nordstrom 1991 (read)",
	nist46:     "NIST Standard Reference Database 46, as minteq.v4.dat prints it (read)",
	critical:   "Stability Constants Database 2.62, as minteq.v4.dat prints it (read)",
	obigt:      "Gibbs energies of the OBIGT data set: Shock 1995, Canovas & Shock 2016 (read)",
	thermoddem: "Thermoddem (read)",
	davis:      "reagent page of a department of enology (read, second hand)",
	sit:        "sit.dat of ThermoChimie, its entry 13GRI/CAM (read)",
	vavrusova:  "Vavrusova, Liang & Skibsted, J. Agric. Food Chem. 62 (2014) 5675 (read on a page that quotes it)",
	zubiaur:    "Zubiaur et al., Talanta 45 (1998) 1007, gluconic acid and its lactone (abstract, read)",
}

// Describe returns the row of a species in a line: what it is made of, its decimal
// logarithm of K at 25 and 80 °C (mol/kg of water, at infinite dilution), the law of its
// activity coefficient, and where the constant was read: the table behind every pH.
// "CaHCO3+ = Ca+2 + CO3-2 + H+; log K 11.435 at 25 °C, 11.401 at 80 °C; ...".
func (s Species) Describe() string {
	if s < 0 || s >= speciesCount {
		return s.String()
	}
	r := &speciesTable[s]
	var parts []string
	for _, c := range [...]component{r.metal, r.anion} {
		if c != nothing && !r.isPart() {
			parts = append(parts, speciesTable[freeOf(c)].formula)
		}
	}
	switch {
	case r.protons < 0:
		parts = append(parts, "H2O - H+")
	case r.protons == 1:
		parts = append(parts, "H+")
	case r.protons > 1:
		parts = append(parts, strconv.Itoa(r.protons)+" H+")
	}
	text := r.formula
	if r.from != basis {
		mild, hot := warm(25), warm(80)
		text += fmt.Sprintf(" = %s; log K %.3f at 25 °C, %.3f at 80 °C", strings.Join(parts, " + "), r.k.log10(&mild), r.k.log10(&hot))
	}
	return text + "; activity by " + r.activity.describe() + "; " + originTexts[r.from]
}

// freeOf returns the bare species of a component.
func freeOf(c component) Species {
	for sp := range speciesTable {
		if r := &speciesTable[sp]; r.isPart() && r.metal+r.anion == c {
			return Species(sp)
		}
	}
	return 0
}

func (a activity) describe() string {
	switch {
	case a.size == uncharged:
		return fmt.Sprintf("%g kg/mol", a.b)
	case a.size == inDavies:
		return "Davies"
	}
	return fmt.Sprintf("%g Å and %g kg/mol", a.size, a.b)
}
