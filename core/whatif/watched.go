package whatif

import "strings"

// watched are the results that are shown for each control, the one that moves most first, in
// changes that make a builder act. watched_test.go finds their slopes again on seven boats.
const watched = `
length: gunwale.outwale afloat.loadAtSixInches weight.total bark.area root.total
overhang: gunwale.length afloat.loadAtSixInches stem.minRadius root.total
beam: afloat.gm ribs.longest bark.width afloat.loadAtSixInches afloat.freeboard weight.total
beamFull: afloat.loadAtSixInches afloat.gm bark.area weight.total
beamFine: afloat.loadAtSixInches afloat.gm bark.area weight.total
greatestBeam: afloat.gm ribs.longest bark.width afloat.loadAtSixInches
depth: afloat.loadAtSixInches afloat.freeboard ribs.longest bark.width seams.total weight.total
gunwaleEndHeight: post.end stem.minRadius seams.total bark.area
sheerSweep: seams.panels bark.area root.total
rocker: post.end stem.strain stem.blank afloat.loadAtSixInches seams.total afloat.freeboard
rockerSpread: afloat.loadAtSixInches afloat.freeboard closing.stitches
frameWidth: afloat.gm ribs.longest bark.width afloat.loadAtSixInches hull.bottomBreadth
frameFull: seams.gores
frameFine: seams.gores
bilge: ribs.minRadius afloat.gm hull.bottomBreadth
ease: afloat.gm ribs.longest hull.bottomBreadth hull.ease
turnWidth: afloat.gm ribs.longest hull.bottomBreadth afloat.loadAtSixInches
bedCrown: post.middle bed.slack
endBlocking: post.middle post.end bed.slack
barkThickness: weight.total root.total afloat.freeboard
sheetWidth: seams.total root.total seams.panels tree.girth
sheetLength: seams.total root.total
gores: bark.stretch seams.total seams.gores root.total
goreFoot: seams.gores seams.total root.total
gunwaleTurn: bark.width bark.area
seamLap: bark.area
endHeight: stem.minRadius stem.strain stem.blank gunwale.outwale
headSetback: stem.strain stem.minRadius stem.blank gunwale.outwale
endFull: stem.minRadius stem.strain stem.blank
heelLength: stem.minRadius stem.strain stem.blank afloat.loadAtSixInches
headboard: headboard.height headboard.width stem.minRadius stem.blank
stemDepth: stem.strain stem.stock stem.laminationThickness stem.splitsNeeded
stemLaminations: stem.strain stem.laminationThickness
ribs: root.total lacing.groups ribs.spacing weight.total
ribThickness: weight.total logs.bolts
ribThicknessEnd: weight.total ribs.minRadius
groupHoles: root.total root.gunwalesWaste lacing.group
passes: root.total root.gunwalesWaste lacing.group
tail: root.total lacing.group
rootWidth: root.total lacing.group weight.total
sheathingThickness: weight.total afloat.freeboard
inwaleThickness: weight.total root.total afloat.gm
inwaleDepth: root.total weight.total
outwaleThickness: root.total weight.total
outwaleDepth: root.total weight.total
thwarts: seams.total root.total weight.total bed.stakes
paddlers: afloat.gm afloat.freeboard
paddlerMass: afloat.gm afloat.freeboard
cargo: afloat.gm afloat.freeboard
seatHeight: afloat.gm
stature: afloat.gm
posture: afloat.gm
cargoHeight: afloat.gm
builtOn: afloat.gm frame.width ribs.longest hull.bottomBreadth headboard.width afloat.loadAtSixInches
treeRule: tree.girth
stemCondition: stem.splitsNeeded
ribsBroken: ribs.minRadius
panels: bark.pieces bark.joinGap
cedarDiameter: logs.bolts
cargoPosition: afloat.trim afloat.freeboard
`

// Watched are the keys of the results shown for a control; none where nothing in the list of
// results moves by enough to be drawn.
func Watched(control string) []string {
	for _, line := range strings.Split(watched, "\n") {
		if key, results, ok := strings.Cut(line, ": "); ok && key == control {
			return strings.Fields(results)
		}
	}
	return nil
}
