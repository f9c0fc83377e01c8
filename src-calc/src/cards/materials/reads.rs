//! From figures as typed to exact numbers, with every problem named.

use crate::measure::{Figure, FigureKind, LengthError, Quantity, Ratio};
use crate::problem::{Problem, Problems};

/// A price, exactly and as it was typed.
#[derive(Clone, Debug)]
pub(super) struct Price {
    pub(super) each: Ratio,
    pub(super) typed: String,
}

/// What was wrong so far.
#[derive(Default)]
pub(super) struct Reads(pub(super) Problems);

impl Reads {
    /// A figure above zero.
    pub(super) fn positive(&mut self, field: &'static str, figure: &Figure, kind: FigureKind) -> Option<Ratio> {
        let value = self.0.check(field, figure.exact(kind))?;
        if value.is_negative() || value.is_zero() {
            self.0.add(field, Problem::NotAboveZero);
            return None;
        }
        Some(value)
    }

    /// A whole number from one up to `most`.
    pub(super) fn whole(&mut self, field: &'static str, figure: &Figure, most: u32) -> Option<u32> {
        let value = self.positive(field, figure, FigureKind::Count)?;
        match u32::try_from(value.numerator()) {
            Ok(count) if count <= most => Some(count),
            _ => {
                let most = Quantity::count(most.into());
                self.0.add(field, Problem::TooLarge { most, why: "more is not worked out here" });
                None
            }
        }
    }

    /// Per cent that come on top, none where it is blank.
    pub(super) fn percent(&mut self, field: &'static str, figure: &Figure) -> Option<Ratio> {
        if figure.is_blank() {
            return Some(Ratio::ZERO);
        }
        let value = self.0.check(field, figure.exact(FigureKind::Percent))?;
        if value.is_negative() {
            self.0.add(field, Problem::BelowZero);
            return None;
        }
        if value > Ratio::whole(100) {
            let most = Quantity::percent(100.0);
            self.0.add(field, Problem::TooLarge { most, why: "more on top than there is, look at the parts again" });
            return None;
        }
        Some(value)
    }

    /// A price, zero or more; none where it is blank.
    pub(super) fn price(&mut self, field: &'static str, figure: &Figure) -> Option<Price> {
        if figure.is_blank() {
            return None;
        }
        let each = self.0.check(field, figure.exact(FigureKind::Number))?;
        if each.is_negative() {
            self.0.add(field, Problem::BelowZero);
            return None;
        }
        Some(Price { each, typed: figure.typed().trim().to_owned() })
    }
}

/// A value with so many per cent on top.
pub(super) fn with(value: Ratio, percent: Ratio) -> Result<Ratio, LengthError> {
    value.times(Ratio::whole(100).plus(percent)?.over(Ratio::whole(100))?)
}
