// The site: the pages of the repository as they are, from target/source, which build.mjs fills.
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const source = join(import.meta.dirname, '..', 'target', 'source')

const first = (page) => {
  const text = readFileSync(join(source, page), 'utf8')
  return /^# (.+)$/m.exec(text)?.[1].replaceAll('`', '') ?? page
}
const item = (page) => ({ text: first(page), link: '/' + page.replace(/index\.md$/, '').replace(/\.md$/, '') })
// the side bar follows the tables of the pages that list others: order and wording stand there alone
const listed = (page) => {
  const folder = page.replace(/[^/]*$/, '')
  const found = [...readFileSync(join(source, page), 'utf8').matchAll(/\]\(([^)#:]+\.md)\)/g)]
  const pages = found.map((m) => join(folder, m[1])).filter((p) => !p.startsWith('..') && existsSync(join(source, p)))
  return [...new Set(pages)]
}
const group = (text, pages, collapsed) => ({ text, collapsed, items: pages.map(item) })
const rules = listed('docs/rules/index.md')

export default {
  title: 'leat',
  description: 'Model and design-rule checker for stream-powered battery plants',
  lang: 'en',
  base: process.env.SITE_BASE ?? '/',
  srcDir: 'target/source',
  outDir: 'target/site',
  cacheDir: 'target/cache',
  appearance: true,
  lastUpdated: false,
  // pages say so themselves: the check of links looks at the built pages, anchors and files too
  ignoreDeadLinks: true,
  markdown: {
    // plain Markdown, as it is read in the repository: no markup in it, no short names of pictures, no names in braces
    html: false,
    linkify: false,
    emoji: { enabled: [] },
    attrs: { disable: true },
    config: (md) => {
      const text = md.renderer.rules.text
      md.renderer.rules.text = (...all) => text(...all).replaceAll('{{', '&#123;&#123;')
    },
  },
  themeConfig: {
    search: { provider: 'local' },
    outline: { level: [2, 3] },
    nav: [
      { text: 'Guide', link: '/docs/guide' },
      { text: 'Rules', link: '/docs/rules/' },
      { text: 'Physics', link: '/docs/physics/' },
      { text: 'Trust', link: '/docs/trust' },
      { text: 'Demo pages', link: '/demo/index.html', target: '_self' },
    ],
    sidebar: [
      { text: 'leat', link: '/' },
      group('Documentation', listed('docs/index.md').filter((p) => !/(rules|physics|decisions)\/index/.test(p)), false),
      group('Physics', ['docs/physics/index.md', ...listed('docs/physics/index.md').filter((p) => /physics/.test(p))], true),
      {
        text: 'Rules',
        link: '/docs/rules/',
        collapsed: true,
        items: [...new Set(rules.map((p) => p.split('/')[2]))].map((component) =>
          group(component, rules.filter((p) => p.split('/')[2] === component), true)),
      },
      group('Examples', listed('index.md').filter((p) => p.startsWith('hydro-examples')), true),
      group('Decisions', ['docs/decisions/index.md', ...listed('docs/decisions/index.md')], true),
      group('Contributors', ['DEVELOPERS.md'], true),
    ],
    docFooter: { prev: false, next: false },
  },
}
