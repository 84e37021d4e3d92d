// Solves an LP file with HiGHS and prints its log.
//   node highs.mjs FOLDER FILE SECONDS
// FOLDER has the npm package highs in node_modules.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';

const [folder, file, seconds] = process.argv.slice(2);
const load = createRequire(folder + '/')('highs');
const highs = await load({ print: (line) => console.log(line) });
const got = highs.solve(readFileSync(file, 'utf8'), {
  time_limit: Number(seconds), output_flag: true, log_to_console: true, mip_rel_gap: 0, mip_abs_gap: 0.5,
});
console.log('status ' + got.Status);
console.log('objective ' + got.ObjectiveValue);
