# Hole rows.

hole-rows-title = Hole rows
hole-rows-also = 32 mm system line boring shelf pin peg hole side drilling jig guide hinge plate carcass case
hole-rows-given = { $count } holes a row, { $height } side
hole-rows-picture = Both sides as they lie on the bench, inner face up, with every hole, to scale

hole-rows-group-side = The side
hole-rows-height = Side, length
hole-rows-depth = Side, front to back
hole-rows-thickness = Side, thickness
hole-rows-datum = Measured from
hole-rows-datum-bottom = the lower end
hole-rows-datum-top = the upper end

hole-rows-group-rows = The rows
hole-rows-first = First hole
hole-rows-first-balanced = balanced
hole-rows-first-given = as given
hole-rows-end-distance = From the ends; at least, if balanced
hole-rows-pitch = Hole to hole
hole-rows-doors = Doors
hole-rows-doors-in-front = in front, or none
hole-rows-doors-inset = inset
hole-rows-door-thickness = Door, thickness
hole-rows-front-setback = Front row, from edge or inset door
hole-rows-rear = Rear row
hole-rows-rear-balanced = as far in as the front row
hole-rows-rear-steps = whole steps behind the front row
hole-rows-rear-own = my own distance
hole-rows-rear-none = none
hole-rows-rear-setback = Rear row, from the back edge

hole-rows-group-shelves = Where shelves go
hole-rows-shelves-from = First hole, blank for all
hole-rows-shelves-to = Last hole, blank for all
hole-rows-skip-from = No holes from, one a line
hole-rows-skip-to = No holes to, line by line

hole-rows-group-hinges = Hinge plates
hole-rows-hinges = Middles wished, one a line
hole-rows-door-end = Door begins at

hole-rows-group-drill = Drill and rail
hole-rows-hole = Hole, diameter
hole-rows-hole-depth = Hole, depth
hole-rows-rail-offset = Drill's middle to the rail's edge

hole-rows-first-hole = First hole from the end
hole-rows-rows-at = Rows from the front
hole-rows-row-at = Row from the front
hole-rows-alike = Balanced: left and right are alike
hole-rows-rows-only = Balanced, but left and right differ: mark them
hole-rows-uneven = Not balanced: take { $less } off or add { $more }
hole-rows-setting = Set the guide
hole-rows-end-stop = End stop to the first index hole
hole-rows-front-rail = Rail's edge, front row, from the front
hole-rows-rear-rail = Rail's edge, rear row, from the front
hole-rows-left-behind = Left behind the holes
hole-rows-division = Whole steps
hole-rows-count = Holes in a full row
hole-rows-last = Last hole from the other end
hole-rows-over = Side fits if shorter by
hole-rows-missing = Side fits if longer by
hole-rows-apart = From row to row
hole-rows-depth-over = Rows fit if shallower by
hole-rows-depth-missing = Rows fit if deeper by
hole-rows-hands = Inner face up, the datum end to your left
hole-rows-left = Left side
hole-rows-right = Right side
hole-rows-front-near = front edge next to you
hole-rows-front-away = front edge away from you
hole-rows-from-near = { $side }, rows from the edge next to you
hole-rows-front-row = Front row, from the datum end
hole-rows-rear-row = Rear row, from the datum end
hole-rows-hole-number = Hole { $number }
hole-rows-plate-hole = Hole { $number }, plate
hole-rows-plate = Plate { $number }, holes
hole-rows-cup = Cup { $number }, on the door from its end
hole-rows-moved = moved { $by } up the row
hole-rows-moved-back = moved { $by } down the row
hole-rows-notes = To know
hole-rows-note = Note
