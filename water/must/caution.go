package must

import "example.org/zymase/units/caution"

// What whoever doses must know.
const (
	Foams      caution.Caution = "foams: A carbonate sets CO2 free and foams up: use a vessel no more than two thirds full, in moving air."
	TrialFirst caution.Caution = "trial: Treat a measured sample first, then three quarters of the dose, measure, then the rest."
	Settles    caution.Caution = "settles: With tartaric acid potassium and calcium settle out as tartrates for weeks: pH and acidity move again, so " +
		"measure before bottling."
	Law caution.Caution = "law: How far a wine may be soured or its acidity lowered, and by what, is limited by law: check the law in force."
)
