//! The moisture that wood comes to in air of a temperature and a humidity.

use crate::source::Source;

/// The formula of [`equilibrium_percent`].
pub const EQUILIBRIUM: Source = Source::memory(
    "Wood Handbook, chapter 4, after Hailwood and Horrobin; agrees with four values on a page of the table at 70 °F",
);

/// The temperatures for which the formula was fitted, °C: 30 to 130 °F, a little widened.
pub const RANGE_C: (f64, f64) = (-5.0, 60.0);

/// What the formula is made of at one temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Air {
    /// Weight of wood for each sorbing place.
    pub w: f64,
    /// The first constant, K.
    pub k: f64,
    /// The second, K₁.
    pub k1: f64,
    /// The third, K₂.
    pub k2: f64,
}

impl Air {
    /// At a temperature in °C.
    pub fn at(celsius: f64) -> Self {
        let square = celsius * celsius;
        Self {
            w: 349.0 + 1.29 * celsius + 0.0135 * square,
            k: 0.805 + 0.000_736 * celsius - 0.000_002_73 * square,
            k1: 6.27 - 0.009_38 * celsius - 0.000_303 * square,
            k2: 1.91 + 0.0407 * celsius - 0.000_293 * square,
        }
    }

    /// Moisture in per cent of the dry weight, at a relative humidity from 0 to 1.
    pub fn moisture_percent(self, humidity: f64) -> f64 {
        let kh = self.k * humidity;
        let one = self.k1 * kh;
        let two = self.k1 * self.k2 * kh * kh;
        1800.0 / self.w * (kh / (1.0 - kh) + (one + 2.0 * two) / (1.0 + one + two))
    }
}

/// The moisture, in per cent of the dry weight, that wood comes to in air of `celsius` °C and a relative humidity of
/// `humidity_percent`.
///
/// # Source
/// [`EQUILIBRIUM`].
///
/// # Example
/// ```
/// # use scantling::stock::movement::air::equilibrium_percent;
/// assert!((equilibrium_percent(20.0, 65.0) - 11.9963).abs() < 0.0001);
/// ```
pub fn equilibrium_percent(celsius: f64, humidity_percent: f64) -> f64 {
    Air::at(celsius).moisture_percent(humidity_percent / 100.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Values of the table at 70 °F, from a page that prints them.
    #[test]
    fn agrees_with_a_page_of_the_table() {
        let at_70_f = (70.0 - 32.0) * 5.0 / 9.0;
        for (humidity, want, within) in [(25.0, 5.3, 0.1), (60.0, 11.1, 0.15), (84.0, 17.6, 0.15), (87.0, 19.0, 0.15)] {
            let got = equilibrium_percent(at_70_f, humidity);
            assert!((got - want).abs() <= within, "{humidity} %: {got} against {want}");
        }
    }

    #[test]
    fn damper_air_makes_damper_wood_and_warmer_air_drier() {
        for celsius in [-5.0, 0.0, 20.0, 40.0, 60.0] {
            for humidity in 0..100 {
                let [now, more] = [humidity, humidity + 1].map(|h| equilibrium_percent(celsius, f64::from(h)));
                assert!(now >= 0.0 && more > now && more < 35.0, "{celsius} °C, {humidity} %: {now}, {more}");
            }
            assert_eq!(equilibrium_percent(celsius, 0.0), 0.0);
        }
        for humidity in [30.0, 50.0, 80.0] {
            assert!(equilibrium_percent(10.0, humidity) > equilibrium_percent(30.0, humidity));
        }
    }
}
