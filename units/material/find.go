package material

import (
	"slices"
	"strings"

	"example.org/zymase/units"
)

// All returns every material known by name: the salts, the sugars, then the others.
func All() []Material {
	var all []Material
	for _, f := range slices.Concat(salts, sugars, others) {
		all = append(all, Material{f})
	}
	return all
}

// Find returns the known material of a name or a formula: "gypsum", "Epsom salts", "DAP",
// "CaCl2.2H2O", "CaCl2·2H2O", "corn sugar". Capitals, spaces around it and sulph for sulf
// do not matter. A name that two materials share is refused: "calcium chloride" is sold
// with and without crystal water, which differ by a third.
//
// The error is a [*units.NameError] whose choices are the names that come near.
func Find(name string) (Material, error) { return find("material.Find", name) }

// FindAmong returns the material of a name among some: those that ferment, that feed yeast,
// that buffer, the salts for a water. It reads the names that [Find] does; the choices of its
// error are those of the list.
func FindAmong(name string, list ...Material) (Material, error) {
	const fn = "material.FindAmong"
	m, err := find(fn, name)
	if err == nil && slices.Contains(list, m) {
		return m, nil
	}
	e := &units.NameError{Func: fn, What: "material", Name: name}
	for _, one := range list {
		e.Choices = append(e.Choices, one.Name())
	}
	if near, ok := err.(*units.NameError); ok {
		inList := slices.DeleteFunc(slices.Clone(near.Choices), func(c string) bool { return !slices.Contains(e.Choices, c) })
		if len(inList) > 0 {
			e.Choices = inList
		}
	}
	return Material{}, e
}

func find(fn, name string) (Material, error) {
	if m, ok := byName[name]; ok { // as it is looked up
		return m, nil
	}
	k := key(name)
	if m, ok := byName[k]; ok && len(name) <= longestName {
		return m, nil
	}
	choices, ok := shared[k]
	if !ok {
		choices = near(k)
	}
	return Material{}, &units.NameError{Func: fn, What: "material", Name: name, Choices: choices}
}

// shared are names that say too little.
var shared = map[string][]string{
	"calcium chloride":  {"calcium chloride dihydrate", "calcium chloride anhydrous"},
	"magnesium sulfate": {"Epsom salt"},
	"zinc sulfate":      {"zinc sulfate heptahydrate", "zinc sulfate monohydrate"},
	"dextrose":          {"dextrose monohydrate", "dextrose anhydrous"},
	"glucose":           {"dextrose monohydrate", "dextrose anhydrous"},
	"c6h12o6":           {"dextrose anhydrous", "fructose"},
	"malt extract":      {"dry malt extract", "liquid malt extract"},
	"metabisulfite":     {"potassium metabisulfite", "sodium metabisulfite"},
	// Cell walls bind what is poisonous to yeast but hardly feed it.
	"yeast hulls":      {"autolysed yeast"},
	"yeast ghosts":     {"autolysed yeast"},
	"yeast cell walls": {"autolysed yeast"},
}

// byName has every name and formula, by its key.
var byName = func() map[string]Material {
	m := make(map[string]Material)
	for _, one := range All() {
		f := one.f
		m[key(f.name)] = one
		for _, name := range f.also {
			m[key(name)] = one
		}
		if k := key(f.formula); k != "" && shared[k] == nil {
			m[k] = one
		}
	}
	return m
}()

// key is a name as it is looked up.
func key(name string) string { return spelling.Replace(strings.ToLower(strings.TrimSpace(name))) }

var spelling = strings.NewReplacer("sulph", "sulf", "·", ".")

// near lists the names that have a word in common with a text or differ by little from it,
// in the order of All.
func near(k string) []string {
	if len(k) > longestName {
		return nil
	}
	var out []string
	for _, one := range All() {
		for _, name := range append([]string{one.f.name}, one.f.also...) {
			if alike(k, key(name)) && !slices.Contains(out, one.f.name) {
				out = append(out, one.f.name)
			}
		}
	}
	return out
}

func alike(a, b string) bool {
	if apart(a, b) <= min(len(a), len(b))/4 {
		return true
	}
	for word := range strings.FieldsSeq(a) {
		if len(word) > 3 && slices.Contains(strings.Fields(b), word) {
			return true
		}
	}
	return false
}

// apart is by how many letters two texts differ (V. I. Levenshtein, 1966).
func apart(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		before := row[0]
		row[0] = i + 1
		for j := range len(b) {
			change := before
			if a[i] != b[j] {
				change++
			}
			before = row[j+1]
			row[j+1] = min(change, row[j]+1, before+1)
		}
	}
	return row[len(b)]
}
