//! Masses and centres of gravity, from the panels or from the scales.

use super::read::Read;
use serde::Serialize;

/// A part of the load on the wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum What {
    /// The cabinet without its doors, where its weight is known.
    Cabinet,
    /// Both sides.
    Sides,
    /// Top and bottom, between the sides.
    TopAndBottom,
    /// The back, between the sides.
    Back,
    /// The loose shelves.
    Shelves,
    /// The doors.
    Doors,
    /// What stands on the bottom and the shelves.
    Contents,
}

/// A centre of gravity.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct Centre {
    /// From the wall out, in millimetres.
    pub out_mm: f64,
    /// From the cabinet's bottom up, in millimetres.
    pub up_mm: f64,
}

/// A part, with its mass and centre.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Part {
    /// What it is.
    pub what: What,
    /// Its mass, in kilograms.
    pub kg: f64,
    /// Its centre with the doors shut.
    pub centre: Centre,
}

/// All that hangs on the wall.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Weighed {
    /// The parts.
    pub parts: Vec<Part>,
    /// The carcass alone, doors and loose shelves taken off, in kilograms.
    pub bare_kg: f64,
    /// The whole cabinet, empty, in kilograms.
    pub cabinet_kg: f64,
    /// What stands in it, in kilograms.
    pub contents_kg: f64,
    /// Cabinet and contents, in kilograms.
    pub total_kg: f64,
    /// The centre of all of it with the doors shut.
    pub shut: Centre,
    /// The same with the doors at a right angle; none without doors.
    pub open: Option<Centre>,
}

impl Weighed {
    /// The centre that pulls most.
    pub fn worst(&self) -> Centre {
        self.open.filter(|open| open.out_mm > self.shut.out_mm).unwrap_or(self.shut)
    }
}

/// `Σ m·x / Σ m`.
fn centre_of(parts: &[Part], total_kg: f64) -> Centre {
    let mean = |of: fn(&Part) -> f64| parts.iter().map(|part| part.kg * of(part)).sum::<f64>() / total_kg;
    Centre { out_mm: mean(|part| part.centre.out_mm), up_mm: mean(|part| part.centre.up_mm) }
}

/// Masses and centres of everything.
pub(super) fn weighed(read: &Read) -> Weighed {
    let (width, height, depth) = (read.width.as_mm(), read.height.as_mm(), read.depth.as_mm());
    let off = read.stands_off.as_mm();
    let middle = |out_mm: f64| Centre { out_mm: off + out_mm, up_mm: height / 2.0 };

    let leaves = read.doors.map_or(0.0, |(count, _)| f64::from(count));
    let leaf_width = if leaves > 0.0 { width / leaves } else { 0.0 };
    let doors = read.doors.map(|(_, board)| Part {
        what: What::Doors,
        kg: board.kg(width, height),
        centre: middle(depth + board.thickness_mm / 2.0),
    });
    let doors_kg = doors.map_or(0.0, |doors| doors.kg);

    let mut parts = Vec::new();
    let (bare_kg, inside) = match &read.panels {
        Some(panels) => {
            let (t, back) = (panels.board.thickness_mm, panels.back.thickness_mm);
            let (inner_width, inner_height) = (width - 2.0 * t, height - 2.0 * t);
            let front_of_back = panels.inset_mm + back;
            let shelf_depth = depth - front_of_back;
            let inside = Inside { board: t, height: inner_height, out_mm: off + front_of_back + shelf_depth / 2.0 };
            let shelf_kg = panels.board.kg(inner_width, shelf_depth);
            let of = |what, kg, centre| Part { what, kg, centre };
            parts.extend([
                of(What::Sides, 2.0 * panels.board.kg(height, depth), middle(depth / 2.0)),
                of(What::TopAndBottom, 2.0 * panels.board.kg(inner_width, depth), middle(depth / 2.0)),
                of(What::Back, panels.back.kg(inner_width, inner_height), middle(panels.inset_mm + back / 2.0)),
            ]);
            let bare_kg = parts.iter().map(|part| part.kg).sum();
            if read.shelves > 0 {
                // Evenly spread shelves have their centre at mid-height.
                let centre = Centre { out_mm: inside.out_mm, up_mm: height / 2.0 };
                parts.push(of(What::Shelves, f64::from(read.shelves) * shelf_kg, centre));
            }
            (bare_kg, inside)
        }
        None => {
            let bare_kg = read.known_kg - doors_kg;
            parts.push(Part { what: What::Cabinet, kg: bare_kg, centre: middle(depth / 2.0) });
            (bare_kg, Inside { board: 0.0, height, out_mm: off + depth / 2.0 })
        }
    };
    parts.extend(doors);
    let cabinet_kg = parts.iter().map(|part| part.kg).sum::<f64>();
    let contents_kg = read.levels_kg.iter().sum::<f64>();
    if contents_kg > 0.0 {
        let centre = Centre { out_mm: inside.out_mm, up_mm: inside.contents_up_mm(&read.levels_kg, contents_kg) };
        parts.push(Part { what: What::Contents, kg: contents_kg, centre });
    }
    let total_kg = cabinet_kg + contents_kg;
    let opened = |part: &Part| match part.what {
        What::Doors => Part { centre: middle(depth + leaf_width / 2.0), ..*part },
        _ => *part,
    };
    let open = doors.map(|_| centre_of(&parts.iter().map(opened).collect::<Vec<_>>(), total_kg));
    Weighed { bare_kg, cabinet_kg, contents_kg, total_kg, shut: centre_of(&parts, total_kg), open, parts }
}

/// The inside of the cabinet.
struct Inside {
    /// Thickness of bottom and shelves.
    board: f64,
    /// Between bottom and top.
    height: f64,
    /// Middle of the shelves, from the wall.
    out_mm: f64,
}

impl Inside {
    /// How high the contents' centre is: on each level half way up its clear height.
    fn contents_up_mm(&self, levels_kg: &[f64], contents_kg: f64) -> f64 {
        let count = levels_kg.iter().map(|_| 1.0).sum::<f64>();
        let clear = (self.height - (count - 1.0) * self.board) / count;
        let (mut up, mut moment) = (self.board, 0.0);
        for kg in levels_kg {
            moment += kg * (up + clear / 2.0);
            up += clear + self.board;
        }
        moment / contents_kg
    }
}
