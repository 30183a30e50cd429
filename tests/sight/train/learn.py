"""Learns the reader's networks from made scenes and from photos with truth, and writes them as ONNX.

usage: learn.py --photos DIR --held FILE [--onwards nets.pt] [--out DIR] [--minutes 8] [--seed 1]

--held names a file with the names of the photos that are kept back: they are only scored. Needs PyTorch, NumPy,
SciPy and Pillow; a graphics processor makes it minutes instead of hours.
"""
import argparse
import multiprocessing as mp
import pathlib
import queue
import threading
import time

import numpy as np
import torch
from torch.nn import functional as F

import cutting
import samples
from networks import Finder, Judge, joint


def cutter(seed, out, photos, held, part):
    """cuts crops and strips from photos with truth"""
    torch.set_num_threads(1)
    rng = np.random.default_rng(seed)
    truth = samples.Truth(photos, lambda f: f not in held, part)
    while True:
        real_crops, real_strips = [], []
        for _ in range(3):
            real_crops.append(truth.crop(rng, int(rng.integers(len(truth.rgb)))))
        got = truth.strips(rng, int(rng.integers(len(truth.rgb))))
        real_strips = [got[i] for i in rng.permutation(len(got))[:60]]
        out.put((columns_of(map(crop_row, real_crops)), columns_of(map(strip_row, real_strips))))


class Bank:
    """the newest samples, on the device"""

    def __init__(self, size, shapes, device):
        self.size, self.count, self.at = size, 0, 0
        self.arrays = [torch.zeros((size, *s), dtype=t, device=device) for s, t in shapes]

    def add(self, columns):
        if columns is None or not len(columns) or not len(columns[0]):
            return
        n = len(columns[0])
        at = (torch.arange(self.at, self.at + n) % self.size).to(self.arrays[0].device)
        for array, column in zip(self.arrays, columns):
            array[at] = column.to(array.device, array.dtype)
        self.at = (self.at + n) % self.size
        self.count = min(self.size, self.count + n)

    def take(self, n):
        i = torch.randint(self.count, (n,), device=self.arrays[0].device)
        return [a[i] for a in self.arrays]


def strip_row(s):
    part, small, base, tracer, level, white = s
    return part, small.transpose(2, 0, 1), np.array(base), np.array(tracer if tracer >= 0 else 14), np.array(level), white


def crop_row(c):
    return c[0].transpose(2, 0, 1), c[1]


def columns_of(rows):
    return [np.stack(c) for c in zip(*rows)]


def banks(device, crops, strips):
    a = [((3, samples.CROP, samples.CROP), torch.uint8), ((7, samples.CROP // 2, samples.CROP // 2), torch.float16)]
    b = [((4, samples.ACROSS, samples.ALONG), torch.uint8), ((3, *samples.THUMB), torch.uint8), ((), torch.long), ((), torch.long),
         ((), torch.long), ((4,), torch.float32)]
    return Bank(crops, a, device), Bank(strips, b, device)


def to_linear(v):
    return torch.where(v <= 0.04045, v / 12.92, ((v + 0.055) / 1.055).clamp_min(0) ** 2.4)


def to_srgb(v):
    v = v.clamp(0, 1)
    return torch.where(v <= 0.0031308, v * 12.92, 1.055 * v.clamp_min(1e-6) ** (1 / 2.4) - 0.055)


def vary_strips(part, small, white, strength):
    """another light and exposure over strip and picture alike, mirrored at random"""
    n, dev = len(part), part.device
    x, s = part.float() / 255, small.float() / 255
    gain = torch.exp(torch.randn(n, 3, device=dev) * 0.10 * strength + torch.randn(n, 1, device=dev) * 0.2 * strength)
    g = gain[:, :, None, None]
    rgb = to_srgb(to_linear(x[:, :3]) * g)
    s = to_srgb(to_linear(s) * g)
    lg = gain.log()
    shift = torch.stack([lg[:, 0] - lg[:, 1], lg[:, 2] - lg[:, 1], lg[:, 1], torch.zeros(n, device=dev)], 1)
    white = white + shift * white[:, 3:]
    seen = x[:, 3:]
    rgb = (rgb + torch.randn_like(rgb) * 0.012 * torch.rand(n, 1, 1, 1, device=dev)) * seen
    x = torch.cat([rgb, seen], 1)
    if torch.rand(()) < 0.5:
        x = x.flip(2)
    if torch.rand(()) < 0.5:
        x = x.flip(3)
    return x, s, white


def colour_loss(logits, base, tracer, level):
    p = joint(logits)
    i = torch.arange(len(base), device=base.device)
    exact, plain = p[i, base, tracer], p[i, base, 14]
    want = torch.where(level == 2, exact, torch.where(level == 1, torch.logaddexp(exact, plain), plain))
    want = torch.where(tracer == 14, plain, want)
    return -want.clamp_min(-12).mean()


def vary_crops(rgb, lab):
    n, dev = len(rgb), rgb.device
    x = rgb.float() / 255
    v = to_linear(x)
    # Where wires are does not hang on their colours: any mixture of the channels will do.
    mix = torch.eye(3, device=dev)[None].repeat(n, 1, 1)
    wild = (torch.rand(n, 1, 1, device=dev) < 0.5).float()
    mix = mix + wild * torch.randn(n, 3, 3, device=dev) * 0.25
    v = torch.einsum("nij,njhw->nihw", mix, v) * torch.exp(torch.randn(n, 3, 1, 1, device=dev) * 0.25 + torch.randn(n, 1, 1, 1, device=dev) * 0.35)
    x = to_srgb(v)
    x = x + torch.randn_like(x) * 0.03 * torch.rand(n, 1, 1, 1, device=dev) ** 2
    lab = lab.float()
    if torch.rand(()) < 0.5:  # left and right
        x, lab = x.flip(3), lab.flip(3).clone()
        lab[:, 1] *= -1
        lab[:, 4] *= -1
    if torch.rand(()) < 0.5:  # rows and columns exchanged
        x, lab = x.transpose(2, 3), lab.transpose(2, 3).clone()
        lab[:, [1, 2]] = lab[:, [2, 1]]
        lab[:, 3] *= -1
    return x.clamp(0, 1), lab


def finder_loss(out, lab):
    on, valid = lab[:, 0], lab[:, 6]
    wire = F.binary_cross_entropy_with_logits(out[:, 0], on, reduction="none")
    here = on * valid
    n = here.sum() + 1  # 'valid' is a weight, 0 where nothing is known
    offset = (out[:, 1:3] - lab[:, 1:3]).abs().sum(1) / torch.exp(lab[:, 5]).clamp_min(0.25)
    turn = (out[:, 3:5] - lab[:, 3:5]).abs().sum(1)
    width = (out[:, 5] - lab[:, 5]).abs()
    return (wire * valid).sum() / (valid.sum() + 1) * 2 + ((offset + 0.5 * turn + width) * here).sum() / n


def score_strips(judges, truth, device):
    """base, exact and calibration on the taps of the photos kept back, their centre lines given"""
    rng = np.random.default_rng(0)
    rows = [s for i in range(len(truth.rgb)) for s in truth.strips(rng, i, loose=False, taps_only=True)]
    part, small, base, tracer, level, white = (torch.from_numpy(np.stack(c)).to(device) for c in zip(*map(strip_row, rows)))
    with torch.no_grad():
        ps = [joint(j(part.float() / 255, small.float() / 255, white)).exp() for j in judges]
    p = sum(ps) / len(ps)
    top, at = p.flatten(1).max(1)
    b, t = at // 15, at % 15
    good_base = b == base
    good = good_base & ((t == tracer) | ((t == 14) & (level < 2)))
    high = top > 0.98
    line = f"{len(rows)} strips: base {good_base.float().mean():.3f} exact {good.float().mean():.3f} mean p {top.mean():.3f}"
    line += f" over 0.98: {high.float().mean():.2f} of which wrong {(~good & high).sum()}"
    wrong = [(samples.scenes.CODES[base[i]], int(tracer[i]), samples.scenes.CODES[b[i]], int(t[i]), round(float(top[i]), 2)) for i in torch.nonzero(~good).flatten().tolist()]
    return line, wrong


def score_followed(judges, finder, album, device):
    """as score_strips, wires followed as the finder sees them"""
    luck = np.random.default_rng(5)
    n = right = 0
    for page in range(len(album.pages)):
        one = cutting.Album.__new__(cutting.Album)
        one.pages = [album.pages[page]]
        part, small, base, tracer, level, white = one.strips(luck, finder)
        with torch.no_grad():
            p = sum(joint(j(part.float() / 255, small.float() / 255, white)).exp() for j in judges)
        at = p.flatten(1).argmax(1)
        n += len(base)
        right += int(((at // 15 == base) & ((at % 15 == tracer) | ((at % 15 == 14) & (level < 2)))).sum())
    return f"followed: {n} exact {right / max(1, n):.3f}"


def main():
    ap = argparse.ArgumentParser()
    ap.add_argument("--photos", required=True)
    ap.add_argument("--held", required=True)
    ap.add_argument("--out", default="nets")
    ap.add_argument("--minutes", type=float, default=8)
    ap.add_argument("--workers", type=int, default=8, help="processes that cut from photos")
    ap.add_argument("--seed", type=int, default=1)
    ap.add_argument("--judges", type=int, default=3)
    ap.add_argument("--batch", type=int, default=48)
    ap.add_argument("--scenes", type=int, default=24, help="made at once")
    ap.add_argument("--every", type=int, default=4, help="steps between two makings")
    ap.add_argument("--strips", type=int, default=4, help="strips in a judge's batch for each crop in the finder's")
    ap.add_argument("--rate", type=float, default=3e-3)
    ap.add_argument("--photo-part", type=float, default=0.35, help="share of each batch that comes from photos")
    ap.add_argument("--onwards", help="nets.pt of a former run, to go on from")
    a = ap.parse_args()
    device = "cuda" if torch.cuda.is_available() else "cpu"
    held = set(pathlib.Path(a.held).read_text().split())
    cut = mp.Queue(maxsize=40)
    for i in range(a.workers):
        mp.Process(target=cutter, args=(a.seed * 100 + i + 1, cut, a.photos, held, (i % 4, 4)), daemon=True).start()
    ready = queue.Queue(maxsize=12)

    def unpack():
        while True:
            ready.put(cut.get())

    threading.Thread(target=unpack, daemon=True).start()
    kept = samples.Truth(a.photos, lambda f: f in held)
    big = device == "cuda"
    crops, strips = banks(device, 24000 if big else 60, 400000 if big else 2000)
    real_crops, real_strips = banks(device, 4000 if big else 40, 100000 if big else 1000)
    finder = Finder().to(device, memory_format=torch.channels_last)
    judges = [Judge().to(device, memory_format=torch.channels_last) for _ in range(a.judges)]
    if a.onwards:
        for net, state in zip([finder, *judges], torch.load(a.onwards, map_location=device)):
            net.load_state_dict(state)
    learned = [torch.optim.AdamW(m.parameters(), lr=2e-3, weight_decay=3e-2 if i else 1e-4) for i, m in enumerate([finder, *judges])]
    start, last, step, scenes_seen, since = time.time(), 0.0, 0, 0, 0
    total = a.minutes * 60
    sums = [0.0, 0.0]
    luck = np.random.default_rng(a.seed)
    album = cutting.Album(samples.Truth(a.photos, lambda f: f not in held), device)
    kept_album = cutting.Album(kept, device)
    while (now := time.time() - start) < total:
        for _ in range(3):  # what was cut from photos meanwhile
            try:
                rows = ready.get(timeout=None if not real_strips.count else 1e-3)
            except queue.Empty:
                break
            real_crops.add([torch.from_numpy(c) for c in rows[0]])
            real_strips.add([torch.from_numpy(c) for c in rows[1]])
        if step % a.every == 0 or crops.count < 200:
            # Judges must know wires as they will be followed: mostly as the finder sees them now.
            eye = finder.eval() if crops.count and luck.random() < 0.7 else None
            made = cutting.from_scenes(a.seed * 10000000 + scenes_seen, a.scenes, device, eye)
            if eye:
                for _ in range(3):
                    real_strips.add(album.strips(luck, eye))
            scenes_seen += a.scenes
            crops.add(made[0])
            strips.add(made[1])
            torch.manual_seed(a.seed + scenes_seen)
        f = now / total
        rate = a.rate * min(1, step / 300) * (0.5 * (1 + np.cos(np.pi * min(1, f)))) + 1e-6
        for o in learned:
            for g in o.param_groups:
                g["lr"] = rate
        n = a.batch
        finder.train()
        k = int(n * a.photo_part)
        x1, l1 = crops.take(n - k)
        x2, l2 = real_crops.take(k)
        x, lab = vary_crops(torch.cat([x1, x2]), torch.cat([l1, l2]))
        with torch.autocast(device, dtype=torch.bfloat16, enabled=big):
            out = finder(x.contiguous(memory_format=torch.channels_last))
        loss = finder_loss(out.float(), lab)
        learned[0].zero_grad()
        loss.backward()
        learned[0].step()
        sums[0] += loss.detach()
        for j, judge in enumerate(judges):
            judge.train()
            m = a.strips * n
            k = int(m * a.photo_part)
            rows = [torch.cat(c) for c in zip(strips.take(m - k), real_strips.take(k))]
            px, small, white = vary_strips(rows[0], rows[1], rows[5], 1.2)
            with torch.autocast(device, dtype=torch.bfloat16, enabled=big):
                told = judge(px.contiguous(memory_format=torch.channels_last), small, white)
            loss = colour_loss(told.float(), rows[2], rows[3], rows[4])
            learned[1 + j].zero_grad()
            loss.backward()
            learned[1 + j].step()
        sums[1] += loss.detach()
        step += 1
        if now - last > 30:
            for judge in judges:
                judge.eval()
            line, _ = score_strips(judges, kept, device)
            line += " | " + score_followed(judges, finder.eval(), kept_album, device)
            k = max(1, step - since)
            print(f"{now:.0f} s step {step} scenes {scenes_seen} strips {strips.count}/{real_strips.count} loss {sums[0]/k:.3f} {sums[1]/k:.3f} | {line}", flush=True)
            sums, last, since = [0.0, 0.0], now, step
    out = pathlib.Path(a.out)
    out.mkdir(parents=True, exist_ok=True)
    finder.eval().cpu()
    for judge in judges:
        judge.eval()
    line, wrong = score_strips(judges, kept, device)
    print("held back:", line)
    print("truth>answer (base, tracer; 14 = none), p:", " ".join(f"{a}{b}>{c}{d}:{p}" for a, b, c, d, p in wrong[:60]))
    torch.save([finder.state_dict()] + [j.cpu().state_dict() for j in judges], out / "nets.pt")


if __name__ == "__main__":
    mp.set_start_method("spawn")
    main()
