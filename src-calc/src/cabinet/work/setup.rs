//! How a machine is set for a step of the work, or what is done in it.

use crate::cabinet::outside::Beside;
use crate::cabinet::part::{Axis, Stock};
use crate::cards::joints::Kind;
use crate::cards::{groove, wall_cleat};
use crate::measure::Length;
use serde::Serialize;

/// One hole, mortise or slot of a joint.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Bore {
    /// How wide, or its diameter.
    pub across: Length,
    /// How long it is along the joint.
    pub along: Length,
    /// How deep; none where it goes right through.
    pub deep: Option<Length>,
}

/// Heights of a wall cleat above the floor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct OnWall {
    /// The point of the wall's strip.
    pub point: Length,
    /// Its screws.
    pub screws: Length,
    /// The lower edge of the spacer.
    pub spacer: Length,
}

/// How a machine is set.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Setup {
    /// Ripped to width: the fence from the blade.
    Rip {
        /// From which board.
        stock: Stock,
        /// Fence to the near side of the blade.
        fence: Length,
    },
    /// Crosscut to length: the stop from the blade.
    Crosscut {
        /// From which board.
        stock: Stock,
        /// Stop to the near side of the blade.
        stop: Length,
    },
    /// The board that both strips of the wall cleat are parted from: ripped, and cut to the longer one.
    CleatBoard {
        /// Fence to the near side of the blade.
        fence: Length,
        /// Stop to the near side of the blade.
        stop: Length,
    },
    /// The cleat's strip on the wall crosscut, once it is parted from the other.
    CleatCut {
        /// Stop to the near side of the blade.
        stop: Length,
    },
    /// The groove or rabbet for the back, with the rear edge at the fence.
    Groove {
        /// Height of the blade.
        height: Length,
        /// Whether it is a rabbet along the rear edge.
        rabbet: bool,
        /// Every pass.
        passes: Vec<groove::Pass>,
    },
    /// The same where it stops before ends that are seen: no saw blade ends a cut square, a router nearly does.
    StoppedGroove {
        /// How deep.
        depth: Length,
        /// Its walls, from the rear edge.
        walls: [Length; 2],
        /// From where to where it goes, from the left end.
        ends: [Length; 2],
    },
    /// The bevels of the wall cleat.
    Bevel {
        /// Every pass, the blade leaning away from the fence.
        passes: Vec<wall_cleat::Pass>,
    },
    /// The bevels of strips for handles, two from one board.
    HandleBevel {
        /// How far the blade leans, in degrees.
        lean_degrees: f64,
        /// From the fence to the near side of the blade, at the table, in millimetres.
        fence_mm: f64,
    },
    /// Edges glued on and trimmed flush.
    Edge,
    /// A row of holes along a rail.
    Row {
        /// The row, from the front edge.
        from_front: Length,
        /// The first hole that is drilled, from the lower end.
        first: Length,
        /// Their diameter.
        hole: Length,
        /// How deep; none where it goes right through.
        deep: Option<Length>,
    },
    /// A socket of the clothes rail, screwed on.
    Socket {
        /// Its middle, from the board's front edge.
        from_front: Length,
        /// From its lower end.
        up: Length,
    },
    /// Cups of hinges, drilled against a fence.
    Cups {
        /// From the door's edge to their middles.
        from_edge: Length,
        /// Their middles from its lower end.
        at: Vec<Length>,
        /// Their diameter.
        cup: Length,
        /// How deep.
        deep: Length,
    },
    /// Holes through a door for the screws of its handle.
    HandleHoles {
        /// From the door's free edge.
        from_edge: Length,
        /// From its lower end.
        at: Vec<Length>,
    },
    /// Holes through the bottom for the screws of the rail with hooks.
    HookRailHoles {
        /// From the bottom's front edge.
        from_front: Length,
        /// From its left end.
        at: Vec<Length>,
    },
    /// Hooks on their rail.
    Hooks {
        /// From the rail's lower edge.
        up: Length,
        /// From its left end.
        at: Vec<Length>,
    },
    /// Marks for the screws of brackets, each with as many.
    Brackets {
        /// Where the shelf outside is.
        at: Beside,
        /// Whether they are on the shelf itself; else on what holds it.
        shelf: bool,
        /// The brackets, one by one, from where [`crate::cabinet::OutsideShelf`] has them.
        along: Vec<Length>,
        /// The screws of each, across that.
        across: Vec<Length>,
    },
    /// Holes through the bottom for the screws of the plinth.
    PlinthHoles {
        /// From the bottom's front edge.
        from_front: Length,
        /// From its left end.
        at: Vec<Length>,
    },
    /// Holes through the cleat's strip on the cabinet.
    StripHoles {
        /// From its upper edge.
        down: Length,
        /// From its left end.
        at: Vec<Length>,
    },
    /// Joints in the ends or edges of parts.
    Join {
        /// What joins it.
        kind: Kind,
        /// Which way the marks run, as [`crate::cabinet::Join::along`] has it.
        along: Axis,
        /// Marks on the part whose end is joined.
        marks: Vec<Length>,
        /// From its outer face to their middles.
        line: Length,
        /// What is bored or cut there.
        bore: Bore,
    },
    /// Pockets in the ends or edges of parts, on the face that is not seen.
    Pockets {
        /// Which way the marks run, as [`crate::cabinet::Join::along`] has it.
        along: Axis,
        /// Marks on the part whose end is joined.
        marks: Vec<Length>,
        /// From the end to the shoulder on which the head sits, along the screw.
        shoulder: Length,
        /// How long the screws are.
        screw: Length,
    },
    /// Joints in the faces that such ends meet.
    JoinFace {
        /// What joins it.
        kind: Kind,
        /// Which way the marks run, as [`crate::cabinet::Join::along`] has it.
        along: Axis,
        /// Marks on the part whose face it is.
        marks: Vec<Length>,
        /// The line that they are on, as [`crate::cabinet::Join::lines`] has it.
        line: Length,
        /// What is bored or cut there.
        bore: Bore,
    },
    /// The carcass glued or screwed together.
    Assemble {
        /// About its back, which lies in grooves on all sides.
        about_back: bool,
    },
    /// The plinth screwed together.
    PlinthTogether,
    /// The plinth screwed under the bottom.
    FixPlinth,
    /// The cleat's strip screwed on through the back.
    FixStrip,
    /// The rail with hooks screwed on from above.
    FixHooks,
    /// The clothes rail cut to length and put into its sockets.
    Rail {
        /// How long it is cut.
        length: Length,
    },
    /// The back put in.
    PutIn {
        /// Screwed on, so far from screw to screw at the most; none where grooves hold it.
        pitch: Option<Length>,
    },
    /// Strips for handles screwed on from behind.
    FixHandles,
    /// Doors hung, and set by their gaps.
    HangDoors,
    /// Strips screwed to the wall, and the cabinet hooked on.
    HangUp {
        /// The spacer is packed out from the wall by so much.
        packing: Length,
        /// Where the wall's strip of a cleat goes.
        strip: Option<OnWall>,
        /// The wall screws along the strip or rail, from its left end, and how many are at each.
        screws: Vec<(Length, u32)>,
    },
    /// Legs screwed on.
    Legs,
    /// Brackets screwed on, and the shelf outside on them.
    FixOutside,
}
