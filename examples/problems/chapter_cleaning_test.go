package main

func Example_slopeOfAnElectrode() {
	show(slopeOfAnElectrode())
	// Output:
	// The slope goes with the absolute temperature: 67.1 mV at 65 °C.
	// Compensation puts that right and no more: what the sample itself does when it warms stays in the reading. Cool the sample, and say at which temperature the pH holds.
	// => 10 °C: 56.18 mV (check 56.18, within 0.006)
	// => 25 °C: 59.16 mV (check 59.16, within 0.006)
	// => 50 °C: 64.12 mV (check 64.12, within 0.006)
	// => shown by the mash: 5.185 (check 5.185, within 0.001)
}

func Example_bufferMovesByItself() {
	show(bufferMovesByItself())
	// Output:
	// A cold buffer entered as 6.86 shifts every reading by 0.04.
	// Take the value of the buffer at its own temperature, from its label, and let buffer, electrode and sample be as warm as each other.
	// => 10 °C: 6.911 (check 6.921, within 0.048)
	// => 25 °C: 6.866 (check 6.864, within 0.015)
	// => 50 °C: 6.797 (check 6.833, within 0.048)
}

func Example_causticByMass() {
	show(causticByMass())
	// Output:
	// By mass, on a scale: a litre of lye of 50 % weighs half as much again as water, so that per cent by volume would be wrong by as much.
	// In a tenth of the water it would be ten times the rise, 53 K: from a warm tap it nears the boil.
	// => pellets: 0.400 kg (check 0.400, exact)
	// => lye of 50 %: 0.800 kg (check 0.800, exact)
	// => rise: 5.31 K (check 5.31, within 0.01)
}

func Example_lyeAndAcid() {
	show(lyeAndAcid())
	// Output:
	// Cleaning has used some of the caustic, and air has made carbonate of some: add the acid in steps and read the pH.
	// Carbonate gives off CO2 and foams: an open vessel, moving air.
	// => citric acid monohydrate: 0.701 kg (check 0.7005, within 0.001)
	// => rise: 6.45 K (check 6.45, within 0.01)
}

func Example_bleachMeetsAcid() {
	show(bleachMeetsAcid())
	// Output:
	// 2.4 g of chlorine, 0.81 L. It is heavier than air: where it lies, at the floor and over the bucket, there is far more.
	// 12 mL of the cleaner, a tablespoon, would do for 10 ppm.
	// => chlorine: 40.4 ppm (check 40.4, within 0.1)
	// => over the dangerous level: 4.04 times (check 4.04, within 0.01)
	// => the limit for 15 minutes: 1.45 mg/m³ (check 1.45, within 0.005)
}

func Example_peraceticAcid() {
	show(peraceticAcid())
	// Output:
	// By mass: a drop too much of a concentrate is no safer, it only lasts longer in the air.
	// Half a gram spilt and dried off fills the cellar to the limit: air it, and mix outside the fermenter.
	// => concentrate for 60 L: 240 g (check 240, within 0.001)
	// => limit: 1.24 mg/m³ (check 1.24, within 0.005)
	// => concentrate that fills the cellar: 0.497 g (check 0.497, within 0.001)
}
