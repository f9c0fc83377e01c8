//! Fields that this program does not know.

use serde_json::Value;

/// Puts into `next` what `old` has and `known` has not, at the same places. `known` is `old` as it was understood.
///
/// Within a list nothing is carried over: its entries have no names by which one could be told again.
pub(super) fn keep_unknown(old: &Value, known: &Value, next: &mut Value) {
    let (Value::Object(old), Value::Object(known), Value::Object(next)) = (old, known, next) else { return };
    for (name, value) in old {
        match (known.get(name), next.get_mut(name)) {
            (None, None) => {
                next.insert(name.clone(), value.clone());
            }
            (Some(known), Some(next)) => keep_unknown(value, known, next),
            _ => {}
        }
    }
}
