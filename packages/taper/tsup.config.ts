import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    schema: 'src/schema.ts',
    'messages/en': 'src/messages/en.ts',
    bare: 'src/bare.ts',
  },
  format: ['esm', 'cjs'],
  target: 'es2022',
  dts: true,
  clean: true,
  treeshake: true,
});
