package evidence

// Figure is a value that published sources give as a spread: the value to take when
// nothing better is known, and the ends of the spread. JSON holds its fields.
type Figure[T any] struct {
	Value, Low, High T
	Evidence         Evidence
}
