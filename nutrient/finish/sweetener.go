package finish

import (
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// Sweetener is something that sweetens; most of them survive yeast.
type Sweetener struct {
	name      string
	e         string // E number, or ""
	low, high float64
	survives  bool // yeast leaves it
	substance law.Substance
	intake    intake
	note      string
}

// intake is the acceptable daily intake in mg for each kg of body, by who sets it; 0
// where none is set.
type intake struct{ fda, efsa, jecfa float64 }

const (
	appl   = "Appl. Microbiol. Biotechnol. 102 (2018) 587 table 1"
	health = "Public Health Nutr. 26 (2022) 952 table 2"
	bmc    = "BMC Medicine 9 (2011) 123 table 1"
	nutr   = "Nutrients 13 (2021) 279 table 2"
)

// sweetenerTable holds relative sweetness by mass, sucrose 1, as the reviews print
// it: BMC Medicine 9 (2011) 123 table 1; Public Health Nutr. 26 (2022) 952 table 2;
// Appl. Microbiol. Biotechnol. 102 (2018) 587 table 1; Nutrients 13 (2021) 279 table 2.
// Intakes: Cochrane review CD012885 (FDA 2015, SCF/EFSA, JECFA 2010).
var sweetenerTable = []Sweetener{
	{name: "sucrose", low: 1, high: 1, note: "reference"},
	{name: "glucose", low: 0.5, high: 1, note: bmc + "; " + health},
	{name: "fructose", low: 1, high: 2, note: bmc + "; " + health},
	{name: "invert sugar", low: 1, high: 1, note: health},
	{name: "honey", low: 1, high: 1.5, note: bmc + "; " + health},
	{name: "maltose", low: 0.5, high: 0.5, note: bmc},
	{name: "trehalose", low: 0.45, high: 0.45, note: bmc},
	{name: "isomaltulose", low: 0.4, high: 0.5, note: health + "; " + bmc + "; ferments slowly"},
	{name: "lactose", low: 0.2, high: 0.2, survives: true, note: health},
	{name: "maltodextrin", low: 0.2, high: 0.2, survives: true, note: health},
	{name: "erythritol", e: "E 968", low: 0.6, high: 0.8, survives: true, note: appl + "; " + health + "; " + nutr},
	{name: "xylitol", e: "E 967", low: 1, high: 1, survives: true, note: health + "; " + appl},
	{name: "sorbitol", e: "E 420", low: 0.5, high: 0.7, survives: true, note: appl + "; " + health},
	{name: "mannitol", e: "E 421", low: 0.5, high: 0.7, survives: true, note: appl + "; " + health},
	{name: "maltitol", e: "E 965", low: 0.75, high: 0.9, survives: true, note: health + "; " + nutr},
	{name: "isomalt", e: "E 953", low: 0.45, high: 0.65, survives: true, note: nutr},
	{name: "lactitol", e: "E 966", low: 0.3, high: 0.4, survives: true, note: appl},
	{name: "acesulfame K", e: "E 950", low: 200, high: 200, survives: true, substance: listed("acesulfame K"), intake: intake{15, 9, 15},
		note: health + "; " + nutr},
	{name: "aspartame", e: "E 951", low: 150, high: 200, survives: true, substance: listed("aspartame"), intake: intake{50, 40, 40},
		note: health + "; falls apart above pH 4.5 and when hot; harms people with phenylketonuria"},
	{name: "cyclamate", e: "E 952", low: 30, high: 50, survives: true, substance: listed("cyclamate"), intake: intake{0, 7, 11},
		note: health + "; not permitted in the US"},
	{name: "saccharin", e: "E 954", low: 200, high: 700, survives: true, substance: listed("saccharin"), intake: intake{15, 5, 5}, note: nutr + "; " + health},
	{name: "sucralose", e: "E 955", low: 550, high: 750, survives: true, substance: listed("sucralose"), intake: intake{5, 15, 15}, note: health},
	{name: "steviol glycosides", e: "E 960", low: 200, high: 400, survives: true, substance: listed("steviol glycosides as steviol"),
		intake: intake{4, 4, 4}, note: nutr + "; " + health + "; limits and intakes count steviol"},
	{name: "neotame", e: "E 961", low: 7000, high: 13000, survives: true, substance: listed("neotame"), intake: intake{0.3, 2, 2}, note: nutr},
	{name: "advantame", e: "E 969", low: 20000, high: 20000, survives: true, substance: listed("advantame"), intake: intake{32.8, 5, 5}, note: nutr},
}

// listed is a substance by its name in the lists of additions; a test reads them all.
func listed(name string) law.Substance {
	s, err := law.ParseSubstance(name)
	if err != nil { // not reached: the names stand in this package
		panic(err)
	}
	return s
}

// Sweeteners returns those that are known, sugars first.
func Sweeteners() []Sweetener { return append([]Sweetener(nil), sweetenerTable...) }

// ParseSweetener returns the sweetener of that name or E number. The error is a
// [*units.ParseError] that lists the names.
func ParseSweetener(text string) (Sweetener, error) {
	name := strings.TrimSpace(text)
	var names []string
	for _, s := range sweetenerTable {
		if strings.EqualFold(s.name, name) || s.e != "" && strings.EqualFold(s.e, name) {
			return s, nil
		}
		names = append(names, s.name)
	}
	return Sweetener{}, limit.Unknown(text, "sweetener", strings.Join(names, ", "))
}

// Name returns the common name.
func (s Sweetener) Name() string { return s.name }

// String is [Sweetener.Name].
func (s Sweetener) String() string { return s.name }

// MarshalText is [Sweetener.Name]; the zero Sweetener is an error as of [ParseSweetener].
func (s Sweetener) MarshalText() ([]byte, error) {
	_, err := ParseSweetener(s.name)
	return []byte(s.name), err
}

// UnmarshalText is [ParseSweetener].
func (s *Sweetener) UnmarshalText(text []byte) error {
	found, err := ParseSweetener(string(text))
	if err == nil {
		*s = found
	}
	return err
}

// ENumber returns the European number, "E 955", or "".
func (s Sweetener) ENumber() string { return s.e }

// Survives reports whether brewing yeast leaves it. A sweetener that does not survive
// ferments in the pack and needs the drink to be stabilised.
func (s Sweetener) Survives() bool { return s.survives }

// Sweetness returns how sweet it is by mass against sucrose, the middle of its spread
// being the value taken. High-intensity sweeteners lose sweetness as there is more of
// them: the figures hold against 2 to 10 % sucrose.
//
//   - Source: BMC Medicine 9 (2011) 123; Public Health Nutr. 26 (2022) 952; Appl.
//     Microbiol. Biotechnol. 102 (2018) 587; Nutrients 13 (2021) 279 (read).
func (s Sweetener) Sweetness() evidence.Figure[float64] {
	return evidence.Figure[float64]{Value: (s.low + s.high) / 2, Low: s.low, High: s.high, Evidence: evidence.Evidence{Source: s.note, Grade: evidence.Read}}
}

// Sweetening is a dose of a sweetener.
type Sweetening struct {
	Concentration evidence.Figure[units.MassConcentration] // least and most by the spread of the sweetness
	Mass          units.Mass                               // for the volume, at the value
	Limits        []law.Limit                              // of the law asked; each names the drink it holds for
	Passed        []law.Limit                              // those that the value is above
	// MostADay is the drink that brings an adult of 60 kg to the lowest acceptable daily
	// intake (FDA, EFSA, JECFA), zero where none is set.
	MostADay units.Volume
	Cautions caution.List
}

// SweetenLike returns the sweetener that sweetens a volume as so much sucrose would.
//
//   - Source: [Sweetener.Sweetness]; intakes: Cochrane review CD012885 (FDA 2015,
//     SCF/EFSA, JECFA 2010; read). EFSA raised acesulfame K to 15 and saccharin to 9 in
//     2024 and 2025 (recalled from memory); the lower figures are taken.
//   - Range: 0.1 to 200 g/L of sucrose, volume up to 1e9 L; beyond it the error is a
//     [*units.RangeError].
//   - Uncertainty: the spread of the sweetness; trust a bench trial.
func SweetenLike(s Sweetener, sucrose units.MassConcentration, v units.Volume, j law.Jurisdiction) (Sweetening, error) {
	const fn = "finish.SweetenLike"
	g := sucrose.In(units.GramPerLitre)
	if err := limit.Check(fn, "sucrose", g, "g/L", 0.1, 200, "sweet drinks"); err != nil {
		return Sweetening{}, err
	}
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", amount.LeastVolume, amount.MostVolume, "a volume of liquid"); err != nil {
		return Sweetening{}, err
	}
	f := s.Sweetness()
	if err := limit.Check(fn, "sweetness", f.Low, "of sucrose", 0.1, 1e5, "a sweetener by name"); err != nil {
		return Sweetening{}, err
	}
	mg := 1000 * g / f.Value
	limits, passed, said, err := limited(fn, j, s.substance, "dose", amount.MgPerL(mg))
	if err != nil {
		return Sweetening{}, err
	}
	out := Sweetening{
		Concentration: evidence.Figure[units.MassConcentration]{Value: amount.MgPerL(mg), Low: amount.MgPerL(1000 * g / f.High),
			High: amount.MgPerL(1000 * g / f.Low), Evidence: f.Evidence},
		Mass: units.Milligram.Of(checked.Number(mg * litres)),
	}
	if s.substance != law.Unlisted {
		out.Limits, out.Passed = limits, passed
		out.Cautions = caution.List{law.CheckTheLaw}.With(said...)
	}
	if low := s.intake.lowest(); low > 0 {
		const body = 60 // kg
		out.MostADay = units.Litre.Of(checked.Number(low * body / mg))
	}
	out.Cautions = out.Cautions.WithIf(!s.survives, ferments)
	return out, nil
}

func (i intake) lowest() float64 {
	low := 0.0
	for _, x := range [...]float64{i.fda, i.efsa, i.jecfa} {
		if x > 0 && (low == 0 || x < low) {
			low = x
		}
	}
	return low
}

const ferments caution.Caution = "ferments: Yeast ferments it: a pack that is not stabilised or kept cold can burst."
