"""Colours of insulation and of workshop surfaces, and noise to texture them with."""
import numpy as np

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
