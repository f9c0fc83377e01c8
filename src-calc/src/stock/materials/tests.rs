use super::{Choice, Family, Kind, Values};

fn families() -> impl Iterator<Item = &'static Family> + Clone {
    Choice::ALL.iter().filter_map(|choice| choice.family())
}

fn find(id: &str) -> &'static Family {
    Choice::find(id).and_then(Choice::family).unwrap_or_else(|| panic!("no {id}"))
}

#[test]
fn ids_are_found_and_each_stands_once() {
    for choice in Choice::ALL {
        assert_eq!(Choice::find(choice.id()), Some(*choice));
        assert_eq!(Choice::ALL.iter().filter(|other| other.id() == choice.id()).count(), 1, "{}", choice.id());
    }
    assert_eq!(Choice::find("unobtainium"), None);
    let oak = Choice::find("oak_european").unwrap();
    assert_eq!(serde_json::to_string(&oak).unwrap(), r#""oak_european""#);
    assert_eq!(serde_json::from_str::<Choice>(r#""oak_european""#).unwrap(), oak);
    assert!(serde_json::from_str::<Choice>(r#""oak""#).is_err());
}

#[test]
fn values_are_those_of_wood() {
    for family in families() {
        for row in family.rows() {
            let id = family.id;
            assert!((1000.0..20_000.0).contains(&row.along.stiffness_mpa), "{id}");
            assert!((300.0..1100.0).contains(&row.density_kg_m3), "{id}");
            assert!(row.along.strength_mpa.is_some_and(|mpa| (9.0..120.0).contains(&mpa)), "{id}");
            assert!(row.across.is_none_or(|across| across.stiffness_mpa <= row.along.stiffness_mpa), "{id}");
        }
        for pair in family.rows().windows(2) {
            let [thin, thick] = pair else { continue };
            assert!(thin.thickness_mm.unwrap().1 <= thick.thickness_mm.unwrap().0, "{}", family.id);
        }
    }
    assert_eq!(families().map(|family| family.rows().len()).sum::<usize>(), 121);
}

/// The Wood Handbook prints stiffness to 10 000 psi, strength to 100 psi, specific gravity to 0.01: a slip of a digit in
/// our metric copies seldom lands on such a step again.
#[test]
fn species_stand_on_the_steps_of_their_table() {
    let on_step = |value: f64, step: f64, rounding: f64| {
        let nearest = (value / step).round() * step;
        (value - nearest).abs() <= rounding
    };
    let species = families().filter(|family| family.rows()[0].source.cite.contains("table 5-3b"));
    assert_eq!(species.clone().count(), 51);
    for family in species {
        let [row] = family.rows() else { panic!("{} has one row", family.id) };
        assert!(on_step(row.along.stiffness_mpa, 68.947_573, 5.01), "{} stiffness", family.id);
        assert!(on_step(row.along.strength_mpa.unwrap(), 0.689_475_73, 0.051), "{} strength", family.id);
        assert!(on_step(row.density_kg_m3, 11.2, 0.51), "{} density", family.id);
    }
}

/// The plies' own stiffness, summed about the middle: outer veneers 1.1 mm after sanding, the others 1.4 mm.
#[test]
fn plywood_agrees_with_the_sum_of_its_plies() {
    for (id, veneer_mpa, veneer_strength) in [("plywood_birch", 17_500.0, 70.0), ("plywood_conifer", 13_000.0, 40.0)] {
        for row in find(id).rows() {
            let plies: u32 = row.label.split(' ').nth(2).unwrap().parse().unwrap();
            let thickness = 2.2 + f64::from(plies - 2) * 1.4;
            let mut from = -thickness / 2.0;
            let (mut along, mut all) = (0.0, 0.0);
            for ply in 0..plies {
                let to = from + if ply == 0 || ply == plies - 1 { 1.1 } else { 1.4 };
                let share = (to * to * to - from * from * from) / 3.0;
                all += share;
                along += if ply % 2 == 0 { share } else { 0.0 };
                from = to;
            }
            let across = 1.0 - along / all;
            let near = |got: f64, want: f64, within: f64| {
                assert!((got - want).abs() <= within, "{id} {}: {got} and {want}", row.label);
            };
            near(row.along.stiffness_mpa, veneer_mpa * along / all, 0.51);
            near(row.across.unwrap().stiffness_mpa, veneer_mpa * across, 0.51);
            near(row.along.strength_mpa.unwrap(), veneer_strength * along / all, 0.051);
            let crosswise = veneer_strength * across * thickness / (thickness - 2.2);
            near(row.across.unwrap().strength_mpa.unwrap(), crosswise, 0.051);
        }
    }
}

#[test]
fn divisors_follow_from_the_code_s_factors() {
    // 1.5 · γM / kmod, permanent load, service class 1 (NTC 2018 transcriptions; EN 1995-1-1).
    for (kind, gamma, kmod) in [
        (Kind::Solid, 1.3, 0.60),
        (Kind::Plywood, 1.2, 0.60),
        (Kind::Osb, 1.2, 0.40),
        (Kind::Particleboard, 1.3, 0.30),
        (Kind::Hardboard, 1.3, 0.30),
        (Kind::Mdf, 1.3, 0.20),
    ] {
        for values in [Values::Design, Values::Minimum] {
            assert!((kind.divisor(values) - 1.5 * gamma / kmod).abs() < 1e-9, "{kind:?}");
        }
    }
}
