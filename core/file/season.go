package file

import (
	"errors"
	"fmt"

	"barkwright/core/plan"
)

// seasonJSON is what is set for a plan as written: what stands as it is at first is left out.
type seasonJSON struct {
	// Numbers and Dates go by their keys, Minutes (of one unit) and Have (units) by tasks'.
	Numbers map[string]float64 `json:"numbers,omitempty"`
	Dates   map[string]string  `json:"dates,omitempty"`
	Minutes map[string]float64 `json:"minutes,omitempty"`
	Have    map[string]float64 `json:"have,omitempty"`
}

func writeSeason(s *plan.Season) *seasonJSON {
	first := plan.NewSeason()
	if s == nil || *s == first {
		return nil
	}
	j := &seasonJSON{map[string]float64{}, map[string]string{}, map[string]float64{}, map[string]float64{}}
	for i, r := range plan.Rows() {
		if s.Numbers[i] != first.Numbers[i] {
			j.Numbers[r.Key] = s.Numbers[i]
		}
	}
	for i, r := range plan.DateRows() {
		if s.Days[i] != first.Days[i] {
			j.Dates[r.Key] = s.Days[i]
		}
	}
	for i, t := range plan.All() {
		if s.Likely[i] != 0 {
			j.Minutes[t.Key] = s.Likely[i]
		}
		if s.Have[i] != 0 {
			j.Have[t.Key] = s.Have[i]
		}
	}
	return j
}

// readSeason refuses what no plan has, and numbers that no plan can be made with.
func readSeason(j *seasonJSON) (*plan.Season, error) {
	if j == nil {
		return nil, nil
	}
	s := plan.NewSeason()
	unknown := func(key string) error {
		return fmt.Errorf("The file holds a value for %.40q, which no plan of a season has.", key)
	}
	numbers, dates := map[string]plan.Field{}, map[string]plan.Date{}
	for _, r := range plan.Rows() {
		numbers[r.Key] = r.Field
	}
	for _, r := range plan.DateRows() {
		dates[r.Key] = r.Date
	}
	for key, v := range j.Numbers {
		f, ok := numbers[key]
		if !ok {
			return nil, unknown(key)
		}
		s.Numbers[f] = v
	}
	for key, v := range j.Dates {
		d, ok := dates[key]
		if !ok {
			return nil, unknown(key)
		}
		s.Days[d] = v
	}
	for into, from := range map[*[plan.Tasks]float64]map[string]float64{&s.Likely: j.Minutes, &s.Have: j.Have} {
		for key, v := range from {
			id, ok := plan.Lookup(key)
			if !ok {
				return nil, unknown(key)
			}
			into[id] = v
		}
	}
	if s.Outside() {
		return nil, errors.New("The file holds numbers of a plan that are out of their range.")
	}
	return &s, nil
}
