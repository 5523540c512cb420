package inches

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// What is looked for is found, and nothing else.
func TestIn(t *testing.T) {
	for _, text := range []string{`3"`, "2 in.", "3 in (76 mm) or 4 in", "5' 2", "an inch", "12 ft", "ft of seam",
		"12 ft²", "5 lb", "60 °F"} {
		assert.NotEmpty(t, In(text), text)
	}
	for _, text := range []string{"2 in (51 mm)", "1 1/2 in (38 mm)", "the foot of the gore", "cut in two",
		"the boat's end", "90 in 100", "4 ft 6 in (1372 mm)", "6 to 9 in (15 to 23 cm)", "Keep feet clear"} {
		assert.Empty(t, In(text), text)
	}
}
