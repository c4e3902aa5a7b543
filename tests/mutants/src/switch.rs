//! Writes the mutants of a file into it.
//!
//! An operation becomes a choice between the operations that the mutants put in its place, a function gets one early
//! return for each value that it is to give, an arm of a match or its guard one more condition. What has to be known when
//! the program is built (constants, functions that make them) can't be switched.

use proc_macro2::LineColumn;
use std::collections::{BTreeMap, BTreeSet};
use syn::spanned::Spanned as _;
use syn::visit_mut::{self, VisitMut};
use syn::{Arm, BinOp, Block, Expr, ExprBinary, ExprStruct, ReturnType, Signature, Type, parse_quote, parse_str};

/// Line and column, both from 1 on.
pub type Place = (usize, usize);

/// A mutant: its number in the list, what it changes, and what it puts there.
pub struct Mutant {
    pub number: u32,
    pub kind: String,
    pub put: String,
}

/// A file with its mutants, and the numbers of those that are in it.
pub fn with_switches(
    text: &str,
    at: &BTreeMap<Place, Vec<Mutant>>,
) -> Result<(String, BTreeSet<u32>), Box<dyn std::error::Error>> {
    let mut tree = syn::parse_file(text)?;
    let mut writer = Writer { at, done: BTreeSet::new() };
    writer.visit_file_mut(&mut tree);
    Ok((prettyplease::unparse(&tree), writer.done))
}

struct Writer<'a> {
    at: &'a BTreeMap<Place, Vec<Mutant>>,
    done: BTreeSet<u32>,
}

impl<'a> Writer<'a> {
    /// Mutants of a kind that start here.
    fn of(&self, start: LineColumn, kind: &str) -> Vec<&'a Mutant> {
        let all = self.at.get(&(start.line, start.column + 1)).into_iter().flatten();
        all.filter(|mutant| mutant.kind == kind).collect()
    }

    /// Where one of these mutants is on, what it puts; else the expression as it is.
    fn choice(&mut self, arms: Vec<(&Mutant, Expr)>, else_: Expr) -> Expr {
        let (numbers, puts): (Vec<u32>, Vec<Expr>) = arms.into_iter().map(|(mutant, put)| (mutant.number, put)).unzip();
        self.done.extend(&numbers);
        parse_quote!((match crate::mutant::on(&[#(#numbers),*]) { #(#numbers => (#puts),)* _ => (#else_), }))
    }

    /// A function's body, with an early return for each of its mutants.
    fn body(&mut self, block: &mut Block, start: Option<LineColumn>) {
        for mutant in start.map(|start| self.of(start, "FnValue")).unwrap_or_default().into_iter().rev() {
            let Ok(put) = parse_str::<Expr>(&mutant.put) else { continue };
            let number = mutant.number;
            self.done.insert(number);
            block.stmts.insert(0, parse_quote!(if crate::mutant::on(&[#number]) == #number { return #put; }));
        }
    }

    fn binary(&mut self, was: &ExprBinary, now: Expr) -> Expr {
        let list = self.of(was.op.span().start(), "BinaryOperator");
        // A pattern in a condition can't move into a choice.
        if list.is_empty() || matches(&was.left) || matches(&was.right) {
            return now;
        }
        let (left, right) = (&was.left, &was.right);
        let arms = list.into_iter().filter_map(|mutant| {
            let op: BinOp = parse_str(&mutant.put).ok()?;
            Some((mutant, parse_quote!((#left) #op (#right))))
        });
        let arms = arms.collect();
        self.choice(arms, now)
    }

    fn fields(&mut self, was: &ExprStruct, now: Expr) -> Expr {
        let without = |at: usize| {
            let mut less = was.clone();
            let kept = was.fields.iter().enumerate().filter(|(place, _)| *place != at);
            less.fields = kept.map(|(_, field)| field.clone()).collect();
            if !less.fields.is_empty() {
                less.fields.push_punct(parse_quote!(,));
            }
            Expr::Struct(less)
        };
        let mut arms = Vec::new();
        for (at, field) in was.fields.iter().enumerate() {
            arms.extend(self.of(field.span().start(), "StructField").into_iter().map(|mutant| (mutant, without(at))));
        }
        if arms.is_empty() { now } else { self.choice(arms, now) }
    }

    fn arm(&mut self, was: &Arm, now: &mut Arm) {
        let mut guard: Option<Expr> = now.guard.take().map(|(_, guard)| *guard);
        for mutant in self.of(was.span().start(), "MatchArm") {
            let number = mutant.number;
            self.done.insert(number);
            let rest = guard.unwrap_or_else(|| parse_quote!(true));
            guard = Some(parse_quote!(crate::mutant::on(&[#number]) != #number && (#rest)));
        }
        let start = was.guard.as_ref().map(|(_, guard)| guard.span().start());
        for mutant in start.map(|start| self.of(start, "MatchArmGuard")).unwrap_or_default() {
            let (number, rest) = (mutant.number, guard);
            self.done.insert(number);
            guard = Some(match mutant.put.as_str() {
                "true" => parse_quote!(crate::mutant::on(&[#number]) == #number || (#rest)),
                _ => parse_quote!(crate::mutant::on(&[#number]) != #number && (#rest)),
            });
        }
        now.guard = guard.map(|guard| (parse_quote!(if), Box::new(guard)));
    }
}

/// Whether a condition holds a pattern.
fn matches(condition: &Expr) -> bool {
    match condition {
        Expr::Let(_) => true,
        Expr::Binary(both) => matches(&both.left) || matches(&both.right),
        _ => false,
    }
}

/// Where a body begins, which is where the list says that its mutants are. One whose function may be built with others and
/// can return early: it is no constant's, and returns a type that has a name.
fn start(signature: &Signature, block: &Block) -> Option<LineColumn> {
    let unnamed = matches!(&signature.output, ReturnType::Type(_, output) if matches!(**output, Type::ImplTrait(_)));
    let first = block.stmts.first().filter(|_| signature.constness.is_none() && !unnamed)?;
    Some(first.span().start())
}

impl VisitMut for Writer<'_> {
    fn visit_item_fn_mut(&mut self, function: &mut syn::ItemFn) {
        let start = start(&function.sig, &function.block);
        if function.sig.constness.is_none() {
            visit_mut::visit_item_fn_mut(self, function);
            self.body(&mut function.block, start);
        }
    }

    fn visit_impl_item_fn_mut(&mut self, function: &mut syn::ImplItemFn) {
        let start = start(&function.sig, &function.block);
        if function.sig.constness.is_none() {
            visit_mut::visit_impl_item_fn_mut(self, function);
            self.body(&mut function.block, start);
        }
    }

    fn visit_trait_item_fn_mut(&mut self, function: &mut syn::TraitItemFn) {
        let start = function.default.as_ref().and_then(|block| start(&function.sig, block));
        visit_mut::visit_trait_item_fn_mut(self, function);
        if let Some(block) = &mut function.default {
            self.body(block, start);
        }
    }

    fn visit_item_mod_mut(&mut self, module: &mut syn::ItemMod) {
        let test: syn::Attribute = parse_quote!(#[cfg(test)]);
        if !module.attrs.contains(&test) {
            visit_mut::visit_item_mod_mut(self, module);
        }
    }

    fn visit_expr_mut(&mut self, expression: &mut Expr) {
        let was = expression.clone();
        visit_mut::visit_expr_mut(self, expression);
        let now = || expression.clone();
        let put = match &was {
            Expr::Binary(was) => self.binary(was, now()),
            Expr::Struct(was) => self.fields(was, now()),
            Expr::Unary(was) => {
                let list = self.of(was.op.span().start(), "UnaryOperator");
                let arms: Vec<_> = list.into_iter().map(|mutant| (mutant, (*was.expr).clone())).collect();
                if arms.is_empty() { now() } else { self.choice(arms, now()) }
            }
            Expr::Match(was) => {
                if let Expr::Match(now) = expression {
                    was.arms.iter().zip(&mut now.arms).for_each(|(was, now)| self.arm(was, now));
                }
                return;
            }
            _ => return,
        };
        *expression = put;
    }

    // What is built in, or is no expression.
    fn visit_item_const_mut(&mut self, _: &mut syn::ItemConst) {}
    fn visit_item_static_mut(&mut self, _: &mut syn::ItemStatic) {}
    fn visit_impl_item_const_mut(&mut self, _: &mut syn::ImplItemConst) {}
    fn visit_trait_item_const_mut(&mut self, _: &mut syn::TraitItemConst) {}
    fn visit_pat_mut(&mut self, _: &mut syn::Pat) {}
    fn visit_type_mut(&mut self, _: &mut syn::Type) {}
    fn visit_attribute_mut(&mut self, _: &mut syn::Attribute) {}
}

