/** Reads the two kinds of files TensorFlow.js publishes: a graph with weights, or weights alone. */
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";

/**
 * A graph model: its nodes by name and its constants.
 * @returns {{nodes: Map<string, object>, weights: Map<string, {shape: number[], values: Float32Array}>}}
 */
export function readGraphModel(path) {
  const model = JSON.parse(readFileSync(path, "utf8"));
  const nodes = new Map(model.modelTopology.node.map((node) => [node.name, node]));
  return { nodes, weights: decodeWeights(model.weightsManifest, dirname(path)) };
}

/** Weights without a graph, by name. */
export function readWeights(manifestPath) {
  const manifest = JSON.parse(readFileSync(manifestPath, "utf8"));
  return decodeWeights(manifest, dirname(manifestPath));
}

/** The weights of a group lie one after the other in the bytes of its files. */
function decodeWeights(manifest, folder) {
  const weights = new Map();
  for (const group of manifest) {
    const bytes = Buffer.concat(group.paths.map((path) => readFileSync(join(folder, path))));
    let offset = 0;
    for (const { name, shape, dtype, quantization } of group.weights) {
      const packing = packings[quantization?.dtype ?? dtype];
      if (!packing) {
        throw new Error(`${name}: weights packed as ${quantization?.dtype ?? dtype} are not known`);
      }
      const values = new Float32Array(shape.reduce((product, side) => product * side, 1));
      for (let i = 0; i < values.length; i++, offset += packing.bytes) {
        values[i] = packing.read(bytes, offset, quantization);
      }
      weights.set(name, { shape, values });
    }
    if (offset !== bytes.length) {
      throw new Error(`${group.paths}: ${bytes.length} bytes, but the weights fill ${offset}`);
    }
  }
  return weights;
}

/** How many bytes a packed weight has, and how it becomes a number. */
const packings = {
  float32: { bytes: 4, read: (from, at) => from.readFloatLE(at) },
  int32: { bytes: 4, read: (from, at) => from.readInt32LE(at) },
  uint8: { bytes: 1, read: (from, at, { scale, min }) => from.readUInt8(at) * scale + min },
  float16: { bytes: 2, read: (from, at) => halfToNumber(from.readUInt16LE(at)) },
};

/** IEEE 754-2008 binary16: 1 sign, 5 exponent (bias 15) and 10 fraction bits. */
function halfToNumber(half) {
  const sign = half & 0x8000 ? -1 : 1;
  const exponent = (half >> 10) & 0x1f;
  const fraction = half & 0x3ff;
  if (exponent === 0) {
    return sign * fraction * 2 ** -24;
  }
  if (exponent === 0x1f) {
    return fraction ? NaN : sign * Infinity;
  }
  return sign * (1 + fraction / 1024) * 2 ** (exponent - 15);
}
