//! Rows H: overlay, plate, doors and hinges, all exact.

use scantling::cards::cup_hinge::{Answer, Doors, Find, Inputs, Mounting, Wish, solve};
use scantling::measure::{Length, Reading};
use scantling::stock::materials::Choice;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

/// The overlay that an arm, a cup edge and a plate give.
fn overlay(mounting: Mounting, constant: &str, edge: &str, plate: &str) -> Answer {
    solved(&Inputs {
        find: Find::Overlay,
        mounting,
        constant: Reading::mm(constant),
        cup_edge: Reading::mm(edge),
        plate_height: Reading::mm(plate),
        partition: Reading::mm("18"),
        ..Inputs::default()
    })
}

#[test]
fn h1_to_h5_the_overlay_formula() {
    assert_eq!(overlay(Mounting::Full, "15", "4", "2").overlay, mm("17"), "H-1");
    let h2 = solved(&Inputs {
        side: Reading::mm("18"),
        wish: Wish::Gap,
        reveal: Reading::mm("1.5"),
        constant: Reading::mm("15"),
        cup_edge: Reading::mm("4"),
        ..Inputs::default()
    });
    assert_eq!((h2.overlay, h2.plate_height), (mm("16.5"), mm("2.5")), "H-2");
    let nearest: Vec<_> = h2.plates.iter().filter(|plate| plate.nearest).collect();
    let got: Vec<_> = nearest.iter().map(|plate| (plate.height, plate.overlay, plate.gap)).collect();
    assert_eq!(got, [(mm("2"), mm("17"), mm("1")), (mm("3"), mm("16"), mm("2"))], "H-2");
    assert_eq!(overlay(Mounting::Full, "13", "5", "0").overlay, mm("18"), "H-3");
    let h4 = overlay(Mounting::Half, "5.5", "4", "2");
    assert_eq!((h4.overlay, h4.gap), (mm("7.5"), mm("3")), "H-4");
    assert_eq!(overlay(Mounting::Inset, "-4", "4", "2").gap, mm("2"), "H-5");
}

#[test]
fn h6_to_h8_door_sizes() {
    let width = |inputs: &Inputs| solved(inputs).door_width.nominal();
    let h6 = Inputs {
        doors: Doors::Two,
        opening_width: Reading::mm("864"),
        side: Reading::mm("18"),
        reveal: Reading::mm("1.5"),
        gap: Reading::mm("3"),
        ..Inputs::default()
    };
    assert_eq!(width(&h6), mm("447"), "H-6");
    let inset = Inputs { mounting: Mounting::Inset, gap: Reading::mm("2"), ..h6 };
    let h7 = Inputs { doors: Doors::One, opening_width: Reading::mm("564"), ..inset.clone() };
    assert_eq!(width(&h7), mm("560"), "H-7");
    assert_eq!(width(&Inputs { opening_width: Reading::mm("900"), ..inset }), mm("447"), "H-8");
}

#[test]
fn h9_cup_and_plate_line() {
    let h9 = solved(&Inputs { cup_edge: Reading::mm("5"), ..Inputs::default() });
    assert_eq!((h9.cup_centre, h9.cup_far_edge, h9.plate_line), (mm("22.5"), mm("40"), mm("37")), "H-9");
    // The table of 7: cup centres for edges of 3, 4, 6 mm.
    for (edge, centre) in [("3", "20.5"), ("4", "21.5"), ("6", "23.5")] {
        let answer = solved(&Inputs { cup_edge: Reading::mm(edge), ..Inputs::default() });
        assert_eq!(answer.cup_centre, mm(centre), "cup edge {edge}");
    }
}

#[test]
fn h10_to_h12_how_many_hinges() {
    for (id, [height, width, thickness], material, weight, hinges) in [
        ("H-10", ["1180", "447", "18"], "mdf", Some(6.836), 3),
        ("H-11", ["2100", "597", "19"], "particleboard_p2", Some(15.483), 5),
        // The row's 660 kg/m³ is in no table line, so its weight is given.
        ("H-12", ["700", "397", "16"], "particleboard_p2", None, 2),
    ] {
        let answer = solved(&Inputs {
            mounting: Mounting::Inset,
            gap: Reading::mm("0"),
            doors: Doors::One,
            opening_height: Reading::mm(height),
            opening_width: Reading::mm(width),
            door_thickness: Reading::mm(thickness),
            material: Choice::find(material).unwrap(),
            door_weight: if weight.is_some() { "".into() } else { "2.935".into() },
            ..Inputs::default()
        });
        assert!((answer.door_weight_kg - weight.unwrap_or(2.935)).abs() <= 0.000_5, "{id}: {}", answer.door_weight_kg);
        assert_eq!(answer.hinges.len(), hinges, "{id}");
    }
}
