package kinetics

// On is the same readings on another pace: what they would say if the ferment had started
// otherwise, colder or hungrier. See [Fit.Evidence].
func (f *Forecast) On(p *Pace) *Forecast { return &Forecast{pace: p, bins: f.bins} }

// Evidence is how well the pace foresaw the readings, as a natural logarithm: only differences
// mean anything, between fits of the same readings on different paces. One that is greater by
// 1 was 2.7 times as likely, by 3 twenty times; below 1 nothing is said.
func (f *Fit) Evidence() float64 { return f.evidence }
