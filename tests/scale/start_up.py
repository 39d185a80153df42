"""Starts the service, and tells how long it takes to be ready and to give its first plan, what it holds in memory at rest, and
how long calls take for three sizes of room, one and two callers at a time.

    python3 tests/scale/start_up.py --dll src/LayoutService.Api/bin/Release/net10.0/LayoutService.Api.dll --calls 500

Python 3.9 or later, standard library only; talks to 127.0.0.1 alone, starts the service five times and stops it each time. Every
answer is looked at: 200, with rows. Prints two tables for docs/measured/start-up.md. Ends with 1 when a call fails.
"""
import argparse
import http.client
import json
import os
import socket
import statistics
import subprocess
import sys
import threading
import time

SIZES = (("small", "minimal"), ("typical", "typical-room"), ("large, with bulkhead and lights", "l-suite-with-bulkhead"))


def free_port():
    with socket.socket() as own:
        own.bind(("127.0.0.1", 0))
        return own.getsockname()[1]


def call(port, method, path, body=None):
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=60)
    try:
        connection.request(method, path, body, {"Content-Type": "application/json"})
        answer = connection.getresponse()
        return answer.status, answer.read()
    finally:
        connection.close()


def resident(pid):
    with open(f"/proc/{pid}/status", encoding="ascii") as status:
        return next(int(line.split()[1]) for line in status if line.startswith("VmRSS")) // 1024


class Service:
    def __init__(self, dll):
        self.port = free_port()
        self.began = time.perf_counter()
        self.process = subprocess.Popen(
            ["dotnet", os.path.basename(dll)], cwd=os.path.dirname(os.path.abspath(dll)),
            env={**os.environ, "ASPNETCORE_URLS": f"http://127.0.0.1:{self.port}"}, stdout=subprocess.DEVNULL)
        while True:
            try:
                if call(self.port, "GET", "/health/ready")[0] == 200:
                    break
            except OSError:
                pass
            if time.perf_counter() - self.began > 60:
                sys.exit("not ready after a minute")
            time.sleep(0.005)
        self.ready = time.perf_counter() - self.began

    def plan(self, room):
        status, body = call(self.port, "POST", "/v1/plans", room)
        if status != 200 or not json.loads(body)["strapping"]["rows"]:
            raise SystemExit(f"{status}: {body[:300]}")

    def stop(self):
        self.process.terminate()
        self.process.wait(30)


def times(service, room, calls, callers):
    taken, failed = [], []

    def run():
        connection = http.client.HTTPConnection("127.0.0.1", service.port, timeout=60)
        for _ in range(calls // callers):
            start = time.perf_counter()
            connection.request("POST", "/v1/plans", room, {"Content-Type": "application/json"})
            answer = connection.getresponse()
            answer.read()
            taken.append(time.perf_counter() - start)
            if answer.status != 200:
                failed.append(answer.status)

    threads = [threading.Thread(target=run) for _ in range(callers)]
    [t.start() for t in threads]
    [t.join() for t in threads]
    if failed:
        sys.exit(f"{len(failed)} calls failed: {set(failed)}")
    taken.sort()
    return 1000 * taken[len(taken) // 2], 1000 * taken[min(len(taken) - 1, len(taken) * 99 // 100)]


def main():
    options = argparse.ArgumentParser()
    options.add_argument("--dll", required=True)
    options.add_argument("--calls", type=int, default=500)
    options.add_argument("--examples", default="openapi/examples")
    given = options.parse_args()
    rooms = []
    for size, name in SIZES:
        with open(f"{given.examples}/{name}.request.json", "rb") as file:
            rooms.append((size, name, file.read()))
    ready, first, rest = [], [], []
    service = None
    for _ in range(5):
        if service:
            service.stop()
        service = Service(given.dll)
        ready.append(service.ready)
        service.plan(rooms[1][2])
        first.append(time.perf_counter() - service.began)
        time.sleep(3)
        rest.append(resident(service.process.pid))
    print("| | median of five starts | slowest |\n|---|---|---|")
    print(f"| start to ready | {statistics.median(ready):.2f} s | {max(ready):.2f} s |")
    print(f"| start to the first plan of the typical room | {statistics.median(first):.2f} s | {max(first):.2f} s |")
    print(f"| resident memory at rest after it | {statistics.median(rest)} MB | {max(rest)} MB |\n")
    print("| room | example | callers | calls | half of them within | 99 of 100 within |\n|---|---|---|---|---|---|")
    try:
        for size, name, room in rooms:
            times(service, room, max(20, given.calls // 5), 1)
            for callers in (1, 2):
                half, most = times(service, room, given.calls, callers)
                print(f"| {size} | {name} | {callers} | {given.calls} | {half:.1f} ms | {most:.1f} ms |", flush=True)
        print(f"\nResident memory at the end: {resident(service.process.pid)} MB.")
    finally:
        service.stop()


if __name__ == "__main__":
    main()
