import type { Theme } from 'vitepress';
// The default theme without its font files: a page loads nothing but text, style and script.
import DefaultTheme from 'vitepress/theme-without-fonts';
import { defineAsyncComponent, h, hydrateOnVisible } from 'vue';
import BenchTabs from './bench/BenchTabs.vue';
import './handbook.css';

// Each bench comes as a chunk of its own, so that reading the handbook does not load the packages.
const components = {
  AtlasIndex: defineAsyncComponent(() => import('./AtlasIndex.vue')),
  SeatBench: defineAsyncComponent(() => import('./bench/SeatBench.vue')),
  TorqueBench: defineAsyncComponent(() => import('./bench/TorqueBench.vue')),
  DiagnosisBench: defineAsyncComponent(() => import('./bench/DiagnosisBench.vue')),
  IdentifyBench: defineAsyncComponent(() => import('./bench/IdentifyBench.vue')),
  JobBench: defineAsyncComponent(() => import('./bench/JobBench.vue')),
  // Drawn when the site is built; on the cover the packages come only once somebody takes hold of the drawing.
  CoverFigure: defineAsyncComponent(async () => {
    if (!import.meta.env.SSR) await takenHold('.cover-figure');
    return import('./figures/CoverFigure.vue');
  }),
  TheoryFigure: defineAsyncComponent({
    loader: () => import('./figures/TheoryFigure.vue'),
    hydrate: hydrateOnVisible({ rootMargin: '200px' }),
  }),
};

/** Waits for a hand on what already stands in the page; what has still to be made is not waited for. */
function takenHold(selector: string): Promise<unknown> {
  const part = document.querySelector(selector);
  if (part === null) return Promise.resolve();
  return new Promise((resolve) => {
    for (const event of ['pointerenter', 'touchstart', 'focusin'])
      part.addEventListener(event, resolve, { once: true });
  });
}

export default {
  extends: DefaultTheme,
  Layout: () => h(DefaultTheme.Layout, null, { 'doc-before': () => h(BenchTabs) }),
  enhanceApp({ app }) {
    for (const [name, component] of Object.entries(components)) app.component(name, component);
  },
} satisfies Theme;
