//! A choice: a row of radio buttons where there are few, a list where there are many.

use yew::prelude::*;

/// More than so many do not fit beside each other on a phone.
const ROW: usize = 3;

#[derive(Properties)]
pub struct ChoiceProps {
    /// Id of the control, and key of its label.
    pub id: AttrValue,
    /// The label.
    pub label: AttrValue,
    /// The words of each choice, in order.
    pub options: Vec<AttrValue>,
    /// Which one is chosen.
    pub chosen: usize,
    /// Another was chosen.
    pub onchoose: Callback<usize>,
    /// What is wrong with the choice.
    #[prop_or_default]
    pub problem: Option<AttrValue>,
}

/// Choices that look the same are the same: the callback is made anew at every draw, but holds nothing that ages.
impl PartialEq for ChoiceProps {
    fn eq(&self, other: &Self) -> bool {
        self.id == other.id
            && self.chosen == other.chosen
            && self.problem == other.problem
            && self.label == other.label
            && self.options == other.options
    }
}

#[component]
pub fn Choice(props: &ChoiceProps) -> Html {
    let problem_id = format!("{}-note", props.id);
    let problem = props.problem.as_ref().map(|text| {
        html! { <p class="note" id={problem_id.clone()}><span class="problem">{ text }</span></p> }
    });
    let described = props.problem.is_some().then(|| problem_id.clone());
    if props.options.len() > ROW {
        let onchange = {
            let onchoose = props.onchoose.clone();
            Callback::from(move |event: Event| {
                let select = event.target_dyn_into::<web_sys::HtmlSelectElement>();
                if let Some(index) = select.and_then(|select| usize::try_from(select.selected_index()).ok()) {
                    onchoose.emit(index);
                }
            })
        };
        return html! {
            <div class="choice">
                <label for={props.id.clone()}>{ &props.label }</label>
                <select id={props.id.clone()} onchange={onchange} aria-describedby={described}>
                    { for props.options.iter().enumerate().map(|(index, words)| html! {
                        <option value={index.to_string()} selected={index == props.chosen}>{ words }</option>
                    }) }
                </select>
                { problem }
            </div>
        };
    }
    html! {
        <fieldset class="choice" id={props.id.clone()} aria-describedby={described}>
            <legend>{ &props.label }</legend>
            <div class="choice-row">
                { for props.options.iter().enumerate().map(|(index, words)| {
                    let id = format!("{}-{index}", props.id);
                    let onchoose = props.onchoose.clone();
                    html! {
                        <span class="choice-one">
                            <input type="radio" id={id.clone()} name={props.id.clone()} value={index.to_string()}
                                checked={index == props.chosen} onchange={move |_| onchoose.emit(index)} />
                            <label for={id}>{ words }</label>
                        </span>
                    }
                }) }
            </div>
            { problem }
        </fieldset>
    }
}
