// Builds dist. With --for-packing nothing of earlier builds stays in it.
import { buildOrSayWhy } from "./build-or-say-why.mjs";

process.exitCode = await buildOrSayWhy(process.argv.includes("--for-packing") ? { keepStaleMs: 0 } : {});
