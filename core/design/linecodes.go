package design

import "strconv"

// lineCodes are the parameters' short names in a line of text: letters, the first a
// capital. One that has been given stays with its parameter for good.
var lineCodes = withPaddlers(map[string]string{
	"length": "L", "overhang": "Oh", "beam": "B", "greatestBeam": "Bg", "beamFull": "Bf", "beamFine": "Be", "depth": "D",

	"gunwaleEndHeight": "G", "sheerSweep": "S", "rocker": "R", "rockerSpread": "Rs",

	"frameWidth": "Fw", "frameLength": "Fl", "frameFull": "Ff", "frameFine": "Fe", "turnWidth": "T",
	"bilge": "Tb", "ease": "Te", "builtOn": "Fb",
	"bedLength": "Bl", "bedCrown": "Bc", "endBlocking": "Bb",
	"barkThickness": "K", "sheetWidth": "Kw", "sheetLength": "Kl",
	"gores": "Gn", "goreFoot": "Gf", "seamLap": "Sl", "gunwaleTurn": "Gt", "stretchLimit": "Kx",
	"panels": "Kp", "panelLap": "Kpl", "treeAllowance": "Kt", "treeRule": "Ktr",

	"endHeight": "E", "headSetback": "Es", "heelLength": "El", "endFull": "Ef",
	"stemDepth": "Sd", "stemWidth": "Sw", "stemLaminations": "Sn", "stemSolid": "Ss", "stemOpening": "So",
	"headboard": "Hb", "headboardFoot": "Hbf", "headboardBelly": "Hbb",

	"stemSpecies": "Ws", "stemCondition": "Wsc", "stemGrain": "Wsg",
	"ribSpecies": "Wr", "ribCondition": "Wrc", "ribGrain": "Wrg",
	"gunwaleSpecies": "Wg", "gunwaleCondition": "Wgc", "gunwaleGrain": "Wgg",

	"inwaleThickness": "It", "inwaleDepth": "Id", "outwaleThickness": "Ut", "outwaleDepth": "Ud",
	"capWidth": "Cw", "capThickness": "Ct", "gunwaleEndSplits": "Gs",
	"thwarts": "N", "thwart1": "Na", "thwart2": "Nb", "thwart3": "Nc", "thwart4": "Nd",

	"ribs": "I", "ribWidthMid": "Im", "ribWidthEnd": "Ie", "ribTipWidth": "Ip",
	"ribThickness": "Ik", "ribThicknessEnd": "Ike", "ribTuck": "Iu",
	"cedarDiameter": "Wd", "cedarClear": "Wl", "cedarHeart": "Wh", "cedarSapwood": "Wp",
	"ribTaper": "Ia", "ribsBroken": "Ib",
	"sheathingThickness": "Ht", "sheathingWidth": "Hw", "sheathingLap": "Hl",

	"groupHoles": "M", "holeSpacing": "Ms", "passes": "Mp", "pegEvery": "Me",
	"rootWidth": "Mw", "rootLength": "Ml", "tail": "Mt", "rootWaste": "Mx",
	"goreStitch": "Yg", "goreBite": "Zg", "panelStitch": "Yp", "panelBite": "Zp",
	"jointStitch": "Yj", "jointBite": "Zj", "endStitch": "Ye", "endBite": "Ze",

	"paddlers": "P", "paddlerMass": "Pm", "posture": "Po", "stature": "Pt", "seatHeight": "Ps",
	"cargo": "C", "cargoHeight": "Ch", "cargoPosition": "Cp", "waterTemperature": "Cx",

	"tolLength": "Vl", "tolBeam": "Vb", "tolDepth": "Vd", "tolFrame": "Vf", "tolEnds": "Ve", "tolBed": "Vc", "tolBark": "Vk",
	"tolWood": "Vw", "girthKnown": "Vg", "stations": "Vs", "stationsApart": "Va",
})

func withPaddlers(codes map[string]string) map[string]string {
	for i := range MostPaddlers {
		n, letter := strconv.Itoa(i+1), string(rune('a'+i))
		codes["paddler"+n+"Place"] = "Pp" + letter
		codes["paddler"+n+"Mass"] = "Pw" + letter
		codes["paddler"+n+"Seat"] = "Ph" + letter
	}
	return codes
}

// coded finds a parameter by its code.
var coded = byCode()

func byCode() map[string]Param {
	out := map[string]Param{}
	for _, p := range table {
		out[lineCodes[p.Key]] = p
	}
	return out
}
