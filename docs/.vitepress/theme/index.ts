import type { Theme } from 'vitepress';
// The default theme without its font files: a page loads nothing but text, style and script.
import DefaultTheme from 'vitepress/theme-without-fonts';
import { defineAsyncComponent } from 'vue';
import './handbook.css';

// Each bench comes as a chunk of its own, so that reading the handbook does not load the packages.
const components = {
  AtlasIndex: defineAsyncComponent(() => import('./AtlasIndex.vue')),
  SeatBench: defineAsyncComponent(() => import('./bench/SeatBench.vue')),
  TorqueBench: defineAsyncComponent(() => import('./bench/TorqueBench.vue')),
  DiagnosisBench: defineAsyncComponent(() => import('./bench/DiagnosisBench.vue')),
  IdentifyBench: defineAsyncComponent(() => import('./bench/IdentifyBench.vue')),
  JobBench: defineAsyncComponent(() => import('./bench/JobBench.vue')),
};

export default {
  extends: DefaultTheme,
  enhanceApp({ app }) {
    for (const [name, component] of Object.entries(components)) app.component(name, component);
  },
} satisfies Theme;
