// The default theme without its font files: a page loads nothing but text, style and script.
export { default } from 'vitepress/theme-without-fonts';
