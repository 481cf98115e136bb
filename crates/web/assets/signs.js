// The sign picker with script: a search over all places, the tally of each place, and links that unfold their row.
// Without it the picker is plain radio buttons in folded parts.
"use strict";
(() => {
  const all = (selector, under = document) => [...under.querySelectorAll(selector)];
  const plain = (text) => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  const noted = (row) => row.querySelector("input:checked")?.value ?? "";

  function tally(place) {
    const rows = all(".sign", place);
    for (const row of rows) row.dataset.noted = noted(row);
    place.querySelector(".tally b").textContent = rows.filter((row) => noted(row) !== "").length;
  }

  const tallyAll = () => all("details.place").forEach(tally);

  // words of the search in any order, anywhere in the name or the way to look
  function find(field) {
    const words = plain(field.value).split(/\s+/).filter(Boolean);
    let hits = 0;
    for (const place of all("details.place")) {
      let here = 0;
      for (const row of all(".sign", place)) {
        const text = plain(row.querySelector(".what").textContent);
        row.hidden = !words.every((word) => text.includes(word));
        if (!row.hidden) here += 1;
      }
      place.hidden = here === 0;
      if (words.length > 0) place.open = here > 0;
      else place.open = all(".sign", place).some((row) => noted(row) !== "");
      hits += here;
    }
    document.getElementById("signs-found").textContent = hits === 0 ? field.dataset.sayNone : words.length > 0 ? String(hits) : "";
  }

  function show(key) {
    const row = document.getElementById(`sign-${key}`);
    if (!row) return false;
    row.closest("details.place").hidden = false;
    row.closest("details.place").open = true;
    row.hidden = false;
    const how = row.querySelector("details.what");
    if (how) how.open = true;
    row.scrollIntoView({ block: "center" });
    row.querySelector("input:checked")?.focus({ preventScroll: true });
    return true;
  }

  document.addEventListener("input", (event) => {
    if (event.target.id === "signs-find") find(event.target);
    const place = event.target.closest("details.place");
    if (place) tally(place);
  });

  // the Enter key in the search looks; it does not save the form
  document.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && event.target.id === "signs-find") event.preventDefault();
  });

  document.addEventListener("click", (event) => {
    const link = event.target.closest("a[data-sign]");
    if (link && show(link.dataset.sign)) event.preventDefault();
  });

  document.addEventListener("prepared", tallyAll);
  tallyAll();
  if (location.hash.startsWith("#sign-")) show(location.hash.slice("#sign-".length));
})();
