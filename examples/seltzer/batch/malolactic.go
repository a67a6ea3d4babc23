package batch

// malolactic lets bacteria turn a share of the malic acid into lactic acid and CO2, malate + H+ = lactate +
// CO2. An open liquid lets go what gas it cannot hold.
//
//   - Source: the balance of atoms and charge, as [must.Drink.Malolactic]. What bacteria make of citric acid and
//     sugar besides, and how they grow, is left out.
func (j *job) malolactic(st *Step) error {
	part, err := share(st)
	if err != nil {
		return err
	}
	n := part * max(0, j.s.amount[Malate])
	if n == 0 {
		return nil
	}
	a := &j.s.amount
	a[Malate] -= n
	a[Proton] -= n
	a[Lactate] += n
	a[CarbonDioxide] += n
	if j.s.above.Closed {
		return nil
	}
	return j.vent(st.place())
}
