// Measured in the page: contrast of all text, size of all things to press, width of the page.

/**
 * Text with less contrast than `least` against what is painted behind it (WCAG 2.2 relative luminance), as strings.
 * Backgrounds with pictures are judged by their colour; inactive controls and invisible text are left out.
 */
export const lowContrast = (page, least = 7) => page.evaluate(contrastIn, least);

function contrastIn(least) {
  const canvas = document.createElement("canvas").getContext("2d", { willReadFrequently: true });
  const rgba = (css) => {
    canvas.clearRect(0, 0, 1, 1);
    canvas.fillStyle = "#000";
    canvas.fillStyle = css;
    canvas.fillRect(0, 0, 1, 1);
    const [r, g, b, a] = canvas.getImageData(0, 0, 1, 1).data;
    return [r, g, b, a / 255];
  };
  const over = ([r, g, b, a], [R, G, B]) => [r * a + R * (1 - a), g * a + G * (1 - a), b * a + B * (1 - a), 1];
  const light = ([r, g, b]) => {
    const part = (v) => (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4);
    return 0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b);
  };
  const behind = (element) => {
    const layers = [];
    for (let at = element; at; at = at.parentElement) {
      const paint = rgba(getComputedStyle(at).backgroundColor);
      if (paint[3] > 0) layers.push(paint);
      if (paint[3] === 1) break;
    }
    return layers.reverse().reduce((base, layer) => over(layer, base), [255, 255, 255, 1]);
  };
  const ratio = (a, b) => {
    const [high, low] = [light(a), light(b)].sort((x, y) => y - x);
    return (high + 0.05) / (low + 0.05);
  };
  const found = [];
  const judge = (element, ink, text) => {
    const ground = behind(element);
    const seen = ratio(over(rgba(ink), ground), ground);
    if (seen < least) found.push(`${seen.toFixed(2)}: “${text.trim().slice(0, 40)}” in ${element.tagName.toLowerCase()}.${element.getAttribute("class") ?? ""}`);
  };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (!node.data.trim() || !element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
    if (element.closest("script, style, option, datalist, button:disabled")) continue;
    const style = getComputedStyle(element);
    judge(element, element.namespaceURI.endsWith("svg") ? style.fill : style.color, node.data);
  }
  for (const field of document.querySelectorAll("input, textarea, select")) {
    if (!field.checkVisibility() || ["hidden", "radio", "checkbox", "range"].includes(field.type)) continue;
    judge(field, getComputedStyle(field).color, field.value || field.name);
    if (field.placeholder) judge(field, getComputedStyle(field, "::placeholder").color, field.placeholder);
  }
  return [...new Set(found)];
}

/**
 * Things to press that are smaller than `least` px either way. Links inside running text are left out (WCAG 2.5.8);
 * a radio or check box counts with its label.
 */
export const smallTargets = (page, least = 48) => page.evaluate(targetsIn, least);

function targetsIn(least) {
  const found = [];
  const press = "a[href], button, input:not([type=hidden]), select, textarea, summary, label:has(input), [role=button], [role=slider]";
  const inText = (link) => {
    const block = link.closest("p, li, td, dd, figcaption, label, summary");
    const own = link.textContent.trim().length;
    return link.tagName === "A" && getComputedStyle(link).display === "inline" && block && block.textContent.trim().length > own;
  };
  for (const element of document.querySelectorAll(press)) {
    if (!element.checkVisibility({ visibilityProperty: true })) continue;
    if (inText(element)) continue;
    const style = getComputedStyle(element);
    if (style.clipPath === "inset(50%)") continue;
    const labelled = ["radio", "checkbox"].includes(element.type) && element.closest("label");
    const box = (labelled || element).getBoundingClientRect();
    if (box.width < least - 0.5 || box.height < least - 0.5) {
      const name = element.getAttribute("aria-label") || element.textContent.trim() || element.name || element.id;
      found.push(`${Math.round(box.width)}x${Math.round(box.height)}: ${element.tagName.toLowerCase()} “${name.slice(0, 40)}”`);
    }
  }
  return [...new Set(found)];
}

/** How many px the page is wider than its window. */
export const overflow = (page) => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
