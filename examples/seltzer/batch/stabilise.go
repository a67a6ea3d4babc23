package batch

// stabilise adds a sulfite or sorbate.
func (j *job) stabilise(st *Step) error { return j.add(st, asStabiliser) }
