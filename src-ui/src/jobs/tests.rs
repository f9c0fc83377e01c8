//! What happens to the jobs, in one window and in two.

use super::*;
use crate::store::Store;
use crate::store::fake::{Fake, is_pending, now};
use std::rc::Rc;

/// A window of a browser, whose store it shares with others.
fn window(store: &Rc<Fake>) -> Kept {
    let (kept, trouble) = now(Kept::open(store.clone()));
    assert_eq!(trouble, None);
    kept
}

/// A cabinet so wide, as the card keeps it.
fn wide(mm: &'static str) -> String {
    as_text::write(&Inputs { width: Reading::mm(mm), ..Inputs::default() }).unwrap()
}

/// Types over the width, and lets typing rest.
fn type_width(kept: &Kept, mm: &'static str) -> String {
    let inputs = wide(mm);
    now(kept.keep_all(OpenJob::of(kept).texts_with(inputs.clone()).to_vec())).unwrap();
    inputs
}

/// The width on a window's bench, and the job that it belongs to.
fn bench(kept: &Kept) -> (String, String) {
    let inputs: Inputs = as_text::read(&kept.get(&Kept::inputs_of(CARD)).unwrap()).unwrap();
    (inputs.width.typed().to_owned(), OpenJob::of(kept).name)
}

fn pair(width: &str, name: &str) -> (String, String) {
    (width.to_owned(), name.to_owned())
}

/// A job with this cabinet, without a name.
fn to_save(inputs: &str) -> ToSave {
    let content = Job::new("", &as_text::read(inputs).unwrap()).text();
    ToSave { id: None, name: String::new(), about: String::new(), content }
}

/// The width in a job's last revision.
fn last_width(store: &Fake, name: &str) -> String {
    let jobs = store.jobs.borrow();
    let (_, contents) = jobs.iter().find(|(entry, _)| entry.name == name).unwrap();
    Job::read(contents.last().unwrap()).unwrap().cabinet().width.typed().to_owned()
}

#[test]
fn each_window_saves_its_own_inputs_into_its_own_job() {
    let store = Rc::new(Fake::default());
    let (shed, hall) = (window(&store), window(&store));
    for (kept, name, mm) in [(&shed, "Shed", "830"), (&hall, "Hall", "900")] {
        now(save(kept, OpenJob::named(name), wide(mm), As::Next)).unwrap();
    }
    let typed = type_width(&shed, "640");
    type_width(&hall, "901");
    let saved = now(save(&shed, OpenJob::of(&shed), typed, As::Next)).unwrap();
    assert_eq!((saved.open.revision, saved.meanwhile, saved.trouble), (2, None, None));
    assert_eq!((last_width(&store, "Shed").as_str(), last_width(&store, "Hall").as_str()), ("640", "900"));
    assert_eq!(bench(&window(&store)), pair("640", "Shed"), "what was saved last, with its own name");
    assert_eq!(bench(&hall), pair("901", "Hall"), "this window knows nothing of it");
}

#[test]
fn a_window_without_a_job_does_not_type_into_that_of_another() {
    let store = Rc::new(Fake::default());
    let (none, hall) = (window(&store), window(&store));
    now(save(&hall, OpenJob::named("Hall"), wide("900"), As::Next)).unwrap();
    type_width(&none, "555");
    assert_eq!(bench(&window(&store)), pair("555", ""));
}

#[test]
fn what_another_window_saved_meanwhile_is_told() {
    let store = Rc::new(Fake::default());
    let first = window(&store);
    now(save(&first, OpenJob::named("Shed"), wide("830"), As::Next)).unwrap();
    let second = window(&store);
    now(save(&first, OpenJob::of(&first), wide("640"), As::Next)).unwrap();
    let saved = now(save(&second, OpenJob::of(&second), wide("901"), As::Next)).unwrap();
    let words =
        "Revision 2 was saved in another window meanwhile; this became revision 3. Both are among the revisions.";
    assert_eq!((saved.open.revision, saved.meanwhile.as_deref()), (3, Some(words)));
    assert_eq!(now(save(&second, saved.open, wide("902"), As::Next)).unwrap().meanwhile, None, "said once");

    // What is saved before another job is opened may come behind another window's save too.
    let hall = now(store.save_job(ToSave { id: None, name: "Hall".into(), ..to_save(&wide("700")) })).unwrap();
    type_width(&first, "555");
    let told = now(put_on_bench(&first, &hall, 1)).unwrap();
    assert!(told.is_some_and(|told| told.starts_with("Shed: Revision 4 was saved")));
    assert_eq!(last_width(&store, "Shed"), "555");

    now(store.forget_job(1)).unwrap();
    let saved = now(save(&second, OpenJob::of(&second), wide("903"), As::Next)).unwrap();
    assert!(saved.meanwhile.is_some_and(|words| words.contains("forgotten")));
    assert_ne!(saved.open.id, Some(1));
}

#[test]
fn what_is_typed_while_it_is_saved_stays_on_the_bench() {
    let store = Rc::new(Fake::default());
    let kept = window(&store);
    now(save(&kept, OpenJob::named("Shed"), wide("830"), As::Next)).unwrap();
    let typed = type_width(&kept, "640");
    let mut saving = Box::pin(save(&kept, OpenJob::of(&kept), typed, As::Next));
    store.wait(true);
    assert!(is_pending(saving.as_mut()));
    type_width(&kept, "641");
    store.wait(false);
    now(saving).unwrap();
    assert_eq!((last_width(&store, "Shed").as_str(), bench(&kept)), ("640", pair("641", "Shed")));
}

#[test]
fn a_job_is_changed_by_its_inputs_and_by_its_name() {
    let entry =
        JobEntry { id: 4, name: "Shed".into(), about: String::new(), revision: 2, saved_ms: 5.0, removed: false };
    let new = OpenJob::named("Shed");
    assert!(new.is_changed("{}"));
    let saved = new.saved(&entry, "{}");
    assert_eq!((saved.id, saved.revision), (Some(4), 2));
    assert!(!saved.is_changed("{}"));
    assert!(saved.is_changed("{\"width\":\"640\"}"));
    assert!(OpenJob { name: "Hall".into(), ..saved }.is_changed("{}"));
}

/// What is opened has to read as the card itself writes it, or it would look changed at once.
#[test]
fn an_opened_job_has_the_mark_of_the_cards_own_text() {
    let settings = crate::settings::Settings::default();
    let card = crate::cards::card(CARD).unwrap();
    let held = (card.open)(None, &settings).text().unwrap();
    let job = Job::new("Shed", &as_text::read(&held).unwrap());
    let again = Job::read(&job.text()).unwrap();
    assert_eq!(as_text::write(&again.cabinet()).unwrap(), held);
    assert_eq!((card.open)(Some(&held), &settings).text().unwrap(), held);
}

#[test]
fn a_cabinet_says_its_units() {
    let mixed = Inputs { height: Reading::inches("46"), depth: Reading::mm("14 in"), ..Inputs::default() };
    assert_eq!(about(&mixed), "830 mm × 46 in × 14 in");
}

#[test]
fn a_new_job_that_is_made_of_another_keeps_what_is_not_known_here() {
    let store = Rc::new(Fake::default());
    let content = to_save(&wide("700")).content.replacen("\"cabinet\":{", "\"cabinet\":{\"drawers\":3,", 1);
    let entry = now(store.save_job(ToSave { content, ..to_save(&wide("700")) })).unwrap();
    let kept = window(&store);
    now(put_on_bench(&kept, &entry, 1)).unwrap();
    let copy = OpenJob { name: "Copy".into(), ..OpenJob::of(&kept) };
    let saved = now(save(&kept, copy, wide("701"), As::New)).unwrap();
    assert_eq!((saved.open.id, saved.open.revision, saved.meanwhile), (Some(2), 1, None));
    let contents = store.jobs.borrow()[1].1.clone();
    assert!(contents[0].contains("\"drawers\":3") && contents[0].contains("\"701\""), "{contents:?}");
}

#[test]
fn a_name_that_was_typed_is_saved_before_another_job_is_opened() {
    let store = Rc::new(Fake::default());
    let hall = now(store.save_job(ToSave { name: "Hall".into(), ..to_save(&wide("700")) })).unwrap();
    let kept = window(&store);
    now(save(&kept, OpenJob::named("Shed"), wide("830"), As::Next)).unwrap();
    let name = |name: &str, mm| {
        let open = OpenJob { name: name.into(), ..OpenJob::of(&kept) };
        now(kept.keep_all(open.texts_with(wide(mm)).to_vec())).unwrap();
    };
    name("Potting shed", "830");
    now(put_on_bench(&kept, &hall, 1)).unwrap();
    assert_eq!(last_width(&store, "Potting shed"), "830");
    assert_eq!((bench(&kept), store.jobs.borrow().len()), (pair("700", "Hall"), 2));
    // Also before the very one that is on the bench.
    name("Wide hall", "700");
    now(put_on_bench(&kept, &hall, 1)).unwrap();
    assert_eq!(last_width(&store, "Wide hall"), "700");
    assert_eq!(bench(&kept), pair("700", "Wide hall"));
    assert!(!OpenJob::of(&kept).is_changed(&wide("700")), "it is what was saved just now");
    // An emptied name is no name that could be lost.
    name(" ", "700");
    now(put_on_bench(&kept, &store.jobs.borrow()[1].0.clone(), 1)).unwrap();
    assert_eq!(store.jobs.borrow()[0].0.revision, 2);
}

#[test]
fn a_forgotten_job_does_not_come_back_by_itself() {
    let store = Rc::new(Fake::default());
    let hall = now(store.save_job(ToSave { name: "Hall".into(), ..to_save(&wide("700")) })).unwrap();
    let kept = window(&store);
    let shed = now(save(&kept, OpenJob::named("Shed"), wide("830"), As::Next)).unwrap().open;
    let inputs = type_width(&kept, "640");
    now(store.forget_job(shed.id.unwrap())).unwrap();
    now(kept.keep_all(OpenJob::of(&kept).forgotten(&inputs).texts_with(inputs).to_vec())).unwrap();
    assert_eq!((bench(&kept), OpenJob::of(&kept).id), (pair("640", "Shed"), None));
    now(put_on_bench(&kept, &hall, 1)).unwrap();
    assert_eq!(store.jobs.borrow().len(), 1);

    // What is done to it since is at risk again.
    now(store.forget_job(hall.id)).unwrap();
    let inputs = wide("700");
    now(kept.keep_all(OpenJob::of(&kept).forgotten(&inputs).texts_with(inputs).to_vec())).unwrap();
    type_width(&kept, "701");
    let other = now(store.save_job(ToSave { name: "Other".into(), ..to_save(&wide("500")) })).unwrap();
    now(put_on_bench(&kept, &other, 1)).unwrap();
    assert_eq!(last_width(&store, "Hall"), "701");
}

#[test]
fn damaged_inputs_are_no_revision_and_stand_in_nobodys_way() {
    let store = Rc::new(Fake::default());
    let hall = now(store.save_job(ToSave { name: "Hall".into(), ..to_save(&wide("700")) })).unwrap();
    let kept = window(&store);
    now(save(&kept, OpenJob::named("Shed"), wide("830"), As::Next)).unwrap();
    let damaged = wide("640")[..40].to_owned();
    now(kept.keep_all(OpenJob::of(&kept).texts_with(damaged.clone()).to_vec())).unwrap();
    let refused = now(save(&kept, OpenJob::of(&kept), damaged.clone(), As::Next));
    assert!(matches!(refused, Err(StoreError::Unreadable(_))), "{refused:?}");
    let told = now(put_on_bench(&kept, &hall, 1)).unwrap();
    assert!(told.is_some_and(|told| told.contains("put aside")));
    assert_eq!((last_width(&store, "Shed").as_str(), bench(&kept)), ("830", pair("700", "Hall")));
    assert_eq!(kept.get("damaged/cabinet"), Some(damaged));
}
