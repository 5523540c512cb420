package hull_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/units"
)

func TestStartingBoatsCanBeBuilt(t *testing.T) {
	for _, d := range design.Starting() {
		for _, f := range faultsOf(d) {
			assert.Fail(t, d.Name, "%s: %s", f.Key, f.Message(units.Imperial16))
		}
	}
}
