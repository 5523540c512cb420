package stage

// Signal is how grave a hazard is, after the meaning ANSI Z535 gives the words:
// DANGER will, WARNING could end in death or serious injury, CAUTION in a minor or
// moderate one; NOTICE is about no injury.
type Signal string

// The signal words.
const (
	Danger  Signal = "DANGER"
	Warning Signal = "WARNING"
	Caution Signal = "CAUTION"
	Notice  Signal = "NOTICE"
)

// Hazard is one thing to beware of: what it is, what it does, what to do.
type Hazard struct {
	Signal Signal
	Text   string
}

// The hazards of the work, each shown at the stage where it is met.
var (
	felling = Hazard{Warning, "A falling tree or limb kills. Fell and climb only with someone trained in it, " +
		"with the ground clear for twice the tree's height."}
	edgeTools = Hazard{Caution, "Axe, froe, awl and crooked knife cut deep. Keep them sharp, work away from every " +
		"hand and knee, guard your eyes."}
	lifting = Hazard{Caution, "Stones and planks are moved by two. Keep feet clear of where they fall, and " +
		"children off the bed."}
	awl = Hazard{Caution, "An awl goes through bark into the hand or thigh behind it. Put a block behind, never " +
		"your knee."}
	scalds = Hazard{Warning, "Boiling water and steam take the skin off in a second. Gloves, long sleeves, a " +
		"clear way out; children well back."}
	flames = Hazard{Warning, "A heat gun, torch or flame sets bark and shavings alight. Keep water and an " +
		"extinguisher at hand; never leave it."}
	hotPitch = Hazard{Warning, "Hot pitch sticks, burns and can flare up. Never leave it heating; cool a burn " +
		"with water, do not pull pitch off, get care."}
	bending = Hazard{Caution, "Wood that breaks in the bend springs. Stand out of its way, guard your eyes, " +
		"bend a trial piece first."}
	coldWater = Hazard{Danger, "Without a life jacket, cold water drowns good swimmers: a minute to get your " +
		"breath, ten of useful movement. Wear one, every time."}
	trialSwamp = Hazard{Warning, "A swamped canoe may roll and throw you. Try it loaded and swamped close to " +
		"shore, in warm water, with help."}
	noRating = Hazard{Notice, "The figures for load and freeboard are a teaching estimate in calm water, not a " +
		"rating. None of the US, EU and ISO loading rules we read covers canoes."}
	teacher = Hazard{Notice, "This page judges neither bark nor wood. Try a piece first; local rules and the " +
		"person teaching you come before anything said here."}
)

// Permission is the line on asking before gathering.
var Permission = Hazard{Notice, "Ask before you gather bark, root or cedar: the owner, the land agency, the nation " +
	"whose land it is, and wait for the answer. Taking bark can kill the tree: take bark for this boat and no more, " +
	"felled trees first."}

// AskAgain is that line where something more may be gathered.
var AskAgain = Hazard{Notice, "Ask before you gather any more bark, root or cedar, and wait for the answer: see Gather."}

// AskFirst is the line of the stage on asking first; it reports false where nothing is gathered.
func (s *Stage) AskFirst() (Hazard, bool) {
	switch s.Permission {
	case AskedFirst:
		return Permission, true
	case AskedBriefly:
		return AskAgain, true
	}
	return Hazard{}, false
}
