package catalogue

// nutrientFunctions are the entries of package nutrient.
func nutrientFunctions() []Function { return nil }
