//! Angles: the regular solids, whose faces are regular polygons that meet at angles every table of solids has (from
//! memory: Coxeter, Regular Polytopes), and the diagonals of rows Y of the project's handbook (plane geometry).

use scantling::cards::angles::{Inputs, Job, Outcome, Reach, Stand, solve};
use scantling::measure::{AngleReading, Figure, Reading};

#[track_caller]
fn near(id: &str, got: f64, want: f64, within: f64) {
    assert!((got - want).abs() <= within, "{id}: {got}, wanted {want}");
}

/// The faces around one face or one corner of a solid are the sides of a leaning box. They meet at the solid's dihedral
/// angle, and their edges lean in the face by what its polygon says: a triangle's by 30° from its height, a square's by
/// nothing, a pentagon's by 108° − 90°.
#[test]
fn the_regular_solids() {
    let sqrt_5 = 5.0_f64.sqrt();
    for (id, count, lean, dihedral, gauge) in [
        ("cube, around its base", "4", 0.0, 90.0, 0.0),
        ("tetrahedron, around its base", "3", 90.0 - (1.0_f64 / 3.0).acos().to_degrees(), 70.528_78, 30.0),
        ("octahedron, around a corner", "4", (1.0_f64 / 3.0).sqrt().asin().to_degrees(), 109.471_22, 30.0),
        ("dodecahedron, around its base", "5", (-1.0 / sqrt_5).acos().to_degrees() - 90.0, 116.565_05, 18.0),
        ("icosahedron, around a corner", "5", 52.622_63, 138.189_69, 30.0),
    ] {
        let inputs = Inputs {
            job: Job::Sides,
            sides: Figure::new(count),
            stand: Stand::Leaning,
            lean: AngleReading::from(lean.to_string().as_str()),
            side: Reading::mm("500"),
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap_or_else(|problems| panic!("{id}: {problems:?}"));
        let Outcome::Sides(sides) = &answer.outcome else { panic!("{id}: {answer:?}") };
        near(id, sides.dihedral_degrees, dihedral, 1e-4);
        near(id, sides.gauge_degrees, gauge, 1e-4);
        let scales = answer.scales.unwrap();
        near(id, scales.tilt_degrees, (180.0 - dihedral) / 2.0, 1e-4);
        near(id, scales.gauge_from_90_degrees, 90.0 - gauge, 1e-4);
        let reach = if dihedral < 90.0 { Reach::TiltBeyond } else { Reach::Within };
        assert_eq!(answer.reach, reach, "{id}");
    }
}

/// Rows Y-1 to Y-4: `sqrt(h² + d²)` and `atan(d / h)`.
#[test]
fn rows_y_diagonals_and_their_slope() {
    for (id, height, depth, diagonal, degrees) in [
        ("Y-1", "2100", "600", 2184.0330, 15.945),
        ("Y-2", "2360", "600", 2435.0770, 14.265),
        ("Y-3", "2260", "350", 2286.9412, 8.803),
        ("Y-4", "2285", "350", 2311.6498, 8.708),
    ] {
        let frame = Inputs {
            job: Job::RightAngle,
            width: Reading::mm(depth),
            height: Reading::mm(height),
            ..Inputs::default()
        };
        let Outcome::RightAngle(right) = solve(&frame).unwrap().outcome else { panic!("{id}") };
        near(id, right.diagonal_mm, diagonal, 0.000_05);
        let slope = Inputs { job: Job::Slope, rise: Reading::mm(depth), run: Reading::mm(height), ..Inputs::default() };
        let Outcome::Slope(slope) = solve(&slope).unwrap().outcome else { panic!("{id}") };
        near(id, slope.degrees, degrees, 0.000_5);
        near(id, slope.along_mm, diagonal, 0.000_05);
    }
}
