"""Processes that make what is learned from: one cuts from photos on a processor's core, one draws scenes on a device."""
import queue

import numpy as np
import torch

import cutting
import samples
from banks import columns_of, crop_row, strip_row
from networks import Finder
from scenes import Shapes

torch.multiprocessing.set_sharing_strategy("file_system")

TAKES = 4  # pictures with other colours and light of wires that lie alike


def offer(channel, columns, stop):
    """waits for room, not beyond the end"""
    while not stop.is_set():
        try:
            channel.put(columns, timeout=1)
            return
        except queue.Full:
            pass


def tensors(columns):
    return [torch.from_numpy(np.ascontiguousarray(c)).share_memory_() for c in columns]


def cutter(seed, photos, held, part, to_finder, to_judges, stop):
    """cuts crops (none without a channel to the finder) and strips from photos with truth"""
    torch.set_num_threads(1)
    rng = np.random.default_rng(seed)
    truth = samples.Truth(photos, lambda f: f not in held, part)
    while not stop.is_set():
        if to_finder:
            crops = [truth.crop(rng, int(rng.integers(len(truth.rgb)))) for _ in range(3)]
            offer(to_finder, ("photo", tensors(columns_of(map(crop_row, crops)))), stop)
        got = truth.strips(rng, int(rng.integers(len(truth.rgb))))
        if got:
            columns = tensors(columns_of(map(strip_row, [got[i] for i in rng.permutation(len(got))[:60]])))
            for channel in to_judges:
                offer(channel, ("photo", columns), stop)


def maker(seed, device, scenes, photos, held, eye_state, to_finder, to_judges, stop, made):
    """draws scenes; judges must know wires as they will be followed: mostly as the finder sees them now"""
    torch.set_num_threads(1)
    luck = np.random.default_rng(seed)
    album = cutting.Album(samples.Truth(photos, lambda f: f not in held), device)
    eye = Finder().to(device).eval()
    turn = 0
    while not stop.is_set():
        if turn % TAKES == 0:
            shapes = Shapes(luck, scenes, device)
        eye.load_state_dict(eye_state)
        follow = eye if luck.random() < 0.7 else None
        crops, strips = cutting.from_scenes(seed * 1000000 + turn, shapes, follow, crops_each=3 if to_finder else 0)
        turn += 1
        to_cpu = lambda columns: [c.cpu().share_memory_() for c in columns]
        if to_finder:
            offer(to_finder, ("made", to_cpu(crops)), stop)
        if strips is not None:
            strips = to_cpu(strips)
            for channel in to_judges:
                offer(channel, ("made", strips), stop)
        if follow is not None:
            for _ in range(4):
                rows = album.strips(luck, eye)
                if len(rows[0]):
                    rows = to_cpu(rows)
                    for channel in to_judges:
                        offer(channel, ("photo", rows), stop)
        with made.get_lock():
            made.value += scenes


