"""Cuts what the two networks learn from out of made scenes and of photos with truth.

A crop is a square of a picture with, at half its resolution, where wires are and where their centre lines lie.
A strip is one wire pulled straight: 'ACROSS' rows over 1.4 of its width, 'ALONG' columns of an eighth of its width.
core/sight cuts strips in the same way.
"""
import json
import math
import pathlib

import numpy as np
from PIL import Image
from scipy.ndimage import map_coordinates

import scenes

CROP = 320
ACROSS, ALONG = 20, 128
SPAN = 1.4  # widths
STEP = 1 / 8  # of a width
THUMB = (48, 64)


def thumb(rgb):
    """the whole picture, small: what tells the light"""
    image = Image.fromarray(rgb)
    return np.asarray(image.resize((THUMB[1], THUMB[0]), Image.BOX))


def strip_of(rgb, centre, width, visible):
    """rgb uint8 HxWx3; centre Nx2 (x, y) evenly a step apart, middle = anchor; visible N of bool"""
    d = np.gradient(centre, axis=0)
    d /= np.maximum(1e-6, np.hypot(d[:, 0], d[:, 1]))[:, None]
    offsets = (np.arange(ACROSS) + 0.5) / ACROSS - 0.5
    x = centre[None, :, 0] - d[None, :, 1] * offsets[:, None] * SPAN * width
    y = centre[None, :, 1] + d[None, :, 0] * offsets[:, None] * SPAN * width
    h, w = rgb.shape[:2]
    ok = (x > 0) & (y > 0) & (x < w - 1) & (y < h - 1) & visible[None]
    flat = [map_coordinates(rgb[..., c].astype(np.float32), [y - 0.5, x - 0.5], order=1, mode="nearest") for c in range(3)]
    out = np.stack(flat + [np.full(x.shape, 255.0)])
    out *= ok[None]
    return np.clip(out + 0.5, 0, 255).astype(np.uint8)


class Fields:
    """where wires are, as the finder tells it, but true"""

    def __init__(self, wire, dx, dy, tx, ty, half):
        self.wire, self.dx, self.dy, self.tx, self.ty, self.half = wire, dx, dy, tx, ty, half
        self.h, self.w = wire.shape

    def at(self, x, y):
        i, j = int(x), int(y)
        if x < 0 or y < 0 or i >= self.w or j >= self.h or self.wire[j, i] < 0:
            return None
        return i + .5 + self.dx[j, i], j + .5 + self.dy[j, i], self.tx[j, i], self.ty[j, i], 2 * self.half[j, i]


def one_way(fields, x, y, tx, ty, width):
    """as core/sight/follow.cpp goes: it may be led astray where wires cross at a small angle"""
    step, w, out = max(1.5, 0.25 * width), width, []
    for _ in range(int(0.5 * ALONG * STEP * width / step) + 1):
        ax, ay = x + tx * step, y + ty * step
        seen = fields.at(ax, ay)
        if seen is None or abs(math.log(seen[4] / w)) > 0.45:
            break
        aside = -(seen[0] - ax) * ty + (seen[1] - ay) * tx
        if abs(aside) > 0.35 * w + 0.5:
            break
        nx, ny = seen[2], seen[3]
        if nx * tx + ny * ty < 0:
            nx, ny = -nx, -ny
        if nx * tx + ny * ty < 0.8:
            break
        x, y = ax - ty * aside, ay + tx * aside
        tx, ty = tx + nx, ty + ny
        n = math.hypot(tx, ty)
        tx, ty = tx / n, ty / n
        w += 0.3 * (seen[4] - w)
        out.append((x, y))
    return out


def track(fields, x, y):
    """centre line through the wire at a place: evenly ALONG points, which of them were followed, its width"""
    seen = fields.at(x, y)
    if seen is None:
        return None
    centred = fields.at(seen[0], seen[1])
    if centred is not None and math.hypot(centred[0] - seen[0], centred[1] - seen[1]) < 0.3 * seen[4]:
        seen = centred
    cx, cy, tx, ty, width = seen
    back, forth = one_way(fields, cx, cy, -tx, -ty, width), one_way(fields, cx, cy, tx, ty, width)
    line = np.array(back[::-1] + [(cx, cy)] + forth)
    if len(line) < 2:
        return None
    for _ in range(2):
        if len(line) > 2:
            line[1:-1] = (line[:-2] + 2 * line[1:-1] + line[2:]) / 4
    s = np.concatenate([[0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))])
    u = s[len(back)] + (np.arange(ALONG) - ALONG / 2 + 0.5) * STEP * width
    return np.stack([np.interp(u, s, line[:, k]) for k in range(2)], 1), (u >= 0) & (u <= s[-1]), width


def loosen(rng, centre, width):
    """as wires are followed in use: not quite in the middle, not quite of the right width"""
    d = np.gradient(centre, axis=0)
    d /= np.maximum(1e-6, np.hypot(d[:, 0], d[:, 1]))[:, None]
    drift = rng.normal(0, 0.05) + np.interp(np.arange(ALONG), np.linspace(0, ALONG, 6), rng.normal(0, 0.04, 6))
    normal = np.stack([-d[:, 1], d[:, 0]], 1)
    narrow = 0.0
    if rng.random() < 0.2:  # taken for narrower, the tracer at its rim for background
        narrow = rng.uniform(0, 0.4)
        drift = drift + rng.choice([-1, 1]) * narrow / 2
    return centre + normal * (drift * width)[:, None], width * (1 - narrow) * math.exp(rng.normal(0.01, 0.07))


def cut_short(rng, visible):
    """the part around the middle without a gap; now and then less"""
    mid = ALONG // 2
    gone = np.flatnonzero(~visible)
    lo = gone[gone < mid].max(initial=-1) + 1
    hi = gone[gone >= mid].min(initial=ALONG)
    if rng.random() < 0.3:
        lo = max(lo, int(rng.integers(0, mid - 5)))
        hi = min(hi, int(rng.integers(mid + 5, ALONG)))
    out = np.zeros(ALONG, bool)
    out[lo:hi] = True
    return out


def half_labels(wire, dx, dy, tx, ty, half, valid):
    """7 x h/2 x w/2: wire, offset to the centre line / 8, double-angle direction, log half width, weight"""
    q = (slice(1, None, 2), slice(1, None, 2))
    on = (wire >= 0)[q]
    c2, s2 = (tx * tx - ty * ty)[q], (2 * tx * ty)[q]
    r = np.log(np.maximum(half[q], 0.5) / 8)
    return np.stack([on, dx[q] / 8, dy[q] / 8, c2, s2, r, valid[q]]).astype(np.float16)


def card_white(rgb, card):
    """log chroma and level of what a perfect white would have, and 1; zeros without a card"""
    if not card:
        return np.zeros(4, np.float32)
    c = rgb[int(card["y"]):int(math.ceil(card["y"] + card["h"])), int(card["x"]):int(math.ceil(card["x"] + card["w"]))] / 255.0
    v = np.where(c <= 0.04045, c / 12.92, ((c + 0.055) / 1.055) ** 2.4).reshape(-1, 3).mean(0)
    if v.max() > 0.95 or v.min() < 0.004:
        return np.zeros(4, np.float32)
    v /= card["reflectance"]
    return np.array([math.log(v[0] / v[1]), math.log(v[2] / v[1]), math.log(v[1]), 1], np.float32)


class Truth:
    """photos of a folder with truth.json"""

    def __init__(self, folder, keep, part=(0, 1)):
        folder = pathlib.Path(folder)
        self.images = [t for t in json.loads((folder / "truth.json").read_text()) if keep(t["file"])][part[0]::part[1]]
        self.rgb = [np.asarray(Image.open(folder / t["file"]).convert("RGB")) for t in self.images]
        self.fields = []
        for t, rgb in zip(self.images, self.rgb):
            wires = [(np.array(x["visible_polyline"], float), x["diameter_px"] / 2) for x in t["wires"] if len(x["visible_polyline"]) > 1]
            self.fields.append(Fields(*rasterise(wires, rgb.shape[:2], 26)[:6]))

    def strips(self, rng, image, loose=True, taps_only=False):
        t, rgb = self.images[image], self.rgb[image]
        small, white = thumb(rgb), card_white(rgb, t["reference_card"])
        out = []
        for wire in t["wires"]:
            line = np.array(wire["visible_polyline"], float)
            if len(line) < 4:
                continue
            base = scenes.CODES.index(wire["base"])
            tracer = scenes.CODES.index(wire["tracer"]) if wire["tracer"] else -1
            anchors = list(zip(wire["suggested_taps"], wire["tap_tracer_fraction"]))
            if not taps_only:
                for _ in range(6):
                    p = line[int(rng.integers(len(line)))] + rng.normal(0, 0.15, 2) * wire["diameter_px"]
                    anchors.append((p, None))
            length = np.hypot(*np.diff(line, axis=0).T)
            length = length[length < 26].sum()
            for anchor, seen in anchors:
                got = track(self.fields[image], *anchor)
                if got is None:
                    continue
                centre, visible, w = got
                if loose:
                    if rng.random() < 0.7:
                        near = np.hypot(centre[:, None, 0] - line[None, :, 0], centre[:, None, 1] - line[None, :, 1]).min(1)
                        visible = visible & (near < 9 + 0.2 * w)
                    visible = cut_short(rng, visible)
                    centre, w = loosen(rng, centre, w)
                if visible.sum() < 4:
                    continue
                use = white if (not loose or rng.random() < 0.5) else np.zeros(4, np.float32)
                most = visible.sum() * STEP * w > 0.55 * length and wire["tracer_visible"]
                shown = most if seen is None else seen >= 0.12
                out.append((strip_of(rgb, centre, w, visible), small, base, tracer, 0 if tracer < 0 else 2 if shown else 1, use))
        return out

    def crop(self, rng, image):
        """a turned, scaled cut of one photo with its labels"""
        t, rgb = self.images[image], self.rgb[image]
        h, w = rgb.shape[:2]
        scale = math.exp(rng.uniform(math.log(0.45), math.log(1.35)))
        turn = rng.uniform(0, 2 * math.pi)
        flip = rng.choice([-1, 1])
        c = rng.uniform(0.1, 0.9, 2) * [w, h]
        if rng.random() < 0.7:
            striped = [x for x in t["wires"] if x["tracer"]]
            among = striped if striped and rng.random() < 0.6 else t["wires"]
            wire = among[int(rng.integers(len(among)))]
            if wire["visible_polyline"]:
                c = np.array(wire["visible_polyline"][int(rng.integers(len(wire["visible_polyline"])))]) + rng.normal(0, 60, 2)
        m = np.array([[math.cos(turn), -math.sin(turn)], [math.sin(turn), math.cos(turn)]]) * scale @ np.diag([flip, 1.0])
        back = np.linalg.inv(m)
        gy, gx = np.meshgrid(np.arange(CROP) + 0.5, np.arange(CROP) + 0.5, indexing="ij")
        p = np.stack([gx - CROP / 2, gy - CROP / 2], -1) @ back.T + c
        source = rgb
        if scale < 0.7:
            image_small = Image.fromarray(rgb).resize((int(w * 0.5), int(h * 0.5)), Image.BOX)
            source, p = np.asarray(image_small), p * 0.5
        cut = np.stack([map_coordinates(source[..., k].astype(np.float32), [p[..., 1] - .5, p[..., 0] - .5], order=1, mode="constant") for k in range(3)], -1)
        inside = (p[..., 0] > 0) & (p[..., 1] > 0) & (p[..., 0] < source.shape[1]) & (p[..., 1] < source.shape[0])
        wires = [((np.array(x["visible_polyline"], float) - c) @ m.T + CROP / 2, x["diameter_px"] * scale / 2) for x in t["wires"] if len(x["visible_polyline"]) > 1]
        return np.clip(cut + .5, 0, 255).astype(np.uint8), polyline_labels(wires, inside, 26 * scale)


def polyline_labels(wires, inside, gap):
    wire, dx, dy, tx, ty, half, valid = rasterise(wires, (CROP, CROP), gap)
    return half_labels(wire, dx, dy, tx, ty, half, valid & inside)


def rasterise(wires, shape, gap):
    """labels from centre lines and half widths; what cannot be told from them is marked as not valid"""
    wire, best = np.full(shape, -1), np.full(shape, 9.0, np.float32)
    dx, dy, tx, ty, half = (np.zeros(shape, np.float32) for _ in range(5))
    valid = np.ones(shape, bool)
    gy, gx = np.meshgrid(np.arange(shape[0]) + 0.5, np.arange(shape[1]) + 0.5, indexing="ij")
    for index, (line, r) in enumerate(wires):
        seg = np.hypot(*np.diff(line, axis=0).T)
        ends = [line[0], line[-1]] + [q for i in np.flatnonzero(seg > gap) for q in (line[i], line[i + 1])]
        own = np.full(shape, 9.0, np.float32)
        for i in np.flatnonzero(seg <= gap):
            a, b = line[i], line[i + 1]
            lo, hi = np.minimum(a, b) - 1.4 * r - 2, np.maximum(a, b) + 1.4 * r + 2
            x0, y0 = np.clip(np.floor(lo).astype(int), 0, shape[::-1])
            x1, y1 = np.clip(np.ceil(hi).astype(int), 0, shape[::-1])
            if x1 <= x0 or y1 <= y0:
                continue
            s = (slice(y0, y1), slice(x0, x1))
            e = b - a
            f = np.clip(((gx[s] - a[0]) * e[0] + (gy[s] - a[1]) * e[1]) / max(1e-6, e @ e), 0, 1)
            ox, oy = a[0] + f * e[0] - gx[s], a[1] + f * e[1] - gy[s]
            d = np.hypot(ox, oy) / r
            own[s] = np.minimum(own[s], d)
            win = (d < 1) & (d < best[s])
            best[s] = np.where(win, d, best[s])
            n = math.hypot(*e) + 1e-6
            for array, value in ((wire, index), (dx, ox), (dy, oy), (tx, e[0] / n), (ty, e[1] / n), (half, r)):
                array[s] = np.where(win, value, array[s])
        other = (wire >= 0) & (wire != index) & (own < 1.0)
        valid &= ~((own > 0.88) & (own < 1.15) & (wire == -1))
        valid &= ~(other & (np.abs(own - best) < 0.25))
        for q in ends:
            valid &= ~((np.hypot(gx - q[0], gy - q[1]) < 1.1 * r + gap * 0.7) & (wire != index) & (wire == -1))
    return wire, dx, dy, tx, ty, half, valid
