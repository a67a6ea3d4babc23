package batch

// degas drives a share of the dissolved gases out: stirring, vacuum, a shaken sample.
func (j *job) degas(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	part, err := share(st)
	if err != nil {
		return err
	}
	for _, c := range gases {
		if n := j.s.amount[c]; n > 0 {
			j.take(c, part*n, &j.left.Gas)
		}
	}
	return nil
}
