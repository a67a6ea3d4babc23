package carbonation

import (
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// A ContentLimit is a limit of CO2 that a law sets for a kind of drink. Above it the
// drink is another kind, with other duty or another name.
type ContentLimit struct {
	Drink     string
	Most      units.CarbonDioxideContent // zero if the law sets none
	Tolerance units.CarbonDioxideContent // allowed over it; zero if none
	// LeastPressure and MostPressure are over-pressures at 20 °C; zero if the law sets
	// none.
	LeastPressure, MostPressure units.GaugePressure
	// Law is the article, with the year of the text that was seen; where it names no year,
	// that of the text was not noted.
	Law evidence.Evidence
}

// ContentLimits returns the limits of CO2 in still and sparkling drinks. Laws change:
// look up the text in force.
func ContentLimits() []ContentLimit {
	return []ContentLimit{
		{Drink: "US still wine", Most: units.GramCO2PerLitre.Of(3.92), Tolerance: units.GramCO2PerLitre.Of(0.09),
			Law: evidence.Evidence{Source: "26 USC 5041; 27 CFR 24.245 (2015)", Grade: evidence.Read}},
		{Drink: "US hard cider", Most: units.GramCO2PerLitre.Of(6.4),
			Law: evidence.Evidence{Source: "26 USC 5041; 27 CFR 24.251", Grade: evidence.Read, Note: "the year of the text was not noted"}},
		{Drink: "EU semi-sparkling wine", LeastPressure: units.BarGauge.Of(1), MostPressure: units.BarGauge.Of(2.5),
			Law: evidence.Evidence{Source: "Regulation (EU) 1308/2013 (2013) annex VII part II (8)", Grade: evidence.Recalled}},
		{Drink: "EU sparkling wine", LeastPressure: units.BarGauge.Of(3),
			Law: evidence.Evidence{Source: "Regulation (EU) 1308/2013 (2013) annex VII part II (4)", Grade: evidence.Recalled}},
		{Drink: "EU quality sparkling wine", LeastPressure: units.BarGauge.Of(3.5),
			Law: evidence.Evidence{Source: "Regulation (EU) 1308/2013 (2013) annex VII part II (5)", Grade: evidence.Recalled}},
	}
}

// Allows reports whether a content is at or under the limit, without the tolerance;
// true if the law sets none.
func (c ContentLimit) Allows(content units.CarbonDioxideContent) bool {
	return c.Most.IsZero() || content.Compare(c.Most) <= 0
}
