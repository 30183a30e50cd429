"""Processes that train one network each, from what the makers send."""
import queue
import threading
import time

import numpy as np
import torch

from banks import Bank, CROPS, STRIPS
from losses import colour_loss, finder_loss, vary_crops, vary_strips
from networks import Finder, Judge

torch.multiprocessing.set_sharing_strategy("file_system")


class Feed:
    """the banks of one network, filled from its channel by a thread"""

    def __init__(self, channel, kind, made, photo, device):
        self.made, self.photo = Bank(made, kind, device), Bank(photo, kind, device)
        self.ready = queue.Queue(maxsize=8)
        self.device = device
        threading.Thread(target=self.unpack, args=(channel,), daemon=True).start()

    def unpack(self, channel):
        while True:
            source, columns = channel.get()
            self.ready.put((source, [c.to(self.device) for c in columns]))

    def fill(self, at_most=4):
        for _ in range(at_most):
            try:
                source, columns = self.ready.get_nowait()
            except queue.Empty:
                return
            (self.made if source == "made" else self.photo).add(columns)

    def batch(self, n, photo_part):
        k = int(n * photo_part)
        return [torch.cat(c) for c in zip(self.made.take(n - k), self.photo.take(k))]


def state_of(net):
    return {k: v.detach().cpu().clone() for k, v in net.state_dict().items()}


def trainer(which, device, a, state, eye_state, channel, results, stop, go):
    """which: 0 the finder, else a judge"""
    torch.manual_seed(a.seed * 100 + which)
    big = device.startswith("cuda")
    net = (Finder() if which == 0 else Judge()).to(device, memory_format=torch.channels_last)
    if state:
        net.load_state_dict(state)
    feed = Feed(channel, CROPS, 40000 if big else 60, 6000 if big else 40, device) if which == 0 else \
        Feed(channel, STRIPS, 900000 if big else 2000, 200000 if big else 1000, device)
    learned = torch.optim.AdamW(net.parameters(), lr=a.rate, weight_decay=3e-2 if which else 1e-4, **({"fused": True} if big else {}))
    least = (200, 60) if which == 0 else (2000, 500)
    while feed.made.count < (least[0] if big else 20) or feed.photo.count < (least[1] if big else 10):
        feed.fill()
        time.sleep(0.01)
    go.set()  # the clock starts with the first step
    start = time.time()
    n, step, total, told, since, lost = a.batch if which == 0 else a.strips, 0, a.minutes * 60, start, 0, torch.zeros((), device=device)
    kept = {k: v.detach().clone() for k, v in net.state_dict().items()}
    while (now := time.time()) - start < total:
        feed.fill()
        f = (now - start) / total
        rate = a.rate * min(1, (step + 1) / 300) * (0.5 * (1 + np.cos(np.pi * f))) + 1e-6
        for g in learned.param_groups:
            g["lr"] = rate
        net.train()
        rows = feed.batch(n, a.photo_part)
        with torch.no_grad():
            shown = vary_crops(*rows) if which == 0 else vary_strips(rows[0], rows[1], rows[5])
        with torch.autocast("cuda" if big else "cpu", dtype=torch.bfloat16, enabled=big):
            x = shown[0].contiguous(memory_format=torch.channels_last)
            out = net(x) if which == 0 else net(x, *shown[1:])
        loss = finder_loss(out.float(), shown[1]) if which == 0 else colour_loss(out.float(), *rows[2:5])
        learned.zero_grad(set_to_none=True)
        loss.backward()
        learned.step()
        lost += loss.detach()
        step += 1
        if step % 10 == 0:  # the mean of the last steps errs less than the last step
            with torch.no_grad():
                for key, v in net.state_dict().items():
                    kept[key].lerp_(v, 0.02) if v.is_floating_point() else kept[key].copy_(v)
        if which == 0 and step % 100 == 0:
            for key, v in net.state_dict().items():
                eye_state[key].copy_(v)
        if now - told > 45 or step == 100:
            print(f"{'finder' if which == 0 else f'judge {which}'} {now - start:.0f} s step {step} made {feed.made.count} photo {feed.photo.count} "
                  f"loss {lost / max(1, step - since):.4f}", flush=True)
            lost.zero_()
            told, since = now, step
    results.put((which, {k: v.cpu().numpy() for k, v in kept.items()}))
    while not stop.is_set():
        time.sleep(0.2)
