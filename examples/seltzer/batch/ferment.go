package batch

// ferment lets yeast use a share of the sugar that there is, each kind alike: ethanol, gas,
// glycerol, acids and yeast by one balance of atoms, of which a part of the ethanol is lost. The
// yeast grows within the nitrogen that it takes up, well fed at first, then on what it has laid
// by, until it is lean. An open liquid keeps the CO2 that it holds under its own gas, or all of it where gravity and
// strength alone are asked for, which do not depend on it. A closed pack
// keeps all, its ethanol too, and its few cells hardly grow ([Unknowns.Growth]).
//
//   - Source: [ferment.Metabolism.Ferment]; [carbonation.Liquid.Content].
func (j *job) ferment(st *Step) error {
	used, err := share(st)
	if err != nil {
		return err
	}
	a := &j.s.amount
	hexose := used * (2*a[Sucrose] + a[Glucose] + a[Fructose])
	if hexose <= 0 {
		return nil
	}
	change, err := balance(j.u, hexose*molar[Glucose], &j.s)
	if err != nil {
		return err
	}
	a[Water] -= used * a[Sucrose] // inverted
	for _, c := range [...]Component{Sucrose, Glucose, Fructose} {
		a[c] -= used * a[c]
	}
	a.plus(&change, 1)
	if j.s.above.Closed {
		return nil
	}
	j.take(Ethanol, j.u.Lost/100*change[Ethanol], &j.left.Gas)
	if st.Gas {
		return nil
	}
	return j.vent(st.place())
}
