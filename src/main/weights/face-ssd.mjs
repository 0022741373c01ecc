/**
 * The face detector that is published as weights without a graph: MobileNet v1 (Howard et al.
 * 2017), eight further layers, and box predictors on six of its grids (SSD, Liu et al. 2016).
 */
import { addConvolution, depthwiseKernel, fullKernel } from "./convolution.mjs";
import { OnnxGraph } from "./onnx-graph.mjs";

const SIDE = 512;
const BATCH_NORM_EPSILON = 0.001; // TensorFlow's default for MobileNet
/** Blocks of MobileNet v1 that halve the grid; the others keep it. */
const HALVING_BLOCKS = new Set([2, 4, 6, 12]);
const BLOCKS = 13;
const EXTRA_LAYERS = 8;
/** The block whose grid (32 x 32) sees the smallest faces. */
const FINEST_GRID_BLOCK = 11;

/**
 * @param weights as read by readWeights
 * @returns the bytes of the ONNX file; for the grids 32, 16, 8, 4, 2 and 1 cells wide it gives
 *     boxesN [1, anchors x 4, N, N] and classesN [1, anchors x 3, N, N], and once the anchors
 *     [1, 5118, 4] as top, left, bottom and right in parts of the picture. A picture that does not
 *     fill the square may be given without its lower or right part, in steps of 32 pixels: the
 *     grids then have fewer rows or columns, and the anchors stay those of the whole square
 */
export function faceSsd(weights) {
  const net = new Net(weights);
  let value = net.graph.input("picture", [1, 3, "rows", "columns"]);
  value = net.layer(value, "MobilenetV1/Conv2d_0_pointwise", 2);
  const grids = [];
  for (let block = 1; block <= BLOCKS; block++) {
    value = net.depthwise(value, `MobilenetV1/Conv2d_${block}_depthwise`, HALVING_BLOCKS.has(block) ? 2 : 1);
    value = net.layer(value, `MobilenetV1/Conv2d_${block}_pointwise`, 1);
    if (block === FINEST_GRID_BLOCK) {
      grids.push(value);
    }
  }
  grids.push(value);
  for (let extra = 0; extra < EXTRA_LAYERS; extra++) {
    const halving = extra % 2 === 1;
    value = net.layer(value, `Prediction/Conv2d_${extra}_pointwise`, halving ? 2 : 1);
    if (halving) {
      grids.push(value);
    }
  }
  grids.forEach((grid, i) => {
    const cells = SIDE / 16 / 2 ** i;
    net.predictor(grid, `Prediction/BoxPredictor_${i}/BoxEncodingPredictor`, `boxes${cells}`);
    net.predictor(grid, `Prediction/BoxPredictor_${i}/ClassPredictor`, `classes${cells}`);
  });
  net.constant("Output/extra_dim", "anchors");
  return net.graph.toBytes();
}

class Net {
  graph = new OnnxGraph();

  constructor(weights) {
    this.weights = weights;
  }

  /** Convolution, bias, ReLU 6. */
  layer(value, name, stride) {
    const convolved = addConvolution(this.graph, value, {
      kernel: fullKernel(this.#weight(`${name}/weights`)),
      bias: this.#weight(`${name}/convolution_bn_offset`),
      stride,
    });
    return this.graph.clip(convolved, 0, 6);
  }

  /** A convolution of each channel alone, batch normalisation, ReLU 6. */
  depthwise(value, name, stride) {
    const kernel = depthwiseKernel(this.#weight(`${name}/depthwise_weights`));
    const groups = kernel.shape[0];
    const convolved = addConvolution(this.graph, value, { kernel, bias: null, stride, groups });
    const norm = ["gamma", "beta", "moving_mean", "moving_variance"].map((part) => {
      const { values } = this.#weight(`${name}/BatchNorm/${part}`);
      return this.graph.floats([values.length], values);
    });
    const normed = this.graph.node("BatchNormalization", [convolved, ...norm], {
      epsilon: BATCH_NORM_EPSILON,
    });
    return this.graph.clip(normed, 0, 6);
  }

  /** A convolution with bias whose result is handed out. */
  predictor(value, name, outputName) {
    const convolved = addConvolution(this.graph, value, {
      kernel: fullKernel(this.#weight(`${name}/weights`)),
      bias: this.#weight(`${name}/biases`),
      stride: 1,
    });
    this.graph.output(convolved, outputName);
  }

  constant(name, outputName) {
    const { shape, values } = this.#weight(name);
    this.graph.output(this.graph.floats(shape, values), outputName);
  }

  #weight(name) {
    const weight = this.weights.get(name);
    if (!weight) {
      throw new Error(`the weights ${name} are missing`);
    }
    return weight;
  }
}
