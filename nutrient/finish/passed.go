package finish

// otherDrinks goes with every dose that is compared with limits for wine, cider or beer.
const otherDrinks = "The limits known here are for the drinks they name; none was read for a drink from a sugar wash, so passing none of them proves nothing for it."
