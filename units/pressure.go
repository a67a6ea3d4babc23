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

// Units of [AbsolutePressure].
var (
	// Kilopascal (kPa absolute): the base unit.
	Kilopascal = define[absolutePressure, absolutePressure]("kPa absolute", 1, 1,
		"kPa", "kilopascal", "kilopascals", "kPaa", "kPa(a)", "kPa (absolute)", "kPa a", "kPa abs")
	// Bar (bar absolute): 100 kPa absolute.
	Bar = define[absolutePressure, absolutePressure]("bar absolute", 100, 1, "bar", "bars", "bara", "bar(a)", "bar (absolute)", "bar a", "bar abs")
	// PSI (psi absolute): pound-force a square inch.
	PSI = define[absolutePressure, absolutePressure]("psi absolute", 8896443230521, 1290320000000,
		"psi", "PSI", "lbf/in²", "lbf/in2", "psia", "psi(a)", "psi (absolute)", "psi a", "psi abs")
	// StandardAtmosphere (atm absolute): 101.325 kPa.
	StandardAtmosphere = define[absolutePressure, absolutePressure]("atm absolute", 101325, 1000, "atm", "atma", "atm(a)", "atm (absolute)", "atm a", "atm abs")
	// Millibar (mbar absolute): 1/10 kPa absolute.
	Millibar = define[absolutePressure, absolutePressure]("mbar absolute", 1, 10,
		"mbar", "hPa", "millibar", "hPa absolute", "mbara", "mbar(a)", "mbar (absolute)", "mbar a", "mbar abs")
)

var theAbsolutePressure = &dimension{
	name: "absolute pressure", min: 0, max: most,
	ambiguous: otherBasis("g", "gauge", "absolute"),
	unsaid: map[string]string{
		"psi":         bareGauge,
		"lbf/in²":     bareGauge,
		"lbf/in2":     bareGauge,
		"bar":         bareGauge,
		"bars":        bareGauge,
		"kpa":         bareGauge,
		"kilopascal":  bareGauge,
		"kilopascals": bareGauge,
	},
}

const bareGauge = "say absolute or gauge: a gauge shows this unit above the atmosphere, and an absolute pressure is wanted"

func (absolutePressure) describe() *dimension { return theAbsolutePressure }
func (absolutePressure) table() []*unit {
	return []*unit{Kilopascal.u, Bar.u, PSI.u, StandardAtmosphere.u, Millibar.u}
}

// GaugePressure is a pressure above the atmosphere around the gauge, stored in
// kilopascals. It becomes an [AbsolutePressure] through an [Atmosphere].
//
// In: KilopascalGauge.Of(4.2), [Unit.Try], Parse[GaugePressure](text). Out: q.In(KilopascalGauge). Methods: [Quantity].
//
// The psi is exact: the pound-force on the square inch, 8896443230521/1290320000 Pa (NIST Special Publication 811 (2008) appendix B).
type GaugePressure = Quantity[gaugePressure, gaugePressure]

// Units of [GaugePressure].
var (
	// KilopascalGauge (kPa gauge): the base unit.
	KilopascalGauge = define[gaugePressure, gaugePressure]("kPa gauge", 1, 1, "kPa", "kilopascal", "kilopascals", "kPag", "kPa(g)", "kPa (gauge)", "kPa g")
	// BarGauge (bar gauge): 100 kPa gauge.
	BarGauge = define[gaugePressure, gaugePressure]("bar gauge", 100, 1, "bar", "bars", "barg", "bar(g)", "bar (gauge)", "bar g")
	// PSIGauge (psi gauge): pound-force a square inch.
	PSIGauge = define[gaugePressure, gaugePressure]("psi gauge", 8896443230521, 1290320000000,
		"psi", "PSI", "lbf/in²", "lbf/in2", "psig", "psi(g)", "psi (gauge)", "psi g")
	// standardAtmosphereGauge (atm gauge): 101.325 kPa.
	standardAtmosphereGauge = other("atm gauge", 101325, 1000, "atm", "atmg", "atm(g)", "atm (gauge)", "atm g")
	// millibarGauge (mbar gauge): 1/10 kPa gauge.
	millibarGauge = other("mbar gauge", 1, 10, "mbar", "hPa", "millibar", "hPa gauge", "mbarg", "mbar(g)", "mbar (gauge)", "mbar g")
)

var theGaugePressure = &dimension{
	name: "gauge pressure", min: -most, max: most,
	ambiguous: otherBasis("a", "absolute", "gauge"),
}

func (gaugePressure) describe() *dimension { return theGaugePressure }
func (gaugePressure) table() []*unit {
	return []*unit{KilopascalGauge.u, BarGauge.u, PSIGauge.u, standardAtmosphereGauge, millibarGauge}
}

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
