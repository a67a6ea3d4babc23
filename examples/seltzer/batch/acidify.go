package batch

// acidify adds a pure acid, reckoned without the water that it is sold in.
func (j *job) acidify(st *Step) error { return j.add(st, asAcid) }
