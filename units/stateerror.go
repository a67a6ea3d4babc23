package units

// StateError reports that a value is not in the state that a function needs, whatever
// numbers go with it: a profile that was never given an analysis, a pack that is not
// closed. Every package of the module returns it; read it with errors.As or errors.AsType.
type StateError struct {
	Func string // the function as a caller writes it, "water.Profile.AcidToPH"
	What string // the kind of value, "profile"
	Why  string // what is the matter with it and what to do, "has no temperature: make it with NewProfile"
}

// Error names the function, the value and the reason:
// "water.Profile.AcidToPH: this profile has no temperature: make it with NewProfile".
func (e *StateError) Error() string { return e.Func + ": this " + e.What + " " + e.Why }
