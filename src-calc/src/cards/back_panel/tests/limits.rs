//! What is just still accepted, what begins beyond a value, and the sizes between which a panel works.

use super::{mm, solve_with};
use crate::cards::back_panel::{Across, Answer, Division, Edge, Fit, Hold, Inputs, Squareness, Verdict, Way, Window};
use crate::caution::Caution;
use crate::measure::{Figure, Reading};
use crate::stock::movement::Sheet;

fn solved(change: impl FnOnce(&mut Inputs)) -> Answer {
    solve_with(change).unwrap_or_else(|problems| panic!("{problems:?}"))
}

/// Whether the field is the one that is wrong, and nothing else.
fn refused(field: &str, change: impl FnOnce(&mut Inputs)) -> bool {
    match solve_with(change) {
        Ok(_) => false,
        Err(problems) => {
            let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
            assert_eq!(fields, [field]);
            true
        }
    }
}

fn close(got: f64, want: f64, what: &str) {
    assert!((got - want).abs() < 1e-9, "{what}: got {got}, by hand {want}");
}

/// The last that is accepted, and the first that is not.
#[test]
fn the_most_itself_is_accepted() {
    for (field, accepted, too_much, change) in [
        ("swing", "100", "100.1", (|inputs, typed| inputs.swing = typed) as fn(&mut Inputs, Figure)),
        ("swing", "0", "-0.1", |inputs, typed| inputs.swing = typed),
        ("strain", "5", "5.1", |inputs, typed| (inputs.sheet, inputs.strain) = (Sheet::Own, typed)),
        ("strain", "0", "-0.1", |inputs, typed| (inputs.sheet, inputs.strain) = (Sheet::Own, typed)),
        ("count", "50", "51", |inputs, typed| (inputs.division, inputs.count) = (Division::Equal, typed)),
        ("count", "1", "0", |inputs, typed| (inputs.division, inputs.count) = (Division::Equal, typed)),
    ] {
        assert!(!refused(field, |inputs| change(inputs, Figure::new(accepted))), "{field} {accepted}");
        assert!(refused(field, |inputs| change(inputs, Figure::new(too_much))), "{field} {too_much}");
    }
    for count in ["1", "2", "49", "50"] {
        let pieces = solved(|inputs| (inputs.division, inputs.count) = (Division::Equal, Figure::new(count))).pieces;
        assert_eq!(pieces.list.len().to_string(), count);
    }
}

/// Fifty scraps are enough for any back; a blank line in their list is no scrap.
#[test]
fn fifty_scraps_are_accepted() {
    let given = |scraps: usize, blank: usize| {
        move |inputs: &mut Inputs| {
            inputs.division = Division::Scraps;
            inputs.scraps = vec![Reading::mm("20"); scraps];
            inputs.scraps.extend(vec![Reading::default(); blank]);
        }
    };
    assert!(!refused("scraps", given(50, 0)) && !refused("scraps", given(50, 1)));
    assert!(refused("scraps", given(51, 0)) && refused("scraps", given(0, 3)));
    // 578 out of twenties: 28 whole ones and 18 of another.
    assert_eq!(solved(given(50, 1)).pieces.unused.len(), 50 - 29);
}

/// A scrap is used or it stays whole; what is cut off counts on those that are used.
#[test]
fn scraps_that_stay_whole_are_named() {
    let from = |scraps: &[&str], least: &str| {
        solved(|inputs| {
            inputs.division = Division::Scraps;
            inputs.scraps = scraps.iter().map(|typed| Reading::mm(typed)).collect();
            inputs.least_piece = Reading::mm(least);
        })
        .pieces
    };
    // 578 = 400 + 178, and 290 is the smallest that gives 178.
    let pieces = from(&["310", "400", "290"], "60");
    let used: Vec<_> = pieces.list.iter().map(|piece| piece.scrap).collect();
    assert_eq!((used, pieces.unused), (vec![Some(1), Some(2)], vec![0]));
    assert_eq!((pieces.left_over, pieces.seams_at), (mm(112, 1), vec![mm(400, 1)]));
    assert_eq!(from(&["300", "600", "20"], "60").unused, [0, 2]);
    assert!(from(&["300", "200"], "60").unused.is_empty());
}

/// One piece is no sliver, however narrow; of several, one that is just as wide as wanted is none either.
#[test]
fn a_sliver_is_one_of_several() {
    let sliver = |scraps: &[&str], least: &str| {
        solved(|inputs| {
            inputs.division = Division::Scraps;
            inputs.scraps = scraps.iter().map(|typed| Reading::mm(typed)).collect();
            inputs.least_piece = Reading::mm(least);
        })
        .pieces
        .sliver
    };
    assert!(!sliver(&["600"], "600"));
    // 578 = 500 + 78, of a scrap that is no wider: nothing can be shifted to it.
    assert!(!sliver(&["500", "78"], "78"));
    assert!(sliver(&["500", "78"], "78.1"));
}

/// From about a metre on a panel is a sheet to handle: more than 1000 mm, in either direction.
#[test]
fn cautions_follow_the_edges_and_the_size() {
    let (blind, sheet, dust) = (Caution::BlindCut, Caution::SheetHandling, Caution::DustAndNoise);
    // Grooves of 8 both sides, less 2: 14 more than the opening. In height 18 + 8 − 2: 24 more.
    for (width, height, want) in [
        ("564", "702", vec![blind, dust]),
        ("986", "702", vec![blind, dust]),
        ("986.1", "702", vec![blind, sheet, dust]),
        ("564", "976", vec![blind, dust]),
        ("564", "976.1", vec![blind, sheet, dust]),
        ("1986", "1976", vec![blind, sheet, dust]),
    ] {
        let answer = solved(|inputs| {
            (inputs.opening_width, inputs.opening_height) = (Reading::mm(width), Reading::mm(height));
        });
        assert_eq!(answer.cautions, want, "{width} by {height}");
    }
    // A groove or a rabbet is cut blind; laps and gaps are not cut at all.
    let nailed = |top: Way| {
        solved(|inputs| {
            for edge in [&mut inputs.left, &mut inputs.right, &mut inputs.bottom] {
                *edge = Edge::new(Way::PastEdge, "10");
            }
            inputs.top = Edge::new(top, "10");
        })
        .cautions
    };
    for (top, want) in [
        (Way::Groove, vec![blind, dust]),
        (Way::Rabbet, vec![blind, dust]),
        (Way::PastEdge, vec![dust]),
        (Way::HeldShort, vec![dust]),
    ] {
        assert_eq!(nailed(top), want, "{top:?}");
    }
}

/// The width of 500 ± `doubt` between the two edges given, with 2 of clearance, in a board of our own.
fn width(doubt: &str, [left, right]: [(Way, &str); 2], least_engagement: &str, strain: &str) -> Across {
    solved(|inputs| {
        inputs.opening_width = Reading::mm(&format!("500 ± {doubt}"));
        inputs.left = Edge::new(left.0, left.1);
        inputs.right = Edge::new(right.0, right.1);
        inputs.least_engagement = Reading::mm(least_engagement);
        (inputs.sheet, inputs.strain) = (Sheet::Own, Figure::new(strain));
    })
    .width
}

/// Pushed hard against one stop of the largest opening, 500.5, the panel must bear by 2 at the other: it is at least
/// 500.5 + the depth pushed into + 2 long when it has shrunk by a thousandth, at both edges that carry. In the smallest
/// opening, 499.5, it must not be longer than from stop to stop when it has grown by as much.
#[test]
fn the_sizes_that_work() {
    for (left, depth, dry, room) in [
        (Way::Groove, "8", 510.5, 515.5),
        (Way::Rabbet, "10", 512.5, 517.5),
        (Way::Groove, "6", 510.5, 513.5),
        (Way::PastEdge, "18", 520.5, 525.5),
        // Only the right edge carries, and what grows to the left is stopped by the face.
        (Way::HeldShort, "30", 472.5, 507.5),
    ] {
        for turned in [false, true] {
            let mut edges = [(left, depth), (Way::Groove, "8")];
            if turned {
                edges.reverse();
            }
            let Window { from_mm, to_mm } = width("0.5", edges, "2", "0.1").works_mm.unwrap();
            close(from_mm, dry / 0.999, &format!("{left:?} {depth}, from"));
            close(to_mm.unwrap(), room / 1.001, &format!("{left:?} {depth}, to"));
        }
    }
    // Nothing to bear: any size; nothing to bind: no largest one.
    let short = width("0.5", [(Way::HeldShort, "5"); 2], "2", "0.1").works_mm.unwrap();
    assert_eq!(short.from_mm, 0.0);
    close(short.to_mm.unwrap(), 499.5 / 1.001, "both held short");
    let past = width("0.5", [(Way::PastEdge, "18"); 2], "2", "0.1").works_mm.unwrap();
    close(past.from_mm, 520.5 / 0.999, "both past");
    assert_eq!(past.to_mm, None);
}

/// A groove just as deep as what must bear will do; one that is shallower never bears, on either side.
#[test]
fn an_edge_can_be_too_shallow_to_bear() {
    for (wanted, works) in [("4", true), ("4.1", false)] {
        for edges in [[(Way::Groove, "4"), (Way::Groove, "8")], [(Way::PastEdge, "8"), (Way::Rabbet, "4")]] {
            assert_eq!(width("0", edges, wanted, "0").works_mm.is_some(), works, "{wanted} {edges:?}");
        }
    }
}

/// Where nothing works, two grooves `g` deep would: (L + 2 g) / (1 + e) = (H + g + m) / (1 − e). Without movement that is
/// g = H − L + m: 503 − 497 + 2 = 8.
#[test]
fn how_deep_two_grooves_would_have_to_be() {
    let grooves =
        |doubt, depth, wanted, strain| width(doubt, [(Way::Groove, depth), (Way::Rabbet, depth)], wanted, strain);
    let shallow = grooves("3", "5", "2", "0");
    assert_eq!(shallow.works_mm, None);
    close(shallow.depth_wanted_mm.unwrap(), 8.0, "no movement");
    assert!(grooves("3", "7.9", "2", "0").works_mm.is_none());
    let enough = grooves("3", "8", "2", "0");
    assert_eq!(enough.works_mm, Some(Window { from_mm: 513.0, to_mm: Some(513.0) }));
    assert_eq!(enough.depth_wanted_mm, None);
    // With a hundredth: g (2 · 0.99 − 1.01) = 505 · 1.01 − 497 · 0.99, so 0.97 g = 510.05 − 492.03 = 18.02.
    close(grooves("3", "5", "2", "1").depth_wanted_mm.unwrap(), 18.02 / 0.97, "one per cent");
    assert!(grooves("3", "18.5", "2", "1").works_mm.is_none() && grooves("3", "18.6", "2", "1").works_mm.is_some());
    // Known exactly and standing still, it must only be as deep as what bears.
    close(grooves("0", "5", "9", "0").depth_wanted_mm.unwrap(), 9.0, "only too shallow");
    // One groove alone cannot be made deeper on both sides.
    let one = width("3", [(Way::Groove, "1"), (Way::PastEdge, "18")], "2", "0");
    assert_eq!((one.works_mm, one.depth_wanted_mm), (None, None));
}

/// Just as large as the room is free; just at nothing it has come out; the wanted engagement itself bears.
#[test]
fn a_panel_as_large_as_its_room_goes_in() {
    let fit = |clearance: &str, doubt: &str| {
        let answer = solved(|inputs| {
            inputs.opening_width = Reading::mm(&format!("500 ± {doubt}"));
            inputs.clearance = Reading::mm(clearance);
            inputs.swing = Figure::new("0");
        });
        (answer.width.fit, answer.verdict)
    };
    assert_eq!(fit("2", "2"), (Fit::Free, Verdict::Good));
    assert_eq!(fit("2", "2.1"), (Fit::DoesNotGoIn, Verdict::DoesNotGoIn));
    // 500 + 16 − c − 500 − 8 bears by 8 − c.
    let hold = |clearance: &str| {
        let answer = solved(|inputs| {
            inputs.opening_width = Reading::mm("500");
            inputs.clearance = Reading::mm(clearance);
            inputs.bottom = Edge::new(Way::PastEdge, "30");
            inputs.swing = Figure::new("0");
        });
        answer.width.hold
    };
    assert_eq!(["6", "6.1", "7.9", "8"].map(hold), [Hold::Bears, Hold::Short, Hold::Short, Hold::FallsOut]);
}

/// Width, diagonals and clearance of an opening 300 wide and 400 high whose top and bottom are run past.
fn leaning(diagonals: [&str; 2], clearance: &str) -> Result<Squareness, crate::problem::Problems> {
    solve_with(|inputs| {
        (inputs.opening_width, inputs.opening_height) = (Reading::mm("300"), Reading::mm("400"));
        (inputs.top, inputs.bottom) = (Edge::new(Way::PastEdge, "18"), Edge::new(Way::PastEdge, "18"));
        inputs.clearance = Reading::mm(clearance);
        [inputs.first_diagonal, inputs.second_diagonal] = diagonals.map(Reading::mm);
        inputs.swing = Figure::new("0");
    })
    .map(|answer| answer.squareness)
}

/// The squares of the diagonals of 300 by 400 differ by 480 000 times the sine of the lean, and add up to 500 000.
/// Half of 480 000, a lean of 30°, would be √370 000 = 608.28 and √130 000 = 360.56.
#[test]
fn an_opening_leans_by_thirty_degrees_at_most() {
    for (diagonals, goes) in [
        (["608.2", "360.7"], true),
        (["608.4", "360.4"], false),
        (["360.7", "608.2"], true),
        (["360.4", "608.4"], false),
    ] {
        match leaning(diagonals, "100") {
            Ok(squareness) => {
                let degrees = squareness.lean.unwrap().degrees;
                assert!(goes && (29.9..30.0).contains(&degrees.abs()), "{diagonals:?}: {degrees}");
            }
            Err(problems) => assert!(!goes && problems.of("second_diagonal").is_some(), "{diagonals:?}: {problems:?}"),
        }
    }
}

/// A sine of 0.28 has a cosine of 0.96: seen square to its sides the opening is 288 wide and not 300, so the panel wants
/// 12 of clearance; turning it does not help. The diagonals: √(250 000 ± 67 200).
#[test]
fn a_leaning_opening_is_narrower() {
    let goes_in = |clearance: &str| leaning(["563.205", "427.551"], clearance).unwrap().lean.unwrap();
    assert!((goes_in("12").over_height_mm - 112.0).abs() < 0.01);
    assert_eq!(["11.9", "12.1"].map(|clearance| goes_in(clearance).goes_in), [false, true]);
}

/// A panel that fills a square opening from stop to stop goes in.
#[test]
fn a_panel_without_clearance_goes_into_a_square_opening() {
    let lean = leaning(["500", "500"], "0").unwrap().lean.unwrap();
    assert_eq!((lean.degrees, lean.goes_in), (0.0, true));
}

/// One line for each number that a person would work out, and none for what is not there.
#[test]
fn the_working_has_a_line_for_each_number() {
    let lines = |change: fn(&mut Inputs)| {
        solved(change).working.0.iter().map(|step| (step.what, step.formula)).collect::<Vec<_>>()
    };
    let demo = lines(|_| {});
    assert_eq!(demo.first(), Some(&("Movement with humidity", "e = r × S / h")));
    assert_eq!(demo.last().map(|line| line.0), Some("Diagonal of the opening when square"));
    // The movement, two directions of six lines, the diagonal.
    assert_eq!(demo.len(), 1 + 2 * 6 + 1);
    assert_eq!(lines(|inputs| inputs.sheet = Sheet::Own).first(), Some(&("Movement with humidity", "e")));
    // Held short to both sides nothing bears; run past both nothing stops it.
    let short =
        lines(|inputs| (inputs.left, inputs.right) = (Edge::new(Way::HeldShort, "5"), Edge::new(Way::HeldShort, "5")));
    assert_eq!(short.len(), demo.len() - 2);
    let past =
        lines(|inputs| (inputs.left, inputs.right) = (Edge::new(Way::PastEdge, "5"), Edge::new(Way::PastEdge, "5")));
    assert_eq!(past.len(), demo.len() - 2);
    assert!(!past.iter().any(|line| line.0 == "Room for the width, at the least"));
    let measured = lines(|inputs| {
        (inputs.first_diagonal, inputs.second_diagonal) = (Reading::mm("901"), Reading::mm("900"));
    });
    assert_eq!(measured.last().map(|line| line.0), Some("Lean over the height"));
    assert_eq!(measured.len(), demo.len() + 1);
    let seamed = lines(|inputs| inputs.division = Division::Equal);
    assert!(seamed.contains(&("Last seam", "s = T − p")) && seamed.len() == demo.len() + 1);
}
