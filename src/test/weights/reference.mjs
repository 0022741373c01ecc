/**
 * What TensorFlow.js makes of the published weights, for the tests to compare our ONNX models with:
 * graphs run by its own interpreter, and the face detector that comes without a graph run by the
 * package that publishes it. Run by the build:
 * node reference.mjs WEIGHTS_NODE_MODULES REFERENCE_NODE_MODULES TARGET_FOLDER
 *
 * Files hold little-endian 32-bit floats in TensorFlow's order [row, column, channel].
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import Module, { createRequire } from "node:module";
import { join, resolve } from "node:path";

const [weights, reference, target] = process.argv.slice(2).map((path) => resolve(path));
mkdirSync(target, { recursive: true });

// The publisher's package asks for all of TensorFlow.js; the parts it uses are in the core.
const resolveFilename = Module._resolveFilename;
Module._resolveFilename = function (name, parent, isMain, options) {
  const wanted = name === "@tensorflow/tfjs" ? "@tensorflow/tfjs-core" : name;
  return wanted.startsWith("@tensorflow/")
    ? resolveFilename.call(this, wanted, parent, isMain, { paths: [reference] })
    : resolveFilename.call(this, wanted, parent, isMain, options);
};
const require = createRequire(import.meta.url);
const tf = require("@tensorflow/tfjs-core");
const { loadGraphModel } = require("@tensorflow/tfjs-converter");
require("@tensorflow/tfjs-backend-wasm");
await tf.setBackend("wasm");
await tf.ready();

await graph("blazeface", 256, (colour) => colour / 127.5 - 1, {
  Identity: "scores16",
  Identity_1: "scores8",
  Identity_2: "boxes16",
  Identity_3: "boxes8",
});
await graph("facemesh", 192, (colour) => colour / 255, { Identity_1: "presence" });
await graph("centernet", 512, (colour) => colour, {
  "tower_0/keypoints": "heat",
  "tower_0/wh": "reach",
});
await faceSsd();

async function graph(name, side, normalised, outputs) {
  const model = await loadGraphModel(files(join(weights, "@vladmandic/human/models", name)));
  const picture = drawn(side).map(normalised);
  save(`${name}.picture`, picture);
  const input = { [model.inputs[0].name]: tf.tensor(picture, [1, side, side, 3]) };
  const results = [model.execute(input, Object.keys(outputs))].flat(); // one comes without a list
  Object.values(outputs).forEach((output, i) => save(`${name}.${output}`, results[i].dataSync()));
}

async function faceSsd() {
  const faceApi = require(join(weights, "@vladmandic/face-api/dist/face-api.node-wasm.js"));
  const net = new faceApi.SsdMobilenetv1();
  await net.loadFromDisk(join(weights, "@vladmandic/face-api/model"));
  const picture = drawn(512);
  save("face-ssd.picture", picture.map((colour) => colour / 127.5 - 1));
  // Its own way of scaling a picture is not wanted here: ours has the right size.
  const input = { toBatchTensor: () => tf.tensor(picture, [1, 512, 512, 3]) };
  const result = net.forwardInput(input);
  save("face-ssd.edges", result.boxes[0].dataSync()); // top, left, bottom, right; parts of the side
  save("face-ssd.scores", result.scores[0].dataSync()); // 0 to 1
}

/** Something to look at, with smooth shades, edges and fine texture; 0 to 255. */
function drawn(side) {
  const picture = new Float32Array(3 * side * side);
  for (let y = 0, i = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const disc = Math.hypot(x - 0.4 * side, y - 0.55 * side) < 0.2 * side ? 60 : 0;
      for (let channel = 0; channel < 3; channel++, i++) {
        const shade = 100 + 60 * Math.sin(x / 17 + channel) * Math.cos(y / 23);
        picture[i] = Math.round(shade + disc + ((x * y + channel) % 7) * 4);
      }
    }
  }
  return picture;
}

/** Reads a graph model and its weights from the folder they lie in. */
function files(path) {
  return {
    load: async () => {
      const { modelTopology, weightsManifest, ...rest } = JSON.parse(
        readFileSync(`${path}.json`, "utf8"),
      );
      const bytes = readFileSync(`${path}.bin`);
      return {
        ...rest,
        modelTopology,
        weightSpecs: weightsManifest.flatMap((group) => group.weights),
        weightData: bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length),
      };
    },
  };
}

function save(name, values) {
  const bytes = Buffer.alloc(4 * values.length);
  values.forEach((value, i) => bytes.writeFloatLE(value, 4 * i));
  writeFileSync(join(target, `${name}.f32`), bytes);
}
