package batch

// fine drops a share of the yeast in the liquid.
func (j *job) fine(st *Step) error {
	part, err := share(st)
	if err != nil {
		return err
	}
	j.settle(part)
	return nil
}

// settle leaves a share of the yeast behind.
func (j *job) settle(part float64) {
	for _, c := range [...]Component{YeastMatter, YeastNitrogen, YeastPhosphorus, YeastPotassium} {
		j.take(c, part*j.s.amount[c], &j.left.Sediment)
	}
}
