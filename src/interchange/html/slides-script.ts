/**
 * What turns the slides: plain JavaScript, since it runs in a file by itself, without a build. Without it all slides stand
 * below each other. The hash beside it is what the file's content policy lets run, and nothing else.
 */
export const SLIDES_SCRIPT = `
'use strict';
(() => {
  const root = document.documentElement;
  const slides = [...document.querySelectorAll('.slide')];
  const back = document.getElementById('back');
  const next = document.getElementById('next');
  const full = document.getElementById('full');
  const bar = document.getElementById('bar');
  const number = document.getElementById('number');
  const told = document.getElementById('told');
  const last = slides.length - 1;
  let at = -1;
  let typed = '';

  const show = (wanted) => {
    const to = Math.min(last, Math.max(0, wanted));
    dark(false);
    typed = '';
    if (to === at) return;
    at = to;
    slides.forEach((slide, i) => { slide.hidden = i !== at; });
    number.textContent = (at + 1) + ' of ' + slides.length;
    told.textContent = 'Slide ' + (at + 1) + ' of ' + slides.length + ': ' + slides[at].dataset.title;
    back.setAttribute('aria-disabled', String(at === 0));
    next.setAttribute('aria-disabled', String(at === last));
    try { history.replaceState(null, '', '#' + (at + 1)); } catch { /* A file may not be let name its slide. */ }
  };
  const dark = (on) => root.classList.toggle('dark', on);
  const fromAddress = () => show((Number.parseInt(location.hash.slice(1), 10) || 1) - 1);
  const fill = () => {
    const done = document.fullscreenElement ? document.exitFullscreen() : root.requestFullscreen && root.requestFullscreen();
    if (done) done.catch(() => {});
  };
  const lit = () => {
    bar.classList.add('lit');
    clearTimeout(lit.timer);
    lit.timer = setTimeout(() => bar.classList.remove('lit'), 2500);
  };

  const KEYS = {
    ArrowRight: 1, ArrowDown: 1, PageDown: 1, Enter: 1, ' ': 1, n: 1,
    ArrowLeft: -1, ArrowUp: -1, PageUp: -1, Backspace: -1, p: -1,
  };
  addEventListener('keydown', (event) => {
    const { key } = event;
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const onButton = event.target instanceof HTMLButtonElement;
    if (onButton && (key === ' ' || key === 'Enter')) return;
    if (/^[0-9]$/.test(key)) typed = (typed + key).slice(-4);
    else if (key === 'Enter' && typed) show(Number(typed) - 1);
    else if (key === ' ' && event.shiftKey) show(at - 1);
    else if (KEYS[key]) show(at + KEYS[key]);
    else if (key === 'Home') show(0);
    else if (key === 'End') show(last);
    else if (key === 'b' || key === '.') dark(!root.classList.contains('dark'));
    else if (key === 'f' || key === 'F5') fill();
    else return;
    event.preventDefault();
  });

  let down = null;
  const turnFrom = (x) => show(x < innerWidth / 3 ? at - 1 : at + 1);
  document.querySelector('main').addEventListener('pointerdown', (event) => {
    down = event.isPrimary && event.button === 0 ? { x: event.clientX, y: event.clientY } : null;
  });
  document.querySelector('main').addEventListener('pointerup', (event) => {
    if (!down || !event.isPrimary) return;
    const dx = event.clientX - down.x;
    const dy = event.clientY - down.y;
    down = null;
    if (Math.abs(dx) < 12 && Math.abs(dy) < 12) turnFrom(event.clientX);
    else if (event.pointerType !== 'mouse' && Math.abs(dx) > 40 && Math.abs(dx) > Math.abs(dy)) show(dx < 0 ? at + 1 : at - 1);
  });
  addEventListener('pointercancel', () => { down = null; });
  addEventListener('pointermove', lit);
  addEventListener('hashchange', fromAddress);
  back.addEventListener('click', () => show(at - 1));
  next.addEventListener('click', () => show(at + 1));
  full.addEventListener('click', fill);
  full.hidden = !root.requestFullscreen;
  bar.hidden = false;
  root.classList.add('turning');
  fromAddress();
  lit();
})();
`;

/** SHA-256 of the script, base64. */
export const SLIDES_SCRIPT_HASH = 'y4TQafvW8aJ9amdc2sZA7qahcfFV5DFRVijg0+aPoBg=';
