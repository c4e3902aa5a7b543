//! What stands above ground: pole, drive, the supply and the lead between them, and the discharge with its tank.

use super::frame::Frame;
use super::well::Stroke;

/// Places of the parts above ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Head {
    /// Place of the pole, and its upper end.
    pub pole: (f64, f64),
    /// Left side of the drive, and its width.
    pub drive: (f64, f64),
    /// Lower and upper end of the drive.
    pub drive_ends: (f64, f64),
    /// Where the lead comes up before the casing.
    pub riser: f64,
    /// Height of the discharge.
    pub discharge: f64,
    /// Middle and half width of the tank, its upper and lower end.
    pub tank: (f64, f64),
    /// Upper and lower end of the tank.
    pub tank_ends: (f64, f64),
}

impl Head {
    /// The parts above ground of a section.
    #[must_use]
    pub fn of(frame: &Frame) -> Self {
        let layout = frame.layout;
        let ground = layout.ground;
        let (drive, drive_ends, pole) = if layout.compact {
            ((17.0, 18.0), (ground - 12.0, ground - 33.0), (5.0, ground - 50.0))
        } else {
            ((46.0, 30.0), (ground - 15.0, ground - 43.0), (14.0, ground - 76.0))
        };
        let discharge = frame.cap - if layout.compact { 16.0 } else { 20.0 };
        let (half, height) = if layout.compact { (5.5, 25.0) } else { (10.0, 38.0) };
        let tank = ((frame.sides.1 + layout.rod) / 2.0 - 3.0, half);
        let foot = discharge - 7.0;
        Self {
            pole,
            drive,
            drive_ends,
            riser: frame.sides.0 - 10.0,
            discharge,
            tank,
            tank_ends: ((foot - height).max(2.0), foot),
        }
    }
}

/// Everything above ground, and the ground line.
pub fn strokes(frame: &Frame, out: &mut Vec<Stroke>) {
    let head = Head::of(frame);
    supply(frame, &head, out);
    lead(frame, &head, out);
    drive(frame, &head, out);
    discharge(frame, &head, out);
    let (ground, rod) = (frame.layout.ground, frame.layout.rod);
    out.push(("l-ground", format!("M0 {ground}H{}M{} {ground}H{rod}", frame.sides.0, frame.sides.1)));
}

/// The pole, and the supply that runs buried to the drive.
fn supply(frame: &Frame, head: &Head, out: &mut Vec<Stroke>) {
    let (ground, (pole, top), (drive, width)) = (frame.layout.ground, head.pole, head.drive);
    let arm = if frame.layout.compact { 5.0 } else { 8.0 };
    let y = top + 7.0;
    out.push(("l-pole", format!("M{pole} {ground}V{top}")));
    out.push((
        "l-mid",
        format!("M{} {y}h{}M{} {y}v-4M{} {y}v-4", pole - arm, 2.0 * arm, pole - arm + 3.0, pole + arm - 3.0),
    ));
    if !frame.layout.compact {
        out.push(("part", format!("M{} {}h9v14h-9z", pole + 3.0, top + 13.0)));
    }
    out.push(("l-buried", format!("M{} {ground}v11H{}V{}", pole + 1.0, drive + width * 0.3, head.drive_ends.0)));
}

/// The lead from the drive to the well head.
fn lead(frame: &Frame, head: &Head, out: &mut Vec<Stroke>) {
    let ((drive, width), riser, lead) = (head.drive, head.riser, frame.lead());
    let over = frame.cap - 13.0;
    out.push((
        "w480 lead",
        format!(
            "M{:.1} {}V{}q0 4 4 4H{:.1}q4 0 4 -4V{}q0 -4 4 -4H{:.1}q4 0 4 4V{}",
            drive + width * 0.7,
            head.drive_ends.0,
            frame.layout.ground + 7.0,
            riser - 4.0,
            over + 4.0,
            lead - 4.0,
            frame.cap - 3.0
        ),
    ));
}

fn drive(frame: &Frame, head: &Head, out: &mut Vec<Stroke>) {
    let ((drive, width), (low, high), ground) = (head.drive, head.drive_ends, frame.layout.ground);
    out.push(("l-mid", format!("M{} {ground}V{high}M{} {ground}V{high}", drive + 2.0, drive + width - 2.0)));
    out.push(("l-roof", format!("M{} {}h{}", drive - 5.0, high - 4.0, width + 10.0)));
    out.push(("part", format!("M{drive} {high}h{width}V{low}h{}z", -width)));
    let (middle, wave) = ((low + high) / 2.0, width * 0.3);
    out.push((
        "l-mid",
        format!(
            "M{:.1} {middle:.1}q{:.1} {:.1} {wave:.1} 0t{wave:.1} 0",
            drive + width * 0.2,
            wave / 2.0,
            -(low - high) * 0.4
        ),
    ));
}

/// The discharge from the pipe to the outlet, with the tank on it.
fn discharge(frame: &Frame, head: &Head, out: &mut Vec<Stroke>) {
    let (axis, y, (tank, half), (top, foot)) = (frame.layout.axis, head.discharge, head.tank, head.tank_ends);
    let end = frame.layout.rod - 4.0;
    out.push(("l-discharge", format!("M{axis} {}V{y}H{end}M{tank} {y}V{foot}", frame.cap - 4.0)));
    out.push(("l-mid", format!("M{} {}l6 5l-6 5", end - 5.0, y - 5.0)));
    let dome = half * 0.9;
    out.push((
        "part",
        format!(
            "M{:.1} {:.1}V{:.1}q0 -{dome:.1} {half} -{dome:.1}t{half} {dome:.1}V{:.1}q0 {dome:.1} -{half} {dome:.1}t-{half} -{dome:.1}z",
            tank - half,
            foot - dome,
            top + dome,
            foot - dome
        ),
    ));
    out.push(("l-thin", format!("M{:.1} {:.1}h{}", tank - half, (top + foot) / 2.0, 2.0 * half)));
}
