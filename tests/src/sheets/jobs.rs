//! Random jobs of every kind: in millimetres, in inches and both at once, tiny and huge, with parts that nothing can be
//! cut for and sheets that run out.

use super::random::Chance;
use scantling::measure::{Length, LengthError, Ratio};
use scantling::sheets::{Cuts, Grain, Job, Part, Saw, SheetGrain, Stock};

/// What the lengths of a job are whole numbers of.
#[derive(Clone, Copy, Debug)]
enum Marks {
    Mm,
    TenthMm,
    Inch64,
    /// Either of the two above, as each length comes.
    Both,
    /// Thirds and sevenths too, which no tape has.
    Odd,
}

/// A job by its seed, the same on every machine.
///
/// # Errors
/// When a length cannot be held; none of these is so long.
pub fn job(seed: u64) -> Result<Job, LengthError> {
    let mut chance = Chance::new(seed);
    let marks = chance.one_of(Marks::Mm, &[Marks::Mm, Marks::TenthMm, Marks::Inch64, Marks::Both, Marks::Odd]);
    // In millimetres: the longer side of an ordinary sheet, of a toy's, of a hall's.
    let large = chance.one_of(2440, &[2440, 2440, 1220, 600, 100, 30, 20_000]);
    // What has no common unit with a hall is rounded, so that no layout of it is exact.
    let large = if matches!(marks, Marks::Odd) { large.min(2440) } else { large };
    let mut maker = Maker { chance, marks, large };
    let saw = maker.saw()?;
    let mut stock = Vec::new();
    for material in 0..maker.chance.within(1, 3) {
        for _ in 0..maker.chance.one_of(1, &[1, 2, 3]) {
            stock.push(maker.stock(&name(material))?);
        }
    }
    let mut parts: Vec<Part> = Vec::new();
    let most = maker.chance.within(1, 12);
    for number in 0..most {
        let part = maker.part(number, &stock, &parts, &saw)?;
        parts.push(part);
    }
    Ok(Job { parts, stock, saw })
}

fn name(material: i64) -> String {
    format!("material {material}")
}

struct Maker {
    chance: Chance,
    marks: Marks,
    large: i64,
}

impl Maker {
    /// About so many millimetres, on a mark; never nothing.
    fn about(&mut self, mm: i64) -> Result<Length, LengthError> {
        let marks = match self.marks {
            Marks::Both => self.chance.one_of(Marks::TenthMm, &[Marks::Inch64]),
            marks => marks,
        };
        let inches_64 = |mm: i64| mm.saturating_mul(320) / 127;
        match marks {
            Marks::Mm => Length::mm(mm.max(1), 1),
            Marks::TenthMm | Marks::Both => Length::mm(mm.saturating_mul(10) + self.chance.within(1, 9), 10),
            Marks::Inch64 => Length::inches(inches_64(mm).max(1), 64),
            Marks::Odd => match self.chance.within(0, 2) {
                0 => Length::mm(mm.saturating_mul(3) + 1, 3),
                1 => Length::mm(mm.saturating_mul(7) + 2, 7),
                _ => Length::inches(inches_64(mm).max(1), 63),
            },
        }
    }

    /// So many to so many hundredths of the longer side of a sheet.
    fn share(&mut self, least: i64, most: i64) -> Result<Length, LengthError> {
        let per_cent = self.chance.within(least, most);
        let fine = self.chance.within(0, self.large / 100);
        self.about(self.large / 100 * per_cent + fine)
    }

    fn saw(&mut self) -> Result<Saw, LengthError> {
        let small = self.large / 100;
        let kerf = match self.chance.within(0, 5) {
            0 | 1 => Length::ZERO,
            2 => Length::mm(32, 10)?,
            3 => Length::inches(1, 8)?,
            4 => self.about(small)?,
            _ => Length::mm(1, 10)?,
        };
        let trim = match self.chance.within(0, 5) {
            0..=2 => Length::ZERO,
            3 => Length::mm(1, 1)?,
            4 => Length::inches(1, 4)?,
            _ => self.about(small)?,
        };
        let longest_rip = if self.chance.per_cent(20) { Some(self.share(20, 120)?) } else { None };
        let least_offcut = if self.chance.per_cent(20) { Length::ZERO } else { self.share(2, 30)? };
        let cuts = self.chance.one_of(Cuts::Any, &[Cuts::Any, Cuts::Two, Cuts::Three]);
        Ok(Saw { kerf, trim, cuts, longest_rip, least_offcut })
    }

    fn stock(&mut self, name: &str) -> Result<Stock, LengthError> {
        let offcut = self.chance.per_cent(30);
        let (length, width) = if offcut {
            (self.share(10, 80)?, self.share(10, 50)?)
        } else {
            let long = self.about(self.large)?;
            let short = if self.chance.per_cent(20) { long } else { self.share(30, 90)? };
            if self.chance.per_cent(20) { (short, long) } else { (long, short) }
        };
        let quantity = match (offcut, self.chance.within(0, 3)) {
            (true, count) => Some(u32::try_from(count).unwrap_or(0)),
            (false, 0) => Some(u32::try_from(self.chance.within(0, 4)).unwrap_or(0)),
            (false, _) => None,
        };
        let price = if self.chance.per_cent(60) { Some(Ratio::new(self.chance.within(0, 9_999), 100)?) } else { None };
        let grain = self.chance.one_of(SheetGrain::Along, SheetGrain::ALL);
        Ok(Stock { name: name.to_owned(), length, width, quantity, price, grain, offcut })
    }

    fn part(&mut self, number: i64, stock: &[Stock], others: &[Part], saw: &Saw) -> Result<Part, LengthError> {
        let Some(of) = stock.get(usize::try_from(self.chance.within(0, stock.len() as i64 - 1)).unwrap_or(0)) else {
            return Err(LengthError::NoNumber);
        };
        let mut side = |whole: Length, before: Option<Length>| -> Result<Length, LengthError> {
            match (self.chance.within(0, 19), before) {
                // All of the sheet, what the trim leaves of it, or half of it: to the last mark.
                (0, _) => Ok(whole),
                (1, _) => at_least_something(whole.minus(saw.trim.times(2, 1)?)?, whole),
                (2, _) => at_least_something(whole.minus(saw.kerf)?.times(1, 2)?, whole),
                (3, _) if self.chance.per_cent(30) => self.share(80, 130),
                (4..=8, Some(before)) => Ok(before),
                (9 | 10, _) => self.share(40, 75),
                _ => self.share(1, 45),
            }
        };
        let earlier = others.last();
        let length = side(of.length, earlier.map(|part| part.length))?;
        let width = side(of.width, earlier.map(|part| part.width))?;
        let quantity = if self.chance.per_cent(70) { 1 } else { self.chance.within(2, 6) };
        let stock = if self.chance.per_cent(3) { "nowhere to be had".to_owned() } else { of.name.clone() };
        let grain = self.chance.one_of(Grain::Along, Grain::ALL);
        let quantity = u32::try_from(quantity).unwrap_or(1);
        Ok(Part { name: format!("part {number}"), length, width, quantity, stock, grain })
    }
}

fn at_least_something(length: Length, otherwise: Length) -> Result<Length, LengthError> {
    Ok(if length.is_positive() { length } else { otherwise })
}
