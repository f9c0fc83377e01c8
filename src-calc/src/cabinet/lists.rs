//! The cut list as it leaves the app: as a table of commas, and as plain text that can be read as it is.

use super::Cabinet;
use super::part::What;
use crate::measure::{Graduation, Length, Rounding, Style, Unit};

/// The cut list as a table of commas, lengths in millimetres, to a thousandth of one.
pub fn cut_list_csv(cabinet: &Cabinet) -> String {
    let mut table = String::from("Part,Length (mm),Width (mm),Number,Board,Thickness (mm)\r\n");
    for line in &cabinet.cut_list {
        let [length, width, thickness] =
            [line.length, line.width, line.thickness].map(|size| (size.as_mm() * 1000.0).round() / 1000.0);
        let (name, board, count) = (line.name, line.stock.name(), line.parts.len());
        table.push_str(&format!("{name},{length},{width},{count},{board},{thickness}\r\n"));
    }
    table
}

/// How many edges of a part get edging: those along its length, and those across it.
pub fn edged(cabinet: &Cabinet, part: usize) -> [usize; 2] {
    let Some(board) = cabinet.parts.get(part) else { return [0; 2] };
    let mut count = [0; 2];
    for piece in cabinet.parts.iter().filter(|piece| piece.what == What::Edging { on: part }) {
        count[usize::from(piece.grain != board.grain)] += 1;
    }
    count
}

/// A length at the marks of the tool in hand; as it is where it lies past them all.
fn marked(length: Length, marks: Graduation, rounding: Rounding) -> String {
    let style = if marks.unit() == Unit::In { Style::Inches } else { Style::Mm };
    marks.round(length, rounding).map_or_else(|_| length.to_string(), |rounded| rounded.value.show(style))
}

/// A thickness as it was measured.
fn measured(length: Length, marks: Graduation) -> String {
    let on_a_tape = marks.unit() == Unit::In && length.inch_parts().denominator <= 64;
    length.show(if on_a_tape { Style::Inches } else { Style::Mm })
}

fn edges(cabinet: &Cabinet, parts: &[usize]) -> String {
    let [long, short] = parts.first().map_or([0; 2], |part| edged(cabinet, *part));
    let named = [(long, "long"), (short, "short")];
    let said = named.iter().filter(|(count, _)| *count > 0).map(|(count, name)| format!("{count} {name}"));
    said.collect::<Vec<_>>().join(", ")
}

const HEAD: [&str; 7] = ["No.", "Part", "Length", "Width", "Thickness", "Board", "Edging"];
/// Numbers end below one another, words begin so.
const RIGHT: [bool; 7] = [true, false, true, true, true, false, false];

/// The cut list as lines of aligned columns, for a fixed-width letter: number, part, length along the grain, width,
/// thickness, board, and which edges get edging. Lengths are rounded to `marks`; thicknesses are as measured.
pub fn cut_list_text(cabinet: &Cabinet, marks: Graduation, rounding: Rounding) -> String {
    let mut rows: Vec<[String; 7]> = vec![HEAD.map(str::to_owned)];
    rows.extend(cabinet.cut_list.iter().map(|line| {
        let [length, width] = [line.length, line.width].map(|size| marked(size, marks, rounding));
        [
            line.parts.len().to_string(),
            line.name.to_owned(),
            length,
            width,
            measured(line.thickness, marks),
            line.stock.name().to_owned(),
            edges(cabinet, &line.parts),
        ]
    }));
    let letters = |text: &str| text.chars().count();
    let wide: Vec<usize> =
        (0..HEAD.len()).map(|at| rows.iter().map(|row| letters(&row[at])).max().unwrap_or(0)).collect();
    let mut text = String::new();
    for row in &rows {
        let mut line = String::new();
        for ((cell, wide), right) in row.iter().zip(&wide).zip(RIGHT) {
            let room = " ".repeat(wide - letters(cell));
            line.push_str(&if right { format!("{room}{cell}  ") } else { format!("{cell}{room}  ") });
        }
        text.push_str(line.trim_end());
        text.push('\n');
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cabinet::{Edging, Hand, Inputs, solve};

    type Checked = Result<(), Box<dyn std::error::Error>>;

    fn demo() -> Result<Cabinet, String> {
        solve(&Inputs::default()).map_err(|problems| format!("{problems:?}"))
    }

    /// The sides of the demo are 1170 × 350 × 14.6 mm, by hand in the cabinet's own tests: 1170/25.4 · 16 = 737.0 marks,
    /// 46 1/16 in; 350/25.4 · 16 = 220.5, so 13 3/4 in or 13 13/16 in, and nearest of 220.47 is 220.
    #[test]
    fn the_list_reads_in_the_units_in_use() -> Checked {
        let cabinet = demo()?;
        for (marks, want) in [
            (Graduation::HalfMm, "  2  Side"),
            (Graduation::HalfMm, "1170 mm"),
            (Graduation::HalfMm, "14.6 mm"),
            (Graduation::Sixteenth, "46 1/16 in"),
            (Graduation::Sixteenth, "13 3/4 in"),
        ] {
            let text = cut_list_text(&cabinet, marks, Rounding::Nearest);
            assert!(text.lines().any(|line| line.contains("Side") && line.contains(want)), "{want}:\n{text}");
        }
        Ok(())
    }

    #[test]
    fn the_columns_stand_below_one_another() -> Checked {
        let cabinet = demo()?;
        let text = cut_list_text(&cabinet, Graduation::HalfMm, Rounding::Nearest);
        let mut lines = text.lines();
        let head: Vec<char> = lines.next().ok_or("no head")?.chars().collect();
        let column = |name: &str| head.windows(name.len()).position(|at| at.iter().collect::<String>() == name);
        let [part, length] = [column("Part").ok_or("no part")?, column("Length").ok_or("no length")?];
        assert_eq!(text.lines().count(), cabinet.cut_list.len() + 1);
        for (line, row) in lines.zip(&cabinet.cut_list) {
            let letters: Vec<char> = line.chars().collect();
            let named: String = letters.iter().skip(part).take(row.name.chars().count()).collect();
            assert_eq!(named, row.name, "{line}");
            // Lengths end below the end of their heading.
            let end: String = letters.iter().skip(length).take("Length".len()).collect();
            assert!(end.ends_with("mm") && letters.get(length + "Length".len()) == Some(&' '), "{line}");
            assert_eq!(line, line.trim_end());
        }
        Ok(())
    }

    #[test]
    fn edges_are_counted_along_and_across() -> Checked {
        let inputs = Inputs { edging: Edging::Solid, ..Inputs::default() };
        let cabinet = solve(&inputs).map_err(|problems| format!("{problems:?}"))?;
        let count = |what: What| -> Result<[usize; 2], String> {
            let at = cabinet.parts.iter().position(|part| part.what == what).ok_or(format!("no {what:?}"))?;
            Ok(edged(&cabinet, at))
        };
        // The front edge of a side; all four of a door; none of a back.
        assert_eq!(count(What::Side(Hand::Left))?, [1, 0]);
        assert_eq!(count(What::Door { bay: 1, hinged: Hand::Left })?, [2, 2]);
        assert_eq!(count(What::Back)?, [0, 0]);
        assert_eq!(edged(&cabinet, usize::MAX), [0, 0]);
        let text = cut_list_text(&cabinet, Graduation::HalfMm, Rounding::Nearest);
        assert!(text.lines().any(|line| line.contains("Door") && line.ends_with("2 long, 2 short")), "{text}");
        Ok(())
    }
}
