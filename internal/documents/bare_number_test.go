package documents

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// What may be a float64 in the face of the library, by reason: numbers that have no unit, or that are in the unit
// beside them. A name is that of a function, method or field as api.txt has it, or of the argument or result by that
// name; one that begins with a dot stands for all by that name.
var bare = map[string][]string{
	"pH": {".ph", ".PH", "DrinkingLimit.LeastPH", "DrinkingLimit.MostPH", "Report.Endpoint", "Titration.End", "Part.Low", "Part.High",
		"Prediction.Figure", "Brought.Band", "Drink.Titrate.end", "Estimate.Low", "Estimate.High", "Correction.Now", "Correction.End",
		"FloorPH", "PitchPH", "Tank.BufferFor.floor", "Tank.Cautions.start",
		"Tank.Cautions.lowest", "Tank.Correct.measured", "Tank.Correct.target", "Acidify.measured", "Acidify.target"},
	"pK":               {"PKShift", "SulfurDioxidePK"},
	"saturation index": {"Equilibrium.SaturationIndex"},
	"specific gravity": {"FromSG.sg", "FromReference.sg", "Gravity.SG", "Gravity.As", "Solution.SpecificGravity"},
	"hydrometer degree": {"FromBaume.degrees", "Gravity.Points", "Gravity.Oechsle", "Gravity.Baume", "Gravity.BaumeUS", "Gravity.SakeMeter",
		"Hydrometer.Reading", "Hydrometer.Correct.reading"},
	"refractive index":                    {"BrixFromIndex.n", "RefractiveIndex", "Solution.RefractiveIndex"},
	"factor of a wort on a refractometer": {"FromApparentAndBrix.factor", "FromOriginalAndBrix.factor"},
	"coverage factor k, correlation, deviations in it, capability": {"Measured.Expanded.k", "Measured.Text.k", "Solution.AtWorst.k", "Correlation.R",
		"CrossCheck.deviations", "Measured.Capability", "StrengthByHydrometer.correlation"},
	"logarithm of a likelihood": {"Fit.Evidence"},
	"number in the unit given beside it": {"Unit.Try.x", "Quantity.In", "Input.value", "Input.u", "RangeError.Value",
		"RangeError.Min", "RangeError.Max"},
	"number of a report, in its form": {"Report.Alkalinity", "ReportLine.Value"},
	"ratio of two of one kind, or a factor": {"Ratio", "TryTimes.k", "Solution.Times.k", "SulfateToChloride.low", "SulfateToChloride.high",
		"Sweetener.Sweetness"},
	"count": {"RoundDrinks.n", "RoundDrinks", "StandardDrink.Count", "Pitch.Packs", "PitchCheck.Doublings",
		"Flush.volumes"},
	"Reynolds number":            {"LineState.Reynolds"},
	"velocity heads":             {"Line.Losses"},
	"weight in a sum of squares": {"Target.Weight"},
	"price of a bound: (mg/L)² by the unit in its Unit": {"Binding.Cost"},
}

// No physical quantity is a bare number: what is a float64 in the library's face stands in bare, and all of bare is there.
func TestNoBareQuantity(t *testing.T) {
	text, err := os.ReadFile("testdata/api.txt")
	if err != nil {
		t.Fatal(err)
	}
	why, used := map[string]string{}, map[string]bool{}
	for reason, names := range bare {
		for _, name := range names {
			if why[name] != "" {
				t.Errorf("%s stands twice", name)
			}
			why[name] = reason
		}
	}
	found := floats(strings.Split(string(text), "\n"))
	if len(found) < 50 {
		t.Errorf("%d numbers found: api.txt is not read as it is written", len(found))
	}
	for _, f := range found {
		name := f[strings.Index(f, ": ")+2:]
		if why[name] == "" {
			name = "." + name[strings.LastIndex(name, ".")+1:]
		}
		if why[name] == "" {
			t.Errorf("%s is a float64: make it a quantity of units, or give the reason here", f)
		}
		used[name] = true
	}
	for name := range why {
		if !used[name] {
			t.Errorf("no float64 %s in api.txt", name)
		}
	}
}

// What of a line is a float64, bare or in brackets.
var (
	item  = regexp.MustCompile(`^((?:units|gravity|water|carbonation|nutrient)[\w/]*): (?:func |type )?(?:\(\*?(\w+)[^)]*\)\.)?([\w.]+)(.*)`)
	float = regexp.MustCompile(`(\w*) ?[\w.*\[\]]*\bfloat64\b`)
)

// floats names each float64 in the lines of the library's packages: "water: Profile.WithPH.ph".
func floats(lines []string) (names []string) {
	for _, line := range lines {
		part := item.FindStringSubmatch(line)
		if part == nil {
			continue
		}
		name := part[3]
		if part[2] != "" {
			name = part[2] + "." + name
		}
		for _, of := range float.FindAllStringSubmatch(part[4], -1) {
			full := name
			if of[1] != "" && of[1] != "evidence" {
				full += "." + of[1]
			}
			names = append(names, part[1]+": "+full)
		}
	}
	return names
}

// The lines as api.txt writes them.
func TestFloatsAreFound(t *testing.T) {
	for line, want := range map[string][]string{
		"water: Miss.Off float64":                                                         {"water: Miss.Off"},
		"water/mash: Malt.PH evidence.Figure[float64]":                                    {"water/mash: Malt.PH"},
		"gravity: func FromSG(sg float64) (Gravity, error)":                               {"gravity: FromSG.sg"},
		"gravity: func (Gravity).As(r Reference, a Air) (float64, error)":                 {"gravity: Gravity.As"},
		"units: func (Measured[D, E]).Text(u Unit[D, E], places int, k float64) string":   {"units: Measured.Text.k"},
		"water: func (*Series).At(p *float64, all ...float64, t map[string]float64) bool": {"water: Series.At.p", "water: Series.At.all", "water: Series.At.t"},
		"water: func (Profile).PH() (ph float64, known bool)":                             {"water: Profile.PH.ph"},
		"water/must: type Points [][2]float64":                                            {"water/must: Points"},
		"examples/seltzer/plan: Acid.PH float64":                                          nil,
		"water: Report.Hardness units.CalciumCarbonate":                                   nil,
	} {
		if got := floats([]string{line}); !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}
