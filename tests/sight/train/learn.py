"""Learns the reader's networks from made scenes and from photos with truth, and writes them as PyTorch's.

usage: learn.py --photos DIR --held FILE [--onwards nets.pt [--keep-finder]] [--out DIR] [--minutes 8] [--seed 1]

--held names a file with the names of the photos that are kept back: they are only scored. Every network is trained by a
process of its own, other processes draw the scenes and cut the photos; they share the graphics processors there are.
Needs PyTorch, NumPy, SciPy and Pillow; ship.py makes ONNX of the result.
"""
import argparse
import collections
import pathlib
import time

import numpy as np
import torch
import torch.multiprocessing as mp

import clutter
import cutting
import samples
from banks import columns_of, strip_row
from makers import cutter, maker
from networks import Finder, Judge, joint
from trainers import state_of, trainer


def score_strips(judges, truth, device):
    """base, exact and calibration on the taps of the photos kept back, their centre lines given"""
    rng = np.random.default_rng(0)
    rows = [s for i in range(len(truth.rgb)) for s in truth.strips(rng, i, loose=False, taps_only=True)]
    part, small, base, tracer, level, white = (torch.from_numpy(c).to(device) for c in columns_of(map(strip_row, rows)))
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
    wrong = [f"{samples.scenes.CODES[base[i]]}{int(tracer[i])}>{samples.scenes.CODES[b[i]]}{int(t[i])}:{float(top[i]):.2f}" for i in torch.nonzero(~good).flatten().tolist()]
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


def score_made(judges, finder, device, batches=16):
    """as score_followed, on made scenes that were not learned from; and which base colours are most often exchanged"""
    n = base_right = right = 0
    swaps = collections.Counter()
    luck = np.random.default_rng(2**41)
    clutter.SHEETS.clear()  # else other pictures would be drawn the second time
    for k in range(batches):
        shapes = samples.scenes.Shapes(luck, 24 if device != "cpu" else 2, device) if k % 2 == 0 else shapes
        _, strips = cutting.from_scenes(2**40 + k, shapes, finder, crops_each=0)
        if strips is None:
            continue
        part, small, base, tracer, level, white = strips
        with torch.no_grad():
            p = sum(joint(j(part.float() / 255, small.float() / 255, white)).exp() for j in judges)
        at = p.flatten(1).argmax(1)
        said = at // 15
        n += len(base)
        base_right += int((said == base).sum())
        right += int(((said == base) & ((at % 15 == tracer) | ((at % 15 == 14) & (level < 2)))).sum())
        swaps.update(f"{samples.scenes.CODES[a]}>{samples.scenes.CODES[b]}" for a, b in zip(base.tolist(), said.tolist()) if a != b)
    return f"{n} strips: base {base_right / max(1, n):.4f} exact {right / max(1, n):.4f} {' '.join(f'{k}:{v}' for k, v in swaps.most_common(14))}"


def arguments():
    ap = argparse.ArgumentParser()
    ap.add_argument("--photos", required=True)
    ap.add_argument("--held", required=True)
    ap.add_argument("--out", default="nets")
    ap.add_argument("--minutes", type=float, default=8)
    ap.add_argument("--cutters", type=int, default=8, help="processes that cut from photos")
    ap.add_argument("--makers", type=int, default=3, help="processes that draw scenes, on each device that trains nothing")
    ap.add_argument("--seed", type=int, default=1)
    ap.add_argument("--judges", type=int, default=3)
    ap.add_argument("--batch", type=int, default=80, help="crops in a step of the finder")
    ap.add_argument("--strips", type=int, default=400, help="strips in a step of a judge")
    ap.add_argument("--scenes", type=int, default=24, help="drawn at once")
    ap.add_argument("--rate", type=float, default=2e-3)
    ap.add_argument("--photo-part", type=float, default=0.3, help="share of each batch that comes from photos")
    ap.add_argument("--onwards", help="nets.pt of a former run, to go on from")
    ap.add_argument("--keep-finder", action="store_true", help="leave the finder of --onwards as it is and learn only the judges")
    a = ap.parse_args()
    if a.keep_finder and not a.onwards:
        ap.error("--keep-finder needs --onwards: the file with the finder to keep")
    return a


def main():
    a = arguments()
    held = set(pathlib.Path(a.held).read_text().split())
    devices = [f"cuda:{i}" for i in range(torch.cuda.device_count())] or ["cpu"]
    nets = 1 + a.judges
    learning = range(1 if a.keep_finder else 0, nets)
    states = torch.load(a.onwards, map_location="cpu") if a.onwards else [None] * nets
    eye_state = {k: v.share_memory_() for k, v in (states[0] or state_of(Finder())).items()}
    stop, go, results, made = mp.Event(), mp.Event(), mp.Queue(), mp.Value("l", 0)
    channels = [mp.Queue(maxsize=24) if i in learning else None for i in range(nets)]
    work = [mp.Process(target=trainer, args=(i, devices[i % len(devices)], a, states[i], eye_state, channels[i], results, stop, go)) for i in learning]
    drawing = devices[nets:] or devices
    for i in range(a.makers * len(drawing)):
        work.append(mp.Process(target=maker, args=(a.seed * 100 + i, drawing[i % len(drawing)], a.scenes, a.photos, held, eye_state, channels[0], channels[1:], stop, made)))
    for i in range(a.cutters):
        work.append(mp.Process(target=cutter, args=(a.seed * 100 + 50 + i, a.photos, held, (i % 4, 4), channels[0], channels[1:], stop)))
    for p in work:
        p.daemon = True
        p.start()
    kept = samples.Truth(a.photos, lambda f: f in held)
    if missing := held - {t["file"] for t in kept.images}:
        raise SystemExit(f"--held names photos that are not in {a.photos}: {' '.join(sorted(missing))}")
    kept_album = cutting.Album(kept, devices[0])
    started = time.time()
    go.wait()
    print(f"first step after {time.time() - started:.0f} s, {len(drawing)} of {len(devices)} devices draw", flush=True)
    got = dict(results.get() for _ in learning)
    print(f"{made.value} scenes", flush=True)
    stop.set()
    finder, *judges = ((Finder() if i == 0 else Judge()).to(devices[0]).eval() for i in range(nets))
    for i, net in enumerate([finder, *judges]):
        net.load_state_dict({k: torch.from_numpy(np.asarray(v)) for k, v in got[i].items()} if i in got else states[i])
    out = pathlib.Path(a.out)
    out.mkdir(parents=True, exist_ok=True)
    torch.save([state_of(n) for n in (finder, *judges)], out / "nets.pt")
    for name, those in (("made, before:", states[1:]), ("made, now:", None)):
        if those is None or those[0]:
            judging = judges if those is None else [Judge().to(devices[0]).eval() for _ in those]
            for judge, state in zip(judging, those or []):
                judge.load_state_dict(state)
            print(name, score_made(judging, finder, devices[0]), flush=True)
    line, wrong = score_strips(judges, kept, devices[0])
    print("held back:", line, "|", score_followed(judges, finder, kept_album, devices[0]))
    print("truth>answer (base, tracer; 14 = none), p:", " ".join(wrong[:60]))
    for p in work:
        p.kill()


if __name__ == "__main__":
    mp.set_start_method("spawn")
    main()
