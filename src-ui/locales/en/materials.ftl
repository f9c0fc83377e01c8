# Materials.

materials-title = Materials
materials-also = shopping list cost price budget sheets plywood lumber timber board foot feet cubic waste edge banding edging glue finish varnish oil paint coat coverage screws pins nails brads weight quantity
materials-given = { $count ->
    [one] { $count } thing to buy
   *[other] { $count } things to buy
}
materials-picture = Whole sheets, filled by area with parts and waste, and the boards below, to scale

materials-group-sheets = Sheets
materials-sheet-parts = Parts, length × width × number, one a line
materials-material = Sheet, material
materials-material-own = Something else
materials-density = Density
materials-thickness = Sheet, thickness
materials-sheet-length = Whole sheet, length
materials-sheet-width = Whole sheet, width
materials-sheet-waste = Waste on top
materials-sheets = Sheets by a layout, blank for by area
materials-sheet-price = Price of a sheet

materials-group-wood = Solid wood
materials-boards = Rough parts, length × width × thickness × number, one a line
materials-board-waste = Waste on top, solid wood
materials-board-per = Price for
materials-board-per-metre = a cubic metre
materials-board-per-foot = a board foot
materials-board-price = Price of so much

materials-group-band = Edge band
materials-edges = Edges, length × number, one a line
materials-band-extra = Cut longer, each piece
materials-roll = Roll, length
materials-roll-price = Price of a roll

materials-group-glue = Glue
materials-joints = Joints, length × width × number, one a line
materials-glue-spread = Spread
materials-bottle = Bottle holds
materials-bottle-price = Price of a bottle

materials-group-finish = Finish
materials-coat = Coated
materials-coat-nothing = nothing
materials-coat-one-face = one face of the sheet parts
materials-coat-both-faces = both faces of the sheet parts
materials-coat-listed = a list of faces
materials-faces = Faces, length × width × number, one a line
materials-coats = Coats
materials-coverage = Coverage of one coat
materials-can = Can holds
materials-can-price = Price of a can

materials-group-fixings = Screws and pins
materials-screws = Screws, places × in each, one a line
materials-screw-box = Screws in a box
materials-screw-price = Price of a box of screws
materials-pins = Pins, places × in each, one a line
materials-pin-box = Pins in a box
materials-pin-price = Price of a box of pins
materials-spare = Spare on top, screws and pins

materials-group-others = Whatever else
materials-others = Number × price and a name, one a line

materials-total = Together
materials-sheets-kg = The sheets weigh about
materials-priced = Every line has its price
materials-unpriced = { $count ->
    [one] { $count } line has no price
   *[other] { $count } lines have no price
}
materials-list = Shopping list
materials-each = { $price } each
materials-no-price = no price
materials-item-sheets = { $count ->
    [one] { $count } sheet
   *[other] { $count } sheets
}
materials-item-metres = { $quantity } m³ of solid wood
materials-item-feet = { $quantity } board feet of solid wood
materials-item-rolls = { $count ->
    [one] { $count } roll of edge band
   *[other] { $count } rolls of edge band
}
materials-item-bottles = { $count ->
    [one] { $count } bottle of glue
   *[other] { $count } bottles of glue
}
materials-item-cans = { $count ->
    [one] { $count } can of finish
   *[other] { $count } cans of finish
}
materials-item-screws = { $count ->
    [one] { $count } box of screws
   *[other] { $count } boxes of screws
}
materials-item-pins = { $count ->
    [one] { $count } box of pins
   *[other] { $count } boxes of pins
}

materials-net = Parts
materials-gross = Parts with waste
materials-bought = Sheets bought
materials-sheet-kg = A sheet weighs about
materials-parts-kg = The parts weigh about
materials-by-area = By area
materials-by-area-why = a layout may take one more
materials-volume = Volume
materials-volume-gross = Volume with waste
materials-feet = Board measure
materials-feet-gross = Board measure with waste
materials-rest = The rest
materials-band-net = Edges
materials-band-gross = Edge band, cut longer
materials-glue-area = Joints
materials-glue = Glue
materials-finish-area = Coated faces
materials-finish = Finish, all coats
materials-screws-gross = Screws with spare
materials-pins-gross = Pins with spare
