//! The hazards of each operation, in our words. Every one defers to the machine's manual and to local rules.

use crate::source::{Mark, Source};
use serde::Serialize;

/// A hazard that a card's answer can lead a person into.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Caution {
    /// Ripping with a tilted blade.
    BevelRip,
    /// Turning a bevelled board over between passes.
    TurnedBoard,
    /// Cutting a strip that is thin beside the fence.
    ThinStrip,
    /// Cutting a groove or a rabbet: the blade does not come through.
    BlindCut,
    /// Bringing the blade up to the fence, as for a rabbet.
    BladeAtFence,
    /// Cutting an end at an angle along the gauge.
    AngledCut,
    /// Sawing a taper.
    TaperCut,
    /// Cutting a part too small to be held by hand.
    SmallPartAtSaw,
    /// Handling a full sheet.
    SheetHandling,
    /// Drilling a cup hole.
    CupDrilling,
    /// Drilling holes that stop inside the board.
    BlindHoles,
    /// Cutting mortises and slots with a router or a slot cutter.
    RoutedSlot,
    /// Driving a screw near an edge.
    DrivenScrew,
    /// Drilling or routing a part too small to be held by hand.
    SmallPartAtCutter,
    /// Loading a shelf.
    ShelfLoad,
    /// Hanging a shelf on brackets.
    BracketLoad,
    /// Bevelling a strip that stands on its edge.
    StripOnEdge,
    /// Drilling and screwing into a wall.
    InTheWall,
    /// Hanging something that people walk and work below.
    HungOnTheWall,
    /// Hanging clothes on a rail.
    RailLoad,
    /// Spacing what a child could get through or be caught in.
    Railing,
    /// Lifting something heavy, above the shoulders at the end.
    HeavyLift,
    /// Furniture that can come down on somebody.
    TipsOver,
    /// Gluing and coating.
    GluesAndFinishes,
    /// Eyes, ears, lungs.
    DustAndNoise,
    /// Every figure here is an estimate for ordinary furniture.
    Estimate,
}

const HABIT: Source = Source::practice("shop safety, in our words; the machine's manual and local rules come first");

impl Caution {
    /// What it is about, in a few words.
    pub const fn hazard(self) -> &'static str {
        match self {
            Self::BevelRip => "Tilted blade",
            Self::TurnedBoard => "Sharp edge at the fence",
            Self::ThinStrip => "Thin strip",
            Self::BlindCut => "Cut that does not come through",
            Self::BladeAtFence => "Blade close to the fence",
            Self::AngledCut => "Cut at an angle",
            Self::TaperCut => "Taper",
            Self::SmallPartAtSaw => "Small part at the saw",
            Self::SheetHandling => "Full sheets",
            Self::CupDrilling => "Drilling the cup",
            Self::BlindHoles => "Holes that stop inside",
            Self::RoutedSlot => "Router and slot cutter",
            Self::DrivenScrew => "Screws near an edge",
            Self::SmallPartAtCutter => "Small part at the cutter",
            Self::ShelfLoad => "Load on the shelf",
            Self::BracketLoad => "What a bracket holds",
            Self::StripOnEdge => "Strip on its edge",
            Self::InTheWall => "What is in the wall",
            Self::HungOnTheWall => "Hung on a wall",
            Self::RailLoad => "Pull on the rail",
            Self::Railing => "Railings, gates and cots",
            Self::HeavyLift => "Heavy lift",
            Self::TipsOver => "Furniture that tips",
            Self::GluesAndFinishes => "Glues and finishes",
            Self::DustAndNoise => "Dust and noise",
            Self::Estimate => "An estimate",
        }
    }

    /// What to do about it.
    pub const fn advice(self) -> &'static str {
        match self {
            Self::BevelRip => {
                "Let the blade lean away from the fence, so that no strip is caught under it; if it leans only towards the fence, move the fence to the other side. Riving knife fitted, guard on, push stick in hand, and stand out of line with the cut. With the saw off, turn the blade by hand at full tilt: it must clear the fence and the insert. Your saw's manual decides."
            }
            Self::TurnedBoard => {
                "A bevelled edge can creep under the fence. Use a tall or packed fence and measure each strip before the next pass."
            }
            Self::ThinStrip => {
                "Let the thin strip fall on the side away from the fence, or push it right through with a long shoe. Close the gap round the blade. Never reach over a turning blade; wait until it stands still."
            }
            Self::BlindCut => {
                "The guard may have to come off: fit the protection that the manual names, use hold-downs and push blocks, go deeper in several passes, and put the guard back straight after. Keep hands away from where the blade comes out."
            }
            Self::BladeAtFence => {
                "Screw a straight scrap face to the fence, so that the blade meets wood and never the fence. Lower the blade, set the fence, lock it, and only then raise the turning blade slowly to its height. Or run the other edge along the fence. Your saw's manual decides."
            }
            Self::AngledCut => {
                "A piece creeps along a gauge that is not square: clamp it, and line the gauge with something rough. Never guide it by gauge and fence at once; the offcut must lie free. Try the setting on scrap, for an error of a tenth of a degree comes back at every corner."
            }
            Self::TaperCut => {
                "Never saw a taper freehand: use a jig or a sled that carries the piece, with a stop behind it and clamps on top, so that no hand comes near the blade. The thin end of the offcut can be thrown back; stand out of its line and let the blade stop before taking it away."
            }
            Self::SmallPartAtSaw => {
                "A part shorter than about 300 mm (12 in) is not held by hand: cut it from a longer piece, or clamp it to a sled, with a stop that the offcut cannot jam against. Keep both hands a hand's width from the blade."
            }
            Self::SheetHandling => {
                "Two people for a full sheet. Support it on the way in and on the way out, and never rip it freehand."
            }
            Self::CupDrilling => {
                "Clamp the door and feed the bit gently. Set the depth stop on a scrap of the same thickness: the point of the bit must not come out at the face."
            }
            Self::BlindHoles => {
                "Clamp the board and the guide or the rail. Set the depth stop on a scrap of the same thickness, the point of the bit counted in: it must not come out at the other face, and no hand belongs under it. Let the bit come to rest before lifting it out. Your machine's manual decides."
            }
            Self::RoutedSlot => {
                "Cut a first one in two scraps of the same thickness: it must not come out at the other face. Clamp the work, set the fence before the plug goes in, plunge gently and in several depths, feed against the turn of the cutter, both hands on the machine. Wait until it stands still. Its manual decides."
            }
            Self::DrivenScrew => {
                "Clamp both parts, drill the pilot first and keep your hand out of the line of the point: a screw that is too long, or that wanders, comes out at the face. Set the clutch low and drive the last turn by hand."
            }
            Self::SmallPartAtCutter => {
                "A part too short to hold with both hands clear of the cutter is clamped or held in a jig, or machined while it is still part of a longer board."
            }
            Self::ShelfLoad => {
                "Pins, brackets and the wall carry this load too; they need their own check. Heavy things belong on the lowest shelf. Shelves over people's heads, in public rooms or carrying a structure are work for a qualified person."
            }
            Self::BracketLoad => {
                "Brackets of one size differ several times over in what they hold, so none is rated here: read the rating on the maker's own sheet, for how many brackets and which arm it is said, and take one that holds well more than the share shown. Drive the screws that the sheet names into every hole. Nobody leans or sits on such a shelf."
            }
            Self::StripOnEdge => {
                "A strip on edge tips easily. Use a fence at least as high as the strip with a wooden face on it, clamp a carrier behind the strip or use a hold-down on both sides of the blade, and never steady it by hand near the cut."
            }
            Self::InTheWall => {
                "Before the first hole, find cables, pipes and studs with a detector and with your eyes: look where sockets, switches and taps stand. Switch off what may be struck. Where the law asks for a licensed person, for electricity, gas, water or the structure, call one."
            }
            Self::HungOnTheWall => {
                "The building code and the landlord's rules come first, above all where the earth shakes. Nothing here checks the wall itself, the cabinet's joints and back, or somebody leaning on it. Hang nothing heavy from plasterboard alone. Try it with the full load and nobody below."
            }
            Self::RailLoad => {
                "A rail is for clothes, not for people: children hang on it. Sockets, brackets, blocks and their screws carry this load too and need their own check, and the cabinet must be fixed so that it cannot tip forward. Round the ends of a sawn tube before it is handled."
            }
            Self::Railing => {
                "Where a child could climb, get through or be caught, local rules set the largest gap, and the strength: those for stairs and balconies, those for gates, cots and bunks. Take the gap from there, and measure every gap again when it is built."
            }
            Self::HeavyLift => {
                "Take doors, drawers and shelves off first. Screw a batten to the wall below the cabinet, or stand props under it, so that nobody holds it while it is fixed. Clear the floor, agree who says go, and leave it if anybody is unsure. The equation is for a healthy grown person who lifts once in a while, not for several people on a ladder."
            }
            Self::TipsOver => {
                "A cabinet on the floor that is higher than it is wide or deep comes down when a child climbs on an open drawer or door: fix it to the wall with a strap or a bracket into something solid. While it is tilted up nobody stands below it; two people, and the lower edge on something that does not slip."
            }
            Self::GluesAndFinishes => {
                "Air the room, keep flames and sparks away, and wear the gloves and the mask that the data sheet names. A rag with oil in it can take fire by itself: spread it out flat to dry in the open, or lay it in water. Keep it all from children and food, and get rid of what is left as local rules say."
            }
            Self::DustAndNoise => {
                "Eyes, ears and lungs: goggles, muffs, extraction at the source and a mask for fine dust. Unplug the machine before touching the cutter. No gloves near anything that turns."
            }
            Self::Estimate => {
                "Boards differ from the tables by a quarter or more. Take this as an estimate for ordinary furniture, and try a heavy load on the real thing."
            }
        }
    }

    /// Who says so.
    pub const fn source(self) -> Source {
        HABIT
    }
}

/// As `{ hazard, advice, mark }`.
impl Serialize for Caution {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct Shown {
            hazard: &'static str,
            advice: &'static str,
            mark: Mark,
        }
        Shown { hazard: self.hazard(), advice: self.advice(), mark: self.source().mark }.serialize(serializer)
    }
}
