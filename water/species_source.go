package water

// origin says where the constant of a species comes from, and whether it was seen there.
type origin int8

const (
	basis origin = iota
	plummer
	phreeqc
	wateq
	nist46
	obigt
	fromm
	compiled
	davis
)
