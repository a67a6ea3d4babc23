package catalogue

// gravityFunctions are the entries of package gravity.
func gravityFunctions() []Function { return nil }
