"""Makes pictures of insulated wires with their truth, to learn from: no photo is needed.

A scene is a height field seen from above: a surface, a few hard things, wires as bent tubes with or without a
tracer. It is lit by lights with shadows, passed through a simple camera, and quantised as JPEG does. Everything is
drawn at random: shape, number, order, colours, light, dirt, exposure, focus. Drawn on a graphics processor where there
is one: some hundred a second.

render(rng, Shapes(rng, n, device)) returns a dict of n pictures, torch tensors on the device:
  rgb    uint8 Nx3xHxW, as in the photo's file
  wire   int16 NxHxW, number of the wire that is seen, -1 for none
  dx,dy  float32 NxHxW, from the pixel to its wire's centre line, pixels
  tx,ty  float32 NxHxW, unit direction of the wire there
  half   float32 NxHxW, half the wire's width, pixels
  stripe bool NxHxW, the tracer is seen here
  wires  for each picture a list of (base, tracer or -1, diameter)
A batch shares the typical width of wires, the directions of lights and the make of the camera; half of the batches are taken
with care in good light.

The insulation colours are sRGB values from memory of common vehicle wires, spread widely.
"""
import math

import numpy as np
import torch

from lighting import camera, lit
from clutter import lay_about
from materials import BENCHES, CODES, SURFACES, blur, fractal, grain, grid_noise, insulation, linear
from palette import palette


def smooth_curve(points, n):
    """n points evenly spread on a Catmull-Rom curve through the given ones (any number of columns)"""
    p = np.vstack([2 * points[0] - points[1], points, 2 * points[-1] - points[-2]])
    out = []
    for i in range(1, len(p) - 2):
        t = np.linspace(0, 1, 24, endpoint=False)[:, None]
        a, b, c, d = p[i - 1], p[i], p[i + 1], p[i + 2]
        out.append(0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t**2 + (3 * b - a - 3 * c + d) * t**3))
    q = np.vstack(out + [points[-1:]])
    s = np.concatenate([[0], np.cumsum(np.hypot(*np.diff(q[:, :2], axis=0).T))])
    u = np.linspace(0, s[-1], n)
    return np.stack([np.interp(u, s, q[:, k]) for k in range(q.shape[1])], 1)


def layout(rng, h, w, size):
    """curves as Nx3 (x, y, height of the centre line), with radii; and where a connector might be"""
    kind = rng.choice(["row", "row", "row", "fan", "ribbon", "ribbon", "ribbon", "bundle", "bundle", "twisted", "random", "spread", "heap"])
    n = int(rng.integers(3, 13))
    turn = rng.uniform(0, 2 * math.pi)
    u, v = np.array([math.cos(turn), math.sin(turn)]), np.array([-math.sin(turn), math.cos(turn)])
    curves, radii = [], []
    block = None
    if kind in ("row", "fan", "spread"):
        pitch = 2 * size * (rng.uniform(1.6, 4) if kind == "spread" else rng.uniform(1.0, 1.12) if rng.random() < .25 else rng.uniform(1.02, 2.0))
        span = pitch * (n - 1)
        start = np.array([w / 2, h / 2]) - v * rng.uniform(0.0, 0.45) * w + rng.normal(0, 0.08, 2) * w
        length = rng.uniform(0.5, 1.2) * w
        squeeze = rng.uniform(0.15, 1.0) if kind == "row" else rng.uniform(0.02, 0.4) if kind == "fan" else rng.uniform(.6, 1.3)
        sway = rng.normal(0, 0.12, (4,)) * w
        k = 5
        for i in range(n):
            off = i * pitch - span / 2
            pts = []
            for j in range(k):
                f = j / (k - 1)
                conv = 1 + (squeeze - 1) * min(1.0, f * 1.5)
                loose = rng.normal(0, 0.35 * pitch + 0.15 * size) * (0.1 if j == 0 else 1)
                pts.append(start + u * (off * conv + loose) + v * f * length + u * sway[min(j, 3)] * f)
            z = np.concatenate([[size], size * (1 + rng.uniform(0, 2.2, k - 1))])
            curves.append(np.column_stack([np.array(pts), z]))
        if rng.random() < 0.75:
            block = (start - v * rng.uniform(1.5, 5) * size, u, v, span / 2 + pitch * rng.uniform(.6, 1.2),
                     rng.uniform(2, 6) * size)
    elif kind == "ribbon":  # side by side, touching, all the way
        k = 5
        spine = np.array([w / 2, h / 2]) + np.outer(np.linspace(-0.75, 0.75, k), v * w) + np.outer(rng.normal(0, 0.09, k), u * w)
        pitch = 2 * size * rng.uniform(0.9, 1.2)
        for i in range(n):
            pts = spine + np.outer(pitch * (i - (n - 1) / 2) + rng.normal(0, rng.choice([0.03, 0.2]) * pitch, k), u)
            curves.append(np.column_stack([pts, size * (1 + rng.uniform(0, rng.choice([0.1, 1.5]), k))]))
    elif kind == "bundle":
        k = 6
        spine = np.array([w / 2, h / 2]) + np.outer(np.linspace(-0.7, 0.7, k), v * w) + rng.normal(0, 0.1, (k, 2)) * w
        for _ in range(n):
            pts = spine + np.outer(rng.normal(0, size * 0.55 * math.sqrt(n) * rng.uniform(.6, 1.6), k), u)
            curves.append(np.column_stack([pts, size * (1 + rng.uniform(0, 3, k))]))
    elif kind == "twisted":
        n = int(rng.integers(2, 6))
        k = 14
        f = np.linspace(-0.75, 0.75, k)
        spine = np.array([w / 2, h / 2]) + np.outer(f, v * w) + np.outer(np.interp(f, np.linspace(-.75, .75, 4), rng.normal(0, 0.1, 4)), u * w)
        turns, phase = rng.uniform(1.5, 7), rng.uniform(0, 6.28)
        for i in range(n):
            a = phase + 2 * math.pi * (i / n + turns * f) + rng.normal(0, .25, k)
            wide = size * rng.uniform(0.8, 1.6) * (0.5 + 0.25 * n)
            curves.append(np.column_stack([spine + np.outer(np.cos(a) * wide, u), size * (2.5 + 1.5 * np.sin(a))]))
    else:
        n = int(rng.integers(2, 9) if kind == "random" else rng.integers(8, 20))
        for _ in range(n):
            k = int(rng.integers(3, 6))
            a, b = rng.uniform(-0.1, 1.1, (2, 2)) * [w, h]
            pts = a + np.outer(np.linspace(0, 1, k), b - a) + rng.normal(0, 0.13, (k, 2)) * w
            curves.append(np.column_stack([pts, size * (1 + rng.uniform(0, 3, k))]))
    spread = rng.choice([0.03, 0.03, 0.03, 0.16, 0.16, 0.4])
    for _ in curves:
        radii.append(size * math.exp(np.clip(rng.normal(0, spread), -.8, .8)))
    out = [smooth_curve(c, max(24, int(np.hypot(*np.diff(c[:, :2], axis=0).T).sum() / 4))) for c in curves]
    return out, radii, block


def nearest(curves, h, w, device):
    """for each of N wires and each pixel: squared distance to its curve, segment and place on it. N x h x w"""
    n, p = len(curves), max(len(c) for c in curves)
    line = np.zeros((n, p, 3), np.float32)
    for i, c in enumerate(curves):
        line[i, :len(c)] = c
        line[i, len(c):] = c[-1]
    line = torch.from_numpy(line).to(device)
    q = 4
    gy, gx = torch.meshgrid(torch.arange(0, h, q, device=device) + q / 2, torch.arange(0, w, q, device=device) + q / 2, indexing="ij")
    # Differences written out: torch.cdist is a hundred times slower for points of two coordinates.
    far = lambda part: ((gx.reshape(1, -1, 1) - part[:, None, :, 0]).square_() + (gy.reshape(1, -1, 1) - part[:, None, :, 1]).square_()).argmin(-1)
    near = torch.cat([far(part) for part in line[..., :2].split(8)]).view(n, h // q, w // q)
    near = near.repeat_interleave(q, 1).repeat_interleave(q, 2)
    fy, fx = torch.meshgrid(torch.arange(h, device=device) + .5, torch.arange(w, device=device) + .5, indexing="ij")
    best = torch.full((n, h, w), 1e9, device=device)
    seg = torch.zeros((n, h, w), dtype=torch.long, device=device)
    place = torch.zeros((n, h, w), device=device)
    x, y = line[..., 0].contiguous(), line[..., 1].contiguous()
    ex, ey = x[:, 1:] - x[:, :-1], y[:, 1:] - y[:, :-1]
    ee = ex * ex + ey * ey + 1e-9
    take = lambda a, i: a.gather(1, i.view(n, -1)).view(n, h, w)
    for o in range(-3, 3):
        i = (near + o).clamp(0, p - 2)
        ax, ay, sx, sy = take(x, i), take(y, i), take(ex, i), take(ey, i)
        t = (((fx - ax) * sx + (fy - ay) * sy) / take(ee, i)).clamp(0, 1)
        dd = (ax + t * sx - fx) ** 2 + (ay + t * sy - fy) ** 2
        better = dd < best
        best, seg, place = torch.where(better, dd, best), torch.where(better, i, seg), torch.where(better, t, place)
    return line, best, seg, place, fx, fy


class Shapes:
    """where the wires of n scenes lie. Finding out takes longer than all else, so several scenes are drawn of each"""

    def __init__(self, rng, n, device, h=480, w=640):
        self.n, self.h, self.w, self.device = n, h, w, device
        # Radius; thinner wires are looked at from nearer.
        self.typical = math.exp(rng.uniform(math.log(3.4), math.log(20 if rng.random() < .8 else 34)))
        self.curves, self.radii, self.owner, self.blocks, self.sizes, self.counts = [], [], [], [], [], []
        for k in range(n):
            size = self.typical * math.exp(rng.normal(0, .15))
            c, r, block = layout(rng, h, w, size)
            self.curves += c
            self.radii += r
            self.owner += [k] * len(c)
            self.blocks.append(block)
            self.sizes.append(size)
            self.counts.append(len(c))
        # Wires that stand up from the ground: their shadows lie apart from them and are soft.
        self.lift = self.typical * rng.uniform(1, 6) if rng.random() < .2 else 0.0
        for c in self.curves:
            c[:, 2] += self.lift
        self.seen = seen(self.curves, self.radii, self.owner, n, h, w, device)


def seen(curves, radii, owner, n, h, w, dev):
    """of each pixel which wire is seen there, where several lie the highest: its number, height, direction and centre line,
    the place along it and across it. owner: scene of each wire"""
    m = len(curves)
    row = lambda values: torch.tensor(np.asarray(values, np.float32), device=dev)
    line, best, seg, place, fx, fy = nearest(curves, h, w, dev)
    r = row(radii)
    z = line[..., 2].contiguous()
    zc = z.gather(1, seg.view(m, -1)).view(m, h, w)
    zc = zc + place * (z.gather(1, (seg + 1).view(m, -1)).view(m, h, w) - zc)
    r2 = (r * r)[:, None, None]
    top = torch.where(best < r2, zc + (r2 - best).clamp_min(0).sqrt(), torch.full_like(best, -1.0))
    highs, whos = [], []
    first = 0
    for k in range(n):
        count = owner.count(k)
        a, b = top[first:first + count].max(0)
        highs.append(a)
        whos.append(b + first)
        first += count
    high, who = torch.stack(highs), torch.stack(whos)
    pixel = torch.arange(h * w, device=dev).view(1, h, w)
    at = lambda a: a.view(-1)[who * (h * w) + pixel]
    segment, t = at(seg), at(place)
    flat = who * line.shape[1] + segment
    x, y = line[..., 0].contiguous(), line[..., 1].contiguous()
    step = torch.hypot(x[:, 1:] - x[:, :-1], y[:, 1:] - y[:, :-1])
    s = torch.cat([torch.zeros((m, 1), device=dev), step.cumsum(1)], 1)
    ax, ay, bx, by = x.view(-1)[flat], y.view(-1)[flat], x.view(-1)[flat + 1], y.view(-1)[flat + 1]
    ex, ey = bx - ax, by - ay
    el = torch.hypot(ex, ey) + 1e-6
    tx, ty = ex / el, ey / el
    cx, cy = ax + t * ex, ay + t * ey
    side = (fx - cx) * -ty + (fy - cy) * tx
    along = s.view(-1)[flat] + t * el
    return {"who": who, "high": high, "tx": tx, "ty": ty, "dx": cx - fx, "dy": cy - fy, "side": side, "along": along, "radius": r[who]}


def draw_wires(rng, scene, shapes, colours):
    n, h, w, dev = scene["n"], scene["h"], scene["w"], scene["device"]
    radii, owner = shapes.radii, shapes.owner
    who, high, tx, ty, side, along, radius = (shapes.seen[k] for k in ("who", "high", "tx", "ty", "side", "along", "radius"))
    here = (high > scene["height"]) & (high > 0)
    row = lambda values: torch.tensor(np.asarray(values, np.float32), device=dev)
    of = lambda values: row(values)[who]
    base = row([insulation(rng, b) for b, _ in colours])
    # Grey on black is often a dark grey.
    dim = lambda b, k: rng.uniform(.5, 1) if (CODES[b], CODES[k]) == ("BK", "GY") else 1.0
    second = row([insulation(rng, max(0, k)) * dim(b, max(0, k)) for b, k in colours])
    half = of([rng.choice([rng.uniform(0.03, 0.14), rng.uniform(0.05, 0.14), rng.uniform(0.1, 0.26)]) * math.pi if k >= 0 else -1 for _, k in colours])  # of the circumference
    phase = of([rng.uniform(-math.pi, math.pi) if rng.random() < .35 else rng.uniform(-1.9, 1.9) for _ in colours])
    twist = of([rng.choice([0.0, 1.0, 1.0]) * rng.normal(0, 0.16) / q for q in radii])
    angle = torch.asin((side / radius).clamp(-1, 1))
    a = torch.remainder(angle - phase - twist * along + math.pi, 2 * math.pi) - math.pi
    stripe = (a.abs() < half) & here
    albedo = torch.where(stripe[..., None], second[who], base[who]).permute(0, 3, 1, 2)
    if rng.random() < .35:  # sleeves, silver rings, marks and paint on some of the wires
        period, share = of([rng.uniform(15, 120) * q for q in radii]), of([rng.choice([0, rng.uniform(0, .08)]) for _ in radii])
        band = torch.remainder(along + 37 * phase, period) < share * period
        paint = row(np.clip(linear(rng.choice([(235, 235, 230), (30, 30, 30), (150, 150, 150), (178, 180, 184), (200, 40, 40)])), .01, .9))[:, None, None]
        albedo = torch.where((band & here)[:, None], paint, albedo)
    put = lambda k, v: scene.__setitem__(k, torch.where(here if scene[k].dim() == 3 else here[:, None], v, scene[k]))
    nl = side / radius
    start = torch.tensor([owner.index(k) for k in range(n)], device=dev)[:, None, None]
    put("height", high)
    put("albedo", albedo)
    put("nx", -ty * nl)
    put("ny", tx * nl)
    put("gloss", of([rng.uniform(0.1, 1.6) if rng.random() < .75 else rng.uniform(0, .15) for _ in radii]))
    put("sharp", of([math.exp(rng.uniform(1.6, 5.2)) for _ in radii]))
    put("dirty", of([rng.choice([0.0, 0.3, 1.0]) for _ in radii]))
    put("wire", (who - start).to(torch.int16))
    put("dx", shapes.seen["dx"])
    put("dy", shapes.seen["dy"])
    put("tx", tx)
    put("ty", ty)
    put("half", radius)
    scene["stripe"] = stripe


def box(centre, u, v, halfU, halfV, top, colour, gloss, rng, bevel=3.0, round_=0.0):
    """a block or, with round_, a disc, as a row of numbers; its faces are smoothed by the bevel"""
    return [*centre, *u, *v, halfU, halfV, top, *colour, gloss, math.exp(rng.uniform(1.5, 4)), bevel, float(bool(round_))]


def draw_boxes(scene, boxes):
    """boxes: for each scene a list of rows as from box(), drawn in their order"""
    n, h, w, dev = scene["n"], scene["h"], scene["w"], scene["device"]
    most = max(len(b) for b in boxes)
    if not most:
        return
    rows = np.zeros((most, n, 16), np.float32)
    rows[:, :, 6:8] = -1e6  # nothing there
    for k, b in enumerate(boxes):
        if b:
            rows[:len(b), k] = np.asarray(b, np.float32)
    y, x = torch.meshgrid(torch.arange(h, device=dev), torch.arange(w, device=dev), indexing="ij")
    for row in torch.from_numpy(rows).to(dev):
        c = row[:, :, None, None].unbind(1)
        px, py = x - c[0], y - c[1]
        a, b = px * c[2] + py * c[3], px * c[4] + py * c[5]
        inside = torch.where(c[15] > .5, c[6] - torch.sqrt(a * a + b * b), torch.minimum(c[6] - a.abs(), c[7] - b.abs()))
        face = (inside / c[14].clamp_min(.1)).clamp(0, 1)
        here = (inside > 0) & (c[8] * face > scene["height"])
        scene["height"] = torch.where(here, c[8] * (0.6 + 0.4 * face), scene["height"])
        scene["albedo"] = torch.where(here[:, None], row[:, 9:12, None, None], scene["albedo"])
        scene["gloss"] = torch.where(here, c[12], scene["gloss"])
        scene["sharp"] = torch.where(here, c[13], scene["sharp"])
        for key, value in (("wire", -1), ("nx", 0.0), ("ny", 0.0), ("stripe", False)):
            scene[key] = scene[key].masked_fill(here, value)


def things(rng, h, w, block, size):
    out = []
    put = lambda *a, **k: out.append(box(*a, rng, **k))
    if block is not None:
        c, u, v, hu, hv = block
        grey = rng.choice([0.8, 0.65, 0.03, 0.25, 0.8])
        colour = grey * (1 + rng.normal(0, 0.05, 3)) * np.array([1.03, 1.0, rng.uniform(.8, 1)])
        if rng.random() < 0.12:
            colour = linear(SURFACES[int(rng.integers(len(SURFACES)))])
        put(c, u, v, hu, hv, 5 * size, np.clip(colour, .01, .9), rng.uniform(.1, .6))
        if rng.random() < 0.7:
            put(c + u * rng.normal(0, .2) * hu, u, v, hu * rng.uniform(.15, .4), hv * rng.uniform(.4, .9), 6.5 * size,
                np.clip(colour * 0.95, .01, .9), rng.uniform(.1, .6))
    for _ in range(int(rng.integers(0, 5) if rng.random() < .85 else rng.integers(5, 14))):
        c = rng.uniform(0, 1, 2) * [w, h]
        t = rng.uniform(0, 2 * math.pi)
        u, v = np.array([math.cos(t), math.sin(t)]), np.array([-math.sin(t), math.cos(t)])
        a, b = np.exp(rng.uniform(math.log(5), math.log(60), 2))
        metal = rng.random() < .5
        colour = np.full(3, rng.uniform(.1, .6)) * [1, .97, rng.uniform(.6, 1)] if metal else linear(SURFACES[int(rng.integers(len(SURFACES)))])
        put(c, u, v, a, b, rng.uniform(1, 30), colour, rng.uniform(.3, 1.5) if metal else .2, round_=rng.random() < .4)
    if rng.random() < 0.3:  # a tie or tape across the wires
        t, c = rng.uniform(0, math.pi), rng.uniform(.2, .8, 2) * [w, h]
        u, v = np.array([math.cos(t), math.sin(t)]), np.array([-math.sin(t), math.cos(t)])
        shade = rng.choice([.8, .03, .7, .2])
        put(c, u, v, size * rng.uniform(2, 8), size * rng.uniform(.7, 4), 9 * size, np.full(3, shade), .4, bevel=size)
    if rng.random() < 0.4:  # a row of bright and dark marks: print, pins, solder
        c, t = rng.uniform(0, 1, 2) * [w, h], rng.uniform(0, 2 * math.pi)
        u, v = np.array([math.cos(t), math.sin(t)]), np.array([-math.sin(t), math.cos(t)])
        colour = np.full(3, rng.choice([.85, .02, .5]))
        p = rng.uniform(6, 24)
        for i in range(int(rng.integers(4, 14))):
            put(c + u * p * i, u, v, p * rng.uniform(.15, .4), p * rng.uniform(.2, .9), rng.uniform(.2, 6), colour, .5, bevel=1)
    return out


def ground(rng, n, h, w, device):
    """albedo of the surface, Nx3xHxW, and its texture"""
    row = lambda c: torch.tensor(np.asarray(c, np.float32), device=device)[:, :, None, None]
    each = lambda f: torch.tensor(np.array([f() for _ in range(n)], np.float32), device=device)[:, None, None]
    of = lambda colours: linear(colours[int(rng.integers(len(colours)))])
    pick = lambda: of(BENCHES if rng.random() < .6 else SURFACES)
    surface = [pick() * np.exp(rng.normal(0, .25)) * np.exp(rng.normal(0, .06, 3)) if rng.random() < .93 else linear(rng.uniform(10, 245, 3)) for _ in range(n)]
    if rng.random() < .4:  # wood, brushed metal, cloth: long in one direction, whichever
        texture = grain(rng, n, h, w, device)
        fleck = (grain(rng, n, h, w, device, rng.uniform(60, 200), rng.uniform(4, 14)) - rng.uniform(.6, 1.3)).clamp(0, .5) * each(lambda: rng.choice([0, rng.uniform(.2, 1.6)]))
    else:
        texture = fractal(rng, n, h, w, rng.uniform(3, 30), device, 5, rng.uniform(.4, .8), rng.choice([1, 1, 8]))
        fleck = torch.zeros_like(texture)
    albedo = row(surface) * torch.exp(each(lambda: rng.uniform(0, .35)) * texture - fleck)[:, None]
    if rng.random() < .35:  # blotches of another colour: stone, rust, stains
        blot = (fractal(rng, n, h, w, rng.uniform(2, 9), device) * 1.5 - .4).clamp(0, 1) * each(lambda: rng.choice([0, 0, rng.uniform(.2, 1)]))
        albedo = albedo * (1 - blot[:, None]) + blot[:, None] * row([pick() for _ in range(n)])
    if rng.random() < .15:  # a grid or weave
        y, x = torch.meshgrid(torch.arange(h, device=device), torch.arange(w, device=device), indexing="ij")
        p, t = rng.uniform(4, 40), rng.uniform(0, math.pi)
        wave = torch.sin((x * math.cos(t) + y * math.sin(t)) * 2 * math.pi / p) * torch.sin((y * math.cos(t) - x * math.sin(t)) * 2 * math.pi / p)
        albedo = albedo * torch.exp(each(lambda: rng.uniform(0, .5)) * wave)[:, None]
    return albedo.clamp(.004, .95), texture


def render(rng, shapes):
    """n pictures of wires that lie so: other colours, ground, things, light and camera at each call"""
    torch.manual_seed(int(rng.integers(1 << 31)))
    n, h, w, device, typical, lift = shapes.n, shapes.h, shapes.w, shapes.device, shapes.typical, shapes.lift
    colours = [wire for count in shapes.counts for wire in palette(rng, count)]
    albedo, texture = ground(rng, n, h, w, device)
    scene = {"n": n, "h": h, "w": w, "device": device, "albedo": albedo, "care": rng.random() < .5}
    z = lambda v=0.0, t=torch.float32: torch.full((n, h, w), v, dtype=t, device=device)
    each = lambda f: torch.tensor(np.array([f() for _ in range(n)], np.float32), device=device)[:, None, None]
    scene.update(height=z(), nx=z(), ny=z(), gloss=each(lambda: rng.uniform(0, .8)) + z(), sharp=each(lambda: math.exp(rng.uniform(1, 4))) + z(),
                 dirty=z(.3), wire=z(-1, torch.int16), dx=z(), dy=z(), tx=z(), ty=z(), half=z(), stripe=z(False, torch.bool))
    # Now and then wires hang in the air: what is behind them is far away, out of focus and without their shadows.
    air = rng.random(n) < rng.choice([0, 0, .5])
    scene.update(grain=texture, air=torch.tensor(air, device=device)[:, None, None])
    lay_about(rng, scene, typical, rng.random(n) < np.where(air, .85, .4))
    if air.any():
        scene["albedo"] = torch.where(scene["air"][:, None], blur(scene["albedo"], rng.uniform(2, 16)) * torch.exp(grid_noise(rng, n, h, w, rng.uniform(2, 6), device) * .7)[:, None],
                                      scene["albedo"]).clamp(.004, .95)
        scene["height"] = torch.where(scene["air"], 0, scene["height"])
    boxes = [things(rng, h, w, b, q) if rng.random() < .85 else [] for b, q in zip(shapes.blocks, shapes.sizes)]
    early = rng.random(n) < .5
    draw_boxes(scene, [b if e else [] for b, e in zip(boxes, early)])
    draw_wires(rng, scene, shapes, colours)
    own = grid_noise(rng, n, h, w, w / 5, device) * .02
    scene["bump"] = torch.where(scene["wire"] >= 0, own, texture * each(lambda: rng.uniform(0, .12) * (typical / 8)) * ~scene["air"])
    draw_boxes(scene, [[] if e else b for b, e in zip(boxes, early)])
    grime = fractal(rng, n, h, w, rng.uniform(6, 40), device, 4, .7) * .8 - each(lambda: rng.uniform(.1, .9))
    grime = (grime.clamp(0, 1) * scene["dirty"] * each(lambda: rng.uniform(0, .4 if scene["care"] else .8)))[:, None]
    # Grease and road dirt, or pale dust and dried mud.
    level = np.where(rng.random(n) < .7, 1, rng.uniform(1.3, 2.2, n))
    mud = np.array([linear(np.array((rng.uniform(40, 110), rng.uniform(40, 90), rng.uniform(35, 75))) * k) for k in level], np.float32)
    scene["albedo"] = scene["albedo"] * (1 - grime) + grime * torch.from_numpy(mud).to(device)[:, :, None, None]
    radiance, mean = lit(rng, scene, typical, lift)
    rgb = camera(rng, radiance, mean, scene)
    out = {k: scene[k] for k in ("wire", "dx", "dy", "tx", "ty", "half", "stripe")}
    out["rgb"] = (rgb * 255 + .5).to(torch.uint8)
    each_wire = list(zip((c[0] for c in colours), (c[1] for c in colours), (2 * r for r in shapes.radii)))
    ends = np.cumsum(shapes.counts)
    out["wires"] = [each_wire[e - c:e] for e, c in zip(ends, shapes.counts)]
    return out
