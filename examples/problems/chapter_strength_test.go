package main

func Example_massToVolume() {
	show(massToVolume())
	// Output:
	// % vol = % mass × density of the mixture / density of ethanol = 4 × 991.02 / 789.24.
	// That is 5.0227 % vol.
	// => strength: 5.02 % vol (check 5.02, within 0.006)
}

func Example_volumeToMassOnAScale() {
	show(volumeToMassOnAScale())
	// Output:
	// 12 % vol is 9.641 % mass; the litre weighs 982.35 g.
	// The product is 94.71 g of ethanol.
	// => ethanol in a litre: 94.71 g (check 94.71, within 0.01)
	// => share of the mass, both volumes at 60 °F: 9.68 % mass (check 9.68, within 0.01)
}

func Example_apothecaryTable() {
	show(apothecaryTable())
	// Output:
	// OIML R 22 at 15.56 °C over water at 15.56 °C, both less 1.2 kg/m³ of air: 0.99121 and 0.98387.
	// At 20/20 °C in vacuum they would be 0.9912 and 0.9836.
	// => 5 % mass: 0.9912 (check 0.9912, within 0.0001)
	// => 10 % mass: 0.9839 (check 0.9839, within 0.0001)
}

func Example_proofGallons() {
	show(proofGallons())
	// Output:
	// In air at 60 °F ethanol weighs 6.60915 lb/US gal, water 8.32841 lb/US gal.
	// A pound is 1/6.60915 gallons, and twice as many proof gallons.
	// => proof gallons in a pound: 0.30261 (check 0.30258, within 0.00004)
	// => gallons of water in a pound: 0.120071 (check 0.120074, within 0.000005)
}

func Example_beerWithExtract() {
	show(beerWithExtract())
	// Output:
	// Tabarié's relation adds what each solute does to the density of water: 1.01305 g/mL.
	// Gravity 1.0149, so the hydrometer shows 3.80 °P though 5.78 °P of extract are there.
	// Standard uncertainty 0.07 kg/m³, by Tabarié (1830) (computed); beyond the mixtures that were measured, up to 65 % of solutes.
	// => gravity: 1.0149 (check 1.0148, within 0.0002)
	// => strength: 5.42 % vol (check 5.416, within 0.005)
}
