# Wall cleat.

wall-cleat-title = Wall cleat
wall-cleat-also = cleat batten ledger french bevel beveled bevelled hang hanging mount wall cabinet cupboard unit strip rail spacer inset back
wall-cleat-given = top at { $top }, { $bevel }° bevel
wall-cleat-picture = The upper end of the cabinet from the side, to scale, hooked onto the strip on the wall

wall-cleat-strips = The strips
wall-cleat-thickness = Strip, thickness
wall-cleat-strip-height = Strip, height of the wide face
wall-cleat-bevel = Bevel, from square
wall-cleat-kerf = Kerf, square to the blade
wall-cleat-end-gap = Wall strip shorter, each end

wall-cleat-group-cabinet = The cabinet
wall-cleat-back = Back
wall-cleat-back-inset = set in
wall-cleat-back-flush = flush
wall-cleat-slack = Set in deeper than the strip by
wall-cleat-cabinet-width = Cabinet, width
wall-cleat-cabinet-height = Cabinet, height
wall-cleat-side = Sides, thickness
wall-cleat-below-top = Cabinet's top to its strip

wall-cleat-group-wall = The wall
wall-cleat-top-at = Cabinet's top, from the floor
wall-cleat-ceiling = Ceiling, from the floor, if any

wall-cleat-inset = Set the back in by
wall-cleat-stands-off = Stands off the wall by
wall-cleat-wall-strip-at = Wall strip, lower edge from the floor
wall-cleat-lift = Free above, to lift it on
wall-cleat-lifts-on = Lifts on, { $spare } to spare
wall-cleat-lifts-not = Does not lift on: { $missing } missing above
wall-cleat-lifts-unknown = Keep { $lift } free above it

wall-cleat-on-the-wall = On the wall, from the floor
wall-cleat-screws-at = Line of the screws
wall-cleat-point-at = Point of the wall strip
wall-cleat-spacer-at = Spacer, lower edge
wall-cleat-top = Cabinet's top
wall-cleat-highest-top = Highest the top can be

wall-cleat-section = Both, thickness × wide face
wall-cleat-narrow = Narrow face
wall-cleat-bevel-width = Bevel, corner to corner
wall-cleat-cabinet-strip = Cabinet's strip, length
wall-cleat-wall-strip = Wall strip and spacer, length
wall-cleat-spacer = Spacer behind the back, thickness

wall-cleat-saw = At the saw, fence to the near side of the blade
wall-cleat-board = Board for the pair, width
wall-cleat-pass = { $cut }, blade leans { $lean }°
wall-cleat-cut-pair = One rip parts the pair
wall-cleat-cut-part = Part the board
wall-cleat-cut-edge = Each strip on edge, wide face to the fence
