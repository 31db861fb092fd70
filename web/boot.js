// The page's own small part of the program: it starts the core, tells it what happens, and does what it asks for.
//
// gather(event) returns what happened and the box it happened in, or at the start every box: "type <1f> id <1f> do <1f> key <1f> value <1f>
// href <1f> now <1f> away <1e>", and then for each box "key <1f> text <1f> unit <1e>". Away are the sections out of sight. Now is the time in
// seconds, and, at the start or where the page comes into sight, the local clocks: see zone. apply(slots) writes records "id <1f> what <1f> value
// <1e>" where they differ. What is t for text, v for the value of a control but never of the one that is being typed in, s for a state, h for
// hidden, f to move the focus there, o for the options of a list and c for the chosen one, r for the rows of a table, b for a file that a link
// hands over, and anything else is an attribute, which an empty value takes away.
"use strict";
(() => {
  const PART = "\x1f", RECORD = "\x1e", OPTION = "\x1d", NAME = "\x1c";
  const places = new Map(); // slot id -> elements
  const boxes = document.querySelectorAll("main input:not([type=range]), main textarea, main select:not(.unit)");
  const wasm = document.currentScript.dataset.wasm;
  let typing; // the control whose input is being answered
  addEventListener("input", (event) => { typing = event.target; }, true); // also before the core is up
  const steps = [...document.querySelectorAll(".step")].map((step) => [step.id, [...step.querySelectorAll(".boxes, .drawing, .answers, .after")]]);
  const skipped = new Set(); // what the browser leaves out, for it is out of sight
  addEventListener("contentvisibilityautostatechange", (event) => { skipped[event.skipped ? "add" : "delete"](event.target); }, true);

  // The page comes without the ids of what is named after the number in whose box or row it stands: they are many, and follow.
  for (const part of document.querySelectorAll(".mark, .doubt, .other, .why, .working")) {
    part.id ||= part.closest("[id$=':box'], [id$=':row']").id.replace(/:.*/, ":" + part.className);
  }

  // A box that was emptied and yet has a number, which is worked out then, shows it when it is left.
  addEventListener("focusout", ({ target }) => {
    if (target.value === "" && document.documentElement.dataset.ready) target.value = target.kept ?? target.defaultValue ?? "";
  }, true);

  function find(id) {
    let found = places.get(id);
    if (!found) {
      const one = document.getElementById(id);
      found = one ? [one] : [...document.querySelectorAll('[data-slot="' + CSS.escape(id) + '"]')];
      places.set(id, found);
    }
    return found;
  }

  function gather(event) {
    const { type, target } = event;
    const own = target?.id?.replace(/:unit$/, "");
    const button = target?.closest?.("[data-do]");
    const value = type === "toggle" ? (target.open ? "1" : "") : event.key ?? target?.value ?? "";
    const first = type === "start";
    let all = [type, target?.id ?? "", button?.dataset.do ?? "", button?.dataset.key ?? "", value, location.href, now() + (first || type === "visibilitychange" ? zone() : ""), steps.filter(([, parts]) => parts.every((part) => skipped.has(part) || part.checkVisibility?.() === false)).map(([id]) => id).join(" ")].join(PART) + RECORD;
    for (const box of boxes) {
      if (!first && box.id !== own) continue;
      const unit = document.getElementById(box.id + ":unit");
      all += box.id + PART + box.value + PART + (unit ? unit.value ?? unit.textContent : "") + RECORD;
    }
    return all;
  }

  function write(element, what, value) {
    switch (what) {
      case "t":
        if (!element.firstChild) element.append("");
        if (element.firstChild.data !== value) element.firstChild.data = value;
        break;
      case "v":
        if (!("value" in element)) write(element, "t", value);
        else {
          element.kept = value;
          if (element !== typing && element.value !== value) element.value = value;
        }
        break;
      case "c":
        element.value = value;
        break;
      case "s":
        element.dataset.state = value;
        break;
      case "h":
        element.hidden = value !== "";
        break;
      case "f":
        pad();
        (element.closest(".box") ?? element).scrollIntoView({ block: "nearest" }); // with what it is called
        element.focus({ preventScroll: true });
        break;
      case "o":
        element.replaceChildren(...value.split(OPTION).map((option) => {
          const [key, name] = option.split(NAME);
          return new Option(name, key);
        }));
        break;
      case "b": {
        const [name, text] = value.split(NAME);
        element.download = name;
        element.href = URL.createObjectURL(new Blob([text], { type: "text/calendar" }));
        setTimeout(() => element.click()); // not while the core is at it
        setTimeout(() => URL.revokeObjectURL(element.href), 60000);
        break;
      }
      case "r":
        element.replaceChildren(...value.split(OPTION).map((row) => {
          const line = document.createElement("tr");
          for (const cell of row.split(NAME)) line.insertCell().append(cell);
          return line;
        }));
        break;
      default:
        if (value === "") element.removeAttribute(what);
        else element.setAttribute(what, value);
    }
  }

  function apply(slots) {
    for (const record of slots.split(RECORD)) {
      const [id, what, value] = record.split(PART);
      if (what !== undefined) for (const element of find(id)) write(element, what, value);
    }
  }

  // A jump stops under the strip, which is as high as its words need, and under what hangs on it.
  const strip = document.querySelector(".strip"), said = document.getElementById("said");
  const pad = () => { document.documentElement.style.scrollPaddingTop = strip.offsetHeight + said.offsetHeight + 8 + "px"; };
  const sizes = new ResizeObserver(pad);
  sizes.observe(strip);
  sizes.observe(said);
  // What is said while the status line is out of sight hangs there; what was said before that has been seen.
  new IntersectionObserver((lines) => {
    strip.toggleAttribute("data-far", !lines.at(-1).isIntersecting);
    said.textContent = "";
  }).observe(document.getElementById("status"));
  // A slider types into its box.
  addEventListener("input", ({ target }) => {
    const box = document.getElementById(target.dataset.for);
    if (!box) return;
    box.value = +(+target.value).toPrecision(3);
    box.dispatchEvent(new Event("input", { bubbles: true }));
  }, true);

  // What is out of sight takes its height only on the way there, so that a jump down the page misses: it is made once more when all is there.
  addEventListener("click", (event) => {
    const link = event.target.closest?.('a[href^="#"]');
    const jump = () => document.getElementById(link.hash.slice(1))?.scrollIntoView();
    if (link) requestAnimationFrame(() => requestAnimationFrame(jump));
  });

  const now = () => Math.floor(Date.now() / 1000) + " ";

  // Of each change of the local clocks from a month ago to three years from now: when, in seconds, and how many they are ahead of UTC, and a day more.
  function zone() {
    const ahead = (t) => 86400 - 60 * new Date(t * 1000).getTimezoneOffset();
    const week = 604800;
    let t = +now() - 4 * week;
    let list = t + " " + ahead(t) + " ";
    for (const end = t + 160 * week; t < end; t += week) {
      let last = t, first = t + week;
      if (ahead(last) === ahead(first)) continue;
      while (first - last > 1) {
        const middle = Math.floor((last + first) / 2);
        if (ahead(middle) === ahead(t)) last = middle;
        else first = middle;
      }
      list += first + " " + ahead(first) + " ";
    }
    return list;
  }

  let lock, audio, rang = 0, heard = 0;
  const sound = () => audio ??= globalThis.AudioContext && new AudioContext();
  addEventListener("click", (event) => {
    if (event.target.dataset?.do?.startsWith("start")) sound()?.resume(); // later browsers may not let us
  }, true);

  // What was started goes on: the core is told the time, the screen is kept on while it is what is on it, and rings, again and again, while hands
  // are needed, at once where something more comes due, and once for what came due while the page was away.
  setInterval(() => {
    const strip = document.getElementById("strip.clock").dataset, state = strip.state;
    if (state) tell({ type: "tick" });
    awake(state && document.documentElement.dataset.bench === "clock").catch(() => {}); // as where the battery is low: the page says so
    const newest = +strip.newest || 0, anew = newest > heard;
    heard = newest;
    if (!anew && (strip.state !== "due" || Math.abs(Date.now() - rang) < 4000) || !navigator.userActivation?.hasBeenActive) return;
    rang = Date.now();
    navigator.vibrate?.([400, 200, 400]);
    if (!sound()) return;
    const tone = audio.createOscillator();
    tone.frequency.value = 880;
    tone.connect(audio.destination);
    tone.start();
    tone.stop(audio.currentTime + 0.6);
  }, 500);

  async function awake(on) {
    if (!on) await lock?.release();
    else if (!lock || lock.released) lock = await navigator.wakeLock?.request("screen");
    document.documentElement.toggleAttribute("data-awake", !!lock && !lock.released);
  }

  // The service worker keeps the page for use without a network. A new version of it waits until the person takes it.
  let worker, taken;
  async function offline() {
    const container = navigator.serviceWorker;
    if (!container) return; // opened from a file, or not over https
    container.addEventListener("controllerchange", () => { if (taken) location.reload(); });
    worker = await container.register("sw.js");
    worker.addEventListener("updatefound", follow);
    follow();
    offer();
  }

  function follow() {
    worker.installing?.addEventListener("statechange", offer);
  }

  // On the first visit there is no version before it, and nothing to offer.
  function offer() {
    if (worker.active && worker.waiting) tell({ type: "offered" });
  }

  // Where storage is blocked its very name throws.
  function ask(method, ...args) {
    try {
      return localStorage[method](...args);
    } catch {
      return null;
    }
  }

  async function copy(text) {
    let type = "uncopied";
    try {
      await navigator.clipboard.writeText(text);
      type = "copied";
    } catch {}
    await null; // not while the core is at it
    tell({ type });
  }

  let core, held, timer;
  const encoder = new TextEncoder(), decoder = new TextDecoder();
  const read = (place, length) => decoder.decode(new Uint8Array(core.mem.buffer, place, length));

  // Holds a text until the core has made room for it.
  function hold(text) {
    held = encoder.encode(text ?? "");
    return text === null ? -1 : held.length;
  }

  function tell(event) {
    if (core) core.happened(hold(gather(event)));
  }

  // What the core may ask for: see wasm/edge.go, where a text is one argument, and here its place and its length.
  const page = {
    answer: (place) => new Uint8Array(core.mem.buffer, place).set(held),
    apply: (...slots) => apply(read(...slots)),
    kept: (...key) => hold(ask("getItem", read(...key))),
    keyAt: (i) => hold(ask("key", i)),
    keep: (key, length, ...text) => ask("setItem", read(key, length), read(...text)) !== null,
    drop: (...key) => ask("removeItem", read(...key)),
    wait(ms) {
      clearTimeout(timer);
      timer = setTimeout(tell, ms, { type: "paused" });
    },
    copy: (...text) => copy(read(...text)),
    forget: () => history.replaceState(null, "", "."),
    takeOver() {
      taken = true;
      worker.waiting?.postMessage({ type: "take" });
    },
    elapsed: () => performance.now(),
  };

  function failed(reason) {
    core = undefined;
    console.error(reason);
    document.documentElement.dataset.failed = "1";
  }

  const told = ["input", "change", "focusout", "click", "toggle", "keydown", "contentvisibilityautostatechange", "storage", "hashchange", "visibilitychange", "beforeprint"];
  function listen(event) {
    if (event.skipped || (event.type === "keydown" && event.key !== "Escape")) return; // says nothing to the core
    if (event.type !== "input") typing = undefined;
    tell(event);
  }

  async function start() {
    const go = new Go();
    go.exit = () => failed(new Error("the core has stopped"));
    go.importObject.page = {};
    for (const [name, does] of Object.entries(page)) go.importObject.page[name] = (...args) => {
      try {
        return does(...args);
      } catch (reason) {
        console.error(reason); // what is thrown into the core would end it
      }
    };
    // Go answers a timer through package syscall/js, which is not there. The core has none; the runtime's own, for giving back memory, can wait
    // until something happens.
    go.importObject.gojs["runtime.scheduleTimeoutEvent"] = () => {};
    let got;
    try {
      got = await WebAssembly.instantiateStreaming(fetch(wasm), go.importObject);
    } catch {
      // A host that serves another content type, or an old browser: read it whole.
      const answer = await fetch(wasm);
      got = await WebAssembly.instantiate(await answer.arrayBuffer(), go.importObject);
    }
    core = got.instance.exports;
    go.run(got.instance).catch(failed);
    tell({ type: "start" });
    for (const type of told) addEventListener(type, listen, true); // toggle does not bubble
    offline().catch(() => {}); // without it the page works, with a network
  }

  start().catch(failed);
})();
