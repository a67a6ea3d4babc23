package sugar

import (
	"slices"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units/material"
)

// Fermentables returns the materials known by name that yeast makes ethanol from, and
// lactose, which sweetens and stays. Syrups, honey and juice by their own figures are made by
// [material.GlucoseSyrup], [material.InvertSyrup], [material.HoneyWithWater] and
// [material.Juice]; [material.FindAmong] reads a name.
func Fermentables() []material.Material { return slices.Clone(fermentables) }

var fermentables = shelf.Materials("white sugar", "sucrose", "soft brown sugar", "dextrose monohydrate", "dextrose anhydrous", "fructose", "invert sugar syrup",
	"honey", "maple syrup", "dry malt extract", "liquid malt extract", "lactose monohydrate")
