// Package mash answers: what pH will my mash have, within what band, and how much acid
// brings it to another?
//
//	m := mash.Mash{Water: treated, Volume: units.Litre.Of(15), Malts: []mash.Malt{
//		mash.Pale.Malt(units.Kilogram.Of(4.5)), mash.Caramel.Malt(units.Kilogram.Of(0.4))}}
//	ph, _ := m.PH()
//	fmt.Println(ph) // with its band
//	dose, _ := m.WithAcid(water.LacticAcid, 5.4)
//
// A mash rests where no proton is left over: what each malt gives or takes on the way from
// its own pH in distilled water, what the water's alkalinity takes, and what calcium and
// magnesium set free from the phosphate of the malt ([Mash.PH]).
//
// # Conventions
//
// pH is that of a sample cooled to room temperature; at 65 °C a mash shows about 0.3 less
// (common practice, no source).
// Amounts of acid are of the pure acid.
//
// No set of measured mashes could be read to try a prediction on, so every figure carries
// a band, and the widest part of it is the malt: two figures measured on the lot at hand,
// its pH in distilled water and its buffering, take a good part of it away; what calcium does
// is the next. Measure the mash.
//
// # Left out
//
// Colour and bitterness: nothing here turns a grist into EBC or a hop into IBU. Extract of a
// grist is left out too; what a wort holds is package gravity's.
package mash
