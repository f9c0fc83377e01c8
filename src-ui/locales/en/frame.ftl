# The frame around every screen, and what all cards share.

bench-title = Bench
settings-title = Settings
foot-title = Screens
back = Back to the bench
skip = To the card
no-such-card = There is no such card. Here is the bench.
search = Find a card
search-none = No card by that word.
stage-size = Size
stage-cut = Cut
stage-groove = Groove
stage-drill = Drill
stage-join = Join
stage-hang = Hang
stage-finish = Finish
glance-unfinished = Not finished: some inputs cannot be used

fields-title = Measurements
field-echo = = { $value }
field-echo-near = ≈ { $value }
field-echo-range = = { $value } ± { $by }
field-echo-range-near = ≈ { $value } ± { $by }
field-from-settings = From the settings. Type here to use another.

answer-stale = The last good answer. See the field that is marked.
answer-none = No answer yet. See the field that is marked.
exact = exact
cost-over = { $mm } mm over
cost-under = { $mm } mm under
cost-tie = { $cost }, a tie

working-title = Working
working-metric = in millimetres, newtons and kilograms
cautions-title = Mind
at-saw = At the saw
at-saw-dims = This screen may go dark by itself.
close = Close
copy = Copy
copied = Copied
not-copied = This device does not let the text be copied
share = Share
undo = Undo
demo = Put back to the demo

hold = Hold a value
hold-title = Tap what to put on the tape
held = { $value } is on the tape.
tape-title = Tape
tape-for = { $field }: from the tape
tape-empty = Nothing on the tape yet. Answers come here as you work, the last twenty; any can be held from its card.
tape-name = Name it
tape-name-of = Name of { $value }
tape-drop = Take { $value } off the tape

unread = What you kept could not be read, so it is not shown; it is still where it was. { $why } What you type now is not kept, so that it takes the place of nothing, and is gone once what you kept is read again.
unread-again = Read again
damaged-inputs = What was kept for this card is damaged and cannot be read. It is put aside, and the card begins with its demo. Jobs that were saved are as they were.
not-kept = What you type works, but may be gone at the next start.
new-version = A newer version of Scantling is ready.
take-over = Use it now

pad-title = Number pad
pad-tolerance = Plus or minus
pad-back = Take back
pad-point = Point
pad-plus = Plus
pad-minus = Minus
pad-times = Times
pad-divide = Divided by
pad-open = Open bracket
pad-close = Close bracket
pad-step-down = One mark less
pad-step-up = One mark more
pad-space = Space
pad-next = Next

rounding-nearest = Nearest mark
rounding-not-over = Not over
rounding-not-under = Not under

search-on = Looking for a better one: { $percent } %
search-stopped = Stopped at { $percent } %
search-done = Looked through to the end
search-held = Sawing has begun: this layout stays
search-stop = Stop
search-go-on = Go on
file-stays-here = The file is read here and goes nowhere.
file-read = is read. Undo brings back what stood here before.
file-not-read = cannot be read. A text file in UTF-8 of at most 300 KB is wanted.
take-out = Take { $what } out

hands-title = Open another card with these sizes

drawing-save-svg = save as SVG
drawing-save-dxf = save as DXF
drawing-larger = larger
drawing-smaller = smaller
drawing-part = Part
drawing-no-part = none chosen: tap one, or choose it here
drawing-named = { $drawing }: { $name }

next-title = What comes next
next-count = { $left } of { $all } left here
next-done = Done
next-undo = Take the last tick back
next-none = All of it is done.
