# Weight and hanging.

hanging-title = Weight and hanging
hanging-also = weight weigh heavy hang hanging mount wall cabinet cupboard carcass case unit screw stud joist plug anchor toggle drywall plasterboard fixing lift lifting people tilt tip ceiling gravity load
hanging-given = { $count ->
    [one] one fixing
   *[other] { $count } fixings
}
hanging-picture = The cabinet on the wall from the side, to scale, with its centre of gravity and what pulls and pushes

hanging-group-cabinet = The cabinet
hanging-weight = Weight
hanging-weight-parts = from its panels
hanging-weight-known = known
hanging-known-weight = Empty, doors and shelves in
hanging-width = Cabinet, width
hanging-height = Cabinet, height
hanging-depth = Depth without doors
hanging-material = Carcass, material
hanging-material-own = Something else
hanging-thickness = Carcass, thickness
hanging-back-material = Back, material
hanging-back-thickness = Back, thickness
hanging-back-inset = Back set in by
hanging-shelves = Shelves
hanging-doors = Doors
hanging-doors-none = none
hanging-doors-one = one
hanging-doors-two = a pair
hanging-door-material = Doors, material
hanging-door-thickness = Doors, thickness
hanging-own-density = Something else weighs

hanging-group-contents = What stands in it
hanging-load = Contents
hanging-load-per-metre = by the metre
hanging-load-each = each shelf
hanging-per-metre = Each shelf and the bottom, a metre
hanging-levels-0 = On the bottom
hanging-levels-1 = On shelf 1, the lowest
hanging-levels-2 = On shelf 2
hanging-levels-3 = On shelf 3
hanging-levels-4 = On shelf 4
hanging-levels-5 = On shelf 5
hanging-levels-6 = On shelf 6
hanging-levels-7 = On shelf 7

hanging-group-hung = On the wall
hanging-hung = Hangs by
hanging-hung-cleat = a bevelled cleat
hanging-hung-rail = screws in a rail
hanging-bevel-down = Bevel or screws below the top
hanging-stands-off = Stands off the wall by
hanging-strip = Wall strip or rail, thickness
hanging-bevel = Bevel, from square
hanging-strip-height = Wall strip, height
hanging-fixings-up = Fixings above its lower edge
hanging-strip-length = Strip or rail, length

hanging-group-fixings = The fixings
hanging-fixing = Fixings
hanging-fixing-wood-screw = screws in studs
hanging-fixing-anchor = by the packet
hanging-count = How many
hanging-first-at = First one from the strip's end
hanging-screw = Wood screw
hanging-screw-6 = No. 6, 3.5 mm
hanging-screw-8 = No. 8, 4.2 mm
hanging-screw-10 = No. 10, 4.8 mm
hanging-screw-12 = No. 12, 5.5 mm
hanging-screw-14 = No. 14, 6.1 mm
hanging-screw-own = another
hanging-own-diameter = Screw, diameter
hanging-screw-length = Screw, length
hanging-stud = Studs
hanging-stud-spruce-pine-fir-south = spruce-pine-fir, south
hanging-stud-spruce-pine-fir = spruce-pine-fir
hanging-stud-hem-fir = hem-fir
hanging-stud-douglas-fir = Douglas fir-larch
hanging-stud-southern-pine = southern pine
hanging-stud-own = another wood
hanging-own-gravity = Specific gravity, oven-dry
hanging-stud-pitch = Stud to stud
hanging-lining = Board on the studs, thickness
hanging-pull-rating = Packet: pull out, each
hanging-shear-rating = Packet: along the wall, each
hanging-rating = The packet prints
hanging-rating-allowed = what it may carry
hanging-rating-failure = where it fails
hanging-factor = Divided by

hanging-lift = Lifting it by hand
hanging-hands-out = Hands in front of the ankles
hanging-lift-from = Hands at the start, from the floor
hanging-lift-to = Hands at the end, from the floor
hanging-twist = Twist of the body
hanging-grip = Grip
hanging-grip-good = good
hanging-grip-fair = fair
hanging-grip-poor = poor
hanging-ceiling = Ceiling, if it is tilted up
hanging-clearance = To stay free below the ceiling

hanging-total = Weighs, loaded
hanging-centre = Centre of gravity from the wall
hanging-holds = Holds: { $used } % of what they may carry
hanging-too-much = Too much: { $used } % of what they may carry. { $count } needed
hanging-far-too-much = Far too much: { $used } % of what they may carry
hanging-few-studs = { $studs ->
    [one] One stud behind the strip takes two screws
   *[other] { $studs } studs behind the strip take two screws each
}
hanging-no-grip = The screws do not reach far enough into the stud

hanging-would = What would hold, each by itself
hanging-would-count = So many of the same
hanging-would-length = As many, so long
hanging-would-screw = As many, so thick
hanging-would-none = None of these
hanging-would-none-advice = lighten it, or stand it on the floor
hanging-each = Each fixing
hanging-each-pull = Pulled out by
hanging-each-shear = Carries, along the wall
hanging-of = of { $most } allowed
hanging-in-stud = Goes into the stud
hanging-comes-out = Would come out at about
hanging-squares = Used, by squares (does not decide)
hanging-percent = { $used } %
hanging-marks = Fixings, from the left end of the strip
hanging-mark = { $count ->
    [one] one at
   *[other] { $count } at
}
hanging-wall = The pull on the wall
hanging-lever = Lever over the lower edge
hanging-wedge = Wedge of the bevel
hanging-prying = The strip tips, fixings pull
hanging-times = { $times } times that
hanging-masses = What weighs what
hanging-part-cabinet = Cabinet without doors
hanging-part-sides = Sides
hanging-part-top-and-bottom = Top and bottom
hanging-part-back = Back
hanging-part-shelves = Shelves
hanging-part-doors = Doors
hanging-part-contents = Contents
hanging-empty = Cabinet, empty
hanging-centre-shut = Centre from the wall, doors shut
hanging-centre-up = Centre from the bottom
hanging-bare = Without doors and shelves
hanging-people-bare = To lift it so
hanging-people-whole = To lift it whole, empty
hanging-people = { $count ->
    [one] one person
   *[other] { $count } people
}
hanging-nobody = not by hand: props or a lift
hanging-crew = { $count ->
    [one] One person may lift
   *[other] { $count } people may lift
}
hanging-index = index { $index }
hanging-tilt = Tilting it up
hanging-diagonal = Diagonal of the side
hanging-clears = Clears the ceiling, to spare
hanging-strikes = Strikes the ceiling, missing
hanging-highest = Highest that comes up, as deep
hanging-notes = To know
hanging-note = Note
