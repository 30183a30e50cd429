"""Lights, shadows and highlights over a scene's height field, and the camera that takes its picture.

A batch of scenes shares the directions of its lights and the make of its camera; colours and light levels are each
scene's own. Half of the batches are taken with care: in good light, in focus, hardly touched up. Colours are Nx3xHxW,
everything else NxHxW, torch tensors on the scenes' device.
"""
import math

import numpy as np
import torch
from torch.nn import functional as F

from materials import blur, grid_noise


def lights_of(rng, n):
    """linear colours of n lights, green 1"""
    return np.stack([light(rng) for _ in range(n)])


def light(rng):
    kind = rng.choice(["day", "tungsten", "led", "cold", "fluo", "any"])
    m = {"day": (1.0, 1.0), "tungsten": (1.7, 0.42), "led": (1.25, 0.72), "cold": (0.9, 1.15), "fluo": (0.95, 0.8), "any": (1.1, .85)}[kind]
    s = 0.22 if kind == "any" else 0.07
    return np.array([m[0] * math.exp(rng.normal(0, s)), 1.0, m[1] * math.exp(rng.normal(0, s))])


def shifted(a, dy, dx):
    return torch.roll(a, (dy, dx), (1, 2))


def lit(rng, scene, size, lift):
    n, h, w, dev = scene["n"], scene["h"], scene["w"], scene["device"]
    colour3 = lambda c: torch.tensor(np.asarray(c, np.float32), device=dev)[:, :, None, None]
    each = lambda f: torch.tensor(np.array([f() for _ in range(n)], np.float32), device=dev)[:, None, None]
    height, albedo = scene["height"], scene["albedo"]
    bump = scene["bump"]
    nx = scene["nx"] - (shifted(bump, 0, -1) - bump)
    ny = scene["ny"] - (shifted(bump, -1, 0) - bump)
    edge_x, edge_y = shifted(height, 0, -1) - height, shifted(height, -1, 0) - height
    flat = (scene["wire"] < 0).float()
    nx = nx - flat * edge_x.clamp(-1.5, 1.5) * 0.5
    ny = ny - flat * edge_y.clamp(-1.5, 1.5) * 0.5
    nz = (1 - nx * nx - ny * ny).clamp_min(0.02).sqrt()
    norm = (nx * nx + ny * ny + nz * nz).sqrt()
    nx, ny, nz = nx / norm, ny / norm, nz / norm
    first = lights_of(rng, n)
    ambient = first if rng.random() < 0.5 else lights_of(rng, n)
    if rng.random() < (.1 if scene["care"] else .4):  # lamp and sky differ much in colour: shadows are tinted as plainly as a wire
        tilt = np.exp(rng.normal(0, .6, (n, 1)))
        ambient = ambient * np.concatenate([1 / tilt, np.ones_like(tilt), tilt], 1)
    far = max(2.0, size * 1.2)
    # Under an overcast sky or a large window wires look flat: hardly shaded across, hardly a shadow.
    flatly = rng.random() < .4
    behind = flat * scene["air"]  # far away: no shadow of the wires falls there
    low = height - lift * (1 - flat)
    ao = torch.exp(-(1 - behind) * rng.uniform(.3, 1.0) * (rng.uniform(0, .5) if flatly else 1) * (blur(low, far) - low).clamp_min(0) / far)
    flash = rng.random() < .15  # the phone's own light: from where it looks, the middle brighter than the rim
    around = each(lambda: (rng.uniform(0.25, 0.9) if rng.random() < .7 else rng.uniform(0.06, 0.3)) * (rng.uniform(.1, .6) if flash else 1))
    total = (around * ao * ((0.8 + 0.2 * nz) * 1.5 if flatly else 0.55 + 0.45 * nz))[:, None] * colour3(ambient)
    gloss = torch.zeros((n, 3, h, w), device=dev)
    y, x = torch.meshgrid(torch.linspace(0, 1, h, device=dev), torch.linspace(0, w / h, w, device=dev), indexing="ij")
    lights = [first] + [lights_of(rng, n) for _ in range(int(rng.choice([0, 0, 1, 1, 2])))]
    shiny = scene["gloss"] * each(lambda: math.exp(rng.normal(0, .5)))
    for index, colour in enumerate(lights):
        own = flash and index == 0
        azimuth, elevation = rng.uniform(0, 2 * math.pi), math.radians(rng.uniform(78, 89) if own else rng.uniform(22, 85))
        lx, ly, lz = math.cos(azimuth) * math.cos(elevation), math.sin(azimuth) * math.cos(elevation), math.sin(elevation)
        shade = torch.ones((n, h, w), device=dev)
        steps = 12
        step = max(1.5, (6 * size + lift) / steps / max(.35, math.tan(elevation)))
        for k in range(1, steps + 1):
            over = shifted(height, -round(ly * k * step / max(.2, math.cos(elevation))), -round(lx * k * step / max(.2, math.cos(elevation))))
            rise = k * step * math.tan(elevation)
            shade = torch.minimum(shade, 1 - ((over - height - rise) / (0.15 * size + 0.1 * rise)).clamp(0, 1))
        shade = blur(shade, rng.uniform(0.6, 0.35 * (size + lift) + 1))
        shade = shade + (1 - shade) * behind
        power = each(lambda: math.exp(rng.normal(0, .25 if scene["care"] else .4)) * (rng.uniform(.03, .3) if flatly and not own else 1))
        fall = power * shade
        if own or rng.random() < 0.5:  # a near lamp: brighter on one side
            edge = .3 if own else 0
            px, py, reach = each(lambda: rng.uniform(edge, 1 - edge) * w / h), each(lambda: rng.uniform(edge, 1 - edge)), each(lambda: rng.uniform(0.35, 1.5))
            fall = fall * (0.15 + torch.exp(-((x - px) ** 2 + (y - py) ** 2) / reach**2))
        c = colour3(colour)
        total = total + (fall * (nx * lx + ny * ly + nz * lz).clamp_min(0))[:, None] * c
        hx, hy, hz = lx, ly, lz + 1
        hl = math.sqrt(hx * hx + hy * hy + hz * hz)
        nh = ((nx * hx + ny * hy + nz * hz) / hl).clamp_min(1e-4)
        gloss = gloss + (fall * shiny * torch.pow(nh, scene["sharp"]) * scene["sharp"].sqrt() * 0.06 * power)[:, None] * c
    # bright windows and tubes mirrored in the curved insulation: long streaks that are no tracer
    for _ in range(int(rng.choice([0, 1, 1, 2, 3]))):
        place, wide = each(lambda: rng.uniform(-0.85, 0.85)), each(lambda: math.exp(rng.uniform(math.log(.02), math.log(.35))))
        t = rng.uniform(0, 2 * math.pi)
        m = nx * math.cos(t) + ny * math.sin(t)
        window = torch.exp(-((m - place) / wide) ** 2) * (1 - flat)
        if rng.random() < .4:
            window = window * (grid_noise(rng, n, h, w, rng.uniform(2, 12), dev) + .6).clamp(0, 1)
        tint = ambient if rng.random() < .5 else lights_of(rng, n)
        gloss = gloss + (window * shiny * each(lambda: rng.uniform(0.0, 0.16 if rng.random() < .6 else .6)))[:, None] * colour3(tint)
    bounced = albedo * total
    out = albedo * (total + rng.uniform(.05, .3) * blur(bounced, far * 1.5) * (1.1 - ao)[:, None]) + gloss
    return out, total.mean((2, 3)).cpu().numpy()


def jpeg(rgb, quality):
    """the losses of JPEG with halved colour resolution; rgb Nx3xHxW, 0..1"""
    dev = rgb.device
    h, w = rgb.shape[2] // 16 * 16, rgb.shape[3] // 16 * 16
    m = torch.tensor([[.299, .587, .114], [-.1687, -.3313, .5], [.5, -.4187, -.0813]], device=dev)
    ycc = torch.einsum("ij,njhw->nihw", m, rgb[:, :, :h, :w] * 255)
    i = np.arange(8)
    d = np.sqrt(2 / 8) * np.cos((2 * i[None] + 1) * i[:, None] * math.pi / 16)
    d[0] /= math.sqrt(2)
    d = torch.tensor(d.astype(np.float32), device=dev)
    scale = (5000 / quality if quality < 50 else 200 - 2 * quality) / 100
    rough = np.hypot(*np.meshgrid(i, i))
    tables = [np.maximum(1, (10 + 9 * rough) * scale), np.maximum(1, (14 + 18 * rough) * scale)]

    def coded(p, table):
        t = torch.tensor(table.astype(np.float32), device=dev)
        shape, (ph, pw) = p.shape, p.shape[-2:]
        b = p.reshape(-1, ph // 8, 8, pw // 8, 8).permute(0, 1, 3, 2, 4)
        f = d @ b @ d.T
        b = d.T @ (torch.round(f / t) * t) @ d
        return b.permute(0, 1, 3, 2, 4).reshape(shape)

    luma = coded(ycc[:, 0] - 128, tables[0]) + 128
    chroma = coded(F.avg_pool2d(ycc[:, 1:], 2), tables[1])
    cb, cr = F.interpolate(chroma, scale_factor=2, mode="nearest" if quality < 80 else "bilinear").unbind(1)
    out = torch.stack([luma + 1.402 * cr, luma - .3441 * cb - .7141 * cr, luma + 1.772 * cb], 1)
    return out.round().clamp(0, 255) / 255


def srgb(v):
    return torch.where(v <= .0031308, 12.92 * v, 1.055 * v.clamp_min(1e-6) ** (1 / 2.4) - .055)


def focus(rng, v, scene):
    """sharp where the plane of focus is; now and then not at all, or moved"""
    care = scene["care"]
    s = rng.uniform(0.45, 1.3) if care or rng.random() < .75 else rng.uniform(1.2, 3.0)
    near = blur(v, s)
    if not care and rng.random() < .06:  # moved while it was taken
        t, far = rng.uniform(0, math.pi), rng.uniform(1, 5)
        near = sum(shifted(near.flatten(0, 1), round(math.sin(t) * k * far), round(math.cos(t) * k * far)) for k in (-1, -.5, 0, .5, 1)).view(near.shape) / 5
    if rng.random() < .3:  # depth of field: some of the picture is out of it
        h, w, dev = scene["h"], scene["w"], scene["device"]
        t = rng.uniform(0, 2 * math.pi)
        y, x = torch.meshgrid(torch.linspace(-1, 1, h, device=dev), torch.linspace(-1, 1, w, device=dev), indexing="ij")
        depth = (x * math.cos(t) + y * math.sin(t))[None] + rng.normal(0, .5)
        depth = depth.abs() * rng.uniform(.3, 1.2) + rng.uniform(0, .01) * scene["height"]
        far = blur(v, s + rng.uniform(1, 5))
        a = (depth - .3).clamp(0, 1)[:, None]
        near = near * (1 - a) + far * a
    return near


def veiled(rng, v):
    """through a greasy lens: a part of all light lies over the picture evenly, and round what is bright"""
    share = torch.tensor(np.where(rng.random(len(v)) < .7, rng.uniform(0, .12, len(v)), rng.uniform(.1, .3, len(v))).astype(np.float32), device=v.device)[:, None, None, None]
    halo = torch.lerp(blur(v, rng.uniform(6, 60)), v.mean((2, 3), keepdim=True), rng.random())
    return torch.lerp(v, halo, share)


def fringed(rng, v):
    """red and blue a little larger or smaller than green, and blue softer: fringes at what is bright, most of them at the rim"""
    n, _, h, w = v.shape
    out = [v[:, 1:2]]
    for channel in (0, 2):
        grow, x, y = 1 + rng.normal(0, .0015), rng.normal(0, .4) * 2 / w, rng.normal(0, .4) * 2 / h
        place = F.affine_grid(torch.tensor([[[grow, 0, x], [0, grow, y]]], dtype=torch.float32, device=v.device), (1, 1, h, w), align_corners=False)
        out.insert(0 if channel == 0 else 2, F.grid_sample(v[:, channel:channel + 1], place.expand(n, -1, -1, -1), padding_mode="border", align_corners=False))
    if rng.random() < .5:
        out[2] = blur(out[2], rng.uniform(.5, 2))
    return torch.cat(out, 1)


def exposed(rng, v, care):
    """as a camera sets it: by the mean of the picture, or by what is brightest, so that white paper is white"""
    n = len(v)
    each = lambda f: torch.tensor(np.array([f() for _ in range(n)], np.float32), device=v.device)[:, None, None, None]
    stops = lambda: rng.uniform(-.7, .8) if care else rng.uniform(-1.4, 0.4) if rng.random() < .8 else rng.uniform(-2, 1.3)
    by_mean = each(lambda: 0.17 * 2 ** stops()) / v.mean((1, 2, 3), keepdim=True).clamp_min(1e-3)
    bright = torch.quantile(F.avg_pool2d(v.amax(1, keepdim=True), 8).flatten(1), rng.uniform(.88, .99), 1)
    by_white = each(lambda: rng.uniform(.65 if care else .4, 1.2)) / bright.clamp_min(1e-3)[:, None, None, None]
    return v * torch.where(each(rng.random) < .45, by_white, by_mean)


def developed(rng, v, each, care):
    """what a phone makes of it after the tone curve: local contrast, noise reduction, sharpening"""
    if rng.random() < .35:  # shadows lifted and lights held back, place by place
        luma = v.mean(1, keepdim=True)
        wide = blur(luma, rng.uniform(8, 50)).clamp_min(.02)
        v = v * ((wide / luma.mean((2, 3), keepdim=True).clamp_min(.05)) ** -each(lambda: rng.uniform(0, .45))).clamp(.5, 2)
    if rng.random() < .6:
        c = each(lambda: rng.uniform(0, .35) if care or rng.random() < .6 else rng.uniform(.3, .9))
        s = v.clamp(0, 1)
        v = v * (1 - c) + c * (s * s * (3 - 2 * s))
    if rng.random() < .3:  # darks crushed
        b = each(lambda: rng.uniform(0, .04 if care else .12))
        v = (v - b) / (1 - b)
    v = v.clamp(0, 1)
    if rng.random() < .35:  # smeared by noise reduction: colour more than light
        luma = v.mean(1, keepdim=True)
        v = luma + blur(v - luma, rng.uniform(.8, 3.5))
    if not care and rng.random() < .2:  # the rest of the noise, in colour and coarse
        luma = v.mean(1, keepdim=True)
        coarse = blur(torch.randn_like(v), rng.uniform(.8, 3)) * rng.uniform(.02, .08)
        v = v + (coarse - coarse.mean(1, keepdim=True) * rng.uniform(.3, 1)) * (1.2 - luma)
    if rng.random() < .3:  # fine texture wiped away, edges kept
        soft = blur(v, rng.uniform(.9, 2))
        fine = v - soft
        v = soft + fine * (fine.abs().amax(1, keepdim=True) / rng.uniform(.02, .1)).clamp(0, 1)
    return v


def camera(rng, radiance, mean, scene):
    n, h, w, dev = scene["n"], scene["h"], scene["w"], scene["device"]
    each = lambda f: torch.tensor(np.array([f() for _ in range(n)], np.float32), device=dev)[:, None, None, None]
    care = scene["care"]
    # Phones leave some of a warm lamp in the picture on purpose.
    least, often = (.55, .15) if care else (.35, .5)
    adapt = np.where(rng.random((n, 1)) < often, rng.uniform(least, 1.1, (n, 1)), rng.uniform(.75, 1.05, (n, 1)))
    spread = rng.choice([.03, .03, .03, .06] if care else [.06, .06, .06, .13], (n, 1))
    # What it takes for the colour of the light is now and then led astray by the colours of what is in view.
    grey, fooled = radiance.mean((2, 3)).cpu().numpy(), np.where(~care & (rng.random((n, 1)) < .25), rng.uniform(0, .6, (n, 1)), 0)
    guess = (mean / mean[:, 1:2]) ** (1 - fooled) * (grey / grey[:, 1:2]) ** fooled
    white = guess ** -adapt * np.exp(rng.normal(0, 1, (n, 3)) * spread)
    # Cameras mix their colours differently.
    cross = rng.normal(0, .03 if care else rng.choice([.06, .06, .1]), (n, 3, 3)) * (1 - np.eye(3)) * (rng.random((n, 1, 1)) < .5)
    matrix = (np.eye(3) + cross - np.eye(3) * cross.sum(2)[:, :, None]) * white[:, None, :]
    v = torch.einsum("nij,njhw->nihw", torch.tensor(matrix.astype(np.float32), device=dev), radiance).clamp_min(0)
    if rng.random() < (.15 if care else .35):
        v = veiled(rng, v)
    v = exposed(rng, v, care)
    y, x = torch.meshgrid(torch.linspace(-1, 1, h, device=dev), torch.linspace(-1, 1, w, device=dev), indexing="ij")
    v = v * (1 - each(lambda: rng.uniform(0, .35) if rng.random() < .8 else rng.uniform(.3, .7)) * (x * x + y * y) / 2)
    v = focus(rng, v, scene)
    if rng.random() < .35:
        v = fringed(rng, v)
    noisy = 1.0 if care else rng.choice([1.0, 1.0, 4.0, 12.0], p=[.4, .2, .3, .1])
    v = v + torch.randn_like(v) * (v.clamp_min(0) * rng.uniform(0, .0005) * noisy + rng.uniform(0, 1.5e-5) * noisy).sqrt()
    mix = each(lambda: rng.uniform(0.95, 1.3 if rng.random() < .75 else 1.6) if care else rng.uniform(0.9, 1.4) if rng.random() < .8 else rng.uniform(.6, 1.6))
    luma = v.mean(1, keepdim=True)
    v = luma + (v - luma) * mix
    if rng.random() < .6:  # highlights roll off
        roll = (lambda a: 1 - torch.exp(-a * 1.35)) if rng.random() < .5 else lambda a: a / (a.clamp_min(0) + .25) * 1.25
        if rng.random() < .6:  # keeping their hue, on the way to white
            most = v.amax(1, keepdim=True).clamp_min(1e-4)
            level = roll(most).clamp_max(1)
            v = torch.lerp(v * (level / most), level.expand_as(v), 1 - torch.exp(-(most - .6).clamp_min(0) * rng.uniform(0, 1)))
        else:
            v = roll(v)
    v = developed(rng, srgb(v.clamp(0, 1)), each, care)
    if rng.random() < .35:  # enlarged from fewer pixels, as thin wires are looked at
        f = rng.uniform(1.2, 2.6)
        v = F.interpolate(v, size=(int(h / f), int(w / f)), mode="bilinear", align_corners=False, antialias=True)
        if rng.random() < .6:  # and those were stored before
            v = jpeg(v[:, :, :int(h / f) // 16 * 16, :int(w / f) // 16 * 16].clamp(0, 1), rng.uniform(40, 92))
        v = F.interpolate(v, size=(h, w), mode="bicubic", align_corners=False).clamp(0, 1)
    if rng.random() < .7:
        v = v + (rng.uniform(0, 1.0) if care or rng.random() < .7 else rng.uniform(.8, 2)) * (v - blur(v, rng.uniform(.8, 1.8 if rng.random() < .7 else 3.5)))
    return jpeg(v.clamp(0, 1), rng.uniform(65 if care else 45, 96))
