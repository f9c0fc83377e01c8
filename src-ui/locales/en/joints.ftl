# Joints.

joints-title = Joints
joints-also = joint dowel tenon floating biscuit plate joiner pocket hole screw connecting one-piece mortise slot spacing glue edge butt
joints-given = { $length } joint, { $thickness } board
joints-picture = Section through both parts at a joint, to scale, and the marks along the edge

joints-kind = Joined by
joints-kind-dowel = dowels
joints-kind-loose-tenon = loose tenons
joints-kind-biscuit = biscuits
joints-kind-connecting-screw = one-piece connecting screws
joints-kind-pocket-screw = pocket screws
joints-meeting = The edge meets
joints-meeting-face = a face
joints-meeting-edge = an edge

joints-group-parts = The parts
joints-length = Joint, length
joints-edge-thickness = Edge part, thickness
joints-face-thickness = Face part, thickness
joints-from-end = Face part's end to the outer face
joints-line = Outer face to the middle, blank to centre
joints-skin = Least left all round

joints-group-spread = How many, and where
joints-end-distance = First from the front, blank for usual
joints-other-end = Last from the back, blank for the same
joints-spacing = At most apart, blank for usual
joints-spread = Spread
joints-spread-even = evenly
joints-spread-steps = in 32 mm steps
joints-count = How many, blank for as needed

joints-group-sizes = Sizes
joints-face-depth = Depth in the other part, blank for usual
joints-glue = Room for glue, or beyond the screw
joints-dowel-diameter = Dowel, diameter
joints-dowel-length = Dowel, length
joints-tenon-thickness = Tenon, thickness
joints-tenon-width = Tenon, width along the joint
joints-tenon-length = Tenon, length
joints-biscuit = Biscuit
joints-biscuit-no0 = no. 0, 47 × 15 mm
joints-biscuit-no10 = no. 10, 53 × 19 mm
joints-biscuit-no20 = no. 20, 56 × 23 mm
joints-cutter = Slot cutter, diameter
joints-screw-length = Screw, length, blank for usual
joints-core = Hole for the thread
joints-shank = Hole for the shank
joints-shoulder = Shoulder to the end, blank for usual

joints-dowels = { $count ->
    [one] { $count } dowel
   *[other] { $count } dowels
}
joints-tenons = { $count ->
    [one] { $count } tenon
   *[other] { $count } tenons
}
joints-biscuits = { $count ->
    [one] { $count } biscuit
   *[other] { $count } biscuits
}
joints-screws = { $count ->
    [one] { $count } screw
   *[other] { $count } screws
}
joints-how-many = How many
joints-first-then = First, then each
joints-first-only = In the middle, at
joints-deep = Deep in face, in edge
joints-deep-edges = Deep in each edge
joints-screw-long = Screw, reach
joints-inside = Stays inside, { $least } left at least
joints-thin = Thin: only { $least } left somewhere
joints-breaks-out = Breaks out of the wood
joints-marks = Middles, from the front end
joints-mark = Mark { $number }
joints-mirrored = The mating part, from its back end
joints-marks-alike = Marks
joints-marks-alike-both = the same from either end
joints-lines = Lines to mark
joints-line-edge = Edge part, from its outer face
joints-line-face = Face part, from its end
joints-depths = Widths and depths
joints-in-edge = Edge part, deep
joints-in-other = Other part, deep
joints-through = Other part, right through
joints-across = Edge part, wide
joints-across-other = Other part, wide
joints-along = Long, along the joint
joints-shoulder-at = Shoulder to the end, along the screw
joints-screw = Screw, length
joints-reach = Reach, along the screw
joints-longest = Longest screw that leaves enough
joints-left = What is left
joints-left-outer = Edge part, outer face
joints-left-inner = Edge part, inner face
joints-left-behind = Face part, behind it
joints-left-to-end = Face part, to its end
joints-left-ends = Along the joint, to the nearer end
joints-notes = To know
joints-note = Note
