mod any_text;
mod costs;
mod handles;
mod held;
mod hooks;
mod joined;
mod order;
mod outside;
mod work;

use super::*;
use crate::cards::{hanging::Holds, sheet_layout};
use crate::measure::{LengthError, Reading};

type Checked = Result<(), Box<dyn std::error::Error>>;

fn solved(inputs: &Inputs) -> Result<Cabinet, String> {
    solve(inputs).map_err(|problems| format!("{problems:?}"))
}

fn part(cabinet: &Cabinet, what: What) -> Result<&Part, String> {
    cabinet.parts.iter().find(|part| part.what == what).ok_or_else(|| format!("no {what:?}"))
}

fn sizes(part: &Part) -> [String; 3] {
    [part.length, part.width, part.thickness].map(|size| size.to_string())
}

fn mm(typed: &str) -> Result<Length, crate::measure::ReadError> {
    Reading::mm(typed).length()
}

fn along(part: &Part, axis: Axis) -> [f64; 2] {
    let (from, to) = part.place.along(axis);
    [from.as_mm(), to.as_mm()]
}

/// The potting-shed cupboard, worked by hand; common practice for every step.
#[test]
fn the_demo_agrees_with_the_sum_done_by_hand() -> Checked {
    let cabinet = solved(&Inputs::default())?;

    // 830 − 2·14.6 and 1170 − 2·14.6 are left inside.
    assert_eq!(cabinet.inside_width.nominal(), mm("800.8")?);
    assert_eq!(cabinet.inside_height.nominal(), mm("1140.8")?);

    // Top and bottom stand between the sides.
    assert_eq!(sizes(part(&cabinet, What::Side(Hand::Left))?), ["1170 mm", "350 mm", "14.6 mm"]);
    assert_eq!(sizes(part(&cabinet, What::Top)?), ["800.8 mm", "350 mm", "14.6 mm"]);

    // The cleat of 14.6 and half a millimetre of slack lie behind the back; then the groove, 5.7 + 0.3 wide.
    let back = part(&cabinet, What::Back)?;
    assert_eq!(along(back, Axis::Deep), [15.1, 20.8]);
    let groove = cabinet.groove.as_ref().ok_or("no groove")?;
    assert_eq!([groove.starts_at, groove.ends_at], [mm("15.1")?, mm("21.1")?]);

    // The back slides in past the bottom, which is ripped to 350 − 21.1.
    assert_eq!(sizes(part(&cabinet, What::Bottom)?), ["800.8 mm", "328.9 mm", "14.6 mm"]);

    // 800.8 + 2·6 − 2 wide; 1140.8 + 6 + 14.6 − 2 high. It ends flush with the bottom.
    assert_eq!(sizes(back), ["1159.4 mm", "810.8 mm", "5.7 mm"]);
    assert_eq!(along(back, Axis::Up), [0.0, 1159.4]);
    assert_eq!(along(back, Axis::Across), [9.6, 820.4]);

    // Overlay 14.6 − 1.6 = 13 on every side: (800.8 + 26 − 3) / 2 wide, 1140.8 + 26 high; plate 11 + 4 − 13.
    for hinged in [Hand::Left, Hand::Right] {
        let door = part(&cabinet, What::Door { bay: 1, hinged })?;
        assert_eq!(sizes(door), ["1166.8 mm", "411.9 mm", "17.6 mm"]);
        assert_eq!(along(door, Axis::Deep), [350.0, 367.6]);
    }
    let [left, right] = cabinet.doors.as_slice() else { return Err("two doors".into()) };
    assert_eq!(left.answer.plate_height, mm("2")?);
    assert_eq!(right.place.from[0].minus(left.place.to[0])?, mm("3")?);

    // 1170 − 2·40 holds 34 steps of 32; the rest is shared: (1170 − 1088) / 2 = 41.
    let rows = cabinet.rows.first().ok_or("no rows")?;
    assert_eq!((rows.rows.first, rows.rows.count), (mm("41")?, 35));
    // Wished 100 from the door's ends and in its middle, at 101.6, 585 and 1068.4; plates lie at 57 + 32·k.
    assert_eq!(left.cups, [mm("87.4")?, mm("599.4")?, mm("1079.4")?]);

    // Gaps of (1140.8 − 3·14.6) / 4 = 274.25 would put the shelves at 288.85, 577.7 and 866.55. A shelf lies 2.5 above
    // the middle of its pins, at 43.5 + 32·k; the one in the middle gives way to the plate, whose holes are 585 and 617.
    for (number, at) in [(1, 299.5), (2, 555.5), (3, 875.5)] {
        let shelf = part(&cabinet, What::LooseShelf { bay: 1, number })?;
        assert_eq!(sizes(shelf), ["798.8 mm", "326.9 mm", "14.6 mm"]);
        assert_eq!(along(shelf, Axis::Up)[0].to_bits(), f64::to_bits(at), "shelf {number}");
    }

    // The strips: what the cleat card says, at its heights.
    assert_eq!(along(part(&cabinet, What::CabinetStrip)?, Axis::Up), [1085.4, 1155.4]);
    assert_eq!(along(part(&cabinet, What::WallStrip)?, Axis::Deep), [0.0, 14.6]);

    // Two ends of two boards, four and three dowels each; the strip of the cleat has two in each end and seven in its edge
    // under the top. Three hinges a door; four pins a shelf.
    let count = |what: Fitting| cabinet.fittings.iter().find(|line| line.what == what).map(|line| line.count);
    assert_eq!(
        count(Fitting::Joint { kind: crate::cards::joints::Kind::Dowel, across: mm("6")?, length: mm("30")? }),
        Some(2 * 4 + 2 * 3 + 2 * 2 + 7)
    );
    assert_eq!(count(Fitting::Hinge { mounting: cup_hinge::Mounting::Full, plate: mm("2")? }), Some(6));
    assert_eq!(count(Fitting::ShelfPin), Some(12));
    assert_eq!(cabinet.hang.as_ref().map(|hang| hang.holds), Some(Holds::Yes));
    assert!(cabinet.clashes.is_empty(), "{:?}", cabinet.clashes);
    assert!(cabinet.fits.iter().all(|fit| fit.fits), "{:?}", cabinet.fits);
    Ok(())
}

/// The mass of every board from the three sides of its place and the density in the table.
#[test]
fn it_weighs_what_its_boards_weigh() -> Checked {
    let inputs = Inputs::default();
    let cabinet = solved(&inputs)?;
    let mut kg = 0.0;
    for part in &cabinet.parts {
        if matches!(part.what, What::WallStrip | What::Spacer) {
            continue;
        }
        let material = inputs.board(part.stock).ok_or("no board")?.material;
        let (row, _) = material.family().and_then(|family| family.row(part.thickness.as_mm())).ok_or("no row")?;
        let [x, y, z] = [Axis::Across, Axis::Deep, Axis::Up].map(|axis| along(part, axis)).map(|[a, b]| b - a);
        kg += x * y * z / 1e9 * row.density_kg_m3;
    }
    assert!((cabinet.weight_kg - kg).abs() < 1e-9, "{} and {kg}", cabinet.weight_kg);
    Ok(())
}

#[test]
fn a_size_means_what_it_is_a_size_of() -> Checked {
    let sized = |size_from, lie| Inputs { size_from, lie, ..Inputs::default() };
    // What goes in: 830 + 2·14.6; 1170 + 2·14.6; shelves of 350 in front of the groove, which ends at 21.1, and 2 free.
    let inside = solved(&sized(SizeFrom::Inside, Lie::Full))?;
    assert_eq!([inside.width, inside.height, inside.depth], [mm("859.2")?, mm("1199.2")?, mm("373.1")?]);
    assert_eq!(inside.inside_depth, mm("350")?);
    // Inset doors take their thickness of the depth.
    let inset = solved(&sized(SizeFrom::Inside, Lie::Inset))?;
    assert_eq!(inset.depth, mm("373.1 + 17.6")?);
    // On the wall: 5 free on each side and above, the doors in front.
    let opening = solved(&sized(SizeFrom::Opening, Lie::Full))?;
    assert_eq!([opening.width, opening.height, opening.depth], [mm("820")?, mm("1165")?, mm("332.4")?]);
    // A plinth counts for the height over all.
    let plinth = Inputs { stands: Stands::Plinth, ..Inputs::default() };
    assert_eq!(solved(&plinth)?.height, mm("1090")?);
    Ok(())
}

#[test]
fn uprights_share_the_width_out_evenly() -> Checked {
    let inputs = Inputs { bays: "3".into(), width: Reading::mm("1200"), ..Inputs::default() };
    let cabinet = solved(&inputs)?;
    // (1200 − 4·14.6) / 3.
    let each = mm("1200 - 4*14.6")?.times(1, 3)?;
    for (from, to) in &cabinet.bays {
        assert_eq!(to.minus(*from)?, each);
    }
    // On an upright both doors cover half of what the gap leaves: the gaps between all doors are alike.
    let mut edges: Vec<_> = cabinet.doors.iter().map(|door| (door.place.from[0], door.place.to[0])).collect();
    edges.sort_unstable();
    for (door, next) in edges.iter().zip(edges.iter().skip(1)) {
        assert_eq!(next.0.minus(door.1)?, mm("3")?);
    }
    // Holes of both faces of an upright are level with those of the sides.
    let heights: Vec<Length> =
        cabinet.rows.iter().map(|rows| rows.datum.plus(rows.rows.first)).collect::<Result<_, LengthError>>()?;
    assert!(heights.iter().all(|height| *height == heights[0]), "{heights:?}");
    Ok(())
}

#[test]
fn what_stands_in_the_way_is_named() -> Checked {
    // The middle hinge lies where the shelf in the middle meets the side; on the upright the plates meet.
    let shelf = Inputs { bays: "2".into(), fixed_shelves: "1".into(), ..Inputs::default() };
    let cabinet = solved(&shelf)?;
    for clash in [
        Clash::PlateOnShelf { bay: 1, shelf: 1 },
        Clash::PlateOnShelf { bay: 2, shelf: 1 },
        Clash::PlatesBackToBack { after: 1 },
    ] {
        assert!(cabinet.clashes.contains(&clash), "{clash:?} in {:?}", cabinet.clashes);
    }
    // Hangers of 450 mm with room on both sides need 600 mm: 350 − 21.1 is 271.1 less.
    let rail = Inputs { rail_bay: "1".into(), ..Inputs::default() };
    let cabinet = solved(&rail)?;
    // Coats hang 1450 below the rail, which wants 60 above it and 50 below them: 1560 − 1140.8.
    assert_eq!(
        cabinet.clashes,
        [Clash::RailInDoorsWay { bay: 1, missing: mm("271.1")? }, Clash::RailTooLow { bay: 1, missing: mm("419.2")? },]
    );
    assert!(!cabinet.parts.iter().any(|part| matches!(part.what, What::LooseShelf { .. })));
    // Ten shelves find no ten holes.
    let crowded = Inputs { loose_shelves: "12".into(), height: Reading::mm("500"), ..Inputs::default() };
    assert!(solved(&crowded)?.clashes.iter().any(|clash| matches!(clash, Clash::NoHole { bay: 1, .. })));
    Ok(())
}

#[test]
fn the_worst_fit_says_what_to_measure_again() -> Checked {
    let fit = |inputs: &Inputs, what| -> Result<Fit, Box<dyn std::error::Error>> {
        let cabinet = solved(inputs)?;
        Ok(*cabinet.fits.iter().find(|fit| fit.what == what).ok_or("not looked at")?)
    };
    // A back of 5.7 ± 0.4 has 0.3 to spare: at its worst 0.1 too little.
    let mut inputs = Inputs::default();
    inputs.back_board.thickness = Reading::mm("5.7 ± 0.4");
    let groove = fit(&inputs, Fitted::BackInGroove)?;
    assert_eq!((groove.least, groove.most), (mm("-0.1")?, mm("0.7")?));
    assert_eq!((groove.fits, groove.again), (false, Some("back_board.thickness")));
    // Between the sides, boards that are thicker than thought make nothing narrower; over them they do.
    let between = fit(&Inputs::default(), Fitted::Shelves)?;
    assert_eq!((between.least, between.again), (mm("2")?, None));
    let over = Inputs { corners: Corners::Over, width: Reading::mm("830 ± 1"), ..Inputs::default() };
    let over = fit(&over, Fitted::Shelves)?;
    assert_eq!((over.least, over.most), (mm("0.6")?, mm("3.4")?));
    assert_eq!(over.again, Some("width"));
    Ok(())
}

#[test]
fn every_setting_is_made_once_for_all_that_share_it() -> Checked {
    let inputs = Inputs { bays: "2".into(), edging: Edging::Band, ..Inputs::default() };
    let cabinet = solved(&inputs)?;
    for (at, step) in cabinet.work.iter().enumerate() {
        assert!(cabinet.work.iter().skip(at + 1).all(|other| other.setup != step.setup), "{:?} twice", step.setup);
        assert!(!step.parts.is_empty());
    }
    // Whatever is sawn is ripped once and crosscut once, to its own size.
    for (at, part) in cabinet.parts.iter().enumerate().filter(|(_, part)| part.stock != Stock::Edging) {
        let with = |wanted: fn(&Setup) -> bool| {
            cabinet.work.iter().filter(|step| wanted(&step.setup) && step.parts.contains(&at)).collect::<Vec<_>>()
        };
        let (rips, crosscuts) =
            (with(|s| matches!(s, Setup::Rip { .. })), with(|s| matches!(s, Setup::Crosscut { .. })));
        // Both strips of the cleat come from one board.
        if part.section.is_some() {
            assert!(rips.is_empty(), "{:?}", part.what);
            continue;
        }
        assert_eq!((rips.len(), crosscuts.len()), (1, 1), "{:?}", part.what);
        assert_eq!(crosscuts[0].setup, Setup::Crosscut { stock: part.stock, stop: part.length });
        assert_eq!(rips[0].setup, Setup::Rip { stock: part.stock, fence: part.width });
    }
    Ok(())
}

#[test]
fn the_cut_list_goes_into_a_layout_as_it_is() -> Checked {
    for edging in Edging::ALL {
        let inputs = Inputs { edging: *edging, bays: "2".into(), ..Inputs::default() };
        let cabinet = solved(&inputs)?;
        let laid = sheet_layout::solve(&layout(&inputs, &cabinet)).map_err(|problems| format!("{problems:?}"))?;
        assert!(laid.marks.is_empty(), "{:?}", laid.marks);
        assert!(laid.left_out.is_empty(), "{:?}", laid.left_out);
        let sawn = cabinet.parts.iter().filter(|part| part.stock != Stock::Edging).count();
        // Both strips of the cleat come from one board.
        assert_eq!(usize::try_from(laid.figures.pieces)?, sawn - 1);
    }
    Ok(())
}

#[test]
fn what_a_card_finds_wrong_is_named_as_a_field_of_the_cabinet() {
    let wrong = |change: fn(&mut Inputs), field: &str| {
        let mut inputs = Inputs::default();
        change(&mut inputs);
        let named = solve(&inputs).err().is_some_and(|problems| problems.of(field).is_some());
        assert!(named, "{field}: {:?}", solve(&inputs).err());
    };
    wrong(|inputs| inputs.width = Reading::mm("ten"), "width");
    wrong(|inputs| inputs.width = Reading::mm("20"), "width");
    wrong(|inputs| inputs.depth = Reading::mm("30"), "depth");
    wrong(|inputs| inputs.height = Reading::mm("6 m"), "height");
    wrong(|inputs| inputs.groove_depth = Reading::mm("15"), "groove_depth");
    wrong(|inputs| inputs.kerf = Reading::mm("0"), "kerf");
    wrong(|inputs| inputs.carcass.thickness = Reading::mm(""), "carcass.thickness");
    wrong(|inputs| inputs.door.thickness = Reading::mm("12"), "holes.cup_depth");
    wrong(|inputs| inputs.holes.pin = Reading::mm("40"), "holes.pin");
    wrong(|inputs| inputs.holes.pin_depth = Reading::mm("15"), "holes.pin_depth");
    wrong(|inputs| inputs.joint_sizes.dowel_diameter = Reading::mm("0"), "joint_sizes.dowel_diameter");
    wrong(|inputs| (inputs.rail_bay, inputs.rail.wall) = ("1".into(), Reading::mm("20")), "rail.wall");
    wrong(|inputs| (inputs.rail_bay, inputs.rail.play) = ("1".into(), Reading::mm("60")), "rail.play");
    wrong(|inputs| inputs.bays = "9".into(), "bays");
    wrong(|inputs| inputs.bays = "0".into(), "bays");
    wrong(|inputs| inputs.rail_bay = "2".into(), "rail_bay");
    wrong(|inputs| inputs.bevel = crate::measure::AngleReading::from("10"), "bevel");
    wrong(|inputs| inputs.load = "much".into(), "load");
    wrong(|inputs| inputs.screws = "0".into(), "screws");
    wrong(|inputs| (inputs.stands, inputs.toe) = (Stands::Plinth, Reading::mm("340")), "toe");
    wrong(|inputs| (inputs.stands, inputs.strip_height) = (Stands::Rail, Reading::mm("1200")), "strip_height");
    wrong(|inputs| (inputs.stands, inputs.base) = (Stands::Legs, Reading::mm("0")), "base");
}

/// Inputs kept by text read back to the same, and what is left out is the demo's.
#[test]
fn inputs_read_back() -> Checked {
    let inputs = Inputs { width: Reading::inches("32 5/8"), bays: "2".into(), ..Inputs::default() };
    let text = serde_json::to_string(&inputs)?;
    assert_eq!(serde_json::from_str::<Inputs>(&text)?, inputs);
    assert_eq!(serde_json::from_str::<Inputs>("{}")?, Inputs::default());
    Ok(())
}

/// Every card that a cabinet opens answers, and the same as it answered the cabinet.
#[test]
fn a_card_opened_from_a_cabinet_gives_the_cabinets_own_answer() -> Checked {
    let inputs = Inputs { bays: "2".into(), rail_bay: "2".into(), fixed_shelves: "1".into(), ..Inputs::default() };
    let cabinet = solved(&inputs)?;
    let handed = handed(&inputs, &cabinet);
    let answer = |slug: &str| -> Result<serde_json::Value, Box<dyn std::error::Error>> {
        let (_, inputs) = handed.iter().find(|(card, _)| *card == slug).ok_or_else(|| slug.to_owned())?;
        Ok((crate::cards::card(slug).ok_or("no card")?.ask)(inputs)
            .map_err(|refusal| format!("{slug}: {refusal:?}"))?)
    };
    assert_eq!(handed.len(), 10);
    for (slug, _) in &handed {
        answer(slug)?;
    }
    assert_eq!(answer("back-panel")?, serde_json::to_value(&cabinet.back)?);
    assert_eq!(answer("groove")?, serde_json::to_value(&cabinet.groove)?);
    assert_eq!(answer("cup-hinge")?, serde_json::to_value(&cabinet.doors[0].answer)?);
    assert_eq!(answer("hole-rows")?, serde_json::to_value(&cabinet.rows[0].rows)?);
    assert_eq!(answer("clothes-rail")?, serde_json::to_value(&cabinet.rail)?);
    assert_eq!(answer("hanging")?, serde_json::to_value(&cabinet.hang)?);
    // What was put by in a layout stays there.
    let layout = handed.iter().find(|(card, _)| *card == "sheet-layout").ok_or("no layout")?;
    assert!(layout.1.get("kept").is_none() && layout.1.get("parts").is_some());
    Ok(())
}

/// Read as any table of commas: as many lines as the cut list has, and the numbers add up to every part.
#[test]
fn the_cut_list_is_a_table() -> Checked {
    let inputs =
        Inputs { bays: "3".into(), edging: Edging::Solid, edging_thickness: Reading::mm("5"), ..Inputs::default() };
    let cabinet = solved(&inputs)?;
    let table = cut_list_csv(&cabinet);
    let rows: Vec<Vec<&str>> = table.lines().map(|line| line.split(',').collect()).collect();
    assert_eq!(rows.len(), cabinet.cut_list.len() + 1);
    assert!(rows.iter().all(|row| row.len() == 6), "{table}");
    let mut count = 0;
    for row in rows.iter().skip(1) {
        count += row[3].parse::<usize>()?;
        for size in [row[1], row[2], row[5]] {
            assert!(mm(size)?.is_positive());
        }
    }
    assert_eq!(count, cabinet.parts.len());
    assert!(table.contains("Side,1170,345"), "{table}");
    Ok(())
}
