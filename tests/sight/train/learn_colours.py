#!/usr/bin/env python3
"""Learns base and tracer from what dump_wires sees, and writes core/sight/colour_nets.inc.

usage: learn_colours.py --dump PATH/dump_wires --set DIR [--out FILE]

Two sets of small networks: one names the colour of a group of pixels, one says whether the smaller group is a tracer. The
light of every sample is varied, so that colours are learned and not the lamps of the set. Every third scene is held back and only reported.
Needs python3-sklearn and python3-numpy.
"""
import argparse, json, math, pathlib, random, subprocess, warnings
import numpy as np
from sklearn.neural_network import MLPClassifier
from learn_segments import held, scene_of

CODES = "BK BN RD OG YE GN BU VT GY WH PK TQ LBU LGN".split()
LUM = np.array([0.2126, 0.7152, 0.0722])


def places(image, dice, jitters):
    """(x, y, wire, tracer fraction near) at taps, and beside them as a thumb would land"""
    for wire in image["wires"]:
        for (x, y), seen in zip(wire["suggested_taps"], wire["tap_tracer_fraction"]):
            yield x, y, wire, seen
            for _ in range(jitters):
                far, turn = wire["diameter_px"] * dice.uniform(0, 0.5), dice.uniform(0, 2 * math.pi)
                yield x + far * math.cos(turn), y + far * math.sin(turn), wire, seen


def gather(a, images):
    dice = random.Random(3)
    asked = [(i, *p) for i in images for p in places(i, dice, a.jitters)]
    lines = []
    for i, x, y, _, _ in asked:
        c = i.get("reference_card") or {"x": 0, "y": 0, "w": 0, "h": 0, "reflectance": 1}
        lines.append(f"{a.set / i['file']} {c['x']} {c['y']} {c['w']} {c['h']} {c['reflectance']} {x:.1f} {y:.1f}\n")
    out = subprocess.run([a.dump], input="".join(lines), capture_output=True, text=True, check=True).stdout.splitlines()
    rows = []
    for (image, x, y, wire, seen), line in zip(asked, out):
        v = [float(w) for w in line.split()]
        if v[0] == 0:
            continue
        off = min(math.hypot(v[1] - px, v[2] - py) for px, py in wire["visible_polyline"]) / wire["diameter_px"]
        rows.append((scene_of(image), wire["base"], wire["tracer"], seen, off, v))
    return rows


def log_light(c):
    return np.log(np.maximum(c, 0) + 0.004)


def luminance(c):
    return c @ LUM


def colour_inputs(v, which, gain):
    """as colourInputsOf() in core/sight/summary.cpp, under a light changed by 'gain' (R, G, B)"""
    c = v[:, 8:11] * gain if which else v[:, 5:8] * gain
    white = np.where(v[:, 25:26] > 0.5, v[:, 26:29] * gain, v[:, 16:19] * gain * 1.15)
    red, blue = (log_light(c[:, k]) - log_light(c[:, 1]) for k in (0, 2))
    light = log_light(luminance(c))
    middle = log_light(v[:, 23] * luminance(gain))
    return np.stack([red - (log_light(white[:, 0]) - log_light(white[:, 1])), blue - (log_light(white[:, 2]) - log_light(white[:, 1])),
                     light - log_light(luminance(white)), red, blue, light - log_light(np.ones(1)), light - middle], 1)


def structure_inputs(v, pa, pb):
    """as structureInputsOf() in core/sight/summary.cpp"""
    a, b = v[:, 5:8], v[:, 8:11]
    red = (log_light(a[:, 0]) - log_light(a[:, 1])) - (log_light(b[:, 0]) - log_light(b[:, 1]))
    blue = (log_light(a[:, 2]) - log_light(a[:, 1])) - (log_light(b[:, 2]) - log_light(b[:, 1]))
    neutral = [CODES.index(c) for c in ("BK", "GY", "WH")]
    entropy = lambda p: -(p * np.log(p + 1e-6)).sum(1)
    share, rows, rim, spread, clipped = v[:, 11:16].T
    return np.column_stack([share, rows, rim, spread, log_light(luminance(b)) - log_light(luminance(a)), clipped, np.hypot(red, blue), red, blue,
                            log_light(luminance(a)) - log_light(np.ones(1)), np.log((pa * pb).sum(1) + 1e-4), entropy(pa), entropy(pb),
                            pa[:, neutral], pb[:, neutral], v[:, 4]])


class Nets:
    def __init__(self, x, y, width, alpha, epochs, classes, seeds=(0, 1, 2)):
        warnings.filterwarnings("ignore")
        self.mean, self.scale, self.classes = x.mean(0), x.std(0) + 1e-6, classes
        self.nets = [MLPClassifier((width,), alpha=alpha, learning_rate_init=0.004, max_iter=epochs, batch_size=256,
                                   random_state=s).fit((x - self.mean) / self.scale, y) for s in seeds]

    def __call__(self, x):
        out = np.zeros((len(x), self.classes))
        for n in self.nets:
            p = n.predict_proba((x - self.mean) / self.scale)
            for k, c in enumerate(n.classes_):
                out[:, int(c)] += p[:, k] / len(self.nets)
        return out


def lights(n, times, dice):
    yield np.ones((n, 3)), False
    for _ in range(times):
        yield np.exp(dice.normal(0, [0.22, 0.08, 0.22], (n, 3)) + dice.normal(0, 0.25, (n, 1))), True


def learn_colour(rows, v, use, dice, times=5):
    """the larger group is the base where little tracer is near; the other one is the tracer where some is"""
    base = np.array([CODES.index(r[1]) for r in rows])
    tracer = np.array([-1 if r[2] is None else CODES.index(r[2]) for r in rows])
    seen = np.array([r[3] for r in rows])
    xs, ys = [], []
    for which, mask, label in ((0, use & ((tracer < 0) | (seen < 0.3)), base), (1, use & (tracer >= 0) & (seen > 0.1) & (seen < 0.4), tracer)):
        for gain, changed in lights(mask.sum(), times, dice):
            w = v[mask].copy()
            if changed:
                w[dice.random(len(w)) < 0.4, 25] = 0
            xs.append(colour_inputs(w, which, gain))
            ys.append(label[mask])
    return Nets(np.concatenate(xs), np.concatenate(ys), 24, 0.3, 25, 14)


def learn_structure(rows, v, use, pa, pb):
    """pa, pb: answers of a colour judge that did not learn from these scenes"""
    base = np.array([CODES.index(r[1]) for r in rows])
    tracer = np.array([-1 if r[2] is None else CODES.index(r[2]) for r in rows])
    seen = np.array([r[3] for r in rows])
    n, t = np.arange(len(rows)), np.clip(tracer, 0, 13)
    label = np.where((tracer < 0) | (seen < 0.05), 0, np.where(pa[n, base] * pb[n, t] >= pb[n, base] * pa[n, t], 1, 2))
    mask = use & ((tracer < 0) | (seen < 0.04) | (seen > 0.1))
    return Nets(structure_inputs(v, pa, pb)[mask], label[mask], 16, 0.5, 25, 3)


def joint(s, pa, pb):
    j = np.zeros((len(s), 14, 15))
    j[:, :, 14] += s[:, [0]] * pa
    j[:, :, :14] += s[:, 1][:, None, None] * pa[:, :, None] * pb[:, None, :] + s[:, 2][:, None, None] * pb[:, :, None] * pa[:, None, :]
    d = np.arange(14)
    j[:, d, 14] += j[:, d, d]
    j[:, d, d] = 0
    return j


def right(j, rows):
    flat = j.reshape(len(j), -1)
    best = flat.argmax(1)
    ok = []
    for k, (scene, base, tracer, seen, off, v) in zip(best, rows):
        b, t = divmod(int(k), 15)
        t = None if t == 14 else CODES[t]
        ok.append(CODES[b] == base and (t == tracer or (t is None and seen < 0.12)))
    return np.array(ok), flat.max(1)


def text(values):
    return ", ".join(f"{v:.5g}" + ("F" if any(c in f"{v:.5g}" for c in ".e") else ".0F") for v in values)


def write(path, **judges):
    parts = ["// Written by tests/sight/train/learn_colours.py; learn again after a change of the inputs."]
    for name, nets in judges.items():
        flat = []
        for n in nets.nets:
            assert list(n.classes_) == list(range(nets.classes))
            flat += [n.coefs_[0].T.ravel(), n.coefs_[1].T.ravel(), n.intercepts_[0], n.intercepts_[1]]
        flat = np.concatenate(flat)
        parts += [f"constexpr std::array<float, {len(nets.mean)}> {name}Mean{{{text(nets.mean)}}};",
                  f"constexpr std::array<float, {len(nets.scale)}> {name}Scale{{{text(nets.scale)}}};",
                  f"constexpr std::size_t {name}Nets = {len(nets.nets)};",
                  f"constexpr std::size_t {name}Hidden = {nets.nets[0].coefs_[0].shape[1]};",
                  f"constexpr std::array<float, {len(flat)}> {name}Weights{{\n{text(flat)}}};"]
    pathlib.Path(path).write_text("\n".join(parts) + "\n")


def main():
    ap = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    ap.add_argument("--dump", required=True)
    ap.add_argument("--set", required=True, type=pathlib.Path)
    ap.add_argument("--jitters", type=int, default=3)
    ap.add_argument("--out")
    a = ap.parse_args()
    images = json.loads((a.set / "truth.json").read_text())
    rows = gather(a, images)
    out = held(images)
    v = np.array([r[5] for r in rows])
    scenes = np.array([r[0] for r in rows])
    kept = np.isin(scenes, sorted(out))
    found = np.array([r[4] for r in rows]) < 0.5
    print(f"{len(rows)} places; the right wire was found at {found.mean():.3f} (held {found[kept].mean():.3f})")
    dice = np.random.default_rng(1)
    one = np.ones((len(v), 3))
    colour = learn_colour(rows, v, found & ~kept, dice)
    half = np.isin(scenes, sorted(set(scenes[~kept]))[::2])
    first, second = (learn_colour(rows, v, found & ~kept & m, dice) for m in (half, ~half))
    unseen = [np.where(half[:, None], second(colour_inputs(v, w, one)), first(colour_inputs(v, w, one))) for w in (0, 1)]
    structure = learn_structure(rows, v, found & ~kept, *unseen)
    pa, pb = (colour(colour_inputs(v, w, one)) for w in (0, 1))
    j = joint(structure(structure_inputs(v, pa, pb)), pa, pb)
    for name, part in (("tune", ~kept), ("held", kept), ("held, found", kept & found)):
        some = [r for r, p in zip(rows, part) if p]
        ok, p = right(j[part], some)
        b = np.array([CODES[int(k)] == r[1] for k, r in zip(j[part].sum(2).argmax(1), some)])
        print(f"{name}: base {b.mean():.3f} exact {ok.mean():.3f}; above 0.9: {np.mean(p > 0.9):.2f} of which right "
              f"{ok[p > 0.9].mean():.4f}; above 0.97: {np.mean(p > 0.97):.2f} of which right {ok[p > 0.97].mean():.4f}")
    if a.out:
        write(a.out, colour=colour, structure=structure)


if __name__ == "__main__":
    main()
