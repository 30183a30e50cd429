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

from scipy.ndimage import gaussian_filter

CODES = ["BK", "BN", "RD", "OG", "YE", "GN", "BU", "VT", "GY", "WH", "PK", "TQ", "LBU", "LGN"]
CENTRES = {
    "BK": [(30, 30, 32), (45, 45, 48), (60, 58, 60)],
    "BN": [(110, 72, 55), (95, 60, 45), (140, 92, 72), (78, 50, 38), (150, 90, 58)],
    "RD": [(200, 35, 40), (165, 35, 38), (222, 50, 48), (175, 60, 60)],
    "OG": [(232, 112, 40), (225, 100, 30), (240, 135, 62), (205, 105, 45)],
    "YE": [(232, 205, 55), (220, 190, 50), (190, 160, 40), (240, 220, 90), (205, 198, 60)],
    "GN": [(40, 125, 65), (55, 145, 80), (30, 95, 52), (85, 150, 95), (45, 110, 55), (15, 125, 95), (30, 140, 110)],
    "BU": [(45, 95, 150), (40, 75, 165), (50, 85, 185), (28, 52, 112), (62, 95, 190), (35, 55, 140)],
    "VT": [(125, 70, 150), (145, 75, 175), (100, 58, 125), (135, 85, 150)],
    "GY": [(128, 130, 132), (95, 97, 100), (160, 160, 162), (140, 142, 140)],
    "WH": [(240, 238, 232), (230, 226, 212), (218, 214, 200), (245, 245, 245)],
    "PK": [(235, 145, 165), (228, 140, 155), (242, 170, 185), (205, 120, 140)],
    "TQ": [(45, 160, 168), (60, 175, 180), (40, 140, 148), (60, 200, 208)],
    "LBU": [(110, 175, 225), (130, 195, 235), (120, 160, 200), (150, 205, 240)],
    "LGN": [(140, 205, 85), (165, 225, 95), (115, 180, 75), (150, 210, 110)],
}
SURFACES = [(52, 80, 150), (90, 140, 200), (150, 40, 38), (60, 120, 75), (200, 190, 160), (130, 95, 65), (100, 70, 50),
            (160, 160, 160), (110, 110, 112), (45, 45, 48), (235, 235, 232), (220, 215, 205), (30, 90, 55), (25, 60, 100),
            (180, 160, 130), (215, 195, 165), (80, 85, 90), (240, 240, 245)]
BASES = np.array([.11, .09, .1, .07, .08, .09, .1, .055, .065, .08, .05, .045, .06, .06])
TRACERS = np.array([.15, .05, .15, .06, .13, .07, .11, .04, .05, .13, .04, .02, .02, .03])


def linear(srgb):
    v = np.asarray(srgb, np.float64) / 255.0
    return np.where(v <= 0.04045, v / 12.92, ((v + 0.055) / 1.055) ** 2.4)


def insulation(rng, index):
    """linear albedo of one batch of one colour"""
    centres = CENTRES[CODES[index]]
    mix = rng.dirichlet(np.ones(len(centres)) * 0.7)
    srgb = mix @ np.array(centres, float)
    v = linear(srgb) * np.exp(rng.normal(0, 0.13)) * np.exp(rng.normal(0, 0.06, 3))
    if rng.random() < 0.3:  # aged: yellowed and faded
        a = rng.uniform(0, 0.35)
        v = v * (1 - a) + a * v.mean() * np.array([1.1, 1.0, 0.75])
    return np.clip(v, 0.006, 0.92)


def grid_noise(rng, h, w, cells, stretch=1.0):
    """smooth noise, about -1..1, 'cells' across"""
    gh, gw = max(2, int(cells * h / w / stretch)) + 2, max(2, int(cells)) + 2
    g = np.asarray(rng.normal(0, 0.6, (gh, gw)).astype(np.float32))
    y, x = np.linspace(0, gh - 1.001, h, dtype=np.float32), np.linspace(0, gw - 1.001, w, dtype=np.float32)
    y0, x0 = y.astype(np.int32), x.astype(np.int32)
    fy, fx = (y - y0)[:, None], (x - x0)[None]
    fy, fx = fy * fy * (3 - 2 * fy), fx * fx * (3 - 2 * fx)
    a = g[y0][:, x0] * (1 - fx) + g[y0][:, x0 + 1] * fx
    b = g[y0 + 1][:, x0] * (1 - fx) + g[y0 + 1][:, x0 + 1] * fx
    return a * (1 - fy) + b * fy


def fractal(rng, h, w, cells, octaves=4, gain=0.5, stretch=1.0):
    n, amp = 0, 1.0
    for _ in range(octaves):
        n = n + amp * grid_noise(rng, h, w, min(cells, w / 2), stretch)
        cells, amp = cells * 2.1, amp * gain
    return n


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


def light(rng):
    """linear colour of a light, green 1"""
    kind = rng.choice(["day", "tungsten", "led", "cold", "fluo", "any"])
    m = {"day": (1.0, 1.0), "tungsten": (1.7, 0.42), "led": (1.25, 0.72), "cold": (0.9, 1.15), "fluo": (0.95, 0.8), "any": (1.1, .85)}[kind]
    s = 0.22 if kind == "any" else 0.07
    return np.array([m[0] * math.exp(rng.normal(0, s)), 1.0, m[1] * math.exp(rng.normal(0, s))])


def shifted(a, dy, dx):
    return np.roll(a, (dy, dx), (0, 1))


def lit(rng, scene, size):
    h, w = scene["h"], scene["w"]
    height, albedo = scene["height"], scene["albedo"]
    bump = scene["bump"]
    nx = scene["nx"] - (shifted(bump, 0, -1) - bump)
    ny = scene["ny"] - (shifted(bump, -1, 0) - bump)
    edge_x, edge_y = shifted(height, 0, -1) - height, shifted(height, -1, 0) - height
    flat = scene["wire"] < 0
    nx = np.where(flat, nx - np.clip(edge_x, -1.5, 1.5) * 0.5, nx)
    ny = np.where(flat, ny - np.clip(edge_y, -1.5, 1.5) * 0.5, ny)
    nz = np.sqrt(np.maximum(0.02, 1 - nx * nx - ny * ny))
    norm = np.sqrt(nx * nx + ny * ny + nz * nz)
    nx, ny, nz = nx / norm, ny / norm, nz / norm
    first = light(rng)
    ambient = first if rng.random() < 0.5 else light(rng)
    second = light(rng)
    far = max(2.0, size * 1.2)
    ao = np.exp(-rng.uniform(.3, 1.0) * np.maximum(0, gaussian_filter(height, far) - height) / far)
    total = (rng.uniform(0.25, 0.9) * ao * (0.55 + 0.45 * nz))[..., None] * np.asarray(ambient.astype(np.float32))
    gloss = np.zeros((h, w, 3), np.float32)
    y, x = np.meshgrid(np.linspace(0, 1, h, dtype=np.float32), np.linspace(0, w / h, w, dtype=np.float32), indexing="ij")
    for colour in ([first] if rng.random() < 0.55 else [first, second]):
        azimuth, elevation = rng.uniform(0, 2 * math.pi), math.radians(rng.uniform(22, 85))
        lx, ly, lz = math.cos(azimuth) * math.cos(elevation), math.sin(azimuth) * math.cos(elevation), math.sin(elevation)
        shade = np.ones((h, w), np.float32)
        steps = 14
        step = max(1.5, 6 * size / steps / max(.35, math.tan(elevation)))
        for k in range(1, steps + 1):
            over = shifted(height, -round(ly * k * step / max(.2, math.cos(elevation))), -round(lx * k * step / max(.2, math.cos(elevation))))
            rise = k * step * math.tan(elevation)
            shade = np.minimum(shade, 1 - np.clip((over - height - rise) / (0.15 * size + 0.1 * rise), 0, 1))
        shade = gaussian_filter(shade, rng.uniform(0.6, 0.35 * size + 1))
        spot = np.ones((h, w), np.float32)
        if rng.random() < 0.5:  # a near lamp: brighter on one side
            px, py, reach = rng.uniform(0, w / h), rng.uniform(0, 1), rng.uniform(0.35, 1.5)
            spot = 0.15 + np.exp(-((x - px) ** 2 + (y - py) ** 2) / reach**2)
        power = math.exp(rng.normal(0, 0.4))
        fall = power * spot * shade
        c = np.asarray(colour.astype(np.float32))
        total = total + (fall * np.maximum(0, nx * lx + ny * ly + nz * lz))[..., None] * c
        hx, hy, hz = lx, ly, lz + 1
        hl = math.sqrt(hx * hx + hy * hy + hz * hz)
        nh = np.maximum(0, (nx * hx + ny * hy + nz * hz) / hl)
        gloss = gloss + (fall * scene["gloss"] * np.power(nh, scene["sharp"]) * np.sqrt(scene["sharp"]) * 0.06 * power)[..., None] * c
    # a bright window or tube mirrored in the curved insulation
    if rng.random() < 0.6:
        place, wide = rng.uniform(-0.75, 0.75), rng.uniform(0.03, 0.25)
        t = rng.uniform(0, 2 * math.pi)
        m = nx * math.cos(t) + ny * math.sin(t)
        window = np.exp(-((m - place) / wide) ** 2) * np.where(flat, 0.0, 1.0)
        gloss = gloss + (window * scene["gloss"] * rng.uniform(0.0, 0.16))[..., None] * np.asarray(ambient.astype(np.float32))
    bounced = albedo * total
    bleed = np.stack([gaussian_filter(bounced[..., i], far * 1.5) for i in range(3)], -1)
    out = albedo * (total + rng.uniform(.05, .3) * bleed * (1.1 - ao)[..., None]) + gloss
    mean = total.mean((0, 1))
    return out, mean


def jpeg(rgb, quality):
    """the losses of JPEG with halved colour resolution"""
    h, w = rgb.shape[0] // 16 * 16, rgb.shape[1] // 16 * 16
    c = rgb[:h, :w] * 255
    m = np.asarray(np.array([[.299, .587, .114], [-.1687, -.3313, .5], [.5, -.4187, -.0813]], np.float32))
    ycc = c @ m.T
    i = np.arange(8)
    d = np.sqrt(2 / 8) * np.cos((2 * i[None] + 1) * i[:, None] * math.pi / 16)
    d[0] /= math.sqrt(2)
    d = np.asarray(d.astype(np.float32))
    scale = (5000 / quality if quality < 50 else 200 - 2 * quality) / 100
    rough = np.hypot(*np.meshgrid(i, i))
    tables = [np.maximum(1, (10 + 9 * rough) * scale), np.maximum(1, (14 + 18 * rough) * scale)]
    planes = []
    for k in range(3):
        p = ycc[..., k] - (128 if k == 0 else 0)
        if k:
            p = (p[::2, ::2] + p[1::2, ::2] + p[::2, 1::2] + p[1::2, 1::2]) / 4
        t = np.asarray(tables[min(k, 1)].astype(np.float32))
        b = p.reshape(p.shape[0] // 8, 8, p.shape[1] // 8, 8).transpose(0, 2, 1, 3)
        f = d @ b @ d.T
        b = d.T @ (np.rint(f / t) * t) @ d
        p = b.transpose(0, 2, 1, 3).reshape(p.shape)
        if k:
            p = np.repeat(np.repeat(p, 2, 0), 2, 1)
        planes.append(p + (128 if k == 0 else 0))
    yy, cb, cr = planes
    out = np.stack([yy + 1.402 * cr, yy - .3441 * cb - .7141 * cr, yy + 1.772 * cb], -1)
    return np.clip(np.rint(out), 0, 255) / 255


def camera(rng, radiance, mean):
    h, w = radiance.shape[:2]
    adapt = rng.uniform(0.35, 1.1)
    white = (mean / mean[1]) ** -adapt * np.exp(rng.normal(0, 0.06, 3))
    v = radiance * np.asarray(white.astype(np.float32))
    level = float(v.mean())
    v = v * (0.17 * 2 ** rng.uniform(-1.4, 0.4) / max(level, 1e-3))
    y, x = np.meshgrid(np.linspace(-1, 1, h, dtype=np.float32), np.linspace(-1, 1, w, dtype=np.float32), indexing="ij")
    v = v * (1 - rng.uniform(0, .35) * (x * x + y * y) / 2)[..., None]
    s = rng.uniform(0.45, 1.3) if rng.random() < .8 else rng.uniform(1.2, 2.4)
    v = np.stack([gaussian_filter(v[..., i], s) for i in range(3)], -1)
    seed = int(rng.integers(1 << 30))
    g = np.random.RandomState(seed)
    v = v + g.standard_normal(v.shape).astype(np.float32) * np.sqrt(np.maximum(v, 0) * rng.uniform(0, .0005) + rng.uniform(0, 1.5e-5))
    mix = rng.uniform(0.9, 1.2)
    luma = v.mean(-1, keepdims=True)
    v = luma + (v - luma) * mix
    if rng.random() < .6:  # highlights roll off
        v = 1 - np.exp(-v * 1.35) if rng.random() < .5 else v / (v + .25) * 1.25
    v = np.clip(v, 0, 1)
    v = np.where(v <= .0031308, 12.92 * v, 1.055 * np.power(np.maximum(v, 1e-6), 1 / 2.4) - .055)
    if rng.random() < .4:
        c = rng.uniform(0, .35)
        v = v * (1 - c) + c * (v * v * (3 - 2 * v))
    if rng.random() < .7:
        b = np.stack([gaussian_filter(v[..., i], 1.0) for i in range(3)], -1)
        v = v + rng.uniform(0, 1.0) * (v - b)
    return jpeg(np.clip(v, 0, 1), rng.uniform(60, 96))


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
