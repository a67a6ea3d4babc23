// Package gravity answers: what will the hydrometer say, how strong is it, and how
// much sugar is in it?
//
//	wash, err := gravity.NewSolution(units.Kilogram.Of(54.4), units.Kilogram.Of(4.5), units.Mass{})
//	beer, made, err := wash.Ferment(units.Kilogram.Of(4.5), gravity.SugarWashYield(gravity.AsSucrose))
//	fmt.Println(wash.Gravity(), beer.Gravity(), beer.ByVolume(), made.CO2)
//
// # Conventions
//
// A [Gravity] is the density of the liquid at 20 °C over that of water at 20 °C,
// both in vacuum; other references (15.56/15.56, 20/4, in air) are converted by name.
// Densities are in vacuum, at 101.325 kPa, of liquid free of CO2. An extract in °P is
// grams of sucrose in 100 g of a sucrose solution that has the same density at 20 °C. In
// a liquid that also holds ethanol that reading is the apparent extract, and it is below
// zero in a dry sugar wash. Strength by volume is at 20 °C on both sides, as OIML R 22
// defines it.
//
// # Where to find it
//
//   - Density: [WaterDensity], [EthanolDensity], [SucroseDensity], [SugarDensity],
//     [Solution.Density]; back: [EthanolStrength], [SucroseExtract].
//   - Scales: [Gravity] ([FromSG], [FromExtract], [ParseGravity]), [ScaleMethods],
//     [Gravity.As], [FromReference], [Gravity.Baume], [ExtractConcentration],
//     [RefractiveIndex], [BrixFromIndex].
//   - A recipe: [NewSolution], then [Solution.AddSugar], [Solution.BoilOff],
//     [Solution.Ferment], [Solution.Plus], [Solution.TakeVolume]; the floor by
//     [Solution.Dry].
//   - Strength from two figures: [FromOriginalAndApparent] and the others of
//     [Fermentation]; the published methods side by side in [StrengthMethods].
//   - Measuring: [Hydrometer], [Refractometer], [Pycnometer], [FromWeightLost],
//     [SpiritIndication], [DistillateStrength]; how sure: [StrengthByHydrometer],
//     [MeasuredFloor], [units.CrossCheck].
//   - Is it done? [Solution.At], [Solution.AtWorst].
//   - Mixing to a target: [Solution.DiluteTo], [Solution.FortifyTo], [BlendToStrength],
//     [BlendToStrengthAndExtract].
//   - Labels: [Solution.Nutrition], [Solution.EnergyEU], [Solution.EnergyUS],
//     [StandardDrinks], [LabelTolerance].
//
// # What no type catches
//
// A refractometer's Brix in a fermented liquid is no apparent extract:
// [FromOriginalAndBrix] takes it. [FromPoints] and [FromBaume] take 1.048 as so many points
// or degrees: a specific gravity goes to [FromSG]. Original stands before apparent or real
// extract among the arguments; the wrong order is refused.
//
// # Evidence
//
// Water after Bettin & Spieweck 1990, ethanol and water after OIML R 22, sucrose and
// water after ICUMSA SPS-4, other sugars from the CRC Handbook, the three together by
// Tabarié's relation. Each function names its source, its range and its uncertainty;
// outside the range it returns a [*units.RangeError]. At 20 °C water is 998.2031 kg/m³
// after Bettin & Spieweck, 998.2012 in R 22, 998.2067 after Tanaka et al. 2001; a
// [Solution] and a [Gravity] use ratios to the water of the same source, so that the
// difference drops out.
package gravity
