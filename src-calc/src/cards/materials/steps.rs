//! The working of a shopping list.

use super::Answer;
use super::bought::{Band, Boards, Finish, Fixings, Glue, Sheets};
use crate::measure::Quantity;
use crate::source::{GEOMETRY, Source};
use crate::working::Working;

const WASTE: Source = Source::practice("your own figure for kerfs, trimming and offcuts; only a layout knows better");
const PACKS: Source = Source::practice("whole packs, rounded up");
const BY_AREA: Source = Source::practice("by area, rounded up: parts do not always lie so well, see a layout");
const OWN: Source = Source::practice("your own figure");
const BOARD_FOOT: Source = Source::published(
    "US Navy training manual for engineering aids: a board foot is 1 ft × 1 ft × 1 in, 144 in³, and stock less than 1 in thick counts as 1 in",
);
const GLUE: Source =
    Source::practice("150 to 250 g/m² on one face is usual for white glue; the bottle or its data sheet says more");
const COVERAGE: Source = Source::published(
    "two makers' sheets for varnish: 10 to 12 m² a litre for one coat (one says 300 to 400 ft² a US gallon); yours is on the can",
);

/// The lines, a section after the other.
pub(super) fn working(answer: &Answer) -> Working {
    let mut steps = Working::default();
    answer.sheets.iter().for_each(|of| sheets(&mut steps, of));
    answer.boards.iter().for_each(|of| boards(&mut steps, of));
    answer.band.iter().for_each(|of| band(&mut steps, of));
    answer.glue.iter().for_each(|of| glue(&mut steps, of));
    answer.finish.iter().for_each(|of| finish(&mut steps, of));
    answer.screws.iter().for_each(|of| fixings(&mut steps, "Screws", of));
    answer.pins.iter().for_each(|of| fixings(&mut steps, "Pins", of));
    steps
}

fn sheets(steps: &mut Working, of: &Sheets) {
    let [length, width] = of.size.map(Quantity::Length);
    let net = Quantity::m2(of.net_m2);
    steps.step("Area of the sheet parts", "A, the sum of length × width × number", [], net, GEOMETRY);
    let given = [("A", net), ("w", Quantity::percent(of.waste_percent))];
    steps.step("With waste", "B = A × (1 + w / 100)", given, Quantity::m2(of.gross_m2), WASTE);
    let count = Quantity::count(of.count.into());
    if of.by_area {
        let sheet = Quantity::m2(of.bought_m2 / f64::from(of.count.max(1)));
        let given = [("B", Quantity::m2(of.gross_m2)), ("S", sheet)];
        steps.step("Sheets", "n = B / S, rounded up", given, count, BY_AREA);
    } else {
        steps.step("Sheets", "n", [], count, OWN);
    }
    let density = ("ρ", Quantity::kg_per_m3(of.density_kg_m3));
    let thickness = ("t", Quantity::mm(of.thickness.as_mm()));
    let source = of.density_source.unwrap_or(OWN);
    let given = [density, ("L", length), ("W", width), thickness];
    steps.step("Weight of a sheet", "m = ρ × L × W × t / 10⁹", given, Quantity::kg(of.sheet_kg), source);
    let given = [density, ("A", net), thickness];
    steps.step("Weight of the parts", "m = ρ × A × t / 1000", given, Quantity::kg(of.parts_kg), source);
}

fn boards(steps: &mut Working, of: &Boards) {
    let formula = "V, the sum of length × width × thickness × number";
    steps.step("Volume of the solid parts", formula, [], Quantity::m3(of.net_m3), GEOMETRY);
    let formula = "F, the sum of length × width × thickness, at least 1 in, × number, / 144 in³";
    steps.step("Board measure", formula, [], Quantity::board_feet(of.net_board_feet), BOARD_FOOT);
    let waste = ("w", Quantity::percent(of.waste_percent));
    let number = |decimal: super::Decimal| decimal.exactly().map_or(0.0, crate::measure::Ratio::as_f64);
    let gives = Quantity::m3(number(of.gross_m3));
    steps.step(
        "Volume with waste",
        "G = V × (1 + w / 100), rounded up to 0.0001",
        [("V", Quantity::m3(of.net_m3)), waste],
        gives,
        WASTE,
    );
    let gives = Quantity::board_feet(number(of.gross_board_feet));
    let given = [("F", Quantity::board_feet(of.net_board_feet)), waste];
    steps.step("Board feet with waste", "G = F × (1 + w / 100), rounded up to 0.01", given, gives, WASTE);
}

fn band(steps: &mut Working, of: &Band) {
    steps.step("Edges", "E, the sum of length × number", [], of.net, GEOMETRY);
    let total = of.gross;
    let extra = total.minus(of.net).unwrap_or_default();
    let given = [("E", of.net.into()), ("e", extra.into())];
    steps.step("Edge band with what is cut longer", "T = E + e", given, total, OWN);
    let given = [("T", total.into()), ("r", of.roll.into())];
    steps.step("Rolls", "n = T / r, rounded up", given, Quantity::count(of.rolls.into()), PACKS);
}

fn glue(steps: &mut Working, of: &Glue) {
    let given = [("A", Quantity::m2(of.area_m2)), ("s", Quantity::number(of.spread_g_m2))];
    steps.step("Glue, with s in g/m²", "m = A × s / 1000", given, Quantity::kg(of.kg), GLUE);
    let given = [("m", Quantity::kg(of.kg)), ("b", Quantity::kg(of.bottle_kg))];
    steps.step("Bottles", "n = m / b, rounded up", given, Quantity::count(of.bottles.into()), PACKS);
}

fn finish(steps: &mut Working, of: &Finish) {
    let given = [
        ("A", Quantity::m2(of.area_m2)),
        ("c", Quantity::count(of.coats.into())),
        ("r", Quantity::number(of.coverage_m2_l)),
    ];
    steps.step("Finish, with r in m²/l", "f = A × c / r", given, Quantity::litres(of.litres), COVERAGE);
    let given = [("f", Quantity::litres(of.litres)), ("v", Quantity::litres(of.can_litres))];
    steps.step("Cans", "n = f / v, rounded up", given, Quantity::count(of.cans.into()), PACKS);
}

fn fixings(steps: &mut Working, what: &'static str, of: &Fixings) {
    let given = [("c", Quantity::count(of.count.into())), ("w", Quantity::percent(of.spare_percent))];
    steps.step(what, "n = c × (1 + w / 100), rounded up", given, Quantity::count(of.gross.into()), OWN);
}
