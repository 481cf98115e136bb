// Makes the log of blades smoother: a button for the start of a cut, a countdown for blades in contact. Hours come from
// the server, which sends its own clock with the page: a phone's clock may be wrong.
"use strict";
(() => {
  const $ = (id) => document.getElementById(id);
  const opened = Date.now();
  const two = (n) => String(n).padStart(2, "0");

  /** Milliseconds by the server's clock. */
  const now = (box) => Number(box.dataset.now) + (Date.now() - opened);

  // ---- the start of a cut

  /** The value of a field of date and hour, moved from the server's "now" in it to another moment. */
  function fieldAt(form, moment) {
    const base = form.dataset.nowTyped; // the server's wall clock at data-now
    const local = new Date(`${base}:00Z`).getTime() + (moment - Number(form.dataset.now));
    return new Date(local).toISOString().slice(0, 16);
  }

  function prepareCut() {
    const form = $("cut");
    if (!form || form.dataset.prepared) return;
    form.dataset.prepared = "yes";
    const started = $("started");
    if (started.hasAttribute("data-filled-in")) {
      // the server filled it in for those without script; a draft that was restored keeps its own
      if (started.value === started.getAttribute("value")) started.value = "";
    }
    document.querySelector(".times").open = document.getElementById("started-trouble") !== null || $("ended").value !== "";
    showRunning(form);
  }

  function start(form) {
    $("started").value = fieldAt(form, now(form));
    $("started").dispatchEvent(new Event("input", { bubbles: true }));
    showRunning(form);
  }

  function showRunning(form) {
    const started = $("started").value;
    const says = $("running");
    form.querySelector(".start").classList.toggle("on", started !== "");
    says.textContent = started === "" ? "" : `${says.dataset.say} ${started.slice(11, 16)}`;
  }

  // ---- blades in contact

  function tick() {
    const box = document.querySelector(".soaking");
    if (!box) return;
    for (const item of box.querySelectorAll("[data-ready]")) {
      const left = Math.ceil((Number(item.dataset.ready) - now(box)) / 1000);
      const ready = left <= 0;
      const count = item.querySelector("[data-count]");
      count.textContent = ready ? "" : `${Math.floor(left / 60)}:${two(left % 60)}`;
      count.hidden = ready;
      if (ready && item.classList.contains("soaking")) {
        item.classList.replace("soaking", "ready");
        navigator.vibrate?.([200, 100, 200]);
      }
      item.querySelector("[data-is-ready]").hidden = !ready;
      const out = item.querySelector("[data-out]");
      const says = ready ? out.dataset.sayReady : out.dataset.sayEarly;
      if (out.textContent !== says) out.textContent = says;
    }
  }

  document.addEventListener("click", (event) => {
    if (event.target.closest("#start")) start($("cut"));
  });
  document.addEventListener("input", (event) => {
    if (event.target.id === "started") showRunning($("cut"));
  });

  prepareCut();
  tick();
  setInterval(tick, 500);
  // a form that came back refused takes this page's place
  new MutationObserver(() => { prepareCut(); tick(); }).observe($("content"), { childList: true });
})();
