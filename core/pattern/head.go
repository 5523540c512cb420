package pattern

import (
	"fmt"
	"hash/fnv"
	"strconv"
	"strings"

	"barkwright/core/design"
)

// VersionLine names the version that printed a sheet.
var VersionLine = "version " + strconv.Itoa(design.Version)

// Head is what every sheet says of the boat.
type Head struct {
	Boat string
	// Code is the design's line of text; sheets carry its short mark.
	Code string
	// Date as the user reads it: the core has no clock.
	Date string
}

// Mark is the short mark of the design's code that every sheet carries: sheets of
// two different designs do not bear the same one but by a chance of one in four
// thousand million. Empty where there is no code.
func (h Head) Mark() string {
	if h.Code == "" {
		return ""
	}
	f := fnv.New32a()
	f.Write([]byte(h.Code))
	text := strings.ToUpper(fmt.Sprintf("%08x", f.Sum32()))
	return text[:4] + "-" + text[4:]
}
