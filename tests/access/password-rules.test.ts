import { describe, expect, it } from "vitest";
import { passwordProblem } from "@/lib/access/password-rules.ts";

const about = { email: "ottilie.brandt@example.org", name: "Ottilie Brandt" };
const code = (password: string): string | null => passwordProblem(password, about)?.code ?? null;

describe("a new password", () => {
  it("has fifteen characters or more, whichever they are", () => {
    expect(code("fourteen chars")).toBe("password-too-short");
    expect(code("fifteen charact")).toBeNull();
    expect(code("только пятнадцать букв")).toBeNull();
    expect(code("🫖 kettle on the 2nd shelf")).toBeNull();
    // Code points count, not halves of them.
    expect(code("🫖".repeat(14))).toBe("password-too-short");
    expect(code("x y z ".repeat(30))).toBe("password-too-long");
    expect(code("a phrase of sixty-four characters and more is what people may well use")).toBeNull();
  });
  it.each([
    "passwordpassword",
    "Password Password!",
    "correct horse battery staple",
    "aaaaaaaaaaaaaaaaaa",
    "abcabcabcabcabcabc",
    "123456789012345",
    "qwertyuiopasdfghjkl",
    "zyxwvutsrqponmlk",
    "asdfghjkl1234567",
  ])("is not what everybody tries: %s", (password) => {
    expect(code(password)).toBe("password-easy-to-guess");
  });
  it("is not one's own name or address with a little more", () => {
    expect(code("ottiliebrandt2026")).toBe("password-easy-to-guess");
    expect(code("Ottilie Brandt 1234")).toBe("password-easy-to-guess");
    expect(code("Cupboard Assay 123")).toBe("password-easy-to-guess");
    expect(code("ottilie keeps seven copper pans")).toBeNull();
  });
  it("may hold a common word where it holds more", () => {
    expect(code("a long password")).toBeNull();
    expect(code("the password of a copper kettle")).toBeNull();
  });
});
