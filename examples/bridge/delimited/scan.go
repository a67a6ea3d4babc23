package delimited

import "bytes"

// The states inside a row.
const (
	atStart  = iota // of a cell
	plain           // in a cell without quotes, or after a closing mark and more text
	quoted          // inside quotation marks
	quoteEnd        // just after a mark inside quotation marks: closing, or the first of two
)

// scanner finds the end of a row in a buffer that may grow between calls.
type scanner struct {
	at    int // bytes looked at
	state int
	lines int // line ends looked at
	ended int // how far no line end and no mark was seen, for rows without marks
}

// open reports whether the bytes looked at end inside quotation marks.
func (s *scanner) open() bool { return s.state == quoted }

// rowEnd returns the length of the first row of b with its line end, or 0 if b
// holds no whole row. b must start with the bytes of the call before.
func (s *scanner) rowEnd(b []byte, delim byte) int {
	if s.at == 0 { // rows without any mark are most rows
		n := bytes.IndexByte(b[s.ended:], '\n')
		line := b
		if n >= 0 {
			line = b[:s.ended+n]
		}
		if bytes.IndexByte(line[s.ended:], '"') < 0 {
			if n < 0 {
				s.ended = len(b)
				return 0
			}
			s.lines = 1
			return s.ended + n + 1
		}
	}
	for ; s.at < len(b); s.at++ {
		c := b[s.at]
		switch s.state {
		case quoted:
			switch c {
			case '"':
				s.state = quoteEnd
			case '\n':
				s.lines++
			}
			continue
		case quoteEnd:
			if c == '"' {
				s.state = quoted
				continue
			}
		case atStart:
			if c == '"' {
				s.state = quoted
				continue
			}
		}
		switch c {
		case delim:
			s.state = atStart
		case '\n':
			s.at++
			s.lines++
			return s.at
		default:
			s.state = plain
		}
	}
	return 0
}
