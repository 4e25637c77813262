import { serve } from '#launch/serve.mjs';

const port = Number(process.env.TEST_PORT ?? 5181);
await serve({ folder: 'build', port, host: '127.0.0.1', isStrict: true });
console.log(`http://127.0.0.1:${port}/`);
