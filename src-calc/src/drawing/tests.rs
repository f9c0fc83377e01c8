use super::*;

fn board() -> Drawing {
    Drawing {
        shapes: vec![
            Shape::rect(Layer::Outline, [0.0, 0.0], [600.0, 300.0]),
            Shape::Circle { layer: Layer::Hole, centre: [37.0, 41.0], radius: 2.5 },
        ],
        dimensions: vec![Dimension::new([0.0, 0.0], [600.0, 0.0], -40.0, Length::mm(600, 1).unwrap())],
        notes: vec![Note::new([300.0, 320.0], "A < B & \"C\"")],
        owned: Vec::new(),
        figure: None,
    }
}

#[test]
fn everything_lies_on_the_paper() {
    let drawing = board();
    assert_eq!(drawing.extent(), Some([[0.0, 0.0], [600.0, 300.0]]));
    let [low, high] = drawing.paper();
    // The dimension's line lies 40 below, and its strokes below that.
    assert!(low[1] < -40.0 && low[0] < 0.0 && high[0] > 600.0 && high[1] > 320.0, "{low:?} {high:?}");
    assert_eq!(Drawing::default().extent(), None);
}

#[test]
fn a_dimension_says_its_length_and_stands_beside_its_points() {
    let across = Dimension::new([0.0, 5.0], [600.0, 5.0], -40.0, Length::mm(600, 1).unwrap());
    assert_eq!((across.words.as_str(), across.is_upright()), ("600", false));
    assert_eq!(across.ends(), [[0.0, -35.0], [600.0, -35.0]]);
    let up = Dimension::new([5.0, 0.0], [5.0, 14.6], 20.0, Length::mm(146, 10).unwrap());
    assert_eq!((up.words.as_str(), up.is_upright()), ("14.6", true));
    assert_eq!(up.ends(), [[25.0, 0.0], [25.0, 14.6]]);
}

/// SVG counts down from the top: the hole 41 above the lower edge lies 259 below the upper one.
#[test]
fn an_svg_stands_upright_and_escapes_its_words() {
    let drawing = board();
    let svg = drawing.to_svg("Side \"left\"");
    let top = drawing.paper()[1][1];
    assert!(svg.contains(&format!("cy=\"{}\"", ((top - 41.0) * 1000.0).round() / 1000.0)), "{svg}");
    assert!(svg.contains("aria-label=\"Side &quot;left&quot;\"") && svg.contains("A &lt; B &amp; &quot;C&quot;"));
    // On a page nothing brings a style of its own.
    assert!(svg.contains("<style>") && !drawing.to_picture("").contains("<style>"));
    assert!(!svg.contains("NaN") && svg.starts_with("<svg ") && svg.ends_with("</svg>"));
}

#[test]
fn a_dxf_has_every_line_of_a_closed_one() {
    let dxf = board().to_dxf();
    let count = |words: &str| dxf.split("\r\n").filter(|line| *line == words).count();
    // Four sides; the dimension's line and its two strokes.
    assert_eq!((count("LINE"), count("CIRCLE"), count("TEXT")), (7, 1, 2));
    assert!(dxf.ends_with("0\r\nEOF\r\n"));
    let broken = Drawing { notes: vec![Note::new([0.0, 0.0], "a\r\n0\r\nEOF")], ..board() };
    assert_eq!(broken.to_dxf().split("\r\n").filter(|line| *line == "EOF").count(), 1);
}

/// 600 by 300 with its figures: at 1:2 more than 300 wide, at 1:5 some 130.
#[test]
fn a_drawing_takes_the_largest_scale_that_its_place_has_room_for() {
    for (place, one_to) in [([180.0, 120.0], 5), ([130.0, 120.0], 10), ([1000.0, 1000.0], 1), ([1.0, 1.0], 200)] {
        let scaled = board().on_paper(place);
        assert_eq!(scaled.one_to, one_to, "{place:?}");
        // The figures are as high on paper whatever the scale is.
        assert!((scaled.drawing.figure_mm() - 2.5 * f64::from(one_to)).abs() < 1e-9);
        let [width, height] = scaled.size_mm();
        assert!(one_to == 200 || (width <= place[0] && height <= place[1]), "{width} × {height} in {place:?}");
    }
    let svg = board().at_scale(5).to_picture("");
    let [width, _] = board().at_scale(5).size_mm();
    assert!(svg.contains(&format!(" width=\"{}mm\"", (width * 1000.0).round() / 1000.0)), "{svg}");
    // The units inside stay millimetres of the thing itself.
    assert!(svg.contains("M0 ") && svg.contains("L600 "), "{svg}");
}

#[test]
fn shapes_say_what_they_belong_to() {
    let mut drawing = board();
    drawing
        .draw_of(7, [Shape::rect(Layer::Cut, [10.0, 10.0], [20.0, 20.0]), Shape::line(Layer::Cut, [0.0; 2], [9.0; 2])]);
    let svg = drawing.to_picture("");
    assert_eq!(svg.matches(" data-owner=\"7\"").count(), 2);
    assert_eq!(svg.matches("data-owner").count(), 2, "what belongs to nothing says nothing: {svg}");
}

/// Six letters of a figure of 3 take at most 11.2: along a line of 30 they run upwards, beside one of 5 they stand level,
/// and the paper has room for them.
#[test]
fn words_longer_than_what_they_measure_stand_level() -> Result<(), crate::measure::LengthError> {
    let drawn = |high: f64| -> Result<Drawing, crate::measure::LengthError> {
        let dimension = Dimension {
            words: "113 mm".to_owned(),
            ..Dimension::new([0.0, 0.0], [0.0, high], -10.0, Length::mm(113, 1)?)
        };
        let shapes = vec![Shape::rect(Layer::Outline, [0.0; 2], [100.0, 100.0])];
        Ok(Drawing { shapes, dimensions: vec![dimension], ..Drawing::default() })
    };
    assert!(drawn(30.0)?.to_svg("").contains("rotate(-90"));
    let short = drawn(5.0)?;
    assert!(!short.to_svg("").contains("rotate"));
    let ([x, _], turned) = short.dimensions[0].words_at(3.0);
    assert!(!turned && x < -10.0 - 11.2 / 2.0, "{x}");
    assert!(short.paper()[0][0] < x - 11.1 / 2.0, "{:?}", short.paper());
    Ok(())
}
