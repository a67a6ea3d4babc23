package gravity

// Numbers of the arithmetic that no result depends on.
const (
	mostSteps = 60    // more than any iteration here takes
	nearly    = 1e-9  // a Newton step this small leaves an error of its square
	rounding  = 1e-9  // what the last digits may add to a limit, in its unit
	hair      = 1e-12 // the same as a part of a mass or volume
	sharp     = 1e-15 // tolerance of a root between 0 and 1
)

// Limits that keep sums and quotients finite.
const (
	leastMass  = 1e-9 // kg
	mostMass   = 1e12 // kg
	mostVolume = 1e9  // L
)
