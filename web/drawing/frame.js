// A frame around a to-scale drawing that keeps its words readable at any size: it tells the
// drawing how many millimetres one screen pixel is, and groups of class "px" draw in pixels.

class DrawingFrame extends HTMLElement {
  #sizes = new ResizeObserver(() => this.measure());
  #changes = new MutationObserver(() => this.measure());

  connectedCallback() {
    this.#sizes.observe(this);
    this.#changes.observe(this, { subtree: true, childList: true, attributeFilter: ["viewBox"] });
    this.measure();
  }

  disconnectedCallback() {
    this.#sizes.disconnect();
    this.#changes.disconnect();
  }

  measure() {
    const svg = this.querySelector("svg");
    const { width, height } = svg?.viewBox.baseVal ?? { width: 0, height: 0 };
    if (!svg || !width || !svg.clientWidth || !svg.clientHeight) return;
    const millimetres = Math.max(width / svg.clientWidth, height / svg.clientHeight);
    svg.style.setProperty("--px", String(millimetres));
  }
}

customElements.define("drawing-frame", DrawingFrame);
