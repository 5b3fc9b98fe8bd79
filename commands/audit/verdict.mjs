// What an audit's answer means. Apart from the asking, so that it can be tested.

const stops = ["high", "critical"];

/**
 * `answer` is what `npm audit --json` printed; `accepted` the weaknesses somebody has looked at: package, advisory (its address
 * or number), a reason in words, and the last day it counts. High and critical ones that nobody accepted fail, and so does an acceptance
 * that has run out. A registry without an audit skips the step, and says so.
 */
export function auditVerdict(answer, accepted, today) {
  let report;
  try {
    report = JSON.parse(answer);
  } catch {
    return skipped("the audit gave no answer that can be read");
  }
  if (!report.vulnerabilities)
    return skipped(report.message ?? report.error?.summary ?? "the registry in use has no audit");
  const lines = [];
  let failed = false;
  for (const entry of accepted) {
    if (!/^\d{4}-\d\d-\d\d$/.test(entry.until ?? "") || !(entry.reason?.length >= 20) || !entry.package) {
      failed = true;
      lines.push(
        `  ${entry.package ?? "an entry"} in commands/audit/accepted.json needs a package, a reason in words and a last day.`,
      );
    } else if (entry.until < today) {
      failed = true;
      lines.push(`  ${entry.package}: accepted until ${entry.until}, which is over. Look at it again: ${entry.reason}`);
    }
  }
  const good = accepted.filter((entry) => entry.until >= today);
  for (const [name, { severity, via }] of Object.entries(report.vulnerabilities)) {
    const advisories = via.filter((one) => typeof one === "object");
    for (const { url, source, title, severity: own = severity } of advisories) {
      const known = good.find((e) => e.package === name && [url, String(source)].includes(String(e.advisory)));
      const stopping = stops.includes(own) && !known;
      failed ||= stopping;
      lines.push(
        `  ${stopping ? "!" : " "} ${name}, ${own}: ${title} (${url})${known ? ` – accepted until ${known.until}: ${known.reason}` : ""}`,
      );
    }
  }
  return { state: failed ? "FAILED" : "passed", lines };
}

const skipped = (why) => ({
  state: "skipped",
  lines: [
    `  Skipped: the registry in use answers no audit (${String(why).split("\n")[0]}). Run npm audit where one does.`,
  ],
});
