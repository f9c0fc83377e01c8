//! Lines of a list: sizes and a number with `×` between.

use crate::measure::{Figure, FigureKind, Length, LengthError, Quantity, Ratio, Reading};
use crate::problem::{Problem, Problems};

/// The most lines of a list that are read.
const MOST_LINES: usize = 60;
/// The most of anything.
const MOST: u32 = 100_000;

/// What stands between the numbers of a line. No unit of length has an `x`.
const BETWEEN: [char; 5] = ['×', 'x', 'X', '*', '·'];

/// Sizes, and how many of them.
pub(super) type Sized<const N: usize> = ([Length; N], u32);

/// Something of the maker's own list.
pub(super) struct Other {
    pub(super) count: u32,
    pub(super) price: Ratio,
    /// The price as it was typed.
    pub(super) typed: String,
    pub(super) name: String,
}

/// Whether a list has nothing in it.
pub(super) fn is_blank(lines: &[Reading]) -> bool {
    lines.iter().all(Reading::is_blank)
}

/// Each line that is not blank, read; a problem names the line.
fn each<T>(
    problems: &mut Problems,
    field: &str,
    lines: &[Reading],
    read: impl Fn(&Reading) -> Result<T, Problem>,
) -> Vec<T> {
    if lines.len() > MOST_LINES {
        let most = Quantity::count(60);
        problems.add(field, Problem::TooLarge { most, why: "a longer list is better taken in parts" });
    }
    let filled = lines.iter().take(MOST_LINES).enumerate().filter(|(_, line)| !line.is_blank());
    filled.filter_map(|(at, line)| problems.check(format!("{field}.{at}"), read(line))).collect()
}

fn count(typed: &str) -> Result<u32, Problem> {
    // Nearly every number is plain digits; what is not, such as 6/2, is read as any figure is.
    let count = match typed.trim().parse::<u32>() {
        Ok(count) => Ok(count),
        Err(_) => u32::try_from(Figure::new(typed).exact(FigureKind::Count)?.numerator()),
    };
    match count {
        Ok(0) => Err(Problem::NotAboveZero),
        Ok(count) if count <= MOST => Ok(count),
        _ => Err(Problem::TooLarge { most: Quantity::count(MOST.into()), why: "nobody buys more for one cabinet" }),
    }
}

/// Lines of `N` sizes and a number.
pub(super) fn sized<const N: usize>(problems: &mut Problems, field: &str, lines: &[Reading]) -> Vec<Sized<N>> {
    each(problems, field, lines, |line| {
        let mut pieces = line.typed().split(BETWEEN);
        let mut sizes = [Length::ZERO; N];
        for size in &mut sizes {
            let piece =
                pieces.next().filter(|piece| !piece.trim().is_empty()).ok_or(Problem::Clash { why: shape(N) })?;
            *size = Reading::new(piece, line.bare()).length()?;
            if !size.is_positive() {
                return Err(Problem::NotAboveZero);
            }
        }
        let count = pieces.next().map_or(Ok(1), count)?;
        if pieces.next().is_some() { Err(Problem::Clash { why: shape(N) }) } else { Ok((sizes, count)) }
    })
}

const fn shape(sizes: usize) -> &'static str {
    match sizes {
        1 => "Write length × number, such as 600 × 4.",
        2 => "Write length × width × number, such as 600 × 300 × 2.",
        _ => "Write length × width × thickness × number, such as 900 × 120 × 25 × 4.",
    }
}

/// The sum of lines of a number, or of places × so many in each.
pub(super) fn counted(problems: &mut Problems, field: &str, lines: &[Reading]) -> u64 {
    let counts = each(problems, field, lines, |line| {
        let mut pieces = line.typed().split(BETWEEN);
        let places = count(pieces.next().unwrap_or_default())?;
        let in_each = pieces.next().map_or(Ok(1), count)?;
        if pieces.next().is_some() {
            return Err(Problem::Clash { why: "Write places × how many in each, such as 8 × 4." });
        }
        Ok(u64::from(places) * u64::from(in_each))
    });
    counts.into_iter().fold(0, u64::saturating_add)
}

/// Lines of number × price and a name; the number may be left out, and so may the name.
pub(super) fn others(problems: &mut Problems, field: &str, lines: &[Reading]) -> Vec<Other> {
    each(problems, field, lines, |line| {
        let typed = line.typed();
        let split = typed.split_once(BETWEEN);
        // An x in a name, as in `12.50 hex bolts`, has no number before it.
        let counted = split.and_then(|(before, after)| Some((count(before).ok()?, after)));
        let (count, rest) = match (counted, split) {
            (Some(counted), _) => counted,
            (None, Some((before, _))) if !before.contains(char::is_alphabetic) => (count(before)?, ""),
            (None, _) => (1, typed),
        };
        let at = rest.find(char::is_alphabetic).unwrap_or(rest.len());
        let (price, name) = rest.split_at_checked(at).unwrap_or((rest, ""));
        let price = price.trim();
        let exact = Figure::new(price).exact(FigureKind::Number)?;
        if exact.is_negative() {
            return Err(Problem::BelowZero);
        }
        Ok(Other { count, price: exact, typed: price.to_owned(), name: name.trim().to_owned() })
    })
}

/// How many pieces all lines are.
pub(super) fn pieces<const N: usize>(lines: &[Sized<N>]) -> u32 {
    lines.iter().fold(0, |sum, (_, count)| sum.saturating_add(*count))
}

/// The sum over all lines of the product of what `of` makes of each size, in mm², mm³: whole numbers for most lists, so
/// that they are divided only once.
pub(super) fn sum<const N: usize>(
    lines: &[Sized<N>],
    of: impl Fn(usize, Length) -> Length,
) -> Result<Ratio, LengthError> {
    lines.iter().try_fold(Ratio::ZERO, |sum, (sizes, count)| {
        let product = sizes
            .iter()
            .enumerate()
            .try_fold(Ratio::whole((*count).into()), |product, (at, size)| product.times(of(at, *size).in_mm()))?;
        sum.plus(product)
    })
}
