"""Lights, shadows and highlights over a scene's height field, and the camera that takes its picture."""
import math

import numpy as np
from scipy.ndimage import gaussian_filter


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
