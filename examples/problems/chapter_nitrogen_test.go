package main

func Example_nitrogenInPhosphate() {
	show(nitrogenInPhosphate())
	// Output:
	// diammonium phosphate: 21.214 % N, 23.455 % P.
	// ammonium phosphate: at most 0.96 g/L (8 lb/1000 US gal), wine, 27 CFR 24.246 (2015 edition), US; check the law in force
	// => nitrogen: 21.21 % (check 21.214, within 0.005)
	// => phosphorus: 23.46 % (check 23.455, within 0.005)
	// => nitrogen at the limit: 203.4 mg/L (check 203.4, within 0.05)
}

func Example_limitsInLaw() {
	show(limitsInLaw())
	// Output:
	// thiamine hydrochloride in wine: 0.005 lb/1000 US gal = 0.000599 g/L (27 CFR 24.246 (2015 edition)).
	// citric acid in wine: 5.8 lb/1000 US gal = 0.694993 g/L (27 CFR 24.246 (2015 edition)).
	// ammonium phosphate in distilling material: 10 lb/1000 US gal = 1.198264 g/L (27 CFR 24.247 (editions of 2015 and after 2022)).
	// => thiamine hydrochloride: 0.0006 g/L (check 0.0006, within 0.00005)
	// => citric acid: 0.7 g/L (check 0.7, within 0.05)
	// => ammonium phosphate: 1.2 g/L (check 1.2, within 0.05)
}

func Example_mustAnalysis() {
	show(mustAnalysis())
	// Output:
	// Ammonia is 82.24 % nitrogen by the atomic weights.
	// The Australian Wine Research Institute asks for 150 mg/L in a white must (read).
	// => assimilable nitrogen: 139.3 mg/L (check 139.35, within 0.06)
}

func Example_needOfAMust() {
	show(needOfAMust())
	// Output:
	// 200 mg/L at 21 °Bx and 25 mg/L more for each degree; below 21 °Bx the rule is refused.
	// Another author: 140 mg/L at the least. The methods differ by more than the must does.
	// => at 21 °P: 200 mg/L (check 200, within 0.5)
	// => at 25 °P: 300 mg/L (check 300, within 0.5)
	// => at 27 °P: 350 mg/L (check 350, within 0.5)
}

func Example_needOfTheWash() {
	show(needOfTheWash())
	// Output:
	// Nitrogen goes with the sugar: the strain asks for so many milligrams a gram.
	// Evidence: supplier rule of the wine trade (recalled from memory).
	// => medium: 66.6 mg/L (check 66.6, within 0.05)
	// => low: 55.5 mg/L (check 55.5, within 0.05)
	// => high: 92.5 mg/L (check 92.5, within 0.05)
}

func Example_feedInThree() {
	show(feedInThree())
	// Output:
	// In all 18.837 g; missing of the nitrogen wanted: none.
	// When 0 % of the sugar is used: 6.3 g.
	// When 17 % of the sugar is used: 6.3 g.
	// When 33 % of the sugar is used: 6.2 g.
	// => in all: 18.84 g (check 18.837, within 0.005)
	// => weighed: 18.8 g (check 18.8, exact)
	// => last addition: 6.2 g (check 6.2, exact)
}

func Example_zincByTheGrain() {
	show(zincByTheGrain())
	// Output:
	// The salt is 22.74 % zinc.
	// 79.2 mg are below what a 0.1 g scale shows: dissolve 0.8 g in 100 mL and take 9.9 mL.
	// => zinc from 79.2 mg: 0.300 mg/L (check 0.300, within 0.0005)
}

func Example_cheapestFeed() {
	show(cheapestFeed())
	// Output:
	// The limit binds: 57.52 g of phosphates in 60 L. The dearer salt takes part, as it holds more nitrogen.
	// Cost 0.442; with 42.43 g of diammonium phosphate alone 0.509.
	// => diammonium phosphate: 22.09 g (check 22.09, within 0.01)
	// => monoammonium phosphate: 35.43 g (check 35.43, within 0.01)
	// => cost: 0.442 (check 0.442, within 0.0005)
}
