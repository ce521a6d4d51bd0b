// Elements of the page, made from what they hold. Words go in as text, never as markup.

/**
 * An element. Attributes that are false, null or undefined are left out; `on…` are listeners.
 *
 *     make("label", {for: "date"}, "Date")
 */
export function make(name, attributes = {}, ...inside) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith("on")) {
      element.addEventListener(key.slice(2), value);
    } else if (value !== false && value !== null && value !== undefined) {
      element.setAttribute(key, value === true ? "" : value);
    }
  }
  element.append(...inside.flat().filter((one) => one !== null && one !== undefined && one !== ""));
  return element;
}

/** The same for a picture. */
export function draw(name, attributes = {}, ...inside) {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) {
    element.setAttribute(key, value);
  }
  element.append(...inside);
  return element;
}

/** Puts something in place of all that an element holds. */
export function fill(element, ...inside) {
  element.replaceChildren(...inside.flat().filter((one) => one !== null && one !== undefined));
}

/** `left foot_length` as part of an id. */
export function idOf(...parts) {
  return parts.filter((part) => part !== "").join("-");
}

/** `1 answer`, `3 answers`. */
export function counted(count, one, many = `${one}s`) {
  return `${count} ${count === 1 ? one : many}`;
}
