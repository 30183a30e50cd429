"""Makes pictures of insulated wires with their truth, to learn from: no photo is needed.

A scene is a height field seen from above: a surface, a few hard things, wires as bent tubes with or without a
tracer. It is lit by one or two lights with shadows, passed through a simple camera, and quantised as JPEG does.
Everything is drawn at random: shape, number, order, colours, light, dirt, exposure.

render(rng) returns a dict of arrays of one picture, all NumPy:
  rgb    float32 HxWx3, 0..1, as in the photo's file
  wire   int16 HxW, number of the wire that is seen, -1 for none
  dx,dy  float32 HxW, from the pixel to its wire's centre line, pixels
  tx,ty  float32 HxW, unit direction of the wire there
  half   float32 HxW, half the wire's width, pixels
  stripe bool HxW, the tracer is seen here
  wires  list of (base, tracer or -1, centre line as Nx2 array, diameter)

The insulation colours are sRGB values from memory of common vehicle wires, spread widely.
"""
import math

import numpy as np

from lighting import camera, lit
from materials import BASES, CODES, SURFACES, TRACERS, fractal, grid_noise, insulation, linear


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


def layout(rng, h, w):
    """curves as Nx3 (x, y, height of the centre line), with radii; and where a connector might be"""
    kind = rng.choice(["row", "row", "fan", "bundle", "twisted", "random", "spread"])
    size = math.exp(rng.uniform(math.log(2.6), math.log(20)))  # typical radius
    n = int(rng.integers(3, 13))
    turn = rng.uniform(0, 2 * math.pi)
    u, v = np.array([math.cos(turn), math.sin(turn)]), np.array([-math.sin(turn), math.cos(turn)])
    curves, radii = [], []
    block = None
    if kind in ("row", "fan", "spread"):
        pitch = 2 * size * (rng.uniform(1.02, 2.0) if kind != "spread" else rng.uniform(1.6, 4))
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
        n = int(rng.integers(2, 9))
        for _ in range(n):
            k = int(rng.integers(3, 6))
            a, b = rng.uniform(-0.1, 1.1, (2, 2)) * [w, h]
            pts = a + np.outer(np.linspace(0, 1, k), b - a) + rng.normal(0, 0.13, (k, 2)) * w
            curves.append(np.column_stack([pts, size * (1 + rng.uniform(0, 3, k))]))
    mixed = rng.random() < 0.5
    for _ in curves:
        radii.append(size * (math.exp(rng.normal(0, 0.16)) if mixed else math.exp(rng.normal(0, 0.03))))
    out = [smooth_curve(c, max(24, int(np.hypot(*np.diff(c[:, :2], axis=0).T).sum() / 4))) for c in curves]
    return out, radii, block, size


def palette(rng, n):
    """(base, tracer) of n wires: often confusable, sometimes twins"""
    wires = []
    striped = rng.choice([0.1, 0.4, 0.75, 0.9])
    for _ in range(n):
        base = int(rng.choice(14, p=BASES / BASES.sum()))
        tracer = -1
        if rng.random() < striped:
            while True:
                tracer = int(rng.choice(14, p=TRACERS / TRACERS.sum()))
                if tracer != base and {CODES[base], CODES[tracer]} not in ({"BU", "LBU"}, {"GN", "LGN"}) or rng.random() < .1 and tracer != base:
                    break
        wires.append((base, tracer))
    return wires


def shade_wire(rng, scene, curve, radius, colours, index):
    h, w = scene["h"], scene["w"]
    x, y, z = (np.asarray(curve[:, i].astype(np.float32)) for i in range(3))
    n = len(curve)
    seg = np.hypot(*np.diff(curve[:, :2], axis=0).T)
    s = np.asarray(np.concatenate([[0], np.cumsum(seg)]).astype(np.float32))
    # coarse: the nearest point of the curve for every fourth pixel
    q = 4
    gy, gx = np.meshgrid(np.arange(0, h, q, dtype=np.float32) + q / 2, np.arange(0, w, q, dtype=np.float32) + q / 2, indexing="ij")
    d2 = (gx[..., None] - x) ** 2 + (gy[..., None] - y) ** 2
    near = d2.argmin(-1)
    close = np.sqrt(d2.min(-1)) < radius + 7
    close = np.repeat(np.repeat(close, q, 0), q, 1)[:h, :w]
    near = np.repeat(np.repeat(near, q, 0), q, 1)[:h, :w]
    py, px = np.nonzero(close)
    if len(py) == 0:
        return
    first = near[py, px]
    fx, fy = px.astype(np.float32) + 0.5, py.astype(np.float32) + 0.5
    best = np.full(len(py), 1e9, np.float32)
    bi, bt = np.zeros(len(py), np.int32), np.zeros(len(py), np.float32)
    for o in range(-3, 3):
        i = np.clip(first + o, 0, n - 2)
        ax, ay = x[i], y[i]
        ex, ey = x[i + 1] - ax, y[i + 1] - ay
        t = np.clip(((fx - ax) * ex + (fy - ay) * ey) / (ex * ex + ey * ey + 1e-9), 0, 1)
        dd = (ax + t * ex - fx) ** 2 + (ay + t * ey - fy) ** 2
        better = dd < best
        best, bi, bt = np.where(better, dd, best), np.where(better, i, bi), np.where(better, t, bt)
    ex, ey = x[bi + 1] - x[bi], y[bi + 1] - y[bi]
    el = np.sqrt(ex * ex + ey * ey) + 1e-6
    tx, ty = ex / el, ey / el
    cx, cy = x[bi] + bt * (x[bi + 1] - x[bi]), y[bi] + bt * (y[bi + 1] - y[bi])
    side = (fx - cx) * (-ty) + (fy - cy) * tx  # signed distance
    along = s[bi] + bt * (s[bi + 1] - s[bi])
    zc = z[bi] + bt * (z[bi + 1] - z[bi])
    r = radius
    inside = (np.sqrt(best) < r)
    lift = np.sqrt(np.maximum(0, r * r - best))
    top = zc + lift
    seen = inside & (top > scene["height"][py, px])
    py, px = py[seen], px[seen]
    side, along, tx, ty, cx, cy, top = (a[seen] for a in (side, along, tx, ty, cx, cy, top))
    fx, fy = fx[seen], fy[seen]
    base, tracer = colours
    albedo = np.asarray(insulation(rng, base).astype(np.float32))[None].repeat(len(py), 0)
    stripe = np.zeros(len(py), bool)
    if tracer >= 0:
        half = rng.uniform(0.07, 0.26) * math.pi  # of the circumference, as an angle
        phase = rng.uniform(-math.pi, math.pi) if rng.random() < .35 else rng.uniform(-1.9, 1.9)
        twist = rng.choice([0.0, 1.0, 1.0]) * rng.normal(0, 0.16) / r
        angle = np.arcsin(np.clip(side / r, -1, 1))
        a = angle - phase - twist * along
        a = (a + math.pi) % (2 * math.pi) - math.pi
        stripe = np.abs(a) < half
        albedo = np.where(stripe[:, None], np.asarray(insulation(rng, tracer).astype(np.float32)), albedo)
    scene["height"][py, px] = top
    scene["albedo"][py, px] = albedo
    nl = side / r
    scene["nx"][py, px], scene["ny"][py, px] = -ty * nl, tx * nl
    scene["gloss"][py, px] = rng.uniform(0.1, 1.6)
    scene["sharp"][py, px] = math.exp(rng.uniform(2.2, 5.2))
    scene["dirty"][py, px] = rng.choice([0.0, 0.3, 1.0])
    scene["wire"][py, px] = index
    scene["dx"][py, px], scene["dy"][py, px] = cx - fx, cy - fy
    scene["tx"][py, px], scene["ty"][py, px] = tx, ty
    scene["half"][py, px] = r
    scene["stripe"][py, px] = stripe


def box(scene, centre, u, v, halfU, halfV, top, colour, gloss, rng, bevel=3.0, round_=0.0):
    """a block or, with round_, a disc; its faces are smoothed by the bevel"""
    h, w = scene["h"], scene["w"]
    y, x = np.meshgrid(np.arange(h, dtype=np.float32), np.arange(w, dtype=np.float32), indexing="ij")
    a, b = (x - centre[0]) * u[0] + (y - centre[1]) * u[1], (x - centre[0]) * v[0] + (y - centre[1]) * v[1]
    inside = np.minimum(halfU - np.abs(a), halfV - np.abs(b)) if not round_ else halfU - np.sqrt(a * a + b * b)
    face = np.clip(inside / bevel, 0, 1)
    here = (inside > 0) & (top * face > scene["height"])
    scene["height"] = np.where(here, top * (0.6 + 0.4 * face), scene["height"])
    scene["albedo"] = np.where(here[..., None], np.asarray(np.asarray(colour, np.float32)), scene["albedo"])
    scene["gloss"] = np.where(here, gloss, scene["gloss"])
    scene["sharp"] = np.where(here, math.exp(rng.uniform(1.5, 4)), scene["sharp"])
    scene["wire"] = np.where(here, -1, scene["wire"])
    scene["nx"] = np.where(here, 0, scene["nx"])
    scene["ny"] = np.where(here, 0, scene["ny"])


def things(rng, scene, block, size):
    h, w = scene["h"], scene["w"]
    if block is not None:
        c, u, v, hu, hv = block
        grey = rng.choice([0.8, 0.65, 0.03, 0.25, 0.8])
        colour = grey * (1 + rng.normal(0, 0.05, 3)) * np.array([1.03, 1.0, rng.uniform(.8, 1)])
        if rng.random() < 0.12:
            colour = linear(SURFACES[int(rng.integers(len(SURFACES)))])
        box(scene, c, u, v, hu, hv, 5 * size, np.clip(colour, .01, .9), rng.uniform(.1, .6), rng)
        if rng.random() < 0.7:
            box(scene, c + u * rng.normal(0, .2) * hu, u, v, hu * rng.uniform(.15, .4), hv * rng.uniform(.4, .9), 6.5 * size,
                np.clip(colour * 0.95, .01, .9), rng.uniform(.1, .6), rng)
    for _ in range(int(rng.integers(0, 5))):
        c = rng.uniform(0, 1, 2) * [w, h]
        t = rng.uniform(0, 2 * math.pi)
        u, v = np.array([math.cos(t), math.sin(t)]), np.array([-math.sin(t), math.cos(t)])
        a, b = np.exp(rng.uniform(math.log(5), math.log(60), 2))
        metal = rng.random() < .5
        colour = np.full(3, rng.uniform(.1, .6)) * [1, .97, rng.uniform(.6, 1)] if metal else linear(SURFACES[int(rng.integers(len(SURFACES)))])
        box(scene, c, u, v, a, b, rng.uniform(1, 30), colour, rng.uniform(.3, 1.5) if metal else .2, rng, round_=rng.random() < .4)
    if rng.random() < 0.3:  # a tie or tape across the wires
        t, c = rng.uniform(0, math.pi), rng.uniform(.2, .8, 2) * [w, h]
        u, v = np.array([math.cos(t), math.sin(t)]), np.array([-math.sin(t), math.cos(t)])
        shade = rng.choice([.8, .03, .7, .2])
        box(scene, c, u, v, size * rng.uniform(2, 8), size * rng.uniform(.7, 4), 9 * size, np.full(3, shade), .4, rng, bevel=size)
    if rng.random() < 0.35:  # a row of bright and dark marks: print, pins, solder
        c, t = rng.uniform(0, 1, 2) * [w, h], rng.uniform(0, 2 * math.pi)
        u, v = np.array([math.cos(t), math.sin(t)]), np.array([-math.sin(t), math.cos(t)])
        colour = np.full(3, rng.choice([.85, .02, .5]))
        p = rng.uniform(6, 24)
        for i in range(int(rng.integers(4, 14))):
            box(scene, c + u * p * i, u, v, p * rng.uniform(.15, .4), p * rng.uniform(.2, .9), rng.uniform(.2, 6), colour, .5, rng, bevel=1)


def render(rng, h=480, w=640):
    curves, radii, block, size = layout(rng, h, w)
    surface = linear(SURFACES[int(rng.integers(len(SURFACES)))]) * np.exp(rng.normal(0, .25)) * np.exp(rng.normal(0, .08, 3))
    if rng.random() < .25:
        surface = linear(rng.uniform(10, 245, 3))
    stretch = rng.choice([1, 1, 8, 25])
    texture = fractal(rng, h, w, rng.uniform(3, 30), 5, rng.uniform(.4, .8), stretch)
    if rng.random() < .5:
        texture = texture.copy()[:, ::-1]
    scene = {"h": h, "w": w}
    albedo = np.asarray(surface.astype(np.float32)) * np.exp(rng.uniform(0, .35) * texture)[..., None]
    if rng.random() < .3:  # blotches of another colour: wood, rust, stains
        blot = np.clip(fractal(rng, h, w, rng.uniform(2, 9), 4) * 1.5 - .4, 0, 1)[..., None] * rng.uniform(.2, 1)
        other = linear(SURFACES[int(rng.integers(len(SURFACES)))]).astype(np.float32)
        albedo = albedo * (1 - blot) + blot * np.asarray(other)
    scene["albedo"] = np.clip(albedo, .004, .95).astype(np.float32)
    z = lambda v=0.0, t=np.float32: np.full((h, w), v, t)
    scene.update(height=z(), nx=z(), ny=z(), gloss=z(rng.uniform(0, .8)), sharp=z(math.exp(rng.uniform(1, 4))), dirty=z(.3),
                 wire=z(-1, np.int16), dx=z(), dy=z(), tx=z(), ty=z(), half=z(), stripe=z(False, bool))
    scene["bump"] = texture * rng.uniform(0, .12) * (size / 8)
    if rng.random() < .8:
        early = rng.random() < .5
        if early:
            things(rng, scene, block, size)
    else:
        early = True
    colours = palette(rng, len(curves))
    order = rng.permutation(len(curves))
    for i in order:
        shade_wire(rng, scene, curves[i], radii[i], colours[i], i)
    scene["bump"] = np.where(scene["wire"] >= 0, grid_noise(rng, h, w, w / 5) * .02, scene["bump"])
    if not early:
        things(rng, scene, block, size)
    grime = np.clip(fractal(rng, h, w, rng.uniform(6, 40), 4, .7) * .8 - rng.uniform(.1, .9), 0, 1) * scene["dirty"] * rng.uniform(0, .8)
    mud = linear((rng.uniform(40, 110), rng.uniform(40, 90), rng.uniform(35, 75))).astype(np.float32)
    scene["albedo"] = scene["albedo"] * (1 - grime[..., None]) + grime[..., None] * np.asarray(mud)
    radiance, mean = lit(rng, scene, size)
    rgb = camera(rng, radiance, mean)
    out = {k: scene[k] for k in ("wire", "dx", "dy", "tx", "ty", "half", "stripe")}
    out["rgb"] = rgb.astype(np.float32)
    out["wires"] = [(b, t, c, 2 * r) for (b, t), c, r in zip(colours, curves, radii)]
    return out
