package water

// Constants of the carbonate system, of water and of minerals, at infinite dilution,
// mol/kg of water, 0 to 90 °C, and those that rows of the species table build on. Each
// was read in a data base of geochemistry, see [origin].
//
//   - CO2, both steps of carbonic acid, calcite, aragonite, and the pairs CaHCO3+ and
//     CaCO3 that belong to them: L. N. Plummer & E. Busenberg, Geochim. Cosmochim. Acta
//     46 (1982) 1011-1040, one set whole as the USGS data base wateq4f.dat prints it; the
//     first step is their CO3-2 + 2H+ = CO2 + H2O less the second. Uncertainty 0.01 in
//     log K, 0.1 of CaHCO3+. Newer sets (phreeqc.dat) leave CaHCO3+ nearly out and make
//     calcite more soluble in return; a constant of the one does not go with the other.
//   - Gypsum: C. A. J. Appelo, Appl. Geochem. 55 (2015) 62, as phreeqc.dat prints it
//     together with CaSO4. Measured solubility (Marshall & Slusher) is met within 3 %.
//   - Water: the fit of phreeqc.dat, within 0.012 of IAPWS R11-07. Portlandite: wateq4f.dat.
//   - Bisulfate and phosphate: phreeqc.dat; pKa of phosphoric acid is 2.168, 7.207 and
//     12.346 (NIST 46 has 2.148, 7.198 and 12.375).
var (
	fitHenry          = fit{a: 108.3865, b: 0.01985076, c: -6919.53, d: -40.45154, e: 669365}          // CO2(g) = CO2
	fitSecondBack     = fit{a: 107.8871, b: 0.03252849, c: -5151.79, d: -38.92561, e: 563713.9}        // CO3-2 + H+ = HCO3-
	fitBothBack       = fit{a: 464.1965, b: 0.09344813, c: -26986.16, d: -165.75951, e: 2248628.9}     // CO3-2 + 2H+ = CO2 + H2O
	fitCalcite        = fit{a: -171.9065, b: -0.077993, c: 2839.319, d: 71.595}                        // CaCO3 = Ca+2 + CO3-2
	fitAragonite      = fit{a: -171.9773, b: -0.077993, c: 2903.293, d: 71.595}                        // the other form of it
	fitWater          = fit{a: 293.29227, b: 0.1360833, c: -10576.913, d: -123.73158, f: -6.996455e-5} // H2O = H+ + OH-
	fitGypsum         = fit{a: 72.244, b: -1.474e-2, c: -4040, d: -23.7823}                            // CaSO4.2H2O = Ca+2 + SO4-2 + 2 H2O
	fitPortlandite    = kcal(22.8, -31)                                                                // Ca(OH)2 + 2H+ = Ca+2 + 2 H2O
	fitBisulfate      = fit{a: -56.889, b: 0.006473, c: 2307.9, d: 19.8858}                            // SO4-2 + H+ = HSO4-
	fitHPO4, fitH2PO4 = kcal(12.346, -3.530), kcal(19.553, -4.520)                                     // PO4-3 + 1, 2 H+
)
