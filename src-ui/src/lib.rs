//! Scantling in the browser: Yew components, pictures and words.
