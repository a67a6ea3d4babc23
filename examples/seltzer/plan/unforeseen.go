package plan

import "strings"

// unforeseen tells why the pH of the ferment is not foreseen; it is empty where it is. The
// charge balance knows the acids that yeast makes and the water, not those of a fruit, a
// blossom or a grain.
func (r *recipe) unforeseen() string {
	name := r.fermentable.Name()
	for _, of := range []string{"honey", "juice", "malt"} {
		if strings.Contains(name, of) {
			return "The pH of a wash of " + name + " is not foreseen: it brings acids and minerals of its own, which are not counted. Measure it with a meter, before pitching and in the ferment."
		}
	}
	return ""
}
