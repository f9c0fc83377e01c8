//! Formulas that are words: each with its card, its step and the reason.

/// Cannot be worked out from their text and what stands beside it.
pub(crate) const WORDS: &[(&str, &str, &str)] = &[
    ("cabinet", "Weight, empty", "a sum over all parts"),
    ("shelf", "Largest bending moment", "names the places of two moments, from the curve of the whole beam"),
    ("shelf", "Stiffness after years", "the formula of the first day once more, with two figures changed"),
    ("shelf", "Stress in the board", "the distance to the outermost fibre of one of two days"),
    ("shelf", "Stress in the strip", "the distance to the outermost fibre of one of two days"),
    ("cup-hinge", "Number of hinges", "two look-ups in a table"),
    ("cup-hinge", "One of them is for the width", "a comparison, which gives one hinge more"),
    ("joints", "How many", "where the step is the whole 32 mm in the spacing"),
    ("joints", "From middle to middle", "where the step is the whole 32 mm in the spacing"),
    ("hanging", "Centre of gravity from the wall, doors shut", "a sum over all parts"),
    ("hanging", "Centre of gravity from the wall, doors open", "a sum over all parts"),
    ("hanging", "C of the wood's group", "a look-up in a table"),
    ("materials", "Area of the sheet parts", "a sum over all lines"),
    ("materials", "Volume of the solid parts", "a sum over all lines"),
    ("materials", "Board measure", "a sum over all lines"),
    ("materials", "Edges", "a sum over all lines"),
    ("sheet-layout", "Area of the parts", "a sum over all parts"),
    ("sheet-layout", "Area of the sheets", "a sum over all sheets"),
    ("sheet-layout", "No layout has fewer sheets", "the largest of many bounds, each by a map of the sizes"),
];
