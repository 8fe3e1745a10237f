import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { extname, join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import { root } from '../workspace.ts';

/** Where the site was built. */
export const dist = join(root, 'docs/.vitepress/dist');

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.csv': 'text/csv',
  '.svg': 'image/svg+xml',
};

/** The path under which the site was built, with a slash at either end. */
export function sitePath(): string {
  const [, base = '/'] = /href="([^"]*)favicon\.svg"/.exec(readFileSync(join(dist, 'index.html'), 'utf8')) ?? [];
  return base;
}

/** Every page, as a path below the site's own. */
export const sitePages = (): string[] =>
  (readdirSync(dist, { recursive: true }) as string[])
    .filter((name) => name.endsWith('.html'))
    .map((name) => relative('', name))
    .sort();

/** A plain static server, as any host would be: files, gzip, 404; nothing outside the site's path. */
export async function serveSite(): Promise<{ server: Server; origin: string; url: string }> {
  const base = sitePath();
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const name = decodeURIComponent(pathname);
    let file = join(dist, name.slice(base.length));
    if (existsSync(file) && statSync(file).isDirectory()) file = join(file, 'index.html');
    if (!name.startsWith(base) || !file.startsWith(dist) || !existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    const body = gzipSync(readFileSync(file));
    response
      .writeHead(200, {
        'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
        'content-encoding': 'gzip',
        'content-length': body.length,
      })
      .end(body);
  });
  await new Promise<void>((resolve) => server.listen(0, resolve));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  const origin = `http://localhost:${port}`;
  return { server, origin, url: `${origin}${base}` };
}
