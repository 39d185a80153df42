# Sends everything before it reads, as urllib does. Prints how many lines came and the last of them.
import sys
import urllib.request

body = open(sys.argv[2], "rb").read()
request = urllib.request.Request(sys.argv[1], body, {"Content-Type": "application/jsonl"})
with urllib.request.urlopen(request, timeout=120) as answer:
    lines = answer.read().splitlines()
print(len(lines))
print(lines[-1].decode())
