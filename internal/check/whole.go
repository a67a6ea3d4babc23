package check

import (
	"os"
	"testing"
)

// IsWhole reports whether the tests that take a minute or more are wanted too.
func IsWhole() bool { return os.Getenv("ZYMASE_WHOLE") != "" }

// Whole skips a test that takes half a minute or more, unless the whole is wanted.
func Whole(t *testing.T) {
	t.Helper()
	if !IsWhole() {
		t.Skip("takes half a minute or more: ZYMASE_WHOLE=yes runs it, as .ci/run does")
	}
}
