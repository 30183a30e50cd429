"""What the networks are trained against, and how each batch is varied before they see it."""
import torch
from torch.nn import functional as F

from networks import joint


def to_linear(v):
    return torch.where(v <= 0.04045, v / 12.92, ((v + 0.055) / 1.055).clamp_min(0) ** 2.4)


def to_srgb(v):
    v = v.clamp(0, 1)
    return torch.where(v <= 0.0031308, v * 12.92, 1.055 * v.clamp_min(1e-6) ** (1 / 2.4) - 0.055)


def vary_strips(part, small, white, strength=1.0):
    """another light, exposure and camera over strip and picture alike, mirrored at random; some more, some hardly"""
    n, dev = len(part), part.device
    strength = strength * torch.rand(n, 1, device=dev) ** .5
    x, s = part.float() / 255, small.float() / 255
    normal = lambda *shape: torch.randn(n, *shape, device=dev)
    gain = torch.exp(normal(3) * 0.10 * strength + normal(1) * 0.2 * strength)
    g = gain[:, :, None, None]
    rgb, s = to_linear(x[:, :3]) * g, to_linear(s) * g
    other = (torch.rand(n, 1, 1, 1, device=dev) < 0.5).float()  # cameras differ in colourfulness and in contrast
    colourful = torch.exp(normal(1, 1, 1) * 0.15 * other)
    contrast = torch.exp(normal(1, 1, 1) * 0.12 * other)
    for_camera = lambda v: to_srgb(v.mean(1, keepdim=True) + (v - v.mean(1, keepdim=True)) * colourful).clamp_min(1e-4) ** contrast
    rgb, s = for_camera(rgb), for_camera(s)
    lg = gain.log()
    shift = torch.stack([lg[:, 0] - lg[:, 1], lg[:, 2] - lg[:, 1], lg[:, 1], torch.zeros(n, device=dev)], 1)
    white = white + shift * white[:, 3:]
    seen = x[:, 3:]
    soft = F.avg_pool2d(F.pad(rgb, (1, 1, 1, 1), mode="replicate"), 3, 1)
    rgb = torch.lerp(rgb, soft, (torch.rand(n, 1, 1, 1, device=dev) * 1.6 - 0.6).clamp_min(0))
    rgb = (rgb + torch.randn_like(rgb) * 0.012 * torch.rand(n, 1, 1, 1, device=dev)) * seen
    x = torch.cat([rgb, seen], 1)
    across, along = (torch.rand(2, n, 1, 1, 1, device=dev) < 0.5).unbind(0)
    x = torch.where(across, x.flip(2), x)
    x = torch.where(along, x.flip(3), x)
    return x, s, white


def colour_loss(logits, base, tracer, level):
    """level of the tracer: 0 none or hidden, 1 hardly seen (either answer will do), 2 seen"""
    p = joint(logits)
    i = torch.arange(len(base), device=base.device)
    exact, plain = p[i, base, tracer], p[i, base, 14]
    want = torch.where(level == 2, exact, torch.where(level == 1, torch.logaddexp(exact, plain), plain))
    want = torch.where(tracer == 14, plain, want)
    return -want.clamp_min(-12).mean()


def vary_crops(rgb, lab):
    n, dev = len(rgb), rgb.device
    x = rgb.float() / 255
    v = to_linear(x)
    # Where wires are does not hang on their colours: any mixture of the channels will do.
    mix = torch.eye(3, device=dev)[None].repeat(n, 1, 1)
    wild = (torch.rand(n, 1, 1, device=dev) < 0.5).float()
    mix = mix + wild * torch.randn(n, 3, 3, device=dev) * 0.25
    v = torch.einsum("nij,njhw->nihw", mix, v) * torch.exp(torch.randn(n, 3, 1, 1, device=dev) * 0.25 + torch.randn(n, 1, 1, 1, device=dev) * 0.35)
    x = to_srgb(v)
    x = x.clamp_min(1e-4) ** torch.exp(torch.randn(n, 1, 1, 1, device=dev) * 0.15)
    share = torch.rand(n, 1, 1, 1, device=dev)
    soft = F.avg_pool2d(F.pad(x, (1, 1, 1, 1), mode="replicate"), 3, 1)  # softer, or sharpened
    x = x + (x - soft) * torch.where(share < .3, -share / .3, torch.where(share > .7, (share - .7) * 4, torch.zeros_like(share)))
    x = x + torch.randn_like(x) * 0.03 * torch.rand(n, 1, 1, 1, device=dev) ** 2
    lab = lab.float()
    if torch.rand(()) < 0.5:  # left and right
        x, lab = x.flip(3), lab.flip(3).clone()
        lab[:, 1] *= -1
        lab[:, 4] *= -1
    if torch.rand(()) < 0.5:  # rows and columns exchanged
        x, lab = x.transpose(2, 3), lab.transpose(2, 3).clone()
        lab[:, [1, 2]] = lab[:, [2, 1]]
        lab[:, 3] *= -1
    return x.clamp(0, 1), lab


def finder_loss(out, lab):
    on, valid = lab[:, 0], lab[:, 6]
    wire = F.binary_cross_entropy_with_logits(out[:, 0], on, reduction="none")
    here = on * valid
    n = here.sum() + 1  # 'valid' is a weight, 0 where nothing is known
    offset = (out[:, 1:3] - lab[:, 1:3]).abs().sum(1) / torch.exp(lab[:, 5]).clamp_min(0.25)
    turn = (out[:, 3:5] - lab[:, 3:5]).abs().sum(1)
    width = (out[:, 5] - lab[:, 5]).abs()
    return (wire * valid).sum() / (valid.sum() + 1) * 2 + ((offset + 0.5 * turn + width) * here).sum() / n
