"""Learns the ear's networks from synthesised voices under made noise, and writes their weights.

usage: learn.py --sounds FILE.npz --vocabulary FILE --out DIR [--minutes 7] [--nets all,-awb,-slt] [--mild]

A net gives, for every 40 ms, how likely each word of the grammar ends up there (connectionist temporal classification),
with one class for all words that the grammar does not have. Nets named "-NAME" never see the voices with that name:
thresholds are set where they meet a voice for the first time. With --mild pace, pitch and strength vary less: the
nets of both ways err differently, and are better together than two of one way. Needs PyTorch and NumPy, and a graphics processor.
"""
import argparse
import math
import pathlib
import time

import numpy as np
import torch
from torch import nn
from torch.nn import functional as F

RATE, HOP, WINDOW, BANDS = 16000, 160, 512, 64
LOWEST, HIGHEST, FLOOR = 60.0, 7600.0, 1e-5
CHANNELS, BLOCKS, KERNEL = 256, 12, 9
# Words that sound like one of the grammar.
ALIKE = {"to": "two", "too": "two", "for": "four", "fore": "four", "won": "one", "ate": "eight", "bear": "bare",
         "owe": "oh", "o": "oh", "tale": "tail", "write": "right", "wright": "right", "blew": "blue", "knot": "not",
         "tire": "tyre", "plait": "plate", "meters": "metres", "millimeters": "millimetres", "gray": "grey", "u": "you",
         "eye": "i", "rite": "right", "wring": "ring", "forty": "forty", "pee": "p", "barr": "bar", "main": "main",
         "mane": "main", "lite": "light", "nun": "none", "wight": "white", "beem": "beam", "stan": "stan"}


def mel(hertz):
    return 2595 * math.log10(1 + hertz / 700)


def filters():
    """BANDS triangles over the bins of the spectrum, each of area 1"""
    edges = torch.linspace(mel(LOWEST), mel(HIGHEST), BANDS + 2, dtype=torch.float64)
    hertz = 700 * (10 ** (edges / 2595) - 1)
    bins = torch.arange(WINDOW // 2 + 1, dtype=torch.float64) * RATE / WINDOW
    low, mid, high = hertz[:-2, None], hertz[1:-1, None], hertz[2:, None]
    weights = torch.clamp(torch.minimum((bins - low) / (mid - low), (high - bins) / (high - mid)), min=0)
    return (weights / weights.sum(1, keepdim=True)).float()


class Features(nn.Module):
    def __init__(self):
        super().__init__()
        self.register_buffer("window", torch.hann_window(WINDOW))
        self.register_buffer("filters", filters())

    def forward(self, sound, stretch=None):
        """sound: B x N. stretch: B factors by which the axis of frequency is stretched"""
        sound = sound / sound.pow(2).mean(1, keepdim=True).sqrt().clamp(min=1e-9)
        power = torch.fft.rfft(sound.unfold(1, WINDOW, HOP) * self.window).abs().pow(2) / self.window.pow(2).sum()
        if stretch is not None:
            bins = torch.arange(power.shape[2], device=power.device)[None] * stretch[:, None]
            bins = bins.clamp(max=power.shape[2] - 1.001)
            low = bins.floor().long()
            part = (bins - low)[:, None]
            index = low[:, None].expand(-1, power.shape[1], -1)
            power = power.gather(2, index) * (1 - part) + power.gather(2, index + 1) * part
        bands = torch.log(power @ self.filters.T + FLOOR)
        return (bands - bands.mean(1, keepdim=True)).transpose(1, 2) * 0.5  # B x BANDS x T


class Block(nn.Module):
    def __init__(self, stride=1, kernel=KERNEL, dropped=0.0):
        super().__init__()
        self.depth = nn.Conv1d(CHANNELS, CHANNELS, kernel, stride, kernel // 2, groups=CHANNELS, bias=False)
        self.point = nn.Conv1d(CHANNELS, CHANNELS, 1, bias=False)
        self.norm = nn.BatchNorm1d(CHANNELS)
        self.drop = nn.Dropout1d(dropped)
        self.stride = stride

    def forward(self, x):
        y = F.relu(self.norm(self.point(self.depth(x))))
        return y if self.stride > 1 else x + self.drop(y)


class Net(nn.Module):
    def __init__(self, classes, dropped):
        super().__init__()
        self.first = nn.Conv1d(BANDS, CHANNELS, 5, 2, 2, bias=False)
        self.norm = nn.BatchNorm1d(CHANNELS)
        self.halving = Block(2, 5)
        self.blocks = nn.Sequential(*[Block(dropped=dropped) for _ in range(BLOCKS)])
        self.drop = nn.Dropout(0.2)
        self.last = nn.Conv1d(CHANNELS, classes, 1)

    def forward(self, x):
        return self.last(self.drop(self.blocks(self.halving(F.relu(self.norm(self.first(x)))))))  # B x classes x T


def folded(weight, norm):
    """weight with the batch norm behind it, and the bias that remains"""
    scale = norm.weight / torch.sqrt(norm.running_var + norm.eps)
    return weight * scale[:, None, None], norm.bias - norm.running_mean * scale


def write(net, path):
    """16 bit floats in the order in which platform/ear/network.cpp reads them"""
    parts = [*folded(net.first.weight, net.norm)]
    for block in [net.halving, *net.blocks]:
        parts += [block.depth.weight, *folded(block.point.weight, block.norm)]
    parts += [net.last.weight, net.last.bias]
    flat = torch.cat([part.detach().float().cpu().flatten() for part in parts]).numpy().astype("<f2")
    head = np.array([BANDS, CHANNELS, BLOCKS, KERNEL, net.last.out_channels], "<u2")
    pathlib.Path(path).write_bytes(head.tobytes() + flat.tobytes())


class Maker:
    """batches of speech as it may reach the microphone"""

    def __init__(self, file, vocabulary, device, mild):
        self.mild = mild
        data = np.load(file)
        self.samples = torch.from_numpy(data["samples"]).to(device)
        self.lengths = data["lengths"]
        self.starts = np.concatenate([[0], np.cumsum(self.lengths)[:-1]])
        self.voices = data["voices"]
        self.device = device
        number = {word: i + 1 for i, word in enumerate(vocabulary)}
        other = len(vocabulary) + 1
        self.labels = []
        for text in data["texts"]:
            label = []
            for word in str(text).split():
                at = number.get(ALIKE.get(word, word), other)
                if at != other or not label or label[-1] != other:
                    label.append(at)
            self.labels.append(label)
        self.order = np.argsort(self.lengths)

    def uniform(self, low, high, *shape):
        return torch.rand(*shape, device=self.device) * (high - low) + low

    def shaped(self, count, length):
        """noise whose power falls by a random power of frequency, 0 (white) to 2.4"""
        spectrum = torch.fft.rfft(torch.randn(count, length, device=self.device))
        hertz = torch.fft.rfftfreq(length, 1 / RATE, device=self.device).clamp(min=20)
        return torch.fft.irfft(spectrum * hertz[None] ** (-0.5 * self.uniform(0, 2.4, count, 1)), n=length)

    @staticmethod
    def level(sound):
        return sound / sound.pow(2).mean(1, keepdim=True).sqrt().clamp(min=1e-9)

    def smooth(self, count, length, every):
        """a curve through random values, one for so many samples"""
        knots = torch.randn(count, 1, 2 + length // every, device=self.device)
        return F.interpolate(knots, length, mode="linear", align_corners=True)[:, 0].clamp(-2, 2)

    def engine(self, count, length):
        """a sawtooth that wanders, some with a second one beside it, and broad-band noise"""
        wander = self.smooth(count, length, 8000) * 0.03
        pitch = torch.exp(self.uniform(math.log(25), math.log(220), count, 1)) * (1 + wander)
        phase = torch.cumsum(pitch.double() / RATE, 1)
        saw = (2 * (phase % 1) - 1).float()
        half = (2 * ((phase / 2) % 1) - 1).float() * self.uniform(0, 1, count, 1) * (self.uniform(0, 1, count, 1) < 0.4)
        beats = 1 + 0.6 * self.uniform(0, 1, count, 1) * torch.sin(2 * math.pi * phase / 2).float()
        tonal = self.level((saw + half) * beats)
        ratio = 10 ** (self.uniform(-10, 8, count, 1) / 20)
        return tonal + self.level(self.shaped(count, length)) * ratio

    def clatter(self, count, length):
        """metal falling: a few decaying tones"""
        time_ = torch.arange(length, device=self.device)[None] / RATE
        sound = torch.zeros(count, length, device=self.device)
        for _ in range(6):
            at = time_ - self.uniform(0, length / RATE, count, 1)
            ring = torch.sin(2 * math.pi * self.uniform(500, 6000, count, 1) * at) * torch.exp(-at.clamp(min=0) * self.uniform(10, 60, count, 1))
            sound += ring * (at > 0)
        return sound

    def coloured(self, sound):
        """another microphone, another room"""
        count, length = sound.shape
        size = 1 << (length + 4000 - 1).bit_length()
        spectrum = torch.fft.rfft(sound, n=size)
        knots = torch.randn(count, 1, 8, device=self.device) * 4
        curve = F.interpolate(knots, 257, mode="linear", align_corners=True)
        mels = torch.log10(1 + torch.fft.rfftfreq(size, 1 / RATE, device=self.device) / 700)
        index = (mels / mels[-1] * 256).long()
        spectrum = spectrum * 10 ** (curve[:, 0, index] / 20)
        decay = torch.arange(4000, device=self.device)[None] / RATE
        tail = torch.randn(count, 4000, device=self.device) * torch.exp(-decay * 6.9 / self.uniform(0.08, 0.5, count, 1))
        tail = self.level(tail) / 4000 ** 0.5 * 10 ** (self.uniform(-16, 0, count, 1) / 20) * (self.uniform(0, 1, count, 1) < 0.4)
        tail[:, 0] = 1
        return torch.fft.irfft(spectrum * torch.fft.rfft(tail, n=size), n=size)[:, :length]

    def batch(self, rng, size):
        middle = rng.integers(0, len(self.order))
        width = min(2500, len(self.order) // 4)
        low = max(0, min(middle - width // 2, len(self.order) - width))
        pick = self.order[low + rng.integers(0, width, size)]
        speed = np.exp(rng.uniform(math.log(0.82 if self.mild else 0.78), math.log(1.22 if self.mild else 1.28), size))
        taken = self.lengths[pick] / speed
        room = taken * 1.1 + 0.15 * RATE  # the wandering pace may need more than the mean one
        length = int(min(room.max() + RATE * rng.uniform(0.1, 0.8), 9 * RATE))
        start = rng.uniform(0, 1, size) * np.maximum(length - room, 0)
        to = lambda x: torch.from_numpy(np.asarray(x)).to(self.device)
        # the pace wanders, and so does the strength
        pace = 1 + self.smooth(size, length, 4000) * (0 if self.mild else 0.15)
        pace = (pace / pace.mean(1, keepdim=True)).double()
        at = torch.cumsum(pace, 1) * to(speed)[:, None]
        at = at - at.gather(1, to(start).long()[:, None])
        long = to(self.lengths[pick])[:, None].double()
        here = (at >= 0) & (at < long - 1.001)
        at = at.clamp(min=0).minimum(long - 1.001)
        base = at.long()
        part = (at - base).float()
        index = base + to(self.starts[pick])[:, None]
        sound = (self.samples[index].float() * (1 - part) + self.samples[index + 1].float() * part) * here
        sound = sound * 10 ** (self.smooth(size, length, 6000) * (0 if self.mild else 4) / 20)
        sound = self.coloured(sound)
        power = sound.pow(2).sum(1, keepdim=True) / to(taken)[:, None].float()  # of the speech, not of the pauses round it
        sound = sound / power.sqrt().clamp(min=1e-6)
        noise = self.shaped(size, length)
        kind = self.uniform(0, 1, size, 1)
        noise = torch.where(kind < 0.5, self.engine(size, length), self.level(noise))
        noise = self.level(noise) + torch.where(self.uniform(0, 1, size, 1) < 0.1, self.clatter(size, length), torch.zeros((), device=self.device))
        decibels = torch.where(self.uniform(0, 1, size, 1) < 0.7, self.uniform(-3, 28, size, 1), self.uniform(30, 75, size, 1))
        sound = sound + self.level(noise) * 10 ** (-decibels / 20)
        hard = self.uniform(0, 1, size, 1) < 0.08
        sound = torch.where(hard, torch.tanh(sound * 0.7), sound)
        labels = [self.labels[i] for i in pick]
        return sound, labels, self.voices[pick]


def masked(features, rng):
    """each row with up to two bands and two moments wiped out"""
    keep = torch.ones_like(features, dtype=torch.bool)
    for axis, most in ((1, 8), (2, 9), (1, 8), (2, 9)):
        size = features.shape[axis]
        at = torch.from_numpy(rng.integers(-most, size, len(features))).to(features.device)[:, None]
        wide = torch.from_numpy(rng.integers(0, most, len(features))).to(features.device)[:, None]
        index = torch.arange(size, device=features.device)[None]
        gone = (index >= at) & (index < at + wide)
        keep &= ~(gone[:, :, None] if axis == 1 else gone[:, None, :])
    return features * keep


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("--sounds", required=True)
    ask.add_argument("--vocabulary", required=True)
    ask.add_argument("--out", required=True)
    ask.add_argument("--minutes", type=float, default=7)
    ask.add_argument("--nets", default="all,-awb,-slt")
    ask.add_argument("--mild", action="store_true")
    ask.add_argument("--batch", type=int, default=192)
    options = ask.parse_args()
    device = "cuda"
    torch.manual_seed(1)
    torch.backends.cudnn.benchmark = False
    rng = np.random.default_rng(1)
    vocabulary = pathlib.Path(options.vocabulary).read_text().split()
    maker = Maker(options.sounds, vocabulary, device, options.mild)
    features = Features().to(device)
    names = options.nets.split(",")
    nets = [Net(len(vocabulary) + 2, 0 if options.mild else 0.1).to(device) for _ in names]
    opts = [torch.optim.AdamW(net.parameters(), lr=1e-3, weight_decay=0.01, betas=(0.9, 0.98)) for net in nets]
    begun, step, seconds, report = time.time(), 0, options.minutes * 60, 0.0
    running = [0.0] * len(nets)
    while (done := (time.time() - begun) / seconds) < 1:
        rate = 2.5e-3 * min(1, step / 300) * (0.5 + 0.5 * math.cos(math.pi * done)) + 1e-6
        sound, labels, voices = maker.batch(rng, options.batch)
        with torch.no_grad():
            x = masked(features(sound, maker.uniform(0.88 if options.mild else 0.82, 1.14 if options.mild else 1.22, len(labels))), rng)
        flat = torch.tensor([word for label in labels for word in label], device=device)
        sizes = torch.tensor([len(label) for label in labels], device=device)
        for i, (name, net, opt) in enumerate(zip(names, nets, opts)):
            weight = np.ones(len(labels), np.float32)
            if name.startswith("-"):
                weight = np.array([name[1:] not in voice for voice in voices], np.float32)
            for group in opt.param_groups:
                group["lr"] = rate
            with torch.autocast("cuda", dtype=torch.bfloat16):
                out = net(x)
            logs = F.log_softmax(out.float(), 1).permute(2, 0, 1)
            frames = torch.full((len(labels),), logs.shape[0], device=device)
            loss = F.ctc_loss(logs, flat, frames, sizes, reduction="none", zero_infinity=True)
            loss = (loss * torch.from_numpy(weight).to(device)).sum() / weight.sum()
            opt.zero_grad(set_to_none=True)
            loss.backward()
            nn.utils.clip_grad_norm_(net.parameters(), 5.0)
            opt.step()
            if step % 10 == 0:
                running[i] += 0.1 * (loss.item() - running[i]) if step else loss.item()
        step += 1
        if done >= report:
            print(f"{time.time() - begun:.0f} s, step {step}: {' '.join(f'{value:.3f}' for value in running)}", flush=True)
            report += 0.05
    out = pathlib.Path(options.out)
    for i, (name, net) in enumerate(zip(names, nets)):
        net.eval()
        write(net, out / f"{i + 1}{name}.net")
    # a sound with its features and answers, to hold the C++ against
    sound, _, _ = maker.batch(rng, 1)
    with torch.no_grad():
        x = features(sound)
        np.savez(out / "check.npz", sound=sound.cpu().numpy(), features=x.cpu().numpy(),
                 answers=F.log_softmax(nets[0](x), 1).cpu().numpy())


if __name__ == "__main__":
    main()
