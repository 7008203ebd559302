// Builds the site into target/site: copies pages and what they link to, lets leat write the demo pages, calls the generator,
// and looks at every link of every page built. Ends with 1 if one leads nowhere or a page would load something from elsewhere.
import { execFileSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'

const here = import.meta.dirname
const root = resolve(here, '..')
const source = join(here, 'target', 'source')
const site = join(here, 'target', 'site')
const jar = process.env.LEAT_JAR ?? join(root, 'hydro-rules', 'command', 'target', 'leat.jar')

const files = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile())
    .map((e) => join(e.parentPath ?? e.path, e.name))
    .sort()

rmSync(join(here, 'target'), { recursive: true, force: true })
mkdirSync(source, { recursive: true })
const tracked = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { cwd: root, encoding: 'utf8', maxBuffer: 1e8 }).trim().split('\n')
const pages = tracked.filter((f) => /^(README|DEVELOPERS)\.md$|^docs\/.*\.md$|^hydro-examples\/[^/]+\/README\.md$/.test(f) && existsSync(join(root, f)))
for (const page of pages) {
  const index = (path) => path.replace(/README\.md$/, 'index.md')
  const text = readFileSync(join(root, page), 'utf8')
  mkdirSync(dirname(join(source, page)), { recursive: true })
  writeFileSync(
    join(source, index(page)),
    text.replace(/^<!--[^]*?-->\n/gm, '').replace(/\]\([^)\s#]+/g, index),
  )
  // what a page links to beside pages goes along under its own path
  for (const [, link] of text.matchAll(/\]\(([^)\s#]+)(?:#[^)]*)?\)/g)) {
    const file = relative(root, resolve(root, dirname(page), link))
    if (!/^[a-z]+:/.test(link) && !file.startsWith('..') && !file.endsWith('.md') && existsSync(join(root, file)) && statSync(join(root, file)).isFile()) {
      const picture = /\.(png|svg)$/.test(file)
      cpSync(join(root, file), join(source, picture ? '' : 'public', file))
    }
  }
}

if (!existsSync(jar)) {
  throw new Error(`${relative(root, jar)} is not there: mvn -q package -DskipTests builds it`)
}
const demo = join(source, 'public', 'demo')
mkdirSync(demo, { recursive: true })
try {
  execFileSync('java', ['-jar', jar, 'check', 'hydro-examples/designs', '--also', `html=${demo}/`], { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] })
} catch (e) {
  if (e.status !== 1) throw e // demos have faults: 1 is what they end with
}

process.chdir(here)
const { build } = await import('vitepress')
await build(here)

const base = process.env.SITE_BASE ?? '/'
const built = files(site)
const known = new Set(built.map((f) => relative(site, f)))
const ids = new Map()
const html = built.filter((f) => f.endsWith('.html'))
const read = new Map(html.map((f) => [relative(site, f), readFileSync(f, 'utf8')]))
for (const [page, text] of read) {
  ids.set(page, new Set([...text.matchAll(/\sid="([^"]*)"/g)].map((m) => m[1])))
}
const faults = []
let links = 0
for (const [page, text] of read) {
  for (const [tag, , link] of text.matchAll(/<[a-z][^>]*?\s(href|src)="([^"]*)"[^>]*>/g)) {
    links++
    const elsewhere = /^(https?:)?\/\//.test(link)
    if (elsewhere || /^(mailto|data):/.test(link)) {
      if (elsewhere && !tag.startsWith('<a ')) faults.push(`${page} loads ${link}`)
      continue
    }
    const [path, anchor] = decodeURI(link.replaceAll('&amp;', '&')).split('#')
    let file = page
    if (path) {
      file = path.startsWith(base) ? path.slice(base.length) : join(dirname(page), path)
      file = [file, `${file}.html`, join(file, 'index.html')].find((f) => known.has(f)) ?? file
    }
    if (!known.has(file)) faults.push(`${page}: no ${link}`)
    else if (anchor && ids.has(file) && !ids.get(file).has(anchor)) faults.push(`${page}: no place ${link}`)
  }
}
for (const file of built.filter((f) => /\.css$/.test(f))) {
  if (/url\(["']?(https?:)?\/\//.test(readFileSync(file, 'utf8'))) faults.push(`${relative(site, file)} loads from elsewhere`)
}
;[...new Set(faults)].forEach((f) => console.error(f))
console.log(`${read.size} pages, ${links} links, ${faults.length} that lead nowhere or elsewhere`)
process.exit(faults.length ? 1 : 0)
