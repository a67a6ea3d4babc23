package batch

// treat dissolves a salt of the brewing water.
func (j *job) treat(st *Step) error { return j.add(st, asSalt) }
