//! Names of what is priced, each with its word in tables. Equipment, cables and remedies have the words that job files
//! have for them.

/// Names with their words.
macro_rules! words {
    ($(#[$doc:meta])* $name:ident { $($(#[$each:meta])* $one:ident = $word:literal,)* }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum $name { $($(#[$each])* $one,)* }

        impl $name {
            /// Every one of them.
            pub const ALL: [Self; [$($word),*].len()] = [$(Self::$one),*];

            /// Its word.
            ///
            /// # Units
            /// None.
            /// # Range
            /// Every one.
            /// # Source
            /// The form of the text; no formula.
            #[must_use]
            pub fn word(self) -> &'static str {
                match self { $(Self::$one => $word,)* }
            }

            /// The one of a word, in small or large letters.
            ///
            /// # Units
            /// None.
            /// # Range
            /// Any text.
            /// # Source
            /// The form of the text; no formula.
            #[must_use]
            pub fn named(word: &str) -> Option<Self> {
                Self::ALL.into_iter().find(|one| one.word().eq_ignore_ascii_case(word))
            }
        }
    };
}
pub(crate) use words;

words! {
    /// Equipment between the supply and the motor's lead.
    Equipment {
        /// Drive on two lines whose front end shapes the current.
        ConvertingActive = "converting_active",
        /// Drive on two lines with a diode bridge.
        ConvertingPassive = "converting_passive",
        /// Drive that gives twice the volts that it takes.
        Doubling = "doubling",
        /// Large drive on two lines, low in harmonics.
        LargeLowHarmonic = "large_low_harmonic",
        /// Large drive on two lines with a diode bridge.
        LargeEconomy = "large_economy",
        /// The same with a choke.
        LargeEconomyChoke = "large_economy_choke",
        /// Converter that makes the third line with switches.
        SolidStateConverter = "solid_state_converter",
        /// Converter that makes the third line with a machine.
        RotaryConverter = "rotary_converter",
        /// Three-phase drive of a larger frame on two lines.
        DeratedDrive = "derated_drive",
        /// Active drive with a transformer behind it.
        StepUpActive = "step_up_active",
        /// Passive drive with a transformer behind it.
        StepUpPassive = "step_up_passive",
        /// Plain drive on a three-phase line.
        ThreePhaseLine = "three_phase_line",
        /// Plain drive on a three-phase generator, and the set.
        ThreePhaseGenerator = "three_phase_generator",
        /// Single-phase motor's controls.
        SinglePhaseMotor = "single_phase_motor",
    }
}

words! {
    /// What stands between a drive and a long lead.
    Remedy {
        /// A coil in each line.
        OutputReactor = "output_reactor",
        /// Coils with a network that holds the pulse's steepness down.
        DvDtFilter = "dv_dt_filter",
        /// A filter that leaves little but the sine.
        SineFilter = "sine_filter",
    }
}

words! {
    /// How a cable is built.
    Build {
        /// Single conductors in plastic conduit.
        PlasticConduit = "plastic_conduit",
        /// Single conductors in steel conduit.
        SteelConduit = "steel_conduit",
        /// Flat jacketed submersible cable.
        FlatJacketed = "flat_jacketed",
        /// Twisted single conductors.
        Twisted = "twisted",
    }
}
