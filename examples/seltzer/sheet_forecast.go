package main

import (
	"fmt"
	"time"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// forecastSection is how the ferment may go.
func forecastSection(p plan.Plan, s style) section {
	f := p.Forecast
	out := section{title: "How it may go (days after pitching)"}
	add := func(fig plan.Figure, label, value, note string) {
		out.rows = append(out.rows, row{label, value, note, "", ""}.explain(fig))
	}
	times := func(label string, r plan.Range, note string) {
		if r.High90 == 0 {
			return
		}
		add(plan.FigureForecast, label, days(r.Median), fmt.Sprintf("half of all %s to %s, nine in ten %s to %s%s", inDays(r.Low50),
			days(r.High50), inDays(r.Low90), days(r.High90), note))
	}
	times("a third used", f.Third, "")
	times("dry", f.Dry, fmt.Sprintf("; gravity %s, %.1f g/L of sugar left", number(f.DryGravity, 4), f.DryLeft.In(units.GramPerLitre)))
	times("unchanged for three days", f.Settled, "")
	add(plan.FigureForecast, "chance that it stops", percent(f.Stops), "for good above gravity "+number(f.StopsAbove, 4))
	if f.Next > 0 {
		add(plan.FigureForecast, "a reading tells most", days(f.Next), "where the outcomes lie furthest apart")
	}
	add(plan.FigureHourly, "gas in the fastest hour", s.mass(f.Gas),
		"up to "+s.mass(f.GasMost)+": what a blow-off and the air of a room have to carry; "+days(f.Fastest.Median)+" after pitching")
	add(plan.FigureHourly, "heat in the fastest hour", watts(f.Heat), "up to "+watts(f.HeatMost)+": what cooling has to take, without what the room takes")
	if l := f.Leaves; l != nil {
		side := "slower"
		if l.Faster {
			side = "faster"
		}
		out.rows = append(out.rows, row{label: fmt.Sprintf("From %s on the readings are %s than nine in ten ferments of this plan. Tried on this wash:",
			l.After, side)})
		for _, c := range l.Causes {
			add(plan.FigureCause, c.Name, c.What, c.Said())
		}
	}
	if f.Trust != "" {
		out.rows = append(out.rows, row{label: f.Trust})
	}
	return out
}

// days writes a time as days.
func days(d plan.Duration) string { return inDays(d) + " d" }

func inDays(d plan.Duration) string { return number(time.Duration(d).Hours()/24, 1) }

func watts(p units.Power) string { return number(p.In(units.Watt), 0) + " W" }
