"""Lets the speech synthesisers of Debian 12 say sentences: the sound that the ear's networks learn from.

usage: voices.py --grammar FILE --other FILE --out FILE.npz [--root DIR] [--workers 16] [--share 1.0]

--grammar has sentences of the grammar, --other has other text, one a line. The voices that the benchmark holds back
(flite rms, festival ked, espeak-ng en-gb-scotland, its variants m3 and f2) are never used here. --root is a folder to
chroot into where flite, espeak-ng and festival (with the voices kal and slt) are installed, if they are not here.
"""
import argparse
import concurrent.futures
import os
import pathlib
import random
import subprocess
import tempfile
import wave

import numpy as np
from scipy.signal import resample_poly

RATE = 16000
ACCENTS = ["en-gb", "en-us", "en-gb-x-rp", "en-gb-x-gbclan", "en-gb-x-gbcwmd", "en-029", "en-us-nyc"]
VARIANTS = ["", "+m1", "+m2", "+m4", "+m5", "+m6", "+m7", "+m8", "+f1", "+f4", "+f5", "+Alex", "+Andy", "+Annie", "+Denis",
            "+Diogo", "+Gene", "+Henrique", "+Hugo", "+Jacky", "+Lee", "+Marco", "+Mario", "+Michael", "+Mike", "+Storm",
            "+adam", "+anika", "+announcer", "+antonio", "+aunty", "+belinda", "+benjamin", "+boris", "+caleb", "+david",
            "+ed", "+edward", "+edward2", "+grandma", "+grandpa", "+gustave", "+iven", "+iven2", "+john", "+klatt",
            "+klatt2", "+klatt3", "+klatt4", "+linda", "+marcelo", "+max", "+michel", "+miguel", "+norbert", "+pablo",
            "+paul", "+pedro", "+quincy", "+rob", "+robert", "+sandro", "+shelby", "+steph", "+steph2", "+travis",
            "+victor", "+zac"]
FLITE = ["kal16", "awb", "slt"]
FESTIVAL = {"festival kal": "voice_kal_diphone", "festival slt": "voice_cmu_us_slt_arctic_hts"}


def read(path):
    try:
        with wave.open(str(path)) as sound:
            rate = sound.getframerate()
            data = np.frombuffer(sound.readframes(sound.getnframes()), "<i2").astype(np.float32)
    except (wave.Error, EOFError, FileNotFoundError):
        return None
    if len(data) < rate // 10:
        return None
    if rate != RATE:
        data = resample_poly(data, 320, rate // 50)
    loud = np.flatnonzero(np.abs(data) > 0.01 * np.abs(data).max())
    data = data[max(0, loud[0] - 800):loud[-1] + 1600]
    peak = np.abs(data).max()
    return (data * (20000 / peak)).astype(np.int16) if peak > 0 else None


def inside(root, command):
    where = ["chroot", root] if root else []
    subprocess.run(where + command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False, timeout=300)


def part(job):
    """says a list of (voice, text, number) and answers (number, samples)"""
    root, seed, tasks = job
    rng = random.Random(seed)
    said = []
    base = pathlib.Path(root or "/", "tmp")
    with tempfile.TemporaryDirectory(dir=base) as folder:
        seen = "/" + str(pathlib.Path(folder).relative_to(root)) if root else folder
        festival = {}
        for voice, text, number in tasks:
            name, wav = f"{folder}/{number}.wav", f"{seen}/{number}.wav"
            kind, which = voice.split(" ", 1)
            if kind == "flite":
                inside(root, ["/usr/bin/flite", "-voice", which, "--setf", f"duration_stretch={rng.uniform(0.8, 1.3):.2f}",
                              "-t", text, "-o", wav])
            elif kind == "espeak":
                inside(root, ["/usr/bin/espeak-ng", "-v", which, "-s", str(rng.randint(115, 195)), "-p",
                              str(rng.randint(25, 75)), "-w", wav, text])
            else:
                festival.setdefault(voice, []).append((text, wav, name, number))
                continue
            if (data := read(name)) is not None:
                said.append((number, data))
            pathlib.Path(name).unlink(missing_ok=True)
        for voice, lines in festival.items():
            script = [f"({FESTIVAL[voice]})"]
            for text, wav, _, _ in lines:
                script.append(f"(Parameter.set 'Duration_Stretch {rng.uniform(0.8, 1.3):.2f})")
                script.append(f'(utt.save.wave (utt.synth (Utterance Text "{text}")) "{wav}" \'riff)')
            pathlib.Path(folder, "say.scm").write_text("\n".join(script) + "\n")
            inside(root, ["/usr/bin/festival", "-b", f"{seen}/say.scm"])
            for _, _, name, number in lines:
                if (data := read(name)) is not None:
                    said.append((number, data))
                pathlib.Path(name).unlink(missing_ok=True)
    return said


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("--grammar", required=True)
    ask.add_argument("--other", required=True)
    ask.add_argument("--out", required=True)
    ask.add_argument("--root", default="")
    ask.add_argument("--workers", type=int, default=os.cpu_count())
    ask.add_argument("--share", type=float, default=1.0)
    options = ask.parse_args()
    rng = random.Random(5)
    grammar = pathlib.Path(options.grammar).read_text().split("\n")[:-1]
    other = pathlib.Path(options.other).read_text().split("\n")[:-1]
    tasks = []

    def give(count, voice):
        for _ in range(int(count * options.share)):
            text = rng.choice(grammar if rng.random() < 0.62 else other)
            tasks.append((voice(), text, len(tasks)))

    for name in FLITE:
        give(5000, lambda name=name: f"flite {name}")
    for name in FESTIVAL:
        give(3500, lambda name=name: name)
    give(20000, lambda: f"espeak {rng.choice(ACCENTS)}{rng.choice(VARIANTS)}")
    rng.shuffle(tasks)
    jobs = [(options.root, i, tasks[i:i + 120]) for i in range(0, len(tasks), 120)]
    sounds = {}
    with concurrent.futures.ProcessPoolExecutor(options.workers) as pool:
        for said in pool.map(part, jobs):
            sounds.update(said)
    tasks.sort(key=lambda task: task[2])
    kept = [task for task in tasks if task[2] in sounds]
    lengths = np.array([len(sounds[task[2]]) for task in kept])
    np.savez(options.out, samples=np.concatenate([sounds[task[2]] for task in kept]), lengths=lengths,
             voices=np.array([task[0] for task in kept]), texts=np.array([task[1] for task in kept]))
    print(f"{len(kept)} of {len(tasks)} said, {lengths.sum() / RATE / 3600:.1f} hours", flush=True)


if __name__ == "__main__":
    main()
