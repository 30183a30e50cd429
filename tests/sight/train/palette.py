"""Which colours the wires of one scene have."""
import numpy as np

from materials import BASES, CODES, TRACERS

# What is taken for each other in some light or other, and how often it is drawn: turquoise is rare.
PAIRS = {"BK GY": 3, "GY WH": 2, "RD PK": 3, "RD OG": 2, "BN OG": 2.5, "BN RD": 2, "BN GY": 1, "BN BK": 1, "BN PK": .7, "PK OG": 1, "PK VT": 1,
         "PK WH": 1, "BU LBU": 2, "BU VT": 2, "BU BK": 1, "BU GY": .7, "LBU WH": .5, "LBU GY": .6, "LBU TQ": .4, "GN TQ": .5, "GN LGN": 1, "GN BK": .7,
         "GN GY": .5, "YE LGN": 1, "YE OG": 2, "YE WH": 2, "YE BN": .5}
WEIGHTS = np.array(list(PAIRS.values())) / sum(PAIRS.values())
# Tracers of about their base's lightness are easily overlooked.
NEAR = {"BK": ["GY", "GY", "GY", "WH", "BN", "GN", "VT"], "WH": ["GY", "YE", "PK", "LBU", "BU", "GN"], "GY": ["BK", "BK", "WH", "LBU"],
        "BU": ["BK", "VT", "GN"], "VT": ["BK", "BK", "BU", "RD"], "BN": ["BK", "RD"], "GN": ["BK", "BU", "TQ"],
        "PK": ["YE", "WH", "BU", "BU", "GN", "GN", "OG", "GY"], "OG": ["RD", "BN", "YE"]}


def bases(rng, n):
    """of n wires: as they are met, of mostly one colour, or of pairs that are hard to tell apart, each as often"""
    usual = rng.choice(14, size=n, p=BASES / BASES.sum())
    kind = rng.random()
    if kind < .12:  # wires of one colour touch and cross each other without a change of colour
        return np.where(rng.random(n) < .75, int(rng.choice(14, p=BASES / BASES.sum())), usual)
    if kind < .18:
        return np.where(rng.random(n) < .75, CODES.index("BK"), usual)
    if kind < .58:
        pairs = rng.choice(list(PAIRS), size=int(rng.integers(1, 4)), replace=False, p=WEIGHTS)
        hard = [CODES.index(str(rng.choice(pairs)).split()[int(rng.integers(2))]) for _ in range(n)]
        return np.where(rng.random(n) < .85, hard, usual)
    return usual


def palette(rng, n):
    """(base, tracer) of n wires: often confusable, sometimes twins"""
    wires = []
    striped = rng.choice([0.0, 0.0, 0.1, 0.4, 0.75, 0.9])
    for base in map(int, bases(rng, n)):
        tracer = -1
        if rng.random() < striped:
            while True:
                tracer = int(rng.choice(14, p=TRACERS / TRACERS.sum()))
                near = NEAR.get(CODES[base])
                if near and rng.random() < 0.28:
                    tracer = CODES.index(near[int(rng.integers(len(near)))])
                if tracer != base and {CODES[base], CODES[tracer]} not in ({"BU", "LBU"}, {"GN", "LGN"}) or rng.random() < .1 and tracer != base:
                    break
        wires.append((base, tracer))
    return wires
