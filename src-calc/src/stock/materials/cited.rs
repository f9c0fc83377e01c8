//! Where the values of the tables were published.

use crate::source::Source;

pub(super) const SPECIES: Source = Source::published(
    "USDA Forest Products Laboratory, Wood Handbook FPL-GTR-282 (2021), table 5-3b at 12 % moisture, read in an open transcription; density = specific gravity × 1.12 × 1000",
);
pub(super) const IMPORTED: Source = Source::published(
    "Wood Handbook FPL-GTR-282 (2021), table 5-5b at 12 % moisture, read in an open transcription; density from the green specific gravity G as G ÷ (1 − 0.159 G) × 1120, that conversion from memory",
);
pub(super) const IMPORTED_2010: Source = Source::published(
    "Wood Handbook FPL-GTR-190 (2010), table 5-5 at 12 % moisture; density from the green specific gravity G as G ÷ (1 − 0.159 G) × 1120, that conversion from memory",
);
pub(super) const SCOTS_PINE: Source = Source::published(
    "timber-trade species sheet (550 kg/m³, 83.3 MPa, 10.08 GPa); agrees with Forests 2024, 15(3), 567; another trade sheet says 13.7 GPa, the lower value is taken",
);
pub(super) const EUROPEAN_BEECH: Source =
    Source::published("timber-trade species sheet after Giordano, Manuale tecnico del legno");
pub(super) const EUROPEAN_OAK: Source = Source::published(
    "timber-trade species sheet (720–800 kg/m³; 106–108 MPa; 12500 MPa): middle density, lower strength",
);
pub(super) const EUROPEAN_ASH: Source = Source::published("timber-trade species sheet");
pub(super) const NORWAY_SPRUCE: Source = Source::memory("averages of species references");
pub(super) const EN_338: Source = Source::published("EN 338 strength classes, read in an open structural library");
pub(super) const EN_338_EARLIER: Source =
    Source::published("EN 338 strength classes, an earlier edition, read in an open structural library");

pub(super) const BIRCH_PLYWOOD: Source = Source::memory(
    "Handbook of Finnish Plywood, birch of 1.4 mm veneers; each value agrees with the lay-up sum of its plies (17500 MPa, 70 MPa, faces sanded to 1.1 mm); thickness limits and density published on a birch plywood data sheet",
);
pub(super) const BIRCH_PLYWOOD_GENERAL: Source = Source::published(
    "producer's sheet for general-purpose birch plywood: not less than 6000 MPa along and 3000 across, strength 60 and 30 MPa, 640–700 kg/m³",
);
pub(super) const CONIFER_PLYWOOD: Source = Source::memory(
    "Handbook of Finnish Plywood, conifer of 1.4 mm veneers; each value agrees with the lay-up sum of its plies (13000 MPa, 40 MPa)",
);
pub(super) const US_PLYWOOD: Source = Source::published(
    "Wood Handbook FPL-GTR-190 (2010), table 12-1: 6.96–8.55 GPa, 33.72–42.61 MPa, specific gravity 0.4–0.6; density for 0.5",
);
pub(super) const OSB: Source =
    Source::published("EN 12369-1:2001, read in an open structural library; mean density 650 kg/m³");
pub(super) const US_OSB: Source = Source::published(
    "Wood Handbook FPL-GTR-190 (2010), tables 12-1 and 12-3: low end of 4.41–6.28 GPa and 21.8–34.7 MPa, 1.92 GPa across; density for specific gravity 0.6",
);
pub(super) const PARTICLEBOARD_P2: Source = Source::published(
    "EN 312:2010 type P2, least values, as quoted on board makers' data sheets; density in the middle of what the sheets give",
);
pub(super) const PARTICLEBOARD_DESIGN: Source =
    Source::memory("EN 12369-1:2001, particleboard tables; the densities there are 5 % values, so boards weigh more");
pub(super) const US_PARTICLEBOARD: Source = Source::published(
    "Wood Handbook FPL-GTR-190 (2010), table 12-1: low end of 2.76–4.14 GPa and 15.17–24.13 MPa; density for specific gravity 0.65",
);
pub(super) const MDF: Source = Source::published(
    "EN 622-5 for dry use, least values, as quoted on a board maker's data sheet; density in the middle of what the sheets give",
);
pub(super) const MDF_THIN: Source = Source::memory("EN 622-5 for dry use, least values, thin boards");
pub(super) const MDF_LOAD_BEARING: Source =
    Source::memory("EN 12369-1:2001, MDF.LA; the densities there are 5 % values, so boards weigh more");
pub(super) const US_MDF: Source = Source::published(
    "Wood Handbook FPL-GTR-190 (2010), table 12-1: averages 3.59 GPa and 35.85 MPa, specific gravity 0.7–0.9",
);
pub(super) const US_HARDBOARD: Source = Source::published(
    "Wood Handbook FPL-GTR-190 (2010), table 12-1: 3.10–5.52 GPa, 31.02–56.54 MPa, specific gravity 0.9–1.0",
);
pub(super) const HARDBOARD_DESIGN: Source =
    Source::memory("EN 12369-1:2001, HB.HLA2; the densities there are 5 % values, so boards weigh more");
pub(super) const US_HARDBOARD_CLASSES: Source = Source::memory(
    "ANSI A135.4, least average strength of 4500 psi (standard) and 6000 psi (tempered); stiffness from the low end and the middle of the Wood Handbook's range",
);

pub(super) const CREEP: Source =
    Source::published("creep factor kdef, service class 1: NTC 2018 table 4.4.V, which repeats EN 1995-1-1 table 3.2");
pub(super) const CREEP_ASSUMED: Source = Source::practice(
    "creep factor kdef 2.25 of the load-bearing type of this board (EN 1995-1-1 table 3.2, published), taken for the furniture type too",
);
pub(super) const SAFETY_ON_MEAN: Source = Source::practice(
    "mean strength divided by 3 for wood and plywood, by 4 for boards of strands, particles and fibres",
);
pub(super) const SAFETY_ON_LOW: Source = Source::memory(
    "5 % strength divided by 1.5 γM ÷ kmod after EN 1995-1-1, permanent load indoors: solid 3.25, plywood 3, OSB 4.5, particleboard and hardboard 6.5, MDF 9.75",
);
