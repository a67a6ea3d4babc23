package fill

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"
	"testing"
)

// Many batches, in order.
func TestOrder(t *testing.T) {
	const n = 50_000
	var in bytes.Buffer
	in.WriteString("n,altitude (m)\n")
	for i := range n {
		fmt.Fprintf(&in, "%d,%d\n", i, i%11000)
	}
	var out bytes.Buffer
	count, err := Run(&out, &in, function(t, "atmosphere_at_altitude"), Options{})
	if err != nil || count != (Count{n, 0}) {
		t.Fatal(count, err)
	}
	lines := strings.Split(out.String(), "\n")
	for i := range n {
		if !strings.HasPrefix(lines[i+1], strconv.Itoa(i)+",") {
			t.Fatalf("line %d is %q", i+1, lines[i+1])
		}
	}
}
