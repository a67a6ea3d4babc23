package water

import "example.org/zymase/units/caution"

// AcidBurns goes with every dose of acid.
const AcidBurns caution.Caution = "acid: Concentrated acid burns: goggles, gloves, and the acid into the liquid, never the liquid into the acid; food " +
	"grade only."

const (
	labelFirst    caution.Caution = "label_first: The maker's safety sheet and label come before these figures."
	threeQuarters caution.Caution = "three_quarters: Dose three quarters, stir, measure the pH, then the rest: strengths as sold vary."
	sulfurDioxide caution.Caution = "sulfur_dioxide: Sulfites set free SO2 in acid and can harm people with asthma: stir in the open, label what remains."
	testAfter     caution.Caution = "test_after: Test with a kit for total chlorine afterwards; a carbon filter needs slow flow for chloramine, by its " +
		"maker's rating."
)

// AcidCautions returns how to handle acids, for whoever prints a dose.
func AcidCautions() caution.List { return caution.List{AcidBurns, labelFirst, threeQuarters} }
