//! Inputs that were kept and cannot be read any more. No browser in here, so it is tested on the host.

use crate::jobs::OpenJob;
use crate::store::{Kept, Soon};
use scantling::job::CARD;

/// Moves a card's inputs, which cannot be read, to where nothing is put over them. The demo takes their place, which is
/// of no job: it would be saved as that one's newest revision.
pub fn set_aside(kept: &Kept, slug: &str) -> Soon<()> {
    let inputs = kept.get(&Kept::inputs_of(slug)).unwrap_or_default();
    let first = format!("damaged/{slug}");
    let more = (2_u32..).map(|number| format!("damaged/{slug}-{number}"));
    let free = std::iter::once(first.clone()).chain(more).find(|key| kept.get(key).is_none());
    let mut texts = vec![(free.unwrap_or(first), inputs)];
    match slug {
        CARD => texts.extend(OpenJob::default().texts_with(String::new())),
        _ => texts.push((Kept::inputs_of(slug), String::new())),
    }
    kept.keep_all(texts)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::fake::{Fake, now};
    use std::rc::Rc;

    #[test]
    fn each_stays_under_a_key_of_its_own() {
        let (kept, _) = now(Kept::open(Rc::new(Fake::default())));
        for (slug, inputs) in [("shelf", "one"), ("shelf", "two"), ("cabinet", "three")] {
            now(kept.keep(&Kept::inputs_of(slug), inputs.into())).unwrap();
            now(set_aside(&kept, slug)).unwrap();
            assert_eq!(kept.get(&Kept::inputs_of(slug)).as_deref(), Some(""));
        }
        let there = ["damaged/shelf", "damaged/shelf-2", "damaged/cabinet"].map(|key| kept.get(key));
        assert_eq!(there.iter().flatten().collect::<Vec<_>>(), ["one", "two", "three"]);
    }

    #[test]
    fn a_damaged_cabinet_takes_its_job_off_the_bench() {
        let (kept, _) = now(Kept::open(Rc::new(Fake::default())));
        now(kept.keep_all(OpenJob::named("Shed").texts_with("{\"width\": ".into()).to_vec())).unwrap();
        now(set_aside(&kept, CARD)).unwrap();
        assert_eq!(OpenJob::of(&kept), OpenJob::default());
    }
}
