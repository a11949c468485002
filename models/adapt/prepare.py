"""Splits the recordings by speaker and packs what is trained on.

    python3 prepare.py MODEL RECORDINGS PEOPLE FOLDER

MODEL: the unpacked model, with its network as published. RECORDINGS: the folder with index.tsv.
PEOPLE: a folder with more people, an4_transcripts.tsv (path, speaker, part, seconds, words; the
parts an4_train and an4_test) and gsc_train/SPEAKER/WORD_NUMBER.wav. FOLDER gets sound.flac (all the
training sound in a row), index.json (where each recording lies in it) and net.npz (the network,
the i-vector extractor, and one clip with its results, to check train.py against). split.tsv is
written beside this file. Needs numpy, soundfile, and the programs espeak-ng, flite and sox.
"""

import collections
import json
import os
import random
import subprocess
import sys
import tempfile

import numpy as np
import soundfile

from reference import Extractor, Network, mfcc

DIGITS = "zero one two three four five six seven eight nine".split()
TEENS = "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split()
TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split()
PHRASES = [
    "step completed",
    "torque reached",
    "wrench clicked",
    "say again",
    "jack moved",
    "fitted hand tight",
    "rear right at ride height",
    "new hardware fitted",
    "confirmed",
    "cancel that",
    "where am i",
    "load confirmed",
    "left side at ride height",
    "bolt marked",
]
ESPEAK = ["en-us+" + v for v in "f1 f2 f3 m1 m2 m3 m5 m7".split()] + ["en-gb", "en-us-nyc", "en-029"]
FLITE = ["slt", "rms", "awb", "kal16"]
SEED = 20261129
PEOPLE_SECONDS = {"training": 18, "stopping": 10}
READER_SECONDS = {"training": 8, "stopping": 6}


def kind_of(file):
    return file.split("/")[0]


def speakers(rows):
    """The part of each speaker: measured, stopping or training.

    Measured are all speakers of whom the project's bench makes values: three or more digits.
    """
    counts = collections.Counter(s for f, w, s, _ in rows if kind_of(f) == "digits" and w in DIGITS)
    part = {speaker: "measured" for speaker, count in counts.items() if count >= 3}
    words = {s for f, _, s, _ in rows if kind_of(f) in ("digits", "words")}
    others = sorted(words - set(part))
    readers = sorted({s for f, _, s, _ in rows if kind_of(f) == "reading"})
    chance = random.Random(SEED)
    chance.shuffle(others)
    chance.shuffle(readers)
    for i, speaker in enumerate(others):
        part[speaker] = "stopping" if i < len(others) // 6 else "training"
    for i, speaker in enumerate(readers):
        part[speaker] = "measured" if i < 66 else "stopping" if i < 84 else "training"
    return part, chance


def split(rows):
    """[file, part] of every recording. Every second file of a kind of noise is for training."""
    part, chance = speakers(rows)
    noises = sorted(r[0] for r in rows if kind_of(r[0]) == "noise" and "allison" not in r[0])
    parts = []
    for file, _, speaker, _ in rows:
        kind = kind_of(file)
        if kind in ("digits", "words", "reading"):
            parts.append((file, part[speaker]))
        elif file in noises:
            alike = [n for n in noises if n.split("-")[:2] == file.split("-")[:2]]
            kept = file.startswith("noise/gsc") or alike.index(file) % 2 == 0
            parts.append((file, "measured" if kept else "training"))
        else:  # talk and narrow band digits are for measuring alone; number words are no noise
            parts.append((file, "unused" if kind == "noise" else "measured"))
    return parts, chance


def read(path):
    samples, rate = soundfile.read(path, dtype="int16")
    if rate != 16000:
        raise ValueError(f"{path}: {rate} samples a second")
    return samples if samples.ndim == 1 else samples[:, 0]


def synthetic(chance):
    """(speaker, samples) of made speakers that say numbers and phrases."""
    commands = [("espeak-ng", v) for v in ESPEAK] + [("flite", v) for v in FLITE]
    with tempfile.TemporaryDirectory() as folder:
        raw, wide = os.path.join(folder, "raw.wav"), os.path.join(folder, "wide.wav")
        for program, voice in commands:
            for _ in range(5):
                digits = " ".join([chance.choice(DIGITS) for _ in range(3)])
                form = chance.choice(["one hundred %s five", "two hundred and %s", "%s point five"])
                text = f"{digits}. {form % chance.choice(TENS)}. {chance.choice(PHRASES)}."
                if program == "flite":
                    command = [program, "-voice", voice, "-t", text, "-o", raw]
                else:
                    command = [program, "-v", voice, "-w", raw, text]
                subprocess.run(command, check=True, capture_output=True)
                convert = ["sox", "-D", raw, "-r", "16000", "-c", "1", "-b", "16", wide, "gain", "-3"]
                subprocess.run(convert, check=True, capture_output=True)
                yield f"{program} {voice}", read(wide)


def people(folder, chance):
    """(kind, speaker, part, samples) of more people.

    First those of the training part of AN4, numbers before names; who is in its other part is
    measured. Then single words.
    """
    by = {}
    with open(os.path.join(folder, "an4_transcripts.tsv")) as file:
        for line in list(file)[1:]:
            path, speaker, part, seconds, text = line.rstrip("\n").split("\t")
            if part == "an4_train":
                by.setdefault(speaker, []).append((path, text.lower().split()))
    names = sorted(by)
    chance.shuffle(names)
    number = {*DIGITS, *TENS, *TEENS, "oh", "hundred", "thousand", "and"}
    for i, name in enumerate(names):
        part = "stopping" if i < 8 else "training"
        clips = by[name]
        chance.shuffle(clips)
        clips.sort(key=lambda c: -(sum(w in number for w in c[1]) / len(c[1]) >= 0.5))
        left = 16000 * PEOPLE_SECONDS[part]
        for path, _ in clips:
            if left < 8000:
                break
            samples = read(os.path.join(folder, path))
            peak = np.abs(samples).max()
            samples = (samples * min(12.0, 12000 / max(1, peak))).astype("int16")[:left]
            left -= len(samples)
            yield "people", name, part, samples
    words = os.path.join(folder, "gsc_train")
    for i, name in enumerate(sorted(os.listdir(words))):
        files = sorted(os.listdir(os.path.join(words, name)))
        chance.shuffle(files)
        files.sort(key=lambda f: f.split("_")[0] not in DIGITS)
        for file in files[:8]:
            part = "stopping" if i % 8 == 0 else "training"
            yield "word", name, part, read(os.path.join(words, name, file))


def pack_model(model, clip):
    with open(os.path.join(model, "am", "final.mdl"), "rb") as file:
        network, extractor = Network(file.read()), Extractor(model)
    packed = {}
    for (name, token), value in network.parts.items():
        if "xent" in name:
            continue
        if token == "scale":
            packed[name + "|a"], packed[name + "|b"] = (v.astype("f4") for v in value)
        elif token == "<TimeOffsets>":
            packed[name + "|" + token] = np.array(value)
        else:
            packed[name + "|" + token] = value.astype("f4")
    for short, value in {
        "lda": extractor.lda,
        "gc": extractor.constants,
        "miv": extractor.means,
        "iv": extractor.inverse,
        "SM": extractor.weighted,
        "U": extractor.squares,
        "gm": extractor.mean,
    }.items():
        packed["iv|" + short] = value.astype("f4")
    packed["iv|off"] = np.array(extractor.offset)
    features = mfcc(clip)
    vector = extractor.vector(*extractor.statistics(features))
    outputs = network.forward(features, np.broadcast_to(vector, (len(features), len(vector))))
    packed["ref|x"] = clip
    packed["ref|f"], packed["ref|v"] = features.astype("f4"), vector.astype("f4")
    packed["ref|y"] = outputs[::3].astype("f2")
    return packed


def main(model, recordings, others, folder):
    with open(os.path.join(recordings, "index.tsv")) as file:
        rows = [line.rstrip("\n").split("\t") for line in file][1:]
    parts, chance = split(rows)
    here = os.path.dirname(os.path.abspath(__file__))
    with open(os.path.join(here, "split.tsv"), "w") as file:
        file.writelines(f"{name}\t{part}\n" for name, part in parts)
    who = {row[0]: row[2] for row in rows}
    sounds, index, used = [], [], collections.Counter()

    def add(kind, speaker, part, samples):
        index.append([kind, speaker, part, sum(map(len, sounds)), len(samples)])
        sounds.append(samples)

    for name, part in parts:
        kind, speaker = kind_of(name), who[name]
        if part not in ("training", "stopping"):
            continue
        samples = read(os.path.join(recordings, name))
        if kind == "reading":
            left = 16000 * READER_SECONDS[part] - used[speaker]
            if left < 16000:
                continue
            samples = samples[:left]
            used[speaker] += len(samples)
        add("word" if kind in ("digits", "words") else kind, speaker, part, samples)
    for kind, speaker, part, samples in people(others, chance):
        add(kind, speaker, part, samples)
    for speaker, samples in synthetic(chance):
        add("synthetic", speaker, "training", samples)
    sound = np.concatenate(sounds)
    os.makedirs(folder, exist_ok=True)
    soundfile.write(os.path.join(folder, "sound.flac"), sound, 16000, subtype="PCM_16")
    with open(os.path.join(folder, "index.json"), "w") as file:
        json.dump(index, file)
    at = index[0][3]
    np.savez_compressed(os.path.join(folder, "net.npz"), **pack_model(model, sound[at : at + 76800]))
    totals = collections.defaultdict(lambda: [0, 0, set()])
    for kind, speaker, part, _, length in index:
        total = totals[kind, part]
        total[0] += 1
        total[1] += length / 960000
        total[2].add(speaker)
    for (kind, part), (count, minutes, names) in totals.items():
        print(f"{part} {kind}: {count} recordings, {minutes:.1f} min, {len(names)} speakers")


if __name__ == "__main__":
    main(*sys.argv[1:5])
