package weigh

import (
	"barkwright/core/answer"
	"barkwright/core/units"
)

// consequence is what a change of a number means to a builder.
type consequence struct {
	// unit is the change that makes a builder act, in the SI unit of the number's kind, and
	// why it does.
	unit float64
	why  string
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

// consequences are estimates of this project of what makes a builder act; no source was found.
var consequences = map[string]consequence{
	"bark.width":        {unit: inch, why: "a tree an inch less round will not do", more: "wider", less: "narrower"},
	"bark.treeDiameter": {twin: "bark.width"},
	"bark.treeGirth":    {twin: "bark.width"},
	"tree.girth":        {unit: inch, why: "a tree an inch less round will not do", more: "thicker", less: "thinner"},
	"tree.diameter":     {twin: "tree.girth"},
	"bark.sheetTree":    {twin: "tree.girth"},
	"bark.area":         {unit: 3 * units.SquareFoot, why: "a panel's worth of bark", more: "more", less: "less"},
	"bark.sheets":       {unit: 1, why: "another tree", more: "more", less: "fewer"},
	"bark.pieces":       {unit: 1, why: "another piece to fit and sew", more: "more", less: "fewer"},
	"bark.narrowSeam":   {twin: "seams.total"},
	"bark.narrowRoot":   {twin: "root.total"},
	"bark.stretch":      {unit: 0.001, why: "two gores' worth of ease", more: "more", less: "less"},
	"bark.stretchMean":  {twin: "bark.stretch"},
	"bark.stretchAt":    {unit: 3 * foot, why: "another part of the boat", more: "farther out", less: "farther in"},
	"bark.flatLength":   {unit: 3 * inch, why: "more than is trimmed at an end", more: "longer", less: "shorter"},
	"bark.flatOver":     {twin: "bark.flatLength"},
	"bark.largest":      {unit: 6 * inch, why: "another size of boat", more: "longer", less: "shorter"},

	"bark.largestNarrower": {twin: "bark.largest"},

	"hull.halfGirth":     {twin: "ribs.longest"},
	"hull.bottomBreadth": {unit: inch, why: "felt on the knees", more: "broader", less: "narrower"},
	"frame.turnWidth":    {twin: "hull.bottomBreadth"},
	"frame.width":        {unit: inch, why: "a frame is made anew", more: "broader", less: "narrower"},

	"sheer.end":       {twin: "post.end"},
	"sheer.amidships": {twin: "post.middle"},
	"post.end":        {unit: inch / 2, why: "posts are cut anew", more: "longer", less: "shorter"},
	"post.middle":     {unit: inch / 2, why: "posts are cut anew", more: "longer", less: "shorter"},
	"bed.stakes":      {unit: 2, why: "another pair", more: "more", less: "fewer"},
	"bed.slack":       {unit: inch / 2, why: "bark to lose in the bottom", more: "more", less: "less"},

	"gunwale.length":  {unit: 3 * inch, why: "another log", more: "longer", less: "shorter"},
	"gunwale.outwale": {unit: 3 * inch, why: "another log", more: "longer", less: "shorter"},
	"lacing.groups":   {unit: 4, why: "an hour's lacing", more: "more", less: "fewer"},
	"lacing.pegs":     {twin: "lacing.groups"},
	"lacing.group":    {unit: 3 * inch, why: "roots a hand longer", more: "longer", less: "shorter"},
	"lacing.turn":     {twin: "lacing.group"},

	"root.total":         {unit: 25 * foot, why: "two roots to dig", more: "more", less: "less"},
	"root.dug":           {twin: "root.total"},
	"root.lengths":       {twin: "root.total"},
	"root.pieces":        {twin: "root.total"},
	"root.left":          {twin: "root.total"},
	"root.published":     {twin: "root.total"},
	"root.gunwalesWaste": {unit: 25 * foot, why: "two roots to dig", more: "more", less: "less"},
	"root.gunwales":      {twin: "root.gunwalesWaste"},
	"root.seamsWaste":    {unit: 25 * foot, why: "two roots to dig", more: "more", less: "less"},
	"root.seams":         {twin: "root.seamsWaste"},

	"stem.height":         {twin: "stem.blank"},
	"stem.curve":          {twin: "stem.blank"},
	"stem.blank":          {unit: 2 * inch, why: "another billet", more: "longer", less: "shorter"},
	"stem.stock":          {unit: inch / 4, why: "another billet", more: "deeper", less: "shallower"},
	"stem.minRadius":      {unit: inch, why: "the stem's form is made anew", more: "easier", less: "tighter"},
	"stem.formRadius":     {twin: "stem.minRadius"},
	"stem.strain":         {unit: 0.002, why: "a fifth of what breaks a stem", more: "more", less: "less"},
	"stem.ratio":          {twin: "stem.strain"},
	"stem.springback":     {twin: "stem.strain"},
	"stem.splitsNeeded":   {unit: 1, why: "another split", more: "more", less: "fewer"},
	"headboard.height":    {unit: inch / 2, why: "a board is cut anew", more: "taller", less: "lower"},
	"headboard.width":     {unit: inch / 2, why: "a board is cut anew", more: "broader", less: "narrower"},
	"closing.stitches":    {unit: 8, why: "a quarter of an hour's sewing", more: "more", less: "fewer"},
	"ribs.count":          {unit: 2, why: "another pair", more: "more", less: "fewer"},
	"ribs.longest":        {unit: inch, why: "an inch is left at a rib's tips", more: "longer", less: "shorter"},
	"ribs.blankShort":     {twin: "ribs.longest"},
	"ribs.minRadius":      {unit: inch / 2, why: "a rib is thinned for it", more: "easier", less: "tighter"},
	"ribs.spacing":        {unit: inch / 4, why: "seen along the gunwale", more: "wider apart", less: "closer"},
	"ribs.lastLean":       {unit: 2 * units.Degree, why: "seen by eye", more: "more", less: "less"},
	"seams.total":         {unit: 4 * foot, why: "an hour's sewing", more: "more", less: "less"},
	"seams.gores":         {unit: 4 * foot, why: "an hour's sewing", more: "more", less: "less"},
	"seams.panels":        {unit: 4 * foot, why: "an hour's sewing", more: "more", less: "less"},
	"seams.joints":        {unit: 4 * foot, why: "an hour's sewing", more: "more", less: "less"},
	"seams.ends":          {unit: 4 * foot, why: "an hour's sewing", more: "more", less: "less"},
	"weight.total":        {unit: 2 * pound, why: "felt on a carry", more: "heavier", less: "lighter"},
	"logs.bolts":          {unit: 1, why: "another bolt to split", more: "more", less: "fewer"},
	"materials.billets":   {unit: 1, why: "another billet to split", more: "more", less: "fewer"},
	"materials.pitch":     {unit: pound, why: "another pot", more: "more", less: "less"},
	"afloat.draught":      {twin: "afloat.freeboard"},
	"afloat.freeboard":    {unit: inch / 2, why: "seen from the shore", more: "more", less: "less"},
	"afloat.freeboardAt":  {unit: 2 * foot, why: "another part of the boat", more: "farther forward", less: "farther aft"},
	"afloat.trim":         {unit: units.Degree / 2, why: "seen from the shore", more: "more by the bow", less: "less by the bow"},
	"afloat.displacement": {twin: "weight.total"},
	"afloat.gm":           {unit: inch / 2, why: "felt on the water", more: "stiffer", less: "less stiff"},
	"afloat.gmLow":        {twin: "afloat.gm"},
	"afloat.gmHigh":       {twin: "afloat.gm"},
	"afloat.gmHigher":     {twin: "afloat.gm"},
	"afloat.gmLower":      {twin: "afloat.gm"},

	"afloat.loadAtSixInches":   {unit: 50 * pound, why: "a pack", more: "more", less: "less"},
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
