/** Holds the engine against every outside reference and prints the agreement: `npm run verify`. Fails when a miss has no reason. */
import { compareAll } from "../tests/verification/all.ts";
import { honestyReport } from "../tests/verification/leave-out.ts";

let unexplained = 0;
for (const { name, source, compared, agreed, misses, left, borderline } of compareAll()) {
  console.log(`${name}: ${agreed}/${compared}`);
  console.log(`    source: ${source}`);
  if (borderline > 0) console.log(`    ${borderline} of them by the second reading of a borderline prediction`);
  for (const [cause, count] of Object.entries(left)) console.log(`    ${count} rows left out: ${cause}`);
  for (const { id, difference, reason } of misses) {
    console.log(`    ${id}: ${difference}`);
    console.log(`        ${reason ?? "NO REASON GIVEN"}`);
    if (reason === undefined) unexplained++;
  }
}
// No reasons are asked here: it tells how much of the agreement above rests on which published constant was taken.
console.log(honestyReport());
if (unexplained > 0) {
  console.error(`${unexplained} disagreements have no reason in tests/reference/known-differences*.json`);
  process.exitCode = 1;
}
