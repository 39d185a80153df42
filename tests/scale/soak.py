"""Keeps a service at a share of its greatest rate for a time, and tells what was lost and whether memory and handles stay flat.

    python3 tests/scale/soak.py --url http://127.0.0.1:8080 --pid "$(pgrep -n -f LayoutService.Api.dll)" --minutes 30 --load 0.7

Python 3.9 or later, standard library only. First finds the greatest rate with as many callers as processors for some seconds, then
sends at the share asked for, over connections that are kept, every tenth over a new one. A sample each second of the service's resident memory,
handles and threads; the slopes are by least squares over the second half, so that warming up does not count. Ends with 1 when a call had any
other answer than 200 or 422, when memory grows by more than 1 MB a minute, or handles by more than one a minute.
"""
import argparse
import http.client
import json
import os
import random
import statistics
import sys
import threading
import time
from urllib.parse import urlsplit

ROOMS = [json.dumps({"units": "metric", "reference": str(i), "room": {"outline": [[0, 0], [w, 0], [w, d], [0, d]]},
                     "joistFields": [{"run": run, "spacing": spacing, "first": 200}], **more}).encode()
         for i, (w, d, run, spacing, more) in enumerate(
             (3000 + 130 * a, 2500 + 170 * b, "xy"[(a + b) % 2], (400, 488, 600)[a % 3],
              {"fixtures": [{"kind": "slim-light", "at": [900, 900], "cutout": {"diameter": 150}, "maxShift": 200}]} if b % 3 == 0 else {})
             for a in range(8) for b in range(8))] + [b'{"units":"metric"}']


def main():
    ask = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    ask.add_argument("--url", default="http://127.0.0.1:8080")
    ask.add_argument("--pid", type=int, required=True)
    ask.add_argument("--minutes", type=float, default=30)
    ask.add_argument("--load", type=float, default=0.7)
    ask.add_argument("--rate", type=float, help="calls a second, instead of a share of the greatest rate")
    given = ask.parse_args()
    address = urlsplit(given.url)
    counts, times, lock = {}, [], threading.Lock()
    stop = threading.Event()

    def call(connection, body):
        connection.request("POST", "/v1/plans?include=summary", body, {"Content-Type": "application/json"})
        answer = connection.getresponse()
        answer.read()
        return answer.status

    def caller(number, pause):
        dice = random.Random(number)
        connection = http.client.HTTPConnection(address.hostname, address.port, timeout=60)
        due = time.monotonic()
        while not stop.is_set():
            begun = time.monotonic()
            try:
                if dice.randrange(10) == 0:
                    connection.close()
                status = call(connection, dice.choice(ROOMS))
            except (OSError, http.client.HTTPException) as fault:
                status = type(fault).__name__
                connection.close()
            took = time.monotonic() - begun
            with lock:
                counts[status] = counts.get(status, 0) + 1
                times.append(took)
            due = max(due + pause(), time.monotonic() - 1)
            time.sleep(max(0, due - time.monotonic()))

    def run(callers, pause, seconds, each=lambda: None):
        counts.clear()
        times.clear()
        stop.clear()
        threads = [threading.Thread(target=caller, args=(n, pause)) for n in range(callers)]
        [t.start() for t in threads]
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            time.sleep(1)
            each()
        stop.set()
        [t.join() for t in threads]
        return sum(counts.values()) / seconds

    callers = os.cpu_count() * 2
    if given.rate:
        rate = given.rate
    else:
        run(callers, lambda: 0, 5)
        greatest = run(callers, lambda: 0, 15)
        rate = greatest * given.load
        print(f"greatest rate {greatest:.0f} calls a second; soaking at {rate:.0f} for {given.minutes:g} minutes", flush=True)
    samples, begun = [], time.monotonic()
    run(callers, lambda: callers / rate, given.minutes * 60, lambda: samples.append((time.monotonic() - begun, *look(given.pid))))
    half = samples[len(samples) // 2:]
    memory, handles, threads = (slope([s[0] for s in half], [s[n] for s in half]) * 60 for n in (1, 2, 3))
    good = sum(n for status, n in counts.items() if status in (200, 422))
    times.sort()
    print(f"{sum(counts.values())} calls, answers {counts}; p50 {1000 * times[len(times) // 2]:.1f} ms, p99 {1000 * times[int(len(times) * 0.99)]:.1f} ms")
    print(f"memory {half[0][1]:.0f} to {half[-1][1]:.0f} MB in the second half, mean {statistics.mean(s[1] for s in half):.0f}, slope {memory:+.2f} MB a minute; "
          f"handles {half[0][2]} to {half[-1][2]}, slope {handles:+.2f} a minute; threads {half[-1][3]}, slope {threads:+.2f} a minute")
    return 0 if good == sum(counts.values()) and memory < 1 and handles < 1 else 1


def look(pid):
    status = open(f"/proc/{pid}/status").read()
    resident = int(status.split("VmRSS:")[1].split()[0]) / 1024
    return resident, len(os.listdir(f"/proc/{pid}/fd")), int(status.split("Threads:")[1].split()[0])


def slope(xs, ys):
    x, y = statistics.mean(xs), statistics.mean(ys)
    return sum((a - x) * (b - y) for a, b in zip(xs, ys)) / sum((a - x) ** 2 for a in xs)


if __name__ == "__main__":
    sys.exit(main())
