//! The published instances of packing rectangles into as few sheets as can be, and more by the rules that they were
//! drawn by.
//!
//! J. O. Berkey, P. Y. Wang: Two-dimensional finite bin-packing algorithms. Journal of the Operational Research Society 38
//! (1987) 423-429: classes 1 to 6. S. Martello, D. Vigo: Exact solution of the two-dimensional finite bin packing problem.
//! Management Science 44 (1998) 388-399: classes 7 to 10. The rules are from memory; they agree with the least and the
//! greatest measures of the published instances.

use super::random::Chance;
use scantling::measure::{Length, LengthError};
use scantling::sheets::{Cuts, Grain, Job, Layout, Part, Saw, SheetGrain, Stock};
use serde::Deserialize;
use serde_json::{Value, json};

/// Sheets of one size, and every part wanted once; whole numbers, no kerf and no trim.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
pub struct Instance {
    /// What it is called.
    pub id: String,
    /// Which of the ten classes.
    #[serde(default)]
    pub class: u8,
    /// Length and width of the sheets.
    pub sheet: [u32; 2],
    /// Length and width of every part.
    pub parts: Vec<[u32; 2]>,
}

/// The classes.
pub const CLASSES: std::ops::RangeInclusive<u8> = 1..=10;

/// So many parts there are in the published instances.
pub const SIZES: [usize; 5] = [20, 40, 60, 80, 100];

impl Instance {
    /// One more of a class.
    pub fn drawn(class: u8, count: usize, number: usize, chance: &mut Chance) -> Self {
        let side = match class {
            1 => 10,
            2 => 30,
            3 => 40,
            6 => 300,
            _ => 100,
        };
        let parts = (0..count).map(|_| part(class, side, chance)).collect();
        Self { id: format!("drawn{class:02}_n{count:03}_{number:02}"), class, sheet: [side, side], parts }
    }

    /// As a job, a millimetre for the unit. What may be turned has no grain.
    ///
    /// # Errors
    /// When a length cannot be held, which no length of 32 bits does.
    pub fn job(&self, turn: bool) -> Result<Job, LengthError> {
        let mm = |whole: u32| Length::mm(i64::from(whole), 1);
        let stock = "sheet".to_owned();
        let grain = if turn { Grain::Free } else { Grain::Along };
        let part = |(number, [length, width]): (usize, &[u32; 2])| {
            let (name, stock) = (number.to_string(), stock.clone());
            Ok(Part { name, length: mm(*length)?, width: mm(*width)?, quantity: 1, stock, grain })
        };
        let parts = self.parts.iter().enumerate().map(part).collect::<Result<_, LengthError>>()?;
        let [length, width] = self.sheet;
        Ok(Job {
            parts,
            stock: vec![Stock {
                name: stock,
                length: mm(length)?,
                width: mm(width)?,
                quantity: None,
                price: None,
                grain: SheetGrain::Along,
                offcut: false,
            }],
            saw: Saw {
                kerf: Length::ZERO,
                trim: Length::ZERO,
                cuts: Cuts::Any,
                longest_rip: None,
                least_offcut: Length::ZERO,
            },
        })
    }

    /// No layout has fewer sheets than the area of the parts takes.
    pub fn area_bound(&self) -> u64 {
        let area = |[length, width]: [u32; 2]| u64::from(length) * u64::from(width);
        self.parts.iter().map(|part| area(*part)).sum::<u64>().div_ceil(area(self.sheet).max(1))
    }

    /// A layout as one line of JSON; a part's `id` is its place in the instance, counted from nought.
    pub fn line(&self, layout: &Layout) -> Value {
        let number = |length: Length| {
            let mm = length.in_mm();
            if mm.denominator() == 1 { json!(mm.numerator()) } else { json!(length.as_mm()) }
        };
        let sheets: Vec<Value> = layout
            .sheets
            .iter()
            .map(|sheet| {
                let parts: Vec<Value> = sheet
                    .parts
                    .iter()
                    .map(|placed| {
                        let area = placed.area;
                        json!({
                            "id": placed.part, "x": number(area.x), "y": number(area.y),
                            "w": number(area.length), "h": number(area.width), "rotated": placed.turned,
                        })
                    })
                    .collect();
                json!({ "w": number(sheet.length), "h": number(sheet.width), "parts": parts })
            })
            .collect();
        json!({ "name": self.id, "kerf": 0, "sheets": sheets })
    }
}

fn part(class: u8, side: u32, chance: &mut Chance) -> [u32; 2] {
    let mut draw = |least: u32, most: u32| u32::try_from(chance.within(least.into(), most.into())).unwrap_or(least);
    let most = match class {
        1 | 2 => 10,
        3 | 4 => 35,
        5 | 6 => 100,
        _ => {
            // Seven in ten of the class's own kind, one in ten of each other.
            let own = u32::from(class.saturating_sub(7)) % 4;
            let drawn = draw(0, 9);
            let kind = if drawn < 7 { own } else { (own + drawn - 6) % 4 };
            let (long, half) = (side * 2 / 3, side / 2);
            return match kind {
                0 => [draw(long, side), draw(1, half)],
                1 => [draw(1, half), draw(long, side)],
                2 => [draw(half, side), draw(half, side)],
                _ => [draw(1, half), draw(1, half)],
            };
        }
    };
    [draw(1, most), draw(1, most)]
}

/// What is known of a published instance: a row of `reference.csv`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Known {
    /// Of which.
    pub id: String,
    /// No layout has fewer sheets: parts that may not be turned, and parts that may.
    pub bound: [u64; 2],
    /// The fewest sheets that anyone is known to have done it in, in the same order.
    pub known: [u64; 2],
}

impl Known {
    /// The rows of the file; a line that is none is left out, such as the first.
    pub fn read(csv: &str) -> Vec<Self> {
        let row = |line: &str| {
            let mut fields = line.trim_end().split(',');
            let id = fields.next()?.to_owned();
            let numbers: Vec<u64> = fields.map(str::parse).collect::<Result<_, _>>().ok()?;
            let [_, bound_fixed, bound_turned, known_fixed, known_turned] = numbers[..] else { return None };
            Some(Self { id, bound: [bound_fixed, bound_turned], known: [known_fixed, known_turned] })
        };
        csv.lines().filter_map(row).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_class_is_drawn_within_its_measures() {
        let mut chance = Chance::new(1);
        for (class, side, most) in [(1, 10, 10), (2, 30, 10), (3, 40, 35), (4, 100, 35), (5, 100, 100), (6, 300, 100)] {
            let drawn = Instance::drawn(class, 400, 1, &mut chance);
            assert_eq!(drawn.sheet, [side, side]);
            let sides = drawn.parts.iter().flatten().copied();
            assert_eq!((sides.clone().min(), sides.max()), (Some(1), Some(most)), "class {class}");
        }
        for class in 7..=10 {
            let drawn = Instance::drawn(class, 1000, 1, &mut chance);
            let wide = |[length, width]: &&[u32; 2]| *length >= 66 && *width <= 50;
            let large = |[length, width]: &&[u32; 2]| *length >= 50 && *width >= 50;
            let share = match class {
                7 => drawn.parts.iter().filter(wide).count(),
                9 => drawn.parts.iter().filter(large).count(),
                _ => 700,
            };
            assert!((650..760).contains(&share), "class {class}: {share}");
        }
    }

    #[test]
    fn the_table_of_what_is_known_is_read() {
        let table = "id,area,bound_fixed,bound_rotatable,known_fixed,known_rotatable\nc01_n020_01,7,8,7,8,7\n";
        let want = Known { id: "c01_n020_01".to_owned(), bound: [8, 7], known: [8, 7] };
        assert_eq!(Known::read(table), [want]);
    }
}
