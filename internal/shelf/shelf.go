// Package shelf gives the materials that the library itself names by their names in the trade.
package shelf

import "example.org/zymase/units/material"

// Material returns the known material of a name that stands in the source. A name that is
// none stops the program when it starts, and every test with it.
func Material(name string) material.Material {
	m, err := material.Find(name)
	if err != nil {
		panic(err)
	}
	return m
}

// Materials returns those of several names.
func Materials(names ...string) []material.Material {
	list := make([]material.Material, len(names))
	for i, name := range names {
		list[i] = Material(name)
	}
	return list
}
