//! From what was typed to lengths, with every problem named.

use super::handles::Strip;
use super::hooks::Row;
use super::inputs::{Board, Doors, Edging, Inputs, SizeFrom, Stands};
use super::outside::Ledge;
use super::rail;
use crate::measure::{Figure, FigureKind, Length, Quantity, Range, Reading};
use crate::problem::{Problem, Problems};

/// More bays than anybody puts into one cabinet.
const MOST_BAYS: u32 = 8;
/// More shelves than anybody puts into a bay.
const MOST_SHELVES: u32 = 24;
/// No sheet is longer, in millimetres.
const LONGEST_MM: i64 = 5000;
/// No blade takes more, in millimetres. From memory: saw blades take 2 to 5.
const WIDEST_KERF_MM: i64 = 12;

/// The inputs, read. Every length is what its field says.
pub(super) struct Given {
    pub(super) width: Range,
    pub(super) height: Range,
    pub(super) depth: Range,
    pub(super) free: Length,
    pub(super) carcass: Range,
    pub(super) shelf: Range,
    pub(super) back: Range,
    pub(super) door: Range,
    pub(super) strip: Range,
    pub(super) groove_depth: Length,
    pub(super) groove_fit: Length,
    pub(super) back_set: Length,
    pub(super) clearance: Length,
    /// Zero where it is hung.
    pub(super) base: Length,
    pub(super) toe: Length,
    pub(super) strip_height: Length,
    pub(super) bays: u32,
    pub(super) fixed_shelves: u32,
    pub(super) loose_shelves: u32,
    pub(super) shelf_play: Length,
    pub(super) shelf_back: Length,
    pub(super) least_gap: Length,
    /// From one.
    pub(super) rail_bay: Option<u32>,
    /// Zero where there is no rail.
    pub(super) rail_play: Length,
    pub(super) reveal: Length,
    pub(super) gap: Length,
    /// Zero where edges stay bare.
    pub(super) edging: Length,
    /// None where doors have no strips for handles.
    pub(super) handle: Option<Strip>,
    /// None where nothing hangs below.
    pub(super) hooks: Option<Row>,
    /// None where there is no shelf outside.
    pub(super) outside: Option<Ledge>,
}

impl Given {
    /// What may be wrong with a size of the cabinet itself: the room on a wall may be anything, the cabinet is cut to one
    /// size all the same.
    pub(super) fn own_doubt(&self, inputs: &Inputs, typed: Range) -> Length {
        if inputs.size_from == SizeFrom::Opening { Length::ZERO } else { typed.tolerance() }
    }
}

/// A measured length above zero, no longer than any sheet.
pub(super) fn measured(problems: &mut Problems, field: &'static str, reading: &Reading) -> Option<Range> {
    let range = problems.check(field, reading.range())?;
    if !range.low().is_positive() {
        problems.add(field, Problem::NotAboveZero);
        return None;
    }
    let most = problems.check("", Length::mm(LONGEST_MM, 1))?;
    if range.high() > most {
        problems.add(field, Problem::TooLarge { most: most.into(), why: "no sheet is larger" });
        return None;
    }
    Some(range)
}

fn board(problems: &mut Problems, field: &'static str, board: &Board) -> Option<Range> {
    measured(problems, field, &board.thickness)
}

/// What the saw takes, which every cut of the sheets asks for.
fn check_kerf(problems: &mut Problems, kerf: &Reading) {
    let (Some(kerf), Ok(most)) = (problems.zero_or_more("kerf", kerf), Length::mm(WIDEST_KERF_MM, 1)) else { return };
    if kerf > most {
        problems.add("kerf", Problem::TooLarge { most: most.into(), why: "no blade takes more" });
    }
}

/// A whole number, or a problem.
pub(super) fn count(
    problems: &mut Problems,
    field: &'static str,
    figure: &Figure,
    (least, most): (u32, u32),
) -> Option<u32> {
    let value = problems.check(field, figure.value(FigureKind::Count))?;
    let why = "that is what one cabinet has";
    if value < f64::from(least) {
        problems.add(field, Problem::TooSmall { least: Quantity::count(least.into()), why });
        return None;
    }
    let found = (least..=most).find(|whole| f64::from(*whole) >= value);
    if found.is_none() {
        problems.add(field, Problem::TooLarge { most: Quantity::count(most.into()), why });
    }
    found
}

impl Inputs {
    /// A door in front of a bay.
    pub(super) fn has_doors(&self) -> bool {
        self.doors != Doors::None
    }

    /// Zero where it does not apply.
    fn if_any(
        applies: bool,
        problems: &mut Problems,
        field: &'static str,
        read: impl FnOnce(&mut Problems, &'static str) -> Option<Length>,
    ) -> Option<Length> {
        if applies { read(problems, field) } else { Some(Length::ZERO) }
    }

    #[allow(clippy::option_option, reason = "no rail is an answer, unreadable is none")]
    fn rail_bay(&self, problems: &mut Problems, bays: Option<u32>) -> Option<Option<u32>> {
        if self.rail_bay.is_blank() {
            return Some(None);
        }
        count(problems, "rail_bay", &self.rail_bay, (1, bays?)).map(Some)
    }

    /// Every length that is typed, by its field.
    fn lengths(&self) -> [(&'static str, &Reading); 61] {
        [
            ("width", &self.width),
            ("height", &self.height),
            ("depth", &self.depth),
            ("free", &self.free),
            ("carcass.thickness", &self.carcass.thickness),
            ("shelf.thickness", &self.shelf.thickness),
            ("back_board.thickness", &self.back_board.thickness),
            ("door.thickness", &self.door.thickness),
            ("strip.thickness", &self.strip.thickness),
            ("groove_depth", &self.groove_depth),
            ("groove_fit", &self.groove_fit),
            ("back_set", &self.back_set),
            ("clearance", &self.clearance),
            ("kerf", &self.kerf),
            ("top_at", &self.top_at),
            ("ceiling", &self.ceiling),
            ("strip_height", &self.strip_height),
            ("slack", &self.slack),
            ("base", &self.base),
            ("toe", &self.toe),
            ("shelf_play", &self.shelf_play),
            ("shelf_back", &self.shelf_back),
            ("least_gap", &self.least_gap),
            ("reveal", &self.reveal),
            ("gap", &self.gap),
            ("arm", &self.arm),
            ("half_arm", &self.half_arm),
            ("inset_arm", &self.inset_arm),
            ("cup_edge", &self.cup_edge),
            ("edging_thickness", &self.edging_thickness),
            ("joint_sizes.dowel_diameter", &self.joint_sizes.dowel_diameter),
            ("joint_sizes.dowel_length", &self.joint_sizes.dowel_length),
            ("joint_sizes.tenon_thickness", &self.joint_sizes.tenon_thickness),
            ("joint_sizes.tenon_width", &self.joint_sizes.tenon_width),
            ("joint_sizes.tenon_length", &self.joint_sizes.tenon_length),
            ("joint_sizes.screw_length", &self.joint_sizes.screw_length),
            ("joint_sizes.core", &self.joint_sizes.core),
            ("joint_sizes.shank", &self.joint_sizes.shank),
            ("joint_sizes.spacing", &self.joint_sizes.spacing),
            ("holes.pin", &self.holes.pin),
            ("holes.pin_depth", &self.holes.pin_depth),
            ("holes.cup", &self.holes.cup),
            ("holes.cup_depth", &self.holes.cup_depth),
            ("rail.diameter", &self.rail.diameter),
            ("rail.height", &self.rail.height),
            ("rail.width", &self.rail.width),
            ("rail.wall", &self.rail.wall),
            ("rail.play", &self.rail.play),
            ("rail.hanger", &self.rail.hanger),
            ("handle.thickness", &self.handle.thickness),
            ("handle.width", &self.handle.width),
            ("handle.length", &self.handle.length),
            ("handle.set_in", &self.handle.set_in),
            ("hooks.height", &self.hooks.height),
            ("outside.up", &self.outside.up),
            ("outside.length", &self.outside.length),
            ("outside.depth", &self.outside.depth),
            ("outside.arm", &self.outside.arm),
            ("outside.leg", &self.outside.leg),
            ("stud_pitch", &self.stud_pitch),
            ("screw_length", &self.screw_length),
        ]
    }

    /// Problems with every one at a field. Sums that grow past what can be held exactly belong to no one input: they
    /// are put where the length with the most digits was typed, which is the one to round.
    pub(super) fn at_fields(&self, problems: Problems) -> Problems {
        if problems.iter().all(|(field, _)| !field.is_empty()) {
            return problems;
        }
        let digits = |reading: &Reading| {
            let length = reading.range().ok().map(Range::nominal)?;
            let mm = length.ratio(Length::mm(1, 1).ok()?).ok()?;
            Some(u128::from(mm.numerator()).saturating_mul(mm.denominator().into()))
        };
        let finest = self.lengths().into_iter().max_by_key(|(_, reading)| digits(reading).unwrap_or_default());
        let finest = finest.map_or("width", |(field, _)| field);
        let mut named = Problems::default();
        for (field, problem) in problems.iter() {
            named.add(if field.is_empty() { finest } else { field }, problem.clone());
        }
        named
    }

    /// Reads every field that the choices call for.
    pub(super) fn read(&self) -> Result<Given, Problems> {
        let mut problems = Problems::default();
        let p = &mut problems;
        let width = measured(p, "width", &self.width);
        let height = measured(p, "height", &self.height);
        let depth = measured(p, "depth", &self.depth);
        let opening = self.size_from == SizeFrom::Opening;
        let free = Self::if_any(opening, p, "free", |p, field| p.zero_or_more(field, &self.free));
        let carcass = board(p, "carcass.thickness", &self.carcass);
        let shelf = board(p, "shelf.thickness", &self.shelf);
        let back = board(p, "back_board.thickness", &self.back_board);
        let door =
            if self.has_doors() { board(p, "door.thickness", &self.door) } else { Some(Range::exact(Length::ZERO)) };
        let hung = self.stands.is_hung();
        let strip = if hung { board(p, "strip.thickness", &self.strip) } else { Some(Range::exact(Length::ZERO)) };
        let strip_height = Self::if_any(hung, p, "strip_height", |p, field| p.above_zero(field, &self.strip_height));
        let base = Self::if_any(!hung, p, "base", |p, field| p.above_zero(field, &self.base));
        let plinth = self.stands == Stands::Plinth;
        let toe = Self::if_any(plinth, p, "toe", |p, field| p.zero_or_more(field, &self.toe));
        let bays = count(p, "bays", &self.bays, (1, MOST_BAYS));
        let rail_bay = self.rail_bay(p, bays);
        let has_rail = !self.rail_bay.is_blank();
        let rail_play = if has_rail { rail::play(self, p) } else { Some(Length::ZERO) };
        let edged = self.edging != Edging::Bare;
        let edging = Self::if_any(edged, p, "edging_thickness", |p, field| p.above_zero(field, &self.edging_thickness));
        let groove_depth = p.above_zero("groove_depth", &self.groove_depth);
        let groove_fit = p.zero_or_more("groove_fit", &self.groove_fit);
        let back_set = p.zero_or_more("back_set", &self.back_set);
        let clearance = p.zero_or_more("clearance", &self.clearance);
        let fixed_shelves = count(p, "fixed_shelves", &self.fixed_shelves, (0, MOST_SHELVES));
        let loose_shelves = count(p, "loose_shelves", &self.loose_shelves, (0, MOST_SHELVES));
        let shelf_play = p.zero_or_more("shelf_play", &self.shelf_play);
        let shelf_back = p.zero_or_more("shelf_back", &self.shelf_back);
        let least_gap = p.above_zero("least_gap", &self.least_gap);
        let reveal = p.zero_or_more("reveal", &self.reveal);
        let gap = p.zero_or_more("gap", &self.gap);
        let handle = self.strip(p);
        let hooks = self.row(p);
        let outside = self.ledge(p);
        check_kerf(p, &self.kerf);
        p.above_zero("sheet_length", &self.sheet_length);
        p.above_zero("sheet_width", &self.sheet_width);
        self.check_prices(p);
        let given = (|| {
            Some(Given {
                width: width?,
                height: height?,
                depth: depth?,
                free: free?,
                carcass: carcass?,
                shelf: shelf?,
                back: back?,
                door: door?,
                strip: strip?,
                groove_depth: groove_depth?,
                groove_fit: groove_fit?,
                back_set: back_set?,
                clearance: clearance?,
                base: base?,
                toe: toe?,
                strip_height: strip_height?,
                bays: bays?,
                fixed_shelves: fixed_shelves?,
                loose_shelves: loose_shelves?,
                shelf_play: shelf_play?,
                shelf_back: shelf_back?,
                least_gap: least_gap?,
                rail_bay: rail_bay?,
                rail_play: rail_play?,
                reveal: reveal?,
                gap: gap?,
                edging: edging?,
                handle: handle?,
                hooks: hooks?,
                outside: outside?,
            })
        })();
        given.filter(|_| problems.is_empty()).ok_or(problems)
    }
}
