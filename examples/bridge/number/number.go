// Package number reads and writes bare decimal numbers, as cells hold them.
package number

import "strconv"

// MaxLength is the most bytes that a number may have.
const MaxLength = 64

// Powers of ten that a float64 holds exactly.
var exact = [...]float64{
	1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11,
	1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22,
}

// Parse reads text as a decimal number: digits with at most one mark among
// them, a sign before, an exponent after. The mark is the byte mark, '.' or
// ','. The result is the nearest float64, as strconv.ParseFloat has it; ok is
// false for all else, for NaN, infinities, hexadecimal digits, spaces and
// underscores, for more than [MaxLength] bytes, and for what a float64 cannot
// hold. It allocates nothing up to 32 bytes.
func Parse(text []byte, mark byte) (v float64, ok bool) {
	if len(text) > MaxLength {
		return 0, false
	}
	i, negative := 0, false
	if i < len(text) && (text[i] == '-' || text[i] == '+') {
		negative = text[i] == '-'
		i++
	}
	var whole uint64
	digits, places, point := 0, 0, -1
	for ; i < len(text); i++ {
		c := text[i]
		if c-'0' <= 9 {
			digits++
			if whole < 1<<59 {
				whole = whole*10 + uint64(c-'0')
			} else {
				whole = 1 << 63 // more than can be held: not the short way
			}
			if point >= 0 {
				places++
			}
			continue
		}
		if c != mark || point >= 0 {
			break
		}
		point = i
	}
	if digits == 0 {
		return 0, false
	}
	power := 0
	if i < len(text) {
		if power, ok = exponent(text[i:]); !ok {
			return 0, false
		}
	}
	power -= places
	if whole >= 1<<53 || power < -22 || power > 22 {
		return long(text, point)
	}
	// Both are exact, so one operation rounds once (Clinger 1990, "How to read
	// floating point numbers accurately").
	if v = float64(whole); power < 0 {
		v /= exact[-power]
	} else {
		v *= exact[power]
	}
	if negative {
		v = -v
	}
	return v, true
}

// exponent reads e, a sign, digits.
func exponent(text []byte) (power int, ok bool) {
	if text[0] != 'e' && text[0] != 'E' {
		return 0, false
	}
	i, negative := 1, false
	if i < len(text) && (text[i] == '-' || text[i] == '+') {
		negative = text[i] == '-'
		i++
	}
	if i == len(text) {
		return 0, false
	}
	for ; i < len(text); i++ {
		if text[i]-'0' > 9 {
			return 0, false
		}
		power = min(power*10+int(text[i]-'0'), 10_000)
	}
	if negative {
		power = -power
	}
	return power, true
}

// long reads what has too many digits for the short way.
func long(text []byte, point int) (float64, bool) {
	var room [MaxLength]byte
	b := append(room[:0], text...)
	if point >= 0 {
		b[point] = '.'
	}
	v, err := strconv.ParseFloat(string(b), 64)
	return v, err == nil
}
