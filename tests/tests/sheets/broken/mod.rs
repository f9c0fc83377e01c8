//! Whether the checker and the replay can fail: one good layout, made by hand, and every way to break it.
//!
//! A sheet of 100 by 60 is trimmed by 3, ripped at 20, and the strip crosscut at 40 twice; the kerf is 2. A part as large
//! as an offcut takes that whole, without a cut.

mod flaws;
mod missteps;

use scantling::measure::{Length, Ratio};
use scantling::sheets::{
    Area, Becomes, Cut, Cuts, Grain, Job, Layout, Left, Part, Piece, Placed, Saw, Setting, Sheet, SheetGrain, Stock,
    Way,
};
use scantling_tests::sheets::{check, replay};

fn mm(whole: i64) -> Length {
    Length::mm(whole, 1).unwrap()
}

fn area([x, y, length, width]: [i64; 4]) -> Area {
    Area { x: mm(x), y: mm(y), length: mm(length), width: mm(width) }
}

fn part(name: &str, length: i64, width: i64, quantity: u32, grain: Grain) -> Part {
    let (name, stock) = (name.to_owned(), "ply".to_owned());
    Part { name, length: mm(length), width: mm(width), quantity, stock, grain }
}

fn job() -> Job {
    let sheet = Stock {
        name: "ply".to_owned(),
        length: mm(100),
        width: mm(60),
        quantity: None,
        price: Some(Ratio::whole(10)),
        grain: SheetGrain::Along,
        offcut: false,
    };
    let offcut = Stock { length: mm(50), width: mm(30), quantity: Some(1), price: None, offcut: true, ..sheet.clone() };
    Job {
        parts: vec![part("side", 40, 20, 2, Grain::Along), part("back", 50, 30, 1, Grain::Free)],
        stock: vec![sheet, offcut],
        saw: Saw { kerf: mm(2), trim: mm(3), cuts: Cuts::Any, longest_rip: None, least_offcut: mm(15) },
    }
}

/// Trimmed at all four edges, with the number of what is kept.
const TRIMMED: u32 = 8;

fn piece(id: u32, of: [i64; 4], becomes: Becomes) -> Piece {
    Piece { id, area: area(of), becomes }
}

fn trims() -> Vec<Setting> {
    let trim = |number: u32, way, fence, from_far, keeps, falls| {
        let cut = Cut {
            sheet: 0,
            piece: if number == 0 { 0 } else { 2 * number },
            way,
            trim: true,
            fence: mm(fence),
            from_far,
            keeps: piece(2 * number + 2, keeps, Becomes::Rest),
            falls: Some(piece(2 * number + 3, falls, Becomes::Waste)),
        };
        Setting { way, fence: mm(fence), cuts: vec![cut] }
    };
    vec![
        trim(0, Way::Rip, 57, true, [0, 3, 100, 57], [0, 0, 100, 1]),
        trim(1, Way::Rip, 54, false, [0, 3, 100, 54], [0, 59, 100, 1]),
        trim(2, Way::Crosscut, 97, true, [3, 3, 97, 54], [0, 3, 1, 54]),
        trim(3, Way::Crosscut, 94, false, [3, 3, 94, 54], [99, 3, 1, 54]),
    ]
}

fn cut(piece: u32, way: Way, fence: i64, keeps: Piece, falls: Piece) -> Cut {
    Cut { sheet: 0, piece, way, trim: false, fence: mm(fence), from_far: false, keeps, falls: Some(falls) }
}

fn side(copy: u32) -> Becomes {
    Becomes::Part { part: 0, copy }
}

fn layout() -> Layout {
    let rip = cut(
        TRIMMED,
        Way::Rip,
        20,
        piece(20, [3, 3, 94, 20], Becomes::Rest),
        piece(21, [3, 25, 94, 32], Becomes::Offcut),
    );
    let one = cut(20, Way::Crosscut, 40, piece(22, [3, 3, 40, 20], side(0)), piece(23, [45, 3, 52, 20], Becomes::Rest));
    let two =
        cut(23, Way::Crosscut, 40, piece(24, [45, 3, 40, 20], side(1)), piece(25, [87, 3, 10, 20], Becomes::Waste));
    let mut settings = trims();
    settings.push(Setting { way: Way::Rip, fence: mm(20), cuts: vec![rip] });
    settings.push(Setting { way: Way::Crosscut, fence: mm(40), cuts: vec![one, two] });
    let placed = |part, copy, of| Placed { part, copy, area: area(of), turned: false };
    let sheets = vec![
        Sheet {
            stock: 0,
            length: mm(100),
            width: mm(60),
            parts: vec![placed(0, 0, [3, 3, 40, 20]), placed(0, 1, [45, 3, 40, 20])],
            left: vec![
                Left { area: area([3, 25, 94, 32]), keep: true },
                Left { area: area([87, 3, 10, 20]), keep: false },
            ],
        },
        Sheet { stock: 1, length: mm(50), width: mm(30), parts: vec![placed(1, 0, [0, 0, 50, 30])], left: Vec::new() },
    ];
    Layout { sheets, unplaced: Vec::new(), price: Some(Ratio::whole(10)), settings }
}

#[test]
fn the_good_layout_passes() {
    assert_eq!(check(&job(), &layout()), Ok(()));
    assert_eq!(replay(&job(), &layout()), Ok(()));
    let staged = Job { saw: Saw { cuts: Cuts::Two, longest_rip: Some(mm(94)), ..job().saw }, ..job() };
    assert_eq!(check(&staged, &layout()), Ok(()));
    assert_eq!(replay(&staged, &layout()), Ok(()));
}

/// Two lengths without a common unit.
fn too_fine() -> [Length; 2] {
    [(1 << 54) - 33, (1 << 54) - 35].map(|fine| Length::mm(1, fine).unwrap())
}
