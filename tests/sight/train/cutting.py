"""Cuts crops and strips out of a batch of made scenes, on the scenes' device: what samples.py does for photos one by one.

Wires are followed as core/sight/follow.cpp goes, all strips of the batch a step at a time.
"""
import math

import numpy as np
import torch
from torch.nn import functional as F

import samples
import scenes
from samples import ACROSS, ALONG, CROP, SPAN, STEP, THUMB

KEYS = ("wire", "dx", "dy", "tx", "ty", "half")


class Fields:
    """where wires are in each picture of a batch"""

    def __init__(self, o):
        self.a = {k: o[k].reshape(-1) for k in KEYS}
        self.n, self.h, self.w = o["wire"].shape

    def index(self, which, x, y):
        i, j = x.floor().long(), y.floor().long()
        inside = (x >= 0) & (y >= 0) & (i < self.w) & (j < self.h)
        return (which * self.h + j.clamp(0, self.h - 1)) * self.w + i.clamp(0, self.w - 1), inside

    def at(self, which, x, y):
        at, inside = self.index(which, x, y)
        a = {k: v[at] for k, v in self.a.items()}
        return inside & (a["wire"] >= 0), x.floor() + .5 + a["dx"], y.floor() + .5 + a["dy"], a["tx"], a["ty"], 2 * a["half"]


class Seen(Fields):
    """where a finder sees wires in pictures, float N x 3 x H x W, 0..255"""

    def __init__(self, finder, pictures):
        n, _, h, w = pictures.shape
        x = F.pad(pictures / 255, (0, -w % 16, 0, -h % 16), mode="replicate")
        with torch.no_grad(), torch.autocast(pictures.device.type, dtype=torch.bfloat16, enabled=pictures.is_cuda):
            told = finder(x).float()
        told = told.repeat_interleave(2, 2).repeat_interleave(2, 3)[:, :, :h, :w]
        right, down = ((torch.arange(k, device=pictures.device) % 2 == 0).float() for k in (w, h))
        turn = 0.5 * torch.atan2(told[:, 4], told[:, 3])
        super().__init__({"wire": torch.where(told[:, 0] > -0.2, 0, -1), "dx": told[:, 1] * 8 + right[None, None], "dy": told[:, 2] * 8 + down[None, :, None],
                          "tx": torch.cos(turn), "ty": torch.sin(turn), "half": told[:, 5].exp() * 8})


def one_way(fields, which, x, y, tx, ty, width):
    """points and whether each was reached, S x steps"""
    step = (0.25 * width).clamp_min(1.5)
    limit = (0.5 * ALONG * STEP * width / step).long() + 1
    going, w = torch.ones_like(x, dtype=torch.bool), width
    xs, ys, reached, seen_widths = [], [], [], []
    for k in range(int(0.5 * ALONG * STEP * 4) + 1):
        ax, ay = x + tx * step, y + ty * step
        seen, cx, cy, nx, ny, sw = fields.at(which, ax, ay)
        aside = -(cx - ax) * ty + (cy - ay) * tx
        sign = torch.where(nx * tx + ny * ty < 0, -1.0, 1.0)
        nx, ny = nx * sign, ny * sign
        going = going & seen & (k < limit) & ((sw.clamp_min(.1) / w).log().abs() <= 0.45) & (aside.abs() <= 0.35 * w + 0.5) & (nx * tx + ny * ty >= 0.8)
        x, y = torch.where(going, ax - ty * aside, x), torch.where(going, ay + tx * aside, y)
        ux, uy = tx + nx, ty + ny
        u = torch.hypot(ux, uy).clamp_min(1e-6)
        tx, ty = torch.where(going, ux / u, tx), torch.where(going, uy / u, ty)
        w = torch.where(going, w + 0.3 * (sw - w), w)
        xs.append(x)
        ys.append(y)
        reached.append(going)
        seen_widths.append(w)
    return torch.stack([torch.stack(xs, 1), torch.stack(ys, 1)], -1), torch.stack(reached, 1), torch.stack(seen_widths, 1)


def track(fields, which, x, y):
    """centre lines S x ALONG x 2, which of their points were followed, widths; as samples.track"""
    ok, cx, cy, tx, ty, width = fields.at(which, x, y)
    again, bx, by, btx, bty, bw = fields.at(which, cx, cy)
    better = again & (torch.hypot(bx - cx, by - cy) < 0.3 * width)
    cx, cy, tx, ty, width = (torch.where(better, b, a) for a, b in ((cx, bx), (cy, by), (tx, btx), (ty, bty), (width, bw)))
    width = width.clamp_min(1.0)
    back, behind, narrow = one_way(fields, which, cx, cy, -tx, -ty, width)
    forth, ahead, wide = one_way(fields, which, cx, cy, tx, ty, width)
    middle = back.shape[1]
    line = torch.cat([back.flip(1), torch.stack([cx, cy], -1)[:, None], forth], 1)
    there = torch.cat([behind.flip(1), torch.ones_like(behind[:, :1]), ahead], 1)
    for _ in range(2):  # ends stay: what was not reached repeats the last point
        inner = (line[:, :-2] + 2 * line[:, 1:-1] + line[:, 2:]) / 4
        both = (there[:, :-2] & there[:, 1:-1] & there[:, 2:])[..., None]
        line = torch.cat([line[:, :1], torch.where(both, inner, line[:, 1:-1]), line[:, -1:]], 1)
    length = (line[:, 1:] - line[:, :-1]).norm(dim=-1)
    s = torch.cat([torch.zeros_like(length[:, :1]), length.cumsum(1)], 1)
    s = s - s[:, middle:middle + 1]
    u = (torch.arange(ALONG, device=x.device) - ALONG / 2 + 0.5)[None] * STEP * width[:, None]
    visible = (u >= s[:, :1]) & (u <= s[:, -1:])
    i = torch.searchsorted(s.contiguous(), u.contiguous()).clamp(1, s.shape[1] - 1)
    s0, s1 = s.gather(1, i - 1), s.gather(1, i)
    f = ((u - s0) / (s1 - s0).clamp_min(1e-6)).clamp(0, 1)[..., None]
    point = lambda j: line.gather(1, j[..., None].expand(-1, -1, 2))
    centre = point(i - 1) * (1 - f) + point(i) * f
    # Its width is the mean of what was met on the way.
    met = (torch.where(behind, narrow, 0).sum(1) + torch.where(ahead, wide, 0).sum(1) + width) / (behind.sum(1) + ahead.sum(1) + 1)
    return centre, visible, met, ok & (there.sum(1) > 1)


def normals(centre):
    d = torch.gradient(centre, dim=1)[0]
    d = d / d.norm(dim=-1, keepdim=True).clamp_min(1e-6)
    return torch.stack([-d[..., 1], d[..., 0]], -1)


def cut_short(visible):
    """the part around the middle without a gap; now and then less"""
    n, dev, mid = len(visible), visible.device, ALONG // 2
    at = torch.arange(ALONG, device=dev)[None]
    lo = torch.where(~visible & (at < mid), at + 1, 0).max(1).values
    hi = torch.where(~visible & (at >= mid), at, ALONG).min(1).values
    some = torch.rand(n, device=dev) < 0.3
    lo = torch.where(some, torch.maximum(lo, torch.randint(0, mid - 5, (n,), device=dev)), lo)
    hi = torch.where(some, torch.minimum(hi, torch.randint(mid + 5, ALONG, (n,), device=dev)), hi)
    return (at >= lo[:, None]) & (at < hi[:, None])


def loosen(centre, width):
    """as wires are followed in use: not quite in the middle, not quite of the right width"""
    n, dev = len(width), width.device
    rough = torch.randn(n, 1, 6, device=dev) * 0.04
    drift = torch.randn(n, 1, device=dev) * 0.05 + F.interpolate(rough, size=ALONG, mode="linear", align_corners=True)[:, 0]
    # Taken for narrower, the tracer at its rim for background.
    narrow = torch.where(torch.rand(n, device=dev) < 0.2, torch.rand(n, device=dev) * 0.4, torch.zeros(n, device=dev))
    drift = drift + (torch.where(torch.rand(n, device=dev) < .5, -1.0, 1.0) * narrow / 2)[:, None]
    loose = centre + normals(centre) * (drift * width[:, None])[..., None]
    return loose, width * (1 - narrow) * torch.exp(torch.randn(n, device=dev) * 0.07 + 0.01)


def strips_of(pictures, which, centre, width, visible):
    """as samples.strip_of; pictures float N x 3 x H x W: S x 4 x ACROSS x ALONG uint8"""
    dev = pictures.device
    n, _, h, w = pictures.shape
    off = ((torch.arange(ACROSS, device=dev) + 0.5) / ACROSS - 0.5)[None, :, None] * SPAN * width[:, None, None]
    p = centre[:, None] + normals(centre)[:, None] * off[..., None]
    x, y = p[..., 0], p[..., 1]
    ok = (x > 0) & (y > 0) & (x < w - 1) & (y < h - 1) & visible[:, None]
    fx, fy = (x - .5).clamp(0, w - 1.001), (y - .5).clamp(0, h - 1.001)
    x0, y0 = fx.floor(), fy.floor()
    at = (y0 * w + x0).long() + which[:, None, None] * (h * w)
    flat = pictures.permute(1, 0, 2, 3).reshape(3, -1)
    fx, fy = fx - x0, fy - y0
    rgb = (flat[:, at] * (1 - fx) + flat[:, at + 1] * fx) * (1 - fy) + (flat[:, at + w] * (1 - fx) + flat[:, at + w + 1] * fx) * fy
    out = torch.cat([rgb.permute(1, 0, 2, 3), torch.full_like(rgb[:1], 255.0).permute(1, 0, 2, 3)], 1) * ok[:, None]
    return (out + 0.5).clamp(0, 255).to(torch.uint8)


def crop(o, k, x, y, size):
    """the square at x, y of picture k, drawn CROP pixels wide: rgb and labels, 7 x CROP/2 x CROP/2 as samples.half_labels"""
    scale, dev = CROP / size, o["rgb"].device
    rgb = o["rgb"][k, :, y:y + size, x:x + size]
    if size != CROP:
        rgb = F.interpolate(rgb[None].float(), size=(CROP, CROP), mode="bilinear", antialias=True)[0].round().clamp(0, 255).to(torch.uint8)
    place = (torch.arange(1, CROP, 2, device=dev) + .5) / scale  # of every second pixel, in the square
    cell = place.floor().long()
    beside = cell + .5 - place
    wire, dx, dy, tx, ty, half, stripe = (o[name][k, y:y + size, x:x + size][cell][:, cell] for name in (*KEYS, "stripe"))
    dx, dy = (dx + beside[None]) * scale, (dy + beside[:, None]) * scale
    # What is most easily mistaken counts more: a tracer for background, the bright gap between two wires for a wire with
    # dark rims, a dark wire for the shadow between its neighbours.
    on = (wire >= 0).float()
    spread = F.max_pool2d(on[None], 13, 1, 6)[0]
    gap = spread * (1 - on)
    narrow = gap * (F.max_pool2d(-F.pad(spread[None], (6, 6, 6, 6)), 13, 1)[0] < 0)
    light = rgb[:, 1::2, 1::2].amax(0).float()
    around = F.avg_pool2d(light[None, None], 25, 1, 12, count_include_pad=False)[0, 0]
    dark = on * ((light < 45) | (light < .55 * around))
    weight = 1 + 4.0 * stripe.float() + .7 * gap + 2 * narrow * (light > around) + 2 * dark
    lab = torch.stack([on, dx / 8, dy / 8, tx * tx - ty * ty, 2 * tx * ty, (half * scale).clamp_min(0.5).div(8).log(), weight])
    return rgb, lab.half()


def from_scenes(seed, shapes, finder=None, crops_each=3):
    """(crops, labels), None when none are asked for, and (strips, thumbs, bases, tracers, levels, whites) of scenes made
    of these scenes.Shapes, None when no wire is seen: tensors on their device.

    With a finder wires are followed as that sees them."""
    rng = np.random.default_rng(seed)
    o = scenes.render(rng, shapes)
    n, h, w, device = shapes.n, shapes.h, shapes.w, shapes.device
    rgb, labs = [], []
    for k in range(n):
        for _ in range(crops_each):
            size = CROP if rng.random() < .6 else int(rng.integers(150, 460))
            picture, lab = crop(o, k, int(rng.integers(0, w - size + 1)), int(rng.integers(0, h - size + 1)), size)
            rgb.append(picture)
            labs.append(lab)
    crops = (torch.stack(rgb), torch.stack(labs)) if rgb else None
    pictures = o["rgb"].float()
    thumbs = F.interpolate(pictures, size=THUMB, mode="area").round().clamp(0, 255).to(torch.uint8)
    tries = 4000
    py, px = rng.integers(0, h, (n, tries)), rng.integers(0, w, (n, tries))
    at = torch.from_numpy((np.arange(n)[:, None] * h + py) * w + px).to(device)
    hit = o["wire"].reshape(-1)[at].cpu().numpy()
    area = h * w / tries
    rows = []
    for k in range(n):
        for index, (base, tracer, width) in enumerate(o["wires"][k]):
            mine = np.flatnonzero(hit[k] == index)
            if len(mine) == 0 or len(mine) * area < 6 * width:
                continue
            for j in mine[:3]:
                rows.append((k, index, px[k, j] + .5, py[k, j] + .5, base, tracer))
    if not rows:
        return crops, None
    t = torch.tensor(np.array(rows, np.float64), device=device)
    which, index, base, tracer = t[:, 0].long(), t[:, 1].long(), t[:, 4].long(), t[:, 5].long()
    fields = Fields(o)
    centre, visible, width, ok = track(Seen(finder, pictures) if finder else fields, which, t[:, 2].float(), t[:, 3].float())
    spread = which[:, None].expand(-1, ALONG)
    where, inside = fields.index(spread, centre[..., 0], centre[..., 1])
    same = fields.a["wire"][where] == index[:, None]
    ok = ok & same[:, ALONG // 2]  # else it is another wire
    only = torch.rand(len(which), device=device) < 0.8  # followed only as far as it is this wire
    visible = cut_short(visible & inside & (same | ~only[:, None]))
    off = torch.linspace(-0.42, 0.42, 9, device=device)[None, :, None] * width[:, None, None]
    q = centre[:, None] + normals(centre)[:, None] * off[..., None]
    there, inside = fields.index(which[:, None, None].expand(-1, 9, ALONG), q[..., 0], q[..., 1])
    mine = (fields.a["wire"][there] == index[:, None, None]) & inside & visible[:, None]
    share = (o["stripe"].reshape(-1)[there] & mine).sum((1, 2)) / mine.sum((1, 2)).clamp_min(1)
    level = torch.where((tracer < 0) | (share < 0.02), 0, torch.where(share < 0.06, 1, 2))
    loose, lw = (centre, width) if finder else loosen(centre, width)
    strips = strips_of(pictures, which, loose, lw, visible)
    keep = ok & (visible.sum(1) > 3)
    tracer = torch.where(tracer < 0, 14, tracer)
    white = torch.zeros((len(which), 4), device=device)
    return crops, tuple(a[keep] for a in (strips, thumbs[which], base, tracer, level, white))


class Album:
    """photos with truth on the device, at the size that core/sight works on"""

    def __init__(self, truth, device, longest=1440):
        self.pages = []
        for t, rgb in zip(truth.images, truth.rgb):
            picture = torch.from_numpy(rgb).to(device).permute(2, 0, 1).float()
            scale = min(1.0, longest / max(rgb.shape[:2]))
            if scale < 1:
                picture = F.interpolate(picture[None], scale_factor=scale, mode="bilinear", antialias=True)[0].round().clamp(0, 255)
            thumb = torch.from_numpy(samples.thumb(rgb).transpose(2, 0, 1).copy()).to(device)
            white = torch.from_numpy(samples.card_white(rgb, t["reference_card"])).to(device)
            wires = []
            for wire in t["wires"]:
                line = np.array(wire["visible_polyline"], float)
                if len(line) >= 4:
                    length = np.hypot(*np.diff(line, axis=0).T)
                    wires.append((wire, line * scale, length[length < 26].sum() * scale, wire["diameter_px"] * scale, np.array(wire["suggested_taps"]).reshape(-1, 2) * scale))
            self.pages.append((picture, thumb, white, wires))

    def strips(self, rng, finder):
        """of one photo, wires followed as the finder sees them: as from_scenes gives them"""
        picture, thumb, white, wires = self.pages[int(rng.integers(len(self.pages)))]
        dev = picture.device
        rows, lines = [], []
        for wire, line, length, width, taps in wires:
            base, tracer = scenes.CODES.index(wire["base"]), scenes.CODES.index(wire["tracer"]) if wire["tracer"] else 14
            places = [(p, f) for p, f in zip(taps, wire["tap_tracer_fraction"])]
            places += [(line[int(rng.integers(len(line)))] + rng.normal(0, 0.2, 2) * width, -1) for _ in range(5)]
            for p, f in places:
                rows.append((*p, base, tracer, f, length, wire["tracer_visible"], width))
                lines.append(torch.from_numpy(line.astype(np.float32)))
        line = torch.nn.utils.rnn.pad_sequence(lines, batch_first=True, padding_value=1e6).to(dev)
        t = torch.tensor(np.array(rows, np.float32), device=dev)
        which = torch.zeros(len(t), dtype=torch.long, device=dev)
        centre, visible, width, ok = track(Seen(finder, picture[None]), which, t[:, 0], t[:, 1])
        near = ((centre[:, :, None] - line[:, None]) ** 2).sum(-1).min(-1).values.sqrt()
        ok = ok & (near[:, ALONG // 2] < 9 + 0.35 * t[:, 7])
        only = torch.rand(len(t), device=dev) < 0.8
        visible = cut_short(visible & ((near < 9 + 0.2 * t[:, 7, None]) | ~only[:, None]))
        most = (visible.sum(1) * STEP * width > 0.55 * t[:, 5]) & (t[:, 6] > 0)
        shown = torch.where(t[:, 4] >= 0, t[:, 4] >= 0.12, most)
        tracer = t[:, 3].long()
        level = torch.where(tracer == 14, 0, torch.where(shown, 2, 1))
        strips = strips_of(picture[None], which, centre, width, visible)
        given = (torch.rand(len(t), 1, device=dev) < 0.5).float() * white
        keep = ok & (visible.sum(1) > 3)
        return tuple(a[keep] for a in (strips, thumb[None].expand(len(t), -1, -1, -1), t[:, 2].long(), tracer, level, given))
