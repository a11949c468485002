"""Reads a Kaldi acoustic network (final.mdl, binary): where each matrix and vector lies.

Nothing is rewritten: a changed network is the same bytes with other numbers in their places.
"""

import struct

import numpy as np


def components(data):
    """{component: (type, {token: (kind, offset, shape or value)})} of the nnet3 part.

    kind: M matrix and V vector of 32-bit numbers, I list of whole numbers, N a number of 4 bytes
    (value: as whole number, as floating point), D a number of 8 bytes, B true or false, - no value.
    """
    at = data.index(b"<NumComponents> ") + 16
    count = struct.unpack_from("<i", data, at + 1)[0]
    at += 5
    found = {}

    def token(at):
        end = data.index(b" ", at)
        return data[at:end].decode("latin1"), end + 1

    for _ in range(count):
        word, at = token(at)
        if word != "<ComponentName>":
            raise ValueError(f"{word} where a component should begin")
        name, at = token(at)
        kind, at = token(at)
        items = {}
        while True:
            word, at = token(at)
            if word == "</" + kind[1:]:
                break
            if data[at : at + 3] == b"FM ":
                rows, columns = struct.unpack_from("<xixi", data, at + 3)
                items[word] = ("M", at + 13, (rows, columns))
                at += 13 + 4 * rows * columns
            elif data[at : at + 3] == b"FV ":
                (size,) = struct.unpack_from("<xi", data, at + 3)
                items[word] = ("V", at + 8, (size,))
                at += 8 + 4 * size
            elif data[at : at + 1] in (b"T", b"F"):
                items[word] = ("B", at, data[at : at + 1] == b"T")
                at += 1
            elif data[at] == 4 and word == "<TimeOffsets>":
                (size,) = struct.unpack_from("<i", data, at + 1)
                items[word] = ("I", at, struct.unpack_from(f"<{size}i", data, at + 5))
                at += 5 + 4 * size
            elif data[at] == 4:
                value = struct.unpack_from("<i", data, at + 1) + struct.unpack_from("<f", data, at + 1)
                items[word] = ("N", at, value)
                at += 10 if word.endswith("InOut>") else 5
            elif data[at] == 8:
                items[word] = ("D", at, struct.unpack_from("<d", data, at + 1)[0])
                at += 9
            elif data[at : at + 1] == b"<":
                items[word] = ("-", at, None)
            else:
                raise ValueError(f"{name} {word}: unknown value at {at}")
        found[name] = (kind, items)
    return found


def array(data, item):
    """The numbers of a matrix or vector, as a view of the file's bytes."""
    return np.frombuffer(data, "<f4", int(np.prod(item[2])), item[1]).reshape(item[2])


def places(data):
    """{"component|<Token>": (offset, shape)} of every matrix and vector."""
    return {
        f"{name}|{word}": (item[1], item[2])
        for name, (_, items) in components(data).items()
        for word, item in items.items()
        if item[0] in "MV"
    }
