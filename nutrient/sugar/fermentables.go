package sugar

import "example.org/zymase/units/material"

// Fermentables returns the materials known by name that yeast makes ethanol from, and
// lactose, which sweetens and stays. Syrups, honey and juice by their own figures are made by
// [material.GlucoseSyrup], [material.InvertSyrup], [material.HoneyWithWater] and
// [material.Juice]; [material.FindAmong] reads a name.
func Fermentables() []material.Material {
	return []material.Material{
		material.WhiteSugar(), material.Sucrose(), material.SoftBrownSugar(), material.DextroseMonohydrate(), material.DextroseAnhydrous(), material.Fructose(),
		material.MediumInvert(), material.Honey(), material.MapleSyrup(), material.DryMaltExtract(), material.LiquidMaltExtract(), material.Lactose(),
	}
}
