"""Makes and applies the difference file between two acoustic networks of the same shape.

    python3 difference.py apply BASE/final.mdl difference.gz RESULT/final.mdl
    python3 difference.py make  BASE/final.mdl weights.npz SHARE difference.gz

SHARE is how much of the change is taken, 0 to 1.

The format is described in README.md. Only the standard library and numpy are needed.
"""

import gzip
import hashlib
import struct
import sys

import numpy as np

MAGIC = b"UCDIFF1\n"


def sha256(data):
    return hashlib.sha256(data).digest()


def apply(base, packed):
    """The changed file: base + scale of the row * whole number, all in 32-bit floating point."""
    data = gzip.decompress(packed)
    if data[:8] != MAGIC:
        raise ValueError("not a difference file")
    if data[8:40] != sha256(base):
        raise ValueError("the base is another file than the one the difference was made for")
    wanted = data[40:72]
    (count,) = struct.unpack_from("<i", data, 72)
    at = 76
    result = bytearray(base)
    for _ in range(count):
        offset, rows, columns = struct.unpack_from("<iii", data, at)
        at += 12
        scale = np.frombuffer(data, "<f4", rows, at)
        at += 4 * rows
        steps = np.frombuffer(data, "i1", rows * columns, at).reshape(rows, columns)
        at += rows * columns
        old = np.frombuffer(base, "<f4", rows * columns, offset).reshape(rows, columns)
        new = old + scale[:, None] * steps.astype("<f4")
        result[offset : offset + 4 * rows * columns] = new.astype("<f4").tobytes()
    if at != len(data):
        raise ValueError("the difference file is too long")
    if sha256(bytes(result)) != wanted:
        raise ValueError("the result is not the file that was measured")
    return bytes(result)


def make(base, places, weights, share=1.0):
    """The packed difference. places: name -> (offset, shape); weights: name -> matrix."""
    body = b""
    result = bytearray(base)
    for name in sorted(weights, key=lambda n: places[n][0]):
        offset, shape = places[name]
        rows, columns = shape if len(shape) == 2 else (shape[0], 1)
        old = np.frombuffer(base, "<f4", rows * columns, offset).reshape(rows, columns)
        change = share * (weights[name].astype("f8").reshape(rows, columns) - old)
        scale = (np.abs(change).max(1) / 127).astype("<f4")
        steps = np.rint(change / np.maximum(scale, 1e-30)[:, None]).clip(-127, 127).astype("i1")
        body += struct.pack("<iii", offset, rows, columns) + scale.tobytes() + steps.tobytes()
        new = old + scale[:, None] * steps.astype("<f4")
        result[offset : offset + 4 * rows * columns] = new.astype("<f4").tobytes()
    head = MAGIC + sha256(base) + sha256(bytes(result)) + struct.pack("<i", len(weights))
    return gzip.compress(head + body, 9, mtime=0), bytes(result)


def main(args):
    if args[0] == "apply":
        base, packed = open(args[1], "rb").read(), open(args[2], "rb").read()
        open(args[3], "wb").write(apply(base, packed))
    elif args[0] == "make":
        from network_file import places

        weights = np.load(args[2])
        base = open(args[1], "rb").read()
        chosen = {name: weights[name] for name in weights.files}
        packed, _ = make(base, places(base), chosen, float(args[3]))
        apply(base, packed)
        open(args[4], "wb").write(packed)
    else:
        raise SystemExit(__doc__)


if __name__ == "__main__":
    main(sys.argv[1:])
