package number

import (
	"math"
	"strconv"
)

// Digits is how many significant digits [Append] writes: more than any formula
// of the library is good for, and few enough to hide the noise of binary
// arithmetic (0.9999999999999999 is written 1).
const Digits = 12

// Append appends v rounded to [Digits] significant digits, without zeros at the
// end: 0.1, 1200000, 1e+21. Zero has no sign. It is the digits of
// strconv.AppendFloat, in about half its time.
func Append(b []byte, v float64) []byte {
	size := math.Abs(v)
	switch {
	case size == 0:
		return append(b, '0')
	case !(size >= 1e-5 && size < 1e15):
		return strconv.AppendFloat(b, round(v), 'e', -1, 64)
	}
	// size = digits / 10^places, digits of 12 places.
	_, two := math.Frexp(size)
	places := Digits - 1 - (two-1)*1233>>12 // 1233/4096 is log 2
	digits := scale(size, places)
	if digits >= 1e12 {
		places--
		digits = scale(size, places)
	} else if digits < 1e11 {
		places++
		digits = scale(size, places)
	}
	whole := math.Floor(digits)
	rest := digits - whole
	// The product is off by 1e12·2^-53 at most, so only near a half can the
	// rounding be in doubt.
	if math.Abs(rest-0.5) < 0.001 || places < -22 || places > 22 {
		return strconv.AppendFloat(b, round(v), 'f', -1, 64)
	}
	if rest > 0.5 {
		whole++
	}
	if v < 0 {
		b = append(b, '-')
	}
	return appendPlaces(b, uint64(whole), places)
}

// scale returns size·10^places.
func scale(size float64, places int) float64 {
	switch {
	case places < -22 || places > 22:
		return 5e11 // a number in range; the caller takes the long way
	case places < 0:
		return size / exact[-places]
	}
	return size * exact[places]
}

// round is the nearest number of Digits significant digits.
func round(v float64) float64 {
	var room [32]byte
	v, _ = strconv.ParseFloat(string(strconv.AppendFloat(room[:0], v, 'e', Digits-1, 64)), 64)
	return v
}

// appendPlaces appends digits / 10^places without zeros at the end; digits has
// [Digits] of them, or one more if it is a power of ten.
func appendPlaces(b []byte, digits uint64, places int) []byte {
	if digits == 1e12 {
		digits = 1e11
		places--
	}
	var text [Digits]byte
	high, low := uint32(digits/1e6), uint32(digits%1e6)
	for i := 4; i >= 0; i -= 2 {
		put(text[i:], high%100)
		put(text[i+6:], low%100)
		high /= 100
		low /= 100
	}
	n := Digits
	for text[n-1] == '0' {
		n--
	}
	whole := Digits - places // how many digits stand before the point
	switch {
	case whole <= 0:
		b = append(append(b, '0', '.'), zeros[:-whole]...)
		return append(b, text[:n]...)
	case whole >= n:
		return append(append(b, text[:n]...), zeros[:whole-n]...)
	}
	b = append(append(b, text[:whole]...), '.')
	return append(b, text[whole:n]...)
}

const zeros = "0000000000000000"

const pairs = "" +
	"00010203040506070809" + "10111213141516171819" + "20212223242526272829" +
	"30313233343536373839" + "40414243444546474849" + "50515253545556575859" +
	"60616263646566676869" + "70717273747576777879" + "80818283848586878889" +
	"90919293949596979899"

// put writes the two digits of n, which is below 100.
func put(b []byte, n uint32) {
	b[0], b[1] = pairs[2*n], pairs[2*n+1]
}
