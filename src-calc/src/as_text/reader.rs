//! A reader of values that calls one method of a visitor for each shape, and has one error without words.

use serde::de::value::StrDeserializer;
use serde::de::{
    DeserializeSeed, Deserializer, EnumAccess, Error, IntoDeserializer, MapAccess, SeqAccess, VariantAccess, Visitor,
};
use serde::forward_to_deserialize_any;
use serde_json::{Number, Value};
use std::fmt::Display;
use std::slice;

/// A value is not in the shape that is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("This does not have the shape that is wanted.")]
pub(super) struct Misfit;

impl Error for Misfit {
    fn custom<T: Display>(_: T) -> Self {
        Self
    }
}

/// Reads one value.
#[derive(Clone, Copy)]
pub(super) struct Reader<'a>(&'a Value);

impl<'a> Reader<'a> {
    pub(super) fn of(value: &'a Value) -> Self {
        Self(value)
    }

    fn items(self) -> Result<Items<'a>, Misfit> {
        self.0.as_array().map(|items| Items(items.iter())).ok_or(Misfit)
    }

    fn entries(self) -> Result<Entries<'a>, Misfit> {
        self.0.as_object().map(|entries| Entries { left: entries.iter(), value: None }).ok_or(Misfit)
    }
}

/// A number as what it is: one that is whole is not handed over as a float, nor the other way about.
fn number<'de, V: Visitor<'de>>(number: &Number, visitor: V) -> Result<V::Value, Misfit> {
    if let Some(whole) = number.as_u64() {
        visitor.visit_u64(whole)
    } else if let Some(whole) = number.as_i64() {
        visitor.visit_i64(whole)
    } else {
        visitor.visit_f64(number.as_f64().ok_or(Misfit)?)
    }
}

/// Shapes that are a number, whichever.
macro_rules! numbers {
    ($($method:ident)*) => {
        $(fn $method<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
            match self.0 {
                Value::Number(found) => number(found, visitor),
                _ => Err(Misfit),
            }
        })*
    };
}

impl<'de> Deserializer<'de> for Reader<'de> {
    type Error = Misfit;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
        match self.0 {
            Value::Null => visitor.visit_unit(),
            Value::Bool(yes) => visitor.visit_bool(*yes),
            Value::Number(found) => number(found, visitor),
            Value::String(text) => visitor.visit_str(text),
            Value::Array(_) => visitor.visit_seq(self.items()?),
            Value::Object(_) => visitor.visit_map(self.entries()?),
        }
    }

    numbers! {
        deserialize_i8 deserialize_i16 deserialize_i32 deserialize_i64
        deserialize_u8 deserialize_u16 deserialize_u32 deserialize_u64
        deserialize_f32 deserialize_f64
    }

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
        visitor.visit_bool(self.0.as_bool().ok_or(Misfit)?)
    }

    fn deserialize_str<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
        visitor.visit_str(self.0.as_str().ok_or(Misfit)?)
    }

    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
        self.deserialize_str(visitor)
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
        if self.0.is_null() { visitor.visit_none() } else { visitor.visit_some(self) }
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(self, _: &'static str, visitor: V) -> Result<V::Value, Misfit> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
        // What is left over is too much, as in an array of a fixed size.
        let mut items = self.items()?;
        let read = visitor.visit_seq(&mut items)?;
        items.0.next().map_or(Ok(read), |_| Err(Misfit))
    }

    fn deserialize_tuple<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Misfit> {
        self.deserialize_seq(visitor)
    }

    fn deserialize_map<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
        visitor.visit_map(self.entries()?)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Misfit> {
        self.deserialize_map(visitor)
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Misfit> {
        match self.0 {
            Value::String(name) => visitor.visit_enum(Variant { name, content: None }),
            Value::Object(entries) => {
                let mut entries = entries.iter();
                let (name, content) = entries.next().ok_or(Misfit)?;
                let variant = Variant { name, content: Some(Self(content)) };
                entries.next().map_or_else(|| visitor.visit_enum(variant), |_| Err(Misfit))
            }
            _ => Err(Misfit),
        }
    }

    fn deserialize_ignored_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Misfit> {
        visitor.visit_unit()
    }

    forward_to_deserialize_any! { i128 u128 char bytes byte_buf unit unit_struct tuple_struct identifier }
}

/// What stands in an array.
struct Items<'a>(slice::Iter<'a, Value>);

impl<'de> SeqAccess<'de> for Items<'de> {
    type Error = Misfit;

    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Misfit> {
        self.0.next().map(|item| seed.deserialize(Reader(item))).transpose()
    }
}

/// What stands in an object.
struct Entries<'a> {
    left: serde_json::map::Iter<'a>,
    /// What belongs to the name that was read last.
    value: Option<&'a Value>,
}

impl<'de> MapAccess<'de> for Entries<'de> {
    type Error = Misfit;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, Misfit> {
        let Some((name, value)) = self.left.next() else { return Ok(None) };
        self.value = Some(value);
        let name: StrDeserializer<'_, Misfit> = name.as_str().into_deserializer();
        seed.deserialize(name).map(Some)
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, Misfit> {
        seed.deserialize(Reader(self.value.take().ok_or(Misfit)?))
    }
}

/// One of several, by its name.
struct Variant<'a> {
    name: &'a str,
    content: Option<Reader<'a>>,
}

impl<'de> EnumAccess<'de> for Variant<'de> {
    type Error = Misfit;
    type Variant = Content<'de>;

    fn variant_seed<V: DeserializeSeed<'de>>(self, seed: V) -> Result<(V::Value, Content<'de>), Misfit> {
        let name: StrDeserializer<'_, Misfit> = self.name.into_deserializer();
        Ok((seed.deserialize(name)?, Content(self.content)))
    }
}

/// What belongs to it.
struct Content<'a>(Option<Reader<'a>>);

impl<'de> VariantAccess<'de> for Content<'de> {
    type Error = Misfit;

    fn unit_variant(self) -> Result<(), Misfit> {
        if self.0.is_none() { Ok(()) } else { Err(Misfit) }
    }

    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Result<T::Value, Misfit> {
        seed.deserialize(self.0.ok_or(Misfit)?)
    }

    fn tuple_variant<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Misfit> {
        self.0.ok_or(Misfit)?.deserialize_seq(visitor)
    }

    fn struct_variant<V: Visitor<'de>>(self, _: &'static [&'static str], visitor: V) -> Result<V::Value, Misfit> {
        self.0.ok_or(Misfit)?.deserialize_map(visitor)
    }
}
