package batch

// feed adds a nutrient or a buffer. The gas of a bicarbonate leaves as the yeast drives it out.
func (j *job) feed(st *Step) error { return j.add(st, asFood|asSalt) }
