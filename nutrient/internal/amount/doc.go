// Package amount makes quantities of numbers that were checked, and holds the sizes that
// every room of nutrient takes.
package amount
