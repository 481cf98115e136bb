// Makes the forms smoother: counters, the dial, the spiral counter, drafts, sending again. Without it the plain forms
// do the same. Rules live on the server; a form that it refuses comes back as a page and takes this page's place.
"use strict";
(() => {
  const $ = (id) => document.getElementById(id);
  const changed = (field) => field.dispatchEvent(new Event("input", { bubbles: true }));

  // ---- counters: empty is "not counted", 0 is none

  const countOf = (input) => (/^\d+$/.test(input.value.trim()) ? Number(input.value.trim()) : null);

  function step(button) {
    const input = button.closest("[data-counter]").querySelector("input");
    const now = countOf(input);
    const add = Number(button.dataset.add);
    if (now === null && (input.value.trim() !== "" || add < 0)) return;
    input.value = Math.max(0, (now ?? 0) + add);
    changed(input);
  }

  function none(button) {
    const input = button.closest("[data-counter]").querySelector("input");
    input.value = input.value.trim() === "" ? "0" : "";
    changed(input);
  }

  function showCounter(box) {
    const input = box.querySelector("input");
    const button = box.querySelector("[data-none]");
    const empty = input.value.trim() === "";
    const says = empty ? button.dataset.sayNone : button.dataset.sayClear;
    button.textContent = says;
    button.setAttribute("aria-label", `${says}: ${button.dataset.label}`);
    box.querySelector('[data-add="-1"]').disabled = !countOf(input);
    box.classList.toggle("empty", empty);
  }

  // ---- the dial: the left half sets the left side, the right half the right

  const QUARTER = 7.5; // degrees

  function tapDial(dial, event) {
    const box = dial.getBoundingClientRect();
    const x = event.clientX - box.left - box.width / 2;
    const y = event.clientY - box.top - box.height / 2;
    if (Math.hypot(x, y) < box.width * 0.06) return;
    const turn = (Math.atan2(x, -y) * 180) / Math.PI;
    const quarter = Math.round((turn < 0 ? turn + 360 : turn) / QUARTER) % 48;
    const select = $(x < 0 ? "clock_left" : "clock_right");
    select.value = quarter === 0 ? "12" : String(quarter / 4);
    changed(select);
  }

  function stepClock(button) {
    const select = $(button.dataset.clock);
    const level = select.id === "clock_left" ? "9" : "3";
    if (select.value === "") select.value = level;
    else {
      const to = select.selectedIndex + Number(button.dataset.step);
      select.selectedIndex = Math.min(Math.max(to, 1), select.options.length - 1);
    }
    changed(select);
  }

  function showHand(hand) {
    const hours = $(hand.dataset.hand)?.value ?? "";
    hand.classList.toggle("unset", hours === "");
    if (hours !== "") hand.setAttribute("transform", `rotate(${Number(hours) * 30})`);
  }

  // ---- spirals: the numbers come with the page

  function countSpiral(box) {
    const says = box.querySelector("output");
    const numbers = JSON.parse(box.dataset.numbers);
    const number = numbers[Number($("spiral").value) - 1]?.[Number($("place").value) - 1];
    const marked = $("marked").value.trim() === "" ? 1 : Number($("marked").value);
    if (number === undefined || !Number.isInteger(marked)) says.textContent = says.dataset.sayMissing;
    else if (number < marked) says.textContent = says.dataset.sayUp;
    else {
      $("new_leaves").value = number - marked;
      changed($("new_leaves"));
      says.textContent = says.dataset.sayDone;
    }
  }

  // ---- species and position

  let asking;
  function offerSpecies(field) {
    clearTimeout(asking);
    const like = field.value.trim();
    if (like.length < 2) return;
    asking = setTimeout(async () => {
      try {
        const answer = await fetch(`/api/species?like=${encodeURIComponent(like)}`);
        const names = await answer.json();
        $("known-species").replaceChildren(...names.map((name) => Object.assign(document.createElement("option"), { value: name })));
      } catch {
        // out of range: the names that came with the page stay
      }
    }, 200);
  }

  function locate(button) {
    const says = $("locate-says");
    says.textContent = "…";
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => {
        $("lat").value = coords.latitude.toFixed(6);
        $("lon").value = coords.longitude.toFixed(6);
        says.textContent = "✓";
        changed($("lon"));
      },
      () => (says.textContent = button.dataset.sayFailed),
      { enableHighAccuracy: true, timeout: 20000 },
    );
  }

  // ---- drafts: what is typed stays on this device until it is saved

  const drafts = {
    key: (form) => `draft ${form.dataset.draft}`,
    read(form) {
      try {
        return JSON.parse(localStorage.getItem(drafts.key(form)));
      } catch {
        return null;
      }
    },
    keep(form) {
      const values = Object.fromEntries([...new FormData(form)].filter(([name]) => !name.startsWith("confirm-")));
      try {
        localStorage.setItem(drafts.key(form), JSON.stringify({ at: Date.now(), values }));
      } catch {
        // no room or not allowed: the form still works
      }
    },
    drop(form) {
      try {
        localStorage.removeItem(drafts.key(form));
      } catch {
        // nothing was kept then
      }
    },
  };

  function restore(form) {
    const draft = drafts.read(form);
    if (!draft || $("trouble")) return;
    for (const [name, value] of Object.entries(draft.values)) {
      for (const field of form.querySelectorAll(`[name="${CSS.escape(name)}"]`)) {
        if (field.type === "radio" || field.type === "checkbox") field.checked = field.value === value;
        else if (field.tagName !== "BUTTON") field.value = value;
      }
    }
    for (const details of form.querySelectorAll("details.taken")) {
      details.open = [...details.querySelectorAll("input")].some((input) => input.value !== "");
    }
    $("draft-when").textContent = new Date(draft.at).toLocaleString(document.documentElement.lang, { dateStyle: "medium", timeStyle: "short" });
    $("draft-note").hidden = false;
  }

  // ---- sending: saved, refused, or not got through

  const WAIT = 30000; // ms
  let lastButton;

  async function send(form, button) {
    lastButton = button;
    drafts.keep(form);
    const body = new URLSearchParams(new FormData(form, button ?? null));
    $("send-trouble").hidden = true;
    form.setAttribute("aria-busy", "true");
    const buttons = form.querySelectorAll('button[type="submit"]');
    buttons.forEach((b) => (b.disabled = true));
    try {
      const options = { method: "POST", body, headers: { Accept: "application/json" }, signal: AbortSignal.timeout(WAIT) };
      const answer = await fetch(form.getAttribute("action"), options);
      if (answer.headers.get("Content-Type")?.startsWith("application/json")) {
        const { to } = await answer.json();
        drafts.drop(form);
        location.assign(to);
        return;
      }
      showAnswer(await answer.text());
    } catch {
      $("send-trouble").hidden = false;
      $("send-trouble").focus();
    }
    buttons.forEach((b) => (b.disabled = false));
    form.removeAttribute("aria-busy");
  }

  function showAnswer(text) {
    const page = new DOMParser().parseFromString(text, "text/html");
    $("content").replaceChildren(...page.getElementById("content").childNodes);
    prepare();
    ($("trouble") ?? $("content")).focus();
    window.scrollTo(0, 0);
  }

  // ---- one listener a kind of event, so that a page put in place later needs none of its own

  function prepare() {
    const mayLocate = window.isSecureContext && "geolocation" in navigator;
    for (const part of document.querySelectorAll(".by-script[hidden]")) {
      if (part.id !== "locate" || mayLocate) part.hidden = false;
    }
    document.querySelectorAll("form[data-draft]").forEach(restore);
    document.querySelectorAll("[data-counter]").forEach(showCounter);
    document.querySelectorAll("[data-hand]").forEach(showHand);
    document.dispatchEvent(new Event("prepared"));
  }

  document.addEventListener("click", (event) => {
    const at = (selector) => event.target.closest(selector);
    let hit;
    if ((hit = at("[data-add]"))) step(hit);
    else if ((hit = at("[data-none]"))) none(hit);
    else if ((hit = at("[data-clock]"))) stepClock(hit);
    else if ((hit = at("#dial"))) tapDial(hit, event);
    else if ((hit = at("#locate"))) locate(hit);
    else if ((hit = at("[data-fill]"))) {
      $(hit.dataset.fill).value = hit.dataset.value;
      changed($(hit.dataset.fill));
    } else if (at("#draft-discard")) {
      document.querySelectorAll("form[data-draft]").forEach(drafts.drop);
      location.reload();
    } else if (at("#send-again")) send(document.querySelector("form[data-draft]"), lastButton);
  });

  document.addEventListener("input", (event) => {
    const field = event.target;
    const counter = field.closest("[data-counter]");
    if (counter) showCounter(counter);
    const hand = document.querySelector(`[data-hand="${CSS.escape(field.id)}"]`);
    if (hand) showHand(hand);
    if (field.id === "species" && event.isTrusted) offerSpecies(field);
    const form = field.closest("form[data-draft]");
    if (form) drafts.keep(form);
  });

  document.addEventListener("submit", (event) => {
    const form = event.target.closest("form[data-draft]");
    if (!form) return;
    event.preventDefault();
    if (event.submitter?.value === "spiral") countSpiral(event.submitter.closest("details"));
    else if (form.getAttribute("aria-busy") !== "true") send(form, event.submitter);
  });

  prepare();
})();
