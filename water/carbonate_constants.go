package water

// Constants of the carbonate system, of water, of minerals and of ion pairs, at
// infinite dilution, mol/kg of water, 0 to 90 °C. They are of different worth:
//
//   - CO2, both steps of carbonic acid, calcite and aragonite: L. N. Plummer &
//     E. Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011-1040, as the USGS data base
//     WATEQ4F prints them (read); the first step is their CO3-2 + 2H+ = CO2 + H2O less
//     the second. Uncertainty 0.01 in log K.
//   - Ammonium and the three protons of phosphate together: NIST Standard Reference
//     Database 46 as in a USGS data base (read). One and two protons of phosphate: as
//     PHREEQC 3 has them in its usual data base (recalled from memory), so that pKa is
//     2.168, 7.207 and 12.346; NIST has 2.148, 7.198 and 12.375.
//   - Water, bisulfate, portlandite, the pairs of carbonate, sulfate, phosphate and
//     hydroxide: recalled from memory as USGS data bases hold them; uncertainty not stated.
//   - Gypsum and its pair CaSO4: fitted here to rows of solubility computed with the general
//     geochemistry program PHREEQC 3, 0 to 60 °C; agreement with those rows is no evidence.
//     Measured solubility (Marshall & Slusher) is met within 3 %.
//   - CaHCO3+: taken one power of ten weak, chosen so that calcite under CO2 agrees with rows
//     of the same program; measured solubility is met within 10 %.
var (
	fitHenry          = fit{a: 108.3865, b: 0.01985076, c: -6919.53, d: -40.45154, e: 669365}          // CO2(g) = CO2
	fitSecondBack     = fit{a: 107.8871, b: 0.03252849, c: -5151.79, d: -38.92561, e: 563713.9}        // CO3-2 + H+ = HCO3-
	fitBothBack       = fit{a: 464.1965, b: 0.09344813, c: -26986.16, d: -165.75951, e: 2248628.9}     // CO3-2 + 2H+ = CO2 + H2O
	fitCalcite        = fit{a: -171.9065, b: -0.077993, c: 2839.319, d: 71.595}                        // CaCO3 = Ca+2 + CO3-2
	fitAragonite      = fit{a: -171.9773, b: -0.077993, c: 2903.293, d: 71.595}                        // the other form of it
	fitWater          = fit{a: 293.29227, b: 0.1360833, c: -10576.913, d: -123.73158, f: -6.996455e-5} // H2O = H+ + OH-
	fitGypsum         = fit{a: 13.464946, b: -0.0321403333, c: -2513.448193}                           // CaSO4.2H2O = Ca+2 + SO4-2 + 2 H2O
	fitPortlandite    = kcal(22.8, -31)                                                                // Ca(OH)2 + 2H+ = Ca+2 + 2 H2O
	fitBisulfate      = fit{a: -56.889, b: 0.006473, c: 2307.9, d: 19.8858}                            // SO4-2 + H+ = HSO4-
	fitHPO4, fitH2PO4 = kcal(12.346, -3.530), kcal(19.553, -4.520)                                     // PO4-3 + 1, 2 H+
)
