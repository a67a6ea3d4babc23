package delimited

import (
	"bytes"
	"fmt"
	"io"
	"unicode/utf8"
)

// MaxRow is the most bytes that a row may have, line ends inside quotes
// included: a mark that is never closed must not swallow a whole file.
const MaxRow = 1 << 20

const bufferSize = 256 << 10

// FormError reports a file that cannot be told apart into rows, or that is not
// text. What was read before it stands.
type FormError struct {
	Line   int    // where the row starts, 1 for the first line
	Reason string // what is wrong, and what to do
}

// Error reads: `line 12: a quotation mark is not closed`.
func (e *FormError) Error() string { return fmt.Sprintf("line %d: %s", e.Line, e.Reason) }

// Reader cuts a stream into rows. It is not safe for concurrent use.
type Reader struct {
	in         io.Reader
	delim      byte
	buf        []byte
	start, end int // what is not yet given out
	line       int // of the row at start
	lines      int // in the row given out last
	done       bool
	mark       bool
	err        error
}

// NewReader returns a Reader of rows whose cells are parted by delim, which is
// an ASCII character other than a quotation mark or a line end.
func NewReader(in io.Reader, delim byte) *Reader {
	return &Reader{in: in, delim: delim, buf: make([]byte, bufferSize), line: 1}
}

// Mark reports whether the stream starts with a byte order mark. It is known
// after the first Next.
func (r *Reader) Mark() bool { return r.mark }

// Line is the line on which the row that Next returned last starts.
func (r *Reader) Line() int { return r.line - r.lines }

// Next returns the next row with its line end. The bytes are good until the
// next call. At the end of the stream the error is io.EOF; a *FormError if the
// stream is not text or has a row without end; otherwise what the stream said.
func (r *Reader) Next() ([]byte, error) {
	if r.err != nil {
		return nil, r.err
	}
	raw, err := r.next()
	if err != nil {
		r.err = err
		return nil, err
	}
	return raw, nil
}

func (r *Reader) next() ([]byte, error) {
	if r.line == 1 && !r.mark && r.lines == 0 {
		if err := r.open(); err != nil {
			return nil, err
		}
	}
	var scan scanner
	for {
		n := scan.rowEnd(r.buf[r.start:r.end], r.delim)
		if n > MaxRow {
			return nil, r.refuse("the row has more than %d bytes; is a quotation mark not closed?", MaxRow)
		}
		if n > 0 {
			return r.give(n, scan.lines)
		}
		if r.end-r.start > MaxRow {
			return nil, r.refuse("the row has more than %d bytes; is a quotation mark not closed?", MaxRow)
		}
		if r.done {
			switch {
			case r.start == r.end:
				return nil, io.EOF
			case scan.open():
				return nil, r.refuse("a quotation mark is not closed")
			}
			return r.give(r.end-r.start, scan.lines+1)
		}
		if err := r.fill(); err != nil {
			return nil, err
		}
	}
}

// give hands out the next n bytes, once they are known to be text.
func (r *Reader) give(n, lines int) ([]byte, error) {
	raw := r.buf[r.start : r.start+n]
	if !utf8.Valid(raw) {
		return nil, r.refuse("the file is not UTF-8; export it again as CSV UTF-8")
	}
	if bytes.IndexByte(raw, 0) >= 0 {
		return nil, r.refuse("the file has a NUL byte, so it is not CSV in UTF-8; export it again as CSV UTF-8")
	}
	r.start += n
	r.line += lines
	r.lines = lines
	return raw, nil
}

// open passes over a byte order mark, and tells UTF-16 by its own.
func (r *Reader) open() error {
	for r.end-r.start < 3 && !r.done {
		if err := r.fill(); err != nil {
			return err
		}
	}
	head := r.buf[r.start:r.end]
	switch {
	case bytes.HasPrefix(head, []byte("\xEF\xBB\xBF")):
		r.start += 3
		r.mark = true
	case bytes.HasPrefix(head, []byte("\xFF\xFE")), bytes.HasPrefix(head, []byte("\xFE\xFF")):
		return r.refuse("the file is UTF-16; export it again as CSV UTF-8")
	}
	return nil
}

// fill reads more, after what is not yet given out.
func (r *Reader) fill() error {
	if r.start > 0 {
		copy(r.buf, r.buf[r.start:r.end])
		r.end -= r.start
		r.start = 0
	}
	if r.end == len(r.buf) {
		r.buf = append(r.buf, make([]byte, len(r.buf))...)
	}
	for range 100 {
		n, err := r.in.Read(r.buf[r.end:])
		r.end += n
		if err == io.EOF {
			r.done = true
			return nil
		}
		if err != nil || n > 0 {
			return err
		}
	}
	return io.ErrNoProgress
}

func (r *Reader) refuse(format string, args ...any) error {
	return &FormError{Line: r.line, Reason: fmt.Sprintf(format, args...)}
}
