//! Pieces and gaps laid end to end in fractions of the `num-rational` library: they fill the length exactly, none lies on
//! another, and what is called even is even. Only the answer's marks are used, none of its formulas.

use num_rational::Ratio;
use proptest::prelude::*;
use proptest::sample::select;
use scantling::cards::spacing::{Answer, By, Ends, Even, Inputs, solve};
use scantling::measure::{Length, Reading};

type Exact = Ratio<i128>;

fn exact(length: Length) -> Exact {
    let mm = length.in_mm();
    let sign = if mm.is_negative() { -1 } else { 1 };
    Exact::new(sign * i128::from(mm.numerator()), i128::from(mm.denominator()))
}

/// What lies on the stick, from its end: a gap, a piece, a gap, and so on, closing with the gap at the other end.
fn laid(answer: &Answer, length: Exact) -> (Vec<Exact>, Vec<Exact>) {
    let (mut gaps, mut pieces) = (Vec::new(), Vec::new());
    let mut at = exact(answer.datum);
    for piece in &answer.pieces {
        gaps.push(exact(piece.near) - at);
        pieces.push(exact(piece.far) - exact(piece.near));
        at = exact(piece.far);
    }
    gaps.push(exact(answer.datum) + length - at);
    (gaps, pieces)
}

fn all_same(values: &[Exact]) -> bool {
    values.windows(2).all(|pair| pair[0] == pair[1])
}

/// A length of any system: so many parts of a millimetre or of an inch.
fn reading(count: i64, parts: u32, inches: bool) -> Reading {
    let typed = format!("{count}/{parts}");
    if inches { Reading::inches(&typed) } else { Reading::mm(&typed) }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]
    #[test]
    fn pieces_and_gaps_fill_the_length(
        choices in (select(Even::ALL), select(Ends::ALL), select(By::ALL)),
        sizes in (200_i64..4000, 0_i64..120, 0_i64..200, 1_i64..300, 0_i64..100),
        parts in (1_u32..17, 1_u32..9, any::<bool>(), any::<bool>()),
        count in 1_u32..40,
    ) {
        let (even, ends, by) = choices;
        let (length, width, end, largest, datum) = sizes;
        let (fine, coarse, inches, other) = parts;
        let inputs = Inputs {
            length: reading(length, coarse, inches),
            width: reading(width, fine, other),
            even,
            ends,
            end: reading(end, fine, inches),
            by,
            count: count.to_string().as_str().into(),
            largest_gap: reading(largest, coarse, other),
            datum: reading(datum, fine, other),
        };
        let typed = |reading: &Reading| exact(reading.length().unwrap());
        let (length, width) = (typed(&inputs.length), typed(&inputs.width));
        let Ok(answer) = solve(&inputs) else {
            // With gaps all through, pieces that together are no wider than the length have to fit.
            let may = even == Even::Gaps && ends == Ends::Gap && by == By::Count;
            prop_assert!(!may || width * i128::from(count) > length, "refused: {:?}", inputs);
            return Ok(());
        };
        let (gaps, pieces) = laid(&answer, length);
        let zero = Exact::from_integer(0);
        prop_assert!(pieces.iter().all(|piece| *piece == width), "every piece has its width");
        prop_assert!(gaps.iter().all(|gap| *gap >= zero), "none overlaps, none stands past an end: {:?}", gaps);
        let sum: Exact = gaps.iter().chain(&pieces).sum();
        prop_assert_eq!(sum, length, "end to end they are the length");
        prop_assert_eq!(pieces.len(), answer.spread.count as usize);
        if by == By::Count {
            prop_assert_eq!(answer.spread.count, count);
        }

        let (first, last, inner) = (gaps[0], gaps[gaps.len() - 1], &gaps[1..gaps.len() - 1]);
        prop_assert_eq!(first, last, "both ends alike");
        prop_assert!(all_same(inner), "even between the pieces: {:?}", inner);
        prop_assert!(answer.pieces.iter().all(|one| exact(one.centre) * 2 == exact(one.near) + exact(one.far)));
        let pitch = inner.first().map(|gap| *gap + width);
        match (ends, even) {
            (Ends::Gap, Even::Gaps) => prop_assert!(all_same(&gaps), "gaps all through: {:?}", gaps),
            // The end of the length counts as a centre.
            (Ends::Gap, Even::Centres) => prop_assert!(pitch.is_none_or(|pitch| pitch == first + width / 2)),
            (Ends::Half, _) => prop_assert!(inner.iter().all(|gap| *gap == first * 2)),
            (Ends::Piece, _) => prop_assert_eq!(first, zero),
            (Ends::Own, Even::Gaps) => prop_assert_eq!(first, typed(&inputs.end)),
            (Ends::Own, Even::Centres) => prop_assert_eq!(first + width / 2, typed(&inputs.end)),
        }
        if by == By::LargestGap {
            let limit = typed(&inputs.largest_gap);
            let counted = if ends == Ends::Own { inner } else { &gaps };
            prop_assert!(counted.iter().all(|gap| *gap <= limit), "{:?} within {}", gaps, limit);
        }
        prop_assert_eq!(answer.spread.gap.map(exact), inner.first().copied());
        prop_assert_eq!(exact(answer.spread.end_gap), first);
        prop_assert_eq!(answer.spread.pitch.map(exact), pitch);
    }
}
