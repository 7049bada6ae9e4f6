import fc from "fast-check";

/**
 * Properties draw the same cases in every run, so that a change is judged by itself and not by luck. `npm run fuzz`
 * draws others each time; what it finds becomes a test of its own.
 */
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 20261128 });
