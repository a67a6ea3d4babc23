package plan

import (
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Plan is all that a request leads to. Quantities are text with their unit in
// JSON; gravities are specific gravities at 20/20 °C.
type Plan struct {
	Version  int                    `json:"version"` // of this form; 1
	Name     string                 `json:"name"`
	Request  Request                `json:"request"`
	Volume   units.Volume           `json:"volume"`   // packaged, at 20 °C
	Strength units.StrengthByVolume `json:"strength"` // of every pack, with the sugar as weighed

	Atmosphere units.AbsolutePressure `json:"atmosphere"`
	Boiling    units.Temperature      `json:"boiling_point"` // of water in this atmosphere

	Weigh   []Weight    `json:"weigh"`          // all that goes on a scale, in the order of use
	Base    *BasePlan   `json:"base,omitempty"` // a base that is let down
	Water   WaterPlan   `json:"water"`
	Vessels []Vessel    `json:"vessels"`
	Gravity GravityPlan `json:"gravity"`

	Fermenters []FermenterShare `json:"fermenters,omitempty"` // where there are several

	Nutrient NutrientPlan `json:"nutrient"`
	Acidity  AcidityPlan  `json:"acidity"`
	Must     *MustPlan    `json:"must,omitempty"`
	Acid     *AcidPlan    `json:"acid,omitempty"`
	Yeast    YeastPlan    `json:"yeast"`
	After    *AfterPlan   `json:"after_the_ferment,omitempty"`
	Packs    []PackPlan   `json:"packs"`
	Flavour  *FlavourPlan `json:"flavour,omitempty"`
	Label    LabelPlan    `json:"label"`
	Balance  Balance      `json:"balance"`

	Uncertainty UncertaintyPlan `json:"uncertainty"`
	Schedule    []Event         `json:"schedule,omitempty"`
	Forecast    *ForecastPlan   `json:"forecast,omitempty"`
	Room        *RoomPlan       `json:"room,omitempty"`
	Cost        *CostPlan       `json:"cost,omitempty"`
	State       *StatePlan      `json:"state,omitempty"`
	Cautions    []string        `json:"cautions"`
}

// Weight is one thing to weigh, as the scale shows it.
type Weight struct {
	What  string          `json:"what"`
	For   string          `json:"for"`
	Mass  units.ExactMass `json:"mass"`  // at the scale's resolution
	Asked units.Mass      `json:"asked"` // before rounding
}

// WaterPlan is the brewing water before and after treatment.
type WaterPlan struct {
	Volume units.Volume `json:"volume"` // to start with, at 20 °C
	Before WaterFigures `json:"before"`
	Target Ions         `json:"target"`
	After  WaterFigures `json:"after"` // with the doses as weighed
	Doses  []Weight     `json:"doses"`

	Boiled *BoiledWater `json:"boiled,omitempty"` // where there is a boil

	Judgement string `json:"report_judgement"` // of the report's charge balance
}

// WaterFigures describes a water.
type WaterFigures struct {
	Calcium            units.MassConcentration `json:"calcium"`
	Magnesium          units.MassConcentration `json:"magnesium"`
	Sodium             units.MassConcentration `json:"sodium"`
	Potassium          units.MassConcentration `json:"potassium"`
	Chloride           units.MassConcentration `json:"chloride"`
	Sulfate            units.MassConcentration `json:"sulfate"`
	Alkalinity         units.CalciumCarbonate  `json:"alkalinity"`
	Hardness           units.CalciumCarbonate  `json:"hardness"`
	ResidualAlkalinity units.CalciumCarbonate  `json:"residual_alkalinity"`
	ChargeImbalance    float64                 `json:"charge_imbalance_percent"`
}

// BoiledWater is what the boil can make of the treated water, boiled down: from chalk at
// equilibrium (low) to none dropped out (high). Which of them it comes to is not foreseen.
type BoiledWater struct {
	AlkalinityLow  units.CalciumCarbonate  `json:"alkalinity_low"`
	AlkalinityHigh units.CalciumCarbonate  `json:"alkalinity_high"`
	CalciumLow     units.MassConcentration `json:"calcium_low"`
	CalciumHigh    units.MassConcentration `json:"calcium_high"`
	Scale          units.Mass              `json:"scale"` // the most chalk, as scale and haze
}

// Vessel is the liquid at one moment: where, how warm, how much, how dense.
type Vessel struct {
	When        string            `json:"when"`
	Temperature units.Temperature `json:"temperature"`
	Volume      units.Volume      `json:"volume"` // at that temperature
	Cold        units.Volume      `json:"cold"`   // the same liquid at 20 °C
	Gravity     float64           `json:"gravity"`
}

// FermenterShare is what one of several fermenters gets of all that goes into them.
type FermenterShare struct {
	Share    units.Share  `json:"share"` // of the wash, the yeast, each nutrient, the buffer
	Capacity units.Volume `json:"capacity"`
	Filled   units.Volume `json:"filled"` // at the temperature of the ferment
	Racked   units.Volume `json:"racked"` // of base drink from it, at 20 °C
}

// PortionPlan is a later portion of the sugar.
type PortionPlan struct {
	Used    units.Share `json:"sugar_used"` // of all of it, by then
	Gravity float64     `json:"gravity"`    // by which it goes in
	Sugar   Weight      `json:"sugar"`
}

// GravityPlan is what the hydrometer will say.
type GravityPlan struct {
	Original      float64       `json:"original"`
	Extract       units.Extract `json:"original_extract"`
	ThirdUsed     float64       `json:"one_third_used"`
	TwoThirdsUsed float64       `json:"two_thirds_used"`
	Floor         float64       `json:"dry_floor"`
	Apparent      units.Extract `json:"apparent_extract_at_floor"`
	WarmOriginal  float64       `json:"original_as_read_warm"` // on a 20 °C hydrometer at the fermenting temperature
	WarmFloor     float64       `json:"dry_floor_as_read_warm"`

	First    float64       `json:"first_portion,omitempty"` // the wash before the others, where the sugar goes in by portions
	Portions []PortionPlan `json:"portions,omitempty"`

	Minerals         float64 `json:"of_the_floor_minerals"` // in every gravity: salts, nutrient, buffer; this much at the end
	FloorUncertainty float64 `json:"dry_floor_uncertainty"` // k = 2: yield, what yeast leaves, minerals, formulas
	FloorFrom        string  `json:"dry_floor_mostly_from"` // the unknown of package batch that most of it comes from

	OriginalUncertainty float64 `json:"original_uncertainty"` // likewise
	OriginalFrom        string  `json:"original_mostly_from"`
}

// NutrientPlan is what the yeast is fed and when.
type NutrientPlan struct {
	Sugar     units.MassConcentration `json:"fermentable_sugar"` // in the wash
	Volume    units.Volume            `json:"in_volume"`         // of wash, at 20 °C
	Need      units.MassConcentration `json:"nitrogen_need"`
	Low       units.MassConcentration `json:"nitrogen_need_low"` // of a strain of low demand, and of a high one: a choice of strain
	High      units.MassConcentration `json:"nitrogen_need_high"`
	Method    string                  `json:"method"`
	FromMust  units.MassConcentration `json:"nitrogen_of_must,omitzero"` // that juice, honey or malt brings
	Brought   units.MassConcentration `json:"nitrogen_brought"`          // by the nutrient
	Shortfall units.MassConcentration `json:"nitrogen_shortfall"`
	Stages    []NutrientStage         `json:"stages"`
	Limits    []string                `json:"limits"`

	Supplements []Weight    `json:"supplements,omitempty"` // sources without nitrogen, with the yeast
	Others      []OtherNeed `json:"other_needs,omitempty"`

	fed    []material.Dose // all of it, as weighed
	staged int             // so many of them, the first, go in by the stages
}

// OtherNeed is what yeast wants beside nitrogen, and what water, nutrient and buffer bring.
type OtherNeed struct {
	Name    string                  `json:"name"`
	Need    units.MassConcentration `json:"need"`
	Low     units.MassConcentration `json:"need_low"`
	High    units.MassConcentration `json:"need_high"`
	Brought units.MassConcentration `json:"brought"`
	Short   bool                    `json:"short"`
	Unsure  bool                    `json:"amount_not_known"` // vitamins of yeast matter
	Brings  string                  `json:"brought_by"`
	Source  string                  `json:"source"`
}

// NutrientStage is one addition.
type NutrientStage struct {
	Used    units.Share `json:"sugar_used"`
	Gravity float64     `json:"gravity"` // by which it goes in
	Doses   []Weight    `json:"doses"`
}

// AcidityPlan is the pH of the ferment.
type AcidityPlan struct {
	Floor         float64    `json:"floor_pH,omitempty"`          // asked for
	EndUnbuffered float64    `json:"end_pH_unbuffered,omitempty"` // without the buffer
	Buffer        *Weight    `json:"buffer,omitempty"`
	Low           units.Mass `json:"buffer_low"` // what the floor may turn out to want, k = 2
	High          units.Mass `json:"buffer_high"`
	From          string     `json:"buffer_mostly_from,omitempty"`
	Clear         units.Mass `json:"buffer_if_no_chalk_drops"` // the dose before rounding, if the boil drops none
	EndClear      float64    `json:"end_pH_if_no_chalk_drops"` // with the dose as weighed; 0 where the boil can drop none
	ByMeter       bool       `json:"rest_of_buffer_by_meter"`  // the two doses lie too far apart: Clear first, the rest by a meter
	Halves        bool       `json:"buffer_in_halves"`         // half before the yeast, half when a sixth of the sugar is used: all at once is too alkaline to pitch

	Points     []AcidityPoint `json:"points"`                    // from the wash to the dry floor, with the buffer
	Unforeseen string         `json:"pH_not_foreseen,omitempty"` // why there are none: honey, juice, malt
}

// AcidityPoint is the ferment when a share of the sugar is used.
type AcidityPoint struct {
	Used     units.Share            `json:"sugar_used"`
	PH       float64                `json:"pH"`
	Low      float64                `json:"pH_low"` // k = 2
	High     float64                `json:"pH_high"`
	From     string                 `json:"mostly_from,omitempty"` // the unknown of package batch that most of that comes from; nothing where the two ends are one
	Gravity  float64                `json:"gravity"`
	Strength units.StrengthByVolume `json:"strength"`
}

// YeastPlan is what is pitched.
type YeastPlan struct {
	Cells  float64         `json:"billion_cells"`
	Form   string          `json:"form"`
	Mass   units.ExactMass `json:"mass"`  // of dry yeast
	Packs  float64         `json:"packs"` // of liquid yeast
	Low    float64         `json:"low"`   // g or packs, between which 95 of 100 lie
	High   float64         `json:"high"`
	From   string          `json:"mostly_from"` // the unknown that this comes from
	Source string          `json:"source"`

	Rehydration *RehydrationPlan `json:"rehydration,omitempty"` // dry yeast
}

// RehydrationPlan is how to wake dry yeast.
type RehydrationPlan struct {
	Water       units.Volume      `json:"water"`
	Temperature units.Temperature `json:"temperature"`
	Time        Duration          `json:"time"`
}

// BasePlan is a base that is made, and what of it the packs take.
type BasePlan struct {
	Taken units.Volume            `json:"taken"`          // for all packs, at 20 °C
	Left  units.Volume            `json:"left,omitzero"`  // of what there is, beside what stays in its vessel
	Sugar units.MassConcentration `json:"sugar,omitzero"` // that its gravity may hide, counted as if yeast could use it
	Added units.Mass              `json:"water"`          // to all packs
}

// Balance closes the masses: what went in is what came out.
type Balance struct {
	In  []Line `json:"in"`
	Out []Line `json:"out"`

	YeastLow units.Mass             `json:"yeast_grown_low,omitempty"`         // fed to the full, on the same nitrogen
	ByAtoms  units.StrengthByVolume `json:"strength_without_losses,omitempty"` // if the ferment makes nothing but what its balance of atoms counts
}

// Line is one mass of the balance.
type Line struct {
	What string     `json:"what"`
	Mass units.Mass `json:"mass"`
}

// UncertaintyPlan is how sure the figures are, at k = 2 (about 95 %), each with the unknown of package batch that most of it
// comes from.
type UncertaintyPlan struct {
	Planned        units.StrengthByVolume `json:"strength_as_planned"` // yield, sugar, scale, level
	PlannedFrom    string                 `json:"strength_as_planned_mostly_from"`
	ByHydrometer   units.StrengthByVolume `json:"strength_by_hydrometer"` // two readings
	HydrometerFrom string                 `json:"strength_by_hydrometer_mostly_from"`
	Division       float64                `json:"hydrometer_division"`
	Capability     float64                `json:"capability_for_label"` // tolerance over the hydrometer's k = 2
	Supports       bool                   `json:"hydrometer_supports_label"`

	Kegs     []units.CarbonDioxideContent `json:"keg_content"` // of each kind of keg, in order
	KegsFrom []string                     `json:"keg_content_mostly_from"`
}

// Event is something due on a day, by an estimate; its sign is what decides.
type Event struct {
	Day  string `json:"day"`
	What string `json:"what"`
	Sign string `json:"sign"`
}

// RoomPlan is what the ferment does to the air of its room.
type RoomPlan struct {
	CO2       units.Mass       `json:"co2"` // of the whole ferment
	Gas       units.Volume     `json:"gas"` // the same as a gas
	Peak      units.Mass       `json:"peak_in_an_hour"`
	FreshAir  units.VolumeFlow `json:"fresh_air"`                        // that holds the limit at the peak
	Reached   Duration         `json:"limit_reached_without_fresh_air"`  // 0: not by all the gas of the ferment, evenly mixed
	Dangerous Duration         `json:"danger_reached_without_fresh_air"` // likewise
	LimitPPM  float64          `json:"limit_ppm"`
}

// CostPlan is what to buy. Money is decimal text.
type CostPlan struct {
	Currency string     `json:"currency"`
	Buy      []Purchase `json:"buy"`
	Total    string     `json:"total"`
	PerLitre string     `json:"per_litre"`
	Unpriced []string   `json:"unpriced"`
	Unused   []string   `json:"priced_not_used,omitempty"` // of the prices given
}

// Purchase is whole packs of one thing.
type Purchase struct {
	What  string          `json:"what"`
	Pack  units.ExactMass `json:"pack"`
	Packs int             `json:"packs"`
	Price string          `json:"price"`
	Left  units.ExactMass `json:"left_over"`
}
