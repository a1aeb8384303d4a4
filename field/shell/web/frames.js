// How many of a journal's bytes check out: frames of magic, header, CRC and payload
// (docs/journal_format.md), found again after damage.
const magic = [0xfe, 0x48, 0x45, 0x4d];
const header_size = 16;
const payload_most = 1_048_576;

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; ++bit) {
    crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return crc;
});

/// CRC-32 as in zip and PNG, computed over several stretches.
export function crc_of(...stretches) {
  let crc = 0xffffffff;
  for (const bytes of stretches) {
    for (const byte of bytes) {
      crc = (crc >>> 8) ^ table[(crc ^ byte) & 0xff];
    }
  }
  return ~crc >>> 0;
}

/// The size of the frame that begins there; 0: none does.
function frame_at(bytes, at) {
  if (at + header_size > bytes.length || magic.some((byte, i) => bytes[at + i] !== byte)) {
    return 0;
  }
  const header = new DataView(bytes.buffer, bytes.byteOffset + at, header_size);
  const end = at + header_size + header.getUint32(8, true);
  if (header.getUint32(8, true) > payload_most || end > bytes.length) {
    return 0;
  }
  const crc = crc_of(bytes.subarray(at + 4, at + 12), bytes.subarray(at + header_size, end));
  return crc === header.getUint32(12, true) ? end - at : 0;
}

/// The number of bytes in frames that check out.
export function valid_size(bytes) {
  let valid = 0;
  for (let at = 0; at + header_size <= bytes.length;) {
    const size = frame_at(bytes, at);
    valid += size;
    at = size > 0 ? at + size : bytes.indexOf(magic[0], at + 1);
    if (at < 0) {
      break;
    }
  }
  return valid;
}
