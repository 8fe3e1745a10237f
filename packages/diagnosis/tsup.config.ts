import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    schema: 'src/schema.ts',
    'messages/en': 'src/messages/en.ts',
    data: 'src/data.ts',
    'messages/de': 'src/messages/de.ts',
  },
  format: ['esm', 'cjs'],
  target: 'es2022',
  dts: true,
  clean: true,
  treeshake: true,
});
