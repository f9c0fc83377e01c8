"""The general-purpose packing library rectpack on instances, as many of its variants as there is time for.

Reads {"seconds": S, "turn": bool, "instances": [{"id", "sheet", "parts"}]} and prints a line of JSON for each instance:
{"id", "tried", "variants", "sheets": [[[part, x, y, w, h], ...], ...]}.

Only its packers by cuts from edge to edge are taken, and free rectangles are never merged: what is merged can no longer be
cut apart. Variants: the rule for the free rectangle, the rule for the cut, the order of the parts, the choice of the sheet;
once all were tried, parts in random order, until the time is over.
"""

import itertools
import json
import random
import sys
import time

import rectpack
from rectpack import guillotine
from rectpack.packer import PackingBin, PackingMode


def unmerged(base):
    class Unmerged(base):
        def __init__(self, width, height, rot=True, *more, **named):
            super().__init__(width, height, rot, False, *more, **named)

    return Unmerged


FREE = ["Bssf", "Blsf", "Baf"]
CUT = ["Sas", "Las", "Slas", "Llas", "Maxas", "Minas"]
ORDERS = [rectpack.SORT_AREA, rectpack.SORT_LSIDE, rectpack.SORT_SSIDE, rectpack.SORT_PERI, rectpack.SORT_DIFF,
          rectpack.SORT_RATIO]
SHEETS = [PackingBin.BFF, PackingBin.BBF, PackingBin.Global, PackingBin.BNF]
PACKERS = [unmerged(getattr(guillotine, "Guillotine" + free + cut)) for free in FREE for cut in CUT]
VARIANTS = [(sheet, order, packer) for sheet, order, packer in itertools.product(SHEETS, ORDERS, PACKERS)]


def pack(instance, turn, sheet, order, packer, parts):
    work = rectpack.newPacker(mode=PackingMode.Offline, bin_algo=sheet, pack_algo=packer, sort_algo=order, rotation=turn)
    work.add_bin(*instance["sheet"], count=len(parts))
    for number, (w, h) in parts:
        work.add_rect(w, h, number)
    work.pack()
    return work


def best(instance, turn, seconds, chance):
    parts = list(enumerate(instance["parts"]))
    fewest, tried, begun = None, 0, time.thread_time()
    variants = iter(VARIANTS)
    while time.thread_time() - begun < seconds:
        variant = next(variants, None)
        if variant is None:
            chance.shuffle(parts)
            variant = (PackingBin.BFF, rectpack.SORT_NONE, chance.choice(PACKERS))
        work = pack(instance, turn, *variant, parts)
        tried += 1
        laid = work.rect_list()
        if len(laid) == len(parts) and (fewest is None or len(work) < len(fewest)):
            fewest = [[] for _ in range(len(work))]
            for sheet, x, y, w, h, number in laid:
                fewest[sheet].append([number, x, y, w, h])
    return {"id": instance["id"], "tried": tried, "variants": len(VARIANTS), "sheets": fewest or []}


def main():
    asked = json.load(sys.stdin)
    chance = random.Random(1)
    for instance in asked["instances"]:
        print(json.dumps(best(instance, asked["turn"], asked["seconds"], chance)), flush=True)


main()
