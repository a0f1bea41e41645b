// Which module shows which address. Nothing but the wiring (main.js) imports it: a screen may then go to
// any other one by its address, and no file imports itself in a circle.

/** @type {Record<string, () => Promise<import("./routes.js").Screen>>} by the route's name */
export const screens = {
  home: () => import("../../screens/card/home.js"),
  bend: () => import("../../screens/plan/bend.js"),
  "press-screen": () => import("../../screens/card/press_screen.js"),
  part: () => import("../../screens/plan/part.js"),
  scan: () => import("../../screens/card/scan.js"),
  card: () => import("../../screens/card/card.js"),
  step: () => import("../../screens/card/step.js"),
  result: () => import("../../screens/card/result.js"),
  history: () => import("../../screens/card/history.js"),
  note: () => import("../../screens/card/note.js"),
  resolve: () => import("../../screens/card/resolve.js"),
  print: () => import("../../screens/print/card_sheet.js"),
  label: () => import("../../screens/print/label.js"),
  labels: () => import("../../screens/print/label_sheet.js"),
  chart: () => import("../../screens/print/wall_chart.js"),
  shop: () => import("../../screens/shop/shop.js"),
  press: () => import("../../screens/shop/press.js"),
  "test-bend": () => import("../../screens/shop/test_bend.js"),
  learned: () => import("../../screens/shop/measured_springback.js"),
  tools: () => import("../../screens/shop/tool_list.js"),
  tool: () => import("../../screens/shop/tool.js"),
  crew: () => import("../../screens/device/crew.js"),
  pair: () => import("../../screens/device/pair.js"),
  backups: () => import("../../screens/device/backups.js"),
  guide: () => import("../../screens/guide/guide.js"),
  "guide-page": () => import("../../screens/guide/guide.js"),
  words: () => import("../../screens/guide/words.js"),
  settings: () => import("../../screens/device/settings.js"),
};
