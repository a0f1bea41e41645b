// What a metal taught: its figures before and after, and the results behind them, any of which can
// be forgotten and used again.
import { html, nothing } from "/vendor/lit-html/lit-html.js";
import { call, Problem, Unreachable } from "../../app/sync/api.js";
import { readList } from "../../app/sync/shop_lists.js";
import { notice } from "../../app/shell/notices.js";
import { onSettings, settings } from "../../app/shell/settings.js";
import { sync } from "../../app/sync/sync.js";
import { angle, fixed, length, words } from "../../app/shell/units.js";
import { flag, sentence, sentences } from "../../view/common/finding.js";
import { blankWords, measuredFigures } from "../../view/results/measured_figures.js";
import { offer, way } from "../../view/common/if_allowed.js";
import { pressLearned } from "../../view/shop/measured_press_error.js";
import { empty } from "../../view/common/screen_states.js";
import { moment, whoSent } from "../../view/common/dates.js";

/**
 * @typedef {"forget"|"remember"|"confirm"} Mark
 */

/** @param {import("../../app/shell/routes.js").Visit} visit */
export async function show(visit) {
  const { metal } = visit.params;
  const query = `metal=${encodeURIComponent(metal)}`;
  visit.title("Measured springback");
  const { items } = await readList("metals", visit.signal);
  const found = items.find(({ code }) => code === metal);
  if (!found) {
    visit.title("No such metal");
    visit.render(empty(`No metal ${metal} in the shop`, html`<a href="/shop/metals">Metals</a>`));
    return visit.ready();
  }
  visit.title(`${found.name}: measured springback`);
  /** @type {{groups: Api.LearnedGroup[], press: Api.LearnedPress|null,
   *   evidence: Api.EvidenceRow[], busy: string}} */
  const state = { groups: [], press: null, evidence: [], busy: "" };

  async function load() {
    const [learned, kept] = await Promise.all([
      call("GET", `/learned?${query}`, { signal: visit.signal }),
      call("GET", `/test-bends?${query}`, { signal: visit.signal }),
    ]);
    const taught = /** @type {Api.Learned} */ (learned.body);
    const { evidence } = /** @type {Api.EvidenceList} */ (kept.body);
    Object.assign(state, { groups: taught.groups, press: taught.press });
    state.evidence = [...evidence].sort((a, b) => (a.made_at < b.made_at ? 1 : -1));
  }

  /**
   * @param {Api.EvidenceRow} one
   * @param {Mark} mark
   */
  async function turn(one, mark) {
    if (state.busy) return;
    state.busy = one.id;
    draw();
    try {
      const { body } = await call("POST", `/evidence/${encodeURIComponent(one.id)}/${mark}`, {
        body: settings().name ? { by: settings().name } : {},
        timeout: 20_000,
      });
      await load();
      notice(turnedWords(mark, /** @type {Api.MarkAnswer} */ (body).cards));
      sync();
    } catch (error) {
      if (visit.signal.aborted) return;
      if (!(error instanceof Problem || error instanceof Unreachable)) throw error;
      notice(error.message);
    }
    state.busy = "";
    draw();
  }

  const draw = () =>
    visit.render(
      html`<p class="crumb">
          <a href="/shop">Shop</a> / <a href="/shop/metals/${encodeURIComponent(metal)}">${found.name}</a>
        </p>
        <div class="head-line">
          <h1>Measured springback <span class="soft">${found.name}</span></h1>
          ${way(
            "/shop/test-bend",
            html`<a class="button next" href="/shop/test-bend?${query}" data-test="to-test-bend"
              >Test bend</a
            >`,
          )}
        </div>
        ${
          state.evidence.length
            ? html`<div class="learned" data-test="learned" aria-busy=${state.busy ? "true" : "false"}>
                <section class="learned-figures">
                  ${pressLearned(state.press)} ${groups(state.groups)}
                </section>
                <section class="learned-evidence">
                  <h2>Results</h2>
                  <ul class="rows" data-test="evidence">
                    ${state.evidence.map((one) => evidenceRow(one, state.busy, turn))}
                  </ul>
                </section>
              </div>`
            : empty(
                "Nothing yet",
                html`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`,
              )
        }`,
    );
  await load();
  onSettings(draw, visit.signal);
  draw();
  visit.ready();
}

const TURNED = { forget: "Forgotten.", remember: "Used again.", confirm: "It counts now." };

/**
 * @param {Mark} mark
 * @param {{code: string, title: string}[]} cards that would now plan differently
 */
function turnedWords(mark, cards) {
  const done = TURNED[mark];
  if (!cards.length) return done;
  return (
    `${done} ${cards.length === 1 ? "One card" : `${cards.length} cards`} would now plan ` +
    `differently: ${cards.map(({ title, code }) => title || code).join(", ")}.`
  );
}

/** @param {Api.LearnedGroup[]} all */
function groups(all) {
  if (!all.length) {
    return html`<h2>Figures</h2>
      <p data-test="no-groups">No result is in use: the figures are the metal’s own.</p>`;
  }
  return all.map(
    ({ thickness_mm, v_opening_mm, lot, factor, deduction, figures, said: together }) =>
      html`<section data-test="group" data-thickness=${thickness_mm} data-v=${v_opening_mm}>
        <h2>
          ${words(length(thickness_mm, { digits: 2 }))} over V
          ${words(length(v_opening_mm))}${lot ? html` <small>lot ${lot}</small>` : nothing}
        </h2>
        ${together.map(
          (said) => html`<p class="together" data-test="together">${flag("caution")} ${sentence(said)}</p>`,
        )}
        ${
          factor
            ? html`<p data-test="factor">
                The metal springs back <b>${fixed(factor.nominal, 2)} times</b> as much as expected
                (${fixed(factor.low, 2)} to ${fixed(factor.high, 2)}).
              </p>`
            : nothing
        }
        ${deduction ? blankWords(deduction) : nothing} ${measuredFigures(figures)}
      </section>`,
  );
}

/**
 * @param {Api.EvidenceRow} one
 * @param {string} busy
 * @param {(one: Api.EvidenceRow, mark: Mark) => void} turn
 */
function evidenceRow(one, busy, turn) {
  const where =
    one.kind === "test bend"
      ? "Test bend"
      : html`First piece${one.code ? html` of <a href="/c/${one.code}">${one.code}</a>` : nothing}`;
  const facts = [
    one.set_angle_deg === null ? "" : `set at ${words(angle(one.set_angle_deg))}`,
    words(length(one.thickness_mm, { digits: 2 })),
    one.die ? `die ${one.die}` : one.v_opening_mm ? `V ${words(length(one.v_opening_mm))}` : "",
    one.lot ? `lot ${one.lot}` : "",
    moment(one.made_at),
    whoSent(one),
  ];
  return html`<li
    class="row evidence ${one.forgotten ? "forgotten" : ""}"
    data-test="evidence-row"
    data-id=${one.id}
    data-forgotten=${String(one.forgotten)}>
    <div class="evidence-what">
      <p>
        <span class="lead">${words(angle(one.measured_deg))}</span> ${where}
        ${
          one.forgotten
            ? flag("unknown", "Forgotten")
            : one.asks
              ? flag("unknown", "Does not count")
              : one.outlier
                ? flag("caution", "Odd one out")
                : nothing
        }
      </p>
      <p class="more">${facts.filter(Boolean).join(" · ")}</p>
      ${one.note ? html`<p>${one.note}</p>` : nothing}
      ${
        one.said.length
          ? html`<p class=${one.asks ? "" : "more"} data-test="evidence-words">${sentences(one.said)}</p>`
          : nothing
      }
    </div>
    <div class="evidence-marks">
      ${marks(one).map(([mark, label]) =>
        offer(
          `evidence.${mark}`,
          html`<button
            type="button"
            class="button"
            data-test=${mark}
            ?disabled=${busy !== ""}
            @click=${() => turn(one, mark)}>
            ${label}
          </button>`,
        ),
      )}
    </div>
  </li>`;
}

/**
 * What can be said of a result.
 * @param {Api.EvidenceRow} one
 * @returns {[Mark, string][]}
 */
function marks({ forgotten, asks }) {
  if (forgotten) return [["remember", "Use it again"]];
  if (!asks) return [["forget", "Forget this one"]];
  return [
    ["confirm", "It was measured right"],
    ["forget", "It was wrong"],
  ];
}
