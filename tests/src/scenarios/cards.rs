//! What is typed into each card, and what it has to answer: by the handbook's formulas, worked by hand beside each row.

/// Something a person does to a card's inputs.
#[derive(Clone, Copy, Debug)]
pub enum Act {
    /// Types a text over what stands in a field.
    Type(&'static str, &'static str),
    /// Chooses one of a row or a list, counted from nought.
    Choose(&'static str, usize),
}

/// A card, and a maker's way through it.
#[derive(Clone, Copy, Debug)]
pub struct Case {
    /// The card.
    pub slug: &'static str,
    /// What it answers for its demo, in millimetres.
    pub demo: &'static [&'static str],
    /// What is done then.
    pub acts: &'static [Act],
    /// What that is to give, in millimetres.
    pub answer: &'static [&'static str],
    /// The same in inches, on the sixteenths that the settings start from.
    pub inches: &'static [&'static str],
    /// Where the answer comes from.
    pub source: &'static str,
    /// A field, a text that cannot be read in it, and words that its note has to have.
    pub bad: (&'static str, &'static str, &'static str),
    /// A field, and the one that Enter goes on to; a list has none, where Enter begins a line.
    pub enter: Option<(&'static str, &'static str)>,
    /// A length, and what one arrow up and two arrows down from there make of it, on marks of 0.5 mm.
    pub steps: Option<(&'static str, &'static str, &'static str)>,
}

use Act::{Choose, Type};

/// Every card, in the order of the bench.
pub const CASES: &[Case] = &[
    Case {
        slug: "convert",
        // To sixteenths of an inch: 15 mm by handbook U-6; 23 5/8 in stands on one.
        demo: &["9/16 inch", "23 5/8 inch"],
        acts: &[Choose("convert-graduation", 5), Type("convert-readings", "37 mm")],
        // The tool in hand is chosen on this card, so the system in use does not matter.
        answer: &["1 29/64 inch"],
        inches: &["1 29/64 inch"],
        source: "handbook U-12 to 1/64 in",
        bad: ("convert-readings", "37 x", "One length at a time"),
        enter: None,
        steps: None,
    },
    Case {
        slug: "cabinet",
        // 830 − 2·14.6; 1170 − 2·14.6; grooves of 6 on three sides, past the bottom by 14.6, 2 for clearance.
        demo: &["801 × 1141 mm", "811 × 1159.5 mm"],
        acts: &[Type("cabinet-width", "600"), Type("cabinet-height", "720"), Type("cabinet-carcass-thickness", "18")],
        // 600 − 36; 720 − 36; 564 + 12 − 2; 684 + 6 + 18 − 2.
        answer: &["564 × 684 mm", "574 × 706 mm"],
        // 22.205, 26.929, 22.598 and 27.795 in.
        inches: &["22 3/16 × 26 15/16 inch", "22 5/8 × 27 13/16 inch"],
        source: "a carcass leaves its outer size less two boards (common practice); handbook P for the back",
        bad: ("cabinet-bays", "9", "At most 8"),
        enter: Some(("cabinet-width", "cabinet-height")),
        steps: Some(("cabinet-width", "600.5", "599.5")),
    },
    Case {
        slug: "back-panel",
        // Width 564 + 8 + 8 − 2 (handbook P-1); height 702 + 18 + 8 − 2, nailed over the bottom edge.
        demo: &["578 mm", "726 mm"],
        acts: &[Type("back-panel-opening-width", "864"), Type("back-panel-clearance", "3")],
        answer: &["877 mm", "725 mm"],
        // 877/25.4 = 34.528, nearest 34 8/16; 725/25.4 = 28.543, nearest 28 9/16.
        inches: &["34 1/2 inch", "28 9/16 inch"],
        source: "handbook P-7 for the width; 702 + 18 + 8 − 3 for the height",
        bad: ("back-panel-opening-width", "864 +", "missing at the end"),
        enter: Some(("back-panel-opening-width", "back-panel-opening-height")),
        steps: Some(("back-panel-clearance", "3.5", "2.5")),
    },
    Case {
        slug: "shelf",
        // Boots 9 kg/m and 690 kg/m³: w = 0.12086 N/mm; E 10316 MPa; 330 × 14.6: I = 85584 mm⁴;
        // 5·w·800⁴/(384·E·I) = 0.7301 mm, ·1.8 = 1.314 mm.
        demo: &["1.31 mm"],
        acts: &[
            Type("shelf-span", "900"),
            Type("shelf-thickness", "17.6"),
            Type("shelf-depth", "300"),
            Choose("shelf-load", 1),
            Type("shelf-per-metre", "40"),
        ],
        // 4.8028 mm to three figures; 4.8028/25.4 = 0.18909 in.
        answer: &["4.8 mm"],
        inches: &["0.189 inch"],
        source: "handbook B-6, long term",
        bad: ("shelf-depth", "300 kg", "not a unit of length"),
        enter: Some(("shelf-span", "shelf-thickness")),
        steps: Some(("shelf-depth", "300.5", "299.5")),
    },
    Case {
        slug: "clothes-rail",
        // 25 × 1.5 mm steel, I = 7675.7 mm⁴, A = 110.74 mm²; coats 40 kg/m and its own 0.869: w = 0.40079 N/mm;
        // 5·w·864⁴/(384·210000·I) = 1.8041 mm. The middle 60 + 25/2 below the top.
        demo: &["1.8 mm", "72.5 mm"],
        acts: &[
            Choose("clothes-rail-material", 5),
            Type("clothes-rail-own-stiffness", "210000"),
            Type("clothes-rail-own-density", "0"),
            Type("clothes-rail-span", "1000"),
        ],
        // 3.1687 mm to three figures; 3.1687/25.4 = 0.12475 in; 72.5/25.4 = 2.8543, nearest 2 14/16.
        answer: &["3.17 mm", "72.5 mm"],
        inches: &["0.125 inch", "2 7/8 inch"],
        source: "handbook B-12; the hooks' room and half the rail",
        bad: ("clothes-rail-span", "1000 kg", "not a unit of length"),
        enter: Some(("clothes-rail-diameter", "clothes-rail-wall")),
        steps: Some(("clothes-rail-diameter", "25.5", "24.5")),
    },
    Case {
        slug: "spacing",
        // (800 − 7·45)/8 = 60.625, and 45 more from centre to centre: 105.625, to half millimetres.
        demo: &["60.5 mm", "105.5 mm"],
        acts: &[
            Choose("spacing-even", 1),
            Choose("spacing-ends", 3),
            Type("spacing-length", "720"),
            Type("spacing-width", "5"),
            Type("spacing-count", "22"),
            Type("spacing-end", "24"),
        ],
        // (720 − 2·24)/21 = 32 from centre to centre, 5 less from edge to edge.
        answer: &["27 mm", "32 mm"],
        // 27/25.4 = 1.0630, nearest 1 1/16; 32/25.4 = 1.2598, nearest 1 4/16.
        inches: &["1 1/16 inch", "1 1/4 inch"],
        source: "handbook N-1, a row of holes",
        bad: ("spacing-width", "5 x", "One length at a time"),
        enter: Some(("spacing-length", "spacing-width")),
        steps: Some(("spacing-end", "24.5", "23.5")),
    },
    Case {
        slug: "wood-movement",
        // White oak, flat-sawn, 0.00365; 300 mm; moisture 9.2711 as made, 7.6082 and 13.4257 % (handbook E-2, E-6, E-7):
        // grows 4.549, shrinks 1.821 mm; groove 5 + 1.821/2 + 4.549/2 + 1 = 9.185, rounded up to half a millimetre.
        demo: &["9.5 mm", "4.55 mm", "1.82 mm"],
        acts: &[
            Choose("wood-movement-species", 16),
            Choose("wood-movement-by", 1),
            Type("wood-movement-made-moisture", "6"),
            Type("wood-movement-dry-moisture", "6"),
            Type("wood-movement-damp-moisture", "12"),
            Type("wood-movement-bearing", "6"),
        ],
        // 6.642 mm; groove 6 + 6.642/2 + 1 = 10.321, up to 10.5; 10.321/25.4 = 0.4063, up to 7/16; 6.642/25.4 = 0.2615.
        answer: &["10.5 mm", "6.64 mm", "0 mm"],
        inches: &["7/16 inch", "0.261 inch", "0 inch"],
        source: "handbook V-1, and half of the growth and 1 mm free at each side",
        bad: ("wood-movement-bearing", "6 kg", "not a unit of length"),
        enter: Some(("wood-movement-bearing", "wood-movement-spare")),
        steps: Some(("wood-movement-width", "300.5", "299.5")),
    },
    Case {
        slug: "sheet-layout",
        // 4.530972 m² of parts on two sheets of 2.9768 m².
        demo: &["2 sheets", "76.1 %"],
        acts: &[
            Type("sheet-layout-parts", "Strip 300 x 590 x 16"),
            Type("sheet-layout-trim", "0"),
            Type("sheet-layout-kerf", "3.2"),
            Type("sheet-layout-least-offcut", "500"),
        ],
        // Two rows of eight strips; 16 · 0.3 · 0.59 / 2.9768.
        answer: &["1 sheet", "95.1 %"],
        inches: &["1 sheet", "95.1 %"],
        source: "handbook Q-1: eight of 300 mm in a row of 2440 mm, with seven kerfs between them",
        bad: ("sheet-layout-kerf", "21", "At most 20"),
        enter: Some(("sheet-layout-sheet-length", "sheet-layout-sheet-width")),
        steps: Some(("sheet-layout-sheet-length", "2440.5", "2439.5")),
    },
    Case {
        slug: "bevelled-strips",
        // kerf on the face 3.2/cos 30° = 3.695, walk at most 18·tan 30° = 10.39: (220 − 10.39 + 3.695)/48.695 = 4.4.
        demo: &["4 strips", "45 mm"],
        acts: &[
            Type("bevelled-strips-board-width", "300"),
            Type("bevelled-strips-thickness", "18"),
            Type("bevelled-strips-bevel", "45"),
            Type("bevelled-strips-kerf", "3.2"),
            Type("bevelled-strips-strip-width", "40"),
        ],
        answer: &["6 strips", "40 mm"],
        // 40/25.4 = 1.5748, nearest 1 9/16.
        inches: &["6 strips", "1 9/16 inch"],
        source: "handbook R-1; the fence stands at the strip's width (handbook 6.4 a)",
        bad: ("bevelled-strips-board-width", "300 mmm", "not a unit of length"),
        enter: Some(("bevelled-strips-board-width", "bevelled-strips-thickness")),
        steps: Some(("bevelled-strips-board-width", "300.5", "299.5")),
    },
    Case {
        slug: "angles",
        // sin B = sin 45°·cos 15° = 0.68301, tan M = sin 15° = 0.25882; 360 − 2·120·0.25882 = 297.88.
        demo: &["43.08°", "14.51°", "298 mm"],
        acts: &[Type("angles-lean", "45"), Type("angles-side", "400"), Type("angles-board-width", "100")],
        answer: &["30°", "35.26°", "258.5 mm"],
        // 258.579/25.4 = 10.180, nearest 10 3/16.
        inches: &["30°", "35.26°", "10 3/16 inch"],
        source: "by hand: sin B = 1/2, tan M = 1/√2, 400 − 200/√2 = 258.58",
        bad: ("angles-board-width", "100 +", "missing at the end"),
        enter: Some(("angles-side", "angles-board-width")),
        steps: Some(("angles-side", "400.5", "399.5")),
    },
    Case {
        slug: "groove",
        // A third of the shop's 14.6 mm: 4.87, nearest 5 mm; the first pass makes the wall 12 mm from the edge.
        demo: &["5 mm", "12 mm"],
        acts: &[
            Type("groove-thickness", "18"),
            Type("groove-kerf", "3.2"),
            Type("groove-panel", "18"),
            Type("groove-fit", "0.3"),
            Type("groove-distance", "100"),
        ],
        answer: &["6 mm", "100 mm"],
        // 6/25.4 = 0.2362, nearest 4/16; 100/25.4 = 3.937, nearest 3 15/16.
        inches: &["1/4 inch", "3 15/16 inch"],
        source: "handbook G-2, a third of the thickness deep (handbook 9)",
        bad: ("groove-panel", "18 +", "missing at the end"),
        enter: Some(("groove-panel", "groove-fit")),
        steps: Some(("groove-distance", "100.5", "99.5")),
    },
    Case {
        slug: "hole-rows",
        // (1169.2 − 2·40)/32 = 34.04: 35 holes; (1169.2 − 34·32)/2 = 40.6, on marks of 0.5 mm 40.5. Rear row 330 − 37.
        demo: &["40.5 mm", "37, 293 mm"],
        acts: &[Type("hole-rows-height", "2000"), Type("hole-rows-depth", "560"), Type("hole-rows-end-distance", "37")],
        answer: &["40 mm", "37, 523 mm"],
        // 40/25.4 = 1.5748, nearest 1 9/16; 37/25.4 = 1.4567, nearest 1 7/16; 523/25.4 = 20.591, nearest 20 9/16.
        inches: &["1 9/16 inch", "1 7/16, 20 9/16 inch"],
        source: "handbook N-3 and N-7",
        bad: ("hole-rows-height", "2000 x", "One length at a time"),
        enter: Some(("hole-rows-height", "hole-rows-depth")),
        steps: Some(("hole-rows-end-distance", "37.5", "36.5")),
    },
    Case {
        slug: "cup-hinge",
        // Overlay 14.6 − 1.6 = 13, plate 11 + 4 − 13 = 2; each door (800 + 2·13 − 3)/2 wide, 1140 + 2·12 high.
        demo: &["2 mm", "411.5 × 1164 mm"],
        acts: &[
            Type("cup-hinge-constant", "15"),
            Type("cup-hinge-side", "18"),
            Type("cup-hinge-reveal", "1.5"),
            Type("cup-hinge-opening-width", "864"),
        ],
        answer: &["2.5 mm", "447 × 1164 mm"],
        // 2.5/25.4 = 0.0984, nearest 2/16; 447/25.4 = 17.598, nearest 17 10/16; 1164/25.4 = 45.827, nearest 45 13/16.
        inches: &["1/8 inch", "17 5/8 × 45 13/16 inch"],
        source: "handbook H-2 and H-6",
        bad: ("cup-hinge-constant", "15 x", "One length at a time"),
        enter: Some(("cup-hinge-cup-edge", "cup-hinge-constant")),
        steps: Some(("cup-hinge-side", "18.5", "17.5")),
    },
    Case {
        slug: "joints",
        // (330 − 2·45)/128 = 1.9: two gaps of 120. Two thirds of 14.6 is 9.73, at most 9.5 on marks of 0.5 mm; the rest of
        // 30 + 2 is 22.27, at least 22.5.
        demo: &["3 dowels", "45, 120 mm", "9.5, 22.5 mm"],
        acts: &[
            Type("joints-edge-thickness", "19"),
            Type("joints-face-thickness", "19"),
            Type("joints-dowel-diameter", "8"),
            Type("joints-length", "560"),
        ],
        // (560 − 90)/128 = 3.7: four gaps of 117.5. Two thirds of 19 is 12.67; 32 less that is 19.33.
        answer: &["5 dowels", "45, 117.5 mm", "12.5, 19.5 mm"],
        // 45/25.4 = 1.772, 117.5/25.4 = 4.626, nearest 1 12/16 and 4 10/16; 0.4987 down to 7/16, 0.7612 up to 13/16.
        inches: &["5 dowels", "1 3/4, 4 5/8 inch", "7/16, 13/16 inch"],
        source: "handbook 9: dowels 12 to 13 mm into a face of 19, 96 to 150 mm apart",
        bad: ("joints-length", "560 x", "One length at a time"),
        enter: Some(("joints-length", "joints-edge-thickness")),
        steps: Some(("joints-length", "560.5", "559.5")),
    },
    Case {
        slug: "wall-cleat",
        // At 45° the bevel takes 14.6, the slack of 0.5 is taken off the lift: 14.6 + 0.5 = 15.1;
        // 2100 − 14.6 − 2·70 + 14.1 = 1959.5; 14.1.
        demo: &["15 mm", "1959.5 mm", "14 mm"],
        acts: &[
            Type("wall-cleat-thickness", "18"),
            Type("wall-cleat-strip-height", "80"),
            Type("wall-cleat-top-at", "2000"),
        ],
        // 18 + 0.5; 2000 − 14.6 − 2·80 + 17.5 = 1842.9; 18 − 0.5.
        answer: &["18.5 mm", "1843 mm", "17.5 mm"],
        // 18.5/25.4 = 0.7283, nearest 12/16; 1842.9/25.4 = 72.555, nearest 72 9/16; 17.5/25.4 = 0.689, nearest 11/16.
        inches: &["3/4 inch", "72 9/16 inch", "11/16 inch"],
        source: "plane geometry at 45°, where a bevel walks as far as the strip is thick (handbook 6.1)",
        bad: ("wall-cleat-bevel", "61", "At most 60"),
        enter: Some(("wall-cleat-thickness", "wall-cleat-strip-height")),
        steps: Some(("wall-cleat-top-at", "2000.5", "1999.5")),
    },
    Case {
        slug: "hanging",
        // Carcass 8.245 + 5.641, back 3.972, shelves 5.295, doors 11.688, boots 3·0.8·9 = 21.6: 56.441 kg. Doors open:
        // (13.886·175 + 3.972·18.25 + 5.295·185.75 + 11.688·(350 + 829.2/4) + 21.6·185.75)/56.441 = 248.26.
        demo: &["56.4 kilograms", "248.5 mm"],
        acts: &[
            Choose("hanging-weight", 1),
            Type("hanging-known-weight", "85"),
            Choose("hanging-doors", 0),
            Choose("hanging-load", 1),
            Type("hanging-depth", "320"),
        ],
        answer: &["85 kilograms", "160 mm"],
        // 85/0.45359237 = 187.39; 160/25.4 = 6.299, nearest 6 5/16.
        inches: &["187 pounds", "6 5/16 inch"],
        source: "handbook K-1: 85 kg with its centre at half the depth",
        bad: ("hanging-depth", "320 kg", "not a unit of length"),
        enter: Some(("hanging-width", "hanging-height")),
        steps: Some(("hanging-depth", "320.5", "319.5")),
    },
    Case {
        slug: "materials",
        // 2.786 m² and 15 %: two sheets, 14.6 mm of 690 kg/m³: 2 · 2.9768 · 10.074 = 59.98 kg.
        // 129.00 + 6.72 + 17.80 + 4.20 + 44.85 + 5.40 + 2.10 + 14.10.
        demo: &["224.17", "2440 × 1220 mm", "60 kilograms"],
        acts: &[
            Type("materials-sheet-parts", "2440 x 1220 x 3"),
            Type("materials-thickness", "17.7"),
            Choose("materials-coat", 3),
            Type("materials-faces", "3700 x 1000 x 2"),
            Type("materials-sheet-waste", "0"),
        ],
        // Three sheets of 36.092 kg; 2.0182 l of finish are three cans of 0.75: 44.85 as before.
        // 224.17 − 129.00 + 3 · 64.50.
        answer: &["288.67", "2440 × 1220 mm", "108 kilograms"],
        // 2440/25.4 = 96.063, nearest 96 1/16; 1220/25.4 = 48.031, nearest 48 1/16; 108.28/0.45359 = 238.7.
        inches: &["288.67", "96 1/16 × 48 1/16 inch", "239 pounds"],
        source: "handbook M-3 and Q-6, and the sum of the list",
        bad: ("materials-sheet-length", "2440 mmm", "not a unit of length"),
        enter: Some(("materials-sheet-length", "materials-sheet-width")),
        steps: Some(("materials-band-extra", "40.5", "39.5")),
    },
];
