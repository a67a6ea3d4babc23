package batch

// cool chills the wash after the boil.
func (j *job) cool(st *Step) error { return j.temper(st, 0, j.s.t.In(celsius), "colder than it is") }
