/**
 * Translates a TensorFlow.js graph, operation by operation, into an ONNX model. TensorFlow lays
 * pictures out as [picture, row, column, channel]; the model takes and gives
 * [picture, channel, row, column].
 */
import { addConvolution, depthwiseKernel, fullKernel, onnxPadding } from "./convolution.mjs";
import { OnnxGraph } from "./onnx-graph.mjs";

/**
 * @param model as read by readGraphModel
 * @param outputs TensorFlow's names of the wanted results, each with its name in the ONNX model;
 *     what they do not need is left out
 * @returns the bytes of the ONNX file
 */
export function translateGraph(model, outputs) {
  const translation = new Translation(model);
  for (const [name, newName] of Object.entries(outputs)) {
    translation.graph.output(translation.value(name), newName);
  }
  return translation.graph.toBytes();
}

class Translation {
  graph = new OnnxGraph();
  #done = new Map();
  #factors = new Map();

  constructor(model) {
    this.model = model;
  }

  /** The ONNX value of a TensorFlow node, translated when it is first asked for. */
  value(name) {
    if (!this.#done.has(name)) {
      const node = this.model.nodes.get(name);
      const translate = operators[node.op];
      if (!translate) {
        throw new Error(`${name}: the operation ${node.op} is not known`);
      }
      this.#done.set(name, translate(this, node));
    }
    return this.#done.get(name);
  }

  /** The i-th input as a computed value. */
  input(node, i = 0) {
    const value = this.value(node.input[i]);
    const factor = this.factor(value);
    return factor === 1 ? value : this.graph.node("Mul", [value, this.graph.floats([], [factor])]);
  }

  /** What a value has still to be multiplied by; a convolution takes it into its kernel. */
  factor(value) {
    return this.#factors.get(value) ?? 1;
  }

  withFactor(value, factor) {
    this.#factors.set(value, factor);
    return value;
  }

  /** The i-th input as numbers known beforehand. */
  constant(node, i) {
    const weights = this.model.weights.get(node.input[i]);
    if (!weights) {
      throw new Error(`${node.name}: input ${i} should be a constant`);
    }
    return weights;
  }
}

const operators = {
  Placeholder: ({ graph }, node) => {
    const [pictures, rows, columns, channels] = node.attr.shape.shape.dim.map((d) => Number(d.size));
    return graph.input("picture", [pictures, channels, rows, columns]);
  },
  Const: ({ graph, model }, node) => {
    const { shape, values } = model.weights.get(node.name);
    // A row of numbers is one for each channel.
    return graph.floats(shape.length === 1 ? [1, shape[0], 1, 1] : shape, values);
  },
  Identity: (translation, node) => translation.input(node),

  _FusedConv2D: convolution,
  Conv2D: convolution,
  FusedDepthwiseConv2dNative: depthwiseConvolution,
  DepthwiseConv2dNative: depthwiseConvolution,

  Relu: (translation, node) => translation.graph.node("Relu", [translation.input(node)]),
  Prelu: (translation, node) =>
    leaky(translation, translation.input(node), translation.constant(node, 1)),
  Relu6: (translation, node) => translation.graph.clip(translation.input(node), 0, 6),
  Sigmoid: (translation, node) => translation.graph.node("Sigmoid", [translation.input(node)]),

  Add: (translation, node) => pairwise(translation, node, "Add"),
  AddV2: (translation, node) => pairwise(translation, node, "Add"),
  Mul: (translation, node) => hardGated(translation, node) ?? product(translation, node),

  Mean: (translation, node) => {
    const axes = [...translation.constant(node, 1).values];
    if (String(axes) !== "1,2" || !node.attr.keep_dims.b) {
      throw new Error(`${node.name}: only a mean over rows and columns is known`);
    }
    const value = translation.value(node.input[0]);
    const mean = translation.graph.node("GlobalAveragePool", [value]);
    return translation.withFactor(mean, translation.factor(value));
  },

  ConcatV2: (translation, node) => {
    const last = node.input.length - 1;
    if (translation.constant(node, last).values[0] !== 3) {
      throw new Error(`${node.name}: only channels can be joined`);
    }
    const parts = node.input.slice(0, last).map((name) => translation.value(name));
    return translation.graph.node("Concat", parts, { axis: 1 });
  },

  MaxPool: (translation, node) =>
    translation.graph.node("MaxPool", [translation.input(node)], {
      auto_pad: onnxPadding(word(node.attr.padding)),
      kernel_shape: numbers(node.attr.ksize).slice(1, 3),
      strides: numbers(node.attr.strides).slice(1, 3),
    }),

  Pad: (translation, node) => {
    // [[before, after] of picture, row, column, channel], one after the other
    const [, , top, bottom, left, right, first, last] = translation.constant(node, 1).values;
    const pads = translation.graph.integers([0, first, top, left, 0, last, bottom, right]);
    return translation.graph.node("Pad", [translation.input(node), pads]);
  },

  ResizeBilinear: (translation, node) => {
    if (node.attr.align_corners?.b || node.attr.half_pixel_centers?.b) {
      throw new Error(`${node.name}: only resizing from the top left corner is known`);
    }
    const sizes = translation.graph.integers([...translation.constant(node, 1).values]);
    return translation.graph.node("Resize", [translation.input(node), "", "", sizes], {
      axes: [2, 3],
      coordinate_transformation_mode: "asymmetric",
      mode: "linear",
    });
  },

  Reshape: (translation, node) => {
    // It reads the numbers in TensorFlow's order, so that order comes first.
    const { graph } = translation;
    const ordered = graph.node("Transpose", [translation.input(node)], { perm: [0, 2, 3, 1] });
    const shape = graph.integers([...translation.constant(node, 1).values]);
    return graph.node("Reshape", [ordered, shape]);
  },
};

function convolution(translation, node) {
  return anyConvolution(translation, node, fullKernel(translation.constant(node, 1)), 1);
}

function depthwiseConvolution(translation, node) {
  const kernel = depthwiseKernel(translation.constant(node, 1));
  return anyConvolution(translation, node, kernel, kernel.shape[0]);
}

function anyConvolution(translation, node, kernel, groups) {
  const { attr } = node;
  if (attr.dilations && numbers(attr.dilations).some((step) => step !== 1)) {
    throw new Error(`${node.name}: a dilated convolution is not known`);
  }
  const fused = (attr.fused_ops?.list.s ?? []).map(decoded);
  const input = translation.value(node.input[0]);
  const factor = translation.factor(input);
  const value = addConvolution(translation.graph, input, {
    kernel: { shape: kernel.shape, values: kernel.values.map((weight) => weight * factor) },
    bias: fused.includes("BiasAdd") ? translation.constant(node, 2) : null,
    stride: numbers(attr.strides)[1],
    groups,
    padding: word(attr.padding),
  });
  const activation = fused.find((name) => name !== "BiasAdd");
  switch (activation) {
    case undefined:
      return value;
    case "Relu":
      return translation.graph.node("Relu", [value]);
    case "Relu6":
      return translation.graph.clip(value, 0, 6);
    case "Prelu":
      return leaky(translation, value, translation.constant(node, node.input.length - 1));
    default:
      throw new Error(`${node.name}: the activation ${activation} is not known`);
  }
}

/** What is below zero times a slope of its channel (He et al. 2015). */
function leaky({ graph }, value, { shape, values }) {
  return graph.node("PRelu", [value, graph.floats([shape.at(-1), 1, 1], values)]);
}

/**
 * TensorFlow spells out the gate min(max(x + 3, 0), 6) / 6, alone or times x (hard swish, Howard et
 * al. 2019), in three or four steps, each over the whole grid. ONNX has one for the gate. It divides
 * by 6 exactly, the published weights by a rounded 6: what that makes is left as a factor.
 * @returns undefined for any other product
 */
function hardGated(translation, node) {
  const [left, right] = node.input.map((name) => translation.model.nodes.get(name));
  const gated = hardGate(translation, right);
  if (!gated) {
    return undefined;
  }
  const isTimesX = left.op === "Mul" && left.input.includes(gated);
  const sixth = number(translation, isTimesX ? left.input.find((name) => name !== gated) : left.name);
  if (sixth === undefined) {
    return undefined;
  }
  const { graph } = translation;
  const value = translation.value(gated);
  const gate = graph.node("HardSigmoid", [value], { alpha: 1 / 6, beta: 0.5 });
  const result = isTimesX ? graph.node("Mul", [value, gate]) : gate;
  return translation.withFactor(result, 6 * sixth);
}

/** The name of x if the node is min(max(x + 3, 0), 6). */
function hardGate(translation, node) {
  const sum = node.op === "Relu6" && translation.model.nodes.get(node.input[0]);
  const isGate = sum && ["Add", "AddV2"].includes(sum.op) && number(translation, sum.input[1]) === 3;
  return isGate ? sum.input[0] : undefined;
}

/** The value of a constant that is one number; undefined for everything else. */
function number(translation, name) {
  const constant = translation.model.weights.get(name);
  return constant?.values.length === 1 ? constant.values[0] : undefined;
}

function product(translation, node) {
  const values = node.input.map((name) => translation.value(name));
  const factor = translation.factor(values[0]) * translation.factor(values[1]);
  return translation.withFactor(translation.graph.node("Mul", values), factor);
}

function pairwise(translation, node, operator) {
  return translation.graph.node(operator, [translation.input(node, 0), translation.input(node, 1)]);
}

// Graph attributes: whole numbers are written as text, words as Base64.
function numbers(attribute) {
  return attribute.list.i.map(Number);
}

function word(attribute) {
  return decoded(attribute.s);
}

function decoded(base64) {
  return Buffer.from(base64, "base64").toString("utf8");
}
