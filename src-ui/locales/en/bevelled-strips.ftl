# Bevelled strips.

bevelled-strips-title = Bevelled strips
bevelled-strips-also = bevel beveled bevelled strip slat louvre louver rip cleat angle saw fence batten
bevelled-strips-given = { $width } board, { $bevel }° bevel
bevelled-strips-picture = The board from its end, to scale, with the strips and what the saw takes

bevelled-strips-shape = Strips
bevelled-strips-shape-parallelogram = edges lean alike
bevelled-strips-shape-trapezoid = edges lean inwards
bevelled-strips-shape-cleat-pair = a pair of cleats
bevelled-strips-board-width = Board, width
bevelled-strips-thickness = Board, thickness
bevelled-strips-bevel = Bevel, from upright
bevelled-strips-strip-width = Strip, finished width
bevelled-strips-measured-at = Measured
bevelled-strips-at-wide = wide face
bevelled-strips-at-mid = mid-thickness
bevelled-strips-at-narrow = narrow face
bevelled-strips-first-edge = First edge of the board
bevelled-strips-first-square = square
bevelled-strips-first-bevelled = bevelled already
bevelled-strips-kerf = Kerf, square to the blade
bevelled-strips-planing = To plane off each sawn edge
bevelled-strips-tooth-above = Top tooth above the board
bevelled-strips-wanted = Strips wanted, blank for all

bevelled-strips-count = The board gives
bevelled-strips-strips = { $count ->
    [one] { $count } strip
   *[other] { $count } strips
}
bevelled-strips-cleat = Each cleat, wide face
bevelled-strips-fence = Fence to the blade
bevelled-strips-left = { $left } left over
bevelled-strips-missing = { $missing } short of the number wanted: { $boards } boards needed

bevelled-strips-passes = At the saw, fence to the near side of the blade
bevelled-strips-pass = { $number }. { $cut }: { $turn }, { $up }, { $touching }
bevelled-strips-passes-alike = { $pass }; the same up to pass { $last }
bevelled-strips-cut-trim = Bevel the first edge
bevelled-strips-cut-strip = Strip
bevelled-strips-turn-start = lay the board down
bevelled-strips-turn-keep = push it up as it lies
bevelled-strips-turn-roll = roll it over, other edge to the fence
bevelled-strips-turn-spin = turn it end for end, other edge to the fence
bevelled-strips-turn-end-over-end = turn it end over end, same edge to the fence
bevelled-strips-up-marked = marked face up
bevelled-strips-up-other = marked face down
bevelled-strips-touching-square = square edge at the fence
bevelled-strips-touching-lower = lower corner at the fence
bevelled-strips-touching-upper = upper corner at the fence

bevelled-strips-finished = A finished strip
bevelled-strips-wide = Wide face
bevelled-strips-mid = Mid-thickness
bevelled-strips-narrow = Narrow face
bevelled-strips-square = Square from bevel to bevel
bevelled-strips-bevel-width = Bevel, corner to corner
bevelled-strips-sawn-wide = As sawn, wide face
bevelled-strips-saw = The saw and the board
bevelled-strips-tilt = Blade leans, away from the fence
bevelled-strips-blade = Blade above the table, along the blade
bevelled-strips-kerf-on-face = Kerf along a face
bevelled-strips-slope = The cut walks sideways
bevelled-strips-used = Board used
bevelled-strips-offcut = Offcut, wide face
