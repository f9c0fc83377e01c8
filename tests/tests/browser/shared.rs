//! The scenarios that both shells share.

use scantling_tests::fault::Outcome;
use scantling_tests::play::play;
use scantling_tests::scenarios::card::whole_way;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::scenarios::{settings, tape};
use scantling_tests::shell::Kind;

fn card(slug: &str) -> Outcome {
    let case = CASES.iter().find(|case| case.slug == slug).unwrap();
    play(slug, Kind::Browser, async |shell| whole_way(shell, case).await)
}

#[test]
fn convert() -> Outcome {
    card("convert")
}

#[test]
fn cabinet() -> Outcome {
    card("cabinet")
}

#[test]
fn back_panel() -> Outcome {
    card("back-panel")
}

#[test]
fn wood_movement() -> Outcome {
    card("wood-movement")
}

#[test]
fn sheet_layout() -> Outcome {
    card("sheet-layout")
}

#[test]
fn bevelled_strips() -> Outcome {
    card("bevelled-strips")
}

#[test]
fn angles() -> Outcome {
    card("angles")
}

#[test]
fn groove() -> Outcome {
    card("groove")
}

#[test]
fn shelf() -> Outcome {
    card("shelf")
}

#[test]
fn clothes_rail() -> Outcome {
    card("clothes-rail")
}

#[test]
fn spacing() -> Outcome {
    card("spacing")
}

#[test]
fn hole_rows() -> Outcome {
    card("hole-rows")
}

#[test]
fn cup_hinge() -> Outcome {
    card("cup-hinge")
}

#[test]
fn joints() -> Outcome {
    card("joints")
}

#[test]
fn wall_cleat() -> Outcome {
    card("wall-cleat")
}

#[test]
fn hanging() -> Outcome {
    card("hanging")
}

#[test]
fn materials() -> Outcome {
    card("materials")
}

#[test]
fn settings_are_there_after_a_restart() -> Outcome {
    play("settings", Kind::Browser, async |shell| settings::are_kept(shell).await)
}

#[test]
fn every_card_has_its_case() {
    let slugs: Vec<&str> = CASES.iter().map(|case| case.slug).collect();
    assert_eq!(slugs, scantling::cards::CARDS.iter().map(|card| card.slug).collect::<Vec<_>>());
}

#[test]
fn the_tape_carries_values() -> Outcome {
    play("tape", Kind::Browser, async |shell| tape::carries_values(shell).await)
}
