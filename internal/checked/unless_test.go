package checked

import (
	"errors"
	"testing"
)

// Beside an error stands no value.
func TestUnless(t *testing.T) {
	bad := errors.New("no root")
	if v, err := Unless(bad, 5); v != 0 || err != bad {
		t.Error(v, err)
	}
	if v, err := Unless(nil, 5); v != 5 || err != nil {
		t.Error(v, err)
	}
}
