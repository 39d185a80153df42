"""Sends many rooms, made as they are sent, through one call in bulk, and tells rate and memory.

    python3 tests/scale/bulk_run.py --rooms 1000000 --include summary,takeoff --pid "$(pgrep -n -f LayoutService.Api.dll)"

Python 3.9 or later, standard library only. Each room is the typical room of docs/performance.md with sides and joists
of its own (--small: a small room with regular joists). Every line that comes back is checked: its index, its reference,
that it is a plan; and the summary at the end. With --pid the resident memory of that process is looked at each second, and its processor time told,
which says more than the clock on a machine that has other work.
"""
import argparse
import http.client
import json
import os
import random
import sys
import threading
import time
from urllib.parse import urlsplit

TYPICAL = {
    "units": "metric", "ruleset": "ca-nbc-2020",
    "strapping": {"size": {"name": "1x3"}, "stock": [
        {"id": f"1x3x{length}", "length": length, "packPrice": price}
        for length, price in ((2400, 3.10), (3000, 4.05), (3600, 4.75), (4200, 5.80), (4800, 6.90))]},
    "sheets": {"thickness": 12.7, "stock": [
        {"id": f"1200x{length}", "width": 1200, "length": length, "packPrice": price}
        for length, price in ((2400, 14.90), (3000, 19.40), (3600, 23.10))]},
    "prices": {"currency": "CAD"},
}
SMALL = {"units": "metric"}


def typical(number):
    dice = random.Random(number)
    width, depth = 6000 + dice.randrange(-10, 11) * 20, 9000 + dice.randrange(-10, 11) * 20
    joists, at = [], dice.randrange(20, 120)
    while at < depth - 19:
        joists.append(at)
        if len(joists) in (5, 13) and at + 57 < depth:
            at += 38
            joists.append(at)
        at += dice.randrange(340, 480)
    return {"reference": str(number), "room": {"outline": [[0, 0], [width, 0], [width, depth], [0, depth]]},
            "joistFields": [{"run": "x", "face": 38, "depth": 235, "positions": joists}]}


def small(number):
    width, depth = 3000 + number % 80 * 10, 2400 + number // 80 % 80 * 10
    return {"reference": str(number), "room": {"outline": [[0, 0], [width, 0], [width, depth], [0, depth]]},
            "joistFields": [{"run": "y", "spacing": 400, "first": 200}]}


def send(connection, rooms, common, room):
    def chunk(text):
        data = text.encode()
        connection.sock.sendall(b"%x\r\n%s\r\n" % (len(data), data))

    chunk(json.dumps({"common": common}) + "\n")
    lines = []
    for number in range(rooms):
        lines.append(json.dumps(room(number)))
        if len(lines) == 50:
            chunk("\n".join(lines) + "\n")
            lines = []
    if lines:
        chunk("\n".join(lines) + "\n")
    connection.sock.sendall(b"0\r\n\r\n")


def resident(pid):
    with open(f"/proc/{pid}/status") as status:
        return next(int(line.split()[1]) for line in status if line.startswith("VmRSS")) // 1024


def processor_seconds(pid):
    with open(f"/proc/{pid}/stat") as stat:
        fields = stat.read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def watch(pid, seen, done):
    while not done.wait(1):
        seen.append(resident(pid))


def main():
    wishes = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    wishes.add_argument("--url", default="http://127.0.0.1:8080")
    wishes.add_argument("--rooms", type=int, default=50_000)
    wishes.add_argument("--include", default="summary,takeoff")
    wishes.add_argument("--small", action="store_true")
    wishes.add_argument("--pid", type=int)
    asked = wishes.parse_args()
    common, room = (SMALL, small) if asked.small else (TYPICAL, typical)

    memory, done = [], threading.Event()
    if asked.pid:
        threading.Thread(target=watch, args=(asked.pid, memory, done), daemon=True).start()
    connection = http.client.HTTPConnection(urlsplit(asked.url).netloc, timeout=600)
    connection.putrequest("POST", f"/v1/plans/bulk?include={asked.include}")
    connection.putheader("Content-Type", "application/jsonl")
    connection.putheader("Transfer-Encoding", "chunked")
    connection.endheaders()
    begun = time.monotonic()
    used = processor_seconds(asked.pid) if asked.pid else 0
    threading.Thread(target=send, args=(connection, asked.rooms, common, room), daemon=True).start()
    answer = connection.getresponse()
    assert answer.status == 200, (answer.status, answer.read())
    planned = received = 0
    last = b""
    for line in answer:
        received += len(line)
        last = line
        if line.startswith(b'{"kind":"plan",'):
            assert line.startswith(b'{"kind":"plan","index":%d,"line":%d,"reference":"%d",' % (planned, planned + 2, planned)), line[:200]
            planned += 1
        elif line.startswith(b'{"kind":"problem"'):
            sys.exit(f"not planned: {line[:2000].decode()}")
    seconds = time.monotonic() - begun
    done.set()
    summary = json.loads(last)["summary"]
    assert summary == {"count": asked.rooms, "ok": asked.rooms, "failed": 0, "complete": True, "nextIndex": asked.rooms}, summary
    print(f"{planned:,} rooms in {seconds:.1f} s: {planned / seconds:,.0f} rooms a second, {received / 1e6 / seconds:.1f} MB a second out")
    if asked.pid:
        used = processor_seconds(asked.pid) - used
        print(f"the service used {used:.1f} s of processor: {planned / used:,.0f} rooms for each second of one core")
    if memory:
        tenth = max(1, len(memory) // 10)
        marks = " ".join(str(max(memory[at:at + tenth])) for at in range(0, len(memory), tenth))
        print(f"resident memory of the service, MB, largest in each tenth of the time: {marks}")


if __name__ == "__main__":
    main()
