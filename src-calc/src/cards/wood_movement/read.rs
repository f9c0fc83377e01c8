//! From what was typed to numbers, with every problem named.

use super::inputs::{By, Climate, Grain, Inputs, Set};
use crate::measure::{Figure, FigureKind, Length, Quantity};
use crate::problem::{Problem, Problems};
use crate::source::Source;
use crate::stock::movement::Sheet;
use crate::stock::movement::air::{RANGE_C, equilibrium_percent};
use crate::stock::movement::solid::{ALONG_SOURCE, coefficients};

/// Above this the cells are full and wood moves no more, per cent.
const SATURATED: f64 = 30.0;

/// Moisture, and the air that it comes from if it was given by that.
#[derive(Clone, Copy, Debug)]
pub(super) struct Moisture {
    pub(super) percent: f64,
    /// Relative humidity, per cent, and °C.
    pub(super) air: Option<(f64, f64)>,
}

/// Change of size for each per cent of moisture, as a share.
#[derive(Clone, Copy, Debug)]
pub(super) struct Rate {
    pub(super) share: f64,
    pub(super) source: Source,
}

/// The inputs, read.
pub(super) struct Read {
    pub(super) width: Length,
    pub(super) rate: Rate,
    pub(super) made: Moisture,
    pub(super) dry: Moisture,
    pub(super) damp: Moisture,
    pub(super) bearing: Length,
    pub(super) spare: Length,
    pub(super) screw: Length,
    pub(super) to_screw: Option<Length>,
    /// Growth of the sheet beside it from the driest to the dampest day, per cent; none where the air is not known.
    pub(super) sheet_percent: Option<f64>,
}

fn figure(
    problems: &mut Problems,
    field: &str,
    figure: &Figure,
    kind: FigureKind,
    (least, most): (f64, f64),
    why: &'static str,
) -> Option<f64> {
    let unit: fn(f64) -> Quantity = if kind == FigureKind::Temperature { Quantity::number } else { Quantity::percent };
    let value = problems.check(field, figure.value(kind))?;
    if value < least {
        problems.add(field, Problem::TooSmall { least: unit(least), why });
    } else if value > most {
        problems.add(field, Problem::TooLarge { most: unit(most), why });
    } else {
        return Some(value);
    }
    None
}

impl Climate {
    fn moisture(&self, problems: &mut Problems, [humidity, temperature]: [&str; 2]) -> Option<Moisture> {
        let percent = FigureKind::Percent;
        let why = "the air holds from nothing to 100 %";
        let humidity = figure(problems, humidity, &self.humidity, percent, (0.0, 100.0), why);
        let why = "in °C, the formula holds from a light frost to a kiln's heat";
        let celsius = figure(problems, temperature, &self.temperature, FigureKind::Temperature, RANGE_C, why);
        let (humidity, celsius) = (humidity?, celsius?);
        Some(Moisture { percent: equilibrium_percent(celsius, humidity), air: Some((humidity, celsius)) })
    }
}

impl Inputs {
    fn rate(&self, problems: &mut Problems) -> Option<Rate> {
        let typed = Source::practice("your own figure");
        if self.grain == Grain::Along {
            return Some(Rate { share: 0.0, source: ALONG_SOURCE });
        }
        if self.species.family().is_none() {
            let why = "wood moves by 0.1 to 0.45 % of its width for each per cent of moisture";
            let percent = figure(problems, "own_rate", &self.own_rate, FigureKind::Percent, (0.0, 2.0), why)?;
            return Some(Rate { share: percent / 100.0, source: typed });
        }
        let Some(of) = coefficients(self.species) else {
            problems.add(
                "species",
                Problem::Clash {
                    why: "How far this wood moves is not in the table: choose another, or give your own figure.",
                },
            );
            return None;
        };
        let share = if self.grain == Grain::QuarterSawn { of.radial } else { of.tangential };
        Some(Rate { share, source: of.source })
    }

    fn moistures(&self, problems: &mut Problems) -> Option<(Moisture, Moisture, Moisture)> {
        let (made, dry, damp) = match self.by {
            By::Air => (
                self.made.moisture(problems, ["made.humidity", "made.temperature"]),
                self.dry.moisture(problems, ["dry.humidity", "dry.temperature"]),
                self.damp.moisture(problems, ["damp.humidity", "damp.temperature"]),
            ),
            By::Meter => {
                let mut read = |field: &str, typed: &Figure| {
                    let why = "from bone dry to 30 %, where the cells are full and wood moves no more";
                    let percent = figure(problems, field, typed, FigureKind::Percent, (0.0, SATURATED), why)?;
                    Some(Moisture { percent, air: None })
                };
                (
                    read("made_moisture", &self.made_moisture),
                    read("dry_moisture", &self.dry_moisture),
                    read("damp_moisture", &self.damp_moisture),
                )
            }
        };
        let (made, dry, damp) = (made?, dry?, damp?);
        if damp.percent < dry.percent {
            let field = if self.by == By::Air { "damp.humidity" } else { "damp_moisture" };
            let why = "The wood is drier here than in the driest air: give the damper of the two here.";
            problems.add(field, Problem::Clash { why });
            return None;
        }
        Some((made, dry, damp))
    }

    /// Per cent from the driest to the dampest day. The inner option: it is known only where the air is.
    #[allow(clippy::option_option, reason = "not known is an answer, unreadable is none")]
    fn sheet(&self, dry: Option<Moisture>, damp: Option<Moisture>, problems: &mut Problems) -> Option<Option<f64>> {
        if self.beside == Sheet::Own {
            let why = "no sheet of wood moves more with the humidity";
            return figure(problems, "own_sheet", &self.own_sheet, FigureKind::Percent, (0.0, 5.0), why).map(Some);
        }
        let air = |moisture: Option<Moisture>| moisture.and_then(|moisture| moisture.air);
        let swing = air(dry).zip(air(damp)).map(|((dry, _), (damp, _))| damp - dry);
        Some(self.beside.movement().zip(swing).map(|(movement, swing)| movement.over(swing)))
    }

    /// Reads every field that the choices call for.
    pub(super) fn read(&self) -> Result<Read, Problems> {
        let mut problems = Problems::default();
        let rate = self.rate(&mut problems);
        let width = problems.above_zero("width", &self.width).and_then(|width| {
            let most = problems.check("width", Length::mm(20_000, 1))?;
            let why = "more is no part of a cabinet";
            let fits = if width > most { Err(Problem::TooLarge { most: most.into(), why }) } else { Ok(width) };
            problems.check("width", fits)
        });
        let moistures = self.moistures(&mut problems);
        let (dry, damp) = (moistures.map(|(_, dry, _)| dry), moistures.map(|(_, _, damp)| damp));
        let sheet_percent = self.sheet(dry, damp, &mut problems);
        let bearing =
            if self.set == Set::Grooves { problems.zero_or_more("bearing", &self.bearing) } else { Some(Length::ZERO) };
        let spare =
            if self.set == Set::Slots { Some(Length::ZERO) } else { problems.zero_or_more("spare", &self.spare) };
        let (screw, to_screw) = if self.set == Set::Slots {
            let to_screw = if self.to_screw.is_blank() {
                Some(None)
            } else {
                problems.above_zero("to_screw", &self.to_screw).map(Some)
            };
            (problems.above_zero("screw", &self.screw), to_screw)
        } else {
            (Some(Length::ZERO), Some(None))
        };
        if let (Some(width), Some(Some(to_screw))) = (width, to_screw)
            && let Some(most) = problems.check("to_screw", width.times(1, u64::from(self.held.edges())))
            && to_screw > most
        {
            let why = "from where the part is held it goes no farther";
            problems.add("to_screw", Problem::TooLarge { most: most.into(), why });
        }
        let read = (|| {
            let (made, dry, damp) = moistures?;
            Some(Read {
                width: width?,
                rate: rate?,
                made,
                dry,
                damp,
                bearing: bearing?,
                spare: spare?,
                screw: screw?,
                to_screw: to_screw?,
                sheet_percent: sheet_percent?,
            })
        })();
        match read {
            Some(read) if problems.is_empty() => Ok(read),
            _ => Err(problems),
        }
    }
}
