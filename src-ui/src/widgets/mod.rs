//! What every card is made of. Only here are inputs and buttons written, so that labels, notes and keys are right everywhere.

pub mod actions;
pub mod answer;
pub mod at_saw;
pub mod card_screen;
pub mod card_state;
pub mod cautions;
pub mod choice;
pub mod copying;
pub mod drawing;
pub mod fields;
pub mod file_field;
pub mod fold;
pub mod giving_back;
pub mod handing_over;
pub mod job_bar;
pub mod job_list;
pub mod number_pad;
pub mod over;
pub mod reply;
pub mod rows;
pub mod searching;
pub mod settled;
pub mod tape_list;
pub mod text_field;
pub mod tick_list;
pub mod working;
