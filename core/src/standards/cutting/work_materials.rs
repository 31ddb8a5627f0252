//! Which metals and plastics do the cutting tables know? The work materials as a shop calls them, by the word that stands in links.

/// The work materials that the tables know, as a shop calls them.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Material {
    /// Leaded or resulfurized steel for automatic lathes.
    FreeMachiningSteel,
    /// Mild or machine steel, low carbon.
    MildSteel,
    /// Carbon steel from about 0.4 to 0.7 % C.
    CarbonSteel,
    /// Alloy steel, annealed.
    AlloySteel,
    /// Tool steel, annealed.
    ToolSteel,
    /// Stainless steel.
    StainlessSteel,
    /// Steel castings.
    CastSteel,
    /// Wrought iron.
    WroughtIron,
    /// Gray cast iron: most machine castings.
    GrayIron,
    /// Malleable cast iron.
    MalleableIron,
    /// Ductile (nodular) cast iron.
    DuctileIron,
    /// Austenitic cast iron, rich in nickel.
    AusteniticIron,
    /// Brass, soft.
    Brass,
    /// Brass, hard.
    HardBrass,
    /// Bronze.
    Bronze,
    /// Copper.
    Copper,
    /// Wrought aluminum alloy.
    Aluminium,
    /// Cast aluminum alloy.
    CastAluminium,
    /// Magnesium alloy.
    Magnesium,
    /// Zinc die casting.
    Zinc,
    /// Titanium alloy.
    Titanium,
    /// Nickel copper alloy (monel).
    Monel,
    /// Nickel and its softer alloys.
    Nickel,
    /// Thermoplastics.
    Thermoplastic,
    /// Thermosets.
    Thermoset,
}

impl Material {
    /// All of them, in the order of a list on screen.
    pub const ALL: [Self; 25] = [
        Self::MildSteel,
        Self::FreeMachiningSteel,
        Self::CarbonSteel,
        Self::AlloySteel,
        Self::ToolSteel,
        Self::StainlessSteel,
        Self::CastSteel,
        Self::WroughtIron,
        Self::GrayIron,
        Self::MalleableIron,
        Self::DuctileIron,
        Self::AusteniticIron,
        Self::Brass,
        Self::HardBrass,
        Self::Bronze,
        Self::Copper,
        Self::Aluminium,
        Self::CastAluminium,
        Self::Magnesium,
        Self::Zinc,
        Self::Titanium,
        Self::Monel,
        Self::Nickel,
        Self::Thermoplastic,
        Self::Thermoset,
    ];

    /// True for the metals that are hardened by heat and called by their Brinell figure.
    pub const fn is_iron_or_steel(self) -> bool {
        matches!(
            self,
            Self::FreeMachiningSteel
                | Self::MildSteel
                | Self::CarbonSteel
                | Self::AlloySteel
                | Self::ToolSteel
                | Self::StainlessSteel
                | Self::CastSteel
                | Self::WroughtIron
                | Self::GrayIron
                | Self::MalleableIron
                | Self::DuctileIron
                | Self::AusteniticIron
        )
    }

    /// The word that stands in links, stable for ever.
    pub const fn id(self) -> &'static str {
        match self {
            Self::FreeMachiningSteel => "free-machining-steel",
            Self::MildSteel => "mild-steel",
            Self::CarbonSteel => "carbon-steel",
            Self::AlloySteel => "alloy-steel",
            Self::ToolSteel => "tool-steel",
            Self::StainlessSteel => "stainless",
            Self::CastSteel => "cast-steel",
            Self::WroughtIron => "wrought-iron",
            Self::GrayIron => "gray-iron",
            Self::MalleableIron => "malleable-iron",
            Self::DuctileIron => "ductile-iron",
            Self::AusteniticIron => "austenitic-iron",
            Self::Brass => "brass",
            Self::HardBrass => "hard-brass",
            Self::Bronze => "bronze",
            Self::Copper => "copper",
            Self::Aluminium => "aluminium",
            Self::CastAluminium => "cast-aluminium",
            Self::Magnesium => "magnesium",
            Self::Zinc => "zinc",
            Self::Titanium => "titanium",
            Self::Monel => "monel",
            Self::Nickel => "nickel",
            Self::Thermoplastic => "thermoplastic",
            Self::Thermoset => "thermoset",
        }
    }

    /// The label on screen.
    pub const fn label(self) -> &'static str {
        match self {
            Self::FreeMachiningSteel => "free-machining steel",
            Self::MildSteel => "mild (low-carbon) steel",
            Self::CarbonSteel => "medium and high carbon steel",
            Self::AlloySteel => "alloy steel, annealed",
            Self::ToolSteel => "tool steel, annealed",
            Self::StainlessSteel => "stainless steel",
            Self::CastSteel => "cast steel",
            Self::WroughtIron => "wrought iron",
            Self::GrayIron => "gray cast iron",
            Self::MalleableIron => "malleable iron",
            Self::DuctileIron => "ductile iron",
            Self::AusteniticIron => "austenitic (nickel) cast iron",
            Self::Brass => "brass, soft",
            Self::HardBrass => "brass, hard",
            Self::Bronze => "bronze",
            Self::Copper => "copper",
            Self::Aluminium => "aluminum, wrought",
            Self::CastAluminium => "aluminum, cast",
            Self::Magnesium => "magnesium",
            Self::Zinc => "zinc die casting",
            Self::Titanium => "titanium",
            Self::Monel => "nickel-copper alloy",
            Self::Nickel => "nickel, soft alloys too",
            Self::Thermoplastic => "plastic that melts (thermoplastic)",
            Self::Thermoset => "plastic that chars (thermoset)",
        }
    }
}
