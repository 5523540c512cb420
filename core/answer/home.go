package answer

// Group is a step of the work that results and tables are shown under.
type Group string

// The groups, in the order of the work.
const (
	BarkAndFrame Group = "Bark and frame"
	BedAndSheer  Group = "Bed and sheer heights"
	Gunwales     Group = "Gunwale marks and lacing"
	Ends         Group = "Ends"
	Ribs         Group = "Ribs"
	SeamsAndRoot Group = "Seams and root"
	Materials    Group = "Materials to gather"
	OnTheWater   Group = "On the water"
)

// Groups lists them in their order.
func Groups() []Group {
	return []Group{BarkAndFrame, BedAndSheer, Gunwales, Ends, Ribs, SeamsAndRoot, Materials, OnTheWater}
}

// Home is where in the work a result, a check or a table belongs. Its group on the page
// and its build sheet follow from it.
type Home string

// The homes, in the order of the build sheets.
const (
	HomeBoat    Home = "boat" // the whole of it
	HomeBark    Home = "bark"
	HomeWood    Home = "wood"
	HomeFrame   Home = "frame"
	HomeBed     Home = "bed"
	HomeGear    Home = "gear"
	HomeMarks   Home = "marks"
	HomeRoot    Home = "root"
	HomeLacing  Home = "lacing"
	HomeRibs    Home = "ribs"
	HomeEnds    Home = "ends"
	HomeThwarts Home = "thwarts"
	HomeWeight  Home = "weight"
	HomeWater   Home = "water"
)

var homes = []struct {
	home  Home
	group Group  // empty for what each number has in a group of its own
	sheet string // the key of the build sheet
}{
	{HomeBoat, "", "summary"},
	{HomeBark, BarkAndFrame, "bark"},
	{HomeWood, Materials, "bark"},
	{HomeFrame, BarkAndFrame, "bed"},
	{HomeBed, BedAndSheer, "bed"},
	{HomeGear, Materials, "bed"},
	{HomeMarks, Gunwales, "marks"},
	{HomeRoot, SeamsAndRoot, "root"},
	{HomeLacing, Gunwales, "root"},
	{HomeRibs, Ribs, "ribs"},
	{HomeEnds, Ends, "ends"},
	{HomeThwarts, Gunwales, "ends"},
	{HomeWeight, Materials, "load"},
	{HomeWater, OnTheWater, "load"},
}

// Homes lists the homes in the order of the build sheets.
func Homes() []Home {
	out := make([]Home, len(homes))
	for i, h := range homes {
		out[i] = h.home
	}
	return out
}

// Group is the group of the page that shows what is at home here; empty for no home.
func (h Home) Group() Group {
	for _, row := range homes {
		if row.home == h {
			return row.group
		}
	}
	return ""
}

// Sheet is the key of the build sheet for what is at home here; empty for no home.
func (h Home) Sheet() string {
	for _, row := range homes {
		if row.home == h {
			return row.sheet
		}
	}
	return ""
}
