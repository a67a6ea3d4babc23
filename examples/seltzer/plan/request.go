package plan

import "example.org/zymase/units"

// Request is what a brewer writes down: the drink wanted, the place, the
// vessels, what is at hand. Quantities in JSON are text with their unit.
//
// Optional fields are those that say so; everything else must be given, as a
// silent default would hide a wrong figure.
type Request struct {
	Name     string                 `json:"name"`                       // of the batch; printed only
	Volume   units.Volume           `json:"volume,omitzero"`            // packaged, at 20 °C; left out where what is at hand decides
	Strength units.StrengthByVolume `json:"strength,omitzero"`          // of the packaged drink; left out where the gravity or what is at hand decides
	Gravity  *float64               `json:"original_gravity,omitempty"` // optional: in the place of the strength, 20/20 °C, with all sugar in
	AtHand   *AtHand                `json:"at_hand,omitempty"`          // optional: in the place of volume, strength or both

	Place       Place     `json:"place"`
	Fermentable string    `json:"fermentable,omitzero" need:"brew"` // a name of sugar.Fermentables: "white sugar"; or "apple juice 12 °Bx", "grape juice 22 °Bx", "juice 12 °Bx"
	Water       Water     `json:"water"`
	Portions    int       `json:"sugar_portions,omitempty"` // optional: so many equal parts, 2 to 6, the first in the kettle, the others by gravity
	Kettle      Kettle    `json:"kettle,omitzero"`          // left out, there is none: nothing is boiled
	Fermenter   Fermenter `json:"fermenter,omitzero" need:"brew"`
	Yeast       Yeast     `json:"yeast,omitzero" need:"brew"`
	Nutrient    Nutrient  `json:"nutrient,omitzero" need:"brew"`
	Buffer      *Buffer   `json:"buffer,omitempty"` // optional

	Fruit      *Fruit       `json:"fruit,omitempty"`      // optional: juice beside sugar, as in a country wine
	Must       *Must        `json:"must,omitempty"`       // optional: what was measured of a juice, or of the wash of honey or malt
	Acid       *Acid        `json:"acid,omitempty"`       // optional: an acid to add
	Malolactic *units.Share `json:"malolactic,omitempty"` // optional: of the malic acid, that bacteria turn into lactic acid
	Cold       *Cold        `json:"cold,omitempty"`       // optional: a rest in the cold, for the tartar of grapes
	Stabilise  *Stabilise   `json:"stabilise,omitempty"`  // optional: of a drink that no yeast is to prime

	Packs   []Pack   `json:"packs"`
	Flavour *Flavour `json:"flavour,omitempty"` // optional
	Label   Label    `json:"label"`
	Scales  Scales   `json:"scales"`

	Instruments *Instruments `json:"instruments,omitempty"` // optional: what is common is taken
	Schedule    *Schedule    `json:"schedule,omitempty"`    // optional
	Room        *Room        `json:"room,omitempty"`        // optional
	Currency    string       `json:"currency,omitempty"`    // of the prices
	Prices      []Price      `json:"prices,omitempty"`      // optional
	Readings    []Reading    `json:"readings,omitempty"`    // optional: what was measured since

	typed typed   // what stood in the JSON text, for errors
	swell float64 // of its base, where it was settled: [recipe.swells]
	atoms float64 // the part of one's own yield that the balance of atoms gives, where that is less: [maker.missed]
}

// AtHand is what there is of sugar and water.
type AtHand struct {
	Sugar *units.Mass   `json:"sugar,omitempty"` // of the fermentable, all of it to be used
	Water *units.Volume `json:"water,omitempty"` // as it comes, at 20 °C, all of it to be used
	Base  *Base         `json:"base,omitempty"`  // a strong base already made: it is diluted and packed
}

// Base is a fermented drink to dilute and pack.
type Base struct {
	Volume   *units.Volume          `json:"volume,omitempty"` // at 20 °C; left out, as much as the batch takes
	Strength units.StrengthByVolume `json:"strength"`
	Gravity  float64                `json:"gravity"`        // 20/20 °C, without its gas
	PH       *float64               `json:"pH,omitempty"`   // optional: that of the packed drinks follows
	Loss     *units.Volume          `json:"loss,omitempty"` // optional: left in its vessel
	Warmest  units.Temperature      `json:"warmest"`        // since it fermented: it decides the CO2 kept
}

// Place gives the atmosphere: one of the two fields.
type Place struct {
	Altitude  *units.Length           `json:"altitude,omitempty"`
	Barometer *units.AbsolutePressure `json:"barometer,omitempty"` // at the place itself, not reduced to sea level
}

// Ions is a water, or what it shall become. Fields left out are zero in a water
// and free in a target.
type Ions struct {
	Calcium    *units.MassConcentration `json:"calcium,omitempty"`
	Magnesium  *units.MassConcentration `json:"magnesium,omitempty"`
	Sodium     *units.MassConcentration `json:"sodium,omitempty"`
	Potassium  *units.MassConcentration `json:"potassium,omitempty"`
	Chloride   *units.MassConcentration `json:"chloride,omitempty"`
	Sulfate    *units.MassConcentration `json:"sulfate,omitempty"`
	Alkalinity *units.CalciumCarbonate  `json:"alkalinity,omitempty"`
}

// Water is the brewing water as its report gives it, the target and the salts
// at hand.
type Water struct {
	Report Ions     `json:"report"`
	PH     float64  `json:"pH"`
	Target Ions     `json:"target"`
	Salts  []string `json:"salts"`              // names of water.Salts: "gypsum", "calcium chloride dihydrate"
	When   string   `json:"salts_go,omitempty"` // optional: "before the boil" or "after the boil"; left out, before
}

// Kettle is the boiling vessel.
type Kettle struct {
	Capacity units.Volume     `json:"capacity,omitzero"` // to the brim; may be left out where nothing is boiled
	Boil     Duration         `json:"boil"`
	BoilOff  units.VolumeFlow `json:"boil_off"`         // as cold water, 20 °C
	Loss     units.Volume     `json:"loss"`             // left behind, measured cold
	TopUp    *units.Volume    `json:"top_up,omitempty"` // optional: of the treated water, added cold after the boil
}

// Fermenter is the fermenting vessel.
type Fermenter struct {
	Capacity    units.Volume      `json:"capacity"`
	Loss        units.Volume      `json:"loss"`           // left with the yeast, at 20 °C
	Temperature units.Temperature `json:"temperature"`    // while fermenting
	Warmest     units.Temperature `json:"warmest"`        // at or after the end: it decides the CO2 kept
	Also        []AlsoFermenter   `json:"also,omitempty"` // optional: further ones, filled alike

	Temperatures []Warmth `json:"temperatures,omitempty"` // optional: where it changes, steps to come or a log
}

// Warmth is a temperature of the ferment from some time on, until the next one.
type Warmth struct {
	After       Duration          `json:"after"`       // since the yeast was pitched: "3 d"
	Temperature units.Temperature `json:"temperature"` // from then on
}

// AlsoFermenter is one more fermenting vessel beside the first.
type AlsoFermenter struct {
	Capacity units.Volume `json:"capacity"`
	Loss     units.Volume `json:"loss"` // left with the yeast, at 20 °C
}

// Yeast says what is pitched.
type Yeast struct {
	Form string    `json:"form"`          // "dry" or "liquid"
	Age  *Duration `json:"age,omitempty"` // since it was packed; left out, it is fresh

	Attenuation *units.Share             `json:"attenuation,omitempty"`         // optional: of the fermentable sugar that it uses; left out, all
	Yield       *units.MassConcentration `json:"sugar_for_1_percent,omitempty"` // optional: your own yield, simple sugar in a litre to 1 % vol; 16.83 g/L is usual
	Strain      *Strain                  `json:"strain,omitempty"`              // optional: its maker's sheet
}

// Strain is what the maker's sheet of a yeast says.
type Strain struct {
	Name      string                  `json:"name"`
	Tolerance *units.StrengthByVolume `json:"tolerance,omitempty"` // optional: of alcohol
	Coldest   *units.Temperature      `json:"coldest,omitempty"`   // optional: of the ferment
	Warmest   *units.Temperature      `json:"warmest,omitempty"`   // optional: of the ferment
	Demand    string                  `json:"demand,omitempty"`    // optional: of nitrogen: "low", "medium" or "high"
}

// Nutrient says what the yeast is fed.
type Nutrient struct {
	Demand  string   `json:"demand,omitempty"` // optional where yeast.strain has it: "low", "medium" or "high"
	Sources []string `json:"sources"`          // names of nutrient.Sources, in the order of preference
	Law     string   `json:"law"`              // whose limits: "US" or "EU"

	Own []OwnNutrient `json:"own,omitempty"` // optional: those whose label you have; name them in the sources
}

// OwnNutrient is a nutrient by its label: shares of its mass.
type OwnNutrient struct {
	Name       string                   `json:"name"`
	Ammonium   *units.Share             `json:"ammonium_nitrogen,omitempty"` // optional: nitrogen of ammonium salts
	Amino      *units.Share             `json:"organic_nitrogen,omitempty"`  // optional: nitrogen of yeast and amino acids
	Phosphorus *units.Share             `json:"phosphorus,omitempty"`        // optional: as P; P2O5 is 43.6 % P
	Potassium  *units.Share             `json:"potassium,omitempty"`         // optional: as K; K2O is 83.0 % K
	Most       *units.MassConcentration `json:"most,omitempty"`              // optional: the largest dose that the label allows
}

// Buffer is a salt that holds the pH of the ferment above a floor.
type Buffer struct {
	Salt  string  `json:"salt"`     // a name of ferment.Buffers: "potassium bicarbonate"
	Floor float64 `json:"floor_pH"` // at the end of the ferment
}

// Pack is a share of the batch and how it is packaged.
type Pack struct {
	Kind    string       `json:"kind"`   // "keg", under gas; "bottle" or "can", primed or filled under counter-pressure
	Volume  units.Volume `json:"volume"` // of the drink in all of them, at 20 °C
	Size    units.Volume `json:"size"`   // of the drink in a full one
	Content Content      `json:"co2"`    // wanted in the drink; "still" for what the ferment leaves, "degassed" for none

	Temperature units.Temperature   `json:"temperature"`          // of the keg on gas; of the bottle when served
	Rating      units.GaugePressure `json:"rating"`               // the maker's, for this vessel
	HeadSpace   *units.Share        `json:"head_space,omitempty"` // bottle: share of what it holds brim-full
	Store       *units.Temperature  `json:"store,omitempty"`      // the warmest it may get; optional for a keg, then as warm as the ferment gets
	Priming     string              `json:"prime_with,omitempty"` // bottle that is primed: a name of sugar.Fermentables

	Filled   string             `json:"filled,omitempty"`    // optional: "counter-pressure", from a carbonated keg, no primer
	FilledAt *units.Temperature `json:"filled_at,omitempty"` // optional: of the drink then; left out, as cold as it is served
	MadeOf   string             `json:"made_of,omitempty"`   // optional: "glass", "metal" or "PET", which stretches
	Stretch  *units.Share       `json:"stretch,omitempty"`   // optional: by how much of its volume it grows for each bar inside

	Label    string                  `json:"label,omitempty"`    // optional: what tells its label from the others', as its colour: "green"
	Strength *units.StrengthByVolume `json:"strength,omitempty"` // optional: of this drink, in the place of the batch's
	Flavour  *Flavour                `json:"flavour,omitempty"`  // optional: in the place of the batch's; with the name "none", without
	Sweeten  *Sweeten                `json:"sweeten,omitempty"`  // optional
	Acid     *PackAcid               `json:"acid,omitempty"`     // optional
}

// Sweeten is what sweetens a packed drink.
type Sweeten struct {
	What string                  `json:"what"`       // what yeast leaves, or "white sugar" where no yeast primes: a name of finish.Sweeteners
	Like units.MassConcentration `json:"like_sugar"` // as sweet as so much sugar in a litre of the drink
}

// PackAcid is what sours a packed drink.
type PackAcid struct {
	What string                  `json:"what"` // a name of water.Acids: "citric acid"
	Dose units.MassConcentration `json:"dose"` // of the pure acid in a litre of the drink
}

// Flavour is a bench trial that tasted right.
type Flavour struct {
	Name     string                   `json:"name"`
	Sample   units.Volume             `json:"sample,omitzero"` // of base drink in the trial
	Added    units.Volume             `json:"added,omitzero"`  // of the flavouring; of several doses the one that was liked
	Strength *units.StrengthByVolume  `json:"strength,omitempty"`
	Sugar    *units.MassConcentration `json:"sugar,omitempty"`
	Tried    []units.Volume           `json:"tried,omitempty"` // optional: all the doses that were tried in the sample
}

// Label says what to print on it.
type Label struct {
	Law     string       `json:"law"`     // "EU" or "US"
	Serving units.Volume `json:"serving"` // for the US form and the standard drinks
}

// Scales are the resolutions of the scales at hand.
type Scales struct {
	Sugar units.ExactMass `json:"sugar"` // for the fermentable and for priming a whole batch
	Small units.ExactMass `json:"small"` // for salts, nutrient and yeast
}

// Instruments are how finely readings are taken; what is left out takes what is common.
type Instruments struct {
	Hydrometer  float64                      `json:"hydrometer,omitempty"`     // a division of its scale
	Reference   string                       `json:"hydrometer_for,omitempty"` // what its scale stands for: "20/20 °C" where none is given, "15.56/15.56 °C" for 60 °F, "20/4 °C", "15/15 °C", "17.5/17.5 °C", "25/25 °C", "15/4 °C"
	Volume      *units.Volume                `json:"volume,omitempty"`         // a level is right to within this
	Thermometer *units.TemperatureDifference `json:"thermometer,omitempty"`    // right to within this
	Gauge       *units.GaugePressure         `json:"gauge,omitempty"`          // right to within this
}

// Schedule says when it starts and, if you have an idea, how long the ferment takes with you.
type Schedule struct {
	Start   string   `json:"start"`             // a day, 2026-12-05
	Ferment Duration `json:"ferment,omitempty"` // left out, the pace comes from the wash alone
}

// Room is where the fermenter stands.
type Room struct {
	Volume units.Volume `json:"volume"`
}

// Price is what a pack costs.
type Price struct {
	What  string          `json:"what"` // as the plan names it
	Pack  units.ExactMass `json:"pack"`
	Price string          `json:"price"` // a decimal number
}

// Reading is what was measured some time after the yeast was pitched. One after 0 h
// measures the wash itself. It has a gravity, or what a refractometer or a scale under the
// fermenter shows, or several of them.
type Reading struct {
	After       Duration           `json:"after"`                 // since the yeast was pitched: "31 h"; "0 h" for the wash itself
	Gravity     float64            `json:"gravity,omitempty"`     // as the hydrometer shows it, not corrected
	Temperature units.Temperature  `json:"temperature"`           // of the sample
	Brix        *float64           `json:"brix,omitempty"`        // optional: °Bx by a refractometer, corrected to 20 °C
	Lost        *units.Mass        `json:"weight_lost,omitempty"` // optional: since the yeast was pitched, by a scale under the fermenter
	PH          *float64           `json:"pH,omitempty"`          // optional
	Volume      *units.Volume      `json:"volume,omitempty"`      // optional: in the fermenter
	Vessel      *units.Temperature `json:"vessel,omitempty"`      // optional: of the fermenter, since the reading before
	Portions    *int               `json:"portions,omitempty"`    // how many portions of the sugar are in; only where it goes in by portions, and not needed in the wash
}
