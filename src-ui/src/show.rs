//! How a value looks: in the system in use, rounded once to the tool in hand, the other system beside it.

use crate::settings::{Settings, System};
use crate::words::{say, say_with};
use scantling::measure::{Graduation, InchParts, Length, Measure, Quantity, Rounded, Rounding};
use yew::prelude::*;

const POUNDS_PER_KG: f64 = 1.0 / 0.453_592_37;
const PSI_PER_MPA: f64 = 145.037_737_730_209;
const LITRES_PER_US_GALLON: f64 = 3.785_411_784;
const NEWTONS_PER_POUND: f64 = 4.448_221_615_260_5;

/// A piece of a value as shown: text, a stacked fraction, or a unit that is spoken in full.
#[derive(Clone, Debug, PartialEq)]
pub enum Part {
    /// Digits and words.
    Text(AttrValue),
    /// A fraction, drawn stacked, read as `5/8`.
    Fraction(u64, u64),
    /// A unit: as drawn, and as spoken.
    Unit(&'static str, &'static str),
}

/// A value as shown: large in the system in use, small in the other, and what rounding cost.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shown {
    /// In the system in use.
    pub main: Vec<Part>,
    /// In the other system; empty where the value has no unit.
    pub other: Vec<Part>,
    /// Whether the other system's marks do not meet it: then it is shown with a ≈.
    pub near: bool,
    /// What rounding `main` to the tool's marks cost, in words; nothing for an estimate.
    pub cost: Option<AttrValue>,
    /// The lengths themselves, unrounded, to put on the tape.
    pub lengths: Vec<Length>,
}

/// The parts as plain text.
pub fn plain(parts: &[Part]) -> String {
    in_words(parts, |drawn, _| drawn)
}

/// The parts as they are said: the unit in full.
pub fn spoken(parts: &[Part]) -> String {
    in_words(parts, |_, spoken| spoken)
}

fn in_words(parts: &[Part], unit: fn(&'static str, &'static str) -> &'static str) -> String {
    let mut text = String::new();
    for part in parts {
        match part {
            Part::Text(piece) => text.push_str(piece),
            Part::Fraction(over, under) => {
                if text.ends_with(|last: char| last.is_ascii_digit()) {
                    text.push(' ');
                }
                text.push_str(&format!("{over}/{under}"));
            }
            Part::Unit(drawn, spoken) => {
                text.push(' ');
                text.push_str(unit(drawn, spoken));
            }
        }
    }
    text
}

impl Shown {
    /// Words that stand for no measure.
    pub fn words(text: impl Into<AttrValue>) -> Self {
        Self { main: vec![Part::Text(text.into())], ..Self::default() }
    }

    /// As text, to copy: `30 9/16 in (776 mm)`.
    pub fn plain(&self) -> String {
        if self.other.is_empty() {
            plain(&self.main)
        } else {
            let near = if self.near { "≈ " } else { "" };
            format!("{} ({near}{})", plain(&self.main), plain(&self.other))
        }
    }

    /// Several lengths in one line, such as width and height.
    pub fn joined(pieces: impl IntoIterator<Item = Self>, between: &'static str) -> Self {
        let mut whole = Self::default();
        for piece in pieces {
            for (into, from) in [(&mut whole.main, piece.main), (&mut whole.other, piece.other)] {
                if !into.is_empty() {
                    // One unit at the end is enough for the whole line.
                    if matches!((into.last(), from.last()), (Some(Part::Unit(a, _)), Some(Part::Unit(b, _))) if a == b)
                    {
                        into.pop();
                    }
                    into.push(Part::Text(between.into()));
                }
                into.extend(from);
            }
            whole.near |= piece.near;
            whole.lengths.extend(piece.lengths);
            whole.cost = match (whole.cost.take(), piece.cost) {
                (Some(first), Some(second)) if first != second => Some(format!("{first}; {second}").into()),
                (first, second) => first.or(second),
            };
        }
        whole
    }
}

/// A number to so many significant figures, without trailing noughts after a point.
pub fn figures(value: f64, significant: i32) -> String {
    if value == 0.0 || !value.is_finite() {
        return if value == 0.0 { "0".into() } else { "–".into() };
    }
    #[allow(clippy::cast_possible_truncation, reason = "the decimal exponent of a finite f64 lies within ±324")]
    let magnitude = value.abs().log10().floor() as i32;
    let decimals = usize::try_from(significant - 1 - magnitude).unwrap_or(0).min(6);
    // Left of the point, too, no more figures than asked for.
    let excess = magnitude - significant + 1;
    let coarse = 10f64.powi(excess);
    let value = if excess > 0 { (value / coarse).round() * coarse } else { value };
    let text = format!("{value:.decimals$}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text };
    let text = if text == "-0" { "0".to_owned() } else { text };
    text.replace('-', "−")
}

/// Millimetres with at most three decimals, for what rounding cost.
fn small_mm(length: Length) -> String {
    figures((length.abs().as_mm() * 1000.0).round() / 1000.0, 4)
}

/// The marks of an inch value, as parts.
pub fn inch_parts(parts: InchParts) -> Vec<Part> {
    let mut shown = Vec::with_capacity(3);
    let sign = if parts.negative { "−" } else { "" };
    if parts.whole > 0 || parts.numerator == 0 {
        shown.push(Part::Text(format!("{sign}{}", parts.whole).into()));
    } else if parts.negative {
        shown.push(Part::Text("−".into()));
    }
    if parts.numerator > 0 {
        shown.push(Part::Fraction(parts.numerator, parts.denominator));
    }
    shown.push(Part::Unit("in", "inch"));
    shown
}

fn mm_parts(length: Length) -> Vec<Part> {
    let text = length.show(scantling::measure::Style::Mm);
    let digits = text.strip_suffix(" mm").unwrap_or(&text).replace('-', "−");
    vec![Part::Text(digits.into()), Part::Unit("mm", "mm")]
}

/// How values look just now. Cheap to make: a view of the settings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Show {
    /// The system shown large.
    pub system: System,
    inch: Graduation,
    mm: Graduation,
    rounding: Rounding,
}

impl Show {
    /// As the settings say.
    pub fn of(settings: &Settings) -> Self {
        Self {
            system: settings.system,
            inch: settings.inch_graduation,
            mm: settings.mm_graduation,
            rounding: settings.rounding,
        }
    }

    /// The marks of the tool in hand, and which of them a length between two takes.
    pub fn marks(self) -> (Graduation, Rounding) {
        (if self.system == System::Metric { self.mm } else { self.inch }, self.rounding)
    }

    /// A value in both systems, in the order of the system in use.
    fn both(self, metric: Vec<Part>, imperial: Vec<Part>) -> Shown {
        match self.system {
            System::Metric => Shown { main: metric, other: imperial, ..Shown::default() },
            System::Imperial => Shown { main: imperial, other: metric, ..Shown::default() },
        }
    }

    /// A length rounded as asked, as parts.
    pub fn rounded(rounded: &Rounded) -> Vec<Part> {
        match rounded.graduation.unit() {
            scantling::measure::Unit::In => inch_parts(rounded.value.inch_parts()),
            _ => mm_parts(rounded.value),
        }
    }

    /// What rounding cost, in words: `exact`, `0.075 mm over`.
    pub fn cost(rounded: &Rounded) -> AttrValue {
        if rounded.is_exact() {
            return say("exact");
        }
        let by = small_mm(rounded.error).into();
        let key = if rounded.error.is_negative() { "cost-under" } else { "cost-over" };
        let cost = say_with(key, [("mm", by)]);
        if rounded.tie { say_with("cost-tie", [("cost", cost.as_str().into())]) } else { cost }
    }

    /// A length, rounded once to the tool in hand, in both systems.
    pub fn length(self, length: Length) -> Shown {
        self.length_towards(length, self.rounding)
    }

    /// What rounding to the tool in hand adds to a length, below zero where the mark is under; nothing past all marks.
    pub fn rounding_of(self, length: Length) -> Option<Length> {
        let (graduation, rounding) = self.marks();
        graduation.round(length, rounding).ok().map(|rounded| rounded.error)
    }

    /// A length that must not be rounded the other way, such as one that has to fit inside.
    pub fn length_towards(self, length: Length, rounding: Rounding) -> Shown {
        let (Ok(metric), Ok(imperial)) = (self.mm.round(length, rounding), self.inch.round(length, rounding)) else {
            // Too long for the tool's marks: the exact value still says what it is.
            return Shown::words(length.to_string());
        };
        let (first, second) = match self.system {
            System::Metric => (&metric, &imperial),
            System::Imperial => (&imperial, &metric),
        };
        Shown {
            main: Self::rounded(first),
            other: Self::rounded(second),
            near: !second.is_exact(),
            cost: Some(Self::cost(first)),
            lengths: vec![length],
        }
    }

    /// A length as somebody would type it, exactly.
    pub fn typed(self, length: Length) -> String {
        let on_a_tape = length.inch_parts().denominator <= 64;
        let inches = self.system == System::Imperial && on_a_tape;
        length.show(if inches { scantling::measure::Style::Inches } else { scantling::measure::Style::Mm })
    }

    /// A length as it is, unrounded where it can be written so: in inches or in millimetres.
    pub fn exact(self, length: Length, inches: bool) -> Vec<Part> {
        if inches {
            let parts = length.inch_parts();
            // A fraction that no tape has is no help; decimals are.
            if parts.denominator <= 64 {
                return inch_parts(parts);
            }
            return vec![Part::Text(figures(length.as_inches(), 6).into()), Part::Unit("in", "inch")];
        }
        vec![Part::Text(figures(length.as_mm(), 7).into()), Part::Unit("mm", "mm")]
    }

    /// An estimate in millimetres of a place or a size: rounded to the tool's marks like a length.
    pub fn length_mm(self, mm: f64) -> Shown {
        Length::from_estimate_mm(mm).map_or_else(|_| Shown::words("–"), |length| self.length(length))
    }

    /// A small estimate in millimetres, such as a sag: to three figures, not to the tool's marks.
    pub fn fine_mm(self, mm: f64) -> Shown {
        self.both(self.number(mm, "mm", "mm"), self.number(mm / 25.4, "in", "inch"))
    }

    fn number(self, value: f64, drawn: &'static str, spoken: &'static str) -> Vec<Part> {
        vec![Part::Text(figures(value, 3).into()), Part::Unit(drawn, spoken)]
    }

    /// What fits a fitting: in millimetres in both systems, for its holes are so far apart whatever tape is in hand.
    pub fn hardware(self, length: Length) -> String {
        match self.system {
            System::Metric => self.on_drawing(length),
            System::Imperial => format!("{} mm", (length.as_mm() * 10.0).round() / 10.0),
        }
    }

    /// A length on one line of a drawing, in the system in use.
    pub fn on_drawing(self, length: Length) -> String {
        plain(&self.length(length).main)
    }

    /// Any value of a card's working.
    pub fn quantity(self, quantity: &Quantity) -> Shown {
        match quantity {
            Quantity::Length(length) => self.length(*length),
            Quantity::Estimate { value, unit } => self.estimate(*value, *unit),
        }
    }

    /// An estimate with its unit, in both systems where the trade uses two.
    pub fn estimate(self, value: f64, unit: Measure) -> Shown {
        let one = |drawn, spoken| Shown { main: self.number(value, drawn, spoken), ..Shown::default() };
        match unit {
            Measure::Mm => self.fine_mm(value),
            Measure::Kg => {
                self.both(self.number(value, "kg", "kilograms"), self.number(value * POUNDS_PER_KG, "lb", "pounds"))
            }
            Measure::KgPerM => self.both(
                self.number(value, "kg/m", "kilograms a metre"),
                self.number(value * POUNDS_PER_KG * 0.3048, "lb/ft", "pounds a foot"),
            ),
            Measure::M2 => self.both(
                self.number(value, "m²", "square metres"),
                self.number(value / 0.3048_f64.powi(2), "ft²", "square feet"),
            ),
            Measure::M3 => self.both(
                self.number(value, "m³", "cubic metres"),
                self.number(value / 0.3048_f64.powi(3), "ft³", "cubic feet"),
            ),
            Measure::Litres => self.both(
                self.number(value, "l", "litres"),
                self.number(value / LITRES_PER_US_GALLON, "US gal", "US gallons"),
            ),
            Measure::BoardFeet => one("bd ft", "board feet"),
            Measure::N => self.both(
                self.number(value, "N", "newtons"),
                self.number(value / NEWTONS_PER_POUND, "lbf", "pounds force"),
            ),
            Measure::Mpa => {
                self.both(self.number(value, "MPa", "megapascals"), self.number(value * PSI_PER_MPA, "psi", "psi"))
            }
            Measure::KgPerM3 => self.both(
                self.number(value, "kg/m³", "kilograms a cubic metre"),
                self.number(value * POUNDS_PER_KG * 0.3048_f64.powi(3), "lb/ft³", "pounds a cubic foot"),
            ),
            Measure::NPerMm => one("N/mm", "newtons a millimetre"),
            Measure::NMm => one("N·mm", "newton millimetres"),
            Measure::NMm2 => one("N·mm²", "newton square millimetres"),
            Measure::Mm3 => one("mm³", "cubic millimetres"),
            Measure::Mm4 => one("mm⁴", "millimetres to the fourth"),
            Measure::Degrees => {
                Shown { main: vec![Part::Text(format!("{}°", figures(value, 4)).into())], ..Shown::default() }
            }
            Measure::Percent => {
                Shown { main: vec![Part::Text(format!("{} %", figures(value, 3)).into())], ..Shown::default() }
            }
            Measure::Number | Measure::Count => Shown::words(figures(value, 5)),
        }
    }
}

/// Draws a value in the other system, with a ≈ where its marks do not meet it.
pub fn draw_other(shown: &Shown) -> Html {
    html! { <>if shown.near { { "≈ " } }{ draw(&shown.other) }</> }
}

/// Draws parts. The text of the elements is what a screen reader says; the look is drawn over it.
pub fn draw(parts: &[Part]) -> Html {
    parts
        .iter()
        .map(|part| match part {
            Part::Text(text) => html! { <>{ text }</> },
            Part::Fraction(over, under) => html! {
                <span class="fraction" data-over={over.to_string()} data-under={under.to_string()}>
                    <span class="unseen">{ format!(" {over}/{under}") }</span>
                </span>
            },
            Part::Unit(drawn, spoken) => html! {
                <span class="unit" data-unit={*drawn}><span class="unseen">{ format!(" {spoken}") }</span></span>
            },
        })
        .collect()
}

#[cfg(test)]
mod tests;
