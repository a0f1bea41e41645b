// The page that helps a device to trust the shop: works before the device can keep the app.

const LOOK_AGAIN_MS = 4000;

/** @param {string} id */
const at = (id) => /** @type {HTMLElement} */ (document.getElementById(id));

async function begin() {
  const answer = await fetch("/api/v1/join", { cache: "no-store" }).catch(() => null);
  if (!answer?.ok) {
    at("trusted").textContent =
      "This server answers only the computer it runs on. Start it with --lan to let phones in.";
    document.documentElement.dataset.ready = "join";
    return;
  }
  /** @type {Api.Joining} */
  const joining = await answer.json();
  at("shop").textContent = ` ${joining.shop}`;
  at("fingerprint").textContent = joining.fingerprint.replace(/(.{4})(?=.)/g, "$1 ");
  if (!joining.authority) {
    at("certificate").replaceWith(
      "This shop brought a certificate that devices trust already: there is nothing to fetch.",
    );
    for (const id of ["android", "ios", "desktop"]) at(id).hidden = true;
  }
  openOwn();
  at("addresses").replaceChildren(...joining.https.map(link));
  await look(joining.https);
  document.documentElement.dataset.ready = "join";
}

/** Open the words for this kind of device. */
function openOwn() {
  const kind = /android/i.test(navigator.userAgent)
    ? "android"
    : /iphone|ipad/i.test(navigator.userAgent)
      ? "ios"
      : "desktop";
  at(kind).setAttribute("open", "");
}

/** @param {string} address */
function link(address) {
  const made = document.createElement("a");
  made.href = `${address}/pair`;
  made.className = "button wide";
  made.textContent = address;
  return made;
}

/**
 * A request without a readable answer still says whether the connection was trusted.
 * @param {string[]} addresses
 */
async function look(addresses) {
  for (const address of addresses) {
    const reached = await fetch(`${address}/api/v1/health`, {
      mode: "no-cors",
      cache: "no-store",
      signal: AbortSignal.timeout(3000),
    }).then(
      () => true,
      () => false,
    );
    if (!reached) continue;
    at("trusted").textContent = "This device trusts the shop. Go on here, and pair it there:";
    for (const one of at("addresses").children) one.classList.toggle("next", one.textContent === address);
    document.documentElement.dataset.trusted = address;
    return;
  }
  at("trusted").textContent =
    "Not yet trusted on this device, or the name is not found from here. When the certificate is in, " +
    "one of these opens without a warning:";
  document.documentElement.dataset.trusted = "";
  setTimeout(() => look(addresses), LOOK_AGAIN_MS);
}

begin();
