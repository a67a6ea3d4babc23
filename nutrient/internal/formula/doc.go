// Package formula holds compounds of the ferment and its feed as counts of atoms.
package formula
