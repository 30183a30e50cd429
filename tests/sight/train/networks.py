"""The two networks: where wires are, and what colours one wire has. Small enough for a phone's processor."""
import torch
from torch import nn
from torch.nn import functional as F

from samples import ACROSS, ALONG, THUMB


def conv(i, o, stride=1, k=3, dilation=1):
    return nn.Sequential(nn.Conv2d(i, o, k, stride, dilation * (k // 2), dilation, bias=False), nn.BatchNorm2d(o), nn.ReLU(inplace=True))


class Finder(nn.Module):
    """rgb Nx3xHxW, 0..1, sides multiples of 16 -> Nx6xH/2xW/2: wire (log odds), offset to the centre line / 8 px,
    cosine and sine of twice the direction, log(half width / 8 px)"""

    def __init__(self):
        super().__init__()
        self.e0 = nn.Sequential(conv(3, 16, 2), conv(16, 16))
        self.e1 = nn.Sequential(conv(16, 32, 2), conv(32, 32))
        self.e2 = nn.Sequential(conv(32, 64, 2), conv(64, 64))
        self.e3 = nn.Sequential(conv(64, 96, 2), conv(96, 96), conv(96, 96, dilation=2))
        self.l3, self.l2, self.l1 = conv(96, 64, k=1), conv(64, 32, k=1), conv(32, 16, k=1)
        self.d2, self.d1, self.d0 = conv(64, 64), conv(32, 32), conv(16, 24)
        self.out = nn.Conv2d(24, 6, 1)

    def forward(self, x):
        up = lambda v: F.interpolate(v, scale_factor=2.0, mode="nearest")
        a = self.e0(x - 0.5)
        b = self.e1(a)
        c = self.e2(b)
        d = self.e3(c)
        c = self.d2(c + up(self.l3(d)))
        b = self.d1(b + up(self.l2(c)))
        a = self.d0(a + up(self.l1(b)))
        return self.out(a)


class Light(nn.Module):
    """the whole picture small, Nx3x48x64, 0..1 -> Nx16x1x1"""

    def __init__(self):
        super().__init__()
        self.body = nn.Sequential(conv(3, 16, 2), conv(16, 32, 2), conv(32, 48, 2), nn.Conv2d(48, 16, 1), nn.Tanh())

    def forward(self, x):
        return F.adaptive_avg_pool2d(self.body(x - 0.5), 1)


class Colours(nn.Module):
    """strip Nx4xACROSSxALONG (rgb 0..1 and whether it is seen), light Nx20x1x1 -> Nx29: base, then tracer or none

    The light is the same everywhere, so the first layer needs it only as an offset."""

    def __init__(self, width=1.0):
        super().__init__()
        c = lambda n: int(n * width)
        self.first, self.tint, self.even = nn.Conv2d(4, c(32), 3, 1, 1, bias=False), nn.Conv2d(20, c(32), 1, bias=False), nn.BatchNorm2d(c(32))
        self.c1 = nn.Sequential(conv(c(32), c(48), 2), conv(c(48), c(48)))
        self.c2 = nn.Sequential(conv(c(48), c(64), 2), conv(c(64), c(64)))
        self.c3 = nn.Sequential(conv(c(64), c(96), 2), conv(c(96), c(96)))
        self.f0 = nn.Sequential(nn.Conv2d(4 * c(96) + 20, 96, 1), nn.ReLU(inplace=True))
        self.drop = nn.Dropout(0.35)
        self.f1 = nn.Conv2d(96, 29, 1)

    def forward(self, strip, light):
        x = self.c3(self.c2(self.c1(F.relu(self.even(self.first(strip) + self.tint(light))))))
        near = x[..., 5:11]  # three widths to either side of the tap: further on it may be another wire
        pooled = torch.cat([F.adaptive_avg_pool2d(x, 1), F.adaptive_max_pool2d(x, 1), F.adaptive_avg_pool2d(near, 1), F.adaptive_max_pool2d(near, 1), light], 1)
        return self.f1(self.drop(self.f0(pooled))).flatten(1)


class Judge(nn.Module):
    """light and colours together, as they are trained"""

    def __init__(self, width=1.0):
        super().__init__()
        self.light, self.colours = Light(), Colours(width)

    def forward(self, strip, small, white):
        return self.colours(strip, torch.cat([self.light(small), white[:, :, None, None]], 1))


def joint(logits):
    """Nx29 -> Nx14x15 log probabilities; base and tracer are never the same"""
    both = logits[:, :14, None] + logits[:, None, 14:]
    same = torch.eye(14, 15, device=logits.device, dtype=torch.bool)
    return F.log_softmax(both.masked_fill(same, -30).flatten(1), 1).view(-1, 14, 15)
