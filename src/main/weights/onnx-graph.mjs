/**
 * Builds one ONNX model. Field numbers are those of the ONNX format's onnx.proto; pictures are
 * laid out as [picture, channel, row, column].
 */
import * as protobuf from "./protobuf.mjs";

const IR_VERSION = 8;
const OPERATOR_SET = 18;
const FLOAT = 1; // TensorProto.DataType
const INT64 = 7;

export class OnnxGraph {
  #nodes = [];
  #constants = [];
  #inputs = [];
  #outputs = [];
  #names = 0;

  /** Declares the picture that goes in; a side given as a word may be any. @returns the value's name, as all of these do */
  input(name, shape) {
    this.#inputs.push(protobuf.message(11, valueInfo(name, shape)));
    return name;
  }

  /** Declares a value that comes out, under a name of its own. */
  output(value, name) {
    this.#nodes.push(nodeProto("Identity", [value], name, {}));
    this.#outputs.push(protobuf.message(12, valueInfo(name)));
  }

  floats(shape, values) {
    const raw = Buffer.alloc(4 * values.length);
    values.forEach((value, i) => raw.writeFloatLE(value, 4 * i));
    return this.#constant(FLOAT, shape, raw);
  }

  integers(values) {
    const raw = Buffer.alloc(8 * values.length);
    values.forEach((value, i) => raw.writeBigInt64LE(BigInt(value), 8 * i));
    return this.#constant(INT64, [values.length], raw);
  }

  /** One operation; an input "" is left out. Attributes are numbers, lists of numbers or words. */
  node(operator, inputs, attributes = {}) {
    const name = this.#newName();
    this.#nodes.push(nodeProto(operator, inputs, name, attributes));
    return name;
  }

  clip(value, low, high) {
    return this.node("Clip", [value, this.floats([], [low]), this.floats([], [high])]);
  }

  toBytes() {
    const graph = protobuf.message(
      7,
      ...this.#nodes,
      protobuf.text(2, "graph"),
      ...this.#constants,
      ...this.#inputs,
      ...this.#outputs,
    );
    const operatorSet = protobuf.message(8, protobuf.text(1, ""), protobuf.integer(2, OPERATOR_SET));
    return Buffer.concat([protobuf.integer(1, IR_VERSION), graph, operatorSet]);
  }

  #constant(type, shape, raw) {
    const name = this.#newName();
    this.#constants.push(
      protobuf.message(
        5,
        ...shape.map((side) => protobuf.integer(1, side)),
        protobuf.integer(2, type),
        protobuf.text(8, name),
        protobuf.bytes(9, raw),
      ),
    );
    return name;
  }

  #newName() {
    return `v${this.#names++}`;
  }
}

function nodeProto(operator, inputs, output, attributes) {
  return protobuf.message(
    1,
    ...inputs.map((input) => protobuf.text(1, input)),
    protobuf.text(2, output),
    protobuf.text(4, operator),
    ...Object.entries(attributes).map(([name, value]) => attribute(name, value)),
  );
}

/** Attributes named here are floats; all other numbers are whole. */
const FLOAT_ATTRIBUTES = new Set(["alpha", "beta", "epsilon"]);

function attribute(name, value) {
  const [FLOATS, INTEGERS, WORD, LIST] = [1, 2, 3, 7]; // AttributeProto.AttributeType
  const parts = [protobuf.text(1, name)];
  if (Array.isArray(value)) {
    parts.push(...value.map((one) => protobuf.integer(8, one)), protobuf.integer(20, LIST));
  } else if (typeof value === "string") {
    parts.push(protobuf.text(4, value), protobuf.integer(20, WORD));
  } else if (FLOAT_ATTRIBUTES.has(name)) {
    parts.push(protobuf.float(2, value), protobuf.integer(20, FLOATS));
  } else {
    parts.push(protobuf.integer(3, value), protobuf.integer(20, INTEGERS));
  }
  return protobuf.message(5, ...parts);
}

/** A value's name and type; without a shape it may have any. */
function valueInfo(name, shape) {
  const tensor = [protobuf.integer(1, FLOAT)];
  if (shape) {
    tensor.push(
      protobuf.message(2, ...shape.map((side) => protobuf.message(1, sideProto(side)))),
    );
  }
  const type = protobuf.message(2, protobuf.message(1, ...tensor));
  return Buffer.concat([protobuf.text(1, name), type]);
}

function sideProto(side) {
  return typeof side === "string" ? protobuf.text(2, side) : protobuf.integer(1, side);
}
