package plan

// A Why is where a figure comes from: the relation that gives it, and its source.
type Why struct {
	Relation string `json:"relation"`
	Source   string `json:"source"`
}

// Figure names a kind of figure in a plan.
type Figure int

// The figures that a plan explains.
const (
	FigureFermentable Figure = iota
	FigureVolumeHot
	FigureBoiling
	FigureAtmosphere
	FigureWater
	FigureBoiledWater
	FigureSalts
	FigureGravity
	FigureFloor
	FigureApparent
	FigureWarmReading
	FigureNitrogen
	FigureNutrient
	FigureOtherNeeds
	FigureYeast
	FigureRehydration
	FigureGauge
	FigureDissolved
	FigurePriming
	FigureClosed
	FigureKegClosed
	FigureKegRoom
	FigureKegTime
	FigureFlavour
	FigureStrength
	FigureEnergy
	FigureDrinks
	FigureTolerance
	FigureBalance
	FigureVolumes
	FigurePH
	FigureBuffer
	FigureUncertainty
	FigureSchedule
	FigureForecast
	FigureHourly
	FigureCause
	FigureOnward
	FigureRoom
	FigureCost
	FigureReading
	FigureCarbohydrate
	FigureGasLeft
	FigureMust
	FigureMustNitrogen
	FigureAcid
	FigureAfter
	FigureTartar
	FigureSulfite
	FigureSorbate
	FigureTaste
)

var whys = map[Figure]Why{
	FigureFermentable: {
		"sugar so that the packed drink has the strength asked for: ethanol = yield · sugar used; solved backwards through packs, flavour, priming and losses",
		"yield: 16.83 g of hexose for 1 % vol (French order of 3 May 1996 art. 2), malt extract by Balling 1854; densities as for the strength"},
	FigureVolumeHot: {
		"mass / density at that temperature; the sugar's own volume is in the density",
		"Bettin & Spieweck 1990 (water); ICUMSA SPS-4 1994 (sucrose solutions, 0 to 100 °C); OIML R 22 (with ethanol)"},
	FigureBoiling: {
		"temperature at which the vapour pressure of water is that of the atmosphere",
		"Wagner & Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783, eq. 1"},
	FigureBoiledWater: {
		"between nothing dropped and calcite at equilibrium with the water at its boiling point, under air: CaCO3 drops out until Ca²⁺ " +
			"· CO3²⁻ is its solubility product; then as it boils down",
		"L. N. Plummer & E. Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011; how much drops in a given time is not known"},
	FigureAtmosphere: {
		"p = 101.325 kPa · (1 − 0.0065·H/288.15)^5.25588, or the barometer given; weather moves it by up to 3 kPa",
		"ISO 2533:1975 (standard atmosphere)"},
	FigureWater: {
		"ions add by mass; hardness = Ca + Mg as CaCO3; residual alkalinity = alkalinity − Ca/3.5 − Mg/7, in equivalents; balance = " +
			"(cations − anions) / (cations + anions)",
		"atomic weights CIAAW 2021; Kolbach, Monatsschrift für Brauerei 6 (1953) 49"},
	FigureSalts: {
		"the doses with the least weighted squared distance to the target, none negative; then as the scale weighs them",
		"stoichiometry from atomic weights CIAAW 2021; least squares with bounds"},
	FigureGravity: {
		"density of the liquid at 20 °C / density of water at 20 °C, in vacuum",
		"ICUMSA SPS-4 1994 (sucrose), CRC Handbook 102nd ed. (dextrose, fructose), OIML R 22 (ethanol), Tabarié's relation for the three"},
	FigureFloor: {
		"gravity of the liquid when all fermentable sugar is used: water, ethanol, glycerol and acids that yeast leaves; 0.00075 for a " +
			"g/L of salts, nutrient and buffer; ± at k = 2",
		"as for gravity; glycerol and acids 3.64 % of the hexose (Pasteur 1860, recalled), 30 % either way; salts: density tables (sodium " +
			"chloride read, others recalled)"},
	FigureApparent: {
		"the sucrose polynomial continued below zero: value and slope join at 1.000",
		"ICUMSA SPS-4 1994; convention of brewers' tables"},
	FigureWarmReading: {
		"density at that temperature on a 20 °C hydrometer, with the expansion of its glass, 25e-6 a kelvin",
		"as for gravity; ISO 1768:1975 for the glass"},
	FigureNitrogen: {
		"0.75, 0.9 or 1.25 mg N for each gram of fermentable sugar, by the demand of the strain",
		"supplier rule of the wine trade (recalled); it spans a factor of 1.7"},
	FigureNutrient: {
		"need / nitrogen share of the source, each up to its legal limit, then the next; in stages by sugar used, the last by one third",
		"nitrogen from the formula (atomic weights CIAAW 2021) or the label; limits as named; stages: common practice, no source"},
	FigureOtherNeeds: {
		"what the water, the nutrient and the buffer hold against what the yeast grows on; sources without nitrogen bring what is short, within the limit of the law",
		"potassium: Kudo et al. 1998 (recalled); zinc: Nobis et al. 2022 (read); vitamins: Olson & Johnson 1949 (read); phosphorus and " +
			"magnesium by the dry yeast that grows (recalled); magnesium and thiamine wanted: common practice, no source"},
	FigureYeast: {
		"1 million live cells a millilitre for each degree Plato, as a hydrometer shows it in the sugar",
		"Briggs et al., Brewing: Science and Practice (2004) (recalled); usual spread 0.5 to 1.5"},
	FigureRehydration: {
		"water 10 to 20 times the yeast's mass",
		"supplier sheets (read)"},
	FigureGauge: {
		"pressure at which the liquid holds the content: Henry's constant per kg of its water, fugacity, vapours of water and ethanol added; less the atmosphere",
		"Plummer & Busenberg 1982; Span & Wagner 1996 (virial); Krichevsky & Kasarnovsky 1935; OIML R 22. Published ways differ by about 5 %"},
	FigureDissolved: {
		"content at rest under the atmosphere at the warmest temperature since the ferment",
		"as for the gauge pressure; rule: common practice, no source"},
	FigurePriming: {
		"(content wanted + what the head-space takes − already dissolved − from the flavouring's sugar) / CO2 that a gram makes: " +
			"0.51428 of sucrose and maltose, 0.48856 of simple sugars, 0.52346 of maltotriose",
		"Gay-Lussac's equation with atomic weights CIAAW 2021; the primer's composition"},
	FigureClosed: {
		"CO2 in liquid and head-space is conserved; Henry's law, real gas, trapped air, vapours, expansion of the liquid; against the rating given",
		"as for the gauge pressure"},
	FigureKegClosed: {
		"pressure at which the liquid holds the content at that temperature, none of it counted as gone to the head-space; against the rating given",
		"as for the gauge pressure"},
	FigureKegRoom: {
		"room × density of CO2 gas at the set pressure, absolute, and that temperature; in one charge, that and the gas that the drink lacks",
		"Span & Wagner 1996 (virial)"},
	FigureKegTime: {
		"95 % of the way is ln 20 / rate: what is missing falls by the same part each hour",
		"a rate in the middle of suppliers' 7 to 14 days at rest; rolled, common practice, no source"},
	FigureFlavour: {
		"dose of the trial times the base drink; its ethanol and sugar count",
		"masses of water, ethanol and sugar in the mixture (OIML R 22)"},
	FigureStrength: {
		"volume of the ethanol alone at 20 °C in 100 volumes of drink at 20 °C",
		"OIML R 22 (definition and densities)"},
	FigureEnergy: {
		"EU, kJ: 29 for a gram of ethanol, 17 carbohydrate, 10 polyols, 13 organic acids; kcal: 7, 4, 2.4, 3; each with its own factors. " +
			"US, kcal: 6.9 for a gram of ethanol, 4 for real extract",
		"Regulation (EU) No 1169/2011 annex XIV; US: The Oxford Companion to Beer (2012), calories, after ASBC"},
	FigureCarbohydrate: {
		"EU: extract less organic acids; it includes polyols, of which glycerol is 3.0 % of the hexose fermented, beside 0.6 % succinic " +
			"acid. US: all extract, by difference",
		"Regulation (EU) No 1169/2011 annex I (read); Pasteur 1860 (recalled); rounding: guidance on tolerances (2012) table 4 (recalled)"},
	FigureDrinks: {
		"US 14 g of ethanol; UK 10 mL; Australia and New Zealand 10 g",
		"NIAAA; UK unit by use; Food Standards Code 1.1.2"},
	FigureTolerance: {
		"printed strength to one decimal; EU ±0.3 % vol for other drinks, US ±0.3 % vol for malt beverages of 0.5 % vol and more",
		"Regulation (EU) No 1169/2011 annex XII (read); 27 CFR 7.65 (2022; recalled); 27 CFR 7.1, 25.15 and TTB Ruling 2008-3 (read). Check the law in force"},
	FigureBalance: {
		"mass in = mass out; gas, yeast, glycerol and acids by one balance of atoms",
		"conservation of every element: the batch carried forward with the weights of the list; what the measured yield leaves of the ethanol is lost"},
	FigurePH: {
		"charge balance: strong ions of water, nutrient and buffer; one H+ for each ammonium taken up, phosphate with its proton, potassium; acids made; CO2 above",
		"equilibria of carbonate, phosphate and the organic acids (Plummer & Busenberg 1982, NIST 46); acids: Pasteur 1860 and wine data; " +
			"ends as for how sure the plan is, to either side"},
	FigureBuffer: {
		"dose at which the end pH by the charge balance is the floor, with all chalk dropped; rounded up to the scale; what it may want: " +
			"the charge that the floor lacks, as for the pH",
		"as for the pH; floor 3.5 to 4.0: supplier sheet on sugar washes, 2021"},
	FigureUncertainty: {
		"u² = Σ (∂f/∂x · u(x))² over the unknowns that -drawn draws: yield, sugar, scale step/√12, level, what yeast makes; " +
			"hydrometer division/√12 a reading, with the yield; solubility 5 %; k = 2",
		"JCGM 100:2008 (GUM) eq. 10; JCGM 106:2012 for the label"},
	FigureSchedule: {
		"sugar used against time by growth on nitrogen, uptake and loss by alcohol; readings and your own time narrow it; the gravity decides",
		"Coleman, Fish & Block 2007, as read second-hand; width: published forecasts are off by a factor of two"},
	FigureForecast: {
		"ways in which the ferment may go (pace, lag, tail, end), weighed by your own time and the readings; nine in ten and half of " +
			"them; unchanged: dry and three days more",
		"Coleman, Fish & Block 2007, as read second-hand; width held against 38 measured worts and musts: go run ./examples/verify -forecast"},
	FigureOnward: {
		"the batch as it was read (gravity, volume and pH weighed against the plan by both uncertainties), carried on step by step until its sugar is used",
		"package batch: conservation of every element, charge balance; days as for the forecast, the ethanol that fresh yeast meets not counted"},
	FigureHourly: {
		"share of the sugar in the fastest hour times the gas, and times 586.6 kJ/kg of the sugar, without what the room takes",
		"as for the forecast; heat: common practice, 563 to 652 kJ/kg in use; gas by the balance of atoms"},
	FigureCause: {
		"likelihood of the readings if the wash had started so, over that as planned",
		"as for the forecast; the steps tried (4 K, half the nitrogen, a tenth of the cells, pH 2.7) are chosen"},
	FigureRoom: {
		"fresh air = gas given off / (limit − outside air), well mixed; peak: the fastest hour, at the high end of the forecast",
		"balance of a room; 5000 ppm: OSHA 29 CFR 1910.1000; pace: Coleman, Fish & Block 2007, as read second-hand"},
	FigureCost: {
		"whole packs times price; decimal, nothing rounded",
		"the prices given"},
	FigureReading: {
		"the share of the sugar used at which the wash, as measured or planned, shows that reading at that temperature",
		"as for gravity and yield; finished, stalled: common practice, no source"},
	FigureGasLeft: {
		"sugar left × 0.51428 g of CO2, as sucrose and all of it to gas: the most that it can make",
		"Gay-Lussac's equation with atomic weights CIAAW 2021"},
	FigureMust: {
		"pH and titratable acidity solve for acid and strong cations; what was not measured is the usual, in proportion to the extract; " +
			"the band moves the strong ions, and these the pH of the ferment",
		"electroneutrality; usual compositions: Kumar et al. 2021, Mattick & Moyer, Zeiner et al. 2010 (apple), Migicovsky et al., Kliewer " +
			"et al. 1967 (grape), White et al. 1962 (honey), Holzmann & Piendl 1977 (wort), read, some on pages that quote them; others " +
			"recalled or chosen, as package must lists them"},
	FigureMustNitrogen: {
		"by the report, or as usual; it counts against the need before any nutrient",
		"apples 20 to 256 mg/L (read), honey less than 20 mg/L in a must of 25 °Bx (read), musts and worts recalled"},
	FigureAcid: {
		"dose at which the pH, or the titratable acidity, is the one asked for; then as the scale weighs it",
		"electroneutrality; as for the pH"},
	FigureAfter: {
		"acids and salts of the dry drink carried on: malate + H⁺ = lactate + CO2; K⁺ + HC4H4O6⁻ = cream of tartar; ethanol raises " +
			"each pK by 0.0142 for 1 % vol; malic acid that yeast itself uses is not counted",
		"balance of atoms and charge; Prenesti et al. 2012 (read) for the ethanol"},
	FigureTartar: {
		"what settles until the product of K⁺ and HC4H4O6⁻ is that of a saturated solution of that strength and temperature, times the share of the way",
		"Berg & Keefer 1958 (recalled from memory)"},
	FigureSulfite: {
		"free SO2 = molecular SO2 · (1 + 10^(pH − 1.81)); potassium metabisulfite brings 57.6 % of it",
		"pK of wine practice (common practice, no source); atomic weights CIAAW 2021. Part of it binds: measure again after a day"},
	FigureSorbate: {
		"sorbic acid is 74.6 % of potassium sorbate; undissociated: 1 / (1 + 10^(pH − 4.76))",
		"pK: reagent page of a department of enology (read); advised by strength: How to add potassium sorbate (read), 10 to 14 % vol below pH 3.5"},
	FigureTaste: {
		"as much in a litre of the drink as asked for; a sweetener by its sweetness against sucrose; both count in the volume",
		"masses and volume of the mixture (OIML R 22); sweetness: BMC Medicine 9 (2011) 123, Appl. Microbiol. Biotechnol. 102 (2018) 587 (read)"},
	FigureVolumes: {
		"one volume = 1.9770 g/L (real gas, 22.2605 L/mol at 0 °C and 1 atm)",
		"IUPAC-NIST Solubility Database, SRD 106"},
}

// Why returns the relation and the source of a kind of figure.
func (f Figure) Why() Why { return whys[f] }
