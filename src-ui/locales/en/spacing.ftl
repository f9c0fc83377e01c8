# Even spacing.

spacing-title = Even spacing
spacing-also = equal gaps centers centres layout marking divide slat baluster spindle picket rail fence hook knob screw dowel story stick rod
spacing-given = { $count } × { $width } on { $length }
spacing-picture = Pieces on their length, and a story stick with their edges, to scale along the length

spacing-length = Length to fill
spacing-width = Piece, width
spacing-by = Pieces by
spacing-by-count = their number
spacing-by-largest-gap = the largest gap
spacing-count = Pieces
spacing-largest-gap = Largest gap
spacing-even = Even
spacing-even-gaps = gaps
spacing-even-centres = centres
spacing-ends = At the ends
spacing-ends-gap = a gap
spacing-ends-half = half a gap
spacing-ends-piece = a piece
spacing-ends-own = a distance
spacing-end = End to edge, or to centre for even centres
spacing-datum = Tape hooked before the length by

spacing-number = Pieces
spacing-gap = Gap
spacing-pitch = Centre to centre
spacing-end-gap = Gap at each end
spacing-spare = No gap over the largest, { $spare } to spare
spacing-ends-over = Each end is { $over } over the largest gap
spacing-touch = No gap: the pieces touch

spacing-edges = Both edges, from where the tape is hooked
spacing-centres = Centres, from where the tape is hooked
spacing-piece = Piece { $number }
spacing-gaps = Gaps
spacing-stepped = Stepped off one by one, the last is out by
spacing-beside = One fewer, one more
spacing-with = { $count ->
    [one] Gap with { $count } piece
   *[other] Gap with { $count } pieces
}
