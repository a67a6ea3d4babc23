package carbonation

// unless returns v, or nothing beside an error.
func unless[T any](err error, v T) (T, error) {
	if err != nil {
		var none T
		return none, err
	}
	return v, nil
}
