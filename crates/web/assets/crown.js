// The drawn crown moves through its forecast: a slider for the weeks, a switch for the cut.
// Without this script the same frames are links.
(() => {
  "use strict";
  document.documentElement.classList.add("script");
  const figure = document.getElementById("crown");
  const slider = document.getElementById("weeks");
  const data = document.getElementById("crown-data");
  if (!figure || !slider || !data) return;

  const { weeks, modes } = JSON.parse(data.textContent);
  const links = [...document.querySelectorAll("#crown-switch a[data-mode]")];
  const SVG = "http://www.w3.org/2000/svg";
  const part = (id) => document.getElementById(id);
  const current = () => links.find((a) => a.hasAttribute("aria-current")) || links[0];

  const frond = ([shape, transform, kind]) => {
    const use = document.createElementNS(SVG, "use");
    use.setAttribute("href", "#" + shape);
    use.setAttribute("transform", transform);
    use.setAttribute("class", kind);
    return use;
  };
  const mark = ([, , , at]) => {
    const group = document.createElementNS(SVG, "g");
    group.setAttribute("class", "cut-mark");
    group.setAttribute("transform", at);
    for (const kind of ["halo", "blade"]) {
      const path = document.createElementNS(SVG, "path");
      path.setAttribute("class", kind);
      path.setAttribute("d", "M0-18V18");
      group.append(path);
    }
    return group;
  };
  const isFar = (f) => f[2].includes("far");

  const show = () => {
    const index = weeks.indexOf(Number(slider.value));
    const frame = modes[current().dataset.mode][index < 0 ? 0 : index];
    part("fronds-far").replaceChildren(...frame.fronds.filter(isFar).map(frond));
    part("fronds-near").replaceChildren(...frame.fronds.filter((f) => !isFar(f)).map(frond));
    part("cut-marks").replaceChildren(...frame.fronds.filter((f) => f[3]).map(mark));
    part("crown-when").textContent = frame.when;
    part("crown-counts").textContent = frame.counts;
    part("crown-desc").textContent = frame.counts;
    slider.setAttribute("aria-valuetext", frame.when);
    figure.dataset.weeks = slider.value;
    figure.dataset.mode = current().dataset.mode;
  };

  slider.addEventListener("input", show);
  for (const link of links) {
    link.addEventListener("click", (event) => {
      event.preventDefault();
      links.forEach((a) => a.removeAttribute("aria-current"));
      link.setAttribute("aria-current", "true");
      show();
    });
  }
  show();
})();
