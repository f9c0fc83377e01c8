//! A layout that was found for a job, and how both are told again: by a mark, made of all that matters of them.

use crate::mark::{Fnv, mark};
use crate::measure::Length;
use crate::sheets::{Job, Layout};
use serde::{Deserialize, Serialize};
use std::hash::{Hash, Hasher};
use std::sync::Arc;

/// The best layout that a search has come to, for a job of this mark.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Found {
    /// The job's.
    pub job: String,
    /// The layout; shared, for it is large.
    #[serde(serialize_with = "whole", deserialize_with = "shared")]
    pub layout: Arc<Layout>,
    /// No layout has fewer sheets.
    pub bound: usize,
    /// Whether nothing better is to be found.
    pub done: bool,
}

/// The same layout is the same without a look at all of it.
impl PartialEq for Found {
    fn eq(&self, other: &Self) -> bool {
        self.job == other.job
            && self.bound == other.bound
            && self.done == other.done
            && (Arc::ptr_eq(&self.layout, &other.layout) || self.layout == other.layout)
    }
}

fn whole<S: serde::Serializer>(layout: &Arc<Layout>, serializer: S) -> Result<S::Ok, S::Error> {
    layout.serialize(serializer)
}

fn shared<'de, D: serde::Deserializer<'de>>(deserializer: D) -> Result<Arc<Layout>, D::Error> {
    Layout::deserialize(deserializer).map(Arc::new)
}

/// The mark of a list of parts, whatever it is cut from.
pub(super) fn parts_mark(job: &Job) -> String {
    mark(|hasher| write_parts(job, hasher))
}

fn write_parts(job: &Job, hasher: &mut Fnv) {
    for part in &job.parts {
        (&part.name, part.length, part.width, part.quantity, &part.stock, part.grain).hash(hasher);
    }
}

/// The mark of a job.
pub(super) fn job_mark(job: &Job) -> String {
    mark(|hasher| {
        write_parts(job, hasher);
        for stock in &job.stock {
            (&stock.name, stock.length, stock.width, stock.quantity, stock.price).hash(hasher);
            (stock.grain, stock.offcut).hash(hasher);
        }
        let saw = &job.saw;
        (saw.kerf, saw.trim, saw.cuts, saw.longest_rip, saw.least_offcut).hash(hasher);
    })
}

/// The mark of a layout: of every cut that it asks for.
pub(super) fn layout_mark(layout: &Layout) -> String {
    mark(|hasher| {
        for cut in layout.settings.iter().flat_map(|setting| &setting.cuts) {
            let area: [Length; 4] = [cut.keeps.area.x, cut.keeps.area.y, cut.keeps.area.length, cut.keeps.area.width];
            (cut.way, cut.fence, cut.from_far, area).hash(hasher);
            hasher.write(&u64::try_from(cut.sheet).unwrap_or(u64::MAX).to_le_bytes());
        }
    })
}
