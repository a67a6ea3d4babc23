package main

import (
	"strings"
)

// cautionsOf says to which steps a caution belongs, by words that stand in it; the first
// of the steps that is on the card takes it.
var cautionsOf = []struct{ words, steps string }{
	{"too little for the scale", "weigh"},
	{"was tried", "flavour fill-1"},
	{"that were tried", "flavour fill-1"},
	{" is weighed: of what it brings", "weigh"},
	{"is there for its vitamins", "feed-1 pitch"},
	{"The sulfite is dosed for the batch", "keep"},
	{"salts at hand", "water"},
	{"water report", "water"},
	{"Boiling sugar", "boil dissolve"},
	{"boil over", "boil"},
	{"The boil can drop", "buffer"},
	{"blow-off", "cool"},
	{"Bicarbonate foams", "buffer"},
	{"Keep half of the buffer back", "buffer"},
	{"The yeast is to leave", "fill-1"},
	{"The gravity of the base", "fill-1"},
	{"The base is taken", "rack"},
	{"of the base: measure it", "rack"},
	{"Primed bottles need yeast", "prime"},
	{"Nothing is boiled", "dissolve"},
	{"The top-up water", "top-up"},
	{"Sugar strewn", "portion-2"},
	{"by its sheet", "pitch"},
	{"largest dose on its label", "feed-1 pitch"},
	{"rests on what is usual of it", "measure"},
	{"Concentrated acid", "acid"},
	{"foams up", "acid"},
	{"measured sample first", "acid dissolve"},
	{"may be soured", "acid"},
	{"settle out as tartrates", "acid"},
	{"Not sour enough", "malolactic rack"},
	{"Sulfites harm", "keep"},
	{"limits known here", "keep"},
	{"Sorbate keeps", "keep"},
	{"Dissolve it in water first", "keep"},
	{"Juices hold acids", "measure"},
	{"extracts differ", "measure"},
	{"hydrometer", "measure"},
	{"cells in the pack", "pitch"},
	{"yeast was", "pitch"},
	{"better than the balance of atoms", "pitch"},
	{"nitrogen", "feed-1 pitch"},
	{"Ammonium", "feed-1 pitch"},
	{"Potassium is", "feed-1 pitch"},
	{"minerals and no vitamins", "feed-1 pitch"},
	{"is what is usual of it", "feed-1 pitch"},
	{"before you rely on a limit", "feed-1 pitch"},
	{"The pH", "pH"},
	{"even pace", "wait"},
	{"The days from", "wait"},
	{"CO2 is heavier", "wait close"},
	{"fresh air", "wait"},
	{"Finished means", "wait"},
	{"oil-based", "flavour"},
	{"The flavouring", "flavour"},
	{"Push a still keg", "close"},
	{"Filling under counter-pressure", "fill-counter"},
	{"under counter-pressure, or keep it cold", "fill-counter"},
	{"PET stretches", "close"},
	{"Prime only", "prime"},
	{"Bottle a still drink", "fill-still"},
	{"Vessels under pressure", "fill-1"},
	{"Air shut in", "close"},
	{"cylinder", "close"},
	{"measure it before you print", "open"},
	{"label", "open"},
}

// caution puts a caution to its step, or before all.
func (c *card) caution(text string) {
	for words, id := range c.own {
		if strings.Contains(text, words) && c.put(id, text) {
			return
		}
	}
	for _, of := range cautionsOf {
		if !strings.Contains(text, of.words) || strings.Contains(text, "do not fill") {
			continue
		}
		for _, id := range strings.Fields(of.steps) {
			if as, ok := c.alias[id]; ok {
				id = as
			}
			if c.put(id, text) {
				return
			}
		}
	}
	c.before = append(c.before, text)
}

// put gives a caution to a step, if there is one of that name.
func (c *card) put(id, text string) bool {
	for i := range c.steps {
		if c.steps[i].id == id {
			c.steps[i].cautions = append(c.steps[i].cautions, text)
			return true
		}
	}
	return false
}
