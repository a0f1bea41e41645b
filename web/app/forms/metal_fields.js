// What is typed for a metal: each figure with its band, where it comes from and how far to trust it.

/** @typedef {{name: string, label: string, unit: string, needed: boolean}} FigureSpec */

/** @type {FigureSpec[]} */
export const FIGURES = [
  {
    name: "tensile_mpa",
    label: "Tensile strength",
    unit: "MPa; safety checks use the high end",
    needed: true,
  },
  { name: "yield_mpa", label: "Yield strength", unit: "MPa", needed: true },
  { name: "youngs_modulus_mpa", label: "Stiffness E", unit: "MPa", needed: true },
  { name: "density_kg_m3", label: "Density", unit: "kg/m³", needed: true },
  { name: "radius_over_v", label: "Inside radius over V", unit: "", needed: true },
  { name: "springback_at_90_deg", label: "Springback at 90°, V = 8 t", unit: "°", needed: true },
  {
    name: "min_radius_over_t_across",
    label: "Smallest radius over t, across the grain",
    unit: "",
    needed: false,
  },
  {
    name: "min_radius_over_t_with",
    label: "Smallest radius over t, with the grain",
    unit: "",
    needed: false,
  },
  { name: "hardening_k_mpa", label: "Hardening K", unit: "MPa", needed: false },
  { name: "hardening_n", label: "Hardening n", unit: "", needed: false },
];

export const STANDINGS = ["guaranteed minimum", "typical", "measured", "common practice", "from memory"];

/** @type {[string, string][]} */
export const GAUGE_FAMILIES = [
  ["", "none: gauge numbers are refused"],
  ["steel", "steel, uncoated"],
  ["galvanised", "galvanised steel"],
  ["stainless", "stainless steel"],
  ["aluminium", "aluminium"],
];

/**
 * Plain numbers of a metal.
 * @type {{name: string, label: string, needed: boolean}[]}
 */
export const NUMBERS = [
  { name: "poisson", label: "Poisson's ratio", needed: true },
  { name: "prestrain", label: "Prestrain (may be empty)", needed: false },
];
