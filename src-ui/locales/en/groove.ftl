# Groove and rabbet.

groove-title = Groove and rabbet
groove-also = groove rabbet rebate dado housing trench plough plow slot back panel saw blade height fence kerf pass passes
groove-given-groove = { $width } groove in { $thickness }
groove-given-rabbet = { $width } rabbet in { $thickness }
groove-picture = The part from its end on the saw, to scale: the fence, the groove, and where the blade goes

groove-cut = Cut
groove-cut-groove = groove
groove-cut-rabbet = rabbet, at the edge
groove-thickness = Part, measured thickness
groove-panel = Panel that goes in, measured
groove-fit = Wider than the panel by
groove-distance = Edge to the groove
groove-deep = How deep
groove-deep-third = a third
groove-deep-half = half
groove-deep-two-thirds = two thirds
groove-deep-own = my own
groove-depth = Depth
groove-kerf = Kerf
groove-against = At the fence
groove-against-near = the edge it lies at
groove-against-far = the other edge
groove-part-width = Part, width from edge to edge

groove-blade = Blade above the table
groove-fence = { $count ->
    [one] Fence, one pass
   *[other] Fence, first of { $count } passes
}
groove-good = { $left } left under it
groove-too-deep = Too deep: only { $left } left under it
groove-too-tight = The panel may be too thick to go in

groove-passes = Fence to the near side of the blade
groove-pass-near = { $number }. makes the wall near the fence
groove-pass-far = { $number }. makes the wall far from the fence
groove-pass-both = { $number }. makes both walls
groove-pass-neither = { $number }. clears the wood
groove-far-side = Check: the far side of the blade then
groove-shift = Fence moves each time by
groove-overlap = Passes overlap by
groove-scrap-face = Blade at the fence
groove-scrap-face-needed = put a scrap face on the fence

groove-sizes = The cut
groove-width = Width
groove-exact-depth = Depth
groove-left = Left under it
groove-deepest = Deepest that leaves enough
groove-starts-at = Edge to the near wall
groove-ends-at = Edge to the far wall
groove-play = Room beside the panel

groove-ripped = The part the back slides in past, most often the bottom
groove-ripped-to = Rip it right through to
groove-ripped-off = Comes off, kerf included
