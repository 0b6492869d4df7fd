/** Height of the keys with the room round them, pixels. */
const KEYS = 60;

/**
 * How the slides look on a screen, one at a time and as large as it lets them, and on paper, one a page. Where the screen is
 * higher than a slide, it stands so far up that the keys have room under it.
 */
export function slidesStyle({ width, height }: { readonly width: number; readonly height: number }): string {
  return `
* { box-sizing: border-box; margin: 0; }
html { background: #e9e7e1; color: #182030; font: 18px/1.4 ${FONT_STACK}; }
.slide { width: 100%; max-width: calc(100vh * ${width} / ${height}); margin: 0 auto 16px; background: #fff; }
.slide > svg { display: block; width: 100%; height: auto; }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.turning, .turning body { height: 100%; overflow: hidden; background: #0d1118; }
.turning main { height: 100%; display: flex; align-items: center; justify-content: center; cursor: default; touch-action: pan-y pinch-zoom; user-select: none; }
.turning { --free: max(0px, 100vh - 100vw * ${height} / ${width}); }
.turning .slide { width: 100vw; max-width: calc(100vh * ${width} / ${height}); margin: 0 0 min(var(--free), max(0px, ${2 * KEYS}px - var(--free))); }
.slide[hidden] { display: none; }
.dark main { visibility: hidden; }
#bar { position: fixed; right: 0; bottom: 0; left: 0; display: flex; gap: 8px; align-items: center; justify-content: center; padding: 8px; opacity: 0; transition: opacity 200ms; }
#bar[hidden] { display: none; }
#bar.lit, #bar:focus-within, #bar:hover { opacity: 1; }
#bar button, #number { min-width: 44px; min-height: 44px; padding: 4px 16px; border: 2px solid #182030; border-radius: 4px; background: #fff; color: #182030; font: inherit; }
#number { display: flex; align-items: center; justify-content: center; min-width: 116px; }
#bar button[aria-disabled='true'] { color: #676c78; border-style: dashed; }
#bar button:focus-visible { outline: 4px solid #0056a8; outline-offset: 2px; }
@media (prefers-reduced-motion: reduce) { #bar { transition: none; } }
@page { size: ${width}mm ${height}mm; margin: 0; }
@media print {
  html, .turning, .turning body { height: auto; overflow: visible; background: none; }
  #bar, .unseen { display: none !important; }
  .turning main { display: block; height: auto; }
  .slide, .turning .slide, .slide[hidden] { display: block; width: ${width}mm; max-width: none; height: ${height}mm; margin: 0; overflow: hidden; break-after: page; break-inside: avoid; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  .slide:last-child { break-after: auto; }
  .dark main { visibility: visible; }
}
`;
}

const FONT_STACK = "'Atkinson Hyperlegible Next', 'Segoe UI', Verdana, sans-serif";
