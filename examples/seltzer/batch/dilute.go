package batch

// dilute adds boiled or distilled water, without gas and ions.
func (j *job) dilute(st *Step) error {
	pure := *st
	pure.What = "water"
	return j.add(&pure, asWater)
}
