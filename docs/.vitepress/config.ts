import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type DefaultTheme, defineConfig, type MarkdownEnv, type MarkdownRenderer } from 'vitepress';

const docs = fileURLToPath(new URL('..', import.meta.url));

/** Sidebar of the API pages as typedoc leaves it; none before it has run. */
function apiSidebar(): DefaultTheme.SidebarItem[] {
  const path = `${docs}api/typedoc-sidebar.json`;
  return existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as DefaultTheme.SidebarItem[]) : [];
}

/** One item a page; its heading is its text. */
function pagesOf(folder: string, heading: RegExp): DefaultTheme.SidebarItem[] {
  if (!existsSync(`${docs}${folder}`)) return [];
  return readdirSync(`${docs}${folder}`)
    .filter((name) => name.endsWith('.md') && name !== 'index.md')
    .sort()
    .map((name) => {
      const text = heading.exec(readFileSync(`${docs}${folder}/${name}`, 'utf8'))?.[1] ?? name;
      return { text, link: `/${folder}/${name.replace(/\.md$/, '')}` };
    });
}

const benches = [
  { text: 'Diagnosis', link: '/bench/diagnosis' },
  { text: 'Identify', link: '/bench/identify' },
  { text: 'Seat', link: '/bench/seat' },
  { text: 'Torque', link: '/bench/torque' },
  { text: 'The whole job', link: '/bench/job' },
];

/** A page as the search reads it: a bench goes by its name in the menu as well as by the question that it answers. */
function searched(source: string, env: MarkdownEnv, md: MarkdownRenderer): string {
  const html = md.render(source, env);
  const bench = benches.find(({ link }) => env.relativePath === `${link.slice(1)}.md`);
  return bench === undefined ? html : html.replace(/(<h1[^>]*>)/, `$1${bench.text}: `);
}

/**
 * Weighs what the search finds: who asks for a word wants a bench, a guide or the theory before the page of each type
 * that has the word in its name. The page of a function keeps its weight for the name of that function, which leads there
 * even before a guide that uses it. Sent to the browser as text, so that it may use nothing from outside.
 */
const weigh = (id: string, term: string): number => {
  if (id.toLowerCase().includes(`/functions/${term}.`)) return 1.2;
  if (id.includes('/bench/')) return 6;
  if (/\/(guides|theory|codes)\//.test(id)) return 2.5;
  if (id.includes('/atlas/')) return 2;
  return id.includes('/api/') ? 0.5 : 1;
};

// The search is the site's own; the style of the hosted one would come with every page.
const withoutHostedSearch = {
  name: 'without-hosted-search',
  enforce: 'pre' as const,
  resolveId: (id: string) => (id === '@docsearch/css' ? '\0none.css' : undefined),
  load: (id: string) => (id === '\0none.css' ? '' : undefined),
};

export default defineConfig({
  lang: 'en-GB',
  title: 'Spindlewright',
  description: 'Where a crank arm seats, how tight it must be, what is wrong with it: libraries, data and their proof',
  // Pages are small; fetching every page that a visible link names would cost more than the page itself.
  router: { prefetchLinks: false },
  head: [['link', { rel: 'icon', type: 'image/svg+xml', href: `${process.env.DOCS_BASE ?? '/'}favicon.svg` }]],
  // A site under a sub-path: DOCS_BASE=/spindlewright/ npm run docs
  base: process.env.DOCS_BASE ?? '/',
  metaChunk: true,
  lastUpdated: false,
  vite: {
    // The packages as they stand in the repository: the pages need no build of them.
    resolve: { conditions: ['@spindlewright/source', 'module', 'browser', 'import', 'default'] },
    plugins: [withoutHostedSearch],
    ssr: { noExternal: [/^@spindlewright\//, 'spindlewright'], resolve: { conditions: ['@spindlewright/source'] } },
  },
  // The default code colours fall short of the contrast that small text needs.
  markdown: { theme: { light: 'github-light-high-contrast', dark: 'github-dark-high-contrast' } },
  themeConfig: {
    nav: [
      { text: 'Bench', items: benches, activeMatch: '/bench/' },
      { text: 'Atlas', link: '/atlas/' },
      { text: 'Guides', link: '/guides/' },
      { text: 'Theory', link: '/theory/taper' },
      { text: 'Validation', link: '/validation/' },
      { text: 'Codes', link: '/codes/' },
      { text: 'API', link: '/api/' },
    ],
    sidebar: {
      '/bench/': [],
      '/data/': [
        {
          text: 'Data',
          link: '/data/',
          items: [
            { text: 'Where sources disagree', link: '/data/conflicts' },
            { text: 'Adding a record', link: '/guides/adding-a-record' },
          ],
        },
      ],
      '/guides/': [
        {
          text: 'Guides',
          link: '/guides/',
          items: [
            { text: 'Mechanic: to a written sheet', link: '/guides/mechanic' },
            { text: 'Mechanic: an inch-pound wrench', link: '/guides/inch-pound-wrench' },
            { text: 'Shop: does it fit?', link: '/guides/shop' },
            { text: 'App: data without code', link: '/guides/app' },
            { text: 'Researcher: many arms at once', link: '/guides/columns' },
            { text: 'Maintainer: keeping it', link: '/guides/maintainer' },
            { text: 'Adding a record', link: '/guides/adding-a-record' },
            { text: 'What a diagnosis rests on', link: '/guides/diagnosis' },
            { text: 'The command line', link: '/guides/command-line' },
            { text: 'Why it is as it is', link: '/decisions/' },
          ],
        },
      ],
      '/decisions/': [{ text: 'Decisions', link: '/decisions/', items: pagesOf('decisions', /^# (.+)$/m) }],
      '/theory/': [
        {
          text: 'Theory',
          items: [
            { text: 'The square taper', link: '/theory/taper' },
            { text: 'The other joints', link: '/theory/other-joints' },
          ],
        },
      ],
      '/validation/': [
        { text: 'Validation', link: '/validation/', items: pagesOf('validation', /^# Validation of (.+)$/m) },
      ],
      '/api/': [{ text: 'API', link: '/api/', items: apiSidebar() }],
    },
    search: {
      provider: 'local',
      options: { _render: searched, miniSearch: { searchOptions: { boostDocument: weigh } } },
    },
    outline: { level: [2, 3] },
  },
});
