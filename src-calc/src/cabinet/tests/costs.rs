//! What a cabinet costs, against sums done by hand.

use super::*;

fn priced() -> Inputs {
    let mut inputs = Inputs::default();
    inputs.carcass.price = "64.50".into();
    inputs.door.price = "78,90".into();
    inputs.back_board.price = "31.25".into();
    inputs.prices = Prices {
        hinge: "4.35".into(),
        shelf_pin: "0.12".into(),
        joint: "0.035".into(),
        leg: "1000".into(),
        ..Prices::default()
    };
    inputs
}

fn costed(inputs: &Inputs) -> Result<Costs, Box<dyn std::error::Error>> {
    costs(inputs, &solved(inputs)?).map_err(|problems| format!("{problems:?}").into())
}

fn of(costs: &Costs, what: Priced) -> Option<(Amount, Option<String>)> {
    let line = costs.lines.iter().find(|line| line.what == what)?;
    Some((line.amount, line.sum.map(|sum| sum.to_string())))
}

/// One sheet each. Of the carcass's 2420 by 1200, trimmed: two sides in a row take 2343.2; top, bottom and a shelf
/// 2406.8; two shelves and the cleat 2403 or so; their widths of 350, 350 and 326.9 with two kerfs 1033.3.
#[test]
fn the_demo_costs_what_its_sheets_and_fittings_cost() -> Checked {
    let costs = costed(&priced())?;
    let line = |what, count, sum: &str| {
        assert_eq!(of(&costs, what), Some((Amount::Pieces(count), Some(sum.to_owned()))), "{what:?}");
    };
    line(Priced::Board(Stock::Carcass), 1, "64.50");
    line(Priced::Board(Stock::Door), 1, "78.90");
    line(Priced::Board(Stock::Back), 1, "31.25");
    line(Priced::Hinge, 6, "26.10");
    line(Priced::ShelfPin, 12, "1.44");
    // 25 · 0.035 is 0.875: rounded once, together.
    line(Priced::Joint, 25, "0.88");
    // Shelves and cleat come from the carcass's sheet; it stands on no legs; its screws have no price.
    assert_eq!(of(&costs, Priced::Board(Stock::Shelf)), None);
    assert_eq!(of(&costs, Priced::Leg), None);
    assert_eq!(of(&costs, Priced::WallFixing), Some((Amount::Pieces(6), None)));
    // 64.50 + 78.90 + 31.25 + 26.10 + 1.44 + 0.88.
    assert_eq!(costs.total.map(|total| total.to_string()).as_deref(), Some("203.07"));
    assert_eq!(costs.fewest_sheets, 3);
    assert!(costs.too_large.is_empty());
    Ok(())
}

#[test]
fn what_is_sold_by_the_metre_costs_by_its_length() -> Checked {
    let mut inputs = Inputs { edging: Edging::Band, rail_bay: "1".into(), ..priced() };
    inputs.prices.edging = "1.20".into();
    inputs.prices.rail = "7".into();
    inputs.prices.rail_socket = "2.50".into();
    let cabinet = solved(&inputs)?;
    let costs = costed(&inputs)?;
    // Fronts of two sides, top and bottom; round each door the pieces that run through and those between them.
    let band = mm("2*1170 + 2*800.8 + 2*(2*1166.8 + 2*(411.9 - 2))")?;
    assert_eq!(cabinet.edging, Some(band));
    // 10.2484 m · 1.20 = 12.29808.
    assert_eq!(of(&costs, Priced::Edging), Some((Amount::Run(band), Some("12.30".to_owned()))));
    // The bay's 800.8 mm, less 3 for the sockets.
    assert_eq!(of(&costs, Priced::Rail), Some((Amount::Run(mm("797.8")?), Some("5.58".to_owned()))));
    assert_eq!(of(&costs, Priced::RailSocket), Some((Amount::Pieces(2), Some("5.00".to_owned()))));
    assert!(of(&costs, Priced::ShelfPin).is_none());
    // 0.7978 m are 2.6175 ft.
    inputs.prices.rail = "7 /ft".into();
    assert_eq!(of(&costed(&inputs)?, Priced::Rail), Some((Amount::Run(mm("797.8")?), Some("18.32".to_owned()))));
    // A socket has no length.
    inputs.prices.rail_socket = "2.50 /ft".into();
    assert!(solve(&inputs).is_err_and(|problems| problems.of("prices.rail_socket").is_some()));
    Ok(())
}

#[test]
fn a_board_of_its_own_has_its_own_sheets_and_price() -> Checked {
    let mut inputs = priced();
    inputs.shelf.thickness = Reading::mm("18");
    inputs.shelf.price = "70".into();
    assert!(inputs.counts(Priced::Board(Stock::Shelf)) && !Inputs::default().counts(Priced::Board(Stock::Shelf)));
    let costs = costed(&inputs)?;
    assert_eq!(of(&costs, Priced::Board(Stock::Shelf)), Some((Amount::Pieces(1), Some("70.00".to_owned()))));
    // What costs nothing is not what has no price.
    inputs.shelf.price = "0".into();
    assert_eq!(of(&costed(&inputs)?, Priced::Board(Stock::Shelf)), Some((Amount::Pieces(1), Some("0.00".to_owned()))));
    let costs = costed(&Inputs::default())?;
    assert!(costs.total.is_none() && costs.lines.iter().all(|line| line.sum.is_none()));
    Ok(())
}

#[test]
fn what_no_sheet_holds_is_named() -> Checked {
    let inputs = Inputs { sheet_length: Reading::mm("1160"), sheet_width: Reading::mm("1160"), ..priced() };
    let costs = costed(&inputs)?;
    // 1140 is left of the sheet; sides are 1170, doors 1166.8, the back 1159.4.
    assert_eq!(costs.too_large, ["Side", "Door", "Back"]);
    Ok(())
}

#[test]
fn a_price_that_is_none_is_refused_at_its_field() {
    let wrong = |change: fn(&mut Inputs), field: &str| {
        let mut inputs = Inputs::default();
        change(&mut inputs);
        let at: Option<Vec<String>> =
            solve(&inputs).err().map(|problems| problems.iter().map(|(name, _)| name.to_owned()).collect());
        assert_eq!(at, Some(vec![field.to_owned()]));
    };
    wrong(|inputs| inputs.carcass.price = "dear".into(), "carcass.price");
    wrong(|inputs| inputs.prices.hinge = "-1".into(), "prices.hinge");
    wrong(|inputs| inputs.sheet_length = Reading::mm("0"), "sheet_length");
    // Of what the cabinet does not have no price is read.
    let inputs = Inputs { prices: Prices { leg: "dear".into(), ..Prices::default() }, ..Inputs::default() };
    assert!(solve(&inputs).is_ok());
}
