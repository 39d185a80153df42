"""Does what the front page says, in a fresh copy of the repository, and tells how long it takes from the first command to a layout.

    python3 tests/scale/quick_start.py           packages as this machine has them already
    python3 tests/scale/quick_start.py --cold    packages fetched anew, into a folder of its own

Python 3.9 or later, git, curl and the .NET SDK; the service listens on 127.0.0.1 alone and is stopped at the end. The commands are
read in README.md, the port alone is another. Ends with 1 when there are more than three commands or no layout comes.
"""
import argparse
import json
import os
import re
import signal
import socket
import subprocess
import sys
import tempfile
import time

LONGEST_SECONDS = 900


def free_port():
    with socket.socket() as own:
        own.bind(("127.0.0.1", 0))
        return own.getsockname()[1]


def commands():
    with open("README.md", encoding="utf-8") as page:
        blocks = re.findall(r"^```\n((?:dotnet run|curl)[^`]*)^```", page.read(), re.MULTILINE)
    return [next(b.strip() for b in blocks if b.startswith(word)) for word in ("dotnet run", "curl")]


def main():
    options = argparse.ArgumentParser()
    options.add_argument("--cold", action="store_true")
    given = options.parse_args()
    port = free_port()
    run, ask = (command.replace(":8080", f":{port}") for command in commands())
    with tempfile.TemporaryDirectory() as folder:
        copy = os.path.join(folder, "copy")
        subprocess.run(["git", "clone", "--quiet", "--no-hardlinks", ".", copy], check=True)
        surroundings = dict(os.environ)
        if given.cold:
            surroundings["NUGET_PACKAGES"] = os.path.join(folder, "packages")
        began = time.perf_counter()
        service = subprocess.Popen(["bash", "-c", run], cwd=copy, env=surroundings, stdout=subprocess.DEVNULL, start_new_session=True)
        try:
            while True:
                answer = subprocess.run(["bash", "-c", ask], cwd=copy, capture_output=True, check=False)
                if answer.returncode == 0:
                    break
                if service.poll() is not None or time.perf_counter() - began > LONGEST_SECONDS:
                    sys.exit("no layout came")
                time.sleep(0.2)
            taken = time.perf_counter() - began
        finally:
            os.killpg(service.pid, signal.SIGTERM)
            service.wait(60)
    rows = json.loads(answer.stdout)["summary"]["rows"]
    print(f"2 commands, {taken:.0f} s from the first to a layout of {rows} rows, packages {'fetched' if given.cold else 'there'}.")


if __name__ == "__main__":
    main()
