"""Adapts the network to noise: the teacher hears clean sound, the student the same with noise.

    python3 train.py FOLDER STEPS RESULT.npz [POOL]

FOLDER is what prepare.py made. Needs PyTorch with an accelerator of some 20 GB, and soundfile or,
named by the environment variable LIBSNDFILE, a libsndfile. 3,600 steps take three minutes on one
current accelerator. RESULT.npz gets the moving average of the changed weights.
"""

import ctypes
import json
import math
import os
import random
import sys
import time

import numpy as np
import torch
import torch.nn.functional as F

RATE = 16000
LENGTH = 76800  # 4.8 s
SLACK = 9600
FRAMES = 1 + (LENGTH - 400) // 160
BATCH = 96
SIZE = 131072  # of the transforms over a whole piece
RECORDED = 160000  # every noise is a loop of 10 s
PIECE = 20  # frames that share an i-vector
LATEST = 4  # how many pieces late the i-vector may be, exclusive
LOWEST, HIGHEST, CLEAN = 0.0, 28.0, 60.0  # dB
CLEAN_SHARE, CLEAN_WEIGHT = 0.25, 2.0
PEAK_RATE = 1e-4
DEVICE = "cuda"
LAYERS = [f"tdnnf{i}.{part}" for i in range(2, 13) for part in ("linear", "affine")]
LAYERS += ["tdnn1.affine", "prefinal-l", "prefinal-chain.affine", "prefinal-chain.linear"]


def numbers(values):
    return torch.tensor(np.asarray(values), dtype=torch.float32, device=DEVICE)


def between(low, high, *shape):
    return low + (high - low) * torch.rand(*shape, device=DEVICE)


def chosen(share, *shape):
    return torch.rand(*shape, device=DEVICE) < share


class Info(ctypes.Structure):
    _fields_ = [("frames", ctypes.c_int64)] + [
        (name, ctypes.c_int) for name in ("rate", "channels", "format", "sections", "seekable")
    ]


def read_flac(path):
    named = os.environ.get("LIBSNDFILE")
    if not named:
        import soundfile

        return soundfile.read(path, dtype="int16")[0]
    library, info = ctypes.CDLL(named), Info()
    library.sf_open.restype = ctypes.c_void_p
    library.sf_readf_short.restype = ctypes.c_int64
    library.sf_readf_short.argtypes = [ctypes.c_void_p, ctypes.c_void_p, ctypes.c_int64]
    file = library.sf_open(path.encode(), 0x10, ctypes.byref(info))
    samples = np.zeros(info.frames, "<i2")
    if not file or library.sf_readf_short(file, samples.ctypes.data, info.frames) != info.frames:
        raise OSError(path)
    return samples


class Model:
    """The network and its i-vectors, as reference.py has them, for many clips at once."""

    def __init__(self, packed):
        self.weights = {
            key: numbers(packed[key])
            for key in packed.files
            if not key.startswith(("iv|", "ref|")) and "TimeOffsets" not in key
        }
        self.offsets = {
            key.split("|")[0]: tuple(int(v) for v in packed[key])
            for key in packed.files
            if "TimeOffsets" in key
        }
        self.extractor = {
            key[3:]: numbers(packed[key]) for key in packed.files if key.startswith("iv|")
        }
        mel = lambda hertz: 1127 * np.log(1 + np.asarray(hertz) / 700.0)
        low, width = mel(20.0), (mel(7600.0) - mel(20.0)) / 41
        bins, bands = mel(np.arange(257) * RATE / 512), np.zeros((40, 257))
        for band in range(40):
            left, middle, right = (low + (band + i) * width for i in range(3))
            slope = np.minimum((bins - left) / (middle - left), (right - bins) / (right - middle))
            bands[band] = np.where((bins > left) & (bins < right), slope, 0)
        n = np.arange(40)
        cosines = np.sqrt(2 / 40) * np.cos(np.pi / 40 * (n[None] + 0.5) * n[:, None])
        cosines[0] = np.sqrt(1 / 40)
        window = (0.5 - 0.5 * np.cos(2 * np.pi * np.arange(400) / 399)) ** 0.85
        self.bands, self.window = numbers(bands.T), numbers(window)
        self.cosines = numbers(cosines.T * (1 + 11 * np.sin(np.pi * n / 22)))

    def features(self, samples):
        frames = samples.unfold(1, 400, 160)
        frames = frames - frames.mean(2, keepdim=True)
        frames = torch.cat([frames[..., :1] * 0.03, frames[..., 1:] - 0.97 * frames[..., :-1]], 2)
        power = torch.fft.rfft(frames * self.window, 512).abs() ** 2
        return torch.log(torch.clamp(power @ self.bands, min=1.1920929e-07)) @ self.cosines

    def vectors(self, features, weights, lag):
        """The i-vector of each frame from the frames up to the end of its piece, `lag` pieces ago.

        The recogniser learns only while it decodes which frames are speech, so it always uses an
        older estimate.
        """
        extractor = self.extractor
        batch, count, _ = features.shape
        seen = torch.arange(1, count + 1, device=DEVICE)[None, :, None].float()
        common = torch.clamp(600 - seen, max=200)
        centred = features - (features.cumsum(1) + common * extractor["gm"]) / (seen + common)
        near = torch.arange(count, device=DEVICE)[:, None] + torch.arange(-3, 4, device=DEVICE)
        near = near.clamp(0, count - 1)
        lda = extractor["lda"]
        spliced = lambda a: a[:, near].reshape(batch, count, 280) @ lda[:, :-1].T + lda[:, -1]
        plain, normal = spliced(features), spliced(centred)
        likely = extractor["gc"] + normal @ extractor["miv"].T - 0.5 * normal**2 @ extractor["iv"].T
        best, index = likely.topk(5, 2)
        shares = best.softmax(2)
        shares = torch.where(shares < 0.025, torch.zeros_like(shares), shares)
        shares = shares / shares.sum(2, keepdim=True) * 0.1 * weights[..., None]
        shares = torch.zeros_like(likely).scatter_(2, index, shares)
        pieces = (count + PIECE - 1) // PIECE
        pad = pieces * PIECE - count
        shares = F.pad(shares, (0, 0, 0, pad)).view(batch, pieces, PIECE, -1)
        plain = F.pad(plain, (0, 0, 0, pad)).view(batch, pieces, PIECE, -1)
        sums = torch.einsum("bksc,bksd->bkcd", shares, plain).cumsum(1).reshape(batch * pieces, -1)
        counts = shares.sum(2).cumsum(1).reshape(batch * pieces, -1)
        linear = sums @ extractor["SM"].reshape(-1, 30)
        square = (counts @ extractor["U"].reshape(-1, 900)).view(-1, 30, 30)
        linear[:, 0] += extractor["off"]
        vectors = torch.linalg.solve(square + torch.eye(30, device=DEVICE), linear[..., None])[..., 0]
        vectors[:, 0] -= extractor["off"]
        vectors = F.pad(vectors.view(batch, pieces, 30), (0, 0, 1, 0))
        late = torch.clamp(torch.arange(1, pieces + 1, device=DEVICE)[None] - lag, min=0)
        vectors = vectors.gather(1, late[..., None].expand(batch, pieces, 30))
        return vectors.repeat_interleave(PIECE, 1)[:, :count]

    def affine(self, weights, name, x):
        matrix = weights.get(name + "|<LinearParams>")
        matrix = weights[name + "|<Params>"] if matrix is None else matrix
        bias = weights.get(name + "|<BiasParams>")
        offsets = self.offsets.get(name, (0,))
        low, high = min(offsets), max(offsets)
        count = x.shape[1] - (high - low)
        x = torch.cat([x[:, o - low : o - low + count] for o in offsets], 2)
        return F.linear(x, matrix, bias if bias is not None and bias.numel() else None), -low, high

    def forward(self, weights, features, vectors):
        norm = lambda name, x: x * weights[name + "|a"] + weights[name + "|b"]
        x = features[:, 2:-2]
        slope = features[:, 3:-1] - features[:, 1:-3]
        bend = features[:, :-4] + features[:, 4:] - 2 * x
        x = torch.cat([norm("delta", torch.cat([x, slope, bend], 2)), vectors[:, 2:-2]], 2)
        x = norm("tdnn1.batchnorm", F.relu(self.affine(weights, "tdnn1.affine", x)[0]))
        for i in range(2, 13):
            y, before, after = self.affine(weights, f"tdnnf{i}.linear", x)
            y, more, later = self.affine(weights, f"tdnnf{i}.affine", y)
            y = norm(f"tdnnf{i}.batchnorm", F.relu(y))
            x = 0.75 * x[:, before + more : x.shape[1] - after - later] + y
        x = self.affine(weights, "prefinal-l", x[:, ::3])[0]
        x = F.relu(self.affine(weights, "prefinal-chain.affine", x)[0])
        x = self.affine(weights, "prefinal-chain.linear", norm("prefinal-chain.batchnorm1", x))[0]
        return self.affine(weights, "output.affine", norm("prefinal-chain.batchnorm2", x))[0]


class Sounds:
    """Clean pieces and noises."""

    def __init__(self, folder):
        self.sound = read_flac(os.path.join(folder, "sound.flac"))
        with open(os.path.join(folder, "index.json")) as file:
            index = json.load(file)
        self.talk, self.people = {}, {"training": [], "stopping": []}
        self.by_kind, self.words = {}, {"training": {}, "stopping": {}}
        for entry in index:
            self.by_kind.setdefault((entry[0], entry[2]), []).append(entry)
            if entry[0] == "word":
                self.words[entry[2]].setdefault(entry[1], []).append(entry)
            if entry[0] == "people":
                self.talk.setdefault(entry[1], []).append(entry)
                if entry[1] not in self.people[entry[2]]:
                    self.people[entry[2]].append(entry[1])

    def get(self, entry):
        return self.sound[entry[3] : entry[3] + entry[4]].astype(np.float32)

    def any(self, kind, part):
        return self.get(random.choice(self.by_kind[kind, part]))

    def piece(self, part, length):
        """Numbers of one speaker, read sentences, synthetic speakers, words of one speaker with pauses."""
        training = part == "training"
        faster = random.uniform(0.87, 1.15) if training and random.random() < 0.6 else 1
        paced = lambda x: np.interp(np.arange(0, len(x) - 1, faster), np.arange(len(x)), x)
        kind = random.random()
        if kind < (0.3 if training else 0.25):
            name = random.choice(self.people[part])
            parts = [np.zeros(random.randint(1600, 12000))]
            while sum(map(len, parts)) < length:
                clip = self.get(random.choice(self.talk[name]))
                parts += [paced(clip), np.zeros(random.randint(1000, 14000))]
            return np.concatenate(parts)[:length]
        if kind < (0.58 if training else 0.5):
            x = paced(self.any("reading", part))
            if len(x) < length:
                before = random.randint(0, length - len(x))
                x = np.pad(x, (before, length))[:length] if random.random() < 0.5 else np.tile(x, 2)
            start = random.randint(0, max(0, len(x) - length))
            return x[start : start + length]
        if kind < 0.70 and training:
            x = paced(self.any("synthetic", part))
            x = np.pad(x, (random.randint(0, length // 3), length))
            start = random.randint(0, max(0, min(len(x) - length, len(x) // 3)))
            return x[start : start + length]
        clips = random.choice(list(self.words[part].values()))
        parts = [np.zeros(random.randint(1600, 12000))]
        while sum(map(len, parts)) < length:
            word = paced(self.get(random.choice(clips)))
            loud = np.nonzero(np.abs(word) > 0.06 * np.abs(word).max())[0]
            if len(loud):
                word = word[max(0, loud[0] - 700) : loud[-1] + 1000]
            short = random.random() < 0.75
            pause = random.randint(1000, 2800) if short else random.randint(6000, 20000)
            parts += [word, np.zeros(pause)]
        return np.concatenate(parts)[:length]

    def pool(self, part, count, length):
        pieces = np.zeros((count, length), np.int16)
        for i in range(count):
            x = self.piece(part, length)
            x = np.pad(x, (0, max(0, length - len(x))))
            peak = np.abs(x).max()
            pieces[i] = np.clip(x * (min(1, 32000 / peak) if peak > 0 else 1), -32768, 32767)
        return torch.tensor(pieces, device=DEVICE)

    def noises(self, chance):
        """Recorded noises twice each, and made ones; loops of 10 s with an RMS of 1."""
        made, time_ = [], np.arange(RECORDED) / RATE
        for entry in self.by_kind["noise", "training"]:
            x = self.get(entry)
            x = x - x.mean()
            if x.std() >= 1:
                made += [np.resize(x, RECORDED)] * 2
        hertz = np.fft.rfftfreq(RECORDED, 1 / RATE) + 20
        for _ in range(40):  # steady, coloured
            colour = np.interp(np.log(hertz), np.linspace(3, 9, 8), chance.normal(0, 0.9, 8))
            colour = hertz ** -random.uniform(0, 1) * np.exp(colour)
            white = np.fft.rfft(chance.standard_normal(RECORDED))
            made.append(np.fft.irfft(white * colour, RECORDED))
        for _ in range(25):  # engines and hum: harmonics that waver
            wander = np.interp(time_, np.linspace(0, 10, 12), chance.normal(0, 1, 12))
            phase = np.cumsum(random.uniform(40, 300) * (1 + 0.05 * wander)) / RATE * 2 * np.pi
            x = sum(
                random.uniform(0.2, 1)
                / k ** random.uniform(0.2, 1)
                * np.sin(k * phase + 6 * random.random())
                for k in range(1, 15)
            )
            made.append(x / x.std() + random.uniform(0.1, 1) * chance.standard_normal(RECORDED))
        for _ in range(25):  # blows and clatter
            x = 0.03 * chance.standard_normal(RECORDED)
            for _ in range(random.randint(10, 60)):
                start, t = random.randint(0, RECORDED - 8000), time_[:8000]
                tones = sum(np.sin(2 * np.pi * random.uniform(300, 6000) * t) for _ in range(4))
                hiss = chance.standard_normal(8000) * random.uniform(0.2, 2)
                decay = random.uniform(0.2, 2) * np.exp(-t * random.uniform(15, 120))
                x[start : start + 8000] += decay * (tones + hiss)
            made.append(x)
        for _ in range(40):  # babble of the training readers
            x = np.zeros(RECORDED)
            for _ in range(random.randint(2, 5)):
                voice = np.concatenate([self.any("reading", "training") for _ in range(3)])
                x += np.resize(voice / voice.std(), RECORDED)
            made.append(x)
        return numbers(np.array([x / np.sqrt((x**2).mean()) for x in made]))


def active(samples):
    """The RMS over the loud blocks of 10 ms, and which blocks are loud."""
    power = (samples.view(len(samples), -1, 160) ** 2).mean(2)
    loud = (power >= power.max(1, keepdim=True)[0] * 0.001) & (power > 1)
    return torch.sqrt((power * loud).sum(1) / loud.sum(1).clamp(min=1)), loud


def speech_weights(samples):
    """1 for frames of speech and near it, almost 0 for others, as the recogniser weights them."""
    loud = active(samples)[1][:, :FRAMES].float()
    return F.max_pool1d(loud[:, None], 11, 1, 5)[:, 0] * 0.999 + 0.001


def any_noise(noises, batch, source=None):
    index = torch.randint(len(noises), (batch, 1), device=DEVICE, generator=source)
    start = torch.randint(RECORDED, (batch, 1), device=DEVICE, generator=source)
    noise = noises[index, (start + torch.arange(LENGTH, device=DEVICE)) % RECORDED]
    return noise / noise.std(1, keepdim=True).clamp(min=1e-6)


def filtered(samples, response):
    return torch.fft.irfft(torch.fft.rfft(samples, SIZE) * response, SIZE)[:, :LENGTH]


def spoilt(samples, noises):
    """The same with a room, colour, narrow band, noise and another level; and the dB of each."""
    batch = len(samples)
    time_ = torch.arange(8000, device=DEVICE) / RATE
    hertz = torch.fft.rfftfreq(SIZE, 1 / RATE, device=DEVICE)
    echo = torch.randn(batch, 8000, device=DEVICE) * (time_ > 0.001)
    echo = echo * torch.exp(-6.9 * time_ / between(0.08, 0.5, batch, 1))
    echo = echo * between(0.01, 0.12, batch, 1)
    echo[:, 0] = 1
    one = torch.ones(1, dtype=torch.cfloat, device=DEVICE)
    room = torch.where(chosen(0.3, batch, 1), torch.fft.rfft(echo, SIZE), one)
    knots = torch.cumsum(torch.randn(batch, 9, device=DEVICE) * 0.35, 1)
    knots = (knots - knots.mean(1, keepdim=True))[:, None]
    colour = F.interpolate(knots, size=len(hertz), mode="linear", align_corners=True)[:, 0]
    colour = torch.where(chosen(0.5, batch, 1), colour, torch.zeros_like(colour)).exp()
    wide = torch.full((batch, 1), 9000.0, device=DEVICE)
    cut = torch.where(chosen(0.15, batch, 1), between(3300, 4000, batch, 1), wide)
    band = torch.sigmoid((cut - hertz) / 60)
    heard = filtered(samples, room * colour * band)
    level = between(LOWEST, HIGHEST, batch)
    level = torch.where(chosen(CLEAN_SHARE, batch), torch.full_like(level, CLEAN), level)
    second = chosen(0.25, batch, 1) * between(0.2, 1, batch, 1)
    noise = any_noise(noises, batch) + second * any_noise(noises, batch)
    noise = noise / noise.std(1, keepdim=True).clamp(min=1e-6)
    noise = torch.where(chosen(0.5, batch, 1), filtered(noise, band), noise)
    heard = heard + noise * (active(heard)[0] * 10 ** (-level / 20))[:, None]
    heard = torch.clamp(heard * 10 ** (between(-22, 4, batch, 1) / 20), -32768, 32767)
    return heard + torch.randn_like(heard), level


def losses(student, teacher):
    """Chain outputs are no posteriors: squared error without the mean, more where likely; KL."""
    likely = 0.75 * (1.5 * teacher).softmax(2) + 0.25 / teacher.shape[2]
    apart = student - teacher
    apart = apart - (likely * apart).sum(2, keepdim=True)
    told = teacher.softmax(2) * (teacher.log_softmax(2) - student.log_softmax(2))
    return (likely * apart * apart).sum(2), told.sum(2)


def parity(model, packed):
    with torch.no_grad():
        features = model.features(numbers(packed["ref|x"])[None])
        vector = numbers(packed["ref|v"])
        vectors = vector[None, None].expand(1, features.shape[1], 30)
        outputs = model.forward(model.weights, features, vectors)[0]
        none = torch.zeros(1, 1, dtype=torch.long, device=DEVICE)
        ours = model.vectors(features, torch.ones(1, features.shape[1], device=DEVICE), none)
        apart = [
            (features[0] - numbers(packed["ref|f"])).abs().max(),
            (outputs - numbers(packed["ref|y"])).abs().max(),
            (ours[0, -1] - vector).abs().max(),
        ]
    print("largest difference to reference.py: features %.4f, outputs %.4f, i-vector %.4f" % tuple(apart))
    if max(apart) > 0.02:
        raise ValueError("not the same network")


def main(folder, steps, result, pool=6000):
    torch.manual_seed(1)
    random.seed(1)
    packed = np.load(os.path.join(folder, "net.npz"))
    model, sounds = Model(packed), Sounds(folder)
    torch.backends.cuda.matmul.allow_tf32 = False
    parity(model, packed)
    torch.backends.cuda.matmul.allow_tf32 = True
    training = sounds.pool("training", pool, LENGTH + SLACK)
    stopping = sounds.pool("stopping", 96, LENGTH).float()
    noises = sounds.noises(np.random.default_rng(1))
    old = model.weights
    keys = [
        k for k in old if k.split("|")[0] in LAYERS and k.split("|")[1][0] == "<" and old[k].numel()
    ]
    new = {**old, **{k: old[k].clone().requires_grad_() for k in keys}}
    average = {k: old[k].clone() for k in keys}
    optimiser = torch.optim.Adam([new[k] for k in keys], lr=PEAK_RATE)
    torch.manual_seed(2)

    def taught(samples, lag):
        dithered = samples + torch.randn_like(samples)
        features = model.features(dithered)
        return model.forward(old, features, model.vectors(features, speech_weights(samples), lag))

    def watched():
        """The losses on speakers kept apart from the training."""
        lag = torch.ones(len(stopping), 1, dtype=torch.long, device=DEVICE)
        shown = []
        with torch.no_grad():
            teacher, weights = taught(stopping, lag), speech_weights(stopping)
            for level in (CLEAN, 20, 10, 5, 0):
                source = torch.Generator(device=DEVICE).manual_seed(int(level) + 100)
                noise = any_noise(noises, len(stopping), source)
                heard = stopping + noise * (active(stopping)[0] * 10 ** (-level / 20))[:, None]
                features = model.features(heard + torch.randn_like(heard))
                vectors = model.vectors(features, weights, lag)
                squared, told = losses(model.forward({**old, **average}, features, vectors), teacher)
                shown.append(f"{level:.0f} dB {squared.mean():.3f} {told.mean():.3f}")
        return ", ".join(shown)

    begun = time.time()
    print("kept apart before:", watched(), flush=True)
    for step in range(steps):
        for group in optimiser.param_groups:
            warm = min(1, (step + 1) / 100)
            group["lr"] = PEAK_RATE * warm * (0.5 + 0.5 * math.cos(math.pi * step / steps))
        index = torch.randint(len(training), (BATCH, 1), device=DEVICE)
        start = torch.randint(SLACK, (BATCH, 1), device=DEVICE)
        samples = training[index, start + torch.arange(LENGTH, device=DEVICE)].float()
        with torch.no_grad():
            lag = torch.randint(LATEST, (BATCH, 1), device=DEVICE)
            teacher = taught(samples, lag)
            heard, level = spoilt(samples, noises)
            features, weights = model.features(heard), speech_weights(samples)
            weights = torch.where(chosen(0.2, BATCH, 1), torch.ones_like(weights), weights)
            vectors = model.vectors(features, weights, lag)
        squared, told = losses(model.forward(new, features, vectors), teacher)
        heavy = torch.where(level > 50, CLEAN_WEIGHT, 1.0)[:, None]
        loss = (heavy * (squared + told)).mean() / heavy.mean()
        optimiser.zero_grad()
        loss.backward()
        torch.nn.utils.clip_grad_norm_([new[k] for k in keys], 5.0)
        optimiser.step()
        kept = min(0.998, (1 + step) / (10 + step))
        with torch.no_grad():
            torch._foreach_lerp_(
                [average[k] for k in keys], [new[k].detach() for k in keys], 1 - kept
            )
        if (step + 1) % 400 == 0 or step + 1 == steps:
            print(f"step {step + 1}, {time.time() - begun:.0f} s, kept apart: {watched()}", flush=True)
    np.savez(result, **{k: average[k].cpu().numpy() for k in keys})


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[2]), sys.argv[3], *map(int, sys.argv[4:5]))
