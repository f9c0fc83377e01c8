//! A whole cabinet: from a dozen measurements to every part at its place, its holes and joints, what it is made of,
//! whether it holds, and the order of work.
//!
//! A cabinet works out nothing that a card does: it asks the cards, and puts what they say together. Along each
//! direction everything is exact.

mod ask;
mod bored;
mod build;
mod checks;
mod cleat;
mod costs;
mod doors;
mod drawn;
mod fits;
mod frame;
mod given_back;
mod goods;
mod handed;
mod handles;
mod hooks;
mod inputs;
mod joins;
mod lists;
mod outside;
mod part;
mod plinth;
mod rail;
mod read;
mod rows;
mod sizes;
mod templates;
mod wall;
mod work;
mod working;

pub use ask::Asked;
pub use checks::{Clash, Shelf};
pub use costs::{Amount, Cost, Costs, Priced, Prices, costs};
pub use drawn::{Drawn, Face, View, drawings};
pub use fits::{Fit, Fitted};
pub use given_back::given_back;
pub use goods::{BackScrews, Fitting, Fittings, Line, layout};
pub use handed::handed;
pub use handles::{At, Handle, Pull, StripHandle};
pub use hooks::{HookRail, Hooks};
pub use inputs::{Back, Board, Corners, Doors, Edging, Inputs, Lie, SizeFrom, Stands};
pub use joins::Join;
pub use lists::{cut_list_csv, cut_list_text, edged};
pub use outside::{Beside, Outside, OutsideShelf};
pub use part::{Axis, Block, Hand, Part, Stock, What};
pub use plinth::Plinth;
pub use rail::{Rail, Socket};
pub use rows::Rows;
pub use sizes::{Holes, JointSizes};
pub use templates::{Pattern, RowUse, Template, templates, without_template};
pub use wall::StripScrews;
pub use work::{Bore, OnWall, Setup, Step};

use crate::cards::{back_panel, bevelled_strips, clothes_rail, cup_hinge, groove, hanging, wall_cleat};
use crate::caution::Caution;
use crate::measure::{Length, Range};
use crate::problem::{Problem, Problems};
use crate::working::Working;
use build::Built;
use frame::Frame;
use outside::Site;
use read::Given;
use serde::Serialize;

/// A door and its hinges.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Door {
    /// The part's place in the list of parts.
    pub on: usize,
    /// Where it lies, its edging included.
    pub place: Block,
    /// How it meets the board that it is hinged on.
    pub mounting: cup_hinge::Mounting,
    /// How far it reaches past the opening on the left and on the right; less than zero where it stops short.
    pub overlays: [Length; 2],
    /// Middles of its cups, from its lower edge; the plates lie on the rows of holes.
    pub cups: Vec<Length>,
    /// The strip by which it is opened.
    pub handle: Option<StripHandle>,
    /// What the card says of it.
    pub answer: cup_hinge::Answer,
}

/// All that follows from the inputs.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Cabinet {
    /// Width of the carcass.
    pub width: Length,
    /// Its height, without plinth or legs.
    pub height: Length,
    /// From the rear edges to the front edges.
    pub depth: Length,
    /// Height of plinth or legs.
    pub base: Length,
    /// Between the sides.
    pub inside_width: Range,
    /// Between bottom and top.
    pub inside_height: Range,
    /// From the back to where shelves end.
    pub inside_depth: Length,
    /// The bays: from where to where.
    pub bays: Vec<(Length, Length)>,
    /// Every part at its place.
    pub parts: Vec<Part>,
    /// Parts that are cut alike.
    pub cut_list: Vec<Line>,
    /// What is bought by the piece.
    pub fittings: Vec<Fittings>,
    /// How much edging it takes, end to end.
    pub edging: Option<Length>,
    /// Rows of holes, board by board.
    pub rows: Vec<Rows>,
    /// Joints of the carcass.
    pub joins: Vec<Join>,
    /// The doors, from left to right.
    pub doors: Vec<Door>,
    /// How two strips for handles are ripped from one board, where they are bevelled.
    pub handle_rip: Option<bevelled_strips::Answer>,
    /// The back, as its card has it.
    pub back: back_panel::Answer,
    /// The groove or rabbet for it.
    pub groove: Option<groove::Answer>,
    /// The rail with hooks below it.
    pub hooks: Option<HookRail>,
    /// The shelf outside.
    pub outside: Option<OutsideShelf>,
    /// The wall cleat.
    pub cleat: Option<wall_cleat::Answer>,
    /// How its strip is screwed on, where it is not joined.
    pub strip_screws: Option<StripScrews>,
    /// The screws round the back, where no groove holds it.
    pub back_screws: Option<BackScrews>,
    /// The screws of the plinth.
    pub plinth: Option<Plinth>,
    /// Whether it stands on legs, which are no parts.
    pub legs: bool,
    /// Whether the carcass is put together about the back, which cannot go in afterwards.
    pub back_first: bool,
    /// The shelves under their load.
    pub shelves: Vec<Shelf>,
    /// The clothes rail.
    pub rail: Option<clothes_rail::Answer>,
    /// Its sockets, left and right.
    pub sockets: Vec<Socket>,
    /// What it weighs, empty, in kilograms. An estimate.
    pub weight_kg: f64,
    /// Whether the wall holds it.
    pub hang: Option<hanging::Answer>,
    /// What is in another thing's way.
    pub clashes: Vec<Clash>,
    /// The worst fits.
    pub fits: Vec<Fit>,
    /// The order of work.
    pub work: Vec<Step>,
    /// The mark of this very work, by which ticks are known to belong to it.
    pub work_mark: String,
    /// What each card was asked, to open it with.
    pub asked: Asked,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}

/// Works out a whole cabinet.
///
/// # Errors
/// A problem for each input that cannot be used, in the cabinet's own names for them, also where a card found it.
pub fn solve(inputs: &Inputs) -> Result<Cabinet, Problems> {
    whole(inputs).map_err(|problems| inputs.at_fields(problems))
}

fn whole(inputs: &Inputs) -> Result<Cabinet, Problems> {
    let given = inputs.read()?;
    let mut asked = Asked::default();
    let frame = Frame::new(inputs, &given, &mut asked)?;
    check(inputs, &given, &frame)?;
    let mut built = Built::carcass(inputs, &given, &frame)?;
    let doors = doors::doors(inputs, &given, &frame)?;
    let (rows, tight) = rows::rows(inputs, &given, &frame, &doors, (&mut built, &mut asked))?;
    let mut parts = built.parts;
    let joins = joins::joins(inputs, &frame, &parts, &mut asked)?;
    let rail = rail::rail(inputs, &given, &frame, &mut asked)?;
    rail::hung(&given, &frame, rail.as_ref(), &mut parts)?;
    let mut clashes = checks::clashes(inputs, &given, &frame, &doors, &rows, (&tight, rail.as_ref()))?;
    let doors = hung((inputs, &given, &frame), &rows, doors, (&mut parts, &mut asked))?;
    if let Some(strip) = &given.handle {
        strip.tell(&mut asked);
    }
    let hooks = match &given.hooks {
        Some(row) => row.rail(&given, &frame, &mut parts)?,
        None => None,
    };
    let site = Site { inputs, given: &given, frame: &frame, doors: &doors, rail: hooks.as_ref(), rows: &rows };
    let outside = match &given.outside {
        Some(ledge) => ledge.shelf(&site, &mut parts)?,
        None => None,
    };
    clashes.extend(outside::clashes(&site, &parts, outside.as_ref())?);
    clashes.extend(checks::past_room(inputs, &given, &frame, &parts)?);
    let meet = bored::that_meet(&parts, &joins, outside.as_ref(), frame.depth.as_mm());
    clashes.extend(meet.into_iter().map(|board| Clash::JointsMeet { board }));
    let weight_kg = checks::weight_kg(inputs, &parts)? + rail.as_ref().map_or(0.0, |rail| rail.own_weight_kg);
    // What stands on the shelf outside hangs on the wall all the same.
    let outside_kg = outside.as_ref().map_or(0.0, |shelf| shelf.load_kg);
    let (strip_screws, plinth) = (wall::strip_screws(inputs, &given, &frame, &parts)?, plinth::plinth(&frame, &parts)?);
    let back_screws = goods::back_screws(inputs, &parts)?;
    let loose = parts.iter().any(|part| matches!(part.what, What::LooseShelf { .. }));
    let mut cabinet = Cabinet {
        shelves: checks::shelves(inputs, &parts, &mut asked)?,
        hang: wall::hang(inputs, &given, &frame, (weight_kg + outside_kg, rail.as_ref(), &mut asked))?,
        fits: fits::fits(inputs, &given, &frame, loose)?,
        cut_list: goods::cut_list(&parts),
        edging: goods::edging(inputs, &parts)?,
        fittings: Vec::new(),
        width: frame.width,
        height: frame.height,
        depth: frame.depth,
        base: given.base,
        inside_width: frame.inside_width,
        inside_height: frame.inside_height,
        inside_depth: frame.shelf_front.minus(frame.inner)?,
        sockets: rail::sockets(&given, &frame, rail.as_ref(), &parts)?,
        bays: frame.bays.clone(),
        parts,
        rows,
        joins,
        doors,
        handle_rip: given.handle.as_ref().and_then(|strip| strip.ripped().cloned()),
        back: frame.back.clone(),
        groove: frame.groove.clone(),
        hooks,
        outside,
        cleat: frame.cleat.clone(),
        strip_screws,
        back_screws,
        plinth,
        legs: inputs.stands == Stands::Legs,
        back_first: back_first(inputs),
        rail,
        weight_kg,
        clashes,
        work: Vec::new(),
        work_mark: String::new(),
        asked,
        working: Working::default(),
        cautions: Vec::new(),
    };
    let large = goods::larger_than_sheet(inputs, &cabinet)?;
    let missed = wall::on_uprights(inputs, &frame, cabinet.hang.as_ref())?;
    cabinet.clashes.extend(large.into_iter().chain(missed));
    cabinet.fittings = goods::fittings(inputs, &cabinet);
    cabinet.work = work::steps(&cabinet)?;
    cabinet.work_mark = work::work_mark(&cabinet);
    cabinet.working = working::working(inputs, &given, &frame, &cabinet)?;
    cabinet.cautions = cautions(inputs, &cabinet);
    Ok(cabinet)
}

/// What only the whole can say.
fn check(inputs: &Inputs, given: &Given, frame: &Frame) -> Result<(), Problems> {
    let mut problems = Problems::default();
    let boards = frame.board.times(2, 1)?.plus(frame.plinth_rear())?;
    if inputs.stands == Stands::Plinth && given.toe.plus(boards)? >= frame.depth {
        let most = frame.depth.minus(boards)?;
        let why = "front and rear of the plinth have to stand under the cabinet";
        problems.add("toe", Problem::TooLarge { most: most.into(), why });
    }
    if inputs.stands == Stands::Rail && given.strip_height >= frame.inside_height.nominal() {
        let most = frame.inside_height.nominal();
        problems.add("strip_height", Problem::TooLarge { most: most.into(), why: "the cabinet is no higher inside" });
    }
    let rail_from = frame.free_to(inputs, given)?;
    if let Some((_, highest)) = frame.fixed.last().filter(|(_, highest)| *highest > rail_from) {
        let most = frame.opening()?.1.minus(*highest)?;
        let why = "the rail lies above the highest fixed shelf";
        problems.add("strip_height", Problem::TooLarge { most: most.into(), why });
    }
    if inputs.has_doors() && inputs.lie != Lie::Inset && given.reveal >= given.carcass.nominal() {
        let most = given.carcass.nominal();
        let why = "a door in front covers some of the board's edge";
        problems.add("reveal", Problem::TooLarge { most: most.into(), why });
    }
    let door = given.edging.times(2, 1)?;
    if inputs.has_doors() && door >= given.carcass.nominal().min(given.door.nominal()).times(4, 1)? {
        let most = given.door.nominal();
        problems.add("edging_thickness", Problem::TooLarge { most: most.into(), why: "thicker edging is a frame" });
    }
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}

/// Adds the doors to the parts, their cups where the plates are, and what they are opened by.
fn hung(
    (inputs, given, frame): (&Inputs, &Given, &Frame),
    rows: &[Rows],
    doors: Vec<doors::Door>,
    (parts, asked_first): (&mut Vec<Part>, &mut Asked),
) -> Result<Vec<Door>, Problems> {
    let mut hung = Vec::new();
    for door in doors {
        let on = parts.len();
        doors::parts(&door, given, parts)?;
        // The face that looks right is the one on the bay's left.
        let face = match door.hinged {
            Hand::Left => Hand::Right,
            Hand::Right => Hand::Left,
        };
        let own = rows.iter().find(|rows| rows.bay == door.bay && rows.face == face);
        let cups: Vec<Length> =
            own.map(|rows| rows.rows.plates.iter().map(|plate| plate.on_door).collect()).unwrap_or_default();
        let datum = own.map_or(Ok(Length::ZERO), |rows| frame.opening()?.0.minus(rows.datum))?;
        let (told, answer) = doors::on_rows(&door, &cups, datum)?;
        asked_first.cup_hinge.get_or_insert(told);
        let mut handle = None;
        if let Some(strip) = &given.handle {
            let (part, fixed) = strip.on_door(inputs, &door, (on, parts.len()))?;
            parts.push(part);
            handle = Some(fixed);
        }
        let doors::Door { place, mounting, overlays, .. } = door;
        hung.push(Door { on, place, mounting, overlays, cups, handle, answer });
    }
    Ok(hung)
}

/// Whether a back that is held at the bottom too has to go in while the carcass is put together: in grooves it always does,
/// in rabbets where the strip of a cleat comes behind it.
fn back_first(inputs: &Inputs) -> bool {
    let behind = inputs.back == Back::Groove || (inputs.back == Back::Rabbet && inputs.stands == Stands::Cleat);
    behind && !inputs.past_bottom
}

/// What one person may lift under the best conditions, in kilograms: the load constant of the revised NIOSH lifting
/// equation, DHHS (NIOSH) Publication 94-110.
const ONE_LIFTS_KG: f64 = 23.0;

/// Of every card that was asked, each once; those of brackets, which no card knows, first.
fn cautions(inputs: &Inputs, cabinet: &Cabinet) -> Vec<Caution> {
    let mut all: Vec<Caution> = Vec::new();
    if cabinet.outside.is_some() {
        all.push(Caution::BracketLoad);
    }
    if !inputs.stands.is_hung() {
        all.push(Caution::TipsOver);
    }
    if cabinet.work.iter().any(|step| matches!(step.setup, Setup::StoppedGroove { .. })) {
        all.push(Caution::RoutedSlot);
    }
    if cabinet.weight_kg > ONE_LIFTS_KG {
        all.push(Caution::HeavyLift);
    }
    let asked = [
        cabinet.hang.as_ref().map(|hang| &hang.cautions),
        cabinet.cleat.as_ref().map(|cleat| &cleat.cautions),
        Some(&cabinet.back.cautions),
        cabinet.groove.as_ref().map(|groove| &groove.cautions),
        cabinet.doors.first().map(|door| &door.answer.cautions),
        cabinet.handle_rip.as_ref().map(|rip| &rip.cautions),
        cabinet.rows.first().map(|rows| &rows.rows.cautions),
        cabinet.joins.first().map(|join| &join.marks.cautions),
        cabinet.shelves.first().map(|shelf| &shelf.answer.cautions),
        cabinet.rail.as_ref().map(|rail| &rail.cautions),
        cabinet.outside.as_ref().map(|shelf| &shelf.answer.cautions),
    ];
    for caution in asked.into_iter().flatten().flatten() {
        if !all.contains(caution) {
            all.push(*caution);
        }
    }
    all
}

#[cfg(test)]
mod tests;
