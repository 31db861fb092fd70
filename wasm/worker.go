//go:build js && wasm

package main

import "github.com/hack-pad/safejs"

// worker is the service worker that keeps the page for use without a network. A new version waits until the person takes it.
type worker struct {
	app          *app
	registration safejs.Value
	taken        bool
}

func (w *worker) start(a *app) error {
	w.app = a
	container, err := a.navigator("serviceWorker")
	if err != nil || container.Type() != safejs.TypeObject {
		return err // opened from a file, or not over https: no worker
	}
	if err := a.on(container, "controllerchange", func(safejs.Value) error { return w.controlled() }); err != nil {
		return err
	}
	promise, err := container.Call("register", "sw.js")
	if err != nil {
		return err
	}
	return a.then(promise, w.registered, func(safejs.Value) error { return nil }) // without it the page works, with a network
}

func (w *worker) registered(registration safejs.Value) error {
	w.registration = registration
	if err := w.app.on(registration, "updatefound", func(safejs.Value) error { return w.follow() }); err != nil {
		return err
	}
	if err := w.follow(); err != nil {
		return err
	}
	return w.offer()
}

// follow watches a version that is being fetched.
func (w *worker) follow() error {
	fresh, err := w.registration.Get("installing")
	if err != nil || fresh.Type() != safejs.TypeObject {
		return err
	}
	return w.app.on(fresh, "statechange", func(safejs.Value) error { return w.offer() })
}

// waiting returns the version that waits to be taken, if any. On the first visit there is none before it, and nothing to take.
func (w *worker) waiting() (v safejs.Value, ok bool, err error) {
	active, err := w.registration.Get("active")
	if err != nil || active.Type() != safejs.TypeObject {
		return v, false, err
	}
	v, err = w.registration.Get("waiting")
	return v, err == nil && v.Type() == safejs.TypeObject, err
}

// offer offers a version that waits.
func (w *worker) offer() error {
	_, ok, err := w.waiting()
	if ok {
		w.app.put("offer-text", text, w.app.say("say.new-version", ""))
		w.app.put("offer", hidden, "")
	}
	return err
}

// take takes the version that waits; the page is loaded anew when it has taken over.
func (w *worker) take() error {
	waiting, ok, err := w.waiting()
	if !ok {
		return err
	}
	w.taken = true
	_, err = waiting.Call("postMessage", map[string]any{"type": "take"})
	return err
}

func (w *worker) controlled() error {
	if !w.taken {
		return nil
	}
	location, err := w.app.window.Get("location")
	if err != nil {
		return err
	}
	_, err = location.Call("reload")
	return err
}
