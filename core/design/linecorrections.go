package design

import (
	"errors"
	"math"
	"strconv"
	"strings"

	"barkwright/core/shape"
	"barkwright/core/units"
)

// In a line of text each correction is its three places, as shares of the half gunwale,
// and its millimetres: 0.41~0~0.78~12.7!0.78~0.41~1~-3.
const (
	correctionJoin = "!"
	correctionPart = "~"
)

func lineCorrections(list *shape.Corrections) string {
	var each []string
	for _, c := range list.List() {
		each = append(each, strings.Join([]string{shortest(c.At), shortest(c.From), shortest(c.To),
			shortest(c.By / units.Millimetre)}, correctionPart))
	}
	return strings.Join(each, correctionJoin)
}

var errCorrections = errors.New("The corrections in the line are damaged.")

func readCorrections(text string) (list shape.Corrections, err error) {
	for _, each := range strings.Split(text, correctionJoin) {
		parts := strings.Split(each, correctionPart)
		if len(parts) != 4 || list.Count == shape.MostCorrections {
			return list, errCorrections
		}
		var v [4]float64
		for i, p := range parts {
			if v[i], err = strconv.ParseFloat(p, 64); err != nil || math.IsNaN(v[i]) || math.IsInf(v[i], 0) {
				return list, errCorrections
			}
		}
		list.Each[list.Count] = shape.Correction{At: v[0], From: v[1], To: v[2], By: v[3] * units.Millimetre}
		list.Count++
	}
	return list, nil
}
