#!/usr/bin/env python3
"""Learns what tells a wire from a gap, a stripe or a piece of background, and writes core/sight/segment_trees.inc.

usage: learn_segments.py --dump PATH/dump_segments --set DIR [--hold K] [--out FILE]

DIR holds photos and truth.json with centre lines. Every third scene (pairs kept together) is held back and only reported.
Needs python3-sklearn and python3-numpy.
"""
import argparse, json, math, pathlib, random, subprocess
import numpy as np
from sklearn.ensemble import GradientBoostingClassifier


def scene_of(image):
    return image.get("pair_id") or image["file"]


def held(images):
    names = sorted({scene_of(i) for i in images})
    return {n for k, n in enumerate(names) if k % 3 == 2}


def crossings(image, stroke):
    """where visible centre lines cross the stroke: (x, y, diameter, id)"""
    out = []
    for wire in image["wires"]:
        line = wire["visible_polyline"]
        for (ax, ay), (bx, by) in zip(line, line[1:]):
            if math.hypot(bx - ax, by - ay) > 3 * 15:
                continue
            for (cx, cy), (dx, dy) in zip(stroke, stroke[1:]):
                den = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx)
                if abs(den) < 1e-9:
                    continue
                t = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / den
                u = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / den
                if 0 <= t <= 1 and 0 <= u <= 1:
                    out.append((ax + t * (bx - ax), ay + t * (by - ay), wire["diameter_px"], wire["id"]))
    return out


def strokes_of(image, dice, extra):
    for s in image.get("sweeps", []):
        yield s["polyline"]
    if "pair_sweep" in image:
        yield image["pair_sweep"]["polyline"]
    for _ in range(extra):
        wire = dice.choice(image["wires"])
        line = wire["visible_polyline"]
        if len(line) < 4:
            continue
        k = dice.randrange(1, len(line) - 1)
        angle = math.atan2(line[k + 1][1] - line[k - 1][1], line[k + 1][0] - line[k - 1][0]) + math.pi / 2
        angle += dice.uniform(-0.6, 0.6)
        reach = wire["diameter_px"] * dice.uniform(2, 7)
        x, y = line[k]
        a, b = (x - reach * math.cos(angle), y - reach * math.sin(angle)), (x + reach * math.cos(angle), y + reach * math.sin(angle))
        if all(8 < p[0] < image["width"] - 8 and 8 < p[1] < image["height"] - 8 for p in (a, b)):
            yield [a, b]


def gather(a, images):
    dice = random.Random(5)
    strokes = [(i, s) for i in images for s in strokes_of(i, dice, a.extra)]
    text = "".join(f"{a.set / i['file']} {len(s)} " + " ".join(f"{x:.1f} {y:.1f}" for x, y in s) + "\n" for i, s in strokes)
    out = subprocess.run([a.dump], input=text, capture_output=True, text=True, check=True).stdout
    x, y, group, k = [], [], [], -1
    for line in out.splitlines():
        if line.startswith("stroke"):
            k += 1
            image, stroke = strokes[k]
            wires = crossings(image, stroke)
            continue
        v = [float(w) for w in line.split()]
        label, near = 0, False
        for wx, wy, d, _ in wires:
            off, ratio = math.hypot(v[0] - wx, v[1] - wy) / d, v[2] / d
            if off < 0.28 and 0.75 < ratio < 1.35:
                label = 1
            elif off < 0.4 and 0.6 < ratio < 1.6:
                near = True
        if label == 0 and near:
            continue
        x.append(v[4:-2]); y.append(label); group.append(scene_of(image))
    return np.array(x), np.array(y), np.array(group)


def number(value):
    text = f"{value:.5g}"
    return text + ("F" if any(c in text for c in ".e") else ".0F")


def write(model, path):
    rows, roots = [], []
    for stage in model.estimators_[:, 0]:
        t, base = stage.tree_, len(rows)
        roots.append(base)
        for n in range(t.node_count):
            leaf = t.children_left[n] < 0
            value = t.value[n][0][0] * model.learning_rate
            rows.append(f"{{{-1 if leaf else t.feature[n]}, {number(value if leaf else t.threshold[n])}, "
                        f"{0 if leaf else base + t.children_left[n]}, {0 if leaf else base + t.children_right[n]}}},")
    p = model.init_.class_prior_[1] if hasattr(model.init_, "class_prior_") else 0.1
    head = ("// Written by tests/sight/train/learn_segments.py; learn again after a change of the features.\n"
            f"constexpr float treesStart = {number(math.log(p / (1 - p)))};\n"
            f"constexpr std::array<std::uint16_t, {len(roots)}> treeRoots{{" + ", ".join(map(str, roots)) + "};\n"
            f"constexpr std::array<TreeNode, {len(rows)}> treeNodes{{{{\n")
    pathlib.Path(path).write_text(head + "\n".join(rows) + "\n}};\n")


def main():
    ap = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    ap.add_argument("--dump", required=True)
    ap.add_argument("--set", required=True, type=pathlib.Path)
    ap.add_argument("--extra", type=int, default=40)
    ap.add_argument("--out")
    a = ap.parse_args()
    images = json.loads((a.set / "truth.json").read_text())
    x, y, group = gather(a, images)
    out = np.isin(group, sorted(held(images)))
    print(f"{len(y)} segments, {y.sum()} wires, held back {out.sum()}")
    model = GradientBoostingClassifier(n_estimators=120, max_depth=3, learning_rate=0.12, subsample=0.4, random_state=1,
                                       min_samples_leaf=120, max_features=8)
    model.fit(x[~out], y[~out])
    for name, part in (("tune", ~out), ("held", out)):
        p = model.predict_proba(x[part])[:, 1]
        order = np.argsort(-p)
        hits = np.cumsum(y[part][order]); n = np.arange(1, len(p) + 1)
        print(name, "precision at recall 0.8/0.9/0.95:",
              [round(float((hits / n)[np.searchsorted(hits, r * y[part].sum())]), 3) for r in (0.8, 0.9, 0.95)])
    print("weights", [f"{i}:{w:.2f}" for i, w in sorted(enumerate(model.feature_importances_), key=lambda q: -q[1])[:12]])
    if a.out:
        write(model, a.out)


if __name__ == "__main__":
    main()
