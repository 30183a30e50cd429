"""What lies about where wires are photographed: circuit boards, printed paper, seams, parts, painted flat or as low blocks.

It is no wire, though much of it is long and thin. Painted with Pillow: some milliseconds for a picture.
"""
import math

import numpy as np
import torch
from PIL import Image, ImageDraw

from materials import blur

BOARDS = [(18, 92, 52), (0, 112, 72), (20, 70, 40), (18, 52, 112), (10, 35, 80), (24, 24, 28), (150, 26, 32), (72, 32, 110), (228, 230, 228)]
METALS = [(200, 202, 200), (168, 170, 172), (206, 172, 92), (150, 148, 140)]


class Sheet:
    """a picture, how high it stands (pixels) and where it is painted, with a frame that may be turned"""

    def __init__(self, h, w):
        self.size = (w, h)
        self.layers = [Image.new("RGB", self.size), Image.new("L", self.size, 0), Image.new("L", self.size, 0)]
        self.pens = [ImageDraw.Draw(layer) for layer in self.layers]
        self.place((w / 2, h / 2), 0)

    def place(self, centre, turn):
        self.c, self.u, self.v = np.array(centre, float), np.array([math.cos(turn), math.sin(turn)]), np.array([-math.sin(turn), math.cos(turn)])

    def at(self, points):
        return [tuple(self.c + a * self.u + b * self.v) for a, b in points]

    def fills(self, colour, high):
        return tuple(int(np.clip(k, 0, 255)) for k in colour), int(np.clip(high, 0, 255)), 255

    def shape(self, points, colour, high=0):
        for pen, fill in zip(self.pens, self.fills(colour, high)):
            pen.polygon(self.at(points), fill=fill)

    def block(self, a, b, half_a, half_b, colour, high=0):
        self.shape([(a - half_a, b - half_b), (a + half_a, b - half_b), (a + half_a, b + half_b), (a - half_a, b + half_b)], colour, high)

    def line(self, points, colour, width, high=0):
        for pen, fill in zip(self.pens, self.fills(colour, high)):
            pen.line(self.at(points), fill=fill, width=max(1, round(width)), joint="curve")

    def disc(self, a, b, radius, colour, high=0):
        (x, y), = self.at([(a, b)])
        for pen, fill in zip(self.pens, self.fills(colour, high)):
            pen.ellipse([x - radius, y - radius, x + radius, y + radius], fill=fill)

    def arrays(self):
        return [np.asarray(layer) for layer in self.layers]


def writing(rng, sheet, a, b, height, count, colour):
    """strokes that look like letters"""
    for _ in range(count):
        corner = lambda: (a + rng.choice([0, .5]) * height, b + rng.choice([0, .5, 1]) * height)
        sheet.line([corner() for _ in range(int(rng.integers(3, 6)))], colour, height * .15)
        a += height * rng.choice([.8, .8, .8, 1.4])


def board(rng, sheet, w, h, size):
    sheet.place(rng.uniform(-.05, 1.05, 2) * [w, h], rng.choice([rng.normal(0, .1), rng.uniform(0, 6.28)]))
    half_a, half_b = np.exp(rng.uniform(math.log(50), math.log(300), 2))
    colour = np.array(BOARDS[int(rng.integers(len(BOARDS)))]) * math.exp(rng.normal(0, .2))
    sheet.block(0, 0, half_a, half_b, colour, rng.uniform(1, 6))
    pitch = math.exp(rng.uniform(math.log(5), math.log(24)))
    inside = lambda: (rng.uniform(-.9, .9) * half_a, rng.uniform(-.9, .9) * half_b)
    lighter = colour * rng.choice([.75, 1.2, 1.45]) + rng.choice([0, 12])
    for _ in range(int(rng.integers(0, 12))):  # tracks, some side by side
        a, b = inside()
        way = [(a, b)]
        for _ in range(int(rng.integers(1, 4))):
            da, db = [(1, 0), (0, 1), (1, 1), (1, -1)][int(rng.integers(4))]
            far = rng.uniform(-8, 8) * pitch
            way.append((float(np.clip(way[-1][0] + far * da, -.97 * half_a, .97 * half_a)), float(np.clip(way[-1][1] + far * db, -.97 * half_b, .97 * half_b))))
        wide = max(1, pitch * rng.uniform(.08, .35))
        for k in range(int(rng.choice([1, 1, 2, 5]))):
            sheet.line([(p + k * wide * 2, q + k * wide * 2) for p, q in way], lighter, wide, 2)
    for _ in range(int(rng.integers(0, 6))):  # rows of pads and pins
        a, b = inside()
        metal = METALS[int(rng.integers(len(METALS)))]
        for k in range(int(rng.integers(2, 12))):
            sheet.disc(a + k * pitch, b, pitch * .38, metal, 4)
            sheet.disc(a + k * pitch, b, pitch * .17, (20, 22, 24), 1)
    for _ in range(int(rng.integers(0, 7))):  # parts with legs
        a, b = inside()
        p, q = pitch * rng.uniform(.6, 5), pitch * rng.uniform(.5, 3)
        metal = METALS[int(rng.integers(len(METALS)))]
        for k in np.arange(-p + pitch * .3, p, pitch * .6):
            for s in (-1, 1):
                sheet.block(a + k, b + s * (q + pitch * .2), pitch * .14, pitch * .25, metal, 5)
        body = [(28, 28, 30), (40, 40, 44), (20, 20, 22), (120, 92, 60), (205, 205, 200), (60, 90, 150), (70, 120, 70)][int(rng.integers(7))]
        sheet.block(a, b, p, q, body, rng.uniform(.5, 2.2) * size)
        if rng.random() < .5:
            writing(rng, sheet, a - p * .7, b - q * .3, min(q * .6, 14), int(rng.integers(2, 6)), np.array(body) + rng.choice([60, 150]))
    for _ in range(int(rng.integers(0, 6))):  # print
        a, b = inside()
        ink = (235, 235, 232) if colour.mean() < 150 else (40, 40, 44)
        if rng.random() < .5:
            writing(rng, sheet, a, b, pitch * rng.uniform(.6, 1.4), int(rng.integers(1, 6)), ink)
        else:
            p, q = pitch * rng.uniform(.6, 4), pitch * rng.uniform(.5, 2)
            sheet.line([(a - p, b - q), (a + p, b - q), (a + p, b + q), (a - p, b + q), (a - p, b - q)], ink, max(1, pitch * .12), 2)


def paper(rng, sheet, w, h):
    sheet.place(rng.uniform(0, 1, 2) * [w, h], rng.uniform(0, 6.28))
    half_a, half_b = np.exp(rng.uniform(math.log(25), math.log(260), 2))
    white = np.array([(240, 240, 238), (232, 228, 216), (236, 228, 180), (225, 205, 160), (250, 250, 252)][int(rng.integers(5))])
    sheet.block(0, 0, half_a, half_b, white, 1)
    ink = [(30, 30, 34), (40, 50, 120), (150, 30, 30)][int(rng.integers(3))]
    tall = rng.uniform(4, 20)
    for k in np.arange(-half_b + tall, half_b - tall, tall * rng.uniform(1.5, 3)):
        if rng.random() < .7:
            writing(rng, sheet, -half_a * .9, k, tall, int(rng.integers(1, max(2, min(24, 1.6 * half_a / tall)))), ink)
        elif rng.random() < .5:
            sheet.line([(-half_a * .95, k), (half_a * .95, k)], ink, 1)


def parts(rng, sheet, w, h):
    """large things of one colour, with seams, slots and holes"""
    for _ in range(int(rng.integers(1, 6))):
        sheet.place(rng.uniform(-.1, 1.1, 2) * [w, h], rng.uniform(0, 6.28))
        grey = rng.uniform(15, 240)
        colour = grey + rng.normal(0, 6, 3) if rng.random() < .6 else rng.uniform(10, 245, 3)
        half_a, half_b = np.exp(rng.uniform(math.log(30), math.log(320), 2))
        high = rng.choice([0, 1, rng.uniform(2, 25)])
        if rng.random() < .65:
            sheet.block(0, 0, half_a, half_b, colour, high)
        else:
            n = int(rng.integers(5, 12))
            t = np.sort(rng.uniform(0, 6.28, n))
            r = half_a * rng.uniform(.6, 1, n)
            sheet.shape(list(zip(r * np.cos(t), r * np.sin(t) * half_b / half_a)), colour, high)
        shade = colour * rng.choice([.5, .7, .85, 1.25])
        kind = rng.random()
        pitch = math.exp(rng.uniform(math.log(6), math.log(50)))
        if kind < .35:  # ribs, fins, a scale
            wide, reach = pitch * rng.uniform(.08, .5), rng.uniform(.15, .95) * half_b
            for a in np.arange(-half_a * .9, half_a * .9, pitch):
                sheet.line([(a, -half_b * .9), (a, -half_b * .9 + reach)], shade, wide, high + rng.choice([-2, 0, 2]))
        elif kind < .6:
            for _ in range(int(rng.integers(1, 8))):
                a, b = rng.uniform(-.8, .8, 2) * [half_a, half_b]
                sheet.disc(a, b, pitch * .6, METALS[int(rng.integers(len(METALS)))], high + 2)
                sheet.disc(a, b, pitch * rng.uniform(.2, .5), shade, high)


def seams(rng, sheet, w, h, size):
    """cracks, seams and threads: thinner than the wires here"""
    for _ in range(int(rng.integers(1, 7))):
        sheet.place(rng.uniform(0, 1, 2) * [w, h], rng.uniform(0, 6.28))
        a = np.linspace(-1, 1, 9) * rng.uniform(20, 400)
        b = np.interp(a, np.linspace(a[0], a[-1], 4), rng.normal(0, rng.choice([0, 30]), 4)) + rng.normal(0, rng.choice([0, 2]), 9)
        sheet.line(list(zip(a, b)), rng.choice([rng.uniform(10, 90), rng.uniform(150, 245)]) + rng.normal(0, 8, 3), rng.uniform(.8, max(1, .5 * size)))


def painted(rng, h, w, size):
    """sRGB picture h x w x 3, its height and where it is painted (255), uint8"""
    sheet = Sheet(h, w)
    for _ in range(int(rng.choice([1, 1, 2, 3]))):
        kind = rng.random()
        if kind < .35:
            board(rng, sheet, w, h, size)
        elif kind < .55:
            paper(rng, sheet, w, h)
        elif kind < .9:
            parts(rng, sheet, w, h)
        else:
            seams(rng, sheet, w, h, size)
    return sheet.arrays()


SHEETS = []  # painted before: each is used again, turned and mirrored


def lay_about(rng, scene, size, which):
    """paints clutter on the ground of the scenes named"""
    h, w, dev = scene["h"], scene["w"], scene["device"]
    for k in np.flatnonzero(which):
        if len(SHEETS) < 48 or rng.random() < .3:
            SHEETS.append(painted(rng, h, w, size))
            del SHEETS[:-48]
        parts = [torch.from_numpy(a.copy()).to(dev) for a in SHEETS[int(rng.integers(len(SHEETS)))]]
        for axis in (0, 1):
            if rng.random() < .5:
                parts = [p.flip(axis) for p in parts]
        colour, high, mask = parts
        v = colour.float() / 255
        v = torch.where(v <= .04045, v / 12.92, ((v + .055) / 1.055) ** 2.4).permute(2, 0, 1).clamp(.004, .92)
        soft = (blur(mask.float()[None] / 255, rng.uniform(.4, 1))[0] > .5) & (mask > 0)
        scene["albedo"][k] = torch.where(soft[None], v * torch.exp(rng.uniform(0, .2) * scene["grain"][k])[None], scene["albedo"][k])
        scene["height"][k] = torch.where(soft, torch.maximum(scene["height"][k], high.float()), scene["height"][k])
        scene["gloss"][k] = torch.where(soft, torch.full_like(v[0], rng.uniform(0, .7)), scene["gloss"][k])
