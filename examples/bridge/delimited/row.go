package delimited

import "bytes"

// MaxCells is the most cells that a row may have: as many as the spreadsheets
// have columns.
const MaxCells = 16384

// Row tells the cells of one row apart. It is used again and again, so that
// splitting allocates nothing; the zero value is ready. It is not safe for
// concurrent use.
type Row struct {
	body  []byte // without the line end
	end   []byte
	cells []span
	text  []byte // room for cells with doubled marks
	flaw  string
}

type span struct{ from, to int }

// Split sets w to the cells of raw, as [Reader.Next] returns it. It keeps raw.
func (w *Row) Split(raw []byte, delim byte) {
	w.cells, w.text, w.flaw = w.cells[:0], w.text[:0], ""
	w.body, w.end = cutEnd(raw)
	from := 0
	for {
		to, ok := cellEnd(w.body, from, delim)
		if !ok {
			w.flaw = "text after a closing quotation mark"
		}
		if len(w.cells) == MaxCells {
			w.flaw = "more cells than a spreadsheet has columns"
			return
		}
		w.cells = append(w.cells, span{from, to})
		if to == len(w.body) {
			return
		}
		from = to + 1
	}
}

// cutEnd parts a row from its line end: CR LF, LF, or nothing. A CR at the very
// end of a file counts as one.
func cutEnd(raw []byte) (body, end []byte) {
	n := len(raw)
	if n > 0 && raw[n-1] == '\n' {
		n--
	}
	if n > 0 && raw[n-1] == '\r' {
		n--
	}
	return raw[:n], raw[n:]
}

// cellEnd returns where the cell that starts at from ends; ok is false if there
// is text after its closing mark.
func cellEnd(b []byte, from int, delim byte) (to int, ok bool) {
	i := from
	if i < len(b) && b[i] == '"' {
		i = closing(b, i+1)
		if i == len(b) || b[i] == delim {
			return i, true
		}
		ok = false
	} else {
		ok = true
	}
	for i < len(b) && b[i] != delim {
		i++
	}
	return i, ok
}

// closing returns the place after the mark that closes the text at i.
func closing(b []byte, i int) int {
	for i < len(b) {
		n := bytes.IndexByte(b[i:], '"')
		if n < 0 {
			return len(b)
		}
		i += n + 1
		if i == len(b) || b[i] != '"' {
			return i
		}
		i++
	}
	return len(b)
}

// Len is the number of cells; an empty line has one, which is empty.
func (w *Row) Len() int { return len(w.cells) }

// Body is the row without its line end, as it stands in the file.
func (w *Row) Body() []byte { return w.body }

// End is the line end of the row: CR LF, LF, or nothing at the end of a file.
func (w *Row) End() []byte { return w.end }

// Flaw says what is wrong with the form of the row, "" if nothing is.
func (w *Row) Flaw() string { return w.flaw }

// Cell is the cell i, counted from 0, as it stands in the file.
func (w *Row) Cell(i int) []byte {
	s := w.cells[i]
	return w.body[s.from:s.to]
}

// Text is the cell i without its quotation marks. The bytes are good until the
// next Split.
func (w *Row) Text(i int) []byte {
	b := w.Cell(i)
	if len(b) < 2 || b[0] != '"' {
		return b
	}
	b = b[1:]
	if n := bytes.IndexByte(b, '"'); n == len(b)-1 {
		return b[:n]
	}
	start := len(w.text)
	for len(b) > 0 {
		n := bytes.IndexByte(b, '"')
		if n < 0 {
			break
		}
		w.text = append(w.text, b[:n]...)
		b = b[n+1:]
		if len(b) > 0 && b[0] == '"' {
			w.text = append(w.text, '"')
			b = b[1:]
			continue
		}
		break // the closing mark; what follows it is text
	}
	w.text = append(w.text, b...)
	return w.text[start:]
}

// Empty reports whether every cell is empty or blank, as in the rows that a
// spreadsheet exports after its last one.
func (w *Row) Empty() bool {
	for i := range w.cells {
		if len(bytes.TrimSpace(w.Text(i))) > 0 {
			return false
		}
	}
	return true
}
