package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/internal/published"
)

// TestTables holds the library to every published table; none is skipped.
func TestTables(t *testing.T) {
	names := published.Names()
	if len(names) == 0 {
		t.Fatal("no tables")
	}
	for _, name := range names {
		t.Run(name, func(t *testing.T) {
			table, err := published.Find(name)
			if err != nil {
				t.Fatal(err)
			}
			result, err := check(table)
			if err != nil {
				t.Fatal(err)
			}
			if len(result.Rows) != table.Len() || table.Len() == 0 {
				t.Errorf("%d rows of %d were checked", len(result.Rows), table.Len())
			}
			for _, row := range result.Rows {
				if !row.OK {
					var b bytes.Buffer
					row.writeText(&b)
					t.Errorf("internal/published/tables/%s.csv:%d: %s", name, row.Line, b.String())
				}
			}
		})
	}
	if _, err := published.All(); err != nil {
		t.Error(err)
	}
}

// verify runs the program.
func verify(args ...string) (code int, stdout, stderr string) {
	var out, problems bytes.Buffer
	code = run(args, &out, &problems)
	return code, out.String(), problems.String()
}

const own = `# title: A handbook's table
# source: A. Writer, A Handbook, 2020, table 3
# status: read
# checks: atmosphere_at_altitude
# tolerance: printed; half the last printed digit
altitude (ft),pressure (psi absolute)
0,14.696
5000,12.23
`

func ownFile(t *testing.T, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "handbook.csv")
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestOwnTable(t *testing.T) {
	code, out, problems := verify(ownFile(t, own))
	if code != 0 || problems != "" || !strings.Contains(out, "handbook: within tolerance") {
		t.Errorf("code %d\n%s%s", code, out, problems)
	}
	code, out, _ = verify(ownFile(t, strings.Replace(own, "12.23", "12.32", 1)))
	if code != 1 || !strings.Contains(out, "FAIL line 8: altitude 5000 ft") || !strings.Contains(out, "1 row out of tolerance") {
		t.Errorf("a wrong row: code %d\n%s", code, out)
	}
	// What the function refuses fails too: nothing is passed over.
	code, out, _ = verify(ownFile(t, own+"90000,0.25\n"))
	if code != 1 || !strings.Contains(out, "refused: ") {
		t.Errorf("a row beyond the range: code %d\n%s", code, out)
	}
}

// TestSpreadsheetSaved reads a table as a spreadsheet writes it back: a mark at
// the start, CR LF, heads in quotes or filled up with commas.
func TestSpreadsheetSaved(t *testing.T) {
	text := strings.ReplaceAll(own, "\n", "\r\n")
	text = strings.Replace(text, "# source: A. Writer, A Handbook, 2020, table 3", `"# source: A. Writer, A Handbook, 2020, table 3",`, 1)
	text = strings.Replace(text, "# status: read", "# status: read,", 1)
	if code, out, problems := verify(ownFile(t, "\ufeff"+text)); code != 0 {
		t.Errorf("code %d\n%s%s", code, out, problems)
	}
}

func TestWrongFiles(t *testing.T) {
	for _, c := range []struct{ old, new, want string }{
		{"# title: A handbook's table\n", "", "no head line \"# title: …\""},
		{"checks: atmosphere_at_altitude", "checks: atmosphere", "there are atmosphere_at_altitude"},
		{"altitude (ft)", "height (ft)", "no input of atmosphere_at_altitude (altitude (m))"},
		{"altitude (ft)", "altitude (L)", "not one of its units"},
		{"altitude (ft)", "altitude (furlong)", "unit \"furlong\" is not known"},
		{"altitude (ft)", "altitude", "has no unit; write one"},
		{"pressure (psi absolute)", "pressure (psi gauge)", "this is gauge pressure"},
		{"5000,", "0.0,", "the same inputs as line 7"},
		{"5000,", "five,", "not a decimal number"},
		{"14.696", "14,696", "3 cells, but 2 columns"},
		{"14.696", "", "an empty cell"},
		{"; half the last printed digit", "", "has no reason"},
		{"# title", "# fixed gravity: 3\n# title", "no such input"},
		{"# title", "# rival: nothing\n# difference: unknown\n# title", "no such table"},
	} {
		code, out, problems := verify(ownFile(t, strings.Replace(own, c.old, c.new, 1)))
		if code != 2 || out != "" || !strings.Contains(problems, c.want) || strings.Count(problems, "\n") != 1 {
			t.Errorf("%q for %q: code %d, %q, want %q", c.new, c.old, code, problems, c.want)
		}
	}
	for _, args := range [][]string{{"-nosuchflag"}, {"nosuchfile.csv"}, {"-table", "nosuchtable"}, {"-table", "x", "y.csv"}} {
		if code, out, problems := verify(args...); code != 2 || out != "" || problems == "" {
			t.Errorf("%q: code %d, %q", args, code, problems)
		}
	}
}

func TestHelp(t *testing.T) {
	if code, out, help := verify("-h"); code != 0 || out != "" || !strings.HasPrefix(help, "usage: verify ") {
		t.Errorf("code %d, %q, %q", code, out, help)
	}
}

func TestWholeReport(t *testing.T) {
	code, out, problems := verify()
	if code != 0 {
		t.Fatalf("code %d %s (TestTables tells the rows)", code, problems)
	}
	for _, want := range []string{"source ", "status ", "function ", "rows ", "worst row ", "tolerance ", "no published row reaches",
		"no row of any table reaches"} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in the report", want)
		}
	}
	for _, name := range published.Names() {
		if !strings.Contains(out, name+": within tolerance\n") {
			t.Errorf("table %s is not in the report", name)
		}
	}
}

// TestUnreadFunctionsSayWhy: no function without a published row but with its reason, and no reason
// for one that has got a row.
func TestUnreadFunctionsSayWhy(t *testing.T) {
	tables, err := published.All()
	if err != nil {
		t.Fatal(err)
	}
	read := map[string]bool{}
	for _, table := range tables {
		if table.Status == published.Read {
			read[table.Checks] = true
		}
	}
	why := unreadReasons()
	for _, f := range catalogue.All() {
		switch {
		case !read[f.Name] && why[f.Name] == "":
			t.Errorf("%s has no row that was read: give it one, or its reason in unread.tsv", f.Name)
		case read[f.Name] && why[f.Name] != "":
			t.Errorf("%s has rows that were read: its reason in unread.tsv can go", f.Name)
		}
		delete(why, f.Name)
	}
	for name := range why {
		t.Errorf("unread.tsv: there is no function %s", name)
	}
}

func TestJSON(t *testing.T) {
	code, out, _ := verify("-json", "-table", published.Names()[0])
	var r Report
	if err := json.Unmarshal([]byte(out), &r); err != nil || code != 0 {
		t.Fatalf("code %d, %v", code, err)
	}
	if len(r.Tables) != 1 || len(r.Tables[0].Rows) != r.Tables[0].Count || r.Tables[0].Source == "" || r.Version != 1 {
		t.Errorf("%+v", r)
	}
}

// TestClosedPipe: a reader that goes away is an error, not half a report.
func TestClosedPipe(t *testing.T) {
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	r.Close()
	defer w.Close()
	var problems bytes.Buffer
	if code := run(nil, w, &problems); code != 2 || problems.Len() == 0 {
		t.Errorf("code %d, %q", code, problems.String())
	}
}
