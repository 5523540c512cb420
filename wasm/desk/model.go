package desk

import (
	"math"
	"strconv"
	"strings"

	"barkwright/core/model"
	"barkwright/core/pattern"
	"barkwright/core/sheet"
	"barkwright/core/units"
	"barkwright/wasm/markup"
)

// modelSays is where it is said how many pages a model takes.
const modelSays = "model-says"

// mostModelPages is the most pages that a model's bark is fitted to.
const mostModelPages = 5

// fitting begins the value of a size that fits a number of pages.
const fitting = "fit"

// Models is the list of a model's sizes, as HTML: the usual scales, and those that fit the bark on
// so many pages.
func Models() string {
	html := ""
	for _, s := range model.Scales {
		scale := strconv.Itoa(int(s))
		html += markup.Option(scale, "1:"+scale)
	}
	html += markup.Option(fitting+"1", "its bark on one paper page")
	for n := 2; n <= mostModelPages; n++ {
		html += markup.Option(fitting+strconv.Itoa(n), "its bark on "+strconv.Itoa(n)+" paper pages")
	}
	return html
}

// model prints the kit of a model, or says how many pages it takes.
func (d *Desk) model(printed bool, form PaperForm) Reply {
	b, ok := d.modelBoat(form)
	if !ok {
		return Reply{}
	}
	if !b.Flat() {
		return say(modelSays, "The model's bark does not lie flat: "+b.Skin.Flat.State.String()+".")
	}
	r := say(modelSays, modelWords(b))
	if printed {
		var w strings.Builder
		if err := sheet.Print(&w, pattern.KitPages(b, d.head(form.Day))); err != nil {
			return say(modelSays, err.Error())
		}
		r.Print = w.String()
	}
	d.paper.of = d.shown.Canoe().Design
	return r
}

// modelWords say how large a model is and what it takes.
func modelWords(b model.Boat) string {
	size := func(v float64) string { return units.Trimmed(1000*b.OnModel(v), 0) }
	f := b.Skin.Flat
	text := "1:" + units.Trimmed(b.Scale, 1) + ": " + strconv.Itoa(pattern.KitCount(b)) + " paper pages for each pair of pupils. " +
		"The boat is " + size(b.Design.Length) + " mm long, its bark " + size(f.Length) + " by " +
		size(f.Breadth+2*b.Design.GunwaleTurn) + " mm."
	if b.RibEvery > 1 {
		text += " Every second rib is left out."
	}
	if b.Panelled && len(f.Panels) == 0 {
		text += " This boat's sheet needs no side panels."
	}
	return text
}

// modelBoat is the model chosen, and whether one is.
func (d *Desk) modelBoat(form PaperForm) (model.Boat, bool) {
	c := d.laidFlat()
	pages, fits := strings.CutPrefix(form.Model, fitting)
	n, err := strconv.Atoi(pages)
	if err != nil || n < 1 {
		return model.Boat{}, false
	}
	if !fits {
		return model.New(c.Design, float64(n), form.ModelPanels), true
	}
	scale := pattern.KitPage().FitTo(c.Skin.Flat.Length, c.Skin.Flat.Breadth, n)
	b := model.New(c.Design, scale, form.ModelPanels)
	// The model's own bark differs a little from the boat's, and its joints keep off the slits. How it
	// goes on paper is tried with the bark of the scale before, which is laid flat anew only then.
	for range mostFitted {
		if !b.Flat() || pattern.KitBarkPages(b) <= n {
			break
		}
		tried := b
		for range mostTried {
			tried.Scale = math.Round((tried.Scale+fitStep)/fitStep) * fitStep
			if pattern.KitBarkPages(tried) <= n {
				break
			}
		}
		b = model.New(c.Design, tried.Scale, form.ModelPanels)
	}
	return b, true
}

// fitStep is by how much a scale is made smaller until the bark goes on its pages, mostTried how often
// with the same bark at most, and mostFitted how often that is laid flat anew.
const (
	fitStep    = 0.1
	mostTried  = 60
	mostFitted = 4
)
