package checked

// Unless returns v, or nothing beside an error.
func Unless[T any](err error, v T) (T, error) {
	if err != nil {
		var none T
		return none, err
	}
	return v, nil
}
