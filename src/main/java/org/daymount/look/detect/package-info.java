/**
 * Looks at one picture with trained detectors: faces by two of them that must agree, and the eighty
 * kinds of things of the COCO dataset. The only place that knows ONNX Runtime. The models are
 * translated by the build from npm packages (src/main/weights).
 */
package org.daymount.look.detect;
