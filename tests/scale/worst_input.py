"""Searches for the accepted request that takes the service longest, and tells the worst time, work and memory found.

    python3 tests/scale/worst_input.py --url http://127.0.0.1:8080 --pid "$(pgrep -n -f LayoutService.Api.dll)" --seconds 600

Python 3.9 or later, standard library only. Starts from requests at the limits of GET /v1/limits, then changes the worst ones at
random (hill climbing, fixed seed) for as long as it may. A call that ends with anything but 200 or 422, or takes longer than --most
seconds, is printed and makes the search end with 1. The same seed tries the same requests, but which survive depends on the
clock; the work, which the service counts, does not.
"""
import argparse
import copy
import http.client
import json
import math
import random
import re
import sys
import time
from urllib.parse import urlsplit


def rectangle(width, depth):
    return [[0, 0], [width, 0], [width, depth], [0, depth]]


def comb(corners, side, share):
    step = side / (corners - 2)
    return [[0, 0], [side, 0]] + [[side - i * step, side / 2 * (1 + (i % 2) * share)] for i in range(corners - 2)]


def stairs(corners, side):
    half = (corners - 2) // 2
    step = side / half
    ring = [[0, 0], [side, 0]]
    for i in range(half):
        ring += [[side - i * step, (i + 1) * step], [side - (i + 1) * step, (i + 1) * step]]
    return ring


def grid(count, side, make):
    columns = max(1, math.isqrt(count))
    pitch = side / (columns + 1)
    return [make(i, pitch * (0.6 + i % columns), pitch * (0.6 + i // columns)) for i in range(count)]


def room(outline, **members):
    return {"units": "metric", "room": {"outline": outline}, "joistFields": [{"run": "y", "spacing": 400, "first": 200}], **members}


def light(i, x, y):
    return {"id": f"L{i}", "kind": "slim-light", "at": [x, y], "cutout": {"diameter": 150}, "maxShift": 300}


def seeds(dice):
    sticks = {"stock": [{"length": 1800 + i * 137} for i in range(20)], "jointsAllowed": ["on-joist", "side-lap", "scab", "block"]}
    boards = {"stock": [{"width": 1200, "length": 1800 + i * 97} for i in range(20)]}
    for effort in ("quick", "thorough"):
        for outline in (rectangle(100_000, 100_000), rectangle(200_000, 50_000), rectangle(50_000, 200_000), rectangle(30_000, 30_000),
                        comb(200, 60_000, 0.3), comb(200, 100_000, 0.2), comb(60, 20_000, 0.3), stairs(200, 100_000), stairs(60, 20_000)):
            yield room(outline, effort=effort)
            yield room(outline, effort=effort, strapping=sticks, sheets=boards)
        posts = room(rectangle(20_000, 20_000), effort=effort)
        posts["room"]["openings"] = grid(49, 20_000, lambda i, x, y: {"kind": "post", "outline": [[x, y], [x + 300, y], [x + 300, y + 300], [x, y + 300]]})
        yield posts
        round_ones = room(rectangle(60_000, 60_000), effort=effort)
        round_ones["room"]["openings"] = grid(49, 60_000, lambda i, x, y: {"kind": "chimney", "outline": [
            [x + 1500 * math.cos(a * math.pi / 25), y + 1500 * math.sin(a * math.pi / 25)] for a in range(50)]})
        yield round_ones
        yield room(rectangle(20_000, 20_000), effort=effort, fixtures=grid(196, 20_000, light))
        yield room(rectangle(10_000, 10_000), effort=effort, fixtures=grid(196, 10_000, light))
        many = room(rectangle(30_000, 100_000), effort=effort)
        many["joistFields"] = [{"run": "x", "face": 38, "positions": [100 + i * 99 for i in range(1000)]}]
        yield many
        ducts = room(rectangle(20_000, 20_000), effort=effort, insulation={"purpose": "sound"})
        ducts["services"] = grid(196, 20_000, lambda i, x, y: {"id": f"D{i}", "kind": "duct", "path": [[x, 200], [x, y + 400]], "width": 150, "top": 0, "bottom": 250})
        yield ducts
        boxes = room(stairs(40, 20_000), effort=effort, bulkheads=[{"id": f"B{e}", "edges": [e], "width": 400, "drop": 250} for e in range(0, 40, 2)])
        yield boxes


def scale(value, by):
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        return value * by
    return [scale(v, by) for v in value] if isinstance(value, list) else value


def bent(request, dice):
    made = copy.deepcopy(request)
    for _ in range(dice.randrange(1, 4)):
        way = dice.randrange(9)
        outline = made["room"]["outline"]
        if way == 0:
            made["room"]["outline"] = scale(outline, dice.uniform(0.6, 1.5))
        elif way == 1:
            made["effort"] = dice.choice(("quick", "thorough"))
        elif way == 2:
            made["joistFields"] = [{"run": dice.choice("xy"), "spacing": dice.choice((250, 300, 400, 488, 600)), "first": dice.randrange(20, 400)}]
        elif way == 3:
            made.setdefault("strapping", {})["maxSpacing"] = dice.choice((300, 400, 600))
        elif way == 4:
            made.setdefault("strapping", {})["stock"] = [{"length": dice.randrange(1500, 6000)} for _ in range(dice.randrange(1, 21))]
        elif way == 5:
            made.setdefault("sheets", {})["stock"] = [{"width": dice.choice((900, 1200, 1220, 1370)), "length": dice.randrange(1800, 4900)} for _ in range(dice.randrange(1, 21))]
        elif way == 6:
            made["room"]["outline"] = [[x + dice.randrange(-60, 61), y + dice.randrange(-60, 61)] for x, y in outline]
        elif way == 7:
            made.setdefault("strapping", {})["jointsAllowed"] = dice.sample(["on-joist", "side-lap", "scab", "block"], dice.randrange(1, 5))
        else:
            side = max(x for x, _ in outline) * 0.7
            made["fixtures"] = grid(dice.randrange(1, 200), side, light)
    return made


def main():
    ask = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    ask.add_argument("--url", default="http://127.0.0.1:8080")
    ask.add_argument("--pid", type=int)
    ask.add_argument("--seconds", type=float, default=300)
    ask.add_argument("--most", type=float, default=60, help="longest that a call may take, in seconds")
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--keep", help="file for the worst request")
    given = ask.parse_args()
    dice = random.Random(given.seed)
    end = time.monotonic() + given.seconds
    kept, tried, statuses, wrong = [], 0, {}, 0
    waiting = list(seeds(dice))
    while time.monotonic() < end and (waiting or kept):
        request = waiting.pop(0) if waiting else bent(dice.choice(kept[:8])[1], dice)
        begun = time.monotonic()
        status, answer = call(given, request)
        took = time.monotonic() - begun
        tried += 1
        statuses[status] = statuses.get(status, 0) + 1
        if status not in (200, 422) or took > given.most:
            wrong += 1
            print(f"WRONG: {status} after {took:.1f} s: {json.dumps(request)[:2000]}", flush=True)
        if status == 200 or b"too_much_work" in answer:
            kept.append((took, request, status))
            kept.sort(key=lambda k: -k[0])
            if kept[0][1] is request:
                print(f"{tried:5} {took:7.2f} s  {status}  effort {request.get('effort', 'quick')}, {len(request['room']['outline'])} corners, "
                      f"{len(request.get('fixtures', []))} fixtures", flush=True)
            del kept[40:]
    print(f"tried {tried}, statuses {statuses}, worst {kept[0][0]:.2f} s (status {kept[0][2]}), then {[round(k[0], 2) for k in kept[1:6]]}")
    if given.pid:
        peak = re.search(r"VmHWM:\s+(\d+)", open(f"/proc/{given.pid}/status").read()).group(1)
        print(f"greatest resident memory of the service {int(peak) // 1024} MB")
    if given.keep:
        json.dump(kept[0][1], open(given.keep, "w"))
    return 1 if wrong else 0


def call(given, request):
    address = urlsplit(given.url)
    connection = http.client.HTTPConnection(address.hostname, address.port, timeout=given.most * 3)
    try:
        connection.request("POST", "/v1/plans?include=summary", json.dumps(request), {"Content-Type": "application/json"})
        answer = connection.getresponse()
        return answer.status, answer.read()
    except (OSError, http.client.HTTPException):
        return 0, b""
    finally:
        connection.close()


if __name__ == "__main__":
    sys.exit(main())
