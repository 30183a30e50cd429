"""Colours of insulation and of workshop surfaces, and noise to texture them with. Pictures are torch tensors."""
import math

import numpy as np
import torch
from torch.nn import functional as F

CODES = ["BK", "BN", "RD", "OG", "YE", "GN", "BU", "VT", "GY", "WH", "PK", "TQ", "LBU", "LGN"]
CENTRES = {
    "BK": [(30, 30, 32), (45, 45, 48), (60, 58, 60), (28, 28, 36), (10, 10, 12), (16, 17, 20)],
    "BN": [(110, 72, 55), (95, 60, 45), (140, 92, 72), (78, 50, 38), (150, 90, 58), (120, 60, 42), (150, 122, 92), (95, 75, 62), (165, 108, 76), (180, 124, 88), (172, 112, 66)],
    "RD": [(225, 80, 85), (200, 35, 40), (165, 35, 38), (222, 50, 48), (175, 60, 60), (215, 45, 70), (190, 40, 30)],
    "OG": [(232, 112, 40), (225, 100, 30), (240, 135, 62), (205, 105, 45), (248, 150, 90)],
    "YE": [(245, 190, 60), (238, 178, 45), (232, 205, 55), (220, 190, 50), (190, 160, 40), (240, 220, 90), (205, 198, 60), (165, 145, 35), (228, 224, 120), (250, 215, 40)],
    "GN": [(40, 125, 65), (55, 145, 80), (30, 95, 52), (85, 150, 95), (45, 110, 55), (15, 125, 95), (30, 140, 110), (5, 150, 120),
           (20, 165, 135), (5, 120, 100), (0, 140, 115), (30, 175, 150), (0, 125, 130), (0, 150, 150), (0, 95, 95), (5, 160, 145)],
    "BU": [(45, 95, 150), (40, 75, 165), (50, 85, 185), (28, 52, 112), (62, 95, 190), (35, 55, 140), (26, 36, 95), (15, 70, 180), (62, 105, 158),
           (72, 112, 160), (80, 122, 178)],
    "VT": [(125, 70, 150), (145, 75, 175), (100, 58, 125), (135, 85, 150), (90, 60, 130), (62, 38, 92), (110, 45, 115)],
    "GY": [(128, 130, 132), (95, 97, 100), (82, 84, 87), (88, 88, 86), (160, 160, 162), (140, 142, 140), (112, 116, 122), (172, 170, 165)],
    "WH": [(240, 238, 232), (230, 226, 212), (218, 214, 200), (245, 245, 245), (235, 238, 245), (242, 233, 208), (232, 222, 192), (222, 231, 242), (214, 224, 236)],
    "PK": [(235, 145, 165), (228, 140, 155), (242, 170, 185), (205, 120, 140), (235, 125, 140), (248, 168, 165), (225, 95, 140), (238, 138, 134)],
    "TQ": [(55, 160, 168), (65, 175, 180), (50, 140, 148), (70, 200, 208), (50, 165, 190)],
    "LBU": [(110, 175, 225), (130, 195, 235), (120, 160, 200), (150, 205, 240)],
    "LGN": [(140, 205, 85), (165, 225, 95), (115, 180, 75), (150, 210, 110)],
}
SURFACES = [(52, 80, 150), (90, 140, 200), (150, 40, 38), (60, 120, 75), (200, 190, 160), (130, 95, 65), (100, 70, 50),
            (160, 160, 160), (110, 110, 112), (45, 45, 48), (235, 235, 232), (220, 215, 205), (30, 90, 55), (25, 60, 100),
            (180, 160, 130), (215, 195, 165), (80, 85, 90), (240, 240, 245), (20, 20, 22), (15, 60, 35)]
# Paper, laminate, light wood, concrete, zinc: where most things are laid down to be photographed.
BENCHES = [(235, 235, 232), (220, 215, 205), (215, 195, 165), (240, 240, 245), (180, 160, 130), (205, 178, 140), (190, 165, 140), (248, 248, 246),
           (200, 200, 202), (172, 172, 170), (150, 152, 155), (228, 222, 214), (120, 95, 70), (60, 60, 64), (35, 35, 38)]
BASES = np.array([.21, .09, .1, .07, .09, .15, .1, .055, .075, .08, .05, .015, .04, .04])
TRACERS = np.array([.15, .05, .15, .06, .13, .07, .11, .04, .05, .13, .04, .012, .02, .03])


def linear(srgb):
    v = np.asarray(srgb, np.float64) / 255.0
    return np.where(v <= 0.04045, v / 12.92, ((v + 0.055) / 1.055) ** 2.4)


def insulation(rng, index):
    """linear albedo of one batch of one colour"""
    centres = CENTRES[CODES[index]]
    mix = rng.dirichlet(np.ones(len(centres)) * rng.choice([0.25, 0.7]))
    srgb = mix @ np.array(centres, float)
    v = linear(srgb) * np.exp(rng.normal(0, 0.13)) * np.exp(rng.normal(0, 0.06, 3))
    v = v.mean() + (v - v.mean()) * math.exp(rng.normal(0, 0.12))  # paler or stronger
    if rng.random() < 0.3:  # aged: yellowed and faded
        a = rng.uniform(0, 0.35)
        v = v * (1 - a) + a * v.mean() * np.array([1.1, 1.0, 0.75])
    return np.clip(v, 0.002, 0.92)


def grid_noise(rng, n, h, w, cells, device, stretch=1.0):
    """smooth noise, about -1..1, 'cells' across: n x h x w"""
    gh, gw = max(2, int(cells * h / w / stretch)) + 2, max(2, int(cells)) + 2
    g = torch.randn((n, 1, gh, gw), device=device) * 0.6
    return F.interpolate(g, size=(h, w), mode="bilinear" if cells > w / 8 else "bicubic", align_corners=True)[:, 0]


def fractal(rng, n, h, w, cells, device, octaves=4, gain=0.5, stretch=1.0):
    out, amp = 0, 1.0
    for _ in range(octaves):
        out = out + amp * grid_noise(rng, n, h, w, min(cells, w / 2), device, stretch)
        cells, amp = cells * 2.1, amp * gain
    return out


def grain(rng, n, h, w, device, cells=None, stretch=None):
    """as fractal, but long in one direction, the same for all of the batch; 'cells' across it"""
    side = int(math.hypot(h, w)) + 2
    cells, stretch = cells or rng.uniform(8, 60), stretch or rng.choice([rng.uniform(4, 12), rng.uniform(12, 40)])
    wide = fractal(rng, n, side, side, cells, device, 4, rng.uniform(.5, .9), stretch)
    t = rng.uniform(0, math.pi)
    y, x = torch.meshgrid(torch.linspace(-1, 1, h, device=device) * h / side, torch.linspace(-1, 1, w, device=device) * w / side, indexing="ij")
    place = torch.stack([x * math.cos(t) - y * math.sin(t), x * math.sin(t) + y * math.cos(t)], -1)
    return F.grid_sample(wide[:, None], place[None].expand(n, -1, -1, -1), align_corners=False)[:, 0]


def blur(v, sigma):
    """Gaussian over the last two of three or four dimensions; a wide one works on a reduced picture"""
    h, w = v.shape[-2:]
    x = v.reshape(-1, 1, h, w)
    f = max(1, int(sigma / 2.5))
    if f > 1:
        x = F.avg_pool2d(x, f, ceil_mode=True, count_include_pad=False)
    s = sigma / f
    r = max(1, int(3 * s + 0.5))
    k = torch.arange(-r, r + 1, device=v.device, dtype=torch.float32)
    k = torch.exp(-0.5 * (k / s) ** 2)
    k = k / k.sum()
    x = F.conv2d(F.pad(x, (r, r, r, r), mode="replicate"), k[None, None, None])
    x = F.conv2d(x, k[None, None, :, None])
    if f > 1:
        x = F.interpolate(x, size=(h, w), mode="bilinear", align_corners=False)
    return x.reshape(v.shape)
