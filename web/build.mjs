// build.mjs - puts engine, script and style into one file: node web/build.mjs engine.wasm page.html
// SPDX-License-Identifier: MIT

import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const MOST = 690_000; // [bytes]
const [engineFile, pageFile] = process.argv.slice(2);
const here = dirname(fileURLToPath(import.meta.url));
const common = {
  bundle: true,
  minify: true,
  write: false,
  logLevel: "error",
  target: "es2022",
  loader: { ".yaml": "text" },
};

const bundled = async (entry, more = {}) =>
  (
    await build({ ...common, ...more, entryPoints: [join(here, entry)] })
  ).outputFiles[0].text.trim();

const worker = await bundled("script/engine/worker.js", { format: "iife" });
const workerPlugin = {
  name: "worker source",
  setup(builder) {
    builder.onResolve({ filter: /^worker:source$/ }, ({ path }) => ({ path, namespace: "worker" }));
    builder.onLoad({ filter: /.*/, namespace: "worker" }, () => ({
      contents: worker,
      loader: "text",
    }));
  },
};
const script = (
  await bundled("script/main.js", { format: "iife", plugins: [workerPlugin] })
).replaceAll("</script", "<\\/script");
const style = await bundled("style/page.css");
const module = await readFile(engineFile);
// As gzip, but searched longer for what is shortest: 5 % less.
const packed = execFileSync("zopfli", ["-c", engineFile], { maxBuffer: 10 * MOST });
const engine = packed.toString("base64");

const sha256 = (text) => createHash("sha256").update(text).digest("base64");
const hash = (text) => `'sha256-${sha256(text)}'`;
const parts = {
  script,
  style,
  engine,
  "engine-hash": sha256(module),
  "script-hash": hash(script),
  "style-hash": hash(style),
};
const page = (await readFile(join(here, "page.html"), "utf8")).replace(
  /\{\{([\w-]+)\}\}/g,
  (_, part) => parts[part],
);

if (Buffer.byteLength(page) > MOST)
  throw new Error(`the page has ${page.length} bytes, ${MOST} are the most`);
await mkdir(dirname(pageFile), { recursive: true });
await writeFile(pageFile, page);
const sizes = `engine ${engine.length}, script ${script.length}, style ${style.length}`;
console.log(`${pageFile}: ${Buffer.byteLength(page)} bytes, of them ${sizes}`);
