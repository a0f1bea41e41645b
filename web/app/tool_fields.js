// What is typed for each kind of tool, for the press and for a metal: names as in the API.

/** @typedef {"text"|"note"|"length"|"number"|"rating"|"lengths"|"points"|"pick"|"yes"|"figure"} FieldType */
/** @typedef {Record<string, string>} Draft what stands in the boxes, by field name */
/**
 * @typedef {object} FieldSpec
 * @property {string} name
 * @property {string} label
 * @property {FieldType} type
 * @property {string} [unit] shown beside the label; lengths get the device's own
 * @property {string} [hint]
 * @property {[string, string][]} [options] of a pick; of a "yes" first the no, then the yes
 * @property {(draft: Draft) => boolean} [when] shown and sent only then
 * @property {string} [blank] what an empty box stands for, where empty has a meaning
 * @property {boolean} [broad] takes the whole width
 * @property {boolean} [folded] out of sight until opened, unless there is something in it
 * @property {boolean} [needed] refused here when empty: the server would take a usual value, and a
 *   guessed outline must not pass for a measured one
 */
/** @typedef {{title: string, part: "what"|"outline"|"rest", fields: FieldSpec[]}} FieldGroup */

const UNKNOWN_RATING = "Empty is unknown: checks with it then say so.";

/** @type {FieldSpec} */
const rating = { name: "rating_kn_per_m", label: "Rating", type: "rating", unit: "kN/m", hint: "As stamped on the tool or in its maker's papers." };
/** @type {FieldSpec} */
const segments = { name: "segments_mm", label: "Pieces owned", type: "lengths", hint: "Lengths with commas between, a piece owned twice twice." };
/** @type {FieldSpec[]} */
const place = [
  { name: "tray", label: "Tray", type: "text" },
  { name: "slot", label: "Slot", type: "text" },
];
/** @type {FieldSpec[]} */
const condition = [
  { name: "condition", label: "Condition", type: "pick", options: [["good", "good"], ["worn", "worn"], ["damaged", "damaged"], ["unknown", "unknown"]] },
  { name: "condition_note", label: "Note on its condition", type: "note" },
];
/** @type {FieldSpec} */
const name = { name: "name", label: "Name", type: "text", broad: true };

/** @param {string} about @returns {FieldSpec} */
const points = (about) => ({
  name: "points_mm", label: "Outline by points", type: "points",
  hint: `One point a line: x, y. x towards the back gauge, y up. ${about}`,
  when: (draft) => draft.shape === "points",
});

/** @type {Record<"punches"|"dies"|"holders"|"press", FieldGroup[]>} */
export const GROUPS = {
  punches: [
    { title: "What it is", part: "what", fields: [name, { name: "angle_deg", label: "Nose angle", type: "number", unit: "°" }, { name: "tip_radius_mm", label: "Tip radius", type: "length" }] },
    {
      title: "Outline", part: "outline",
      fields: [
        { name: "shape", label: "Shape", type: "pick", options: [["straight", "straight"], ["gooseneck", "gooseneck"], ["points", "by points"]] },
        { name: "height_mm", label: "Height, tip to seat", type: "length" },
        { name: "body_width_mm", label: "Width of the body", type: "length" },
        { name: "neck_relief_mm", label: "Throat behind the tip", type: "length", when: (draft) => draft.shape === "gooseneck" },
        points("The tip is at 0, 0."),
        { name: "turned", label: "Sits in the press", type: "yes", options: [["no", "as drawn"], ["yes", "turned round"]] },
      ],
    },
    { title: "Rating and pieces", part: "rest", fields: [rating, segments] },
    { title: "Place and condition", part: "rest", fields: [...place, ...condition] },
  ],
  dies: [
    {
      title: "What it is", part: "what",
      fields: [name, { name: "v_opening_mm", label: "V opening", type: "length", hint: "Between the sharp corners of face and flanks." }, { name: "angle_deg", label: "Angle of the V", type: "number", unit: "°" }, { name: "shoulder_radius_mm", label: "Shoulder radius", type: "length" }],
    },
    {
      title: "Outline", part: "outline",
      fields: [
        { name: "shape", label: "Shape", type: "pick", options: [["single_v", "single V"], ["points", "by points"]] },
        { name: "height_mm", label: "Height", type: "length" },
        { name: "width_mm", label: "Width", type: "length" },
        points("The top face is at y 0, the V's middle at x 0."),
      ],
    },
    { title: "Rating and pieces", part: "rest", fields: [rating, segments] },
    { title: "Place and condition", part: "rest", fields: [...place, ...condition] },
  ],
  holders: [
    { title: "What it is", part: "what", fields: [name, rating] },
    {
      title: "Outline", part: "outline",
      fields: [
        { name: "height_mm", label: "Height", type: "length" },
        { name: "overhang_front_mm", label: "Overhang to the front", type: "length", hint: "From the tip's line, clamps included." },
        { name: "overhang_back_mm", label: "Overhang to the back", type: "length" },
        { ...points("The punch's seat is at 0, 0. Empty: a plain block."), when: undefined, folded: true },
      ],
    },
    { title: "Place and condition", part: "rest", fields: [...place, ...condition] },
  ],
  press: [
    {
      title: "The press", part: "what",
      fields: [
        name,
        { name: "force_kn", label: "Full force", type: "number", unit: "kN" },
        { name: "bed_length_mm", label: "Bed length", type: "length" },
        { name: "between_frames_mm", label: "Between the frames", type: "length" },
        { name: "open_height_mm", label: "Open height", type: "length" },
        { name: "stroke_mm", label: "Stroke", type: "length" },
        { name: "throat_mm", label: "Throat", type: "length" },
      ],
    },
    {
      title: "Ram and bed", part: "outline",
      fields: [
        { name: "ram_width_mm", label: "Ram width", type: "length", needed: true },
        { name: "ram_height_mm", label: "Ram height", type: "length", needed: true },
        { name: "bed_width_mm", label: "Bed width", type: "length", needed: true },
        { name: "bed_height_mm", label: "Bed height", type: "length", needed: true },
        { name: "floor_below_die_mm", label: "Floor below the die's seat", type: "length", blank: "not looked at", hint: "From the bed's face that carries the die, down to the floor: long parts hang that far." },
        { ...points("From the face that carries the holder. Empty: a plain beam."), name: "ram_points_mm", label: "Ram by points", when: undefined, folded: true },
        { ...points("From the face that carries the die. Empty: a plain beam."), name: "bed_points_mm", label: "Bed by points", when: undefined, folded: true },
      ],
    },
    {
      title: "What it bears", part: "rest",
      fields: [
        { name: "force_per_m_limit_kn_per_m", label: "Most force per length of bed", type: "rating", unit: "kN/m", hint: "What bed and ram bear over a short length." },
        { name: "off_centre_mm", label: "Full force off the middle, up to", type: "length", blank: "unknown" },
        { name: "bending_speed_mm_s", label: "Bending speed", type: "number", unit: "mm/s", blank: "unknown" },
      ],
    },
    {
      title: "Back gauge", part: "rest",
      fields: [
        { name: "gauge_x_min_mm", label: "X from", type: "length" },
        { name: "gauge_x_max_mm", label: "X to", type: "length" },
        { name: "gauge_r_min_mm", label: "R from", type: "length" },
        { name: "gauge_r_max_mm", label: "R to", type: "length" },
        { name: "finger_height_mm", label: "Finger height", type: "length" },
        { name: "finger_depth_mm", label: "Finger depth", type: "length" },
      ],
    },
    { title: "Holder in the ram, and notes", part: "rest", fields: [{ name: "holder", label: "Holder", type: "pick", options: [], blank: "none", broad: true }, { name: "note", label: "Note", type: "note" }] },
  ],
};

export { UNKNOWN_RATING };
