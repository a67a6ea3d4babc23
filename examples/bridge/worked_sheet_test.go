package main

import (
	"strconv"
	"strings"
	"testing"

	"example.org/zymase/examples/bridge/sheet"
)

// The worked sheet in a real spreadsheet: each figure asks the bridge and is
// what it was when the sheet was written; with another altitude, the figures of
// the gauges change.
func TestWorkedSheet(t *testing.T) {
	o := findOffice(t)
	o.install(t, map[string]string{"Exporter": exporter})
	address, requests := serveCells(t)
	text, err := sheet.Write(address)
	if err != nil {
		t.Fatal(err)
	}
	questions := strings.Count(string(text), "of:=IFERROR(") + strings.Count(string(text), "of:=COM.MICROSOFT.WEBSERVICE(")
	rows := cells(t, o.export(t, o.put(t, "sheet.fods", text)))
	figures := 0
	for _, row := range rows {
		if len(row) > 4 && row[0] == "Caution" { // as the bridge says it, and as it was when written
			figures++
			if row[1] != row[4] || !strings.HasSuffix(row[1], ".") {
				t.Errorf("%s: %q, written as %q", row[0], row[1], row[4])
			}
			continue
		}
		if len(row) > 3 && row[1] != "" && row[3] != "" {
			figures++
			if row[1] != row[3] {
				t.Errorf("%s: %s, written as %s", row[0], row[1], row[3])
			}
		}
	}
	if figures < questions || questions == 0 {
		t.Errorf("%d figures for %d questions", figures, questions)
	}
	if got := int(requests.get.Load()); got < questions || got > 3*questions {
		t.Errorf("%d GET requests for %d questions", got, questions)
	}

	const altitude = `office:value="640"><text:p>640<`
	if strings.Count(string(text), altitude) != 1 {
		t.Fatal("the sheet has no altitude of 640 m to change")
	}
	lower := strings.Replace(string(text), altitude, `office:value="0"><text:p>0<`, 1)
	changed := 0
	for _, row := range cells(t, o.export(t, o.put(t, "lower.fods", []byte(lower)))) {
		if len(row) < 4 || row[1] == "" || row[3] == "" || row[0] == "Against the rating" {
			continue
		}
		now, err := strconv.ParseFloat(row[1], 64)
		if err != nil {
			t.Errorf("%s: %s", row[0], row[1])
			continue
		}
		if then, _ := strconv.ParseFloat(row[3], 64); row[2] == "bar gauge" && now < then {
			changed++ // thicker air, so less on the gauge
		}
	}
	if changed == 0 {
		t.Error("no figure of a gauge is lower at sea level")
	}
}
