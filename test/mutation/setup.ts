import fc from "fast-check";
import "../steady-seeds.ts";

/**
 * One case that fails is enough to tell: looking for the smallest takes longer than all else. A property that runs for
 * a quarter of a second here is cut short; what only its later cases would catch counts as not caught.
 */
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true, interruptAfterTimeLimit: 250 });
