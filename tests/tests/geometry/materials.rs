//! A shopping list worked out again in fractions of the `num-rational` library and in whole hundredths: areas, packs,
//! amounts and their sum. Only what was typed is used, none of the card's arithmetic.

use num_rational::Ratio;
use proptest::prelude::*;
use scantling::cards::materials::{Coat, Inputs, SolidPer, What, solve};
use scantling::measure::Reading;
use scantling::stock::materials::Choice;

type Exact = Ratio<i128>;

fn tenths(count: i64) -> (String, Exact) {
    (format!("{}.{}", count / 10, count % 10), Exact::new(count.into(), 10))
}

fn thousandths(count: i64) -> (String, Exact) {
    (format!("{}.{:03}", count / 1000, count % 1000), Exact::new(count.into(), 1000))
}

fn whole(count: i64) -> Exact {
    Exact::from_integer(count.into())
}

/// Hundredths, halves up.
fn hundredths(amount: Exact) -> i128 {
    (amount * 100 + Exact::new(1, 2)).floor().to_integer()
}

fn shown(hundredths: i128) -> String {
    format!("{}.{:02}", hundredths / 100, hundredths % 100)
}

/// As text with so many decimals, rounded up.
fn up(value: Exact, places: u32) -> String {
    let one = 10_i128.pow(places);
    let units = (value * one).ceil().to_integer();
    if places == 0 {
        units.to_string()
    } else {
        format!("{}.{:0width$}", units / one, units % one, width = places as usize)
    }
}

proptest! {
    #[test]
    fn the_list_adds_up_whoever_adds(
        parts in prop::collection::vec((10_i64..12_000, 10_i64..12_000, 1_i64..9), 1..5),
        boards in prop::collection::vec((10_i64..30_000, 10_i64..3_000, 10_i64..800, 1_i64..9), 1..5),
        by_foot in any::<bool>(),
        percents in (0_i64..400, 0_i64..400, 0_i64..400),
        prices in prop::array::uniform5(0_i64..200_000),
        finish in (1_i64..6, 50_i64..150, 250_i64..5_000),
        screws in (1_i64..40, 1_i64..12, 1_i64..200),
        roll in 1_000_i64..500_000,
        extra in 0_i64..500,
    ) {
        let (sheet_waste, board_waste, spare) = percents;
        let (coats, coverage, can) = finish;
        let (places, in_each, in_box) = screws;
        let line = |sizes: &[i64], count: i64| {
            let sizes: Vec<String> = sizes.iter().map(|size| tenths(*size).0).collect();
            Reading::mm(&format!("{} × {count}", sizes.join(" × ")))
        };
        let inputs = Inputs {
            sheet_parts: parts.iter().map(|(long, wide, count)| line(&[*long, *wide], *count)).collect(),
            material: Choice::Own,
            density: "700".into(),
            sheet_waste: tenths(sheet_waste).0.as_str().into(),
            sheet_price: thousandths(prices[0]).0.as_str().into(),
            boards: boards.iter().map(|(long, wide, thick, count)| line(&[*long, *wide, *thick], *count)).collect(),
            board_waste: tenths(board_waste).0.as_str().into(),
            board_per: if by_foot { SolidPer::BoardFoot } else { SolidPer::CubicMetre },
            board_price: thousandths(prices[1]).0.as_str().into(),
            edges: parts.iter().map(|(long, _, count)| line(&[*long], *count)).collect(),
            band_extra: Reading::mm(&tenths(extra).0),
            roll: Reading::mm(&tenths(roll).0),
            roll_price: thousandths(prices[2]).0.as_str().into(),
            joints: Vec::new(),
            coat: Coat::BothFaces,
            coats: coats.to_string().as_str().into(),
            coverage: tenths(coverage).0.as_str().into(),
            can: thousandths(can).0.as_str().into(),
            can_price: thousandths(prices[3]).0.as_str().into(),
            screws: vec![Reading::mm(&format!("{places} × {in_each}"))],
            screw_box: in_box.to_string().as_str().into(),
            screw_price: thousandths(prices[4]).0.as_str().into(),
            pins: Vec::new(),
            spare: tenths(spare).0.as_str().into(),
            others: Vec::new(),
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();

        let on_top = |percent: i64| Exact::from_integer(1) + Exact::new(percent.into(), 1000);
        let mm = |size: i64| Exact::new(size.into(), 10);
        let area: Exact = parts.iter().map(|(long, wide, count)| mm(*long) * mm(*wide) * whole(*count)).sum();
        let sheets = up(area * on_top(sheet_waste) / whole(2440 * 1220), 0);
        let inch = Exact::new(127, 5);
        let solid: Exact = boards
            .iter()
            .map(|(long, wide, thick, count)| {
                let thick = if by_foot { mm(*thick).max(inch) } else { mm(*thick) };
                mm(*long) * mm(*wide) * thick * whole(*count)
            })
            .sum::<Exact>()
            * on_top(board_waste);
        let solid = if by_foot { up(solid / (inch * inch * inch * 144), 2) } else { up(solid / whole(1_000_000_000), 4) };
        let edges: Exact = parts.iter().map(|(long, _, count)| (mm(*long) + mm(extra)) * whole(*count)).sum();
        let rolls = up(edges / mm(roll), 0);
        let litres = area * 2 / whole(1_000_000) * whole(coats) / Exact::new(coverage.into(), 10);
        let cans = up(litres / Exact::new(can.into(), 1000), 0);
        let driven = (whole(places * in_each) * on_top(spare)).ceil();
        let boxes = up(driven / whole(in_box), 0);

        let by = if by_foot { What::BoardFeet } else { What::CubicMetres };
        let kinds = [What::Sheets, by, What::Rolls, What::Cans, What::ScrewBoxes];
        let quantities = [sheets, solid, rolls, cans, boxes];
        prop_assert_eq!(answer.list.items.len(), 5);
        let mut total = 0;
        for (at, item) in answer.list.items.iter().enumerate() {
            prop_assert_eq!(&item.what, &kinds[at]);
            prop_assert_eq!(item.quantity.to_string(), quantities[at].as_str());
            let digits: i128 = quantities[at].replace('.', "").parse().unwrap();
            let places = quantities[at].split_once('.').map_or(0, |(_, places)| u32::try_from(places.len()).unwrap());
            let amount = hundredths(Exact::new(digits, 10_i128.pow(places)) * thousandths(prices[at]).1);
            prop_assert_eq!(item.amount.unwrap().to_string(), shown(amount));
            total += amount;
        }
        prop_assert_eq!(answer.list.total.unwrap().to_string(), shown(total));
    }
}
