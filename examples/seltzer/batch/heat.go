package batch

// heat warms water or wash in the kettle. Its gas leaves in the boil.
func (j *job) heat(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	return j.temper(st, j.s.t.In(celsius), 105, "warmer than it is")
}
