package batch

// sweeten adds a sugar or glycerol after the ferment. Sugar ferments where yeast is left.
func (j *job) sweeten(st *Step) error { return j.dissolve(st) }
