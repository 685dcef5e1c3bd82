import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  gevByLikelihood,
  gevByLMoments,
  gumbelByLMoments,
  limitsOfStorms_mm,
  maximumOnceIn_mm,
  seededDice,
  stormDistribution,
  uniformDraw,
} from '@eavewell/engine';

/**
 * Distributions of maxima against R (evd, fExtremes), and how often the likely range of a storm holds a known truth. By hand: `node bench/extremes.mjs
 * [records]`, after `npm run build`; without R the first half is left out and said to be.
 */
const periods = [2, 10, 20, 100];
const records = Number(process.argv[2] ?? 1000);
if (!(Number.isInteger(records) && records > 0)) throw new Error('how many records? a whole number above 0');

/** @param {{ location_mm: number, scale_mm: number, shape: number }} fit @param {number} n @param {{ next(below: number): number }} dice */
const drawn = (fit, n, dice) => Array.from({ length: n }, () => maximumOnceIn_mm(fit, 1 / uniformDraw(dice)));

/** Samples of known distributions, small and large, light and heavy. */
function samples() {
  const dice = seededDice(20261126);
  const shapes = [0.2, 0, -0.1, -0.3];
  return shapes.flatMap((shape) =>
    [12, 30, 100].map((n) => ({
      name: `shape ${shape}, ${n} years`,
      values: drawn({ location_mm: 60, scale_mm: 18, shape }, n, dice),
    })),
  );
}

const script = String.raw`
suppressMessages({library(evd); library(fExtremes)})
for (path in commandArgs(TRUE)) {
  x <- scan(path, quiet = TRUE)
  ml <- evd::fgev(x, std.err = FALSE)$estimate
  # The fit of the likelihood from where evd ended, until it moves no more.
  ml <- tryCatch(evd::fgev(x, start = as.list(ml), std.err = FALSE, control = list(reltol = 1e-14, maxit = 10000))$estimate, error = function(e) ml)
  pwm <- gevFit(x, type = "pwm")@fit$par.ests
  p <- 1 - 1 / c(${periods.join(', ')})
  nll <- function(e) -sum(evd::dgev(x, e["loc"], e["scale"], e["shape"], log = TRUE))
  cat(sprintf("%.10g", c(ml["loc"], ml["scale"], -ml["shape"], nll(ml), pwm["mu"], pwm["beta"], -pwm["xi"],
    evd::qgev(p, pwm["mu"], pwm["beta"], pwm["xi"]), evd::qgumbel(p, 60, 18))), "\n")
}
cat("R", as.character(getRversion()), "evd", as.character(packageVersion("evd")), "fExtremes", as.character(packageVersion("fExtremes")), "\n")
`;

/** @param {number} own @param {number} other */
const apart = (own, other) => Math.abs(own - other) / (1 + Math.abs(other));
/** @param {readonly number[]} values @param {{ location_mm: number, scale_mm: number, shape: number }} fit */
const minusLog = (values, { location_mm, scale_mm, shape }) =>
  values.reduce((sum, value) => {
    const z = (value - location_mm) / scale_mm;
    const y = Math.abs(shape) < 1e-6 ? z : -Math.log1p(-shape * z) / shape;
    return sum + (1 - shape) * y + Math.exp(-y);
  }, values.length * Math.log(scale_mm));

function againstR() {
  const known = spawnSync('Rscript', ['-e', 'library(evd);library(fExtremes)'], { encoding: 'utf8' });
  if (known.error || known.status !== 0) {
    console.log(
      'R with evd and fExtremes is not here, so nothing is held against it (Debian: apt-get install r-base-core r-cran-evd r-cran-fextremes).',
    );
    return;
  }
  const folder = mkdtempSync(join(tmpdir(), 'eavewell-extremes-'));
  try {
    const all = samples();
    const files = all.map(({ values }, i) => {
      const file = join(folder, `${i}.txt`);
      writeFileSync(file, values.map(String).join('\n'));
      return file;
    });
    const asked = join(folder, 'fit.R');
    writeFileSync(asked, script);
    const run = spawnSync('Rscript', [asked, ...files], { encoding: 'utf8' });
    if (run.status !== 0) throw new Error(run.stderr);
    const lines = run.stdout.trim().split('\n');
    console.log(
      `against ${lines.pop()?.trim()}: largest difference of location, scale and shape, relative to 1 + itself\n`,
    );
    console.log(
      '| sample | GEV by L-moments, fExtremes | its storms, qgev of evd | GEV likeliest, evd | −ln likelihood, ours − evd | Gumbel storms, qgumbel of evd |',
    );
    console.log('|---|---:|---:|---:|---:|---:|');
    for (const [i, line] of lines.entries()) console.log(row(all[i], line.trim().split(/\s+/).map(Number)));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** @param {{ name: string, values: number[] }} sample @param {number[]} found */
function row({ name, values }, [loc, scale, shape, nll, mu, beta, k, ...quantiles]) {
  const moments = gevByLMoments(values);
  const likeliest = gevByLikelihood(values);
  if (moments === null) throw new Error(`no fit of ${name}`);
  const most = (/** @type {number[]} */ ...differences) => Math.max(...differences).toExponential(1);
  const byMoments = most(apart(moments.location_mm, mu), apart(moments.scale_mm, beta), apart(moments.shape, k));
  const given = { location_mm: mu, scale_mm: beta, shape: k };
  const storms = most(...periods.map((period, j) => apart(maximumOnceIn_mm(given, period), quantiles[j])));
  const gumbel = most(
    ...periods.map((period, j) =>
      apart(maximumOnceIn_mm({ location_mm: 60, scale_mm: 18, shape: 0 }, period), quantiles[periods.length + j]),
    ),
  );
  const ml =
    likeliest === null
      ? ['none', '-']
      : [
          most(apart(likeliest.location_mm, loc), apart(likeliest.scale_mm, scale), apart(likeliest.shape, shape)),
          (minusLog(values, likeliest) - nll).toExponential(1),
        ];
  return `| ${name} | ${byMoments} | ${storms} | ${ml[0]} | ${ml[1]} | ${gumbel} |`;
}

/** How often the truth of once in 20 years lies beyond either end of the 90 % range, and how far the point is off on the mean. */
function coverage() {
  console.log(`\n${records} records each, storm of once in 20 years, 90 % range\n`);
  console.log(
    '| shape k | years | truth above the range | truth below it | storm over truth, mean | the same of Gumbel alone |',
  );
  console.log('|---:|---:|---:|---:|---:|---:|');
  const dice = seededDice(7);
  const share = (/** @type {number} */ count) => `${((100 * count) / records).toFixed(1)} %`;
  for (const shape of [0.1, 0, -0.1, -0.2])
    for (const n of [10, 20, 30, 60]) {
      const truth = { location_mm: 60, scale_mm: 18, shape };
      const wanted = maximumOnceIn_mm(truth, 20);
      let [above, below, point, gumbel] = [0, 0, 0, 0];
      for (let i = 0; i < records; i++) {
        const values = drawn(truth, n, dice);
        const fit = stormDistribution(values);
        const alone = gumbelByLMoments(values);
        if (fit === null || alone === null) throw new Error('a record that cannot be fitted');
        const [range] = limitsOfStorms_mm(fit, n, [20], 0.9, i);
        if (range.high < wanted) above++;
        if (range.low > wanted) below++;
        point += maximumOnceIn_mm(fit, 20) / wanted / records;
        gumbel += maximumOnceIn_mm(alone, 20) / wanted / records;
      }
      console.log(
        `| ${shape} | ${n} | ${share(above)} | ${share(below)} | ${point.toFixed(3)} | ${gumbel.toFixed(3)} |`,
      );
    }
}

againstR();
coverage();
