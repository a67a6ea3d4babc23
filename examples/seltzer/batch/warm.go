package batch

// warm lets a liquid become warmer. What an open one cannot hold then leaves it.
func (j *job) warm(st *Step) error {
	if err := j.temper(st, j.s.t.In(celsius), 90, "warmer than it is"); err != nil || j.s.above.Closed {
		return err
	}
	return j.vent(st.place())
}
