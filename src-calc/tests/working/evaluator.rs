//! Reads the formula of a step as a person at the bench would, and works it out. It shares nothing with the cards.
//!
//! Angles are in degrees. Beside the signs of arithmetic it knows a few phrases of the trade: `…, rounded up`,
//! `…, rounded up to 0.01`, `…, or nothing` (never below zero), `…, at least 1`, `…, and one more`, `…, as … is no more
//! than …`, `the whole part of …`, `(…, to the nearest whole number)`
//! with its two sisters, `the lesser of … and …`, `the least of … and … and …`.

use std::collections::{BTreeMap, BTreeSet};

/// What is whole but for rounding of the estimates counts as whole.
const WHOLE: f64 = 1e-9;

/// What the formula gives, and which of the symbols it named.
#[derive(Debug, PartialEq)]
pub(crate) struct Worked {
    pub(crate) value: f64,
    pub(crate) named: BTreeSet<String>,
}

/// A formula that nobody but a person can work out, and the place where it stops being one.
#[derive(Debug, PartialEq)]
pub(crate) struct Unread(pub(crate) String);

/// A formula that stands for itself: a symbol, its value stated and not worked out.
pub(crate) fn is_stated(formula: &str) -> bool {
    !formula.is_empty() && formula.chars().all(in_a_symbol)
}

/// Works out what stands behind the ` = `.
pub(crate) fn work_out(formula: &str, given: &BTreeMap<String, f64>) -> Result<Worked, Unread> {
    let (symbol, rest) = formula.split_once(" = ").ok_or_else(|| Unread(format!("no = in {formula}")))?;
    if !is_stated(symbol) {
        return Err(Unread(format!("{symbol} is no symbol")));
    }
    let mut named = BTreeSet::new();
    let value = phrase(rest, given, &mut named)?;
    Ok(Worked { value, named })
}

/// What a phrase does to the value before it.
type Then = fn(f64) -> f64;

fn phrase(text: &str, given: &BTreeMap<String, f64>, named: &mut BTreeSet<String>) -> Result<f64, Unread> {
    let tails: [(&str, Then); 5] = [
        (", and one more", |value| value + 1.0),
        (", at least 1", |value| value.max(1.0)),
        (", rounded up", up),
        (" rounded up", up),
        (", or nothing", |value| value.max(0.0)),
    ];
    for (tail, then) in tails {
        if let Some(body) = text.strip_suffix(tail) {
            return Ok(then(phrase(body, given, named)?));
        }
    }
    if let Some((body, grain)) = text.split_once(", rounded up to ") {
        let grain = phrase(grain, given, named)?;
        return Ok(up(phrase(body, given, named)? / grain) * grain);
    }
    if let Some((body, reason)) = text.split_once(", as ") {
        let (left, right) = reason.split_once(" is no more than ").ok_or_else(|| Unread(reason.to_owned()))?;
        let holds = phrase(left, given, named)? <= phrase(right, given, named)? + WHOLE;
        return if holds { phrase(body, given, named) } else { Ok(f64::NAN) };
    }
    if let Some(list) = text.strip_prefix("the lesser of ").or_else(|| text.strip_prefix("the least of ")) {
        let each = list.split(" and ").map(|one| phrase(one, given, named)).collect::<Result<Vec<_>, _>>()?;
        return Ok(each.into_iter().fold(f64::INFINITY, f64::min));
    }
    let mut line = Line { rest: text, given, named };
    let value = line.sum()?;
    if line.rest.is_empty() { Ok(value) } else { Err(Unread(line.rest.to_owned())) }
}

fn up(value: f64) -> f64 {
    (value - WHOLE).ceil()
}

fn down(value: f64) -> f64 {
    (value + WHOLE).floor()
}

/// Halves away from zero.
fn nearest(value: f64) -> f64 {
    down(value.abs() + 0.5).copysign(value)
}

fn in_a_symbol(letter: char) -> bool {
    letter.is_alphabetic() || ('₀'..='₉').contains(&letter) || letter == '′'
}

/// A small power behind a number, a symbol or a bracket.
fn power(letter: char) -> Option<i32> {
    "⁰¹²³⁴⁵⁶⁷⁸⁹".chars().position(|small| small == letter).and_then(|power| i32::try_from(power).ok())
}

struct Line<'a> {
    rest: &'a str,
    given: &'a BTreeMap<String, f64>,
    named: &'a mut BTreeSet<String>,
}

impl<'a> Line<'a> {
    /// Takes that sign if it comes next, with the spaces before it.
    fn takes(&mut self, sign: &str) -> bool {
        let Some(rest) = self.rest.trim_start().strip_prefix(sign) else { return false };
        self.rest = rest;
        true
    }

    fn needs(&mut self, sign: &str) -> Result<(), Unread> {
        if self.takes(sign) { Ok(()) } else { Err(Unread(format!("{sign} wanted before {:?}", self.rest))) }
    }

    /// The letters at the head that belong together.
    fn run(&mut self, belongs: fn(char) -> bool) -> &'a str {
        let end = self.rest.find(|letter| !belongs(letter)).unwrap_or(self.rest.len());
        let (run, rest) = self.rest.split_at(end);
        self.rest = rest;
        run
    }

    fn sum(&mut self) -> Result<f64, Unread> {
        let mut value = self.product()?;
        loop {
            if self.takes("+") {
                value += self.product()?;
            } else if self.takes("−") {
                value -= self.product()?;
            } else {
                return Ok(value);
            }
        }
    }

    fn product(&mut self) -> Result<f64, Unread> {
        let mut value = self.raised()?;
        loop {
            if self.takes("×") || self.takes("·") {
                value *= self.raised()?;
            } else if self.takes("/") {
                value /= self.raised()?;
            } else {
                return Ok(value);
            }
        }
    }

    fn raised(&mut self) -> Result<f64, Unread> {
        let value = self.one()?;
        let Some(power) = self.rest.chars().next().and_then(power) else { return Ok(value) };
        self.rest = self.rest.trim_start_matches(|letter| self::power(letter) == Some(power));
        Ok(value.powi(power))
    }

    fn one(&mut self) -> Result<f64, Unread> {
        if self.takes("the whole part of ") {
            return self.sum().map(down);
        }
        if self.takes("√") {
            return self.one().map(f64::sqrt);
        }
        if self.takes("(") {
            let value = self.sum()?;
            let value = match () {
                () if self.takes(", to the nearest whole number") => nearest(value),
                () if self.takes(", to the whole number not above") => down(value),
                () if self.takes(", to the whole number not below") => up(value),
                () => value,
            };
            return self.needs(")").map(|()| value);
        }
        self.rest = self.rest.trim_start();
        let digits = self.run(|letter| letter.is_ascii_digit() || letter == '.');
        if !digits.is_empty() {
            let value = digits.parse().map_err(|_| Unread(format!("{digits} is no number")))?;
            self.takes("°");
            return Ok(value);
        }
        let name = self.run(in_a_symbol);
        if let Some(value) = self.given.get(name) {
            self.named.insert(name.to_owned());
            return Ok(*value);
        }
        if name == "π" {
            return Ok(std::f64::consts::PI);
        }
        self.function(name)
    }

    fn function(&mut self, name: &str) -> Result<f64, Unread> {
        let one: Then = match name {
            "sin" => |angle| angle.to_radians().sin(),
            "cos" => |angle| angle.to_radians().cos(),
            "tan" => |angle| angle.to_radians().tan(),
            "arcsin" => |sine| sine.asin().to_degrees(),
            "arctan" => |tangent| tangent.atan().to_degrees(),
            "abs" => f64::abs,
            "floor" => down,
            "ceil" => up,
            "min" | "max" => {
                self.needs("(")?;
                let first = self.sum()?;
                self.needs(",")?;
                let second = self.sum()?;
                self.needs(")")?;
                return Ok(if name == "min" { first.min(second) } else { first.max(second) });
            }
            _ => return Err(Unread(format!("{name:?} before {:?} is not known", self.rest))),
        };
        self.needs("(")?;
        let value = self.sum()?;
        self.needs(")")?;
        Ok(one(value))
    }
}

#[test]
fn works_out_what_a_person_works_out() {
    let given = [("a", 3.0), ("b₂", 4.0), ("β", 30.0), ("kdef", 0.6), ("EI′", 8.0)];
    let given: BTreeMap<String, f64> = given.map(|(symbol, value)| (symbol.to_owned(), value)).into();
    for (formula, want, by_hand) in [
        ("c = √(a² + b₂²)", 5.0, "3, 4, 5"),
        ("c = 2 − a − b₂", -5.0, "from left to right"),
        ("c = 24 / a / b₂", 2.0, "from left to right"),
        ("c = 2 + a × b₂", 14.0, "times before plus"),
        ("c = 2 · a²", 18.0, "the power first"),
        ("c = (2 · a)²", 36.0, "the bracket first"),
        ("c = sin(β)", 0.5, "half of an equal-sided triangle"),
        ("c = arctan(1)", 45.0, "a square's diagonal"),
        ("c = arcsin(sin(β) × cos(β / 30 − 1))", 30.0, "cos 0 = 1"),
        ("c = tan(90° / 2)", 1.0, "a square's diagonal"),
        ("c = 10⁹ / 10⁶", 1000.0, "powers of ten"),
        ("D = EI′ · (1 + kdef)", 12.8, "8 · 1.6"),
        ("c = min(a, b₂) + max(a, b₂) · abs(a − b₂)", 7.0, "3 + 4 · 1"),
        ("c = (a / 2, to the nearest whole number) × 2", 4.0, "1.5 goes up"),
        ("c = (a / 2, to the whole number not above) × 2", 2.0, "1.5 goes down"),
        ("c = (b₂ / 3, to the whole number not below) × 3", 6.0, "1.33 goes up"),
        ("c = b₂ / a, rounded up", 2.0, "1.33 goes up"),
        ("c = b₂ / 2, rounded up", 2.0, "a whole number stays"),
        ("c = a − b₂, or nothing", 0.0, "below zero"),
        ("c = (a − b₂) / 2, rounded up, at least 1", 1.0, "0 is raised"),
        ("c = b₂ / a, rounded up to 0.01", 1.34, "1.333 goes up"),
        ("c = 2, as a is no more than b₂", 2.0, "3 is not"),
        ("c = b₂ / a rounded up, and one more", 3.0, "2 and 1"),
        ("c = 1 + 10 · the whole part of (a + b₂) / 2", 31.0, "3.5 goes down"),
        ("c = floor(b₂ / a) + ceil(b₂ / a)", 3.0, "1 and 2"),
        ("c = the least of 2 · a and b₂ + 1 and 9", 5.0, "of 6, 5 and 9"),
        ("c = the lesser of a and π", 3.0, "less than 3.14"),
    ] {
        let got = work_out(formula, &given).unwrap().value;
        assert!((got - want).abs() < 1e-12, "{formula} gives {got}, not {want}: {by_hand}");
    }
    assert!(work_out("c = 2, as b₂ is no more than a", &given).unwrap().value.is_nan(), "4 is more than 3");
    assert_eq!(work_out("c = a + a", &given).unwrap().named, BTreeSet::from(["a".to_owned()]));
}

#[test]
fn owns_up_to_what_it_cannot_read() {
    let given = BTreeMap::from([("a".to_owned(), 3.0)]);
    for formula in ["c", "c = ", "c = b", "c = a a", "c = (a", "c = a of a", "two words = a", "c = hyp(a)", "c = 1.2.3"]
    {
        assert!(work_out(formula, &given).is_err(), "{formula} is no formula");
    }
    assert!(
        is_stated("kdef₂") && is_stated("EI′") && !is_stated("") && !is_stated("D > 600 mm") && !is_stated("e = v")
    );
}
