/**
 * Turns the published weights (TensorFlow.js files) into the ONNX models that the program runs.
 * Run by the build: node translate.mjs NODE_MODULES TARGET_FOLDER
 */
import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { faceSsd } from "./face-ssd.mjs";
import { translateGraph } from "./graph-translator.mjs";
import { readGraphModel, readWeights } from "./tfjs-files.mjs";

const [packages, target] = process.argv.slice(2);
if (!packages || !target) {
  console.error("usage: node translate.mjs NODE_MODULES TARGET_FOLDER");
  process.exit(2);
}
const human = join(packages, "@vladmandic/human");
const faceApi = join(packages, "@vladmandic/face-api");
mkdirSync(target, { recursive: true });

// BlazeFace, long-range version (Bazarevsky et al. 2019): picture -1..1, 256 x 256. Its two grids
// of anchors are 16 x 16 with 2 a cell (512) and 8 x 8 with 6 a cell (384).
write(
  "blazeface.onnx",
  translateGraph(readGraphModel(join(human, "models/blazeface.json")), {
    Identity: "scores16",
    Identity_1: "scores8",
    Identity_2: "boxes16",
    Identity_3: "boxes8",
  }),
);

// The network behind the face mesh (Kartynnik et al. 2019): a square of 192 pixels, 0..1. Of what it
// says only whether there is a face is wanted, not where its points lie.
write(
  "face-mesh.onnx",
  translateGraph(readGraphModel(join(human, "models/facemesh.json")), { Identity_1: "presence" }),
);

// CenterNet (Zhou et al. 2019) for the 80 COCO things: picture 0..255, 512 x 512. What follows the
// heat map in the published graph (logistic, finding peaks) is done by the program: of the logistic
// of 1.3 million numbers it needs a few.
write(
  "centernet.onnx",
  translateGraph(readGraphModel(join(human, "models/centernet.json")), {
    "tower_0/CenternetHead/centernet_cls_output/BiasAdd": "heat",
    "tower_0/wh": "reach",
  }),
);

// SSD on MobileNet v1 (Liu et al. 2016, Howard et al. 2017), trained on faces: picture -1..1,
// up to 512 x 512. Published as weights without a graph.
write(
  "face-ssd.onnx",
  faceSsd(readWeights(join(faceApi, "model/ssd_mobilenetv1_model-weights_manifest.json"))),
);

// The licence (MIT) asks to travel with the weights.
copyFileSync(join(human, "LICENSE"), join(target, "LICENSE-human.txt"));
copyFileSync(join(faceApi, "LICENSE"), join(target, "LICENSE-face-api.txt"));

function write(name, bytes) {
  writeFileSync(join(target, name), bytes);
}
