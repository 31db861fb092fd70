//go:build js && wasm

package main

import (
	"twistbench/calc"
	"twistbench/calc/quantity"
)

// keep writes the plan on the page, and only that one, to the device. A plan that is not kept yet gets an entry of its own.
//
//go:noinline
func (a *app) keep() { a.keepAs("") }

// keepAs does the same, with a name for a plan that gets an entry; "" for a new name.
func (a *app) keepAs(name string) {
	if a.linked {
		a.linked = false
		forget()
	}
	isNew := a.open == ""
	if isNew {
		n := unused()
		a.open, a.name, a.deleted = planKey(n), name, ""
		if name == "" {
			a.name = a.say("plan.unnamed", decimal(n))
		}
	}
	if !keep(a.open, calc.Kept(a.name, &a.sheet)) {
		a.notKept()
	} else if isNew {
		setOpen(a.open)
		a.put("status", text, "") // in place of what stands there for the start plan
	}
	if isNew {
		a.plans()
	}
}

// notKept says that the device keeps nothing; the strip does so once, and not at every keystroke.
func (a *app) notKept() {
	a.tell("say.not-kept", "")
	if a.warned {
		a.hush()
	}
	a.warned = true
}

// load puts a plan on the page that is not a change of the one before: undo does not cross it.
//
//go:noinline
func (a *app) load(s calc.Sheet, key, name string) {
	a.sheet, a.open, a.name = s, key, name
	a.history = calc.History{}
	a.linked, a.deleted = false, ""
}

// openKept opens a kept plan; what of it can't be read is left at its start text.
func (a *app) openKept(key string) {
	kept, ok := stored(key)
	if !ok {
		return
	}
	name, s, _ := calc.ParseKept(kept)
	if name == "" {
		name = a.say("plan.unnamed", decimal(number(key)))
	}
	a.load(s, key, name)
	setOpen(key)
}

// choose opens the plan of a key from the list; "" is the start plan.
func (a *app) choose(key string) {
	if key == "" {
		a.load(calc.Start(), "", a.say("plan.start", ""))
		setOpen("")
	} else {
		a.openKept(key)
	}
	a.opened()
	a.tell("say.opened", a.name)
}

// opened shows a plan that was just opened.
func (a *app) opened() {
	a.plans()
	a.set("undo", disabled, a.history.Empty())
	a.refresh()
}

func (a *app) deletePlan() {
	if a.open == "" {
		return
	}
	name, gone := a.name, a.sheet
	drop(a.open)
	a.load(calc.Start(), "", a.say("plan.start", ""))
	a.history.Before(&gone, calc.None)
	a.deleted = name
	setOpen("")
	a.opened()
	a.tell("say.deleted", name)
}

// rename takes the name typed for the plan.
func (a *app) rename(name string) {
	if name = quantity.Trim(name); name == "" {
		return
	}
	if a.open == "" {
		a.keep()
	}
	a.name = name
	a.keep()
	a.list()
}

// plans shows which plan is open and which there are.
func (a *app) plans() {
	a.put("plan-name", value, a.name)
	a.set("delete", disabled, a.open == "")
	units := "metric"
	if a.display.US {
		units = "us"
	}
	a.put("units", value, units)
	a.list()
}

// list lists the plans: the start plan, those that are kept, and the one on the page where it is neither.
func (a *app) list() {
	const option, name = "\x1d", "\x1c"
	all := name + a.say("plan.start", "")
	listed := a.open == "" && a.name == a.say("plan.start", "")
	for _, n := range plans() {
		key := planKey(n)
		kept, _ := stored(key)
		title, _, _ := calc.ParseKept(kept)
		if key == a.open {
			title, listed = a.name, true
		}
		all += option + key + name + title
	}
	chosen := a.open
	if !listed {
		chosen = "\x00"
		all += option + chosen + name + a.name
	}
	a.put("plan-list", options, all)
	a.put("plan-list", chosenOption, chosen)
}

// changed is a change of what is kept by another tab: it is announced, not merged.
func (a *app) changed(key string) {
	if isRun(key) {
		a.openRuns()
		return
	}
	a.list()
	if key == a.open && key != "" {
		a.tell("say.elsewhere", "")
	}
}

// linkOf returns the plan in an address, "" where there is none.
func linkOf(href string) string {
	_, link := quantity.Split(href, '#')
	if _, ours := quantity.CutPrefix(link, "v=1"); ours {
		return link
	}
	return ""
}

// openLink opens the plan of a link as one that is not kept, and touches nothing that is.
func (a *app) openLink(link string) {
	s, faults := calc.ParseLink(link)
	a.load(s, "", a.say("plan.from-link", ""))
	a.linked = true
	if len(faults) == 0 {
		a.tell("say.linked", "")
		return
	}
	keys := faults[0].Key
	for _, f := range faults[1:] {
		keys += ", " + f.Key
	}
	a.tell("say.link-faults", keys)
}

// copy copies a text; where the browser won't, it shows it for copying by hand.
func (a *app) copy(text string) {
	a.copying = text
	copyText(text)
}

func (a *app) byHand() {
	a.put("copy-by-hand", hidden, "")
	a.put("copy-box", value, a.copying)
	a.tell("say.not-copied", "")
}
