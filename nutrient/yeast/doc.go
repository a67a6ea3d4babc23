// Package yeast answers: how many cells does the wash want, how much yeast is that today,
// and how is dry yeast rehydrated?
//
//	cells, _ := yeast.CellsToPitch(yeast.UsualRate().Value, units.DegreePlato.Of(7), units.Litre.Of(60))
//	pack, _ := yeast.DryPack(units.Cells{}, units.Celsius.Of(5))
//	pitch, _ := pack.Need(cells, 200*24*time.Hour)
//	fmt.Println(pitch.Mass.Text(units.Gram, 1))
//
// [Rehydrate] is for dry yeast, [StarterFor] grows liquid yeast, [CheckPitch] compares what
// is pitched with what can grow on the nitrogen.
package yeast
