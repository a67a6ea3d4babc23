package batch

// pitch adds yeast, by its dry mass. What it holds beyond its lean nitrogen is not counted: what
// grows, grows on the nitrogen of the liquid.
func (j *job) pitch(st *Step) error {
	yeast := *st
	yeast.What = "dry yeast"
	return j.add(&yeast, asYeast)
}
