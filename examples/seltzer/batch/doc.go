// Package batch answers: what is in the liquid now, and what becomes of it when I do this?
//
//	wash, left, err := batch.Do(batch.Step{Kind: batch.Boil, For: batch.Duration(15 * time.Minute), Rate: rate}, s, &u)
//	pH, err := wash.PH()
//
// A [State] is one liquid with all that is in it, in moles of each [Component]; it is a value and
// never changes. A [Step] makes another of it, and says in [Left] what came in and what left.
// What can be measured is a method of the State: nothing that is derived is kept, so that no
// step can forget what another knew. A batch is a list of steps; its packs are a fork of it.
//
// # Conventions
//
// The weak acids are counted in the form that alkalinity counts from (CO2, H2PO4-, HSO3-, NH4+,
// the bare organic anions), and beside them the protons: the alkalinity is the protons that are
// missing. Contents of the water of a liquid are by the litre of that water, 0.9982 kg, as packages water
// and carbonation have them, not by the litre of drink.
//
// What is not known is a number of [Unknowns], read by the steps alone: [Usual] has the
// usual ones, [Draw] a spread of them, [Over] what a walk makes of it.
//
// The physics stands in the packages gravity, water, carbonation and nutrient.
package batch
