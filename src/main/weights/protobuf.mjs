/** The four things of the Protocol Buffers wire format that an ONNX file needs. */

const VARINT = 0;
const LENGTH = 2;
const FIXED32 = 5;

/** A whole number, also a negative one (as 64-bit two's complement). */
export function integer(field, value) {
  return Buffer.concat([tag(field, VARINT), varint(BigInt.asUintN(64, BigInt(value)))]);
}

export function float(field, value) {
  const bytes = Buffer.alloc(4);
  bytes.writeFloatLE(value);
  return Buffer.concat([tag(field, FIXED32), bytes]);
}

export function text(field, value) {
  return bytes(field, Buffer.from(value, "utf8"));
}

/** Raw bytes, or a message inside a message. */
export function bytes(field, value) {
  return Buffer.concat([tag(field, LENGTH), varint(BigInt(value.length)), value]);
}

export function message(field, ...parts) {
  return bytes(field, Buffer.concat(parts));
}

function tag(field, wireType) {
  return varint(BigInt((field << 3) | wireType));
}

/** Seven bits a byte, lowest first; the top bit says that more follow. */
function varint(value) {
  const out = [];
  while (value > 0x7fn) {
    out.push(Number(value & 0x7fn) | 0x80);
    value >>= 7n;
  }
  out.push(Number(value));
  return Buffer.from(out);
}
