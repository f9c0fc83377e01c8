//! Both parts and all that is cut into them as polygons of the `geo` library: what the answer says stays inside does,
//! with the skin, and what it says breaks out does. What it says is left is not used.

use geo::{AffineOps, AffineTransform, Area, BooleanOps, Contains, Coord, Intersects, Point, Polygon, Rect, coord};
use nalgebra::{Point2, Rotation2};
use proptest::prelude::*;
use proptest::sample::select;
use scantling::cards::joints::{Answer, Biscuit, Inputs, Kind, Meeting, Spread, Stays, solve};
use scantling::measure::Reading;

/// mm; a hair for what is worked out in doubles, such as a third of a tenth.
const HAIR: f64 = 1e-7;
/// mm²; polygon clipping snaps to a grid of about a billionth of the shape.
const AREA: f64 = 0.01;
/// mm; the other sizes of both parts, which are no limit.
const WIDE: f64 = 900.0;

fn tenth(tenths: i64) -> Reading {
    Reading::mm(&format!("{tenths}/10"))
}

fn polygon(left: f64, bottom: f64, right: f64, top: f64) -> Polygon {
    Rect::new(coord! { x: left, y: bottom }, coord! { x: right, y: top }).to_polygon()
}

/// The section through a joint. The parts touch at x = 0, the other part to the left; y from the end of the face part.
struct Section {
    edge_part: Polygon,
    other_part: Polygon,
    in_edge: Polygon,
    in_other: Polygon,
}

/// Both parts with a skin taken off, but not where they touch; a through hole's way out is no breaking out either.
fn parts(inputs: &Inputs, answer: &Answer, skin: f64) -> [Polygon; 2] {
    let mm = |reading: &Reading| reading.length().unwrap().as_mm();
    let face = inputs.meeting == Meeting::Face;
    let low = if face { mm(&inputs.from_end) } else { 0.0 };
    let high = low + mm(&inputs.edge_thickness);
    let edge_part = polygon(0.0, low + skin, WIDE, high - skin);
    let other = if face {
        let outer = -mm(&inputs.face_thickness);
        polygon(if answer.fixing.through { outer } else { outer + skin }, skin, 0.0, WIDE)
    } else {
        polygon(-WIDE, low + skin, 0.0, high - skin)
    };
    [edge_part, other]
}

impl Section {
    fn new(inputs: &Inputs, answer: &Answer) -> Self {
        let [edge_part, other_part] = parts(inputs, answer, 0.0);
        let fixing = &answer.fixing;
        let middle = answer.line_on_face.unwrap_or(answer.line).as_mm();
        let (half, half_other) = (fixing.across.as_mm() / 2.0, fixing.across_other.as_mm() / 2.0);
        Self {
            edge_part,
            other_part,
            in_edge: polygon(0.0, middle - half, fixing.in_edge.as_mm(), middle + half),
            in_other: polygon(-fixing.in_other.as_mm(), middle - half_other, 0.0, middle + half_other),
        }
    }

    /// What of both cuts lies outside of both parts.
    fn outside(&self) -> f64 {
        let [edge, other] = [self.in_edge.difference(&self.edge_part), self.in_other.difference(&self.other_part)];
        edge.unsigned_area() + other.unsigned_area()
    }
}

/// Whether a cut keeps within a part.
fn keeps_within(cut: &Polygon, part: &Polygon) -> bool {
    cut.exterior().points().all(|point: Point| part.contains(&point) || part.intersects(&point))
}

/// The edge seen from its end: every cut along the joint, as wide as it is at the surface.
fn along(answer: &Answer) -> Vec<Polygon> {
    let half = answer.fixing.along.as_mm() / 2.0;
    let one = |mark: &scantling::measure::Length| polygon(mark.as_mm() - half, 0.0, mark.as_mm() + half, 10.0);
    answer.marks.iter().map(one).collect()
}

fn near(got: f64, want: f64, what: &str) -> Result<(), TestCaseError> {
    prop_assert!((got - want).abs() < 1e-5, "{}: got {}, want {}", what, got, want);
    Ok(())
}

proptest! {
    #[test]
    fn all_stays_inside_with_the_skin_or_the_answer_says_so(
        kind in select(&[Kind::Dowel, Kind::LooseTenon, Kind::Biscuit, Kind::ConnectingScrew][..]),
        biscuit in select(Biscuit::ALL),
        on_edge in any::<bool>(),
        boards in (80_i64..300, 80_i64..300),
        line in proptest::option::of(20_i64..280),
        from_end in 0_i64..300,
        skin in 1_i64..50,
        depth in proptest::option::of(30_i64..140),
        across in 20_i64..120,
        length in (3000_i64..15_000, 300_i64..500),
    ) {
        let inputs = Inputs {
            kind,
            biscuit,
            meeting: if on_edge && kind != Kind::ConnectingScrew { Meeting::Edge } else { Meeting::Face },
            edge_thickness: tenth(boards.0),
            face_thickness: tenth(boards.1),
            line: line.map(tenth).unwrap_or_default(),
            from_end: tenth(from_end),
            skin: tenth(skin),
            face_depth: depth.map(tenth).unwrap_or_default(),
            dowel_diameter: tenth(across),
            tenon_thickness: tenth(across),
            dowel_length: tenth(length.1),
            tenon_length: tenth(length.1),
            core: tenth(across),
            shank: tenth(across + 20),
            length: tenth(length.0),
            end_distance: Reading::default(),
            spacing: Reading::default(),
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        let section = Section::new(&inputs, &answer);
        let skin = skin as f64 / 10.0;
        let [edge_part, other_part] = parts(&inputs, &answer, skin - HAIR);
        let with_skin = keeps_within(&section.in_edge, &edge_part) && keeps_within(&section.in_other, &other_part);
        match answer.stays {
            Stays::Inside => prop_assert!(with_skin && section.outside() < AREA, "{:?}", answer),
            Stays::Thin => {
                let [edge_part, other_part] = parts(&inputs, &answer, skin + HAIR);
                let kept = keeps_within(&section.in_edge, &edge_part) && keeps_within(&section.in_other, &other_part);
                prop_assert!(!kept && section.outside() < AREA, "{:?}", answer);
            }
            Stays::BreaksOut => {
                let [edge_part, other_part] = parts(&inputs, &answer, HAIR);
                let kept = keeps_within(&section.in_edge, &edge_part) && keeps_within(&section.in_other, &other_part);
                prop_assert!(!kept, "{:?}", answer);
            }
        }
        // What is put in has its length of room, and the room for glue.
        let fixing = &answer.fixing;
        let whole = match kind {
            Kind::Dowel | Kind::LooseTenon => length.1 as f64 / 10.0,
            Kind::Biscuit => biscuit.size_mm().1 as f64,
            _ => answer.screw.unwrap().length.as_mm(),
        };
        near(fixing.in_edge.as_mm() + fixing.in_other.as_mm(), whole + 2.0, "room")?;
    }

    #[test]
    fn joints_lie_apart_on_the_edge_and_meet_their_mates(
        kind in select(Kind::ALL),
        spread in select(Spread::ALL),
        length in 3000_i64..20_000,
        ends in (400_i64..900, 400_i64..900),
    ) {
        let inputs = Inputs {
            kind,
            spread,
            length: tenth(length),
            end_distance: tenth(ends.0),
            other_end: tenth(ends.1),
            spacing: Reading::default(),
            edge_thickness: Reading::mm("18"),
            face_thickness: Reading::mm("18"),
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        let length = length as f64 / 10.0;
        let edge = polygon(0.0, 0.0, length, 10.0);
        let cuts = along(&answer);
        for (index, cut) in cuts.iter().enumerate() {
            prop_assert!(edge.contains(cut), "{} runs out of the end", index);
            for other in &cuts[index + 1..] {
                prop_assert!(!cut.intersects(other), "{} runs into another", index);
            }
        }
        // The mating part lies beside this one like the other page of a book: its marks are this one's image.
        let centre = Coord { x: length / 2.0, y: 0.0 };
        let book = AffineTransform::identity().scaled(-1.0, 1.0, centre);
        let mut image: Vec<f64> =
            answer.marks.iter().map(|mark| Point::new(mark.as_mm(), 0.0).affine_transform(&book).x()).collect();
        image.sort_by(f64::total_cmp);
        prop_assert_eq!(image.len(), answer.mirrored.len());
        for (got, want) in answer.mirrored.iter().zip(&image) {
            near(got.as_mm(), *want, "mirrored")?;
        }
        near(answer.marks[0].as_mm(), ends.0 as f64 / 10.0, "first")?;
        let last = length - answer.marks.last().unwrap().as_mm();
        match spread {
            Spread::Even => near(last, ends.1 as f64 / 10.0, "last")?,
            Spread::Steps => prop_assert!(last >= ends.1 as f64 / 10.0 - HAIR),
        }
        for pair in answer.marks.windows(2) {
            near(pair[1].as_mm() - pair[0].as_mm(), answer.spacing.unwrap().as_mm(), "spacing")?;
        }
    }

    #[test]
    fn a_pocket_screw_ends_where_a_turn_of_15_degrees_takes_it(
        boards in (120_i64..300, 120_i64..300),
        shoulder in 50_i64..200,
        screw in 210_i64..600,
        skin in 1_i64..50,
    ) {
        let inputs = Inputs {
            kind: Kind::PocketScrew,
            edge_thickness: tenth(boards.0),
            face_thickness: tenth(boards.1),
            shoulder: tenth(shoulder),
            screw_length: tenth(screw),
            skin: tenth(skin),
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        // The screw lies along the x axis with its shoulder at the origin, is pushed to where it comes out, and turned.
        let turn = Rotation2::new(15_f64.to_radians());
        let tip_of = |length: f64| turn * Point2::new(length - shoulder as f64 / 10.0, 0.0);
        let tip = tip_of(screw as f64 / 10.0);
        near(answer.fixing.in_other.as_mm(), tip.x, "depth of the point")?;
        let (face, skin) = (boards.1 as f64 / 10.0, skin as f64 / 10.0);
        // Straight into the face: positive x is depth here.
        let reaches = |least: f64| polygon(0.0, -WIDE, face - least, WIDE).contains(&Point::new(tip.x, tip.y));
        match answer.stays {
            Stays::Inside => prop_assert!(reaches(skin - HAIR)),
            Stays::Thin => prop_assert!(reaches(0.0)),
            Stays::BreaksOut => prop_assert!(!reaches(HAIR), "{:?}", answer),
        }
        let longest = tip_of(answer.screw.unwrap().longest.unwrap().as_mm());
        near(face - longest.x, skin, "skin at the longest")?;
    }
}
