package file_test

import (
	"bytes"
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/internal/check"
	"barkwright/core/plan"
	"barkwright/core/record"
	"barkwright/core/shape"
	"barkwright/core/tally"
	"barkwright/core/units"
)

var update = flag.Bool("update", false, "rewrite the golden files")

type object = map[string]any

// unitNames are the SI units of the kinds that a parameter is of.
var unitNames = map[units.Kind]string{
	units.Length: "metres", units.SmallLength: "metres", units.Thickness: "metres", units.Offset: "metres",
	units.Mass: "kilograms", units.Temperature: "degrees Celsius", units.Ratio: "a plain number",
	units.Percent: "a share of one", units.Strain: "a share of one", units.Count: "a whole number",
}

// mended is a repair as an entry of the log has it.
func mended() object {
	kinds := []string{}
	for k := tally.Crack; k < tally.DamageKinds; k++ {
		kinds = append(kinds, k.Key())
	}
	metres := func(description string, least float64) object {
		return object{"description": description, "type": "number", "minimum": least, "maximum": tally.MostDamage}
	}
	return object{
		"type": "object", "additionalProperties": false, "required": []string{"damage", "at", "up"},
		"description": "What was mended of the boat, and where.",
		"properties": object{
			"damage": object{"enum": kinds},
			"at":     metres("From the middle along the gunwale, metres; forward is positive.", -tally.MostDamage),
			"up":     metres("Round the bark from the centre line, metres; negative to starboard.", -tally.MostDamage),
			"along":  metres("Length along the boat, metres.", 0),
			"round":  metres("Length round the bark, metres.", 0),
			"groups": object{"description": "Of lacing, torn.", "type": "integer", "minimum": 0, "maximum": tally.MostGroups},
		},
	}
}

// schema describes a file as JSON Schema, draft 2020-12 (json-schema.org), from the
// table of parameters. Values out of range are opened, so the ranges stand in it as
// what can be built, not as what a reader refuses.
func schema() object {
	values, set := object{}, []string{}
	for _, p := range design.Params() {
		v := object{"title": p.Label, "description": "In " + unitNames[p.Kind] + "."}
		v["type"], v["default"] = "number", p.Default
		v["minimum"], v["maximum"] = p.Min, p.Max
		if p.Kind == units.Count {
			v["type"], v["description"] = "integer", "A whole number."
		}
		if p.Options != nil {
			choices := []object{}
			for i, name := range p.Options {
				choices = append(choices, object{"const": i, "title": name})
			}
			v["oneOf"] = choices
		}
		if p.NoneAtMin {
			v["description"] = fmt.Sprint(v["description"], " 0 for none.")
		}
		if p.Follows() {
			delete(v, "default")
			v["description"] = fmt.Sprint(v["description"], " Follows other values unless it is named in set.")
			set = append(set, p.Key)
		}
		values[p.Key] = v
	}
	one := object{
		"type": "object", "additionalProperties": false, "required": []string{"name", "notes", "values"},
		"properties": object{
			"name":   object{"type": "string", "maxLength": design.MaxName},
			"notes":  object{"type": "string", "maxLength": design.MaxNotes},
			"values": object{"type": "object", "additionalProperties": false, "properties": values},
			"set": object{
				"description": "The dependent values that have been set and follow no longer.",
				"type":        "array", "uniqueItems": true, "items": object{"enum": set},
			},
			"sheets": object{
				"description": "The sheets of bark on hand.", "type": "array", "maxItems": design.MostSheets,
				"items": object{
					"type": "object", "additionalProperties": false, "required": []string{"width", "length"},
					"properties": object{
						"width": object{"description": "Round the tree, in metres.", "type": "number",
							"minimum": design.LeastSheetWidth, "maximum": design.MostSheetWidth},
						"length": object{"description": "Up the tree, in metres.", "type": "number",
							"minimum": design.LeastSheetLength,
							"maximum": design.MostSheetLength},
					},
				},
			},
			"corrections": corrections(),
			"record": object{
				"description": "What was measured of the boat that this one follows.",
				"type":        "object", "additionalProperties": false, "required": []string{"measurements"},
				"properties": object{
					"name":         object{"type": "string"},
					"found":        object{"description": "Whether the design came from the record.", "type": "boolean"},
					"measurements": measurements(func(record.Kind) bool { return true }),
				},
			},
			"readings": measurements(record.Kind.AsBuilt),
			"tracing":  tracing(),
			"tally": object{
				"description": "What was done of the work, and noted, the oldest first.",
				"type":        "array", "maxItems": tally.MostEntries,
				"items": object{
					"type": "object", "additionalProperties": false, "required": []string{"when", "step"},
					"properties": object{
						"when": object{"description": "The day.", "type": "string", "format": "date"},
						"step": object{"description": "The step's key, or a stage's.", "type": "string"},
						"row":  object{"description": "The part of a step that goes row by row.", "type": "string"},
						"done": object{"description": "Ticked; left out where a tick was taken back.", "type": "boolean"},
						"note": object{"type": "string", "maxLength": tally.LongestNote},
						"units": object{"description": "Units done of a task of the plan; the step is then its key.",
							"type": "number", "minimum": 0},
						"hours":    object{"description": "Of practised hands over them.", "type": "number", "minimum": 0},
						"learners": object{"description": "Of learners over them.", "type": "number", "minimum": 0},
						"mended":   mended(),
					},
				},
			},
			"season": season(),
		},
	}
	properties := one["properties"].(object)
	for key, what := range map[string]string{
		"built": "The boat as it last could be built, where it cannot be as it stands.",
		"held":  "The boat that this one is held against; its name is what it is held by.",
	} {
		properties[key] = object{
			"description": what,
			"type":        "object", "additionalProperties": false, "required": one["required"],
			"properties": object{"name": properties["name"], "notes": properties["notes"], "set": properties["set"],
				"sheets": properties["sheets"], "corrections": properties["corrections"],
				"values": object{"description": "As those of the design.", "type": "object"}},
		}
	}
	return object{
		"$schema": "https://json-schema.org/draft/2020-12/schema",
		"title":   "Barkwright designs",
		"type":    "object", "additionalProperties": false, "required": []string{"format", "version", "current", "designs"},
		"properties": object{
			"format":  object{"const": file.Format},
			"version": object{"const": file.Version},
			"kept": object{"type": "object",
				"description": "What a browser keeps of a boat in front of it. A reader of files needs none of it."},
			"typed":   object{"description": "What was half typed when it was kept, by the field.", "type": "object"},
			"current": object{"description": "Which of the designs is looked at, from 0.", "type": "integer", "minimum": 0},
			"designs": object{"type": "array", "minItems": 1, "items": one},
		},
	}
}

// season describes what is set for the plan of the work.
func season() object {
	numbers, dates, minutes, have := object{}, object{}, object{}, object{}
	for _, r := range plan.Rows() {
		is := "number"
		if r.Shape != plan.Decimal {
			is = "integer"
		}
		numbers[r.Key] = object{"description": strings.TrimSpace(r.Label + ". " + r.Unit), "type": is, "minimum": r.Low,
			"maximum": r.High}
	}
	for _, r := range plan.DateRows() {
		dates[r.Key] = object{"description": r.Label, "type": "string"}
	}
	for _, t := range plan.All() {
		minutes[t.Key] = object{"description": t.Name + ": minutes of one, " + t.Unit, "type": "number", "minimum": 0,
			"maximum": plan.MostMinutes}
		have[t.Key] = object{"description": t.Unit, "type": "number", "minimum": 0, "maximum": plan.MostUnits}
	}
	of := func(what string, p object) object {
		return object{"description": what, "type": "object", "additionalProperties": false, "properties": p}
	}
	return object{
		"description": "The crew, the days and the times that the plan of the work is made with; what is left out stands " +
			"as at first.",
		"type": "object", "additionalProperties": false,
		"properties": object{"numbers": of("The crew and how they work.", numbers),
			"dates":   of("Days as 2027-06-14; those of every year as 06-14.", dates),
			"minutes": of("The likely time of one unit of a task, where the user set it.", minutes),
			"have":    of("Units that are made or at hand.", have)},
	}
}

// corrections describes the local changes of each curve.
func corrections() object {
	share := func(what string) object {
		return object{"description": what + ", as a share of the half gunwale from amidships.", "type": "number",
			"minimum": 0, "maximum": 1}
	}
	list := object{
		"type": "array", "maxItems": shape.MostCorrections,
		"items": object{
			"type": "object", "additionalProperties": false, "required": []string{"at", "from", "to", "by"},
			"properties": object{
				"at": share("Where it is whole"), "from": share("Inboard of that, where it has died out"),
				"to": share("Outboard of it, the same"),
				"by": object{"description": "In metres.", "type": "number", "minimum": -design.MostCorrection,
					"maximum": design.MostCorrection},
			},
		},
	}
	properties, none := object{}, design.Corrections{}
	for _, curve := range none.Curves() {
		properties[curve.Name] = list
	}
	return object{
		"description": "Local changes of the half-breadth inside the gunwales, the sheer and the half girth, where a " +
			"tape read otherwise than the values give.",
		"type": "object", "additionalProperties": false, "properties": properties,
	}
}

// measurements describes a list of those kinds.
func measurements(of func(record.Kind) bool) object {
	kinds := []string{}
	for _, k := range record.Kinds() {
		if of(k) {
			kinds = append(kinds, k.ID())
		}
	}
	number := func(what string) object { return object{"description": what, "type": "number", "minimum": 0} }
	return object{
		"type": "array", "maxItems": record.MostData,
		"items": object{
			"type": "object", "additionalProperties": false, "required": []string{"what", "value"},
			"properties": object{
				"what":    object{"enum": kinds},
				"thwart":  object{"description": "Counted from the middle one, 0, outward.", "type": "integer", "minimum": 0},
				"station": number("The distance in metres where it was taken."),
				"height":  number("Over the base line, in metres, of what is taken at one."),
				"from": object{"description": "Where the station is counted from; left out, from the middle.",
					"enum": []string{"gunwale end", "end"}},
				"side":      object{"description": "The half of the boat; left out, both.", "enum": []string{"forward", "aft"}},
				"value":     object{"description": "In metres, or a whole number.", "type": "number"},
				"tolerance": number("In metres, or a number; left out or 0, the usual one."),
				"locked":    object{"description": "Whether it is kept as recorded whatever the others say.", "type": "boolean"},
				"note":      object{"type": "string"},
				"mark": object{"description": "The number of the point of the tracing that it was read at.",
					"type": "integer", "minimum": 0},
			},
		},
	}
}

// tracing describes what was pressed on a picture.
func tracing() object {
	number := func(what string) object { return object{"description": what, "type": "number"} }
	count := func(what string) object { return object{"description": what, "type": "integer", "minimum": 0} }
	views := []string{"side", "above", "section"}
	whats := []string{}
	for v := range record.Views {
		for _, p := range record.Presses(v, record.SetSquare) {
			if !slices.Contains(whats, p.ID) {
				whats = append(whats, p.ID)
			}
		}
	}
	entered := object{"description": "Whether a row of the record came from it.", "type": "boolean"}
	point := object{
		"type": "object", "additionalProperties": false, "required": []string{"number", "x", "y", "held"},
		"properties": object{"number": count("Its own."), "x": number("To the right, in pixels."),
			"y": number("Down, in pixels."), "held": number("How nearly it was held, a standard deviation in pixels."),
			"entered": entered},
	}
	mark := object{
		"type": "object", "additionalProperties": false, "required": []string{"number", "view", "what", "points"},
		"properties": object{
			"number": count("Its own."), "view": object{"enum": views}, "what": object{"enum": whats},
			"points": object{"type": "array", "maxItems": record.MostPressed, "items": point},
			"length": number("What a lettered size measures, or a rectangle along, in metres."),
			"high":   number("What a rectangle measures up, in metres."),
			"thwart": count("Counted from the middle one, 0, outward."), "station": number("Where it was taken, in metres."),
			"from": object{"enum": []string{"gunwale end", "end"}}, "side": object{"enum": []string{"forward", "aft"}},
			"entered": entered,
		},
	}
	return object{
		"description": "What was pressed on a picture that the record is read off.",
		"type":        "object", "additionalProperties": false,
		"required": []string{"width", "height", "sort", "line", "last", "marks"},
		"properties": object{
			"width": number("Of the picture, in pixels."), "height": number("Of the picture, in pixels."),
			"sort": object{"enum": []string{"drawn", "square on", "set square"}},
			"line": number("How broad its lines are, in pixels."),
			"half": object{"description": "The views of which half is drawn.", "type": "array",
				"maxItems": 3, "items": object{"enum": views}},
			"turn": number("How it is looked at, in radians, clockwise."), "mirrored": object{"type": "boolean"},
			"last":  count("The highest number in use."),
			"marks": object{"type": "array", "maxItems": record.MostMarks, "items": mark},
			"picture": object{"description": "The picture as a data URL, where its user keeps it.", "type": "string",
				"maxLength": record.MostPicture},
		},
	}
}

const schemaFile = "schema.json"

func TestSchemaIsOfTheTable(t *testing.T) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	require.NoError(t, e.Encode(schema()))
	if *update {
		require.NoError(t, os.WriteFile(schemaFile, b.Bytes(), 0o644))
	}
	written, err := os.ReadFile(schemaFile)
	require.NoError(t, err)
	assert.Equal(t, string(written), b.String(), "run make golden and look at the difference")
}

// What is written keeps to the schema, and what the schema refuses in a file's
// frame is refused by the reader.
func TestFilesKeepToTheSchema(t *testing.T) {
	text, err := os.ReadFile(schemaFile)
	require.NoError(t, err)
	var s object
	require.NoError(t, json.Unmarshal(text, &s))
	f := file.File{Boats: boats(append(append(design.Starting(), design.Default()), check.SomeDesigns(30, 2)...)[:12]),
		Current: 2}
	data, err := f.Encode()
	require.NoError(t, err)
	var v any
	require.NoError(t, json.Unmarshal(data, &v))
	assert.Empty(t, violations(s, v, "file"))

	v.(object)["designs"].([]any)[0].(object)["values"].(object)["keel"] = 1.0
	v.(object)["designs"].([]any)[1].(object)["values"].(object)["length"] = 900.0
	assert.Len(t, violations(s, v, "file"), 2)
}

// violations checks v against the few words of JSON Schema that schema uses.
func violations(s object, v any, at string) []string {
	var out []string
	wrong := func(bad bool, why string) {
		if bad {
			out = append(out, at+": "+why)
		}
	}
	if c, ok := s["const"]; ok {
		wrong(c != v, "not the constant")
	}
	if all, ok := s["enum"].([]any); ok {
		found := false
		for _, c := range all {
			found = found || c == v
		}
		wrong(!found, "not in the list")
	}
	switch x := v.(type) {
	case bool:
		wrong(s["type"] != "boolean", "type")
	case float64:
		wrong(s["type"] == "integer" && x != float64(int(x)) || s["type"] != "number" && s["type"] != "integer" &&
			s["const"] == nil, "type")
		least, _ := s["minimum"].(float64)
		most, bounded := s["maximum"].(float64)
		// Numbers at their bound may differ from it in the last bits.
		wrong(s["minimum"] != nil && x < least-1e-9 || bounded && x > most+1e-9, "range")
	case []any:
		most, bounded := s["maxItems"].(float64)
		wrong(s["type"] != "array" || bounded && float64(len(x)) > most, "type")
		for i, item := range x {
			out = append(out, violations(s["items"].(object), item, fmt.Sprintf("%s[%d]", at, i))...)
		}
	case object:
		wrong(s["type"] != "object", "type")
		properties, told := s["properties"].(object)
		if !told {
			break
		}
		for key, item := range x {
			if property, ok := properties[key].(object); ok {
				out = append(out, violations(property, item, at+"."+key)...)
			} else {
				wrong(true, "unknown "+key)
			}
		}
		for _, key := range asList(s["required"]) {
			_, ok := x[key.(string)]
			wrong(!ok, "missing "+key.(string))
		}
	}
	return out
}

func asList(v any) []any {
	list, _ := v.([]any)
	return list
}
