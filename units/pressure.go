package units

// AbsolutePressure is a pressure above vacuum, stored in kilopascals.
//
// In: Kilopascal.Of(4.2), [Unit.Try], Parse[AbsolutePressure](text). Out: q.In(Kilopascal). Methods: [Quantity].
//
// Text has to say "absolute" where a gauge shows the same unit: "12 psi", "2 bar" and
// "80 kPa" are refused by [Parse], "1013 hPa", "940 mbar" and "1 atm" are taken. A unit by
// itself ([Unit.Find]) may leave it out, as its dimension says it.
//
// The psi is exact: the pound-force on the square inch, 8896443230521/1290320000 Pa (NIST Special Publication 811 (2008) appendix B).
type AbsolutePressure = Quantity[absolutePressure, absolutePressure]

// Units of [AbsolutePressure] and [GaugePressure].
const (
	// Kilopascal (kPa absolute): the base unit.
	Kilopascal Unit[absolutePressure, absolutePressure] = absolutePressureUnits
	// Bar (bar absolute): 100 kPa absolute.
	Bar Unit[absolutePressure, absolutePressure] = absolutePressureUnits + 1
	// PSI (psi absolute): pound-force a square inch.
	PSI Unit[absolutePressure, absolutePressure] = absolutePressureUnits + 2
	// StandardAtmosphere (atm absolute): 101.325 kPa.
	StandardAtmosphere Unit[absolutePressure, absolutePressure] = absolutePressureUnits + 3
	// Millibar (mbar absolute): 1/10 kPa absolute.
	Millibar Unit[absolutePressure, absolutePressure] = absolutePressureUnits + 4

	// KilopascalGauge (kPa gauge): the base unit.
	KilopascalGauge Unit[gaugePressure, gaugePressure] = gaugePressureUnits
	// BarGauge (bar gauge): 100 kPa gauge.
	BarGauge Unit[gaugePressure, gaugePressure] = gaugePressureUnits + 1
	// PSIGauge (psi gauge): pound-force a square inch.
	PSIGauge Unit[gaugePressure, gaugePressure] = gaugePressureUnits + 2
)

var theAbsolutePressure = &dimension{
	name: "absolute pressure", min: 0, max: most,
	units: absolutePressureUnits, table: []unit{
		{symbol: "kPa absolute", num: 1, den: 1, names: []string{"kPa", "kilopascal", "kilopascals", "kPaa", "kPa(a)", "kPa (absolute)", "kPa a", "kPa abs"}},
		{symbol: "bar absolute", num: 100, den: 1, names: []string{"bar", "bars", "bara", "bar(a)", "bar (absolute)", "bar a", "bar abs"}},
		{symbol: "psi absolute", num: 8896443230521, den: 1290320000000,
			names: []string{"psi", "PSI", "lbf/in²", "lbf/in2", "psia", "psi(a)", "psi (absolute)", "psi a", "psi abs"}},
		{symbol: "atm absolute", num: 101325, den: 1000, names: []string{"atm", "atma", "atm(a)", "atm (absolute)", "atm a", "atm abs"}},
		{symbol: "mbar absolute", num: 1, den: 10, names: []string{"mbar", "hPa", "millibar", "hPa absolute", "mbara", "mbar(a)",
			"mbar (absolute)", "mbar a", "mbar abs"}},
	},
	ambiguous: otherBasis("g", "gauge", "absolute"),
	unsaid:    because([]string{bareGauge, "psi", "lbf/in²", "lbf/in2", "bar", "bars", "kpa", "kilopascal", "kilopascals"}),
}

const bareGauge = "say absolute or gauge: a gauge shows this unit above the atmosphere, and an absolute pressure is wanted"

func (absolutePressure) describe() *dimension { return theAbsolutePressure }

// GaugePressure is a pressure above the atmosphere around the gauge, stored in
// kilopascals. It becomes an [AbsolutePressure] through an [Atmosphere].
//
// In: KilopascalGauge.Of(4.2), [Unit.Try], Parse[GaugePressure](text). Out: q.In(KilopascalGauge). Methods: [Quantity].
//
// The psi is exact: the pound-force on the square inch, 8896443230521/1290320000 Pa (NIST Special Publication 811 (2008) appendix B).
type GaugePressure = Quantity[gaugePressure, gaugePressure]

var theGaugePressure = &dimension{
	name: "gauge pressure", min: -most, max: most,
	units: gaugePressureUnits, table: []unit{
		{symbol: "kPa gauge", num: 1, den: 1, names: []string{"kPa", "kilopascal", "kilopascals", "kPag", "kPa(g)", "kPa (gauge)", "kPa g"}},
		{symbol: "bar gauge", num: 100, den: 1, names: []string{"bar", "bars", "barg", "bar(g)", "bar (gauge)", "bar g"}},
		{symbol: "psi gauge", num: 8896443230521, den: 1290320000000, names: []string{"psi", "PSI", "lbf/in²", "lbf/in2", "psig", "psi(g)", "psi (gauge)", "psi g"}},
		{symbol: "atm gauge", num: 101325, den: 1000, names: []string{"atm", "atmg", "atm(g)", "atm (gauge)", "atm g"}},
		{symbol: "mbar gauge", num: 1, den: 10, names: []string{"mbar", "hPa", "millibar", "hPa gauge", "mbarg", "mbar(g)", "mbar (gauge)", "mbar g"}},
	},
	ambiguous: otherBasis("a", "absolute", "gauge"),
}

func (gaugePressure) describe() *dimension { return theGaugePressure }

// otherBasis lists the ways to write a pressure on the basis that is not wanted.
func otherBasis(suffix, given, wanted string) map[string]string {
	m := map[string]string{}
	for _, u := range []string{"psi", "bar", "kPa", "mbar", "atm"} {
		why := "this is " + given + " pressure and " + wanted +
			" pressure is wanted; an atmosphere (barometer or altitude) stands between them"
		for _, text := range []string{u + suffix, u + " " + suffix, u + " " + given, u + "(" + suffix + ")"} {
			m[text] = why
		}
	}
	return m
}
