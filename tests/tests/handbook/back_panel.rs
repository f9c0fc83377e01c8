//! Back panels in grooves: rows P of the project's handbook, worked there by script from
//! `W = O + g1 + g2 − c`, `W (1 + e) <= O + g1 + g2` and `W (1 − e) − O − max(g1, g2)` (common practice, plane
//! geometry), and again here by hand where a row says so.

use scantling::cards::back_panel::{Answer, Division, Edge, Fit, Hold, Inputs, Verdict, Way, solve};
use scantling::measure::{Figure, Length, Reading};
use scantling::stock::movement::Sheet;

/// Half a unit of the last printed digit.
const HALF_DIGIT_MM: f64 = 0.000_5;

/// A panel between two grooves from side to side; top and bottom run past, so that only the width matters.
fn between_grooves(opening: &str, grooves: [&str; 2], clearance: &str, least: &str, strain: &str) -> Inputs {
    Inputs {
        opening_width: Reading::mm(opening),
        opening_height: Reading::mm("600"),
        left: Edge::new(Way::Groove, grooves[0]),
        right: Edge::new(Way::Groove, grooves[1]),
        top: Edge::new(Way::PastEdge, "18"),
        bottom: Edge::new(Way::PastEdge, "18"),
        clearance: Reading::mm(clearance),
        least_engagement: Reading::mm(least),
        sheet: Sheet::Own,
        strain: Figure::new(strain),
        division: Division::Whole,
        ..Inputs::default()
    }
}

struct Row {
    id: &'static str,
    opening: &'static str,
    grooves: [&'static str; 2],
    clearance: &'static str,
    least: &'static str,
    width_mm: i64,
    wet_mm: f64,
    room_mm: i64,
    engagement_mm: f64,
    fit: Fit,
    hold: Hold,
    verdict: Verdict,
}

#[track_caller]
fn answer(id: &str, inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{id}: {problems:?}"))
}

#[track_caller]
fn near(id: &str, what: &str, got: f64, want: f64) {
    assert!((got - want).abs() <= HALF_DIGIT_MM, "{id}: {what} {got}, handbook {want}");
}

#[test]
fn rows_p_with_their_verdicts() {
    let rows = [
        Row {
            id: "P-1",
            opening: "564",
            grooves: ["8", "8"],
            clearance: "2",
            least: "3",
            width_mm: 578,
            wet_mm: 579.156,
            room_mm: 580,
            engagement_mm: 4.844,
            fit: Fit::Free,
            hold: Hold::Bears,
            verdict: Verdict::Good,
        },
        Row {
            id: "P-2",
            opening: "864",
            grooves: ["6", "6"],
            clearance: "3",
            least: "2",
            width_mm: 873,
            wet_mm: 874.746,
            room_mm: 876,
            engagement_mm: 1.254,
            fit: Fit::Free,
            hold: Hold::Short,
            verdict: Verdict::Short,
        },
        Row {
            id: "P-3",
            opening: "1164",
            grooves: ["6", "6"],
            clearance: "2",
            least: "2",
            width_mm: 1174,
            wet_mm: 1176.348,
            room_mm: 1176,
            engagement_mm: 1.652,
            fit: Fit::Binds,
            hold: Hold::Short,
            verdict: Verdict::Binds,
        },
        Row {
            id: "P-4",
            opening: "564",
            grooves: ["4", "4"],
            clearance: "5",
            least: "2",
            width_mm: 567,
            wet_mm: 568.134,
            room_mm: 572,
            engagement_mm: -2.134,
            fit: Fit::Free,
            hold: Hold::FallsOut,
            verdict: Verdict::FallsOut,
        },
        Row {
            id: "P-7",
            opening: "864",
            grooves: ["8", "8"],
            clearance: "3",
            least: "2",
            width_mm: 877,
            wet_mm: 878.754,
            room_mm: 880,
            engagement_mm: 3.246,
            fit: Fit::Free,
            hold: Hold::Bears,
            verdict: Verdict::Good,
        },
        // By hand: W = 564 + 12 + 6 − 2 = 580; 580 × 0.998 = 578.84; pushed into the deeper groove: − 564 − 12.
        Row {
            id: "unequal grooves",
            opening: "564",
            grooves: ["12", "6"],
            clearance: "2",
            least: "2",
            width_mm: 580,
            wet_mm: 581.16,
            room_mm: 582,
            engagement_mm: 2.84,
            fit: Fit::Free,
            hold: Hold::Bears,
            verdict: Verdict::Good,
        },
    ];
    for row in rows {
        let id = row.id;
        let width = {
            let answer = answer(id, &between_grooves(row.opening, row.grooves, row.clearance, row.least, "0.20"));
            assert_eq!(answer.verdict, row.verdict, "{id}");
            answer.width
        };
        assert_eq!(width.size.nominal(), Length::mm(row.width_mm, 1).unwrap(), "{id}");
        assert_eq!(width.room.unwrap().nominal(), Length::mm(row.room_mm, 1).unwrap(), "{id}");
        near(id, "wet", width.wet_mm, row.wet_mm);
        near(id, "engagement", width.least_engagement_mm().unwrap(), row.engagement_mm);
        assert_eq!((width.fit, width.hold), (row.fit, row.hold), "{id}");
    }
}

/// P-5: 34 in between two grooves of 1/4 in, 1/16 in of clearance: 34 7/16 in, which is 874.7125 mm, exactly.
#[test]
fn row_p_5_in_inches() {
    let inputs = between_grooves("34 in", ["1/4 in", "1/4 in"], "1/16 in", "2", "0.20");
    let size = answer("P-5", &inputs).width.size;
    assert_eq!(size.nominal(), Length::inches(551, 16).unwrap());
    assert_eq!(size.nominal(), Length::mm(8_747_125, 10_000).unwrap());
}

/// P-6: two panels meet on a grooved middle stile; each bay is an opening of its own. By hand: 864 less a stile of 36
/// leaves bays of 414, and each panel is 414 + 8 + 8 − 2 = 428.
#[test]
fn row_p_6_two_bays() {
    let size = answer("P-6", &between_grooves("(864 - 36) / 2", ["8", "8"], "2", "2", "0.20")).width.size;
    assert_eq!(size.nominal(), Length::mm(428, 1).unwrap());
}

/// The handbook's remark on P-2, P-3 and P-7: over about 800 mm a back in hardboard wants grooves of 8 mm. The card
/// says how deep: by hand for P-3, (1166 × 1.002 − 1164 × 0.998) / (2 × 0.998 − 1.002) = 6.660 / 0.994 = 6.700.
#[test]
fn says_how_deep_the_grooves_must_be() {
    let width = answer("P-3", &between_grooves("1164", ["6", "6"], "2", "2", "0.20")).width;
    assert_eq!(width.works_mm, None);
    near("P-3", "depth wanted", width.depth_wanted_mm.unwrap(), 6.700);
    let deep_enough = answer("P-3", &between_grooves("1164", ["7", "7"], "2", "2", "0.20")).width;
    assert!(deep_enough.works_mm.is_some() && deep_enough.depth_wanted_mm.is_none());
}

/// Design strains for a heated room, 35 to 65 % of relative humidity, from section 5 of the handbook: plywood
/// published (APA), particleboard and MDF from published values (EWPAA), hardboard from memory.
#[test]
fn sheets_move_as_the_handbook_says() {
    for (sheet, percent) in
        [(Sheet::Plywood, 0.06), (Sheet::Mdf, 0.15), (Sheet::Particleboard, 0.15), (Sheet::Hardboard, 0.20)]
    {
        let inputs = Inputs { sheet, swing: Figure::new("30"), ..Inputs::default() };
        let got = answer("strain", &inputs).strain_percent;
        assert!((got - percent).abs() < 1e-9, "{sheet:?}: {got}");
    }
}
