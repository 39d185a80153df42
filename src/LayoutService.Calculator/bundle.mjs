// Writes the one module that is served: node bundle.mjs [file]
import { readFile } from 'node:fs/promises';
import { build, transform } from 'esbuild';

const [file = '../LayoutService.Api/wwwroot/ceiling-calculator.js'] = process.argv.slice(2);

// the style sheet goes in as a text, made small
const sheets = {
  name: 'sheets',
  setup(bundle) {
    bundle.onLoad({ filter: /\.css$/ }, async ({ path }) => {
      const { code } = await transform(await readFile(path, 'utf8'), { loader: 'css', minify: true });
      return { contents: code.trim(), loader: 'text' };
    });
  },
};

await build({
  entryPoints: ['source/index.ts'], outfile: file, bundle: true, minify: true, format: 'esm', target: 'es2022', charset: 'utf8', legalComments: 'none',
  plugins: [sheets], logLevel: 'error',
});
