package words

// EnglishPage is what stands still on the English page: labels, hints, headings, cautions. Only the build reads it.
var EnglishPage = Page{language: &English, text: englishPage}

const englishPage = `
page.title = Twistbench: grams, millimetres and clamp marks for coiled-fibre muscles
page.about = Which mass to hang, how long to cut, where to clamp.
page.skip = Skip to the fibre
page.noscript = The numbers below are those of the start plan. To work out your own, this page needs JavaScript and WebAssembly.
page.failed = The part that works out your own numbers did not load. The numbers below are those of the start plan. Reload the page to try again.
page.loading = Getting ready…
page.footer = Arithmetic only, and every answer shows its working. Follow local rules and your lab's or school's own risk assessment.
page.offline = After one visit this page works without a network. Nothing you type leaves this device.

strip.label = The numbers for the bench
strip.add = add
strip.to = to your
strip.hook = hook
strip.in-all = in all
strip.cut = cut
strip.jaws = jaws
strip.then = then

plan.example = A worked example: a coil that lifts a cold frame's lid in the sun. Type your own numbers over it.
plan.label = Plan
plan.more = More
plan.name = Name of this plan
plan.new = New plan from these numbers
plan.delete = Delete this plan
plan.clear = Clear my numbers
plan.clear-hint = Hook, masses, tails and other things of your bench stay.
plan.link = Copy the link
plan.link-hint = The link holds every number; whoever opens it gets a plan of their own.
plan.summary = Copy a summary
plan.summary-hint = Plain text for the lab notebook.
plan.copy-box = Text to copy by hand
plan.undo = Undo
plan.units = Units shown
plan.metric = metric
plan.us = US
plan.take = Use the new version

bench.open = Bench view
bench.close = Back
bench.hang.under-set = Nearest under, from your masses
bench.next = Next step
bench.invert = Invert
state.fine = Good to know
state.care = Care
state.stop = Stop
step.why = why
step.finer = Finer points
step.unit = unit

fibre.heading = Fibre
fibre.question = What is on your spool?
hang.heading = Hang
hang.question = Which mass do I hang?
cut.heading = Cut
cut.question = How long do I cut?
clamp.heading = Clamp
clamp.question = Where do the clamps go?
heat.heading = Heat-set
heat.question = What do I set, and for how long?

group.size = Size of one strand: type any one
group.yarn-size = Size of one strand of the companion yarn: type any one
group.hang = Load: type any one
group.lengths = Lengths: type any one
group.labels = Other labels
group.labels-hint = In the box for linear density you may also type a label: 470 dtex x2, 210 den, 40/2 Ne (English cotton count), 50 Nm (metric count), 40 tkt (metric ticket, about) or 36 cotton tkt (cotton ticket, about).
group.weighed = Weighed check
group.weighed-hint = Weigh some metres: caliper and scale should agree.
group.strength = Strength on the label
group.bundle = Thickness of the twisted bundle
group.yarn = Companion yarn (the conductive one)
group.nearest = From the masses you own
group.water = A bottle to fill with water
group.room = Room below and above
group.recipe = Another person's recipe
group.recipe-hint = Their grams on their diameter, at the same stress on yours. Never copy grams from a fibre of another diameter.
group.caliper = What the caliper leaves open
group.trial = Don't know the ratio? Make one trial piece
group.trial-hint = Tie, hang and coil one piece, then type its two lengths.
group.use-trial = Use this ratio
group.side = Muscles side by side
group.side-hint = How many must pull together for a load. The working stress is not the stress while twisting.
group.measured = When this piece is coiled
group.travel-hint = If the turns touched when you measured. Could you see light between them? Then there is more.
group.frame = Positions on a rule
group.holes = A frame with holes
group.oven = What your oven's dial is worth
group.oven-hint = Put a probe beside the frame, let the oven settle, note dial and probe. Two readings around the temperature you want are enough. Without any, the dial is believed, and ovens are often 20 K off.
group.polymers = What each polymer stands
group.polymers-hint = In °C; the glass transition of a dry fibre. Own tests beat any book.
group.times = Times of one load
group.times-hint = Start the hold when the frame is back at temperature, not when the door closes.
group.second = Second heat-set
group.frames = Frames in the oven
group.frames-hint = Lying flat, with room for the air.
heat.polymer = Polymer
heat.melts = melts
heat.glass = glass transition
heat.sets = usually set
heat.memory = from memory
heat.read = read in
heat.nothing = no value here
heat.retained = Set retained, a guess until you measure it:

caution.hang.1 = Goggles for everyone in range: a fibre that snaps whips.
caution.hang.2 = Keep the mass low above a soft tray of foam or sand, toes and faces out from under it.
caution.hang.3 = Tie back hair, sleeves and lanyards. No gloves at the drill.
caution.hang.turn = Stop the mass from turning: a bar between two posts, or a string. If it turns, all the twist leaks out.
caution.cut.1 = Goggles for everyone in range. Nicked fibre snaps: cut with scissors, hold with tape, not pliers.
caution.cut.2 = Clamp both ends before unhooking: a live fibre spins when let go.
caution.clamp.1 = Clamp both ends before unhooking. Goggles on: a stretched coil stores energy, also when the clamps are opened.
caution.clamp.2 = A metal frame stays hot long after the oven: heat gloves there, none at the drill.
caution.heat.1 = Oven, frame and screws are hot: heat gloves here. Wait out the cooling before you touch; a hot frame looks like a cold one.
caution.heat.2 = Never an oven for food. Ventilate. Stop at smoke or smell: overheated nylon gives off fumes that irritate.
caution.heat.3 = Stay in the room. No glowing element within reach of the fibre.
caution.heat.4 = Unclamp cold: a fibre unclamped hot loses its set. Goggles on, it is under tension.
caution.fibre.1 = Never heat a fibre you can't name. Overheated PVDF can give off hydrogen fluoride.
caution.local = Follow local rules and your lab's or school's own risk assessment.

label.fibre.polymer = Polymer
label.fibre.diameter = Diameter
hint.fibre.diameter = Caliper, three places, gently: nylon dents.
label.fibre.diameter-doubt = ± of the diameter
label.fibre.linear-density = Linear density
hint.fibre.linear-density = From a label or weighed: 470 dtex x2 counts both plies.
label.fibre.area = Cross-section
label.fibre.density = Density
hint.fibre.density = Empty takes the book value of the polymer.
label.fibre.strands = Strands
hint.fibre.strands = How many are twisted together.
label.fibre.weighed-length = Length weighed
label.fibre.weighed-mass = It weighs
label.fibre.label-strength = Strength on the label
hint.fibre.label-strength = For plausibility only: labels often understate.
label.fibre.bundle = Measured thickness of the bundle
label.fibre.solid-area = Cross-section of all strands
label.fibre.thickness-least = At least
label.fibre.thickness-most = At most
label.fibre.weighed = Linear density as weighed
label.fibre.implied-density = Density if it is solid
label.fibre.packing = Polymer in that thickness
label.fibre.label-stress = Stress at that strength
label.yarn.strands = Strands of yarn
hint.yarn.strands = 0 is none.
label.yarn.polymer = Polymer inside
label.yarn.diameter = Yarn diameter
label.yarn.linear-density = Yarn linear density
label.yarn.area = Yarn cross-section
label.yarn.density = Yarn density
hint.yarn.density = Plated yarn is denser than its polymer.
label.yarn.weighed-length = Yarn weighed
label.yarn.weighed-mass = The yarn weighs
label.yarn.weighed = Linear density as weighed
label.yarn.implied-density = Density if it is solid
label.yarn.packing = Solid in that thickness

label.hang.stress = Stress
hint.hang.stress = Common practice while twisting is 10 MPa and more.
label.hang.mass = In all, hook included
label.hang.mass-doubt = ± of the scale
label.hang.add = Add to the hook
label.hang.force = Force
label.hang.hook = Hook, clip and hanger
hint.hang.hook = Weigh them together.
label.hang.area = The stress is on
option.main = the main fibre's own area
option.all = all solid area
label.hang.owned = Masses you own
hint.hang.owned = In grams: 20x2; 50; 100x2. Washers of one mass: 6,2x11.
label.hang.bottle = Empty bottle, if it is not the hook
label.hang.clearance = Clearance under the mass
label.hang.stack = Height of hook and masses
label.hang.their-mass = Their grams
label.hang.their-diameter = Their diameter
label.hang.load-area = Area under load
label.hang.mass-least = If the fibre is thinner by its ±
label.hang.mass-most = If it is thicker by its ±
label.hang.under = Nearest under: add
label.hang.under-total = in all
label.hang.under-stress = really gives, on the area you chose,
label.hang.under-set = that is
label.hang.over = Nearest over: add
label.hang.over-total = in all
label.hang.over-stress = really gives, on the area you chose,
label.hang.over-set = that is
label.hang.water = Water to fill in
label.hang.rise = The mass rises by
label.hang.hook-height = Upper hook above the tray
label.hang.drop-start = Drop energy at the start
label.hang.drop-coiled = Drop energy when fully coiled
label.hang.their-stress = Their stress
label.hang.same-mass = On your fibre, hook included
label.hang.of-label = Share of the label's strength

label.cut.ratio = Ratio, precursor to coil
hint.cut.ratio = Type 4.8, or 4.8:1, or 0.21.
label.cut.ratio-doubt = ± of the ratio
label.cut.precursor = Precursor
hint.cut.precursor = The fibre between the ties, before twisting.
letter.cut.precursor = P
label.cut.tail = Tail at each end
hint.cut.tail = For tie, knot and clamp.
label.cut.pieces = Pieces wanted
label.cut.spare = Spare
label.cut.trial-precursor = Precursor of the trial piece
label.cut.trial-coiled = As coiled
label.cut.lift = Load to lift
label.cut.lift-stress = Working stress at most
label.cut.length = Cut, tails included
label.cut.all-pieces = Pieces to cut
label.cut.total = Line in all
label.cut.yarn-total = Companion yarn in all
label.cut.fibre-mass = Fibre in one active muscle
label.cut.trial-ratio = Ratio of the trial piece
label.cut.muscles = Muscles side by side
label.cut.muscle-stress = Real working stress
label.cut.muscle-force = Force on each
label.cut.muscle-share = Share of each

label.clamp.coiled = As coiled
letter.clamp.coiled = L
hint.clamp.coiled = Both ends held, mass still on.
label.clamp.measured = As coiled, measured
hint.clamp.measured = Leave empty until the piece is coiled. What you cut stays; the gaps follow.
label.clamp.measured-state = Measured with
option.held = both ends held, mass still on
option.relaxed = the length relaxed after the first cooling
option.clamp.measured-state.relaxed = the coil relaxed, no mass
label.clamp.stages = Heat-sets
option.two = two
option.one = one only
label.clamp.first-stretch = Stretch, first heat-set
hint.clamp.first-stretch = Of the length as coiled.
label.clamp.second-stretch = Stretch, second heat-set
label.clamp.second-base = The second is a stretch of
option.coiled = the length as coiled
option.first-gap = the first gap
label.clamp.relaxed = Relaxed after the first cooling
hint.clamp.relaxed = Measure it then; until then it is guessed.
label.clamp.first = First gap
hint.clamp.first = Jaw to jaw.
letter.clamp.first = 1
label.clamp.second = Second gap
hint.clamp.second = Jaw to jaw.
letter.clamp.second = 2
label.clamp.retained = Set retained
hint.clamp.retained = Share of the stretch that stays after release: 85 % or 0.85.
label.clamp.finished = Finished
hint.clamp.finished = After release and rest.
letter.clamp.finished = f
label.clamp.ruler-doubt = ± of the ruler
label.clamp.zero = Fixed jaw from the zero mark
label.clamp.hole-pitch = Distance between holes
label.clamp.hole-offset = Jaw-to-jaw gap at hole 0
label.clamp.piece = This piece, as coiled
label.clamp.base = The second is a stretch of
label.clamp.last = Last gap
label.clamp.this-finished = This piece, finished
label.clamp.this-ratio = Ratio of this piece
label.clamp.first-real = First gap, as a stretch
label.clamp.second-real = Second gap, as a stretch of its base
label.clamp.first-move = Move the jaw by
label.clamp.second-move = then by
label.clamp.second-of-first = Second gap as a stretch of the first gap
label.clamp.travel-length = Travel, from the last gap
label.clamp.travel = that is, of that gap
label.clamp.finished-travel-length = Travel, from the finished length
label.clamp.finished-travel = that is, of the finished length
label.clamp.first-position = Moving jaw at, first
label.clamp.second-position = then at
label.clamp.first-hole = First gap: hole
label.clamp.first-hole-gap = gap there
label.clamp.first-hole-stretch = stretch there
label.clamp.second-hole = Second gap: hole
label.clamp.second-hole-gap = gap there
label.clamp.second-hole-stretch = stretch there, of its base

label.heat.set = True temperature wanted
hint.heat.set = At the fibre, not on the dial.
label.heat.overshoot = Overshoot
hint.heat.overshoot = How far the oven runs over before it settles.
label.heat.melt = Melts from
hint.heat.melt = Empty takes the lowest book value.
label.heat.frame-limit = Frame, glue and yarn stand
hint.heat.frame-limit = The least of them.
label.heat.dial-1 = Dial
label.heat.probe-1 = Probe
label.heat.dial-2 = Dial, second
label.heat.probe-2 = Probe, second
label.heat.dial-3 = Dial, third
label.heat.probe-3 = Probe, third
label.heat.preheat = Preheat
label.heat.load = Loading
label.heat.recovery = Recovery
hint.heat.recovery = After the door was open.
label.heat.hold-1 = Hold, first
hint.heat.hold-1 = About an hour is common practice.
label.heat.cool-1 = Cooling, first
label.heat.reclamp = Re-clamp
label.heat.hold-2 = Hold, second
label.heat.cool-2 = Cooling, second
label.heat.rest = Rest
hint.heat.rest = About a day before testing is common practice.
label.heat.oven-width = Oven, width inside
label.heat.oven-depth = Oven, depth inside
label.heat.oven-shelves = Shelves
label.heat.frame-length = Frame, length
label.heat.frame-width = Frame, width
label.heat.frame-gap = Gap around it
label.heat.frame-pieces = Pieces in a frame
label.heat.dial = Set the dial to
label.heat.mean-dial = Middle of the dial readings
label.heat.mean-probe = Middle of the probe readings
label.heat.slope = One step of the dial is
label.heat.at-set = Dialled as wanted, the oven would be at
label.heat.peak = Hottest, with overshoot
label.heat.margin = Margin to melting
label.heat.frames = Frames in one load
label.heat.per-load = Pieces in one load
label.heat.loads = Loads for all pieces
label.heat.total = Time in all, one load

option.nylon-6 = nylon 6
option.nylon-66 = nylon 6,6
option.polyethylene = polyethylene (PE)
option.polyester = polyester (PET)
option.pvdf = PVDF (fluorocarbon)
option.other = other: type its density

unit.mm = millimetres
unit.µm = micrometres
unit.cm = centimetres
unit.m = metres
unit.in = inches
unit.thou = thou
unit.ft = feet
unit.yd = yards
unit.g = grams
unit.kg = kilograms
unit.mg = milligrams
unit.lb = pounds
unit.oz = ounces
unit.N = newtons
unit.mN = millinewtons
unit.cN = centinewtons
unit.gf = gram-force
unit.kgf = kilogram-force
unit.lbf = pound-force
unit.ozf = ounce-force
unit.MPa = megapascals
unit.N/mm² = N per mm²
unit.kPa = kilopascals
unit.GPa = gigapascals
unit.Pa = pascals
unit.psi = psi
unit.ksi = ksi
unit.mm² = square mm
unit.µm² = square µm
unit.cm² = square cm
unit.m² = square metres
unit.in² = square inches
unit.tex = tex
unit.dtex = dtex
unit.den = denier
unit.g/m = grams per metre
unit.mg/m = mg per metre
unit.g/km = grams per km
unit.ktex = kilotex
unit.Ne = cotton count Ne
unit.Nm = metric count Nm
unit.tkt = metric ticket, about
unit.cotton tkt = cotton ticket, about
unit.kg/m³ = kg per m³
unit.g/cm³ = g per cm³
unit.lb/ft³ = lb per cubic ft
unit.% = percent
unit.°C = degrees Celsius
unit.°F = degrees Fahrenheit
unit.K = kelvin
unit.s = seconds
unit.min = minutes
unit.h = hours
unit.ms = milliseconds
unit.days = days
`

// Page is the words that stand still on a language's page.
type Page struct {
	language *Language
	text     string
	entries  []entry // read from text when first asked for, so that nothing but the build holds these words
}

func (p *Page) list() []entry {
	if p.entries == nil {
		p.entries = entries(p.text)
	}
	return p.entries
}

// Language returns the language the page is in.
func (p *Page) Language() *Language { return p.language }

// Say returns the words of a key, from the page's own words or else the live ones.
func (p *Page) Say(key string) string {
	if i := search(p.list(), "", key); i >= 0 {
		return p.list()[i].text
	}
	return p.language.Say(key)
}

// Has reports whether the page has words for a key.
func (p *Page) Has(key string) bool { return search(p.list(), "", key) >= 0 || p.language.Has(key) }
