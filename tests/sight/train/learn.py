"""Learns the reader's networks from made scenes and from photos with truth, and writes them as ONNX.

usage: learn.py --photos DIR --held FILE [--out DIR] [--minutes 8] [--workers 14] [--seed 1]

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

import samples
from networks import Finder, Judge, joint


def worker(seed, out, photos, held, part):
    np.seterr(all="ignore")
    torch.set_num_threads(1)
    rng = np.random.default_rng(seed)
    truth = samples.Truth(photos, lambda f: f not in held, part)
    step = seed * 1000000
    while True:
        crops, strips, real_crops, real_strips = [], [], [], []
        for _ in range(6):
            c, s = samples.from_scene(step)
            step += 1
            crops += c
            strips += s
        for _ in range(3):
            real_crops.append(truth.crop(rng, int(rng.integers(len(truth.rgb)))))
        got = truth.strips(rng, int(rng.integers(len(truth.rgb))))
        real_strips = [got[i] for i in rng.permutation(len(got))[:60]]
        out.put((crops, strips, real_crops, real_strips))


class Bank:
    """the newest samples, on the device"""

    def __init__(self, size, shapes, device):
        self.size, self.count, self.at = size, 0, 0
        self.arrays = [torch.zeros((size, *s), dtype=t, device=device) for s, t in shapes]

    def add(self, columns):
        if not columns:
            return
        n = len(columns[0])
        at = (torch.arange(self.at, self.at + n) % self.size).to(self.arrays[0].device)
        for array, column in zip(self.arrays, columns):
            array[at] = torch.from_numpy(column).to(array.device, array.dtype)
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


def main():
    ap = argparse.ArgumentParser()
    ap.add_argument("--photos", required=True)
    ap.add_argument("--held", required=True)
    ap.add_argument("--out", default="nets")
    ap.add_argument("--minutes", type=float, default=8)
    ap.add_argument("--workers", type=int, default=14)
    ap.add_argument("--seed", type=int, default=1)
    ap.add_argument("--judges", type=int, default=3)
    ap.add_argument("--batch", type=int, default=48)
    a = ap.parse_args()
    device = "cuda" if torch.cuda.is_available() else "cpu"
    held = set(pathlib.Path(a.held).read_text().split())
    made = mp.Queue(maxsize=40)
    for i in range(a.workers):
        mp.Process(target=worker, args=(a.seed * 100 + i + 1, made, a.photos, held, (i % 5, 5)), daemon=True).start()
    ready = queue.Queue(maxsize=60)

    def unpack():
        while True:
            c, s, rc, rs = made.get()
            ready.put([columns_of(map(crop_row, c)), columns_of(map(strip_row, s)), columns_of(map(crop_row, rc)), columns_of(map(strip_row, rs))])

    threading.Thread(target=unpack, daemon=True).start()
    kept = samples.Truth(a.photos, lambda f: f in held)
    big = device == "cuda"
    crops, strips = banks(device, 6000 if big else 60, 150000 if big else 2000)
    real_crops, real_strips = banks(device, 2500 if big else 40, 60000 if big else 1000)
    finder = Finder().to(device)
    judges = [Judge().to(device) for _ in range(a.judges)]
    learned = [torch.optim.AdamW(m.parameters(), lr=2e-3, weight_decay=3e-2 if i else 1e-4) for i, m in enumerate([finder, *judges])]
    start, last, step, scenes_seen, since = time.time(), 0.0, 0, 0, 0
    total = a.minutes * 60
    sums = [0.0, 0.0]
    while (now := time.time() - start) < total:
        while True:
            try:
                rows = ready.get_nowait() if step else ready.get()
            except queue.Empty:
                break
            scenes_seen += len(rows[0][0])
            for bank, columns in zip((crops, strips, real_crops, real_strips), rows):
                bank.add(columns)
            if not step:
                break
        if crops.count < (200 if big else 20):
            continue
        f = now / total
        rate = 3e-3 * min(1, step / 300) * (0.5 * (1 + np.cos(np.pi * min(1, f)))) + 1e-6
        for o in learned:
            for g in o.param_groups:
                g["lr"] = rate
        n = a.batch
        finder.train()
        x1, l1 = crops.take(n // 2)
        x2, l2 = real_crops.take(n // 2)
        x, lab = vary_crops(torch.cat([x1, x2]), torch.cat([l1, l2]))
        with torch.autocast(device, dtype=torch.bfloat16, enabled=big):
            out = finder(x)
        loss = finder_loss(out.float(), lab)
        learned[0].zero_grad()
        loss.backward()
        learned[0].step()
        sums[0] += loss.detach()
        for j, judge in enumerate(judges):
            judge.train()
            m = 6 * n
            rows = [torch.cat(c) for c in zip(strips.take(m * 3 // 5), real_strips.take(m * 2 // 5))]
            px, small, white = vary_strips(rows[0], rows[1], rows[5], 1.2)
            loss = colour_loss(judge(px, small, white), rows[2], rows[3], rows[4])
            learned[1 + j].zero_grad()
            loss.backward()
            learned[1 + j].step()
        sums[1] += loss.detach()
        step += 1
        if now - last > 30:
            for judge in judges:
                judge.eval()
            line, _ = score_strips(judges, kept, device)
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
