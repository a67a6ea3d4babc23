package batch

import (
	"testing"
)

func TestCoolNoFurtherThanIce(t *testing.T) {
	refused(t, wash(), Step{Kind: Cool, Temperature: deg(-1)})
}
