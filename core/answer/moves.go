package answer

import "strings"

// moves are the parameters that move each number most, the strongest first, by one step
// of their sliders from the boat that the page starts with; moves_test.go works them out.
// lateMoves are those of the numbers that follow when the slider rests.
const moves = `
bark.width: depth beam frameWidth gunwaleTurn
bark.treeDiameter: depth beam frameWidth gunwaleTurn
bark.treeGirth: depth beam frameWidth gunwaleTurn
bark.sheetTree: sheetWidth
bark.area: depth beamFine rocker beam
frame.width: beam frameWidth
bark.pieces: panels
bark.joinGap: panels thwarts gores thwart1
bark.narrowSeam: thwarts panels gores depth
bark.narrowRoot: panelStitch panelBite thwarts barkThickness
tree.girth: sheetWidth
tree.diameter: sheetWidth
hull.halfGirth: depth beam frameWidth turnWidth
hull.ease: turnWidth ease
hull.bottomBreadth: beam frameWidth turnWidth ease
frame.turnWidth: bilge frameWidth beam turnWidth
sheer.amidships: depth
sheer.end: depth gunwaleEndHeight
post.middle: depth endBlocking bedCrown inwaleDepth
post.end: rocker gunwaleEndHeight depth endBlocking
bed.length: overhang length bedLength
bed.breadth: beam frameWidth
bed.crown: bedCrown
bed.stakes: thwarts
bed.slack: endBlocking rocker bedCrown rockerSpread
gunwale.length: overhang length gunwaleEndHeight beam
gunwale.outwale: headSetback endHeight length overhang
lacing.groups: ribs
lacing.pegs: pegEvery thwarts
lacing.turn: inwaleThickness inwaleDepth outwaleThickness outwaleDepth
lacing.group: passes groupHoles inwaleThickness inwaleDepth
root.gunwales: passes groupHoles ribs inwaleThickness
root.gunwalesWaste: passes groupHoles ribs inwaleThickness
stem.height: depth gunwaleEndHeight endHeight
stem.curve: rocker thwarts endHeight thwart2
stem.solidEnd: thwarts overhang thwart2 headboard
stem.blank: rocker thwarts endHeight thwart2
stem.stock: stemDepth heelLength rocker headboard
stem.minRadius: headSetback rocker gunwaleEndHeight depth
stem.laminationThickness: stemLaminations stemDepth
stem.strain: stemLaminations stemDepth headSetback rocker
stem.ratio: stemLaminations stemDepth headSetback rocker
stem.springback: stemLaminations stemDepth headSetback rocker
headboard.height: rocker depth gunwaleEndHeight headboard
headboard.width: beamFine sheathingThickness headboard stemWidth
headboard.foot: overhang headboard length headboardFoot
closing.trim: rocker depth endHeight gunwaleEndHeight
closing.stitches: endStitch rocker rockerSpread endHeight
closing.lashing: headSetback overhang endHeight gunwaleEndHeight
ribs.count: ribs
ribs.spacing: ribs thwart2 thwarts thwart1
ribs.broken: ribsBroken
ribs.longest: depth beam sheathingThickness frameWidth
ribs.minRadius: ribsBroken thwarts thwart2 beamFine
ribs.lastLean: rocker rockerSpread heelLength thwarts
ribs.blankShort: thwarts thwart2 beamFine ribs
seams.total: thwarts gores panels depth
seams.gores: thwarts gores frameFine depth
seams.panels: panels depth rocker gunwaleEndHeight
seams.joints: thwarts gores depth beam
seams.ends: rocker depth endHeight gunwaleEndHeight
root.seams: thwarts panelStitch barkThickness gores
root.seamsWaste: thwarts panelStitch barkThickness gores
root.total: passes groupHoles thwarts ribs
root.dug: passes groupHoles thwarts ribs
root.lengths: passes groupHoles thwarts ribs
root.pieces: groupHoles passes inwaleThickness thwarts
root.left: groupHoles passes barkThickness endStitch
root.published: ribs length
weight.total: sheathingThickness barkThickness thwarts rootWidth
logs.bolts: ribThickness cedarDiameter ribs ribWidthMid
materials.billets: ribsBroken
materials.pitch: thwarts gores panels depth
afloat.draught: paddlers paddlerMass sheathingThickness cargo
afloat.freeboard: paddlers depth paddlerMass sheathingThickness
afloat.freeboardAt: cargoPosition
afloat.trim: cargoPosition
afloat.displacement: paddlers paddlerMass sheathingThickness cargo
afloat.gm: paddlers beam thwarts paddlerMass
afloat.gmLow: paddlers turnWidth thwarts beam
afloat.gmHigh: paddlers turnWidth beam thwarts
afloat.gmHigher: paddlers beam thwarts paddlerMass
afloat.gmLower: paddlers beam thwarts paddlerMass
afloat.loadAtThreeInches: depth beamFine beam beamFull
afloat.loadAtFourInches: depth beamFine beam sheathingThickness
afloat.loadAtSixInches: depth sheathingThickness beamFine beam
afloat.loadAtEightInches: depth sheathingThickness beamFine beam
`

const lateMoves = `
bark.goresCut: thwarts gores
bark.stretch: thwarts gores thwart1 beamFine
bark.stretchMean: thwarts gores rocker depth
bark.stretchAt: depth gunwaleEndHeight rocker endHeight
bark.flatLength: length rocker beamFine headSetback
bark.flatOver: rocker beamFine headSetback depth
bark.goresWidth: gores thwarts sheetWidth rocker
bark.fewestGores: stretchLimit
afloat.maxRightingArm: paddlers thwarts beam paddlerMass
afloat.maxRightingHeel: paddlers depth paddlerMass sheathingThickness
afloat.swampHeel: paddlers depth paddlerMass sheathingThickness
afloat.lean: paddlers beam paddlerMass thwarts
afloat.leanMost: paddlers thwarts beam paddlerMass
afloat.push: paddlers beamFine rocker paddlerMass
afloat.pushFriction: paddlers paddlerMass sheathingThickness beamFine
afloat.pushWave: paddlers beamFine rocker depth
afloat.speed: paddlers rocker paddlerMass sheathingThickness
afloat.day: paddlers rocker beamFine paddlerMass
`

// MovedBy are the keys of the parameters that move a number most, four at most, the strongest
// first.
func MovedBy(number string) []string {
	for _, line := range strings.Split(moves+lateMoves, "\n") {
		if key, by, ok := strings.Cut(line, ": "); ok && key == number {
			return strings.Fields(by)
		}
	}
	return nil
}

// shownIn are the tables that numbers belong to, by the number's key or the beginning of
// it before the point.
var shownIn = map[string]string{
	"frame": "frame", "hull": "girths", "bark.goresCut": "gores", "bark.goresWidth": "gores",
	"bark.stretch": "stretch", "bark.fewestGores": "stretch", "bark.pieces": "cutting", "bark.sheets": "cutting",
	"bark.short": "onhand", "tree": "trees", "post": "posts", "sheer": "offsets", "bed.stakes": "stakes",
	"gunwale": "marks", "lacing": "holes", "stem": "laminations", "headboard": "headboard", "closing": "closing",
	"ribs": "ribs", "seams": "seams", "root": "strands", "logs": "riving", "materials.billets": "pieces",
	"weight": "pieces", "gunwales": "bends", "bark.joinGap": "gores", "bark.verdict": "cutting",
	"afloat.state": "carries", "afloat.steady": "righting",
}

// TableOf is the key of the table that a number belongs to, or empty.
func TableOf(number string) string {
	if table := shownIn[number]; table != "" {
		return table
	}
	home, _, _ := strings.Cut(number, ".")
	return shownIn[home]
}
