package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// A StrengthMethod is one published way from original and apparent extract to real
// extract and strength, with what it gives.
type StrengthMethod struct {
	Name        string
	RealExtract units.Extract
	ByMass      units.StrengthByMass
	Evidence    evidence.Evidence
}

// StrengthMethods returns what each published method makes of original and apparent
// extract of a malt beer; a method whose range it is outside is left out. The first is
// [FromOriginalAndApparent] with [BallingYield], the default, since it rests on densities
// and a balance and not on one set of beers, and is the only one that holds for a sugar
// wash. How sure a strength is shows in how far the methods lie apart. Errors are those of
// the default.
func StrengthMethods(original, apparent units.Extract) ([]StrengthMethod, error) {
	f, err := FromOriginalAndApparent(original, apparent, BallingYield())
	if err != nil {
		return nil, limit.Named("gravity.StrengthMethods", err)
	}
	computed := evidence.Evidence{Source: sourceState, Grade: evidence.Computed}
	all := []StrengthMethod{{"densities and Balling's balance", f.RealExtract(), f.ByMass(), computed}}
	for _, m := range []struct {
		name     string
		f        func(original, apparent units.Extract) (rival.Attenuated, error)
		evidence evidence.Evidence
	}{
		{"Balling's tables", rival.AttenuatedBallingTables,
			evidence.Evidence{Source: "C. J. N. Balling, Die Gährungschemie (1865), tables A and B", Grade: evidence.Read, Note: "wort of 9 to 16 °P"}},
		{"handbook constant 0.8192", rival.AttenuatedHandbook,
			evidence.Evidence{Source: "de Clerck and later handbooks", Grade: evidence.Recalled}},
		{"MEBAK constant 0.81", rival.AttenuatedMEBAK,
			evidence.Evidence{Source: "MEBAK B-590.80.530", Grade: evidence.Read}},
		{"Cutaia et al. 2009", rival.AttenuatedCutaia,
			evidence.Evidence{Source: "Cutaia, Reid & Speers, J. Inst. Brew. 115 (2009) 318, table VI", Grade: evidence.Read, Note: "532 brews of 9.4 to 18.1 °P"}},
		{"Pawlowski/Doemens", rival.AttenuatedDoemens,
			evidence.Evidence{Source: "Pawlowski/Doemens in Cutaia et al. 2009, table VI", Grade: evidence.Read}},
	} {
		if a, err := m.f(original, apparent); err == nil {
			all = append(all, StrengthMethod{m.name, a.RealExtract, a.ByMass, m.evidence})
		}
	}
	return all, nil
}
