// Lists items under a search field as one types (arrow keys choose, Enter opens, Escape closes). Plain JavaScript without
// imports: pages that are kept carry it as it stands (page-cache.mjs), the others through search-field.tsx.
// Typing on never takes away what was typed, and Enter without a choice searches.

/** @typedef {{ slug: string, name: string, href: string }} Suggestion */

/**
 * @param {HTMLElement} frame the element around field, list and status, with the address to ask and the words to say in its data
 * @returns {() => void} takes it all back
 */
export function offerSuggestions(frame) {
  const field = /** @type {HTMLInputElement} */ (frame.querySelector("input"));
  const list = /** @type {HTMLElement} */ (frame.querySelector("[data-list]"));
  const status = /** @type {HTMLElement} */ (frame.querySelector("[role=status]"));
  const { address = "", listLabel = "", one = "", many = "", optionClass = "" } = frame.dataset;
  /** @type {Suggestion[]} */
  let offered = [];
  let chosen = -1;
  let asked = new AbortController();
  let timer = 0;

  /** @param {number} index */
  function choose(index) {
    chosen = index;
    for (const [at, option] of [...list.children].entries())
      option.setAttribute("aria-selected", String(at === chosen));
    if (chosen < 0) field.removeAttribute("aria-activedescendant");
    else field.setAttribute("aria-activedescendant", `${list.id}-${chosen}`);
  }

  /** @param {Suggestion[]} suggestions */
  function show(suggestions) {
    offered = suggestions;
    list.replaceChildren(
      ...offered.map((suggestion, index) => {
        const option = document.createElement("div");
        option.id = `${list.id}-${index}`;
        option.className = optionClass;
        option.setAttribute("role", "option");
        option.tabIndex = -1;
        option.textContent = suggestion.name;
        // The field would lose its focus, and the list with it, before the click is done.
        option.addEventListener("mousedown", (event) => event.preventDefault());
        option.addEventListener("click", () => window.location.assign(suggestion.href));
        return option;
      }),
    );
    list.hidden = offered.length === 0;
    field.setAttribute("aria-expanded", String(offered.length > 0));
    status.textContent = offered.length === 0 ? "" : `${offered.length} ${offered.length === 1 ? one : many}`;
    choose(-1);
  }

  async function ask() {
    asked = new AbortController();
    try {
      const answer = await fetch(address + encodeURIComponent(field.value), { signal: asked.signal });
      if (answer.ok) show(await answer.json());
    } catch {
      // Offline or overtaken by the next key: the form still works.
    }
  }

  // A moment after the last key; what was asked before and comes late is dropped.
  function onInput() {
    clearTimeout(timer);
    asked.abort();
    if (field.value.trim().length < 2) show([]);
    else timer = window.setTimeout(ask, 150);
  }

  /** @param {KeyboardEvent} event */
  function onKeyDown(event) {
    if (offered.length === 0) return;
    const places = offered.length + 1;
    // One place more than there are suggestions: the field itself.
    if (event.key === "ArrowDown") choose(((chosen + 2) % places) - 1);
    else if (event.key === "ArrowUp") choose(((chosen + places) % places) - 1);
    else if (event.key === "Escape") show([]);
    else if (event.key === "Enter" && offered[chosen]) window.location.assign(offered[chosen].href);
    else return;
    event.preventDefault();
  }

  const onBlur = () => show([]);
  field.setAttribute("role", "combobox");
  field.setAttribute("aria-autocomplete", "list");
  field.setAttribute("aria-controls", list.id);
  list.setAttribute("role", "listbox");
  list.setAttribute("aria-label", listLabel);
  field.addEventListener("input", onInput);
  field.addEventListener("keydown", onKeyDown);
  field.addEventListener("blur", onBlur);
  show([]);
  return () => {
    clearTimeout(timer);
    asked.abort();
    field.removeEventListener("input", onInput);
    field.removeEventListener("keydown", onKeyDown);
    field.removeEventListener("blur", onBlur);
  };
}
