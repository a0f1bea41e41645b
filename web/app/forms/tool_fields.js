// What is typed for each kind of tool, for the press and for a metal: names as in the API.

/**
 * @typedef
 *   {"text"|"note"|"length"|"number"|"force"|"rating"|"speed"|"lengths"|"points"|
 *     "pick"|"yes"|"openings"|"figure"} FieldType
 */
/** @typedef {Record<string, string>} Draft what stands in the boxes, by field name */
/**
 * @typedef {object} FieldSpec
 * @property {string} name
 * @property {string} label
 * @property {FieldType} type
 * @property {string} [unit] shown beside the label; lengths get the device's own
 * @property {string} [hint]
 * @property {number} [counted_mm] what an empty box of a length counts as
 * @property {[string, string][]} [options] of a pick; of a "yes" first the no, then the yes
 * @property {(draft: Draft) => boolean} [when] shown and sent only then
 * @property {string} [blank] what an empty box stands for, where empty has a meaning
 * @property {boolean} [hidden] typed in another box's place
 * @property {import("./outline_dxf.js").DxfKind} [dxf] points that a DXF file may be read for
 * @property {boolean} [broad] takes the whole width
 * @property {boolean} [folded] out of sight until opened, unless there is something in it
 */
/** @typedef {{title: string, part: "what"|"outline"|"rest", fields: FieldSpec[]}} FieldGroup */

const UNKNOWN_RATING = "Empty is unknown: checks with it then say so.";

/** @type {FieldSpec} */
const rating = {
  name: "rating_kn_per_m",
  label: "Rating",
  type: "rating",
  hint: "As stamped on the tool or in its maker's papers.",
};
/** @type {FieldSpec} */
const segments = {
  name: "segments_mm",
  label: "Pieces owned",
  type: "lengths",
  hint: "Lengths with commas between, a piece owned twice twice.",
};
/** @type {FieldSpec[]} */
const place = [
  { name: "tray", label: "Tray", type: "text" },
  { name: "slot", label: "Slot", type: "text" },
];
/** @type {FieldSpec[]} */
const condition = [
  {
    name: "condition",
    label: "Condition",
    type: "pick",
    options: [
      ["good", "good"],
      ["worn", "worn"],
      ["damaged", "damaged"],
      ["unknown", "unknown"],
    ],
  },
  { name: "condition_note", label: "Note on its condition", type: "note" },
];
/** @type {FieldSpec} */
const name = { name: "name", label: "Name", type: "text", broad: true };

/** @param {string} wanted */
const ofShape = (wanted) => (/** @type {Draft} */ draft) => draft.shape === wanted;

/**
 * @param {import("./outline_dxf.js").DxfKind} dxf
 * @param {string} about
 * @returns {FieldSpec}
 */
const points = (dxf, about) => ({
  name: "points_mm",
  label: "Outline by points",
  type: "points",
  dxf,
  hint: `One point a line: x, y. x towards the back gauge, y up. ${about}`,
  when: ofShape("points"),
});

/**
 * The shapes drawn from figures, and the one that is typed or read.
 * @param {[string, string][]} drawn
 * @returns {FieldSpec}
 */
const shape = (...drawn) => ({
  name: "shape",
  label: "Shape",
  type: "pick",
  broad: true,
  options: [...drawn, ["points", "by points or DXF"]],
});
/** @type {FieldSpec} */
const turned = {
  name: "turned",
  label: "Sits in the press",
  type: "yes",
  options: [
    ["no", "as drawn"],
    ["yes", "reversed"],
  ],
};
/** @type {FieldGroup} */
const ratingAndPieces = { title: "Rating and pieces", part: "rest", fields: [rating, segments] };
/** @type {FieldGroup} */
const placeAndCondition = { title: "Place and condition", part: "rest", fields: [...place, ...condition] };

/** @param {Draft} draft */
const oneV = (draft) => draft.shape !== "multi_v";
/** @param {Draft} draft */
const hasDieHolder = ({ die_holder_height_mm: height }) =>
  Boolean(height) && !/^0+([.,]0*)?( mm| in)?$/.test(String(height));

/** @type {Record<"punches"|"dies"|"holders"|"press", FieldGroup[]>} */
export const GROUPS = {
  punches: [
    {
      title: "What it is",
      part: "what",
      fields: [
        name,
        { name: "angle_deg", label: "Nose angle", type: "number", unit: "°" },
        { name: "tip_radius_mm", label: "Tip radius", type: "length" },
      ],
    },
    {
      title: "Outline",
      part: "outline",
      fields: [
        shape(["straight", "straight"], ["gooseneck", "gooseneck"]),
        { name: "height_mm", label: "Height, tip to seat", type: "length" },
        { name: "body_width_mm", label: "Width of the body", type: "length" },
        {
          name: "neck_relief_mm",
          label: "Throat behind the tip",
          type: "length",
          when: ofShape("gooseneck"),
        },
        {
          name: "neck_width_mm",
          label: "Thickness of the neck",
          type: "length",
          when: ofShape("gooseneck"),
          blank: "as the body",
        },
        {
          name: "throat_top_mm",
          label: "Throat begins to close",
          type: "length",
          when: ofShape("gooseneck"),
          blank: "as high as it can",
          hint: "Above the tip.",
        },
        points("punch", "The tip is at 0, 0."),
        turned,
      ],
    },
    ratingAndPieces,
    placeAndCondition,
  ],
  dies: [
    {
      title: "What it is",
      part: "what",
      fields: [
        name,
        {
          name: "v_opening_mm",
          label: "V opening",
          type: "length",
          hint: "Between the sharp corners of face and flanks.",
          when: oneV,
        },
        { name: "angle_deg", label: "Angle of the V", type: "number", unit: "°", when: oneV },
        { name: "shoulder_radius_mm", label: "Shoulder radius", type: "length", when: oneV },
      ],
    },
    {
      title: "Outline",
      part: "outline",
      fields: [
        shape(["single_v", "single V"], ["multi_v", "block with several V's"]),
        { name: "height_mm", label: "Height", type: "length" },
        { name: "width_mm", label: "Width", type: "length" },
        turned,
        {
          name: "openings",
          label: "The V's of the block",
          type: "openings",
          when: ofShape("multi_v"),
        },
        {
          name: "up",
          label: "V that is up",
          type: "number",
          hidden: true,
          when: ofShape("multi_v"),
        },
        points("die", "The top face is at y 0, the V's middle at x 0."),
      ],
    },
    ratingAndPieces,
    placeAndCondition,
  ],
  holders: [
    { title: "What it is", part: "what", fields: [name, rating] },
    {
      title: "Outline",
      part: "outline",
      fields: [
        shape(["block", "plain block"], ["clamps", "clamps that stick out"]),
        { name: "height_mm", label: "Height, seat to ram", type: "length" },
        {
          name: "overhang_front_mm",
          label: "Overhang to the front",
          type: "length",
          hint: "From the tip's line, clamps included.",
        },
        { name: "overhang_back_mm", label: "Overhang to the back", type: "length" },
        {
          name: "clamp_height_mm",
          label: "Clamps up from the seat",
          type: "length",
          when: ofShape("clamps"),
        },
        {
          name: "body_front_mm",
          label: "Body above, to the front",
          type: "length",
          when: ofShape("clamps"),
        },
        {
          name: "body_back_mm",
          label: "Body above, to the back",
          type: "length",
          when: ofShape("clamps"),
        },
        points("holder", "The punch's seat is at 0, 0."),
      ],
    },
    placeAndCondition,
  ],
  press: [
    {
      title: "The press",
      part: "what",
      fields: [
        name,
        { name: "force_kn", label: "Full force", type: "force" },
        { name: "bed_length_mm", label: "Bed length", type: "length" },
      ],
    },
    {
      title: "Room for the sheet and the tools",
      part: "rest",
      fields: [
        { name: "between_frames_mm", label: "Between the frames", type: "length", blank: "unknown" },
        { name: "open_height_mm", label: "Open height", type: "length", blank: "unknown" },
        { name: "stroke_mm", label: "Stroke", type: "length", blank: "unknown" },
        { name: "throat_mm", label: "Throat", type: "length", blank: "unknown" },
      ],
    },
    {
      title: "Ram and bed",
      part: "outline",
      fields: [
        { name: "ram_width_mm", label: "Ram width", type: "length", blank: "unknown" },
        { name: "ram_height_mm", label: "Ram height", type: "length", blank: "unknown" },
        { name: "bed_width_mm", label: "Bed width", type: "length", blank: "unknown" },
        { name: "bed_height_mm", label: "Bed height", type: "length", blank: "unknown" },
        {
          name: "floor_below_die_mm",
          label: "Floor below the die",
          type: "length",
          broad: true,
          blank: "not looked at",
          hint: "From the face that the die stands on, down to the floor: long parts hang that far.",
        },
        {
          ...points("ram", "From the face that carries the holder. Empty: a plain beam."),
          name: "ram_points_mm",
          label: "Ram by points",
          when: undefined,
          folded: true,
        },
        {
          ...points("bed", "From the face that carries the die or its holder. Empty: a plain beam."),
          name: "bed_points_mm",
          label: "Bed by points",
          when: undefined,
          folded: true,
        },
      ],
    },
    {
      title: "Riser or die holder on the bed",
      part: "rest",
      fields: [
        {
          name: "die_holder_height_mm",
          label: "Height under the die",
          type: "length",
          blank: "none",
          broad: true,
          hint: "0 or empty: the die stands on the bed.",
        },
        {
          name: "die_holder_width_mm",
          label: "Width",
          type: "length",
          when: hasDieHolder,
          blank: "by points",
        },
        {
          name: "die_holder_rating_kn_per_m",
          label: "Rating of the die holder",
          type: "rating",
          hint: "As stamped on it or in its papers.",
          when: hasDieHolder,
        },
        {
          ...points(
            "die_holder",
            "The die's seat is at y 0, the bed's at minus the height. Empty: a plain block.",
          ),
          name: "die_holder_points_mm",
          label: "Die holder by points",
          when: hasDieHolder,
          folded: true,
        },
      ],
    },
    {
      title: "Ratings",
      part: "rest",
      fields: [
        {
          name: "force_per_m_limit_kn_per_m",
          label: "Most force per length of bed",
          type: "rating",
          hint: "What bed and ram bear over a short length.",
        },
        {
          name: "off_centre_mm",
          label: "Full force off the middle, up to",
          type: "length",
          blank: "unknown",
        },
        {
          name: "deflection_mm",
          label: "Gives way in the middle",
          type: "length",
          broad: true,
          blank: "unknown",
          hint:
            "Bed and ram together, middle against ends, at full force over the whole bed: from its papers, " +
            "or from three strips below.",
        },
        {
          name: "bending_speed_mm_s",
          label: "Bending speed",
          type: "speed",
          blank: "unknown",
        },
      ],
    },
    {
      title: "How it is set",
      part: "rest",
      fields: [
        {
          name: "set_by",
          label: "For a bend the press is set",
          type: "pick",
          broad: true,
          blank: "not known: read as by angle",
          options: [
            ["angle", "by angle"],
            ["depth", "by depth"],
            ["stop", "by a stop"],
          ],
        },
        {
          name: "angle_accuracy_deg",
          label: "It measures the angle in the sheet, within ±",
          type: "number",
          unit: "°",
          broad: true,
          blank: "unknown",
          hint: "Only where its papers say how near. Empty: what sheet, tools and zero leave open counts.",
        },
      ],
    },
    {
      title: "Back gauge",
      part: "rest",
      fields: [
        { name: "gauge_x_min_mm", label: "X from", type: "length", blank: "unknown" },
        { name: "gauge_x_max_mm", label: "X to", type: "length", blank: "unknown" },
        { name: "gauge_r_min_mm", label: "R from", type: "length", blank: "unknown" },
        { name: "gauge_r_max_mm", label: "R to", type: "length", blank: "unknown" },
        { name: "finger_height_mm", label: "Finger height", type: "length", blank: "unknown" },
        { name: "finger_depth_mm", label: "Finger depth", type: "length", blank: "unknown" },
        {
          name: "gauge_repeatability_mm",
          label: "Repeats within ±",
          type: "length",
          broad: true,
          blank: "unknown",
          hint: "As in its papers.",
          counted_mm: 0.1,
        },
      ],
    },
    {
      title: "Holder in the ram, and notes",
      part: "rest",
      fields: [
        { name: "holder", label: "Holder", type: "pick", options: [], blank: "none", broad: true },
        { name: "note", label: "Note", type: "note" },
      ],
    },
  ],
};

export { UNKNOWN_RATING };
