//! The carcass: its sizes inside and out, where its back lies, how it is divided.

use super::ask::{Asked, answered, ranged, reading};
use super::cleat;
use super::inputs::{Back, Corners, Inputs, Lie, SizeFrom, Stands};
use super::read::Given;
use crate::cards::{back_panel, groove, spacing, wall_cleat};
use crate::measure::{Length, LengthError, Range};
use crate::problem::{Problem, Problems};
use crate::stock::materials::Kind;
use crate::stock::movement::Sheet;

/// A stretch: from where to where.
pub(super) type Stretch = (Length, Length);

/// What the parts are built on. Places as in [`super::part`].
pub(super) struct Frame {
    /// Over all.
    pub(super) width: Length,
    /// Over all, without plinth or legs.
    pub(super) height: Length,
    /// From the rear edges to the front edges.
    pub(super) depth: Length,
    /// Thickness of the carcass.
    pub(super) board: Length,
    /// Between the sides, and what may be wrong with it.
    pub(super) inside_width: Range,
    /// Between bottom and top, and what may be wrong with it.
    pub(super) inside_height: Range,
    /// The rear face of the back.
    pub(super) set: Length,
    /// Where the room inside begins.
    pub(super) inner: Length,
    /// Where the boards end and their edging begins.
    pub(super) core: Length,
    /// Where shelves end, their edging included.
    pub(super) shelf_front: Length,
    /// The bays, from left to right.
    pub(super) bays: Vec<Stretch>,
    /// The fixed shelves of a bay, from below.
    pub(super) fixed: Vec<Stretch>,
    /// The groove or rabbet for the back; none for one that is planted on.
    pub(super) groove: Option<groove::Answer>,
    /// The back.
    pub(super) back: back_panel::Answer,
    /// The cleat.
    pub(super) cleat: Option<wall_cleat::Answer>,
    /// From the top of the cabinet down to the strip of the cleat.
    pub(super) below_top: Length,
}

/// Outer sizes of the carcass.
struct Outer {
    width: Length,
    height: Length,
    depth: Length,
}

/// What lies behind the room inside.
struct Rear {
    set: Length,
    inner: Length,
}

impl Frame {
    /// Where the opening of every bay begins and ends, from below.
    pub(super) fn opening(&self) -> Result<Stretch, LengthError> {
        Ok((self.board, self.height.minus(self.board)?))
    }

    /// From where to where the bay with the clothes rail goes, if one has it.
    pub(super) fn rail_bay(&self, given: &Given) -> Option<Stretch> {
        let at = usize::try_from(given.rail_bay?).ok()?.checked_sub(1)?;
        self.bays.get(at).copied()
    }

    /// Where the uprights stand, from there on.
    pub(super) fn uprights(&self, datum: Length) -> Result<Vec<Stretch>, LengthError> {
        let between = self.bays.iter().zip(self.bays.iter().skip(1));
        between.map(|(bay, next)| Ok((bay.1.minus(datum)?, next.0.minus(datum)?))).collect()
    }

    /// Where the rear of a plinth stands: in front of a back that lies in the boards, whose way is not shut by it then, and
    /// whose screws are reached from inside.
    pub(super) fn plinth_rear(&self) -> Length {
        if self.groove.is_some() { self.inner } else { Length::ZERO }
    }

    /// Up to where a bay is free: to the top, or to the rail under it that the cabinet hangs by.
    pub(super) fn free_to(&self, inputs: &Inputs, given: &Given) -> Result<Length, LengthError> {
        let (_, under_top) = self.opening()?;
        if inputs.stands == Stands::Rail { under_top.minus(given.strip_height) } else { Ok(under_top) }
    }

    pub(super) fn new(inputs: &Inputs, given: &Given, asked: &mut Asked) -> Result<Self, Problems> {
        let board = given.carcass.nominal();
        let two = board.times(2, 1)?;
        let (width, height) = match inputs.size_from {
            SizeFrom::Outside => (given.width.nominal(), given.height.nominal().minus(given.base)?),
            SizeFrom::Opening => (
                given.width.nominal().minus(given.free.times(2, 1)?)?,
                given.height.nominal().minus(given.free)?.minus(given.base)?,
            ),
            SizeFrom::Inside => (given.width.nominal().plus(two)?, given.height.nominal().plus(two)?),
        };
        for (field, size) in [("width", width), ("height", height)] {
            if size <= two {
                let why = "Nothing is left between the boards: make it larger.";
                return Err(Problems::one(field, Problem::Clash { why }));
            }
        }
        let below_top = cleat::below_top(inputs, given)?;
        let cleat = cleat::cleat(inputs, given, (width, height), (below_top, asked))?;
        let rear = rear(inputs, given, cleat.as_ref(), asked)?;
        let depth = depth(inputs, given, &rear, cleat.as_ref())?;
        let outer = Outer { width, height, depth };
        let core = depth.minus(given.edging)?;
        let behind_doors =
            if inputs.has_doors() && inputs.lie == Lie::Inset { depth.minus(given.door.nominal())? } else { depth };
        let shelf_front = behind_doors.minus(given.shelf_back)?;
        let least = rear.inner.plus(given.edging)?.plus(Length::mm(20, 1)?)?;
        if shelf_front <= least {
            let why = "the back, what is behind it and the doors leave no room for a shelf";
            let least = given.depth.nominal().plus(least.minus(shelf_front)?)?;
            return Err(Problems::one("depth", Problem::TooSmall { least: least.into(), why }));
        }
        let groove = groove(inputs, given, &rear, Some(core), asked)?;
        let (inside_width, inside_height) = inside(inputs, given, &outer, board)?;
        let back = back(inputs, given, (inside_width, inside_height), asked)?;
        let bays = divided(inside_width.nominal(), board, given.bays, board, "bays")?;
        let shelves = given.fixed_shelves.saturating_add(1);
        let levels = divided(inside_height.nominal(), given.shelf.nominal(), shelves, board, "fixed_shelves")?;
        let fixed = levels.iter().zip(levels.iter().skip(1)).map(|(below, above)| (below.1, above.0)).collect();
        let Rear { set, inner } = rear;
        let Outer { width, height, depth } = outer;
        Ok(Self {
            width,
            height,
            depth,
            board,
            inside_width,
            inside_height,
            set,
            inner,
            core,
            shelf_front,
            bays,
            fixed,
            groove,
            back,
            cleat,
            below_top,
        })
    }
}

/// The stretches that so many boards less one leave of a length, all alike.
fn divided(
    length: Length,
    board: Length,
    into: u32,
    datum: Length,
    field: &'static str,
) -> Result<Vec<Stretch>, Problems> {
    let end = datum.plus(length)?;
    if into <= 1 {
        return Ok(vec![(datum, end)]);
    }
    let inputs = spacing::Inputs {
        length: reading(length),
        width: reading(board),
        even: spacing::Even::Gaps,
        ends: spacing::Ends::Gap,
        by: spacing::By::Count,
        count: (into - 1).to_string().as_str().into(),
        datum: reading(datum),
        ..spacing::Inputs::default()
    };
    let names = [("count", field), ("width", field), ("length", field)];
    let answer = answered(spacing::solve(&inputs), &names)?;
    let begins = std::iter::once(datum).chain(answer.pieces.iter().map(|piece| piece.far));
    let ends = answer.pieces.iter().map(|piece| piece.near).chain([end]);
    Ok(begins.zip(ends).collect())
}

/// Where the back lies, and where the room in front of it begins.
fn rear(
    inputs: &Inputs,
    given: &Given,
    cleat: Option<&wall_cleat::Answer>,
    asked_first: &mut Asked,
) -> Result<Rear, Problems> {
    if inputs.back == Back::Planted {
        return Ok(Rear { set: given.back.nominal().negated(), inner: Length::ZERO });
    }
    let set = match (cleat, inputs.back) {
        (Some(cleat), _) => cleat.inset,
        (None, Back::Groove) => given.back_set,
        (None, Back::Rabbet | Back::Planted) => Length::ZERO,
    };
    let mut rear = Rear { set, inner: Length::ZERO };
    if let Some(groove) = groove(inputs, given, &rear, None, asked_first)? {
        rear.inner = groove.ends_at;
    }
    Ok(rear)
}

/// How the groove or rabbet is cut; with the width of the parts also what the bottom is ripped to.
fn groove(
    inputs: &Inputs,
    given: &Given,
    rear: &Rear,
    part_width: Option<Length>,
    asked_first: &mut Asked,
) -> Result<Option<groove::Answer>, Problems> {
    let (cut, panel) = match inputs.back {
        Back::Planted => return Ok(None),
        Back::Groove => (groove::Cut::Groove, given.back),
        // A rabbet also takes what lies behind the back.
        Back::Rabbet => (groove::Cut::Rabbet, given.back.plus(rear.set.into())?),
    };
    let asked = groove::Inputs {
        cut,
        thickness: reading(given.carcass.nominal()),
        panel: ranged(panel),
        fit: reading(given.groove_fit),
        distance: reading(rear.set),
        deep: groove::Deep::Own,
        depth: reading(given.groove_depth),
        kerf: inputs.kerf.clone(),
        against: groove::Against::NearEdge,
        part_width: part_width.map(reading).unwrap_or_default(),
    };
    let names = [
        ("thickness", "carcass.thickness"),
        ("panel", "back_board.thickness"),
        ("fit", "groove_fit"),
        ("distance", "back_set"),
        ("depth", "groove_depth"),
        ("kerf", "kerf"),
        ("part_width", "depth"),
    ];
    let answer = answered(groove::solve(&asked), &names)?;
    asked_first.groove = Some(asked);
    Ok(Some(answer))
}

/// From the rear edges to the front edges.
fn depth(
    inputs: &Inputs,
    given: &Given,
    rear: &Rear,
    cleat: Option<&wall_cleat::Answer>,
) -> Result<Length, LengthError> {
    let typed = given.depth.nominal();
    let inset = inputs.lie == Lie::Inset;
    match inputs.size_from {
        SizeFrom::Outside => Ok(typed),
        SizeFrom::Opening => {
            let doors = if inset { Length::ZERO } else { given.door.nominal() };
            let planted = if rear.set.is_negative() { rear.set.negated() } else { Length::ZERO };
            let stands_off = cleat.map_or(Length::ZERO, |cleat| cleat.stands_off);
            typed.minus(doors)?.minus(planted)?.minus(stands_off)
        }
        SizeFrom::Inside => {
            let doors = if inset { given.door.nominal() } else { Length::ZERO };
            typed.plus(rear.inner)?.plus(doors)?.plus(given.shelf_back)
        }
    }
}

/// Clear width and height. What stands between other boards is as long as it is cut, whatever they measure; where it is
/// covered by them, or covers them, their thickness adds its doubt.
fn inside(inputs: &Inputs, given: &Given, outer: &Outer, board: Length) -> Result<(Range, Range), LengthError> {
    let two = board.times(2, 1)?;
    let boards = given.carcass.tolerance().times(2, 1)?;
    let over = inputs.corners == Corners::Over;
    let sized = |outer: Length, typed: Range, doubtful: bool| {
        let own = given.own_doubt(inputs, typed);
        let doubt = if doubtful { own.plus(boards)? } else { own };
        Range::new(outer.minus(two)?, doubt)
    };
    Ok((sized(outer.width, given.width, over)?, sized(outer.height, given.height, !over)?))
}

/// The movement of a board by what it is.
fn sheet(kind: Option<Kind>) -> Sheet {
    match kind {
        Some(Kind::Mdf) => Sheet::Mdf,
        Some(Kind::Particleboard) => Sheet::Particleboard,
        Some(Kind::Hardboard) => Sheet::Hardboard,
        _ => Sheet::Plywood,
    }
}

fn back(
    inputs: &Inputs,
    given: &Given,
    (width, height): (Range, Range),
    asked_first: &mut Asked,
) -> Result<back_panel::Answer, Problems> {
    let edge = |way, depth: Length| back_panel::Edge { way, depth: reading(depth) };
    let board = given.carcass.nominal();
    let housed = || match inputs.back {
        Back::Groove => Ok(edge(back_panel::Way::Groove, given.groove_depth)),
        Back::Rabbet => Ok(edge(back_panel::Way::Rabbet, given.groove_depth)),
        // Held in by half of the clearance all round, so that it does not stand out.
        Back::Planted => {
            Ok::<_, LengthError>(edge(back_panel::Way::PastEdge, board.minus(given.clearance.times(1, 2)?)?))
        }
    };
    let past = inputs.past_bottom && inputs.back != Back::Planted;
    let asked = back_panel::Inputs {
        opening_width: ranged(width),
        opening_height: ranged(height),
        left: housed()?,
        right: housed()?,
        top: housed()?,
        bottom: if past { edge(back_panel::Way::PastEdge, board) } else { housed()? },
        clearance: reading(given.clearance),
        sheet: sheet(inputs.back_board.material.family().map(|family| family.kind)),
        ..back_panel::Inputs::default()
    };
    let names = [
        ("opening_width", "width"),
        ("opening_height", "height"),
        ("clearance", "clearance"),
        ("left.depth", "groove_depth"),
        ("right.depth", "groove_depth"),
        ("top.depth", "groove_depth"),
        ("bottom.depth", "groove_depth"),
    ];
    let answer = answered(back_panel::solve(&asked), &names)?;
    asked_first.back_panel = Some(asked);
    Ok(answer)
}
