"""The recogniser's sound path in numpy: features, i-vector, network. Slow; the measure of train.py.

    python3 reference.py MODEL LIBVOSK SOUND.wav    holds the network against the stock library

The check: every row of `output.affine` is made equal to one row. Whatever is decoded then costs
that output, summed over the frames, so the library's n-best "confidence" less its value with a row
of zeros is that sum. What stays different (0.004 to 0.05 a frame) is the i-vector, which the
library estimates while it decodes, and its dither.
"""

import ctypes
import json
import os
import re
import shutil
import struct
import sys
import tempfile
import wave

import numpy as np

from network_file import array, components

RATE = 16000
STEP, LENGTH, BANDS = 160, 400, 40


def mel(hertz):
    return 1127 * np.log(1 + np.asarray(hertz) / 700.0)


def mel_bands():
    """Triangles from 20 to 7600 Hz over the 256 lower bins of a transform of 512."""
    low, high = mel(20.0), mel(7600.0)
    width = (high - low) / (BANDS + 1)
    bins = mel(np.arange(256) * RATE / 512)
    bands = np.zeros((BANDS, 256))
    for band in range(BANDS):
        left, middle, right = (low + (band + i) * width for i in range(3))
        rising, falling = (bins - left) / (middle - left), (right - bins) / (right - middle)
        bands[band] = np.where((bins > left) & (bins < right), np.minimum(rising, falling), 0)
    return bands


def cosines():
    n = np.arange(BANDS)
    matrix = np.sqrt(2 / BANDS) * np.cos(np.pi / BANDS * (n[None] + 0.5) * n[:, None])
    matrix[0] = np.sqrt(1 / BANDS)
    return matrix


WINDOW = (0.5 - 0.5 * np.cos(2 * np.pi * np.arange(LENGTH) / (LENGTH - 1))) ** 0.85
LIFTER = 1 + 11 * np.sin(np.pi * np.arange(BANDS) / 22)
LEAST = 1.1920929e-07


def mfcc(samples):
    """40 coefficients every 10 ms of samples in the range of 16 bits."""
    count = 1 + (len(samples) - LENGTH) // STEP
    frames = samples.astype(float)[np.arange(LENGTH)[None] + STEP * np.arange(count)[:, None]]
    frames = frames - frames.mean(1, keepdims=True)
    first = frames[:, :1] * (1 - 0.97)
    frames = np.concatenate([first, frames[:, 1:] - 0.97 * frames[:, :-1]], 1) * WINDOW
    power = np.abs(np.fft.rfft(frames, 512)) ** 2
    return np.log(np.maximum(power[:, :256] @ mel_bands().T, LEAST)) @ cosines().T * LIFTER


class Extractor:
    """The online i-vector extractor."""

    def __init__(self, model):
        folder = os.path.join(model, "ivector")

        def read(name):
            with open(os.path.join(folder, name), "rb") as file:
                return file.read()

        data = read("final.mat")
        rows, columns = struct.unpack_from("<xixi", data, 5)
        self.lda = np.frombuffer(data, "<f4", rows * columns, 15).reshape(rows, columns).astype(float)
        stats = re.sub(r"[\[\]]", "", read("global_cmvn.stats").decode()).split()
        stats = np.array(stats, float).reshape(2, -1)
        self.mean = stats[0, :-1] / stats[0, -1]
        data = read("final.dubm")

        def numbers(token):
            at = data.index(token) + len(token) + 1
            if data[at : at + 3] == b"FV ":
                (size,) = struct.unpack_from("<xi", data, at + 3)
                return np.frombuffer(data, "<f4", size, at + 8).astype(float)
            rows, columns = struct.unpack_from("<xixi", data, at + 3)
            flat = np.frombuffer(data, "<f4", rows * columns, at + 13)
            return flat.reshape(rows, columns).astype(float)

        self.constants = numbers(b"<GCONSTS>")
        self.means = numbers(b"<MEANS_INVVARS>")
        self.inverse = numbers(b"<INV_VARS>")
        data = read("final.ie")
        at = data.index(b"<M> ") + 4
        (count,) = struct.unpack_from("<xi", data, at)
        at += 5
        matrices, precisions = [], []
        for _ in range(count):
            rows, columns = struct.unpack_from("<xixi", data, at + 3)
            flat = np.frombuffer(data, "<f8", rows * columns, at + 13)
            matrices.append(flat.reshape(rows, columns))
            at += 13 + 8 * rows * columns
        at += len(b"<SigmaInv> ")
        for _ in range(count):
            (size,) = struct.unpack_from("<xi", data, at + 3)
            packed = size * (size + 1) // 2
            square = np.zeros((size, size))
            square[np.tril_indices(size)] = np.frombuffer(data, "<f8", packed, at + 8)
            precisions.append(square + np.tril(square, -1).T)
            at += 8 + 8 * packed
        at = data.index(b"<IvectorOffset> ", at) + 16
        self.offset = struct.unpack_from("<d", data, at + 1)[0]
        matrices, precisions = np.array(matrices), np.array(precisions)
        self.weighted = np.einsum("ide,iek->idk", precisions, matrices)
        self.squares = np.einsum("idk,idl->ikl", matrices, self.weighted)

    def spliced(self, features):
        count = len(features)
        near = np.clip(np.arange(count)[:, None] + np.arange(-3, 4), 0, count - 1)
        return features[near].reshape(count, -1) @ self.lda[:, :-1].T + self.lda[:, -1]

    def statistics(self, features, weights=None):
        """Transformed features, the five likeliest Gaussians of each frame and their shares."""
        sums = np.cumsum(features, 0)
        counts = np.arange(1, len(features) + 1)[:, None].astype(float)
        if len(features) > 600:
            sums[600:] = sums[600:] - np.cumsum(features, 0)[:-600]
            counts = np.minimum(counts, 600)
        common = np.minimum(600 - counts, 200)
        centred = features - (sums + common * self.mean) / (counts + common)
        plain, normal = self.spliced(features), self.spliced(centred)
        likely = self.constants + normal @ self.means.T - 0.5 * normal**2 @ self.inverse.T
        best = np.argsort(-likely, 1)[:, :5]
        shares = np.take_along_axis(likely, best, 1)
        shares = np.exp(shares - shares.max(1, keepdims=True))
        shares /= shares.sum(1, keepdims=True)
        shares[shares < 0.025] = 0
        shares *= 0.1 / shares.sum(1, keepdims=True)
        return plain, best, shares if weights is None else shares * weights[:, None]

    def vector(self, plain, best, shares):
        counts, sums = np.zeros(len(self.squares)), np.zeros((len(self.squares), plain.shape[1]))
        np.add.at(counts, best, shares)
        np.add.at(sums, best, shares[..., None] * plain[:, None])
        prior = max(counts.sum(), 100) / 100
        linear = np.einsum("idk,id->k", self.weighted, sums)
        linear[0] += self.offset * prior
        square = np.einsum("i,ikl->kl", counts, self.squares) + prior * np.eye(len(linear))
        vector = np.linalg.solve(square, linear)
        vector[0] -= self.offset
        return vector


class Network:
    """The chain branch of the acoustic network."""

    def __init__(self, data):
        self.parts = {}
        for name, (kind, items) in components(data).items():
            for token in ("<LinearParams>", "<BiasParams>", "<Params>"):
                if token in items:
                    self.parts[name, token] = array(data, items[token]).astype(float)
            if "<TimeOffsets>" in items:
                self.parts[name, "<TimeOffsets>"] = items["<TimeOffsets>"][2]
            if kind == "<BatchNormComponent>":
                mean = array(data, items["<StatsMean>"]).astype(float)
                spread = array(data, items["<StatsVar>"]) + items["<Epsilon>"][2][1]
                scale = items["<TargetRms>"][2][1] / np.sqrt(spread.astype(float))
                self.parts[name, "scale"] = (scale, -mean * scale)

    def affine(self, name, x):
        """The result and how many frames it needed before and after."""
        matrix = self.parts.get((name, "<LinearParams>"))
        matrix = self.parts[name, "<Params>"] if matrix is None else matrix
        bias = self.parts.get((name, "<BiasParams>"), np.zeros(0))
        offsets = self.parts.get((name, "<TimeOffsets>"), (0,))
        low, high = min(offsets), max(offsets)
        count = len(x) - (high - low)
        y = np.concatenate([x[o - low : o - low + count] for o in offsets], 1) @ matrix.T
        return (y + bias if len(bias) else y), -low, high

    def norm(self, name, x):
        scale, shift = self.parts[name, "scale"]
        return x * scale + shift

    def forward(self, features, vectors):
        """Outputs of the frames 26 to 14 before the end; needs one i-vector a frame."""
        x = features[2:-2]
        slope = features[3:-1] - features[1:-3]
        bend = features[:-4] + features[4:] - 2 * x
        x = np.concatenate([x, slope, bend], 1)
        x = np.concatenate([self.norm("delta", x), vectors[2:-2]], 1)
        x = self.norm("tdnn1.batchnorm", np.maximum(self.affine("tdnn1.affine", x)[0], 0))
        for i in range(2, 13):
            y, before, after = self.affine(f"tdnnf{i}.linear", x)
            y, more, later = self.affine(f"tdnnf{i}.affine", y)
            before, after = before + more, after + later
            y = self.norm(f"tdnnf{i}.batchnorm", np.maximum(y, 0))
            x = 0.75 * x[before : len(x) - after] + y
        x = self.affine("prefinal-chain.affine", self.affine("prefinal-l", x)[0])[0]
        x = self.norm("prefinal-chain.batchnorm1", np.maximum(x, 0))
        x = self.norm("prefinal-chain.batchnorm2", self.affine("prefinal-chain.linear", x)[0])
        return self.affine("output.affine", x)[0]


def padded(x, before=26, after=14):
    return np.concatenate([np.repeat(x[:1], before, 0), x, np.repeat(x[-1:], after, 0)])


def check(model, library, sound):
    with wave.open(sound) as file:
        samples = np.frombuffer(file.readframes(10**9), "<i2")
    random = np.random.default_rng(1)
    quiet = (3 * random.standard_normal(8000)).astype("<i2")
    samples = np.concatenate([quiet, samples, quiet])
    with open(os.path.join(model, "am", "final.mdl"), "rb") as file:
        data = file.read()
    network, extractor = Network(data), Extractor(model)
    features = mfcc(samples)
    vector = extractor.vector(*extractor.statistics(features))
    wide = padded(features)
    outputs = network.forward(wide, np.broadcast_to(vector, (len(wide), len(vector))))[::3]
    vosk = ctypes.CDLL(library)
    vosk.vosk_set_log_level(-10)
    for name in ("vosk_model_new", "vosk_recognizer_new_grm"):
        getattr(vosk, name).restype = ctypes.c_void_p
    vosk.vosk_recognizer_final_result.restype = ctypes.c_char_p
    items = components(data)["output.affine"][1]

    def cost(row, bias):
        changed = bytearray(data)
        for token, numbers in (("<LinearParams>", row), ("<BiasParams>", [bias])):
            _, offset, shape = items[token]
            repeated = np.tile(np.asarray(numbers, "<f4"), shape[0]).tobytes()
            changed[offset : offset + len(repeated)] = repeated
        with tempfile.TemporaryDirectory() as folder:
            copy = shutil.copytree(model, os.path.join(folder, "model"))
            with open(os.path.join(copy, "am", "final.mdl"), "wb") as file:
                file.write(changed)
            loaded = ctypes.c_void_p(vosk.vosk_model_new(copy.encode()))
            words = b'["one", "two", "[unk]"]'
            recogniser = vosk.vosk_recognizer_new_grm(loaded, ctypes.c_float(RATE), words)
            recogniser = ctypes.c_void_p(recogniser)
            vosk.vosk_recognizer_set_max_alternatives(recogniser, 1)
            sound = samples.tobytes()
            vosk.vosk_recognizer_accept_waveform(recogniser, sound, len(sound))
            result = json.loads(vosk.vosk_recognizer_final_result(recogniser))
            vosk.vosk_recognizer_free(recogniser)
            vosk.vosk_model_free(loaded)
        return result["alternatives"][0]["confidence"]

    weights = network.parts["output.affine", "<LinearParams>"]
    biases = network.parts["output.affine", "<BiasParams>"]
    nothing = cost(0 * weights[0], 0)
    for row in (10, 100, 500, 1000, 2000):
        theirs = (cost(weights[row], biases[row]) - nothing) / len(outputs)
        print(f"output {row}: library {theirs:.3f} a frame, here {outputs[:, row].mean():.3f}")


if __name__ == "__main__":
    check(*sys.argv[1:4])
