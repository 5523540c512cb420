package weigh

import (
	"barkwright/core/answer"
	"barkwright/core/units"
)

// consequence is what a change of a number means to a builder.
type consequence struct {
	// unit is the change that makes a builder act, in the SI unit of the number's kind.
	unit float64
	// more and less are the words for a change up and down.
	more, less string
	// twin is the number of which this one is another reading: it is listed only where that
	// one does not differ.
	twin string
}

const (
	foot  = units.Foot
	inch  = units.Inch
	pound = units.Pound
)

// consequences are estimates of this project of what makes a builder act, with the reason; no
// source was found.
var consequences = map[string]consequence{
	"bark.width":        {unit: inch, more: "wider", less: "narrower"}, // a tree an inch less round will not do
	"bark.treeDiameter": {twin: "bark.width"},
	"bark.treeGirth":    {twin: "bark.width"},
	"tree.girth":        {unit: inch, more: "thicker", less: "thinner"}, // a tree an inch less round will not do
	"tree.diameter":     {twin: "tree.girth"},
	"bark.sheetTree":    {twin: "tree.girth"},
	"bark.area":         {unit: 3 * units.SquareFoot, more: "more", less: "less"}, // a panel's worth of bark
	"bark.sheets":       {unit: 1, more: "more", less: "fewer"},                   // another tree
	"bark.pieces":       {unit: 1, more: "more", less: "fewer"},                   // another piece to fit and sew
	"bark.narrowSeam":   {twin: "seams.total"},
	"bark.narrowRoot":   {twin: "root.total"},
	"bark.stretch":      {unit: 0.001, more: "more", less: "less"}, // two gores' worth of ease
	"bark.stretchMean":  {twin: "bark.stretch"},
	"bark.stretchAt":    {unit: 3 * foot, more: "farther out", less: "farther in"}, // another part of the boat
	"bark.flatLength":   {unit: 3 * inch, more: "longer", less: "shorter"},         // more than is trimmed at an end
	"bark.flatOver":     {twin: "bark.flatLength"},
	"bark.largest":      {unit: 6 * inch, more: "longer", less: "shorter"}, // another size of boat

	"bark.largestNarrower": {twin: "bark.largest"},

	"hull.halfGirth":     {twin: "ribs.longest"},
	"hull.bottomBreadth": {unit: inch, more: "broader", less: "narrower"}, // felt on the knees
	"frame.turnWidth":    {twin: "hull.bottomBreadth"},
	"frame.width":        {unit: inch, more: "broader", less: "narrower"}, // a frame is made anew

	"sheer.end":       {twin: "post.end"},
	"sheer.amidships": {twin: "post.middle"},
	"post.end":        {unit: inch / 2, more: "longer", less: "shorter"}, // posts are cut anew
	"post.middle":     {unit: inch / 2, more: "longer", less: "shorter"}, // posts are cut anew
	"bed.length":      {twin: "gunwale.length"},
	"bed.breadth":     {twin: "frame.width"},
	"bed.crown":       {twin: "post.middle"},
	"bed.stakes":      {unit: 2, more: "more", less: "fewer"},       // another pair
	"bed.slack":       {unit: inch / 2, more: "more", less: "less"}, // bark to lose in the bottom

	"gunwale.length":  {unit: 3 * inch, more: "longer", less: "shorter"}, // another log
	"gunwale.outwale": {unit: 3 * inch, more: "longer", less: "shorter"}, // another log
	"lacing.groups":   {unit: 4, more: "more", less: "fewer"},            // an hour's lacing
	"lacing.pegs":     {twin: "lacing.groups"},
	"lacing.group":    {unit: 3 * inch, more: "longer", less: "shorter"}, // roots a hand longer
	"lacing.turn":     {twin: "lacing.group"},

	"root.total":         {unit: 25 * foot, more: "more", less: "less"}, // two roots to dig
	"root.dug":           {twin: "root.total"},
	"root.lengths":       {twin: "root.total"},
	"root.pieces":        {twin: "root.total"},
	"root.left":          {twin: "root.total"},
	"root.published":     {twin: "root.total"},
	"root.gunwalesWaste": {unit: 25 * foot, more: "more", less: "less"}, // two roots to dig
	"root.gunwales":      {twin: "root.gunwalesWaste"},
	"root.seamsWaste":    {unit: 25 * foot, more: "more", less: "less"}, // two roots to dig
	"root.seams":         {twin: "root.seamsWaste"},

	"stem.height":         {twin: "stem.blank"},
	"stem.curve":          {twin: "stem.blank"},
	"stem.blank":          {unit: 2 * inch, more: "longer", less: "shorter"},   // another billet
	"stem.stock":          {unit: inch / 4, more: "deeper", less: "shallower"}, // another billet
	"stem.minRadius":      {unit: inch, more: "easier", less: "tighter"},       // the stem's form is made anew
	"stem.formRadius":     {twin: "stem.minRadius"},
	"stem.strain":         {unit: 0.002, more: "more", less: "less"}, // a fifth of what breaks a stem
	"stem.ratio":          {twin: "stem.strain"},
	"stem.springback":     {twin: "stem.strain"},
	"stem.splitsNeeded":   {unit: 1, more: "more", less: "fewer"},              // another split
	"headboard.height":    {unit: inch / 2, more: "taller", less: "lower"},     // a board is cut anew
	"headboard.width":     {unit: inch / 2, more: "broader", less: "narrower"}, // a board is cut anew
	"closing.stitches":    {unit: 8, more: "more", less: "fewer"},              // a quarter of an hour's sewing
	"ribs.count":          {unit: 2, more: "more", less: "fewer"},              // another pair
	"ribs.longest":        {unit: inch, more: "longer", less: "shorter"},       // an inch is left at a rib's tips
	"ribs.blankShort":     {twin: "ribs.longest"},
	"ribs.minRadius":      {unit: inch / 2, more: "easier", less: "tighter"},     // a rib is thinned for it
	"ribs.spacing":        {unit: inch / 4, more: "wider apart", less: "closer"}, // seen along the gunwale
	"ribs.lastLean":       {unit: 2 * units.Degree, more: "more", less: "less"},  // seen by eye
	"seams.total":         {unit: 4 * foot, more: "more", less: "less"},          // an hour's sewing
	"seams.gores":         {unit: 4 * foot, more: "more", less: "less"},          // an hour's sewing
	"seams.panels":        {unit: 4 * foot, more: "more", less: "less"},          // an hour's sewing
	"seams.joints":        {unit: 4 * foot, more: "more", less: "less"},          // an hour's sewing
	"seams.ends":          {unit: 4 * foot, more: "more", less: "less"},          // an hour's sewing
	"weight.total":        {unit: 2 * pound, more: "heavier", less: "lighter"},   // felt on a carry
	"logs.bolts":          {unit: 1, more: "more", less: "fewer"},                // another bolt to split
	"materials.billets":   {unit: 1, more: "more", less: "fewer"},                // another billet to split
	"materials.pitch":     {unit: pound, more: "more", less: "less"},             // another pot
	"hours.total":         {unit: 2, more: "more", less: "fewer"},                // a quarter of a day
	"afloat.draught":      {twin: "afloat.freeboard"},
	"afloat.freeboard":    {unit: inch / 2, more: "more", less: "less"},                               // seen from the shore
	"afloat.freeboardAt":  {unit: 2 * foot, more: "farther forward", less: "farther aft"},             // another part of the boat
	"afloat.trim":         {unit: units.Degree / 2, more: "more by the bow", less: "less by the bow"}, // seen from the shore
	"afloat.displacement": {twin: "weight.total"},
	"afloat.gm":           {unit: inch / 2, more: "stiffer", less: "less stiff"}, // felt on the water
	"afloat.gmLow":        {twin: "afloat.gm"},
	"afloat.gmHigh":       {twin: "afloat.gm"},
	"afloat.gmHigher":     {twin: "afloat.gm"},
	"afloat.gmLower":      {twin: "afloat.gm"},

	"afloat.loadAtSixInches":   {unit: 50 * pound, more: "more", less: "less"}, // a pack
	"afloat.loadAtThreeInches": {twin: "afloat.loadAtSixInches"},
	"afloat.loadAtFourInches":  {twin: "afloat.loadAtSixInches"},
	"afloat.loadAtEightInches": {twin: "afloat.loadAtSixInches"},
}

// byKind are those of numbers that have no row of their own.
var byKind = map[units.Kind]consequence{
	units.Length:      {unit: inch, more: "longer", less: "shorter"},
	units.SmallLength: {unit: inch / 2, more: "longer", less: "shorter"},
	units.Thickness:   {unit: inch / 32, more: "thicker", less: "thinner"},
	units.Offset:      {unit: inch / 2, more: "more", less: "less"},
	units.Run:         {unit: 4 * foot, more: "more", less: "less"},
	units.Area:        {unit: 3 * units.SquareFoot, more: "more", less: "less"},
	units.Angle:       {unit: 3 * units.Degree, more: "more", less: "less"},
	units.Mass:        {unit: 2 * pound, more: "more", less: "less"},
	units.Strain:      {unit: 0.002, more: "more", less: "less"},
	units.Percent:     {unit: 0.02, more: "more", less: "less"},
	units.Ratio:       {unit: 1, more: "more", less: "less"},
	units.Count:       {unit: 2, more: "more", less: "fewer"},
}

// of is the consequence of a number; that of its kind where it has none of its own.
func of(n answer.Number) consequence {
	c, kind := consequences[n.Key], byKind[n.Kind]
	if c.unit == 0 {
		c.unit = kind.unit
	}
	if c.more == "" {
		c.more, c.less = kind.more, kind.less
	}
	if c.more == "" {
		c.more, c.less = "more", "less"
	}
	return c
}

// Unit is the change of a number that makes a builder act, in the SI unit of its kind; 0 for
// a kind that has none.
func Unit(n answer.Number) float64 { return of(n).unit }

// Twin is the key of the number that another is a second reading of, or empty.
func Twin(key string) string { return consequences[key].twin }
