//! What a person does on the page, and what they see there.

use crate::fault::{Fault, Outcome, require};
use crate::shell::Shell;
use crate::wait::until;
use serde::Deserialize;
use serde_json::json;
use std::time::Duration;
use thirtyfour::{By, Key, WebElement};

/// A card as it stands on the screen. Texts are as a screen reader has them: `5/8 inch`.
#[derive(Clone, Debug, Default, PartialEq, Deserialize)]
pub struct Card {
    /// Which card; empty when none is open.
    pub slug: String,
    /// Whether the answer is older than the inputs.
    pub stale: bool,
    /// The figures that stand large.
    pub main: Vec<String>,
    /// The same in the other system.
    pub other: Vec<String>,
    /// What a screen reader is told.
    pub spoken: String,
}

/// A field as it stands on the screen.
#[derive(Clone, Debug, PartialEq, Deserialize)]
pub struct Field {
    /// What is typed in it.
    pub value: String,
    /// Whether it is marked as one that cannot be used.
    pub invalid: bool,
    /// The note under it.
    pub note: String,
    /// Whether it has the focus.
    pub focused: bool,
}

const CARD: &str = "
    const flat = (element) => (element?.textContent ?? '').replace(/\\s+/g, ' ').trim();
    const card = document.querySelector('section.card');
    const all = (css) => [...(card?.querySelectorAll(css) ?? [])].map(flat);
    return {
        slug: card?.dataset.card ?? '',
        stale: card?.querySelector('.answer')?.dataset.stale === 'true',
        main: all('.answer .answer-main'),
        other: all('.answer .answer-other'),
        spoken: flat(card?.querySelector('output')),
    };";

/// Notes whether the next click reaches the element.
const WATCH_PRESS: &str = "
    const element = arguments[0];
    window.gotPress = false;
    const watch = (event) => { window.gotPress = element.contains(event.target); };
    window.addEventListener('click', watch, { capture: true, once: true });";

const FIELD: &str = "
    const field = document.getElementById(arguments[0]);
    const note = document.getElementById(field.getAttribute('aria-describedby'));
    return {
        value: field.value,
        invalid: field.getAttribute('aria-invalid') === 'true',
        note: (note?.textContent ?? '').replace(/\\s+/g, ' ').trim(),
        focused: document.activeElement === field,
    };";

/// Scrolls as a person does: until the element can be seen, wherever on the screen that is, and with some room for a
/// finger above and below its middle.
const INTO_SIGHT: &str = "
    const element = arguments[0];
    const middle = () => { const box = element.getBoundingClientRect(); return [box.x + box.width / 2, box.y + box.height / 2, Math.min(12, box.height / 4)]; };
    const free = () => {
        const [x, y, room] = middle();
        return [-room, 0, room].every((by) => {
            const top = document.elementFromPoint(x, y + by);
            return top !== null && (element.contains(top) || top.contains(element));
        });
    };
    for (const share of [0.5, 0.6, 0.7, 0.8, 0.9, 0.4, 0.3, 0.2, 0.1]) {
        const fields = element.closest('.fields');
        const holder = element.closest('dialog') ?? (fields?.scrollHeight > fields?.clientHeight ? fields : window);
        holder.scrollBy({ top: middle()[1] - share * innerHeight, behavior: 'instant' });
        if (free()) break;
    }";

const PLACE: &str = "
    const element = arguments[0];
    const box = element.getBoundingClientRect();
    const top = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
    const covered = element.contains(top) ? null : top?.outerHTML.slice(0, 80) ?? 'the edge of the screen';
    return { left: box.x, top: box.y, covered };";

/// Where an element stands, and what lies over its middle.
#[derive(Clone, Debug, PartialEq, Deserialize)]
struct Place {
    left: f64,
    top: f64,
    covered: Option<String>,
}

/// A person presses what stands still: in the same place at two looks.
const REST: Duration = Duration::from_millis(40);
const LOOKS: usize = 50;

impl Shell {
    /// The card on the screen.
    ///
    /// # Errors
    /// When the page cannot be asked.
    pub async fn card(&self) -> Outcome<Card> {
        self.ask(CARD, &[]).await
    }

    /// The field of this id.
    ///
    /// # Errors
    /// When there is none.
    pub async fn field(&self, id: &str) -> Outcome<Field> {
        self.ask(FIELD, &[id.into()]).await
    }

    /// Waits until the large figures of a fresh answer are these, and gives the card.
    ///
    /// # Errors
    /// When they never are.
    pub async fn answers(&self, main: &[&str]) -> Outcome<Card> {
        let what = format!("the answer {main:?}");
        until(&what, async || self.card().await, |card| !card.stale && card.main == main).await
    }

    /// Waits until the field of this id is as wanted.
    ///
    /// # Errors
    /// When it never is.
    pub async fn field_is(&self, id: &str, what: &str, holds: impl Fn(&Field) -> bool) -> Outcome<Field> {
        until(&format!("{id}: {what}"), async || self.field(id).await, holds).await
    }

    /// An element, as soon as it is there, scrolled to where nothing that sticks to an edge of the screen covers it.
    ///
    /// # Errors
    /// When there never is one.
    pub async fn element(&self, css: &str) -> Outcome<WebElement> {
        self.shows(css).await?;
        let element = self.session()?.find(By::Css(css)).await?;
        self.ask::<()>(INTO_SIGHT, &[element.to_json()?]).await?;
        Ok(element)
    }

    /// Presses a button, link or label with the pointer.
    ///
    /// # Errors
    /// When there is none, or something else lies on top of it.
    pub async fn press(&self, css: &str) -> Outcome {
        for _ in 0..LOOKS {
            if self.pressed(css).await? {
                return Ok(());
            }
        }
        Err(Fault::Wrong(format!("{css} never got the press")))
    }

    /// Whether the element got the press: on a busy machine it may have moved between looking and pressing.
    async fn pressed(&self, css: &str) -> Outcome<bool> {
        let mut element = self.element(css).await?;
        let mut place = self.place(&element).await?;
        for _ in 0..LOOKS {
            tokio::time::sleep(REST).await;
            let now = self.place(&element).await?;
            if now == place && now.covered.is_none() {
                break;
            }
            // Something above has just come or gone.
            element = self.element(css).await?;
            place = self.place(&element).await?;
        }
        require(place.covered.is_none(), || format!("{css} lies under {}", place.covered.clone().unwrap_or_default()))?;
        self.ask::<()>(WATCH_PRESS, &[element.to_json()?]).await?;
        self.session()?.action_chain().move_to_element_center(&element).click().perform().await?;
        // A page that has gone meanwhile was sent away by the press.
        Ok(!matches!(self.ask::<Option<bool>>("return window.gotPress", &[]).await, Ok(Some(false))))
    }

    async fn place(&self, element: &WebElement) -> Outcome<Place> {
        self.ask(PLACE, &[element.to_json()?]).await
    }

    /// How many elements there are.
    ///
    /// # Errors
    /// When the page cannot be asked.
    pub async fn count(&self, css: &str) -> Outcome<usize> {
        self.ask("return document.querySelectorAll(arguments[0]).length", &[css.into()]).await
    }

    /// The text of the first such element, without needless spaces; nothing when there is none.
    ///
    /// # Errors
    /// When the page cannot be asked.
    pub async fn text(&self, css: &str) -> Outcome<Option<String>> {
        let script = "return document.querySelector(arguments[0])?.textContent.replace(/\\s+/g, ' ').trim() ?? null";
        self.ask(script, &[css.into()]).await
    }

    /// Waits until such an element is there.
    ///
    /// # Errors
    /// When it never is.
    pub async fn shows(&self, css: &str) -> Outcome {
        until(&format!("an element {css}"), async || self.count(css).await, |count| *count > 0).await.map(drop)
    }

    /// Waits until no such element is there.
    ///
    /// # Errors
    /// When there always is.
    pub async fn shows_no(&self, css: &str) -> Outcome {
        until(&format!("no element {css}"), async || self.count(css).await, |count| *count == 0).await.map(drop)
    }

    /// Types a text over what stands in the field, key by key.
    ///
    /// # Errors
    /// When there is no such field.
    pub async fn type_into(&self, id: &str, text: &str) -> Outcome {
        let field = self.element(&format!("#{id}")).await?;
        // In two goes: the end of each lets go of all keys, in both shells.
        field.send_keys(Key::Control + "a").await?;
        Ok(field.send_keys(text).await?)
    }

    /// Presses a single key in a field.
    ///
    /// # Errors
    /// When there is no such field.
    pub async fn key(&self, id: &str, key: Key) -> Outcome {
        Ok(self.element(&format!("#{id}")).await?.send_keys(key).await?)
    }

    /// Chooses one of a row or a list, counted from nought.
    ///
    /// # Errors
    /// When there is no such choice.
    pub async fn choose(&self, id: &str, index: usize) -> Outcome {
        if self.count(&format!("select#{id}")).await? == 0 {
            let radio = format!("#{id}-{index}");
            self.press(&radio).await?;
            return self.shows(&format!("{radio}:checked")).await;
        }
        // Not the option: an engine may give a closed list's options no place on the screen.
        self.element(&format!("select#{id}")).await?;
        let option = format!("select#{id} > option:nth-of-type({})", index + 1);
        Ok(self.session()?.find(By::Css(option)).await?.click().await?)
    }

    /// Opens a card anew by its address, which is quicker than a finger.
    ///
    /// # Errors
    /// When it does not open.
    pub async fn open_card(&self, slug: &str) -> Outcome {
        self.open_bench().await?;
        self.screen(&format!("#/{slug}"), ".card").await?;
        self.card_is(slug).await
    }

    /// Opens a card by its row on the bench.
    ///
    /// # Errors
    /// When it does not open.
    pub async fn pick_card(&self, slug: &str) -> Outcome {
        self.open_bench().await?;
        self.press(&format!(".bench-row[data-card='{slug}']")).await?;
        self.card_is(slug).await
    }

    async fn card_is(&self, slug: &str) -> Outcome {
        until(&format!("the card {slug}"), async || self.card().await, |card| card.slug == slug).await?;
        self.shows(".fields label, .fields legend").await
    }

    /// Goes to the bench.
    ///
    /// # Errors
    /// When it does not open.
    pub async fn open_bench(&self) -> Outcome {
        self.screen("#/", "main .bench").await
    }

    /// Goes to the settings.
    ///
    /// # Errors
    /// When they do not open.
    pub async fn open_settings(&self) -> Outcome {
        self.screen("#/settings", "main .settings").await
    }

    /// Goes to the tape.
    ///
    /// # Errors
    /// When it does not open.
    pub async fn open_tape(&self) -> Outcome {
        // An empty one has no list, only a sentence.
        self.screen("#/tape", "main > .tape, main > .about").await
    }

    /// Goes to the jobs, and waits until they are listed.
    ///
    /// # Errors
    /// When they do not open.
    pub async fn open_jobs(&self) -> Outcome {
        self.screen("#/jobs", "main .job-list[data-listed]").await
    }

    /// Opens the tape by the keys of a field.
    ///
    /// # Errors
    /// When there is no such field.
    pub async fn alt_down(&self, id: &str) -> Outcome {
        Ok(self.element(&format!("#{id}")).await?.send_keys(Key::Alt + Key::Down).await?)
    }

    async fn screen(&self, address: &str, css: &str) -> Outcome {
        self.ask::<()>("location.hash = arguments[0]", &[json!(address)]).await?;
        self.shows(css).await
    }

    /// Millimetres or inches, by the switch in the bar.
    ///
    /// # Errors
    /// When it does not switch.
    pub async fn switch_to_inches(&self, inches: bool) -> Outcome {
        let button = if inches { ".unit-switch button:last-of-type" } else { ".unit-switch button:first-of-type" };
        self.press(button).await?;
        self.shows(&format!("{button}[aria-pressed='true']")).await
    }
}
