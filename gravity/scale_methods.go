package gravity

import (
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// A ScaleMethod is one published way from gravity to extract, with what it gives.
type ScaleMethod struct {
	Name     string
	Extract  units.Extract
	Evidence evidence.Evidence
}

// ScaleMethods returns what each published formula makes of a gravity; a formula whose
// range it is outside is left out. The first is [Gravity.Extract], the default: it is the
// density table itself, so that it has no offset at 1.000, goes below it, and agrees with
// the rest of the package. Each gets the specific gravity that it asks for; where a source
// does not say how that is weighed, it is taken in air, at 20/20 °C.
func (g Gravity) ScaleMethods() []ScaleMethod {
	read := func(source, note string) evidence.Evidence {
		return evidence.Evidence{Source: source, Grade: evidence.Read, Note: note}
	}
	all := []ScaleMethod{{"ICUMSA SPS-4", g.Extract(), read("ICUMSA SPS-4 (1994)", "")}}
	air := g.as(At20, InAir)
	for _, m := range []struct {
		name     string
		s        float64
		f        func(float64) (units.Extract, error)
		evidence evidence.Evidence
	}{
		{"NBS Circular 440, cubic", air, rival.BrixNBS, read("Bates et al., NBS Circular 440 (1942) table 114", "a fit to it, to 40 °Bx")},
		{"ASBC table, cubic", air, rival.PlatoASBC, read("ASBC table of extract, Methods of Analysis", "a fit to it, to 20 °P")},
		{"Lincoln, quadratic", air, rival.PlatoLincoln, read("Lincoln, Computerized brew house calculations", "quoted in a general encyclopaedia")},
		{"linear", air, rival.BrixLinear, read("article Brix of a general encyclopaedia", "off by 0.6 °Bx at 1.1")},
		{"260·(1 − 1/S) at 17.5 °C", g.as(At17p5, InAir), rival.PlatoHyperbola,
			read("Kyoto Electronics, manual of the density meter DA-650, p. 69", "off by 0.6 °P")},
	} {
		if e, err := m.f(m.s); err == nil {
			all = append(all, ScaleMethod{m.name, e, m.evidence})
		}
	}
	return all
}
