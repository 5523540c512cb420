//go:build js

package bridge

import (
	"slices"
	"strconv"
	"syscall/js"
	"time"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/wasm/desk"
	"barkwright/wasm/markup"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

// planned is what the page shows of the plan of the work.
type planned struct {
	fields map[string]js.Value
	// unread are the fields whose entry could not be read: it stays, with its fault.
	unread  map[string]bool
	outlook *core.Outlook // as it is shown
	system  int
	// counted is the system of units that the form counts tasks in.
	counted int
	// inSight are what shows the plan and is in the window now, by their ids.
	inSight map[string]bool
}

// What shows the plan: its own section, and the table of what the boat asks of its builder.
const seasonID, asksID = "season", "asks-table"

// showsPlan tells whether something of the plan stands at the place where the page is.
func (p *page) showsPlan() bool { return p.places.at.Shows(string(work.Season) + " choose") }

// seesPlan tells whether it is looked at: the search waits for that. In the season's own place it is
// always wanted, also while the form stands over it.
func (p *page) seesPlan() bool {
	return p.places.at == work.Season || p.showsPlan() && (p.planned.inSight[seasonID] || p.planned.inSight[asksID])
}

// watchPlan has the plan worked out, and written where it comes into sight.
func (p *page) watchPlan() {
	p.planned.inSight = map[string]bool{}
	seen := p.callback(func(args []js.Value) {
		came := false
		for i := range args[0].Length() {
			e := args[0].Index(i)
			id, sees := e.Get("target").Get("id").String(), e.Get("isIntersecting").Bool()
			came = came || sees && !p.planned.inSight[id]
			p.planned.inSight[id] = sees
		}
		if came && p.seesPlan() {
			p.showSeason()
			p.turnIn(p.known().Stepped())
		}
	})
	observer := js.Global().Get("IntersectionObserver").New(seen)
	for _, id := range []string{seasonID, asksID} {
		observer.Call("observe", p.id(id))
	}
}

// listenSeason writes the form of the plan and answers it.
func (p *page) listenSeason() {
	p.id("season-form").Set("innerHTML", markup.SeasonForm())
	p.id("season-rates").Set("innerHTML", markup.SeasonTasks(p.work.System))
	p.id("work-fields").Set("innerHTML", markup.Fields(markup.WorkFields))
	p.id("work-task").Set("innerHTML", markup.TaskOptions(p.work.System))
	p.id("mend-fields").Set("innerHTML", markup.Fields(markup.MendFields))
	kinds := p.id("mend-kind")
	kinds.Set("innerHTML", markup.MendOptions())
	asks := func() { p.reply(desk.MendAsks(kinds.Get("value").String())) }
	asks()
	p.on(kinds, "change", func(js.Value) { asks() })
	p.id("season-numbers").Set("innerHTML", markup.PlanNumbers(p.work.System))
	p.findOutputs(p.id("season-numbers"))
	p.onCapture(p.id("season-numbers"), "toggle", func(e js.Value) {
		if fold := e.Get("target"); data(fold, "number") != "" {
			p.outputs[data(fold, "number")].unfolded = fold.Get("open").Bool()
			p.showThese(p.work.Planned())
		}
	})
	p.planned = planned{fields: map[string]js.Value{}, unread: map[string]bool{}, system: -1,
		counted: int(p.work.System)}
	p.watchPlan()
	// Where the form stands over the plan and not beside it, the plan is seen first.
	p.id("crew").Set("open", js.Global().Call("matchMedia", "(min-width: 62rem)").Get("matches"))
	for _, form := range []string{"crew", "season"} {
		each(p.id(form), "[data-set]", func(e js.Value) { p.planned.fields[data(e, "set")] = e })
		p.on(p.id(form), "change", func(e js.Value) {
			if key := data(e.Get("target"), "set"); key != "" {
				p.seasonSet(key, e.Get("target"))
			}
		})
		p.on(p.id(form), "input", func(e js.Value) {
			if key := data(e.Get("target"), "set"); key != "" {
				p.work.TypeSeason(key, e.Get("target").Get("value").String())
				p.saveSoon()
			}
		})
		p.on(p.id(form), "keydown", func(e js.Value) {
			switch key := data(e.Get("target"), "set"); {
			case !p.planned.unread[key]:
			case e.Get("key").String() == "Enter":
				p.seasonSet(key, e.Get("target"))
			case e.Get("key").String() == "Escape":
				p.work.SetTyped(work.SeasonKey(key), "")
				p.forgetSeason(key)
			}
		})
	}
}

// seasonSet sets a field of the plan, or says at it what is wrong.
func (p *page) seasonSet(key string, field js.Value) {
	wrong := p.work.SetSeason(key, field.Get("value").String())
	p.seasonUnread(key, wrong)
	if wrong == "" {
		p.seasonMoved()
	}
	p.saveSoon()
}

// seasonUnread says at a field of the plan why what stands in it does not count, empty where it does.
func (p *page) seasonUnread(key, why string) {
	p.planned.unread[key] = why != ""
	p.say("season-"+key+"-fault", why)
	setWrong(p.planned.fields[key], why)
}

// forgetSeason takes what was typed and could not be read off a field of the plan.
func (p *page) forgetSeason(key string) {
	p.seasonUnread(key, "")
	p.planned.fields[key].Set("value", p.work.SeasonText(key))
}

// halfSeason puts back what stood half typed in the fields of the plan.
func (p *page) halfSeason() {
	for key, field := range p.planned.fields {
		if text, why, half := p.work.HalfSeason(key); half {
			field.Set("value", text)
			p.seasonUnread(key, why)
		}
	}
}

// seasonMoved shows that the plan is another, and has it worked out.
func (p *page) seasonMoved() {
	p.showSeason()
	p.restSoon()
	p.saveSoon()
}

// showSeason brings the plan to what is known of it: what is being worked out anew stands as it
// was, and says so.
func (p *page) showSeason() {
	if p.planned.fields == nil || !p.showsPlan() {
		return
	}
	o, known := p.known().Outlook()
	shown := o
	if !known {
		shown = nil
	}
	p.showThese(p.work.Planned())
	if p.planned.inSight[asksID] {
		p.fill(asksID, markup.Asks(p.work.Canoe(), shown, p.work.System))
	}
	if !p.places.at.Shows(string(work.Season)) {
		return
	}
	p.showSeasonForm()
	p.say("season-head", markup.PlanHead(o, known))
	when, tasks, _ := answer.NextWork(o)
	p.say("next-when", when)
	p.say("next-tasks", tasks)
	p.hide("next", when == "")
	p.id("season").Get("dataset").Set("plan", map[bool]string{true: "known", false: "waiting"}[known])
	have, wanted, split := p.work.RootLeft()
	p.say("season-root", markup.RootLeft(have, wanted, split, p.work.System))
	p.say("season-bark", markup.BarkLeft(p.work.BarkLeft()))
	if !known || o == p.planned.outlook && int(p.work.System) == p.planned.system {
		return
	}
	p.planned.outlook, p.planned.system = o, int(p.work.System)
	for id, minutes := range p.work.LearnedMinutes() {
		p.say("season-learned-"+plan.Of(plan.ID(id)).Key, markup.Learned(plan.ID(id), minutes, p.work.System))
	}
	p.fill("season-remarks", markup.Remarks(o, p.work.System))
	p.chartDays(false)
	open := map[string]bool{}
	each(p.id("season-tables"), "details[open]", func(e js.Value) { open[data(e, "plan")] = true })
	p.fill("season-tables", markup.PlanTables(o, p.work.System, open))
}

// paperWait is how long the browser's own print waits for a plan that is not known, ms: it cannot be put off,
// and a plan of many boats takes seconds.
const paperWait = 500

// asksForPaper writes what the boat asks, which a print of the page shows whether it is looked at or
// not.
func (p *page) asksForPaper() {
	if p.work.None || !p.places.at.Shows(string(stage.Choose)) {
		return
	}
	b := p.known()
	b.WantPlan(true, true, today())
	b.Hurry(pipeline.Sooner, now, paperWait)
	o, known := b.Outlook()
	if !known {
		o = nil
	}
	p.fill(asksID, markup.Asks(p.work.Canoe(), o, p.work.System))
}

// chartDays draws the chart of days, as it stands on the page or as the page is printed.
func (p *page) chartDays(printed bool) {
	switch o := p.planned.outlook; {
	case !p.places.at.Shows(string(work.Season)):
	case printed:
		p.fill("season-chart", markup.PaperPlan(o))
	default:
		width := p.id("season-chart").Get("clientWidth").Float()
		p.fill("season-chart", markup.PlanChart(o, width, p.picture.Size().Letter, p.palette))
	}
}

// showSeasonForm brings the form to what is set, but for a field in hand and one that could not be
// read; what does not go together stands at its field.
func (p *page) showSeasonForm() {
	p.showCounted()
	faults := map[string]string{}
	s := p.work.Season()
	for _, f := range s.Faults() {
		faults[f.Key] = f.Text
	}
	active := p.document.Get("activeElement")
	for key, field := range p.planned.fields {
		if p.planned.unread[key] {
			continue
		}
		if text := p.work.SeasonText(key); !active.Equal(field) && field.Get("value").String() != text {
			field.Set("value", text)
		}
		p.say("season-"+key+"-fault", faults[key])
		if fold := field.Call("closest", "details"); faults[key] != "" && !field.Call("hasAttribute", "aria-invalid").Bool() {
			fold.Set("open", true)
		}
		setWrong(field, faults[key])
	}
}

// showCounted counts the tasks of the form as its reader does. What is typed and the task chosen stay.
func (p *page) showCounted() {
	s := p.work.System
	if p.planned.counted == int(s) {
		return
	}
	p.planned.counted = int(s)
	for i := range plan.Tasks {
		p.say("season-unit-"+plan.Of(i).Key, markup.CountedBy(i, s))
		p.planned.fields[plan.RateKey(i)].Set("placeholder", markup.UsualMinutes(i, s))
	}
	chosen := p.text("work-task")
	p.id("work-task").Set("innerHTML", markup.TaskOptions(s))
	p.id("work-task").Set("value", chosen)
}

// season answers the buttons of the plan.
func (p *page) season(what string) {
	switch what {
	case "next":
		if days := p.document.Call("querySelector", `[data-plan="plan.days"]`); !days.IsNull() {
			p.openAt(days, days.Call("querySelector", "summary"))
		}
		return
	case "done":
		o, _ := p.known().Outlook()
		if when, _, first := answer.NextWork(o); when != "" {
			p.id("work-task").Set("value", plan.Of(first).Key)
		}
		p.openAt(p.id("work-fold"), p.id("work-task"))
		return
	case "work":
		log := len(p.work.Notebook.Log)
		p.reply(p.desk.EnterWork(p.workForm(), today()))
		if len(p.work.Notebook.Log) > log {
			p.entered()
			p.seasonMoved()
		}
		return
	}
	p.reply(p.desk.Season(what, p.paperForm(), time.Now().UTC()))
	if p.desk.AwaitsPlan() {
		p.turnIn(p.known().Stepped())
	}
}

// workForm and mendForm are what is typed of work done and of a repair.
func (p *page) workForm() desk.WorkForm {
	return desk.WorkForm{Task: p.text("work-task"), Done: p.text("work-done"), Hours: p.text("work-hours"),
		Learners: p.text("work-learners")}
}

func (p *page) mendForm() desk.MendForm {
	return desk.MendForm{Kind: p.text("mend-kind"), At: p.text("mend-at"), Up: p.text("mend-up"), Along: p.text("mend-along"),
		Round: p.text("mend-round"), Groups: p.text("mend-groups"), Aft: p.text("mend-end") == "aft",
		Starboard: p.text("mend-side") == "starboard"}
}

// mend says what a repair takes, enters it, or takes one off the log.
func (p *page) mend(what string) {
	form := p.mendForm()
	switch n, err := strconv.Atoi(what); {
	case err == nil:
		p.reply(p.desk.StrikeRepair(n))
	case what == "keep":
		p.reply(p.desk.KeepRepair(form, today()))
	default:
		p.reply(p.desk.Mend(form))
		return
	}
	p.entered()
}

// showRepairs shows the repairs of the log, in the picture where it has others.
func (p *page) showRepairs() {
	all := p.work.Repairs()
	if !slices.EqualFunc(all, p.view.Repairs, func(a, b answer.Mended) bool { return a.Entry == b.Entry }) {
		p.draw()
	}
	if !p.places.at.Shows(string(stage.Keep)) {
		return
	}
	p.reply(p.desk.MendAgain())
	open := map[string]bool{}
	each(p.id("mend-log"), "details[open]", func(e js.Value) { open[data(e, "repair")] = true })
	p.fill("mend-log", markup.Repairs(all, p.work.Dates, p.work.System, open))
}
