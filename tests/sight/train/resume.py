"""PyTorch's states out of the ONNX files that are shipped, to go on training from.

usage: resume.py core/sight/nets --photos DIR --held FILE --out nets.pt

The exporter folds each batch norm into the layer before it. Here every norm is put back with the mean and spread that
its layer has on what is learned from, so that the networks answer as before, and a step of training begins near there.
Prints how far the answers are apart (rounding alone) and the scores of the photos kept back.
"""
import argparse
import copy
import pathlib

import numpy as np
import torch

import cutting
import samples
from banks import columns_of, crop_row, strip_row
from learn import score_followed, score_strips
from losses import vary_crops, vary_strips
from networks import Finder, Judge
from scenes import Shapes
from trainers import state_of

LIVELY = 0.1  # a weight's size beside which steps of training are as large as they were when it was learned


def fields_of(data):
    """the fields of a message in protocol buffers' wire format: number and value, a number or bytes"""
    at = 0

    def number():
        nonlocal at
        value = shift = 0
        while True:
            byte = data[at]
            at += 1
            value |= (byte & 127) << shift
            shift += 7
            if byte < 128:
                return value

    while at < len(data):
        key = number()
        kind = key & 7
        if kind == 0:
            yield key >> 3, number()
        else:
            size = {1: 8, 5: 4}[kind] if kind != 2 else number()
            yield key >> 3, data[at:at + size]
            at += size


def array_of(tensor):
    """name and values of a TensorProto of floats whose values lie in raw_data, as the exporter writes them"""
    dims, name, raw = [], "", b""
    for field, value in fields_of(tensor):
        if field == 1:
            dims.append(value)
        elif field == 8:
            name = value.decode()
        elif field == 9:
            raw = value
    return name, np.frombuffer(raw, np.float32).reshape(dims) if len(raw) == 4 * int(np.prod(dims)) else None


def convolutions(file):
    """weights and biases (None where there is none) of a network's convolutions, in the order of their work"""
    graph = next(value for field, value in fields_of(pathlib.Path(file).read_bytes()) if field == 7)
    arrays = dict(array_of(value) for field, value in fields_of(graph) if field == 5)
    out = []
    for field, node in fields_of(graph):
        if field == 1:
            parts = list(fields_of(node))
            if (4, b"Conv") in parts:
                _, weight, *bias = [value.decode() for f, value in parts if f == 1]
                out.append((arrays[weight], arrays[bias[0]] if bias else None))
    return out


def in_order(net):
    """pairs of a convolution and its norm (None where there is none), in the order of their work"""
    if isinstance(net, Finder):
        blocks = [*net.e0, *net.e1, *net.e2, *net.e3, net.l3, net.d2, net.l2, net.d1, net.l1, net.d0]
        return [(b[0], b[1]) for b in blocks] + [(net.out, None)]
    light = [(b[0], b[1]) for b in list(net.light.body)[:3]] + [(net.light.body[3], None)]
    c = net.colours
    return light + [(c.first, c.even), (c.tint, None)] + [(b[0], b[1]) for s in (c.c1, c.c2, c.c3) for b in s] + [(c.f0[0], None), (c.f1, None)]


def fill(net, layers):
    """the weights into the network, its norms changing nothing but adding the bias"""
    pairs = in_order(net)
    assert len(pairs) == len(layers), (len(pairs), len(layers))
    with torch.no_grad():
        for (conv, norm), (weight, bias) in zip(pairs, layers):
            conv.weight.copy_(torch.tensor(weight).view_as(conv.weight))
            if norm is not None:
                norm.running_mean.zero_()
                norm.running_var.fill_(1 - norm.eps)
                norm.weight.fill_(1)
                norm.bias.copy_(torch.tensor(bias))
            elif bias is not None:
                conv.bias.copy_(torch.tensor(bias))
    return net.eval()


def load(folder):
    """the finder and the judges as they are shipped"""
    folder = pathlib.Path(folder)
    nets = [fill(Finder(), convolutions(folder / "finder.onnx"))]
    for i in range(1, 4):
        # The exporter may put the light's share of the first layer before the strip's.
        light, colours = convolutions(folder / f"light{i}.onnx"), convolutions(folder / f"colours{i}.onnx")
        if colours[0][0].shape[1] != 4:
            colours[:2] = colours[1::-1]
        nets.append(fill(Judge(), light + colours))
    return nets


def normed(net, batches):
    """puts mean and spread of what the norms are given into them, the network's answers staying as they are"""
    seen = {}
    hooks = []

    def watch(norm):
        def hook(_, inputs):
            x = inputs[0].detach().double().transpose(0, 1).flatten(1)
            n, s, q = seen.get(norm, (0, 0, 0))
            seen[norm] = n + x.shape[1], s + x.sum(1), q + (x * x).sum(1)
        return hook

    for _, norm in in_order(net):
        if norm is not None:
            hooks.append(norm.register_forward_pre_hook(watch(norm)))
    with torch.no_grad():
        for inputs in batches:
            net(*inputs)
        for h in hooks:
            h.remove()
        for conv, norm in in_order(net):
            if norm is None:
                continue
            n, s, q = seen[norm]
            mean, var = s / n, (q / n - (s / n) ** 2).clamp_min(0)
            size = conv.weight.flatten(1).square().mean(1).sqrt().double()
            scale = torch.where(size > 1e-5, LIVELY / size, torch.ones_like(size))
            parts = [conv, net.colours.tint] if isinstance(net, Judge) and conv is net.colours.first else [conv]
            for part in parts:
                part.weight.mul_(scale[:, None, None, None])
            bias = norm.bias.double()
            norm.running_mean.copy_(mean * scale)
            norm.running_var.copy_(var * scale**2)
            norm.weight.copy_((var * scale**2 + norm.eps).sqrt() / scale)
            norm.bias.copy_(bias + mean)
    return net


def examples(a, held, finder, device):
    """a batch of crops and one of strips, made and from photos as in training"""
    rng = np.random.default_rng(7)
    truth = samples.Truth(a.photos, lambda f: f not in held, (0, a.every))
    shot = [truth.crop(rng, i % len(truth.rgb)) for i in range(a.scenes)]
    crops = [list(map(torch.from_numpy, columns_of(map(crop_row, shot))))]
    rows = [s for i in range(len(truth.rgb)) for s in truth.strips(rng, i)]
    strips = [list(map(torch.from_numpy, columns_of(map(strip_row, rows))))]
    for k in range(max(1, a.scenes // 12)):
        c, s = cutting.from_scenes(900 + k, Shapes(rng, 12, device), finder)
        crops.append(c)
        if s is not None:
            strips.append(s)
    return [vary_crops(*(x.to(device) for x in c))[:1] for c in crops], [vary_strips(*(s[i].to(device) for i in (0, 1, 5))) for s in strips]


def main():
    ap = argparse.ArgumentParser()
    ap.add_argument("nets")
    ap.add_argument("--photos", required=True)
    ap.add_argument("--held", required=True)
    ap.add_argument("--out", default="nets.pt")
    ap.add_argument("--scenes", type=int, default=96)
    ap.add_argument("--every", type=int, default=1, help="take each so many-th photo")
    a = ap.parse_args()
    device = "cuda" if torch.cuda.is_available() else "cpu"
    held = set(pathlib.Path(a.held).read_text().split())
    nets = [n.to(device) for n in load(a.nets)]
    torch.manual_seed(7)
    crops, strips = examples(a, held, nets[0], device)
    for i, net in enumerate(nets):
        batches = crops if i == 0 else strips
        with torch.no_grad():
            before = [net(*b) for b in batches]
            normed(net, batches)
            apart = max((net(*b) - x).abs().max().item() for b, x in zip(batches, before))
            lively = (copy.deepcopy(net).train()(*batches[-1]) - before[-1]).abs().mean().item()
        print("finder" if i == 0 else f"judge {i}", f"answers apart by at most {apart:.5f}, in training by {lively:.3f} on average", flush=True)
    torch.save([state_of(n) for n in nets], a.out)
    kept = samples.Truth(a.photos, lambda f: f in held)
    line, _ = score_strips(nets[1:], kept, device)
    print("held back:", line, "|", score_followed(nets[1:], nets[0], cutting.Album(kept, device), device))


if __name__ == "__main__":
    main()
