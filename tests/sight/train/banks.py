"""What the networks learn from, held on their own device: the newest samples of a kind, taken at random."""
import numpy as np
import torch

import samples

CROPS = [((3, samples.CROP, samples.CROP), torch.uint8), ((7, samples.CROP // 2, samples.CROP // 2), torch.float16)]
STRIPS = [((4, samples.ACROSS, samples.ALONG), torch.uint8), ((3, *samples.THUMB), torch.uint8), ((), torch.long), ((), torch.long),
          ((), torch.long), ((4,), torch.float32)]


class Bank:
    def __init__(self, size, kind, device):
        self.size, self.count, self.at = size, 0, 0
        self.arrays = [torch.zeros((size, *s), dtype=t, device=device) for s, t in kind]

    def add(self, columns):
        if columns is None or not len(columns) or not len(columns[0]):
            return
        n = len(columns[0])
        at = (torch.arange(self.at, self.at + n) % self.size).to(self.arrays[0].device)
        for array, column in zip(self.arrays, columns):
            array[at] = column.to(array.device, array.dtype)
        self.at = (self.at + n) % self.size
        self.count = min(self.size, self.count + n)

    def take(self, n):
        i = torch.randint(self.count, (n,), device=self.arrays[0].device)
        return [a[i] for a in self.arrays]


def strip_row(s):
    part, small, base, tracer, level, white = s
    return part, small.transpose(2, 0, 1), np.array(base), np.array(tracer if tracer >= 0 else 14), np.array(level), white


def crop_row(c):
    return c[0].transpose(2, 0, 1), c[1]


def columns_of(rows):
    return [np.stack(c) for c in zip(*rows)]
