# Sheet layout: parts on sheets, and the order of cuts.

sheet-layout-title = Sheet layout
sheet-layout-also = cut list, cutting list, cutting plan, cutting diagram, panel optimiser, optimizer, nesting, yield, plywood, board, breakdown, saw list, offcut, scrap
sheet-layout-given = { $count ->
    [one] { $count } part
   *[other] { $count } parts
}

sheet-layout-group-parts = Parts
sheet-layout-parts = One part a line: name, length × width × how many
sheet-layout-parts-hint = Behind that, where it matters, the stock and the grain: along the length, across it, or free to turn. Lines from a spreadsheet can be pasted.
sheet-layout-file = Take the parts from a table (CSV)
sheet-layout-mark = Line { $line }, “{ $typed }”, is left out. { $why }

sheet-layout-group-sheet = Sheet
sheet-layout-sheet-length = Length of a whole sheet
sheet-layout-sheet-width = Width of it
sheet-layout-sheet-price = Price of a sheet
sheet-layout-sheet-count = How many there are (blank: enough)
sheet-layout-sheet-grain = Grain of the sheet
sheet-layout-sheet-name = What it is, where parts name their stock
sheet-layout-grain-along = along it
sheet-layout-grain-across = across it
sheet-layout-grain-plain = none

sheet-layout-group-saw = Saw
sheet-layout-kerf = Kerf
sheet-layout-trim = Trimmed off every edge first
sheet-layout-cuts = Order in which cuts may come
sheet-layout-cuts-any = any
sheet-layout-cuts-two = rip, then cross
sheet-layout-cuts-three = rip, cross, rip
sheet-layout-longest-rip = Longest rip there is room for (blank: any)
sheet-layout-least-offcut = Offcuts are kept from this width on

sheet-layout-group-stock = Offcuts and other sheets
sheet-layout-offcuts = Offcuts, used first: length × width × how many
sheet-layout-sheets = Other sheets: name, length × width × how many, price
sheet-layout-stock-hint = A name at the head says which stock it is, where it is not that of the sheet above.
sheet-layout-kept = Offcuts that were put by
sheet-layout-kept-waits = left over from these parts: for the next list
sheet-layout-kept-used = at hand

sheet-layout-picture = { $count ->
    [one] { $count } sheet with its parts, to scale
   *[other] { $count } sheets with their parts, to scale
}
sheet-layout-takes = This takes
sheet-layout-sheets-taken = { $count ->
    [one] { $count } sheet
   *[other] { $count } sheets
}
sheet-layout-offcuts-taken = { $count ->
    [one] { $count } offcut
   *[other] { $count } offcuts
}
sheet-layout-costs = costs { $cost }
sheet-layout-yield = Becomes parts
sheet-layout-largest = Largest offcut
sheet-layout-bound = Cannot be done in fewer than { $count }
sheet-layout-marked = { $count ->
    [one] { $count } line is left out: see the lists
   *[other] { $count } lines are left out: see the lists
}
sheet-layout-left-out-count = { $count ->
    [one] { $count } part lies on no sheet
   *[other] { $count } parts lie on no sheet
}
sheet-layout-left-out = On no sheet

sheet-layout-figures = Figures
sheet-layout-pieces = Parts on sheets
sheet-layout-cost = Cost of the sheets
sheet-layout-unpriced = Sheets without a price
sheet-layout-fewest = Fewest sheets possible
sheet-layout-parts-area = Parts
sheet-layout-sheets-area = Sheets
sheet-layout-offcuts-area = Offcuts to keep
sheet-layout-settings = Settings of fence and stop
sheet-layout-cuts-count = Cuts

sheet-layout-drawings = Sheets
sheet-layout-sheet-title = Sheet { $number }: { $size }
sheet-layout-offcut-title = Sheet { $number }, an offcut: { $size }
sheet-layout-drawing = { $sheet }, to scale: parts, offcuts and waste
sheet-layout-grain-runs-along = grain along the sheet
sheet-layout-grain-runs-across = grain across the sheet
sheet-layout-grain-runs-not = no grain
sheet-layout-offcut = offcut
sheet-layout-waste = waste
sheet-layout-turned = (turned)
sheet-layout-in-words = { $count ->
    [one] { $count } part, in words
   *[other] { $count } parts, in words
}
sheet-layout-place = { $x } from the left, { $y } from the lower edge

sheet-layout-offcuts-title = Offcuts to keep
sheet-layout-keep = { $count ->
    [one] Put { $count } offcut by for next time
   *[other] Put { $count } offcuts by for next time
}
sheet-layout-put-by = { $count ->
    [one] { $count } offcut of these parts is put by. The next list of parts uses it first.
   *[other] { $count } offcuts of these parts are put by. The next list of parts uses them first.
}
sheet-layout-take-back = Take them out again

sheet-layout-order = Order of cuts: { $cuts } cuts, { $settings } settings
sheet-layout-ticked = { $count } of { $all } cuts done
sheet-layout-ticks-gone = { $count ->
    [one] The layout has changed: { $count } tick is put aside, and comes back with the layout it belongs to.
   *[other] The layout has changed: { $count } ticks are put aside, and come back with the layout they belong to.
}
sheet-layout-rip-at = Rip, fence at
sheet-layout-crosscut-at = Crosscut, stop at
sheet-layout-edge-lower = its lower edge
sheet-layout-edge-upper = its upper edge
sheet-layout-edge-left = its left end
sheet-layout-edge-right = its right end
sheet-layout-sheet = Sheet { $number }
sheet-layout-piece = Piece { $number } of sheet { $sheet }
sheet-layout-trimmed = { $what }, trimmed
sheet-layout-becomes-part = { $name }, { $size }
sheet-layout-becomes-offcut = offcut, { $size }
sheet-layout-becomes-waste = waste
sheet-layout-becomes-rest = piece { $number }, { $size }
sheet-layout-cut-gives = From { $edge }: { $keeps }. Falls off: { $falls }.
sheet-layout-cut-last = From { $edge }: { $keeps }. Nothing falls off.
