package main

import (
	"fmt"
	"html"
	"math"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
)

// Size of a plot in its own units; the page scales it.
const (
	plotWidth, plotHeight            = 340.0, 210.0
	plotLeft, plotRight              = 52.0, 12.0
	plotTop, plotBottom              = 12.0, 40.0
	wantedTicks                      = 5
	letterWidth                      = 6.0 // of the plot's text
	labelLift, labelGap, markRadius  = 5.0, 7.0, 4.0
	axisTitleX, axisTitleY, tickText = 6.0, 13.0, 14.0
)

// A scale turns values into places on the page.
type scale struct{ least, most, from, to float64 }

func (s scale) at(v float64) float64 {
	return s.from + (v-s.least)/(s.most-s.least)*(s.to-s.from)
}

// ticks are round numbers inside the scale: 1, 2 or 5 times a power of ten apart.
func (s scale) ticks() (at []float64, places int) {
	step := math.Pow(10, math.Floor(math.Log10((s.most-s.least)/wantedTicks)))
	for _, k := range []float64{1, 2, 5, 10} {
		if (s.most-s.least)/(k*step) <= wantedTicks+1 {
			step *= k
			break
		}
	}
	places = max(0, -int(math.Floor(math.Log10(step)+1e-9)))
	for i := math.Ceil(s.least/step - 1e-9); i*step <= s.most+1e-9*step; i++ {
		at = append(at, i*step+0) // + 0 turns −0 into 0
	}
	return at, places
}

// span is the range of the values, a little wider.
func span(values []float64) (least, most float64) {
	least, most = values[0], values[0]
	for _, v := range values {
		least, most = min(least, v), max(most, v)
	}
	margin := 0.06 * (most - least)
	if margin == 0 {
		margin = 1
	}
	return least - margin, most + margin
}

// plot draws a curve as an SVG picture with axes, units, and words for those who
// cannot see it. Every text in it is escaped.
func plot(c plan.Curve, id int) string {
	var xs, ys []float64
	for _, p := range c.Points {
		xs, ys = append(xs, p[0]), append(ys, p[1])
	}
	for _, b := range c.LowerUpper {
		ys = append(ys, b[1], b[2])
	}
	for _, p := range c.Marks {
		xs, ys = append(xs, p[0]), append(ys, p[1])
	}
	if c.At != nil {
		xs, ys = append(xs, c.At[0]), append(ys, c.At[1])
	}
	if c.Limit != nil {
		ys = append(ys, *c.Limit)
	}
	x := scale{from: plotLeft, to: plotWidth - plotRight}
	y := scale{from: plotHeight - plotBottom, to: plotTop}
	x.least, x.most = xs[0], xs[0]
	for _, v := range xs {
		x.least, x.most = min(x.least, v), max(x.most, v)
	}
	y.least, y.most = span(ys)

	var b strings.Builder
	esc := html.EscapeString
	fmt.Fprintf(&b, `<svg viewBox="0 0 %g %g" role="img" aria-labelledby="t%d d%d">`, plotWidth, plotHeight, id, id)
	fmt.Fprintf(&b, `<title id="t%d">%s</title><desc id="d%d">%s</desc>`, id, esc(c.Title), id, esc(describe(c)))
	b.WriteString(`<g class="grid">`)
	at, places := y.ticks()
	for _, v := range at {
		fmt.Fprintf(&b, `<path d="M%.1f %.1fH%.1f"/><text x="%.1f" y="%.1f" text-anchor="end">%.*f</text>`,
			x.from, y.at(v), x.to, x.from-labelGap, y.at(v)+labelLift, places, v)
	}
	at, places = x.ticks()
	for _, v := range at {
		fmt.Fprintf(&b, `<path d="M%.1f %.1fV%.1f"/><text x="%.1f" y="%.1f" text-anchor="middle">%.*f</text>`,
			x.at(v), y.from, y.to, x.at(v), y.from+tickText, places, v)
	}
	fmt.Fprintf(&b, `</g><text class="axis" x="%.1f" y="%.1f" text-anchor="middle">%s</text>`, (x.from+x.to)/2, plotHeight-axisTitleX, esc(c.X.String()))
	fmt.Fprintf(&b, `<text class="axis" transform="translate(%.1f %.1f)rotate(-90)" text-anchor="middle">%s</text>`, axisTitleY,
		(y.from+y.to)/2, esc(c.Y.String()))
	for k, band := range [][][3]float64{c.LowerUpper, c.Inner} {
		if len(band) == 0 {
			continue
		}
		fmt.Fprintf(&b, `<path class="%s" d="`, [...]string{"band", "band inner"}[k])
		for i, p := range band {
			fmt.Fprintf(&b, "%c%.1f %.1f", "LM"[btoi(i == 0)], x.at(p[0]), y.at(p[1]))
		}
		for i := len(band) - 1; i >= 0; i-- {
			fmt.Fprintf(&b, "L%.1f %.1f", x.at(band[i][0]), y.at(band[i][2]))
		}
		b.WriteString(`Z"/>`)
	}
	if c.Limit != nil {
		fmt.Fprintf(&b, `<path class="limit" d="M%.1f %.1fH%.1f"/><text class="limit" x="%.1f" y="%.1f">%s</text>`,
			x.from, y.at(*c.Limit), x.to, x.from+labelGap, y.at(*c.Limit)-labelLift, esc(c.LimitName))
	}
	b.WriteString(`<path class="curve" d="`)
	for i, p := range c.Points {
		fmt.Fprintf(&b, "%c%.1f %.1f", "LM"[btoi(i == 0)], x.at(p[0]), y.at(p[1]))
	}
	b.WriteString(`"/>`)
	for _, p := range c.Marks {
		fmt.Fprintf(&b, `<circle cx="%.1f" cy="%.1f" r="%g"/>`, x.at(p[0]), y.at(p[1]), markRadius)
	}
	if c.At != nil {
		px, py := x.at(c.At[0]), y.at(c.At[1])
		anchor, dx := "start", labelGap
		if px+labelGap+letterWidth*float64(len(c.AtName)) > plotWidth {
			anchor, dx = "end", -labelGap
		}
		fmt.Fprintf(&b, `<circle cx="%.1f" cy="%.1f" r="%g"/><text class="at" x="%.1f" y="%.1f" text-anchor="%s">%s</text>`,
			px, py, markRadius, px+dx, py+tickText, anchor, esc(c.AtName))
	}
	b.WriteString(`</svg>`)
	return b.String()
}

func btoi(b bool) int {
	if b {
		return 1
	}
	return 0
}

// describe says in words what a plot shows.
func describe(c plan.Curve) string {
	first, last := c.Points[0], c.Points[len(c.Points)-1]
	s := fmt.Sprintf("%s from %.4g at %.4g to %.4g at %.4g (%s).", c.Y, first[1], first[0], last[1], last[0], c.X)
	if c.At != nil {
		s += fmt.Sprintf(" The %s: %.3g at %.3g.", c.AtName, c.At[1], c.At[0])
	}
	for _, p := range c.Marks {
		s += fmt.Sprintf(" Read: %.4g at %.3g.", p[1], p[0])
	}
	if c.BandName != "" {
		s += " Band: " + c.BandName + "."
	}
	if c.Limit != nil {
		s += fmt.Sprintf(" Line: %s, %.4g.", c.LimitName, *c.Limit)
	}
	return s
}
