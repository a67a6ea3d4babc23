package batch

// prime adds the sugar that is to ferment in the pack.
func (j *job) prime(st *Step) error { return j.dissolve(st) }
