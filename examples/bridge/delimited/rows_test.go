package delimited

import (
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"strings"
	"testing"
	"testing/iotest"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// read returns the cells of every row that is not an empty line, and the bytes
// of all rows joined.
func read(in io.Reader, delim byte) (cells [][]string, whole []byte, flaws int, err error) {
	rows := NewReader(in, delim)
	var row Row
	for {
		raw, err := rows.Next()
		if err == io.EOF {
			return cells, whole, flaws, nil
		}
		if err != nil {
			return cells, whole, flaws, err
		}
		whole = append(whole, raw...)
		row.Split(raw, delim)
		if row.Flaw() != "" {
			flaws++
		}
		if len(row.Body()) == 0 {
			continue
		}
		var line []string
		for i := range row.Len() {
			line = append(line, string(row.Text(i)))
		}
		cells = append(cells, line)
	}
}

func TestRows(t *testing.T) {
	for _, c := range []struct {
		name, in string
		want     [][]string
		flaws    int
	}{
		{"plain", "a,b\n1,2\n", [][]string{{"a", "b"}, {"1", "2"}}, 0},
		{"no last line end", "a,b\n1,2", [][]string{{"a", "b"}, {"1", "2"}}, 0},
		{"CR LF", "a,b\r\n1,2\r\n", [][]string{{"a", "b"}, {"1", "2"}}, 0},
		{"CR at the end", "a,b\r", [][]string{{"a", "b"}}, 0},
		{"byte order mark", "\xEF\xBB\xBF\"a\",b\n", [][]string{{"a", "b"}}, 0},
		{"delimiter in quotes", "\"a,b\",c\n", [][]string{{"a,b", "c"}}, 0},
		{"line end in quotes", "\"a\r\nb\",c\nd,e\n", [][]string{{"a\r\nb", "c"}, {"d", "e"}}, 0},
		{"doubled marks", `"say ""hop""",""""` + "\n", [][]string{{`say "hop"`, `"`}}, 0},
		{"empty quoted", "\"\",\n", [][]string{{"", ""}}, 0},
		{"mark inside a plain cell", "12\" pipe,b\nc,d\n", [][]string{{`12" pipe`, "b"}, {"c", "d"}}, 0},
		{"text after a closing mark", "\"a\"x,b\nc,d\n", [][]string{{"ax", "b"}, {"c", "d"}}, 1},
		{"empty lines", "a\n\n\nb\n", [][]string{{"a"}, {"b"}}, 0},
		{"spaces are kept", " a , b\n", [][]string{{" a ", " b"}}, 0},
		{"lone CR is text", "a\rb,c\n", [][]string{{"a\rb", "c"}}, 0},
		{"nothing", "", nil, 0},
		{"a mark alone", "\xEF\xBB\xBF", nil, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			for _, slow := range []bool{false, true} {
				var in io.Reader = strings.NewReader(c.in)
				if slow {
					in = iotest.OneByteReader(in)
				}
				got, whole, flaws, err := read(in, ',')
				if err != nil {
					t.Fatal(err)
				}
				if diff := cmp.Diff(c.want, got); diff != "" {
					t.Error(diff)
				}
				if flaws != c.flaws {
					t.Errorf("%d flaws, want %d", flaws, c.flaws)
				}
				if want := strings.TrimPrefix(c.in, "\xEF\xBB\xBF"); string(whole) != want {
					t.Errorf("rows joined are %q, want %q", whole, want)
				}
			}
		})
	}
}

func TestRefused(t *testing.T) {
	for _, c := range []struct {
		name, in string
		line     int
		say      string
	}{
		{"open mark", "a\nb,\"c\nd\n", 2, "not closed"},
		{"open mark that swallows the file", "a\n\"" + strings.Repeat("x\n", MaxRow), 2, "more than"},
		{"a row without end", strings.Repeat("x", 3*MaxRow), 1, "more than"},
		{"a row one byte too long", strings.Repeat("x", MaxRow) + "\n", 1, "more than"},
		{"NUL", "a\nb\nc\x00d\n", 3, "NUL"},
		{"Latin-1", "temperature (\xB0C)\n", 1, "UTF-8"},
		{"UTF-16 LE", "\xFF\xFEa\x00", 1, "UTF-16"},
		{"UTF-16 BE", "\xFE\xFF\x00a", 1, "UTF-16"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, _, _, err := read(strings.NewReader(c.in), ',')
			form, ok := errors.AsType[*FormError](err)
			if !ok || form.Line != c.line || !strings.Contains(form.Reason, c.say) {
				t.Errorf("error %v, want line %d and %q", err, c.line, c.say)
			}
		})
	}
	boom := errors.New("disk gone")
	if _, _, _, err := read(io.MultiReader(strings.NewReader("a\nb"), iotest.ErrReader(boom)), ','); err != boom {
		t.Errorf("error %v, want %v", err, boom)
	}
	if _, _, _, err := read(stuck{}, ','); err != io.ErrNoProgress {
		t.Errorf("error %v, want %v", err, io.ErrNoProgress)
	}
}

type stuck struct{}

func (stuck) Read([]byte) (int, error) { return 0, nil }

// A row as long as may be, over the end of the first buffer.
func TestLongestRow(t *testing.T) {
	long := "\"" + strings.Repeat("x\n", (MaxRow-4)/2) + "\"\n"
	got, _, _, err := read(strings.NewReader("a\n"+long+"b\n"), ',')
	if err != nil || len(got) != 3 || len(got[1][0]) != len(long)-3 {
		t.Fatalf("%d rows, %v", len(got), err)
	}
}

func TestManyCells(t *testing.T) {
	if MaxCells != 16384 || MaxRow != 1048576 {
		t.Errorf("%d cells, %d bytes", MaxCells, MaxRow)
	}
	var row Row
	row.Split([]byte(strings.Repeat(",", MaxCells-1)), ',')
	if row.Flaw() != "" || row.Len() != MaxCells {
		t.Errorf("%d cells, flaw %q", row.Len(), row.Flaw())
	}
	row.Split([]byte(strings.Repeat(",", MaxCells)), ',')
	if row.Flaw() == "" {
		t.Error("one cell too many is not told")
	}
}

func TestLine(t *testing.T) {
	rows := NewReader(strings.NewReader("a\n\"b\nb\"\nc\n\nd"), ',')
	var got []int
	for {
		if _, err := rows.Next(); err != nil {
			break
		}
		got = append(got, rows.Line())
	}
	if diff := cmp.Diff([]int{1, 2, 4, 5, 6}, got); diff != "" {
		t.Error(diff)
	}
}

func TestEmpty(t *testing.T) {
	var row Row
	for text, want := range map[string]bool{",,": true, "": true, " ,\"\",\" \"": true, ",0": false, `""""`: false} {
		row.Split([]byte(text), ',')
		if row.Empty() != want {
			t.Errorf("Empty of %q is %v", text, !want)
		}
	}
}

// What encoding/csv reads, this package reads the same.
func agree(t interface{ Fatalf(string, ...any) }, text []byte, delim byte) {
	std := csv.NewReader(bytes.NewReader(text))
	std.Comma = rune(delim)
	std.FieldsPerRecord = -1
	want, err := std.ReadAll()
	if err != nil || bytes.HasPrefix(text, []byte("\xEF\xBB\xBF")) {
		return // it refuses bare marks, and keeps a byte order mark
	}
	got, whole, flaws, err := read(bytes.NewReader(text), delim)
	if err != nil {
		if _, ok := errors.AsType[*FormError](err); !ok {
			t.Fatalf("%q: %v", text, err)
		}
		return // UTF-8, NUL
	}
	if flaws > 0 {
		t.Fatalf("%q: %d flaws", text, flaws)
	}
	if !bytes.Equal(whole, text) {
		t.Fatalf("%q comes back as %q", text, whole)
	}
	for _, row := range got { // encoding/csv turns CR LF in quotes into LF
		for i := range row {
			row[i] = strings.ReplaceAll(row[i], "\r\n", "\n")
		}
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Fatalf("%q: %s", text, diff)
	}
}

func TestAsEncodingCSV(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		delim := rapid.SampledFrom([]byte{',', ';', '\t'}).Draw(t, "delim")
		text := rapid.SliceOf(rapid.SampledFrom([]byte("\"\",;\r\n\nab \t"))).Draw(t, "text")
		agree(t, text, delim)
	})
}

// What encoding/csv writes comes back cell by cell, in pieces of any size.
func TestWhatEncodingCSVWrites(t *testing.T) {
	cell := rapid.StringMatching("[a-z°\"',; \n]{0,12}")
	rapid.Check(t, func(t *rapid.T) {
		width := rapid.IntRange(1, 5).Draw(t, "width")
		want := rapid.SliceOfN(rapid.SliceOfN(cell, width, width), 1, 20).Draw(t, "cells")
		var file bytes.Buffer
		w := csv.NewWriter(&file)
		w.UseCRLF = rapid.Bool().Draw(t, "crlf")
		w.WriteAll(want)
		whole := file.String()
		got, back, _, err := read(iotest.HalfReader(&file), ',')
		if err != nil || string(back) != whole {
			t.Fatalf("%q comes back as %q, %v", whole, back, err)
		}
		var kept [][]string // empty lines are no rows
		for _, row := range want {
			if width > 1 || row[0] != "" {
				kept = append(kept, row)
			}
		}
		for _, row := range got {
			for i := range row {
				row[i] = strings.ReplaceAll(row[i], "\r\n", "\n")
			}
		}
		if diff := cmp.Diff(kept, got); diff != "" {
			t.Fatal(diff)
		}
	})
}

// What this package writes, encoding/csv reads.
func TestAppendText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		delim := rapid.SampledFrom([]byte{',', ';'}).Draw(t, "delim")
		text := rapid.StringMatching("[=+@\t\r-]?[a-z°\"',;= \n-]{1,12}").Draw(t, "text")
		line := append(AppendText([]byte("a"+string(delim)), text, delim), '\n')
		std := csv.NewReader(bytes.NewReader(line))
		std.Comma = rune(delim)
		got, err := std.Read()
		want := text
		if strings.ContainsRune("=+-@\t\r", rune(text[0])) {
			want = "'" + text
		}
		want = strings.ReplaceAll(want, "\r\n", "\n") // as encoding/csv has it
		if err != nil || len(got) != 2 || got[1] != want {
			t.Fatalf("%q is written as %q, read as %q, %v", text, line, got, err)
		}
	})
}

func TestAppendNumber(t *testing.T) {
	for _, c := range []struct {
		text  string
		delim byte
		comma bool
		want  string
	}{
		{"-0.5", ',', false, "-0.5"},
		{"-0.5", ';', true, "-0,5"},
		{".5", ';', true, ",5"},
		{"-0.5", ',', true, `"-0,5"`},
		{"12", ',', true, "12"},
		{"1.5e-07", ';', true, "1,5e-07"},
	} {
		if got := string(AppendNumber(nil, []byte(c.text), c.delim, c.comma)); got != c.want {
			t.Errorf("%+v: %s", c, got)
		}
	}
}

func TestReadingAllocatesNothing(t *testing.T) {
	text := []byte(strings.Repeat("1,\"a \"\"b\"\"\",3\r\n4,5,6\r\n", 100_000))
	if n := testing.AllocsPerRun(1, func() {
		rows := NewReader(bytes.NewReader(text), ',')
		var row Row
		for {
			raw, err := rows.Next()
			if err != nil {
				break
			}
			row.Split(raw, ',')
			row.Text(1)
		}
	}); n > 20 {
		t.Errorf("%v allocations for 200,000 rows", n)
	}
}

func FuzzRows(f *testing.F) {
	for _, s := range []string{"a,b\n1,2\n", "\"a\"\"b\",c\r\n", "\"a\nb\";c", "\xEF\xBB\xBF\"a\"\n", "\"a\"x\n", "a\"b\n", "\r\r\n"} {
		f.Add([]byte(s), byte(','))
	}
	f.Fuzz(func(t *testing.T, text []byte, delim byte) {
		if delim != ';' && delim != '\t' {
			delim = ','
		}
		agree(t, text, delim)
		got, whole, _, err := read(bytes.NewReader(text), delim)
		again, slow, _, err2 := read(iotest.OneByteReader(bytes.NewReader(text)), delim)
		if (err == nil) != (err2 == nil) || !bytes.Equal(whole, slow) || !cmp.Equal(got, again) {
			t.Fatalf("%q read in single bytes differs", text)
		}
	})
}

func BenchmarkRead(b *testing.B) {
	text := []byte(strings.Repeat("batch 7,1.0452,12.5,dry\r\n", 100_000))
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		rows := NewReader(bytes.NewReader(text), ',')
		var row Row
		for {
			raw, err := rows.Next()
			if err != nil {
				break
			}
			row.Split(raw, ',')
		}
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/100_000, "ns/row")
}
