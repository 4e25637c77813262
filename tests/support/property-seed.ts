import fc from 'fast-check';

// the same cases on every machine; PROPERTY_SEED draws others
fc.configureGlobal({ seed: Number(process.env['PROPERTY_SEED'] ?? 80_000) });
