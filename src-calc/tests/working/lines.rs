//! The lines that each card shows, so that none goes missing.

/// The lines of a card's working, parted by semicolons.
pub(crate) struct Lines {
    pub(crate) card: &'static str,
    /// Those of the demo, in the order in which a person would do them.
    pub(crate) demo: &'static str,
    /// Those that other inputs call for.
    pub(crate) elsewhere: &'static str,
}

pub(crate) const LINES: &[Lines] = &[
    Lines {
        card: "convert",
        demo: "On the tool in hand; What the mark is over; What the sheet is over its name",
        elsewhere: "",
    },
    Lines {
        card: "cabinet",
        demo: "Width inside; Height inside; From the back to the front of the shelves; Length of a loose shelf; \
               Weight, empty",
        elsewhere: "Width of the carcass; Height of the carcass; From a door's free edge to the screws of its handle; \
               Bracket to bracket",
    },
    Lines {
        card: "back-panel",
        demo: "Movement with humidity; Panel width; Width on the wettest day; Room for the width, at the least; \
               Width on the driest day; Least engagement on the left; Least engagement on the right; Panel height; \
               Height on the wettest day; Room for the height, at the least; Height on the driest day; Least \
               engagement at the bottom; Least engagement at the top; Diagonal of the opening when square",
        elsewhere: "Last seam; Lean over the height",
    },
    Lines {
        card: "shelf",
        demo: "Stiffness of the board; The shelf's own weight; Even load; All together; Second moment of area; \
               Stiffness; Sag on the first day; As a part of the bay; Creep of the board; Sag after years; Largest \
               bending moment; Stress in the board; Stress that may stay in the board",
        elsewhere: "Stiffness of the strip; Own weight of board and strip; Neutral axis above the lowest fibre; \
                    Stiffness of board and strip; Creep of the strip; Stiffness after years; Stress that may stay in the \
                    strip; Stress in the strip; Load in the middle",
    },
    Lines {
        card: "clothes-rail",
        demo: "Stiffness of the material; Second moment of the outline; Second moment of the hollow; Second moment \
               of area; The rail's own weight, A in mm²; Load; All together; Sag on the first day; Creep; Sag after \
               years; Largest bending moment; Bending stress; Stress that may stay; Middle of the rail, down from \
               the top; From the top of the rail to the hem; Height for the clothes; Depth for the hangers; Middle \
               of the rail, from the back",
        elsewhere: "Least thickness of the blocks; Layers of the sheet",
    },
    Lines {
        card: "spacing",
        demo: "Gap; From centre to centre; Gap at each end; Near edge of the last piece; All of it together",
        elsewhere: "Number of pieces, the fewest",
    },
    Lines {
        card: "wood-movement",
        demo: "Air as made: K · h; Air as made: K₁; Air as made: K₂; Moisture as made; Driest air: K · h; Driest \
               air: K₁; Driest air: K₂; Moisture at the driest; Dampest air: K · h; Dampest air: K₁; Dampest air: \
               K₂; Moisture at the dampest; Change for each per cent of moisture; Grows, from as made to the \
               dampest; Shrinks, from as made to the driest; From the driest to the dampest; Panel in the groove, \
               as made; Depth of the groove; Opening between the grooves",
        elsewhere: "Gap as made; Gap at the driest; Length of the slot; Middle of the screw from the slot's inner end",
    },
    Lines {
        card: "sheet-layout",
        demo: "Area of the parts; Area of the sheets; Yield, in per cent; The longest part, in a row along the sheet; \
               Left over behind the last; Trimmed sheets, by area alone; No layout has fewer sheets",
        elsewhere: "",
    },
    Lines {
        card: "bevelled-strips",
        demo: "How far the cut walks from face to face; Kerf along a face; Fence for each strip, its middle width \
               as sawn; Strips that fit; Board taken up; Left over, the last kerf still in it; Fence to bevel the \
               first edge; Blade above the table, along the blade",
        elsewhere: "Wide face of each cleat, as sawn; Fence: the narrow face, as sawn; Planing allowance along a face; \
                    Wide face when planed",
    },
    Lines {
        card: "angles",
        demo: "Half of a corner's turn; Gauge, from square; Tilt of the blade, from upright; Between the faces; \
               Tilt for a butted corner; Short edge of a piece; Circle that the long edges touch",
        elsewhere: "Diagonal when square; Mark to mark, in millimetres; Mark to mark, in inches; Out of square; Out over \
                    the height; Both diagonals once square; Slope, from level; Rise for a hundred of run; Along the \
                    slope; Gauge for the level cut; What comes off at the narrow end; Taper; The tapered edge; Opening \
                    of the jig; Opening for the second edge",
    },
    Lines {
        card: "groove",
        demo: "Width; Depth; Wood left under it; Passes; Fence moves between passes; Fence to the nearer wall; \
               Fence for the farther wall, to the near side of the blade; The part ripped right through",
        elsewhere: "",
    },
    Lines {
        card: "hole-rows",
        demo: "Holes in a full row; First hole from either end; Over whole steps; End stop of the rail, to its \
               first index hole; Front row behind the front edge; Rail's edge from the front edge; Rear row behind \
               the front edge; From row to row; Middle of the first plate; Its cup, from the end of the door; Left \
               behind the holes",
        elsewhere: "First hole from the datum end; Last hole from the other end",
    },
    Lines {
        card: "cup-hinge",
        demo: "Overlay from the reveal; The arm's constant; Height of the plate; Reveal; Width of each door; Height \
               of the door; Weight of the door; Number of hinges; Middle of the cup from the door's edge; Left \
               behind the cup; Plate's hole line from the front; Lowest plate, up from the datum on the side",
        elsewhere: "Overlay; Width of the door; One of them is for the width; Gap between the doors; Room for each door \
                    to open; Gap; Overlay of each door; Overlay of an inset door; Edge to cup; Constant of the arm",
    },
    Lines {
        card: "joints",
        demo: "Between the outer ones; How many; From middle to middle; Depth in the face part; Depth in the edge \
               part; Left of the edge part, outer face; Left of the edge part, inner face; Left behind it in the \
               face part; Left to the end of the face part",
        elsewhere: "Depth in each edge; Slot at the surface; Length of the screw; Reach into the edge; Depth of the hole \
                    in the edge; Shoulder to the end, along the screw; Reach along the screw; Depth of the point, c the \
                    cosine of 15°; Longest screw; Depth in the other part",
    },
    Lines {
        card: "wall-cleat",
        demo: "What the bevel takes of the height; Narrow face of each strip; Board for the pair; Fence: the narrow \
               face; The back is set in by; Lift to hook in, free above; Point of the wall strip above the floor; \
               Lower edge of the wall strip above the floor; Screws above the floor; Lower edge of the spacer above \
               the floor; Length of the wall strip",
        elsewhere: "Fence to part the board; Blade leans, strip on edge; The cabinet stands off the wall by",
    },
    Lines {
        card: "hanging",
        demo: "Both sides; Top and bottom; Back; Shelves; Doors; Contents; Cabinet and contents; Centre of gravity \
               from the wall, doors shut; Centre of gravity from the wall, doors open; One person may lift, at the \
               start; One person may lift, at the end; Two people; Three people; Diagonal of the side; Weight; Pull \
               of the lever over the lower edge; Wedge of the bevel; Pull that counts; The strip tips: so many \
               times more; Diameter of the screw; Specific gravity of the stud; Thread in the stud; For a load that \
               stays; A screw may pull; C of the wood's group; A screw may carry along the wall; It comes out at \
               about; Pull on each; Shear on each; Used of what each may carry; The same by squares",
        elsewhere: "Cabinet without doors; One may be pulled by; One may carry along the wall",
    },
    Lines {
        card: "materials",
        demo: "Area of the sheet parts; With waste; Sheets; Weight of a sheet; Weight of the parts; Volume of the \
               solid parts; Board measure; Volume with waste; Board feet with waste; Edges; Edge band with what is \
               cut longer; Rolls; Glue, with s in g/m²; Bottles; Finish, with r in m²/l; Cans; Screws; Pins",
        elsewhere: "",
    },
];
