//! Which mutants do not build: those in whose text the compiler finds an error.

use proc_macro2::LineColumn;
use serde_json::Value;
use std::collections::BTreeMap;
use std::error::Error;
use std::path::Path;
use syn::spanned::Spanned as _;
use syn::visit::{self, Visit};
use syn::{Expr, ExprBinary, ExprIf, ExprMatch, Lit, Pat, Stmt};

/// From and to, each a line and a column.
type Stretch = ((usize, usize), (usize, usize));

fn stretch(from: LineColumn, to: LineColumn) -> Stretch {
    ((from.line, from.column), (to.line, to.column))
}

fn holds(outer: Stretch, inner: Stretch) -> bool {
    outer.0 <= inner.0 && inner.1 <= outer.1
}

/// Where the mutants of a file stand, and its statements.
#[derive(Default)]
struct Seen {
    mutants: Vec<(u32, Stretch)>,
    statements: Vec<Stretch>,
}

impl Seen {
    fn of(text: &str) -> syn::Result<Self> {
        let mut seen = Self::default();
        seen.visit_file(&syn::parse_file(text)?);
        Ok(seen)
    }

    /// The mutant in whose text something stands, or else those of the smallest statement around it that has any.
    fn at(&self, place: Stretch) -> Vec<(u32, &'static str)> {
        let size = |(from, to): Stretch| (to.0 - from.0, to.1);
        let alone = self.mutants.iter().filter(|(_, own)| holds(*own, place));
        if let Some((number, _)) = alone.min_by_key(|(_, own)| size(*own)) {
            return vec![(*number, "alone")];
        }
        let within = |outer: Stretch| self.mutants.iter().filter(move |(_, own)| holds(outer, *own));
        let around = self.statements.iter().filter(|own| holds(**own, place) && within(**own).next().is_some());
        let smallest = around.min_by_key(|own| size(**own)).copied();
        smallest.into_iter().flat_map(within).map(|(number, _)| (*number, "among")).collect()
    }

    fn note(&mut self, number: &Lit, own: Stretch) {
        if let Lit::Int(number) = number {
            self.mutants.extend(number.base10_parse().map(|number| (number, own)));
        }
    }
}

/// Whether an expression asks for the mutant that is on.
fn asks(expression: &Expr) -> bool {
    let Expr::Call(call) = expression else { return false };
    matches!(&*call.func, Expr::Path(path) if path.path.segments.iter().any(|one| one.ident == "mutant"))
}

impl<'a> Visit<'a> for Seen {
    fn visit_expr_match(&mut self, choice: &'a ExprMatch) {
        for arm in choice.arms.iter().filter(|_| asks(&choice.expr)) {
            if let Pat::Lit(number) = &arm.pat {
                self.note(&number.lit, stretch(arm.span().start(), arm.span().end()));
            }
        }
        visit::visit_expr_match(self, choice);
    }

    fn visit_expr_if(&mut self, early: &'a ExprIf) {
        if let Expr::Binary(asked) = &*early.cond
            && let Expr::Lit(number) = &*asked.right
            && asks(&asked.left)
        {
            self.note(&number.lit, stretch(early.span().start(), early.span().end()));
        }
        visit::visit_expr_if(self, early);
    }

    /// Conditions of arms.
    fn visit_expr_binary(&mut self, asked: &'a ExprBinary) {
        if let Expr::Lit(number) = &*asked.right
            && asks(&asked.left)
        {
            self.note(&number.lit, stretch(asked.span().start(), asked.span().end()));
        }
        visit::visit_expr_binary(self, asked);
    }

    fn visit_stmt(&mut self, statement: &'a Stmt) {
        self.statements.push(stretch(statement.span().start(), statement.span().end()));
        visit::visit_stmt(self, statement);
    }
}

/// Where it is written what stands in a macro of somebody else.
fn written(mut span: &Value) -> &Value {
    while span["file_name"].as_str().is_some_and(|name| name.starts_with('/')) && span["expansion"].is_object() {
        span = &span["expansion"]["span"];
    }
    span
}

/// Numbers that do not build, by what the compiler says.
pub fn unbuilt(messages: &str, folder: &Path) -> Result<BTreeMap<u32, &'static str>, Box<dyn Error>> {
    let (mut found, mut files) = (BTreeMap::new(), BTreeMap::new());
    for line in messages.lines() {
        let message = &serde_json::from_str::<Value>(line)?["message"];
        let spans: Vec<&Value> = message["spans"].as_array().into_iter().flatten().collect();
        if message["level"] != "error" || spans.is_empty() {
            continue;
        }
        let main = spans.iter().filter(|span| span["is_primary"] == true);
        let side = spans.iter().filter(|span| span["is_primary"] != true);
        let mut at_fault = Vec::new();
        for span in main.chain(side) {
            let span = written(span);
            let name = span["file_name"].as_str().unwrap_or_default();
            if !files.contains_key(name) {
                let seen = std::fs::read_to_string(folder.join(name)).ok().and_then(|text| Seen::of(&text).ok());
                files.insert(name.to_owned(), seen.unwrap_or_default());
            }
            let part = |key: &str| span[key].as_u64().unwrap_or(1) as usize;
            let place = ((part("line_start"), part("column_start") - 1), (part("line_end"), part("column_end") - 1));
            at_fault.extend(files[name].at(place));
            if at_fault.iter().any(|(_, how)| *how == "alone") {
                break;
            }
        }
        at_fault.sort_by_key(|(_, how)| *how);
        let alone = at_fault.first().is_some_and(|(_, how)| *how == "alone");
        found.extend(at_fault.into_iter().filter(|(_, how)| !alone || *how == "alone"));
    }
    Ok(found)
}
