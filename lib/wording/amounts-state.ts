import { type AmountsState, parseAmounts } from "../amounts/amounts-form.ts";
import { formatWordsIn } from "./formats.ts";
import type { Language } from "./language.ts";

/** "1,234" may be a thousand and more: with another nought behind it, it can only be read one way. */
const couldBeThousands = /^[1-9]\d{0,2}\.\d{3}$/;

/**
 * A calculator's state that we filled in, as a person of that language would have typed it. It means the same and is read back alike.
 *
 * @example stateIn({ ...state, content: "2.5 to 3.7" }, "es").content // "2,5 a 3,7"
 */
export function stateIn(state: AmountsState, language: Language): AmountsState {
  if (language === "en") return state;
  const { decimal, to } = formatWordsIn[language];
  const number = (text: string): string => text.replace(".", decimal) + (couldBeThousands.test(text) ? "0" : "");
  const written = (text: string): string => text.replace(" to ", ` ${to} `).replace(/\d+\.\d+/g, number);
  return parseAmounts(Object.fromEntries(Object.entries(state).map(([name, text]) => [name, written(text)])));
}
