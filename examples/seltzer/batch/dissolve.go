package batch

// dissolve adds a fermentable. One that no density covers is refused.
func (j *job) dissolve(st *Step) error {
	if err := j.add(st, asSugar); err != nil {
		return err
	}
	_, err := j.s.Solution()
	return err
}
