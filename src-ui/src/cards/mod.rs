//! The cards on the screen: each file says only what is particular to its card.
//!
//! A card gives its fields, its picture and its reply; state, storage, recomputing and layout are written once, in
//! `widgets/`. Adding a card is one file here, one in the calculation crate, one file of words, and one line in [`CARDS`].

mod angles;
mod back_panel;
mod bevelled_strips;
mod cabinet;
mod clothes_rail;
mod convert;
mod cup_hinge;
mod groove;
mod hanging;
mod hole_rows;
mod joints;
mod materials;
mod sheet_layout;
mod shelf;
mod spacing;
mod wall_cleat;
mod wood_movement;

pub use cabinet::ShopSheet;

use crate::settings::Settings;
use crate::show::Show;
use crate::widgets::card_state::{Held, Seeks, open};
use crate::widgets::fields::Fields;
use crate::widgets::reply::Reply;
use crate::widgets::searching::Seeker;
use crate::words::say;
use scantling::caution::Caution;
use scantling::problem::Problems;
use scantling::working::Working;
use serde::{Serialize, de::DeserializeOwned};
use std::rc::Rc;
use yew::prelude::*;

/// Where in the job a card is wanted; the bench is in this order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stage {
    /// How large and how strong.
    Size,
    /// Sawing parts.
    Cut,
    /// Grooves and rabbets.
    Groove,
    /// Holes.
    Drill,
    /// Putting together.
    Join,
    /// Getting it on the wall.
    Hang,
    /// What is bought, and what comes on top.
    Finish,
}

impl Stage {
    /// Every stage, in the order of the job.
    pub const ALL: &[Self] = &[Self::Size, Self::Cut, Self::Groove, Self::Drill, Self::Join, Self::Hang, Self::Finish];

    /// Its name on the bench.
    pub fn name(self) -> AttrValue {
        say(match self {
            Self::Size => "stage-size",
            Self::Cut => "stage-cut",
            Self::Groove => "stage-groove",
            Self::Drill => "stage-drill",
            Self::Join => "stage-join",
            Self::Hang => "stage-hang",
            Self::Finish => "stage-finish",
        })
    }
}

/// What a card is, to the screen.
pub trait CardView: Sized + 'static {
    /// What the maker gives.
    type Inputs: Clone + PartialEq + Default + Serialize + DeserializeOwned + 'static;
    /// What comes out.
    type Answer: 'static;
    /// The name in addresses, files and words.
    const SLUG: &'static str;

    /// Where in the job it is wanted.
    const STAGE: Stage;
    /// Whether the cautions stand above the figures: where a slip can bring something down on somebody.
    const CAUTIONS_FIRST: bool = false;

    /// Whether other cards can be opened with its measurements.
    const HANDS_OVER: bool = false;

    /// The card's name on the bench.
    fn title() -> AttrValue;
    /// Every other word of the trade by which somebody may look for it, British and American.
    fn also_called() -> AttrValue;
    /// The calculation.
    fn solve(inputs: &Self::Inputs) -> Result<Self::Answer, Problems>;
    /// What the card starts from. Blank where the shop's own measurements stand in.
    fn start(_settings: &Settings) -> Self::Inputs {
        Self::Inputs::default()
    }
    /// What the card goes back to: the start, but for what was put by.
    fn demo(_now: &Self::Inputs, settings: &Settings) -> Self::Inputs {
        Self::start(settings)
    }
    /// Puts the shop's measurements where the maker left them to the settings.
    fn prepare(_inputs: &mut Self::Inputs, _settings: &Settings) {}
    /// Whether the answer to these takes too long to be worked out at every key; by the answer before.
    fn is_heavy(_inputs: &Self::Inputs, _before: &Self::Answer) -> bool {
        false
    }
    /// The fields, in the order in which a person measures.
    fn fields(fields: &Fields<Self>) -> Html;
    /// The picture, to scale, computed from the answer.
    fn picture(inputs: &Self::Inputs, answer: &Self::Answer, show: Show) -> Html;
    /// The answer in lines.
    fn reply(inputs: &Self::Inputs, answer: &Self::Answer, show: Show) -> Reply;
    /// What is too large for the picture and no figure: it stands below the actions, and with `at_saw` at the saw.
    fn more(_fields: &Fields<Self>, _show: Show, _at_saw: bool) -> Html {
        Html::default()
    }
    /// How looking for a better answer stands; nothing where the answer is the only one.
    fn seeks(_inputs: &Self::Inputs, _answer: &Self::Answer) -> Option<Seeks> {
        None
    }
    /// What goes on looking for a better answer while the card is open.
    fn seek(_inputs: &Self::Inputs, _answer: &Self::Answer) -> Option<Box<dyn Seeker<Self>>> {
        None
    }
    /// Other cards that can be opened with this one's measurements: their slugs, and the inputs that they take over.
    fn hands_over(_inputs: &Self::Inputs, _answer: &Self::Answer) -> Vec<(&'static str, serde_json::Value)> {
        Vec::new()
    }
    /// What the last answer was for, in a few words, as shown on the bench.
    fn given(inputs: &Self::Inputs, answer: &Self::Answer, show: Show) -> AttrValue;
    /// How the answer came about.
    fn working(answer: &Self::Answer) -> &Working;
    /// What to mind.
    fn cautions(answer: &Self::Answer) -> &[Caution];
}

/// A card as the bench and the frame reach it.
#[derive(Clone, Copy)]
pub struct CardEntry {
    /// The name in addresses, files and words.
    pub slug: &'static str,
    /// Where in the job it is wanted.
    pub stage: Stage,
    /// The card's name on the bench.
    pub title: fn() -> AttrValue,
    /// Other words by which it is found.
    pub also_called: fn() -> AttrValue,
    /// The card, from its inputs as they were kept.
    pub open: fn(Option<&str>, &Settings) -> Rc<dyn Held>,
}

impl CardEntry {
    /// The entry of a card.
    pub const fn of<C: CardView>() -> Self {
        Self { slug: C::SLUG, stage: C::STAGE, title: C::title, also_called: C::also_called, open: open::<C> }
    }
}

impl PartialEq for CardEntry {
    fn eq(&self, other: &Self) -> bool {
        self.slug == other.slug
    }
}

/// Every card, in the order of the bench. The only place that knows them all.
pub const CARDS: &[CardEntry] = &[
    CardEntry::of::<convert::Convert>(),
    CardEntry::of::<cabinet::Cabinet>(),
    CardEntry::of::<back_panel::BackPanel>(),
    CardEntry::of::<shelf::Shelf>(),
    CardEntry::of::<clothes_rail::ClothesRail>(),
    CardEntry::of::<spacing::Spacing>(),
    CardEntry::of::<wood_movement::WoodMovement>(),
    CardEntry::of::<sheet_layout::SheetLayout>(),
    CardEntry::of::<bevelled_strips::BevelledStrips>(),
    CardEntry::of::<angles::Angles>(),
    CardEntry::of::<groove::Groove>(),
    CardEntry::of::<hole_rows::HoleRows>(),
    CardEntry::of::<cup_hinge::CupHinge>(),
    CardEntry::of::<joints::Joints>(),
    CardEntry::of::<wall_cleat::WallCleat>(),
    CardEntry::of::<hanging::Hanging>(),
    CardEntry::of::<materials::Materials>(),
];

/// The card of that slug.
pub fn card(slug: &str) -> Option<&'static CardEntry> {
    CARDS.iter().find(|card| card.slug == slug)
}
