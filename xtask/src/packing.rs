//! The program's functions in an order that packs well.
//!
//! gzip looks back 32 KB: what repeats farther away than that is packed once more. So functions that share the most
//! come one after the other. What the program does stays the same: only the numbers of its functions change.

use std::collections::{BTreeMap, VecDeque};
use std::convert::Infallible;
use wasm_encoder::reencode::{Error, Reencode};
use wasm_encoder::{CodeSection, FunctionSection, Module};
use wasmparser::{CodeSectionReader, FunctionSectionReader, Parser, Payload, TypeRef};

/// Bytes that are compared at a time.
const PIECE: usize = 6;

/// A piece that stands in more functions than this tells nothing of any.
const COMMON: usize = 100;

/// How many bytes back something may still be packed by.
const REACH: usize = 30_000;

/// The same program with its functions in that order.
pub(crate) fn packed_well(program: &[u8]) -> Result<Vec<u8>, Error> {
    let (mut imported, mut bodies) = (0, Vec::new());
    for payload in Parser::new(0).parse_all(program) {
        match payload? {
            Payload::ImportSection(imports) => {
                for import in imports.into_imports() {
                    imported += usize::from(matches!(import?.ty, TypeRef::Func(_) | TypeRef::FuncExact(_)));
                }
            }
            Payload::CodeSectionEntry(body) => bodies.push(body.as_bytes()),
            _ => (),
        }
    }
    let order = order(&bodies);
    let mut numbers: Vec<u32> = (0..).take(imported + bodies.len()).collect();
    for (number, at) in (0..).skip(imported).zip(&order) {
        numbers[imported + at] = number;
    }
    let mut module = Module::new();
    Renumbered { order, numbers }.parse_core_module(&mut module, Parser::new(0), program)?;
    Ok(module.finish())
}

/// Writes a program with its functions in another order.
struct Renumbered {
    /// Which of the program's own functions comes first, second, and so on.
    order: Vec<usize>,
    /// The new number of each function, imported ones included.
    numbers: Vec<u32>,
}

impl Reencode for Renumbered {
    type Error = Infallible;

    fn function_index(&mut self, function: u32) -> Result<u32, Error> {
        Ok(self.numbers[function as usize])
    }

    fn parse_function_section(
        &mut self,
        functions: &mut FunctionSection,
        section: FunctionSectionReader<'_>,
    ) -> Result<(), Error> {
        let types = section.into_iter().collect::<Result<Vec<u32>, _>>()?;
        for at in self.order.clone() {
            functions.function(self.type_index(types[at])?);
        }
        Ok(())
    }

    fn parse_code_section(&mut self, code: &mut CodeSection, section: CodeSectionReader<'_>) -> Result<(), Error> {
        let bodies = section.into_iter().collect::<Result<Vec<_>, _>>()?;
        for at in self.order.clone() {
            self.parse_function_body(code, bodies[at].clone())?;
        }
        Ok(())
    }
}

/// Always next the one that shares the largest part of itself with those in reach; the first of them where none does.
fn order(bodies: &[&[u8]]) -> Vec<usize> {
    let shared = Shared::by(bodies);
    // How often each piece stands in reach, and how many of its pieces each function finds there.
    let mut in_reach = vec![0_u32; shared.functions.len()];
    let mut found = vec![0_u32; bodies.len()];
    let (mut reach, mut bytes) = (VecDeque::new(), 0);
    let mut left: Vec<usize> = (0..bodies.len()).collect();
    let mut order = Vec::with_capacity(bodies.len());
    loop {
        // What is small shares all of itself with much: that much more counts.
        let likeness = |at: usize| f64::from(found[at]) / (shared.pieces[at].len() as f64 + 100.0);
        let alike = left.iter().enumerate().map(|(place, &at)| (place, likeness(at)));
        // The last of equal ones is taken: from behind, that is the first.
        let Some((place, _)) = alike.rev().max_by(|(_, a), (_, b)| a.total_cmp(b)) else { return order };
        let next = left.remove(place);
        order.push(next);
        reach.push_back(next);
        bytes += bodies[next].len();
        for &piece in &shared.pieces[next] {
            in_reach[piece] += 1;
            if in_reach[piece] == 1 {
                shared.functions[piece].iter().for_each(|&at| found[at] += 1);
            }
        }
        while bytes > REACH && reach.len() > 1 {
            let Some(gone) = reach.pop_front() else { break };
            bytes -= bodies[gone].len();
            for &piece in &shared.pieces[gone] {
                in_reach[piece] -= 1;
                if in_reach[piece] == 0 {
                    shared.functions[piece].iter().for_each(|&at| found[at] -= 1);
                }
            }
        }
    }
}

/// The pieces that stand in more than one function, but in few.
struct Shared {
    /// The functions of each piece.
    functions: Vec<Vec<usize>>,
    /// The pieces of each function.
    pieces: Vec<Vec<usize>>,
}

impl Shared {
    fn by(bodies: &[&[u8]]) -> Self {
        let mut by_piece: BTreeMap<&[u8], Vec<usize>> = BTreeMap::new();
        for (at, body) in bodies.iter().enumerate() {
            for piece in body.windows(PIECE) {
                let functions = by_piece.entry(piece).or_default();
                if functions.last() != Some(&at) {
                    functions.push(at);
                }
            }
        }
        let functions: Vec<Vec<usize>> =
            by_piece.into_values().filter(|functions| (2..=COMMON).contains(&functions.len())).collect();
        let mut pieces = vec![Vec::new(); bodies.len()];
        for (piece, functions) in functions.iter().enumerate() {
            functions.iter().for_each(|&at| pieces[at].push(piece));
        }
        Self { functions, pieces }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use wasm_encoder::{
        EntityType, ExportKind, ExportSection, Function, ImportSection, Instruction, TypeSection, ValType,
    };

    #[test]
    fn what_is_alike_stands_together() {
        let bodies: [&[u8]; 5] =
            [b"a long beginning, one", b"quite another matter", b"1234567", b"another matter", b"a long beginning"];
        assert_eq!(order(&bodies), [0, 4, 1, 3, 2]);
        assert_eq!(order(&[]), [0; 0]);
    }

    /// A program of a function that is imported, and three that each call the number they are given, after some text.
    fn program(texts: [(&[i32], u32); 3]) -> Vec<u8> {
        let mut types = TypeSection::new();
        types.ty().function([], []);
        types.ty().function([], [ValType::I32]);
        let mut imports = ImportSection::new();
        imports.import("a", "b", EntityType::Function(0));
        let (mut functions, mut code) = (FunctionSection::new(), CodeSection::new());
        for (text, calls) in texts {
            functions.function(0);
            let mut function = Function::new([]);
            for letter in text {
                function.instruction(&Instruction::I32Const(*letter)).instruction(&Instruction::Drop);
            }
            function.instruction(&Instruction::Call(calls)).instruction(&Instruction::End);
            code.function(&function);
        }
        let mut exports = ExportSection::new();
        exports.export("first", ExportKind::Func, 1);
        let mut module = Module::new();
        module.section(&types).section(&imports).section(&functions).section(&exports).section(&code);
        module.finish()
    }

    #[test]
    fn calls_go_where_they_went() {
        let (one, other) = ([1, 2, 3, 4, 5], [60, 61, 62, 63, 64]);
        // The first and the third are alike: the second becomes the last, and is called by its new number.
        let before = program([(&one, 2), (&other, 0), (&one, 1)]);
        let after = program([(&one, 3), (&one, 1), (&other, 0)]);
        assert_eq!(packed_well(&before).unwrap(), after);
        assert_eq!(packed_well(&after).unwrap(), after);
    }

    #[test]
    fn what_is_no_program_is_refused() {
        assert!(packed_well(b"no program").is_err());
    }
}
