//go:build !kettle

package main

import (
	_ "embed"
	"html/template"
	"io"

	"example.org/zymase/examples/seltzer/plan"
)

//go:embed page.html
var pageText string

var page = template.Must(template.New("page").Parse(pageText))

// What the page shows.
type (
	pageData struct {
		Title    string
		Sections []pageSection
		Plots    []pagePlot
		Cautions []string
	}
	pageSection struct {
		Title string
		Rows  []pageRow
	}
	pageRow  struct{ Label, Value, Note string }
	pagePlot struct {
		Title   string
		Picture template.HTML
	}
)

// printHTML writes a page that needs nothing else: styles and pictures are inside.
func printHTML(w io.Writer, p plan.Plan, curves []plan.Curve, s style) error {
	d := pageData{Title: p.Name, Cautions: inAllWords(s, p.Cautions)}
	for i, sec := range sheet(p, s) {
		if sec.title == cautionTitle {
			continue
		}
		title := sec.title
		if i == 0 {
			title = "The batch"
		}
		out := pageSection{Title: title}
		for _, r := range sec.rows {
			out.Rows = append(out.Rows, pageRow{r.label, r.value, r.note})
		}
		d.Sections = append(d.Sections, out)
	}
	for i, c := range curves {
		c = s.curve(c)
		d.Plots = append(d.Plots, pagePlot{c.Title, template.HTML(plot(c, i))})
	}
	return page.Execute(w, d)
}
