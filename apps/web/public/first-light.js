// Runs before anything is drawn: by day the page turns to paper, else it stays black.
(() => {
  let light = null;
  let run = null;
  try {
    light = localStorage.getItem("light");
    run = localStorage.getItem("captray-run-going");
  } catch {
    // Storage is closed to us: stay black until the app decides.
  }
  // While a sheet is in the trays the page comes back in red, whatever the light was.
  if (light !== "day" || run !== null) return;
  document.documentElement.dataset.light = "day";
  document.querySelector('meta[name="color-scheme"]').content = "light";
  document.querySelector('meta[name="theme-color"]').content = "#F6F2E7";
})();

// Where the app itself cannot be opened, a sentence stands in place of a blank page.
addEventListener(
  "error",
  (event) => {
    const place = document.getElementById("app");
    if (place === null || place.childElementCount > 0 || !(event.target instanceof HTMLScriptElement)) return;
    place.textContent = "Cap & Tray could not be opened. Load the page again; what was kept is still on this machine.";
    place.style.cssText = `padding: 16px; font: 18px/1.5 sans-serif; color: ${
      document.documentElement.dataset.light === "day" ? "#1A1815" : "#f00"
    }`;
  },
  true,
);
