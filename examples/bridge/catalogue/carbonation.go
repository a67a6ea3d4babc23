package catalogue

// carbonationFunctions are the entries of package carbonation.
func carbonationFunctions() []Function { return nil }
