// Package check holds what tests of the packages share.
package check
