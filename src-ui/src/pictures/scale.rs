//! From millimetres to the paper, the same for every direction: pictures are to scale.

/// A part of the paper, in drawing units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// Left edge.
    pub x: f64,
    /// Upper edge.
    pub y: f64,
    /// Width.
    pub width: f64,
    /// Height.
    pub height: f64,
}

/// Millimetres onto a place, centred, with y upwards as on a drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    per_mm: f64,
    left: f64,
    bottom: f64,
}

impl Scale {
    /// So that `width_mm` × `height_mm` just fits the place.
    pub fn fit(width_mm: f64, height_mm: f64, place: Place) -> Self {
        let per_mm = (place.width / width_mm.max(1e-6)).min(place.height / height_mm.max(1e-6));
        Self {
            per_mm,
            left: place.x + (place.width - width_mm * per_mm) / 2.0,
            bottom: place.y + (place.height + height_mm * per_mm) / 2.0,
        }
    }

    /// So that `width_mm` fills the width of the place; what is higher than the place runs out of it.
    pub fn fit_width(width_mm: f64, place: Place) -> Self {
        let per_mm = place.width / width_mm.max(1e-6);
        Self { per_mm, left: place.x, bottom: place.y + place.height }
    }

    /// From the left, in drawing units.
    pub fn x(&self, mm: f64) -> f64 {
        self.left + mm * self.per_mm
    }

    /// From the bottom, in drawing units.
    pub fn y(&self, mm: f64) -> f64 {
        self.bottom - mm * self.per_mm
    }

    /// A length, in drawing units.
    pub fn length(&self, mm: f64) -> f64 {
        mm * self.per_mm
    }

    /// A point.
    pub fn point(&self, (x, y): (f64, f64)) -> (f64, f64) {
        (self.x(x), self.y(y))
    }

    /// Points.
    pub fn points(&self, points: &[(f64, f64)]) -> Vec<(f64, f64)> {
        points.iter().map(|point| self.point(*point)).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_drawing_is_centred_and_the_same_in_both_directions() {
        let scale = Scale::fit(100.0, 50.0, Place { x: 10.0, y: 0.0, width: 200.0, height: 200.0 });
        assert!((scale.length(100.0) - 200.0).abs() < 1e-9);
        assert!((scale.x(0.0) - 10.0).abs() < 1e-9);
        assert!((scale.y(0.0) - 150.0).abs() < 1e-9, "centred: (200 + 100) / 2");
        assert!((scale.y(50.0) - 50.0).abs() < 1e-9);
    }
}
