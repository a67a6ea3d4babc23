// Package rival holds the published formulas that stand beside those the packages use:
// for the same figure, from other authors. Package gravity shows them by name in its
// tables of methods; the bridge and the worked problems call them one by one.
package rival
