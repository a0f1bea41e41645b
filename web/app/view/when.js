// Days and times as people say them.

/** @param {string} iso @returns {string} "14 Sep 2026" */
export function day(iso) {
  const date = new Date(iso);
  return Number.isNaN(date.valueOf()) ? "" : date.toLocaleDateString("en-GB", { day: "numeric", month: "short", year: "numeric" });
}

/** @param {string} iso @returns {string} "14 Sep 2026, 08:20" */
export function moment(iso) {
  const date = new Date(iso);
  if (Number.isNaN(date.valueOf())) return "";
  return `${day(iso)}, ${date.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" })}`;
}
