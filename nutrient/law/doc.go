// Package law answers: how much of it may a drink hold, who says so, and since when?
//
//	for _, l := range law.EU.Limits(law.SulfurDioxide) {
//		fmt.Println(l)
//	}
//
// A [Limit] is the law's own decimal with article and year; nothing is rounded before it is
// compared. [CheckTheLaw] goes with each: laws change, and most limits known here are for wine
// from grapes.
package law
