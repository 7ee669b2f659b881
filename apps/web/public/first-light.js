// Runs before anything is drawn: by day the page turns to paper, else it stays black.
(() => {
  let light = null;
  try {
    light = localStorage.getItem("light");
  } catch {
    // Storage is closed to us: stay black until the app decides.
  }
  if (light !== "day") return;
  document.documentElement.dataset.light = "day";
  document.querySelector('meta[name="color-scheme"]').content = "light";
  document.querySelector('meta[name="theme-color"]').content = "#F6F2E7";
})();
