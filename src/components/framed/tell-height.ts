/**
 * Tells the page around a frame how high the frame's content is, now and whenever it changes. The message is documented in docs/sharing.md:
 * `{ type: "ionwright-height", height: 812 }`, CSS pixels, a whole number. It says nothing else, so every page may have it.
 */
const TYPE = "ionwright-height";

if (window.parent !== window) {
  let told = 0;
  const tell = () => {
    // The root's own box, for what it scrolls is never less than the frame and would not let it shrink.
    const height = Math.ceil(document.documentElement.getBoundingClientRect().height);
    if (height === told) return;
    told = height;
    window.parent.postMessage({ type: TYPE, height }, "*");
  };
  new ResizeObserver(tell).observe(document.documentElement);
  tell();
}
