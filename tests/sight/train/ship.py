"""Writes the learned networks as ONNX into the folder that core/sight takes them from.

usage: ship.py nets.pt [later.pt ...] core/sight/nets

Of runs that each went on from the one before, the mean of the weights errs less on photos than the last.
"""
import pathlib
import sys

import torch
from torch import nn

from networks import Finder, Judge
from samples import ACROSS, ALONG, THUMB


def evened(colours):
    """as 'colours', the first layer's evening out taken into its weights"""
    scale = colours.even.weight / (colours.even.running_var + colours.even.eps).sqrt()
    offset = colours.even.bias - colours.even.running_mean * scale
    for part in (colours.first, colours.tint):
        part.weight.data *= scale[:, None, None, None]
    colours.first.bias = nn.Parameter(offset.detach().clone())
    colours.even = nn.Identity()
    return colours


def write(net, inputs, names, output, file):
    torch.onnx.export(net.eval(), inputs, str(file), input_names=names, output_names=[output], opset_version=11, dynamo=False) \
        if "dynamo" in torch.onnx.export.__code__.co_varnames else \
        torch.onnx.export(net.eval(), inputs, str(file), input_names=names, output_names=[output], opset_version=11)


def mean(states):
    """of one network: whole numbers, which only count batches, from the last"""
    return {k: sum(s[k].double() for s in states).div(len(states)).float() if v.is_floating_point() else v for k, v in states[-1].items()}


*files, folder = sys.argv[1:]
states = [mean(runs) for runs in zip(*(torch.load(file, map_location="cpu") for file in files))]
out = pathlib.Path(folder)
out.mkdir(parents=True, exist_ok=True)
finder = Finder()
finder.load_state_dict(states[0])
write(finder, torch.zeros(1, 3, 320, 320), ["rgb"], "fields", out / "finder.onnx")
for i, state in enumerate(states[1:], 1):
    judge = Judge()
    judge.load_state_dict(state)
    write(judge.light, torch.zeros(1, 3, *THUMB), ["small"], "light", out / f"light{i}.onnx")
    colours = (torch.zeros(1, 4, ACROSS, ALONG), torch.zeros(1, 20, 1, 1))
    write(evened(judge.colours.eval()), colours, ["strip", "light"], "colours", out / f"colours{i}.onnx")
