import fc from 'fast-check'

/** Property tests draw the same cases in every run; FUZZ_SEED draws others, to look for what these miss. */
fc.configureGlobal({ seed: Number(process.env.FUZZ_SEED ?? 20_261_125) })
