// Package plan plans a batch: a request in, a plan out, no I/O.
//
//	req, err := plan.ParseRequest(text) // JSON; every quantity with its unit
//	p, err := plan.Make(req)
//	fmt.Println(p.Weigh[0].Mass, p.Gravity.Floor)
//
// The plan is solved backwards. The finished drink is fixed by its volume and
// strength; flavour and priming, which add ethanol of their own, are taken off;
// the wash that ferments dry to the base drink is found with one root; the
// masses of every vessel follow, each loss with the composition it has. The
// sugar is then rounded to the scale, and the plan is made again from what will
// be weighed.
//
// A request may start from what is at hand instead: a gravity, so much sugar and water, a strong base
// that is made. It is turned into volume and strength first.
//
// An error is a [*RequestError] that names the field, the value and what is
// allowed. There is no partial plan.
package plan
