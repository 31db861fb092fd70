//go:build js && wasm

package main

import "github.com/hack-pad/safejs"

// worker is the service worker that keeps the page for use without a network. A new version waits until the person takes it.
type worker struct {
	registration safejs.Value
	taken        bool
}

func (w *worker) start(a *app) {
	container := a.navigator("serviceWorker")
	if !there(container) {
		return // opened from a file, or not over https: no worker
	}
	a.on(container, controllerchange, controllerchange)
	a.then(a.call(container, "register", "sw.js"), registered, unregistered) // without it the page works, with a network
}

func (w *worker) registered(a *app, registration safejs.Value) {
	w.registration = registration
	a.on(registration, updatefound, updatefound)
	w.follow(a)
	w.offer(a)
}

// follow watches a version that is being fetched.
func (w *worker) follow(a *app) {
	if fresh := a.get(w.registration, "installing"); there(fresh) {
		a.on(fresh, statechange, statechange)
	}
}

// waiting returns the version that waits to be taken, if any. On the first visit there is none before it, and nothing to take.
func (w *worker) waiting(a *app) (v safejs.Value) {
	if there(a.get(w.registration, "active")) {
		v = a.get(w.registration, "waiting")
	}
	return v
}

// offer offers a version that waits.
func (w *worker) offer(a *app) {
	if there(w.waiting(a)) {
		a.put("offer-text", text, a.say("say.new-version", ""))
		a.put("offer", hidden, "")
	}
}

// take takes the version that waits; the page is loaded anew when it has taken over.
func (w *worker) take(a *app) {
	if waiting := w.waiting(a); there(waiting) {
		w.taken = true
		a.call(waiting, "postMessage", map[string]any{"type": "take"})
	}
}

func (w *worker) controlled(a *app) {
	if w.taken {
		a.call(a.window("location"), "reload")
	}
}
