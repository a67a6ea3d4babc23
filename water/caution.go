package water

import "example.org/zymase/units/material"

// AcidCautions returns how to handle acids, for whoever prints a dose.
func AcidCautions() []string {
	return []string{
		"Concentrated acid burns: goggles, gloves, and the acid into the water, never water into the acid.",
		"Use food grade only; the maker's safety sheet and label come before these figures.",
		"Dose three quarters, stir, measure the pH, then the rest: strengths as sold vary.",
	}
}

// CausticCaution returns how to handle lime, soda ash and lye.
func CausticCaution() string {
	return material.Burns.Text()
}
