package main

import (
	"bytes"
	"encoding/xml"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// A table as a spreadsheet with a decimal comma exports it: a title, merged heads over two lines, a
// unit in each, a note between and one below. The heights and pressures are of ISO 2533:1975.
const exported = "Luftdruck nach Höhe;;\n;Ort;\nName;altitude (m);pressure (mbar absolute)\nA;500;954,61\n;;\nB;1.000;898,75\nAblesung " +
	"vom Mai;;\nC;4000;616,4\n"

func TestExportedTable(t *testing.T) {
	path := ownFile(t, exported)
	code, out, problems := verify("-checks", "atmosphere_at_altitude", "-map", "Name=label", path)
	if code != 0 || problems != "" {
		t.Fatalf("code %d\n%s%s", code, out, problems)
	}
	for _, want := range []string{
		"handbook: within tolerance", "title      Luftdruck nach Höhe", "rows       3", "the numbers have a decimal comma",
		"line 7: Ablesung vom Mai", `"Ort altitude (m)" as altitude (m)`, "half the last digit that was written",
	} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in\n%s", want, out)
		}
	}
	// The lower of two merged heads is enough to say what it is.
	if code, out, _ := verify("-checks", "atmosphere_at_altitude", "-map", "Name=label", "-map", "Druck (mbar absolute)=pressure",
		ownFile(t, strings.Replace(exported, "pressure (", "Druck (", 1))); code != 0 {
		t.Errorf("code %d\n%s", code, out)
	}
	// A row that is wrong fails, and is named by its line in the file.
	code, out, _ = verify("-checks", "atmosphere_at_altitude", "-map", "Name=label", ownFile(t, strings.Replace(exported, "898,75", "889,75", 1)))
	if code != 1 || !strings.Contains(out, "file_line 6") {
		t.Errorf("code %d\n%s", code, out)
	}
}

// Other exports: commas, tabs, a line of units, heads with " / ", a thousands mark, an empty cell.
func TestExportsReadAlike(t *testing.T) {
	for name, text := range map[string]string{
		"commas":        "altitude (m),pressure (mbar absolute)\n500,954.61\n4000,616.4\n",
		"quoted commas": "altitude (m),pressure (mbar absolute)\n500,\"954,61\"\n4000,\"616,4\"\n",
		"tabs":          "altitude [m]\tpressure [mbar absolute]\n500\t954.61\n4000\t616.4\n",
		"slashes":       "altitude / m;pressure / mbar absolute\n500;954,61\n4000;616,4\n",
		"units below":   "altitude;pressure\nm;mbar absolute\n500;954.61\n4000;616.4\n",
		"thousands":     "altitude (m);pressure (mbar absolute)\n500;954.61\n4,000.0;616.4\n",
		"empty cell":    "altitude (m);pressure (mbar absolute)\n500;954.61\n600;\n4000;616.4\n",
	} {
		code, out, problems := verify("-checks", "atmosphere_at_altitude", ownFile(t, text))
		if code != 0 || !strings.Contains(out, "rows       2") {
			t.Errorf("%s: code %d\n%s%s", name, code, out, problems)
		}
	}
}

// What is not understood is asked for at the terminal, by number or by word.
func TestAsked(t *testing.T) {
	path := ownFile(t, "Höhe (m);Druck (mbar absolute)\n500;954,61\n4000;616,4\n")
	var out, problems bytes.Buffer
	code := talk([]string{path}, strings.NewReader("atmosphere_at_altitude\n1\nno\npressure\n"), &out, &problems)
	if code != 0 || !strings.Contains(out.String(), `"Höhe (m)" as altitude (m)`) {
		t.Errorf("code %d\n%s%s", code, out.String(), problems.String())
	}
	for _, want := range []string{"which function", `what is the column "Höhe (m)"`, "  1  altitude"} {
		if !strings.Contains(problems.String(), want) {
			t.Errorf("not asked: %q in\n%s", want, problems.String())
		}
	}
	// An input that no column gives is asked for too.
	var asked bytes.Buffer
	code = talk([]string{"-checks", "water_density", ownFile(t, "density (kg/m³)\n998.2\n")}, strings.NewReader("20 °C\n"), &out, &asked)
	if code != 0 || !strings.Contains(asked.String(), "temperature") {
		t.Errorf("code %d, %s", code, asked.String())
	}
	// Whoever goes away leaves an error.
	if code = talk([]string{path}, strings.NewReader(""), &out, &asked); code != 2 {
		t.Errorf("code %d without an answer", code)
	}
}

// Without a terminal the message says what it may be and which flag says so.
func TestNotAsked(t *testing.T) {
	for _, c := range []struct {
		args []string
		text string
		want string
	}{
		{nil, "altitude (m);pressure (mbar absolute)\n500;954,61\n", "lists them); it may be atmosphere_at_altitude"},
		{[]string{"-checks", "atmosphere"}, "altitude (m);pressure (mbar absolute)\n500;954,61\n", "there are atmosphere_at_altitude"},
		{[]string{"-checks", "atmosphere_at_altitude"}, "Höhe (m);pressure (mbar absolute)\n500;954,61\n", `-map "Höhe (m)=NAME"; it may be altitude, label`},
		{[]string{"-checks", "water_density"}, "density (kg/m³)\n998.2\n", `-fix "temperature=VALUE °C"`},
		{[]string{"-checks", "water_density", "-fix", "temperature=20 mbar"}, "density (kg/m³)\n998.2\n", "temperature"},
		{nil, "500;954,61\n", "no row of heads"},
		{[]string{"-map", "Höhe"}, "", "not NAME=VALUE"},
	} {
		code, out, problems := verify(append(c.args, ownFile(t, c.text))...)
		if code != 2 || out != "" || !strings.Contains(problems, c.want) {
			t.Errorf("%q: code %d, %q, want %q", c.args, code, problems, c.want)
		}
	}
}

// The page stands alone, says what it must, and draws a point for each row.
func TestReportPage(t *testing.T) {
	path := filepath.Join(t.TempDir(), "report.html")
	own := ownFile(t, strings.Replace(own, "12.23", "12.32", 1))
	if code, _, problems := verify("-report", path, own); code != 1 || problems != "" {
		t.Fatalf("code %d %s", code, problems)
	}
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	page := string(text)
	for _, want := range []string{
		"Fail: 1 of 2 rows out of tolerance", "atmosphere_at_altitude", "version", "commit", "built with", "worst row",
		"Rows out of tolerance", "altitude 5000 ft", `class="out"`, `class="point"`, "A Handbook, 2020",
	} {
		if !strings.Contains(page, want) {
			t.Errorf("no %q", want)
		}
	}
	if found := regexp.MustCompile(`(?i)https?:|src=|@import|url\(|<script|<link|NaN`).FindString(page); found != "" {
		t.Errorf("it holds %q", found)
	}
	for _, picture := range regexp.MustCompile(`(?s)<svg .*?</svg>`).FindAllString(page, -1) {
		if err := xml.Unmarshal([]byte(picture), new(struct{})); err != nil {
			t.Error(err)
		}
	}
	if code, _, problems := verify("-report", path, own); code != 2 || !strings.Contains(problems, "exists") {
		t.Errorf("a second time: code %d %s", code, problems)
	}
}

// FuzzSheet: any text is a table, or an error in one line; nothing panics.
func FuzzSheet(f *testing.F) {
	f.Add(exported)
	f.Add("altitude / m;pressure\nm;kPa\n1;2\n")
	f.Fuzz(func(t *testing.T, text string) {
		s, err := readSheet("fuzz", []byte(text))
		if err != nil {
			return
		}
		ask := &asker{checks: "atmosphere_at_altitude", columns: map[string]string{}, fixed: map[string]string{}}
		if table, err := ask.mapped(s); err == nil && !strings.HasPrefix(table, "# title: ") {
			t.Fatal(table)
		}
	})
}
