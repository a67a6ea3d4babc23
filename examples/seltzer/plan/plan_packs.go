package plan

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// PackPlan is one kind of pack.
type PackPlan struct {
	Kind        string                     `json:"kind"`
	Of          string                     `json:"of,omitempty"`    // its size, where another kind of pack has the same name
	Mark        string                     `json:"mark,omitempty"`  // its label's, or its place in the request where nothing else tells it from another
	Still       bool                       `json:"still,omitempty"` // no gas is added to it
	Count       int                        `json:"count"`           // full ones
	Remainder   units.Volume               `json:"remainder"`       // of drink, too little for another
	Strength    units.StrengthByVolume     `json:"strength"`
	Volumes     units.CarbonDioxideVolumes `json:"co2_volumes"`
	Content     units.CarbonDioxideContent `json:"co2"`
	Temperature units.Temperature          `json:"temperature"`
	Gauge       units.GaugePressure        `json:"gauge"`           // at that temperature and in this atmosphere; below 0 no regulator can set it
	SeaLevel    units.GaugePressure        `json:"gauge_sea_level"` // for comparison
	Rating      units.GaugePressure        `json:"rating"`

	Base       units.Volume `json:"base"`                // of dry base drink to rack for all of them, at 20 °C
	Flavouring units.Volume `json:"flavouring,omitzero"` // that goes to it
	Taste      string       `json:"flavoured_with,omitempty"`
	Water      units.Mass   `json:"water"`               // boiled and cooled, that brings it down to its strength; a primer is dissolved in it
	Sweetener  *Weight      `json:"sweetener,omitempty"` // for all of them
	Acid       *Weight      `json:"acid,omitempty"`      // for all of them
	PH         *PackPH      `json:"pH,omitempty"`        // where there is an acid
	Trial      []TrialDose  `json:"trial,omitempty"`     // the doses that were tried
	Own        *PackLabel   `json:"label,omitempty"`     // where it is another drink than the batch's label has

	Highest HighestPlan `json:"highest"`

	PartFull *PartFullPlan `json:"part_full,omitempty"` // keg: one more, that is not full
	Bottle   *BottlePlan   `json:"bottle,omitempty"`
}

// PackPH is the pH of a packed drink with its gas, before and with its acid, at 20 °C.
type PackPH struct {
	Without float64 `json:"without_acid"`
	With    float64 `json:"with_acid"`
}

// TrialDose is one dose of a bench trial, and what it is for a kind of pack.
type TrialDose struct {
	InSample units.Volume `json:"in_the_sample"`
	PerLitre units.Volume `json:"in_a_litre"`
	ForEach  units.Volume `json:"for_each"` // full pack
	ForAll   units.Volume `json:"for_all"`
	Liked    bool         `json:"liked"`
}

// PackLabel is what the label of a pack says that is a drink of its own.
type PackLabel struct {
	Strength     units.StrengthByVolume  `json:"strength"` // to one decimal
	Within       bool                    `json:"within_tolerance"`
	Kilojoules   units.Energy            `json:"kilojoules_in_100_mL"`
	Kilocalories units.Energy            `json:"kilocalories_in_100_mL"`
	Carbohydrate units.MassConcentration `json:"carbohydrate"`
	Sugars       units.MassConcentration `json:"sugars"`
}

// FillingPlan is the carbonated drink as it is filled under counter-pressure.
type FillingPlan struct {
	Temperature units.Temperature          `json:"temperature"`
	Gauge       units.GaugePressure        `json:"gauge"` // of the keg that it comes from, at that temperature
	Content     units.CarbonDioxideContent `json:"co2"`   // more than is served: the head-space takes some
}

// HighestPlan is the state of a pack at its highest pressure, from closing to serving in
// whatever order of temperatures, and what the rating says of it. The sugar of a flavouring
// counts as fermented.
type HighestPlan struct {
	When        string              `json:"when"` // "conditioned", "stored", "served" …
	Temperature units.Temperature   `json:"temperature"`
	Gauge       units.GaugePressure `json:"gauge"`
	AtLeast     bool                `json:"gauge_is_at_least"`           // the pressure is above what can be computed
	Sugar       bool                `json:"if_sugar_ferments"`           // only if sugar that is left in it ferments: in a keg, a still bottle, one filled under counter-pressure
	Sweetener   bool                `json:"of_the_sweetener,omitempty"`  // some of that sugar
	Flavouring  bool                `json:"of_the_flavouring,omitempty"` // likewise
	Verdict     carbonation.Verdict `json:"verdict"`
	Cautions    []string            `json:"cautions"` // of this pack; those of every pack stand in the plan's

	cautions caution.List
}

// PartFullPlan is a keg that is not full.
type PartFullPlan struct {
	Drink units.Volume `json:"drink"`
	Room  units.Volume `json:"room"` // more than in a full one
	CO2   units.Mass   `json:"co2"`  // that this room takes at the set pressure
	// Charge is the pressure at which the room, filled once, holds all the gas that the drink wants and its own at
	// the set pressure; nothing where the keg is not rated for it.
	Charge units.GaugePressure `json:"one_charge,omitzero"`
}

// BottlePlan is what bottles need beyond a keg.
type BottlePlan struct {
	Dissolved units.CarbonDioxideContent `json:"already_dissolved"`
	Filling   *FillingPlan               `json:"filling,omitempty"` // under counter-pressure
	// FromFlavour is the gas that the sugar of the flavouring makes; the primer brings the rest.
	FromFlavour units.CarbonDioxideContent `json:"from_flavouring"`

	Priming       Weight                     `json:"priming"`   // for all bottles
	Held          bool                       `json:"held_back"` // the primer is not to be weighed: the rating does not cover it
	PerBottle     units.Mass                 `json:"per_bottle"`
	Syrup         units.Mass                 `json:"syrup_water"`                        // boiled and cooled; the primer is dissolved in it
	Served        units.CarbonDioxideContent `json:"co2_when_served"`                    // in the drink, at rest with the head-space
	ServedAtLeast bool                       `json:"served_gauge_is_at_least,omitempty"` // the pressure served is above what can be computed
	// ServedGauge is higher than that of a keg of the same content, by the air that the
	// bottle closed on.
	ServedGauge units.GaugePressure `json:"gauge_when_served"`
	Store       units.Temperature   `json:"store"`
	StoreGauge  units.GaugePressure `json:"gauge_at_store"`
	AtLeast     bool                `json:"gauge_is_at_least"` // the pressure stored is above what can be computed
}

// FlavourPlan is the bench trial scaled up.
type FlavourPlan struct {
	Name    string                  `json:"name"`
	Added   units.Volume            `json:"added"`
	Rise    units.StrengthByVolume  `json:"strength_it_adds"`
	Ethanol units.Share             `json:"share_of_ethanol"`
	Sugar   units.MassConcentration `json:"sugar_it_brings"` // to the drink; in primed bottles it ferments
}

// LabelPlan is what the label says.
type LabelPlan struct {
	Law          string                  `json:"law"`
	Strength     units.StrengthByVolume  `json:"strength"`  // to one decimal, as printed
	Tolerance    units.StrengthByVolume  `json:"tolerance"` // what the law lets the drink differ from it
	Within       bool                    `json:"packs_within_tolerance"`
	Kilojoules   units.Energy            `json:"kilojoules_in_100_mL"`
	Kilocalories units.Energy            `json:"kilocalories_in_100_mL"`
	PerServing   units.Energy            `json:"kilocalories_in_serving"`
	Category     string                  `json:"category"`     // what the law calls the drink
	Rules        string                  `json:"rules"`        // and what its label follows
	Carbohydrate units.MassConcentration `json:"carbohydrate"` // polyols in it
	Sugars       units.MassConcentration `json:"sugars"`
	Polyols      units.MassConcentration `json:"polyols"`
	Acids        units.MassConcentration `json:"organic_acids"` // beside the carbohydrate; they count in the energy
	Serving      units.Volume            `json:"serving"`
	DrinksUS     float64                 `json:"us_standard_drinks_in_serving"`
	UnitsUK      float64                 `json:"uk_units_in_serving"`
	DrinksAU     float64                 `json:"au_nz_standard_drinks_in_serving"`
}
