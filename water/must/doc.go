// Package must answers: what acids and salts does a juice, a must or a wine bring, what pH do
// they make, and what moves it?
//
//	reading := must.Reading{PH: 3.5, Acidity: units.GramPerLitre.Of(6.0), Titration: water.MalicAcid.TitratedTo(8.2),
//		Temperature: units.Celsius.Of(20)}
//	juice, _ := reading.Drink(must.FromApple.Acids())
//	fix, _ := juice.WithAcid(water.MalicAcid, must.ToPH(3.3))
//	fmt.Println(fix.PerLitre, fix.After.PH())
//
// A drink that brings its own acids has two unknowns that count: how much acid, and how much
// of it is there as salt, of potassium above all. pH and titratable acidity, both measured,
// solve for the two ([Reading]); then a titration curve, a treatment or a blend follows by
// charge. From a full analysis the pH follows ([Analysis]). From the acidity alone it is a
// guess with a band of 0.3 ([Origin.FromAcidity]). What a wash of fruit, honey or malt brings, measured or by its
// usual composition, is in [Origin.Brings].
//
// # Conventions
//
// A drink is still: its CO2 is driven out, as before a titration, and what a carbonate sets
// free leaves. Concentrations are those of the drink. Ethanol moves the pK of all acids alike
// ([water.Profile.WithEthanol]).
//
// Amino acids and tannins of a fruit buffer too, and are not counted: what they
// bring is found by the titration and counted as the acids named; those of a wort stand as glutamate. Nothing drops out by
// itself: cream of tartar that settles is a step of its own ([Drink.Settled]), as much of it as was weighed, or as
// [water.Profile.CreamOfTartar] gives for a wine at rest in the cold.
package must
