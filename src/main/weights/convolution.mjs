/** Convolution kernels: TensorFlow keeps them as [row, column, in, out], ONNX as [out, in, …]. */

/** [rows, columns, in, out] to [out, in, rows, columns]. */
export function fullKernel({ shape, values }) {
  const [rows, columns, channelsIn, channelsOut] = shape;
  const moved = new Float32Array(values.length);
  let from = 0;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      for (let c = 0; c < channelsIn; c++) {
        for (let out = 0; out < channelsOut; out++) {
          moved[((out * channelsIn + c) * rows + row) * columns + column] = values[from++];
        }
      }
    }
  }
  return { shape: [channelsOut, channelsIn, rows, columns], values: moved };
}

/** One kernel for each channel: [rows, columns, channels, 1] to [channels, 1, rows, columns]. */
export function depthwiseKernel({ shape, values }) {
  const [rows, columns, channels, multiplier] = shape;
  if (multiplier !== 1) {
    throw new Error(`a depthwise kernel with ${multiplier} outputs a channel is not known`);
  }
  return fullKernel({ shape: [rows, columns, 1, channels], values });
}

/**
 * Adds a convolution.
 * @param kernel in ONNX order; `groups` is the number of channels for a depthwise one
 * @param bias one number for each channel out, or null
 * @param padding TensorFlow's words: SAME (uneven padding goes below and right) or VALID
 */
export function addConvolution(graph, value, { kernel, bias, stride, groups = 1, padding = "SAME" }) {
  const inputs = [value, graph.floats(kernel.shape, kernel.values)];
  if (bias) {
    inputs.push(graph.floats([bias.values.length], bias.values));
  }
  return graph.node("Conv", inputs, {
    auto_pad: onnxPadding(padding),
    group: groups,
    kernel_shape: kernel.shape.slice(2),
    strides: [stride, stride],
  });
}

export function onnxPadding(padding) {
  const words = { SAME: "SAME_UPPER", VALID: "VALID" };
  if (!words[padding]) {
    throw new Error(`padding ${padding} is not known`);
  }
  return words[padding];
}
