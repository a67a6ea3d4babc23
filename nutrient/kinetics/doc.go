// Package kinetics answers: how fast does the ferment go, and when is it done?
//
// A [Pace] is the share of the sugar used against time, from what is known at the start:
// sugar, nitrogen, yeast, pH, and the temperature as it changes. It comes from a published
// model of nitrogen-limited growth. It gives the pace alone: alcohol, gas, acids and yeast
// grown follow from the share used by the stoichiometry of the ferment, never from the
// model, whose own yield of ethanol is beyond what sugar can give.
//
// From a plan alone no model is known to be better than a factor of two either way, so a
// [Forecast] starts that wide, and readings narrow it: one reading helps, a hundred
// dominate, a bad one does little.
//
//	pace, err := kinetics.NewPace(start, kinetics.Hold{Temperature: units.Celsius.Of(20)})
//	forecast := kinetics.NewForecast(pace)
//	err = forecast.Add(40*time.Hour, used, uncertainty)
//	dry, err := forecast.Fit().When(units.Percent.Of(95))
//
// What it cannot know: no research series of a plain sugar wash, a cider or a mead was
// found. The model was fitted to musts of 265 to 300 g/L; the width was held against worts
// and musts. A strain's own sheet, or its last batch, is better.
package kinetics
