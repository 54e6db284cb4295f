// Opens player's pages in a real browser, on a phone's and on a laptop's window, and says what an accessibility engine has
// against them, whether anything is fetched, and whether anything is wider than the window. Exit status 1 when there is.
//
//   npm install axe-core puppeteer-core        (in a folder of its own, FOLDER)
//   NODE_PATH=FOLDER/node_modules node src/test/browser/check-pages.mjs PAGE.html … [--shots FOLDER]
//
// CHROMIUM names the browser (default /usr/bin/chromium).
import { createRequire } from 'node:module';
import { basename, resolve, join } from 'node:path';
import { readFileSync, mkdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const require = createRequire(import.meta.url);
const puppeteer = require('puppeteer-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const args = process.argv.slice(2);
const at = args.indexOf('--shots');
const shots = at < 0 ? null : args.splice(at, 2)[1];
if (shots) {
  mkdirSync(shots, { recursive: true });
}
const browser = await puppeteer.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', headless: true, args: ['--no-sandbox'],
});
let faults = 0;
const fault = (text) => { faults++; console.log('  FAULT ' + text); };
for (const file of args) {
  for (const [width, height] of [[360, 780], [1280, 800]]) {
    console.log(`${basename(file)} at ${width} × ${height}`);
    const page = await browser.newPage();
    await page.setViewport({ width, height, deviceScaleFactor: width < 400 ? 2 : 1 });
    const own = pathToFileURL(resolve(file)).href;
    page.on('request', (r) => { if (r.url() !== own && !r.url().startsWith('data:')) fault('asks for ' + r.url()); });
    page.on('pageerror', (e) => fault('error ' + e.message));
    await page.goto(own, { waitUntil: 'load' });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    if (wide > 0) {
      fault(`is ${wide} px wider than the window`);
    }
    await page.evaluate(axe);
    const result = await page.evaluate(() => globalThis.axe.run());
    result.violations.forEach((v) => fault(`${v.id}: ${v.help} (${v.nodes.length})`));
    console.log(`  ${result.passes.length} rules met, ${result.violations.length} not, ${result.incomplete.length} undecided`);
    result.incomplete.forEach((v) => console.log(`  undecided: ${v.id}: ${v.help}`));
    if (shots) {
      await page.screenshot({ path: join(shots, `${basename(file, '.html')}-${width}.png`), fullPage: width < 400 });
    }
    await page.close();
  }
}
await browser.close();
process.exit(faults ? 1 : 0);
