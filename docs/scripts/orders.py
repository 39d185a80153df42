"""Plans every room of a CSV in one call and writes what to order.

    python3 orders.py rooms.csv orders.csv http://127.0.0.1:8080

Python 3.9 or later, standard library only.
"""
import csv
import json
import sys
import urllib.request

rooms_file, orders_file, service = sys.argv[1:4]


def request(row):
    width, depth = float(row["width"]), float(row["depth"])
    return {
        "reference": row["reference"], "units": row["units"],
        "room": {"outline": [[0, 0], [width, 0], [width, depth], [0, depth]]},
        "joistFields": [{"run": row["run"], "spacing": float(row["spacing"]), "first": float(row["first"])}],
    }


with open(rooms_file, newline="", encoding="utf-8") as rooms:
    body = "".join(json.dumps(request(row)) + "\n" for row in csv.DictReader(rooms)).encode()
call = urllib.request.Request(service + "/v1/plans/bulk?include=takeoff", body, {"Content-Type": "application/jsonl"})
summary = None
with urllib.request.urlopen(call) as answer, open(orders_file, "w", newline="", encoding="utf-8") as orders:
    out = csv.writer(orders)
    out.writerow(["reference", "code", "description", "quantity", "unit"])
    for text in answer:
        line = json.loads(text)
        if line["kind"] == "plan":
            for item in line["plan"]["takeoff"]["lines"]:
                out.writerow([line["reference"], item["code"], item["description"], item["quantity"], item["unit"]])
        elif line["kind"] == "problem":
            print(f"line {line['line']} ({line.get('reference', '')}): {line['problem']['detail']}", file=sys.stderr)
        else:
            summary = line["summary"]
if summary is None or not summary["complete"]:
    sys.exit("The answer was cut; send the rest again" + (f" from room {summary['nextIndex']}." if summary else "."))
print(f"{summary['ok']} rooms planned, {summary['failed']} not")
